package linkwright.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

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
}
