package linkwright.coach;

import java.util.Optional;

/** Weighing in and the price; part counts on through what has no room at once. */
public record WeighHeld(Optional<Form> form, int part) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.WEIGH_IN;
  }

  WeighHeld(Optional<Form> form) {
    this(form, 0);
  }
}
