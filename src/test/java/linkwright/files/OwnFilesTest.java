package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.fit.Verdict;
import linkwright.plan.ChainWish;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans, test pieces, settings, keys and drafts: what a user writes or leaves behind. */
class OwnFilesTest {
  @TempDir Path folder;

  private static final Library LIBRARY = Library.load(new Home(Path.of("no such folder")));

  @Nested
  class APlan {
    private static final String PLAN =
        """
        job: For a test
        metal: sterling
        wire: 1 mm
        link: {pattern: hook-link, blank: 34 mm, formers: {eye: 2.6 mm}}
        ring: {inside: 3 mm, oval-inside: 2 mm}
        finished-length: 45 cm
        clasp: {length: 12 mm, mass: 0.5 g}
        kerf: 0,3 mm
        usual-loss: 5 %
        stock: [400 mm, 1 1/2 in]
        ring-stock: 200 mm, 0.5 m
        confidence: 95 %
        """;

    private List<String> told(String text) {
      return ToldOfFile.shown(PlanFile.of(ToldOfFile.file(text), LIBRARY).problems());
    }

    @Test
    void isReadWithItsUnits() {
      PlanFile plan = PlanFile.of(ToldOfFile.file(PLAN), LIBRARY);
      assertThat(ToldOfFile.shown(plan.problems())).isEmpty();
      ChainWish wish = plan.wish().orElseThrow();
      assertThat(wish.kerfMm()).isEqualTo(0.3);
      assertThat(wish.stockMm()).hasSize(2).element(1).isEqualTo(1.5 * 25.4);
      assertThat(wish.ringStockMm()).contains(List.of(200.0, 500.0));
      assertThat(wish.link().formersMm()).isEqualTo(Map.of("eye", 2.6));
      assertThat(wish.claspMm()).isEqualTo(12);
    }

    @Test
    void takesFormersAsOneTextAndByHerNamesForThem() {
      String hers = "formers: {fat step: 2.6 mm}";
      Library own =
          new Library(
              LIBRARY.reference(),
              LIBRARY.patterns(),
              LIBRARY.routines(),
              LIBRARY.cautions(),
              LIBRARY.problems(),
              BenchFile.of(ToldOfFile.file("format: 1\n" + hers)));
      for (String formers : List.of("{eye: fat step}", "eye=2.6 mm", "eye=fat step")) {
        String text = PLAN.replaceFirst("formers: \\{[^}]*}", "formers: " + formers);
        PlanFile plan = PlanFile.of(ToldOfFile.file(text), own);
        assertThat(ToldOfFile.shown(plan.problems())).as(text).isEmpty();
        assertThat(plan.wish().orElseThrow().link().formersMm()).isEqualTo(Map.of("eye", 2.6));
      }
    }

    @Test
    void mayNameAClaspThatIsKnown() {
      String named = PLAN.replaceFirst("clasp: .*", "clasp: s-hook");
      PlanFile plan = PlanFile.of(ToldOfFile.file("format: 1\n" + named), LIBRARY);
      assertThat(ToldOfFile.shown(plan.problems())).isEmpty();
      assertThat(plan.wish().orElseThrow().claspMm()).isEqualTo(20.0);
      assertThat(told(PLAN.replaceFirst("clasp: .*", "clasp: s-hok")))
          .containsExactly("7:8: \"clasp\": “s-hok” is not a known clasp. Did you mean s-hook?");
    }

    @Test
    void tellsEverythingWrongAtOnceAtItsPlace() {
      List<String> told =
          told(
              PLAN.replace("metal: sterling", "metal: sterlin")
                  .replace("wire: 1 mm", "wire: 1")
                  .replace("inside: 3 mm", "inside: -3 mm")
                  .replace("kerf:", "kerb:"));
      assertThat(told).hasSize(4);
      assertThat(told.get(0))
          .isEqualTo("8:1: The key \"kerb\" is not known in a plan. Did you mean kerf?");
      assertThat(told.get(1))
          .isEqualTo("2:8: “sterlin” is not a known metal. Did you mean sterling?");
      assertThat(told.get(2)).isEqualTo("3:7: 1 what? Write a unit, as in 1 mm.");
      assertThat(told.get(3)).startsWith("5:16: “-3 mm”");
    }

    @Test
    void tellsWhatIsMissing() {
      assertThat(told("metal: sterling\nlink: {pattern: hook-link}\n"))
          .containsExactly(
              "1:1: Give the wire's thickness, such as 0.9 mm or 19 AWG.",
              "2:7: Give the blank, such as 38 mm; or the link's length, and the blank is found.",
              "1:1: Give the finished length, clasp included, such as 45 cm or 18 in.");
    }

    @Test
    void isNoListAndNotMissing() {
      assertThat(told("- a\n"))
          .containsExactly(
              "1:1: A plan file has keys. Write metal: sterling and so on, one a line.");
      Path none = folder.resolve("none.yaml");
      assertThat(PlanFile.read(none, LIBRARY).problems())
          .singleElement()
          .satisfies(
              problem -> assertThat(problem.wrong()).isEqualTo("There is no file " + none + "."));
    }
  }

  @Nested
  class TestPieces {
    private List<String> told(String text) {
      return ToldOfFile.shown(TriedFile.of(ToldOfFile.file(text)).problems());
    }

    @Test
    void areRefusedWhereNothingWasMeasuredAndNothingSaid() {
      assertThat(told("- {blank: 38 mm}\n- {blank: 38 mm, length: 14.1 mm}\n"))
          .singleElement()
          .asString()
          .contains("Nothing measured and nothing said of this piece", "length: 14.1 mm");
    }

    @Test
    void areReadWithMeasuresOrVerdicts() {
      TriedFile file =
          TriedFile.of(
              ToldOfFile.file(
                  """
                  - {blank: 30 mm, formers: {body: 3 mm}, length: 11 mm, width: 4.8 mm}
                  - {blank: 32 mm, verdict: longer}
                  - {blank: 33 mm, length: 12 mm, verdict: [Lighter-wire, wider]}
                  """));
      assertThat(ToldOfFile.shown(file.problems())).isEmpty();
      assertThat(file.pieces()).hasSize(3);
      assertThat(file.pieces().get(0).formersMm()).isEqualTo(Map.of("body", 3.0));
      assertThat(file.pieces().get(1).lengthMm()).isEmpty();
      assertThat(file.pieces().get(2).verdicts())
          .containsExactly(Verdict.LIGHTER_WIRE, Verdict.WIDER);
    }

    @Test
    void withSomethingWrongAreToldAndLeftOut() {
      assertThat(told("- {blank: 30 mm, verdict: longr}\n- {length: 3 mm}\n- 38 mm\n"))
          .containsExactly(
              "1:27: \"verdict\": \"longr\" is not known here. Did you mean longer?",
              "2:3: A test piece has no \"blank\". Write blank: …",
              "3:3: A test piece is a group of keys. Write {blank: 38 mm, length: 14.1 mm}.");
      assertThat(told("blank: 38 mm\n"))
          .containsExactly(
              "1:1: A file of test pieces is a list."
                  + " Write - {blank: 38 mm, length: 14.1 mm, width: 5 mm}, one piece a line.");
    }
  }

  @Nested
  class Settings {
    @Test
    void areTheUsualOnesWithoutAFile() {
      UserSettings.Loaded loaded = UserSettings.load(new Home(folder));
      assertThat(loaded.settings()).isEqualTo(UserSettings.USUAL);
      assertThat(loaded.problems()).isEmpty();
    }

    @Test
    void areReadBackAsTheyWereSaved() {
      UserSettings mine =
          new UserSettings(
              UnitStyle.INCH,
              TradeWords.AMERICAN,
              Optional.of("plain"),
              Optional.of("Bänk #1"),
              24,
              false,
              false,
              Optional.of(Path.of(System.getProperty("java.home"), "bin", "java") + " -v"),
              Optional.of("counts"),
              Optional.of("82.3 mm at 24 points on 1400 x 900"));
      assertThat(mine.save(new Home(folder.resolve("new")))).isEmpty();
      assertThat(UserSettings.load(new Home(folder.resolve("new"))))
          .isEqualTo(new UserSettings.Loaded(mine, List.of()));
    }

    @Test
    void aVoiceThatIsNotOnThisMachineIsToldWithItsLineAndKept() throws IOException {
      Home home = new Home(folder);
      Path file = folder.resolve("settings.yaml");
      Files.writeString(file, "format: 1\nsay: no-such-voice-anywhere -x\n");
      UserSettings.Loaded loaded = UserSettings.load(home);
      assertThat(loaded.problems()).singleElement().matches(problem -> problem.line() == 2);
      assertThat(loaded.settings().say()).contains("no-such-voice-anywhere -x");
      assertThat(Checking.check(home, List.of(file), (book, all) -> List.of(), Map.of()))
          .hasSize(1);
    }

    @Test
    void withSomethingWrongAreToldAndUsualThere() {
      UserSettings.Loaded loaded =
          UserSettings.of(
              ToldOfFile.file(
                  "format: 1\nunits: metrik\ntheme: light\nfont-size: 400\ncolour: red\n"));
      assertThat(ToldOfFile.shown(loaded.problems()))
          .containsExactly(
              "2:8: \"units\": \"metrik\" is not known here. Did you mean metric?",
              "4:12: \"font-size\": A font of 400 points can't be read; 8 to 72 can.",
              "5:1: The key \"colour\" is not known in the settings. Known here: format, units,"
                  + " words, theme, device, font-size, flash, mouse, say, say-kinds, screen-bars.");
      assertThat(loaded.settings().theme()).hasValue("light");
      assertThat(loaded.settings().fontSize()).isEqualTo(18);
    }

    @Test
    void takeTheUnitsOfHerBenchWhereTheySayNone() throws IOException {
      Home home = new Home(folder);
      Files.writeString(home.bench(), "format: 1\nunits: inch\n");
      assertThat(UserSettings.load(home).settings().units()).isEqualTo(UnitStyle.INCH);
      Path file = Files.writeString(folder.resolve("settings.yaml"), "format: 1\nflash: false\n");
      assertThat(UserSettings.load(home).settings().units()).isEqualTo(UnitStyle.INCH);
      Map<String, String> changed =
          new java.util.HashMap<>(UserSettings.load(home).settings().texts());
      changed.put("units", "metric");
      assertThat(UserSettings.ofTexts(changed).orThrow().save(home)).isEmpty();
      assertThat(file).content().contains("units: metric");
      assertThat(UserSettings.load(home).settings().units()).isEqualTo(UnitStyle.METRIC);
    }

    @Test
    void thatCannotBeSavedAreTold() throws IOException {
      Path file = Files.writeString(folder.resolve("file"), "");
      assertThat(UserSettings.USUAL.save(new Home(file))).isPresent();
    }

    @Test
    void what_else_she_wrote_stays() throws IOException {
      Path file = folder.resolve("settings.yaml");
      Files.writeString(
          file, "# mine\nformat: 1\nunits: inch # as at school\nlater: yes\n\nflash: false\n");
      UserSettings read = UserSettings.load(new Home(folder)).settings();
      Map<String, String> changed = new java.util.HashMap<>(read.texts());
      changed.put("units", "metric");
      changed.put("theme", "light");
      assertThat(UserSettings.ofTexts(changed).orThrow().save(new Home(folder))).isEmpty();
      assertThat(file)
          .hasContent(
              """
              # mine
              format: 1
              units: metric # as at school
              later: yes

              flash: false
              theme: light
              """);
    }
  }

  @Nested
  class Keys {
    private KeysFile read(String text) {
      return KeysFile.of(
          ToldOfFile.file(text), List.of("through", "undo"), List.of("space", "u", "f")::contains);
    }

    @Test
    void areReadAndWhatIsWrongIsTold() {
      KeysFile keys = read("format: 1\nkeys:\n  through: [f, spase]\n  undo: u\n  trough: space\n");
      assertThat(keys.keys()).isEqualTo(Map.of("through", List.of("f"), "undo", List.of("u")));
      assertThat(ToldOfFile.shown(keys.problems()))
          .containsExactly(
              "3:16: \"through\": \"spase\" names no key. Write a single character, space, enter,"
                  + " page-down, ctrl-z and the like.",
              "5:3: Nothing that a key can do is called \"trough\". Did you mean through?");
    }
  }

  @Nested
  class Drafts {
    @Test
    void areKeptFormByFormAndForgotten() {
      DraftStore store = new DraftStore(folder.resolve("drafts"));
      assertThat(store.of("trace")).isEmpty();
      Map<String, String> plan = Map.of("wire", "1 m", "note: #", "\"é\n");
      assertThat(store.keep("trace", "plan", plan)).isEmpty();
      assertThat(store.keep("trace", "weigh", Map.of("mass", "9"))).isEmpty();
      assertThat(store.of("trace")).isEqualTo(Map.of("plan", plan, "weigh", Map.of("mass", "9")));
      assertThat(store.drop("trace", "plan")).isEmpty();
      assertThat(store.of("trace")).containsOnlyKeys("weigh");
      assertThat(store.drop("trace", "weigh")).isEmpty();
      assertThat(folder.resolve("drafts/trace.yaml")).doesNotExist();
    }

    @Test
    void thatAnotherProgramWroteMeanwhileAreKeptToo() {
      DraftStore store = new DraftStore(folder.resolve("drafts"));
      store.keep("trace", "plan", Map.of("wire", "1 mm"));
      new DraftStore(folder.resolve("drafts")).keep("trace", "note", Map.of("text", "lies flat"));
      store.keep("trace", "plan", Map.of("wire", "1.2 mm"));
      assertThat(new DraftStore(folder.resolve("drafts")).of("trace"))
          .containsOnlyKeys("plan", "note");
    }

    @Test
    void thatAreBrokenAreNoneAreToldAndAreSetAside() throws IOException {
      Files.createDirectories(folder.resolve("drafts"));
      String broken = "format: 1\nforms: {plan";
      Files.writeString(folder.resolve("drafts/trace.yaml"), broken);
      DraftStore store = new DraftStore(folder.resolve("drafts"));
      assertThat(store.of("trace")).isEmpty();
      assertThat(store.unread("trace").orElseThrow()).contains("trace.yaml", "set aside");
      assertThat(store.unread("other")).isEmpty();
      assertThat(store.keep("trace", "plan", Map.of("wire", "1 mm"))).isEmpty();
      assertThat(store.of("trace")).containsOnlyKeys("plan");
      assertThat(folder.resolve("drafts/trace.yaml.unread")).hasContent(broken);
      assertThat(store.unread("trace")).isEmpty();
    }
  }
}
