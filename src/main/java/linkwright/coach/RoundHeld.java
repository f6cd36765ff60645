package linkwright.coach;


/** The way round: every place of the job, with how it stands there. */
public record RoundHeld(Held from) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.ROUND;
  }
}
