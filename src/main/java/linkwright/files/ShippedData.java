package linkwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The data that comes with the program: in its jar, or in the folder it was built into. */
final class ShippedData {
  private static final String ROOT = "linkwright/data/";

  /** A file that is surely there, to find out where the others are. */
  private static final String LANDMARK = "/" + ROOT + "shared/metals.yaml";

  private ShippedData() {}

  /**
   * All YAML files below a folder such as {@code routines}, by name.
   *
   * @throws IOException if the program's own files cannot be read
   */
  static List<DataFile> files(String folder) throws IOException {
    URL landmark = ShippedData.class.getResource(LANDMARK);
    if (landmark == null) {
      throw new IOException("the program's own data are missing: build it again");
    }
    List<DataFile> files = new ArrayList<>();
    if (landmark.openConnection() instanceof JarURLConnection connection) {
      // Not the shared cache: its jar would stay open for as long as the program runs.
      connection.setUseCaches(false);
      try (JarFile jar = connection.getJarFile()) {
        for (JarEntry entry : jar.stream().toList()) {
          if (entry.getName().startsWith(ROOT + folder + "/") && isYaml(entry.getName())) {
            try (InputStream in = jar.getInputStream(entry)) {
              String name = entry.getName().substring(ROOT.length());
              files.add(new DataFile(name, in.readAllBytes()));
            }
          }
        }
      }
    } else {
      Path root = path(landmark).getParent().getParent();
      try (Stream<Path> paths = Files.walk(root.resolve(folder))) {
        for (Path path : paths.filter(p -> isYaml(p.toString())).toList()) {
          String name = root.relativize(path).toString().replace('\\', '/');
          files.add(new DataFile(name, Files.readAllBytes(path)));
        }
      }
    }
    files.sort(java.util.Comparator.comparing(DataFile::name));
    return List.copyOf(files);
  }

  private static Path path(URL url) throws IOException {
    try {
      URI uri = url.toURI();
      return Path.of(uri);
    } catch (URISyntaxException unusual) {
      throw new IOException("the program's own data cannot be found at " + url, unusual);
    }
  }

  private static boolean isYaml(String name) {
    return name.endsWith(".yaml");
  }
}
