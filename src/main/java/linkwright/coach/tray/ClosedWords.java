package linkwright.coach.tray;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.TrayJob;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.ClosedChain;

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
    if (came.links() > 0) {
      words.add(came.links() + (came.links() == 1 ? " link" : " links"));
    }
    came.lengthMm().ifPresent(mm -> words.add(units.length(mm)));
    came.massG().ifPresent(grams -> words.add(units.mass(grams)));
    if (came.seconds() > 0) {
      words.add(Clock.spoken(came.seconds()));
    }
    came.price().ifPresent(price -> words.add(Decimals.money(price, came.currency())));
    String day = DateTimeFormatter.ISO_LOCAL_DATE.withZone(settings.zone()).format(came.closedAt());
    return " " + day + (words.isEmpty() ? "" : ": " + String.join(", ", words));
  }
}
