package linkwright.house;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The program's own classes, without the tests. */
final class Program {
  static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("linkwright");

  private Program() {}

  static boolean isOurs(JavaClass type) {
    return type.getPackageName().equals("linkwright")
        || type.getPackageName().startsWith("linkwright.");
  }

  /** A class's name without the package that all share: {@code coach.Model}. */
  static String shortName(JavaClass type) {
    return type.getName().substring("linkwright.".length()).replace('$', '.');
  }

  /** Package → the packages that its classes know, each by its own name at whatever depth. */
  static Map<String, Set<String>> known() {
    Map<String, Set<String>> known = new TreeMap<>();
    for (JavaClass type : CLASSES) {
      Set<String> of = known.computeIfAbsent(type.getPackageName(), name -> new TreeSet<>());
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        if (isOurs(target) && !target.getPackageName().equals(type.getPackageName())) {
          of.add(target.getPackageName());
        }
      }
    }
    return known;
  }
}
