package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.PlanHelp;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;
import linkwright.routine.Wording;
import linkwright.view.Glyphs;
import linkwright.view.Scenes;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/** One word for one thing: words that were given up do not come back. */
class WordsTest {
  /** Given up, for each had a clearer word or another sense. */
  private static final List<String> GIVEN_UP =
      List.of(
          "the way round",
          "one through",
          "short nothing",
          "none runs",
          "next one",
          "answer timer",
          ": answered",
          "timer answered",
          "full stop quiets",
          "answers it",
          "done again",
          "do again",
          "exact ring",
          "words explained",
          "(Etc/UTC)");

  @Test
  void no_screen_says_a_word_that_was_given_up() {
    for (String name : Scenes.names()) {
      String shown = Shown.draw(Scenes.of(name, 140, 45).model(), Glyphs.FULL).text();
      for (String word : GIVEN_UP) {
        assertThat(shown).as(name).doesNotContain(word);
      }
    }
  }

  /** What is gone for good of pieces is scrapped; wire is lost, uncut. */
  @Test
  void pieces_are_scrapped_and_wire_is_lost() {
    Pattern lost =
        Pattern.compile(
            "(?i)\\b(links?|rings?|pieces?|ones?)( (is|are|was|were|being))? lost\\b|lost for good");
    for (String name : Scenes.names()) {
      String shown = Shown.draw(Scenes.of(name, 140, 45).model(), Glyphs.FULL).text();
      assertThat(shown).as(name).doesNotContainPattern(lost);
    }
    for (Act act : Act.values()) {
      assertThat(act.help()).doesNotContainPattern(lost);
    }
    PlanHelp.FieldHelp loss = PlanHelp.of(WishKeys.USUAL_LOSS);
    assertThat(loss.hint() + " " + loss.help()).doesNotContainPattern(lost);
  }

  @Test
  void words_given_up_stand_with_their_reason_in_the_guide() throws IOException {
    assertThat(Files.readString(Path.of("DEVELOPERS.md"))).contains("Words given up");
  }

  @Test
  void the_list_of_words_has_each_once_and_all_places_and_labels() throws IOException {
    String guide = Files.readString(Path.of("DEVELOPERS.md"));
    String list = guide.substring(guide.indexOf("## Words\n"), guide.indexOf("**Words given up**"));
    List<String> words =
        list.lines()
            .filter(
                row ->
                    row.startsWith("| ") && !row.startsWith("| word |") && !row.startsWith("| ---"))
            .flatMap(row -> Stream.of(row.split("\\|", -1)[1].strip().split(", ", -1)))
            .toList();
    assertThat(words).doesNotHaveDuplicates().doesNotContainAnyElementsOf(GIVEN_UP);
    assertThat(words)
        .containsAll(
            Arrays.stream(Prose.Kind.values())
                .map(Prose.Kind::label)
                .filter(label -> !label.isEmpty())
                .toList());
    assertThat(words)
        .containsAll(
            Arrays.stream(PlaceId.values())
                .map(place -> place.act().words().replace("?", ""))
                .toList());
  }

  @Test
  void an_american_screen_says_no_british_word() {
    List<String> british =
        List.of("joint", "joints", "pallion", "pallions", "former", "formers", "lemel", "hallmark");
    for (String name : Scenes.names()) {
      Bencher bencher = Scenes.of(name, 140, 45);
      Settings before = bencher.model().settings();
      Settings american =
          new Settings(UnitStyle.INCH, false, before.keys()).standing(before.chosen());
      for (Part part : Pages.of(bencher.model().with(american)).body().parts()) {
        String said = part instanceof Prose prose ? prose.text() : "";
        for (String word :
            said.replaceAll("“[^”]*”|\"[^\"]*\"|\\{[^}]*}", "").split("[^a-z]+", -1)) {
          assertThat(british).as(name + ": " + said).doesNotContain(word);
        }
      }
    }
  }

  @Test
  void routines_and_cautions_are_written_in_the_british_words() throws IOException {
    for (String folder : List.of("routines", "safety")) {
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).toList()) {
          assertThat(Files.readString(file))
              .as(file.toString())
              .doesNotContainPattern(
                  "(?i)\\b(seams?|chips?|mandrels?|spring rings?|gasoline|faucets?|vises?|colors?"
                      + "|gray|molds?|sulfur|fibers?|karats?|quality marks?)\\b");
        }
      }
    }
  }

  @Test
  void american_readers_read_their_own_words_and_degrees() {
    String text =
        "Charcoal smoulders on above 400 to 500 °C; residual-current switch, petrol, spirit.";
    assertThat(Wording.fill(text, Map.of(), UnitStyle.INCH, TradeWords.AMERICAN))
        .isEqualTo(
            "Charcoal smolders on above 750 to 930 °F; ground-fault interrupter, gasoline, alcohol.");
  }
}
