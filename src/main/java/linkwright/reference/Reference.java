package linkwright.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/**
 * Everything that is looked up: metals, solders, fineness rules, clasps.
 *
 * @param metals the metals
 * @param solders the solders
 * @param finenessRules the rules, a country and a metal each
 * @param clasps the clasps
 * @param limits what laws allow of nickel, cadmium and lead in what is worn
 * @param glossary the words of the trade, explained
 * @param pictures what a hand has to see, drawn
 * @param tools the tools that routines lay out
 */
public record Reference(
    List<Metal> metals,
    List<Solder> solders,
    List<FinenessRule> finenessRules,
    List<Clasp> clasps,
    List<Limit> limits,
    List<TradeTerm> glossary,
    List<Picture> pictures,
    List<Tool> tools) {
  private static final Pattern GAPS = Pattern.compile("[\\s_-]+");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** Copies the lists. */
  public Reference {
    metals = List.copyOf(metals);
    solders = List.copyOf(solders);
    finenessRules = List.copyOf(finenessRules);
    clasps = List.copyOf(clasps);
    limits = List.copyOf(limits);
    glossary = List.copyOf(glossary);
    pictures = List.copyOf(pictures);
    tools = List.copyOf(tools);
  }

  /** The metal of that id, name or other name; otherwise a sentence with the nearest known. */
  public Read<Metal> metal(String idOrName) {
    return find("metal", idOrName, metals, Reference::called);
  }

  /**
   * Looks names of metals, and else of solders, up: their ids. Made once for many names, without a
   * search for what is near one that is not known.
   */
  public Function<String, Optional<String>> alloyIds() {
    Map<String, String> ids = new HashMap<>();
    solders.forEach(each -> called(each).forEach(name -> ids.put(plain(name), each.id())));
    metals.forEach(each -> called(each).forEach(name -> ids.put(plain(name), each.id())));
    return name -> Optional.ofNullable(ids.get(plain(name)));
  }

  /** The solder of that id, name or other name; otherwise a sentence with the nearest known. */
  public Read<Solder> solder(String idOrName) {
    return find("solder", idOrName, solders, Reference::called);
  }

  /** The clasp of that id or name; otherwise a sentence with the nearest known. */
  public Read<Clasp> clasp(String idOrName) {
    return find("clasp", idOrName, clasps, clasp -> List.of(clasp.id(), clasp.name()));
  }

  /** The same for who asks only whether there is one, and needs no sentence. */
  public Optional<Clasp> knownClasp(String idOrName) {
    return known(idOrName, clasps, clasp -> List.of(clasp.id(), clasp.name()));
  }

  /** The tool of that name or other name; otherwise a sentence with the nearest known. */
  public Read<Tool> tool(String name) {
    return find("tool", name, tools, Reference::called);
  }

  /** Whether there is a tool of a name. Made once for many names. */
  public Predicate<String> toolNames() {
    Set<String> names =
        tools.stream()
            .flatMap(tool -> called(tool).stream())
            .map(Reference::plain)
            .collect(Collectors.toSet());
    return name -> names.contains(plain(name));
  }

  /** The picture of that name, if there is one. */
  public Optional<Picture> picture(String id) {
    return pictures.stream().filter(picture -> picture.id().equals(id)).findFirst();
  }

  /** The solders for a family of metals, the hottest flowing first. */
  public List<Solder> soldersFor(Family family) {
    return solders.stream()
        .filter(solder -> solder.family() == family)
        .sorted(Comparator.comparingInt(Solder::flowOrder))
        .toList();
  }

  private static List<String> called(Metal metal) {
    return names(metal.id(), metal.name(), metal.alsoCalled());
  }

  private static List<String> called(Solder solder) {
    return names(solder.id(), solder.name(), solder.alsoCalled());
  }

  private static List<String> called(Tool tool) {
    return names(tool.name(), tool.name(), tool.alsoCalled());
  }

  private static <T> Optional<T> known(
      String wanted, List<T> all, Function<T, List<String>> names) {
    String plain = plain(wanted);
    return all.stream()
        .filter(one -> names.apply(one).stream().anyMatch(name -> plain(name).equals(plain)))
        .findFirst();
  }

  private static <T> Read<T> find(
      String kind, String wanted, List<T> all, Function<T, List<String>> names) {
    Optional<T> found = known(wanted, all, names);
    if (found.isPresent()) {
      return Read.good(found.get());
    }
    List<T> several = all.stream().filter(one -> holds(names.apply(one), wanted)).toList();
    if (several.size() > 1) {
      return Read.bad(
          "“"
              + wanted.strip()
              + "” may be any of these: "
              + shown(several, names)
              + ". Say which.");
    }
    List<String> known = all.stream().flatMap(one -> names.apply(one).stream()).toList();
    Optional<String> nearest = Nearest.of(wanted, known);
    String hint =
        nearest
            .map(name -> " Did you mean " + name + "?")
            .orElseGet(() -> known.isEmpty() ? "" : " Known: " + shown(all, names) + ".");
    return Read.bad("“" + wanted.strip() + "” is not a known " + kind + "." + hint);
  }

  /** Whether all words of what is wanted are words of its names. */
  private static boolean holds(List<String> names, String wanted) {
    List<String> words = List.of(OTHER.split(plain(wanted), -1));
    return names.stream()
        .flatMap(name -> OTHER.splitAsStream(plain(name)))
        .collect(Collectors.toSet())
        .containsAll(words);
  }

  /** What one may choose from, each by its name; the id, which may be typed too, after it. */
  private static <T> String shown(List<T> all, Function<T, List<String>> names) {
    return String.join("; ", all.stream().map(one -> shown(names.apply(one))).toList());
  }

  private static String shown(List<String> names) {
    String id = names.get(0);
    String name = names.get(1);
    return plain(name).equals(plain(id)) ? name : name + " (" + id + ")";
  }

  private static List<String> names(String id, String name, List<String> alsoCalled) {
    List<String> names = new ArrayList<>(List.of(id, name));
    names.addAll(alsoCalled);
    return names;
  }

  /** Most names are plain as they stand, and all that ship are looked up at every start. */
  private static boolean isPlain(String lower) {
    for (int i = 0; i < lower.length(); i++) {
      char letter = lower.charAt(i);
      boolean doubled = letter == '-' && i > 0 && lower.charAt(i - 1) == '-';
      if (letter <= ' ' || letter == '_' || doubled) {
        return false;
      }
    }
    return true;
  }

  private static String plain(String name) {
    String lower = name.strip().toLowerCase(Locale.ROOT);
    return isPlain(lower) ? lower : GAPS.matcher(lower).replaceAll("-");
  }
}
