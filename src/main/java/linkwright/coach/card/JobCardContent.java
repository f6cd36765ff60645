package linkwright.coach.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.form.CardWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.drawn.SharedWire;
import linkwright.drawer.Taking;
import linkwright.job.JobCard;

/** What the card says, what is still to be paid, and the lots that the job took from. */
final class JobCardContent {
  private static final String NOTHING = "-";

  private JobCardContent() {}

  static List<Part> of(Model model) {
    OpenJob job = model.job().orElseThrow();
    JobCard card = job.state().card();
    Set<String> lots = new LinkedHashSet<>();
    Taking.in(job.slug(), job.entries()).forEach(taking -> lots.add(taking.lot()));
    if (card.said().isEmpty() && lots.isEmpty()) {
      List<Part> parts = new ArrayList<>();
      parts.add(
          Prose.says(
              "Nothing is written on it yet: for whom, promised when, the price, what was paid,"
                  + " metal of the customer's, solder, clasp, mark. {do:write-card} writes it."));
      parts.addAll(SharedWire.of(model, job.standing()));
      return parts;
    }
    List<Row> rows = new ArrayList<>();
    for (String key : JobCard.KEYS) {
      String said = card.of(key).isEmpty() ? NOTHING : card.of(key);
      Row row = new Row(CardWords.label(key), said, "", "", "", "", Emphasis.PLAIN);
      rows.add(
          key.equals(JobCard.PROMISED)
              ? row.remark(CardWords.when(card, model.today()).orElse(""))
              : row);
      if (key.equals(JobCard.DEPOSIT)) {
        CardWords.owed(card).ifPresent(owed -> rows.add(Row.of("to be paid", owed)));
      }
    }
    rows.add(
        Row.of("lots used", lots.isEmpty() ? "none out of the drawer" : String.join(", ", lots)));
    List<Part> parts = new ArrayList<>(List.of(new Rows(rows)));
    parts.addAll(SharedWire.of(model, job.standing()));
    return parts;
  }
}
