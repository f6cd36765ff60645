package linkwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.drawer.MetalAccount;
import linkwright.hands.Hands;
import linkwright.reference.Reference;

/** The drawer and the hands as tables for other programs; no job and no customer is named. */
public final class DrawerAndHandsTables {
  private DrawerAndHandsTables() {}

  /** Lots as they lie there, and the accounts of their metals. */
  public static Map<String, List<Map<String, Object>>> ofDrawer(
      Drawer drawer, Reference reference) {
    List<Map<String, Object>> lots = new ArrayList<>();
    for (Lot lot : drawer.lots()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("lot", lot.id());
      row.put("what", lot.what());
      row.put("metal", lot.metal());
      put(row, "wire_mm", lot.wireMm());
      put(row, "length_mm", lot.lengthMm());
      put(row, "mass_g", lot.massG());
      row.put("temper", lot.temper());
      row.put("batch", lot.batch());
      lots.add(row);
    }
    List<Map<String, Object>> accounts = new ArrayList<>();
    for (MetalAccount account : MetalAccount.of(drawer, reference)) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("metal", account.metal());
      put(row, "fine_share", account.fineShare());
      row.put("came_g", account.cameG());
      row.put("into_work_g", account.workG());
      row.put("in_work_still_g", account.openG());
      row.put("in_chains_g", account.chainG());
      row.put("back_as_wire_g", account.backG());
      row.put("clean_scrap_g", account.cleanG());
      row.put("soldered_scrap_g", account.solderedG());
      row.put("filings_g", account.filingsG());
      row.put("sweeps_g", account.sweepsG());
      row.put("at_bench_of_closed_g", account.atBenchG());
      row.put("pieces_over_g", account.overG());
      row.put("lost_g", account.lostG());
      row.put("missed_g", account.missedG());
      row.put("in_no_lot_g", account.looseG());
      row.put("there_g", account.thereG());
      accounts.add(row);
    }
    Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
    tables.put("lots", lots);
    tables.put("accounts", accounts);
    return tables;
  }

  /** What came of pieces stage by stage, and how long one took in each job. */
  public static Map<String, List<Map<String, Object>>> ofHands(Hands hands) {
    List<Map<String, Object>> stages = new ArrayList<>();
    hands
        .stages()
        .forEach(
            (what, result) -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("what", what);
              row.put("through", result.through());
              row.put("again", result.sentBack());
              row.put("lost", result.scrapped());
              stages.add(row);
            });
    List<Map<String, Object>> times = new ArrayList<>();
    hands
        .secondsEach()
        .forEach(
            (what, seconds) -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("what", what);
              row.put("jobs", seconds.size());
              put(row, "one_takes_s", hands.secondsEach(what));
              times.add(row);
            });
    Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
    tables.put("stages", stages);
    tables.put("times", times);
    return tables;
  }

  private static void put(Map<String, Object> row, String key, OptionalDouble amount) {
    row.put(key, amount.isPresent() ? Optional.of(amount.getAsDouble()) : Optional.<Double>empty());
  }
}
