package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.quantity.Read;
import linkwright.view.Scenes;
import org.junit.jupiter.api.Test;

/**
 * Wherever something is entered in a job's book, in every picture that the golden screens keep: a
 * write that fails shows nothing of it and one key tries the same again, and what is pressed while
 * it is slow is read against what it leads to. A place that begins to enter something fails here
 * until a picture leads to it.
 */
class CommittedEverywhereTest {
  private static final List<String> KEYS = List.of("ctrl-k", "enter", "space");

  @Test
  void what_each_place_enters_is_shown_once_it_is_kept() throws IOException {
    Set<PlaceId> wrote = EnumSet.noneOf(PlaceId.class);
    Set<String> done = new HashSet<>();
    for (Map.Entry<String, Bencher> scene : scenes().entrySet()) {
      Bencher bench = scene.getValue();
      PlaceId place = bench.model().held().place();
      for (List<Message> way : ways(bench)) {
        // The bench is another one at each step; other places enter the same wherever they are.
        if (place != PlaceId.BENCH && done.contains(place + " " + way)) {
          continue;
        }
        boolean writes = walked(bench, way, -1, false).writes() == 1;
        if (writes && before(bench, way).writes() == 0) {
          String told = scene.getKey() + ": " + way;
          done.add(place + " " + way);
          failed(bench, way, told);
          slow(bench, way, told);
          wrote.add(before(bench, way).place());
        }
      }
    }
    Set<PlaceId> missing = entering();
    missing.removeAll(wrote);
    missing.removeAll(ELSEWHERE.keySet());
    assertThat(missing).as("places that enter something, and no picture leads to it").isEmpty();
  }

  /** Places that no picture leads to a write of, and what holds them. */
  private static final Map<PlaceId, String> ELSEWHERE =
      Map.of(
          PlaceId.SAYING, "a student is asked there, with a book of her own: StudentAtBenchTest");

  /** The golden screens, and what they do not lead to. */
  private static Map<String, Bencher> scenes() {
    Map<String, Bencher> scenes = new LinkedHashMap<>();
    Scenes.names().forEach(name -> scenes.put(name, Scenes.of(name, 80, 24)));
    Bencher joints = JointsPlaceTest.atTheCheck().press("j").type("6").press("enter").type("18");
    scenes.put("joints", joints.press("enter").type("4"));
    Bencher persons = Bencher.withTheDemo().goTo("cut-blanks").press("esc", "@");
    scenes.put("persons", persons.type("Ada"));
    scenes.put("nearest", Bencher.withTheDemo().press("n"));
    Bencher rows = Bencher.withTheDemo();
    rows.take(new Message.Led(PlaceId.EXCHANGE, ""));
    rows.press("t", "down").type("pieces.csv").press("ctrl-k");
    rows.take(new Message.RowsRead("pieces.csv", Read.good("blank (mm),length (mm)\n38,14.3\n")));
    scenes.put("rows", rows);
    return scenes;
  }

  /** Each act that is open, alone and with a key that keeps or answers behind it. */
  private static List<List<Message>> ways(Bencher bench) {
    List<List<Message>> ways = new ArrayList<>();
    KEYS.forEach(key -> ways.add(List.of(key(key))));
    List<Act> acts = new ArrayList<>(Places.of(bench.model()).acts(bench.model()));
    acts.add(Act.UNDO);
    for (Act act : acts) {
      Message chosen = new Message.ActChosen(act);
      ways.add(List.of(chosen));
      KEYS.forEach(key -> ways.add(List.of(chosen, key(key))));
    }
    return ways;
  }

  private static Message key(String name) {
    return new Message.KeyPressed(KeyNames.read(name).orElseThrow());
  }

  private static FaultyDisk walked(Bencher bench, List<Message> way, int fails, boolean late) {
    FaultyDisk disk = new FaultyDisk(bench, fails, late);
    way.forEach(disk::take);
    return disk;
  }

  private static FaultyDisk before(Bencher bench, List<Message> way) {
    return walked(bench, way.subList(0, way.size() - 1), -1, false);
  }

  private static void failed(Bencher bench, List<Message> way, String told) {
    FaultyDisk whole = walked(bench, way, -1, false);
    Page before = before(bench, way).page();
    FaultyDisk disk = walked(bench, way, 0, false);
    assertThat(disk.failed()).as(told).isTrue();
    assertThat(disk.book()).as(told).isEmpty();
    assertThat(disk.page().chain()).as(told).isEqualTo(before.chain());
    assertThat(disk.page().still()).as(told).isEqualTo(before.still());
    disk.press("r");
    assertThat(disk.failed()).as("%s: another key answers nothing", told).isTrue();
    disk.press("space");
    assertThat(disk.book()).as(told).isEqualTo(whole.book());
    assertThat(disk.page()).as(told).isEqualTo(whole.page());
  }

  private static void slow(Bencher bench, List<Message> way, String told) {
    FaultyDisk whole = walked(bench, way, -1, false);
    whole.press("down");
    Page before = before(bench, way).page();
    FaultyDisk disk = walked(bench, way, -1, true);
    disk.press("down");
    assertThat(disk.page().chain()).as(told).isEqualTo(before.chain());
    assertThat(disk.page().still()).as(told).isEqualTo(before.still());
    while (disk.waits()) {
      disk.answer();
    }
    assertThat(disk.book()).as(told).isEqualTo(whole.book());
    assertThat(disk.page()).as(told).isEqualTo(whole.page());
  }

  /** The places in whose package something is asked to be kept in the job's book. */
  private static Set<PlaceId> entering() throws IOException {
    Set<PlaceId> entering = EnumSet.noneOf(PlaceId.class);
    for (PlaceId place : PlaceId.values()) {
      String name = Places.of(place).getClass().getPackageName();
      Path folder = Path.of("src/main/java", name.split("\\."));
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
          if (!name.equals("linkwright.coach") && Files.readString(file).contains("Turn.keep(")) {
            entering.add(place);
          }
        }
      }
    }
    assertThat(entering).hasSizeGreaterThan(10);
    return entering;
  }
}
