package linkwright.coach.tray;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.TrayJob;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.again.ClosedChain;

/** How a job stands, a closed one with what it came to. */
public final class ClosedWords {
  private ClosedWords() {}

  /** Where the job stands, in a line. */
  public static String stands(TrayJob job, Settings settings) {
    return job.stands() + job.came().map(came -> came(came, settings)).orElse("");
  }

  private static String came(ClosedChain came, Settings settings) {
    UnitStyle units = settings.units();
    List<String> words = new ArrayList<>();
    if (came.wanted() > 0) {
      boolean all = came.links() >= came.wanted();
      words.add(
          came.links()
              + (all ? "" : " of " + came.wanted())
              + (came.wanted() == 1 ? " link" : " links"));
    }
    came.lengthMm().ifPresent(mm -> words.add(units.length(mm)));
    came.massG().ifPresent(grams -> words.add(units.mass(grams)));
    if (came.seconds() > 0) {
      words.add(Clock.spoken(came.seconds()));
    }
    List<String> planned = new ArrayList<>();
    came.plannedMm().ifPresent(mm -> planned.add(units.about(mm, came.plannedDoubtMm())));
    came.plannedG().ifPresent(grams -> planned.add(units.mass(grams)));
    came.price()
        .ifPresent(
            price ->
                (came.plannedG().isPresent() ? planned : words)
                    .add(Decimals.money(price, came.currency())));
    if (!planned.isEmpty()) {
      words.add("planned " + String.join(", ", planned));
    }
    String day = DateTimeFormatter.ISO_LOCAL_DATE.withZone(settings.zone()).format(came.closedAt());
    return " " + day + (words.isEmpty() ? "" : ": " + String.join(", ", words));
  }
}
