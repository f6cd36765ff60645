package linkwright.files;

import java.nio.file.Path;

/** A second program for the tests: says what it finds in the data that came with it. */
final class LibraryProcess {
  private LibraryProcess() {}

  public static void main(String[] arguments) {
    Library library = Library.load(new Home(Path.of(arguments[0])));
    System.out.println(
        library.routines().keySet()
            + " "
            + library.cautions().keySet()
            + " "
            + library.patterns().keySet()
            + " "
            + library.reference().metals().size());
  }
}
