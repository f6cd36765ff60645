package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import linkwright.books.CheckedLate;
import linkwright.quantity.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckingTest {
  @TempDir Path folder;

  private Path file(String name, String text) throws IOException {
    Path path = folder.resolve(name);
    Files.createDirectories(path.getParent());
    return Files.writeString(path, text);
  }

  private List<String> check(Path... paths) {
    return Checking.check(new Home(folder), List.of(paths), CheckedLate.BOOKS, Map.of()).stream()
        .map(Problem::sentence)
        .toList();
  }

  @Test
  void everyFileIsToldByItsKeysWhereverItLies() throws IOException {
    Path pattern = file("any/p.yaml", "format: 1\npattern: p\n");
    Path plan = file("any/plan.yaml", "metal: tin\nlink: {length: 3 mm}\n");
    Path tried = file("any/tried.yaml", "- {blank: 3}\n");
    assertThat(check(pattern))
        .anyMatch(told -> told.contains("line 1, column 1: This file has no"));
    assertThat(check(plan))
        .anyMatch(told -> told.contains("line 1, column 8: “tin” is not a known"));
    assertThat(check(tried)).singleElement().asString().contains("line 1, column 11: \"blank\"");
    assertThat(check(folder.resolve("any"))).hasSizeGreaterThan(3);
  }

  @Test
  void aPlanThatNamesItsRoutineIsNoRoutine() throws IOException {
    String rest =
        "wire: 0.9 mm\nfinished-length: 20 cm\nlink: {pattern: round, formers: ring=3 mm}\n";
    Path good = file("any/plan.yaml", "routine: rope\nmetal: sterling\n" + rest);
    Path bad = file("any/bad.yaml", "routine: rope\nmetal: tin\n" + rest);
    assertThat(check(good)).isEmpty();
    assertThat(check(bad)).singleElement().asString().contains("line 2, column 8: “tin” is not");
  }

  @Test
  void oneKeyOfAFileOfHersIsEnough() throws IOException {
    for (String text : List.of("kerf: 0.3 mm", "left-out: [a]", "mouse: false")) {
      assertThat(check(file("any/own.yaml", "format: 1\n" + text + "\n"))).as(text).isEmpty();
    }
  }

  @Test
  void whatIsNoOrdinaryFileAmongTheJobsIsTold() throws IOException {
    Path odd = folder.resolve("jobs/odd.yaml");
    Files.createDirectories(odd.getParent());
    Files.createSymbolicLink(odd, Path.of("nowhere.yaml"));
    assertThat(check()).singleElement().asString().contains(odd + " is not an ordinary file.");
  }

  @Test
  void aFileThatIsNoneOfOursIsTold() throws IOException {
    Path other = file("x.yaml", "format: 1\nrutine: a\n");
    assertThat(check(other))
        .containsExactly(
            other
                + ", line 1, column 1: No key says what sort of file this is."
                + " Did you mean routine by rutine?");
    assertThat(check(folder.resolve("none.yaml")))
        .containsExactly("There is no file " + folder.resolve("none.yaml") + ".");
  }

  @Test
  void aRoutineMayNameShippedCautionsAndOwnPatterns() throws IOException {
    file(
        "shared/patterns/bar.yaml",
        """
        format: 1
        pattern: bar
        says: A bar with two eyes.
        formers: {eye: 2 mm}
        half:
          - bend: {over: eye, turn: 300, side: left, eye: true}
          - run: rest
        other: turned
        joints:
          - join: tip to body
        """);
    Path routine =
        file(
            "r.yaml",
            """
            format: 1
            routine: cut-only
            title: Cut blanks
            says: Blanks, for this test.
            makes: part
            patterns: [bar, barr]
            pieces: {link: [cut]}
            steps:
              - step: cut
                title: Cut
                part: run
                stage: {link: cut}
                counts: each
                does: [cuts, heats]
                do: Cut blanks of {blank}.
                cautions: [cutting-wire]
            """);
    List<String> told = check(routine);
    assertThat(told)
        .anyMatch(
            one ->
                one.startsWith(routine + ", line 6, column 1: There is no link pattern \"barr\".")
                    && one.contains("bar"))
        .anyMatch(one -> one.contains("line 16, column 5: Step cut says that it does \"heats\""))
        .allMatch(one -> one.startsWith(routine.toString()));
  }

  @Test
  void aBookIsToldByItsFirstLinesWhateverElseIsWrong() throws IOException {
    Path book = file("jobs/b.yaml", "# Linkwright job book, format 2.\nnot an entry\n");
    assertThat(check(book))
        .singleElement()
        .asString()
        .startsWith(
            book + ", line 2, column 1: This line cannot be read as an entry: not an entry.");
    assertThat(check()).anyMatch(told -> told.startsWith(book.toString()));
  }

  @Test
  void withoutPathsTheUsersOwnIsCheckedToo() throws IOException {
    Path settings = file("settings.yaml", "format: 1\nunits: feet\n");
    Path metals = file("shared/mine.yaml", "format: 1\nmetals: 3\n");
    assertThat(check())
        .anyMatch(told -> told.startsWith(settings.toString()))
        .anyMatch(told -> told.startsWith(metals.toString()));
  }
}
