package linkwright.files;

import java.util.List;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.reference.Picture;
import linkwright.reference.PicturePanel;
import linkwright.reference.PictureStroke;

/** A picture from its file. */
final class PictureYaml {
  private PictureYaml() {}

  static void read(YamlFields file, DataRead shelves) {
    String id = file.value("drawing", Values::id, "");
    String title = file.text("title");
    String says = file.text("says");
    file.require("panels", "Write panels: and under it what is drawn, each after a hyphen.");
    List<PicturePanel> panels =
        file.groups("panels", "a panel").stream().map(PictureYaml::panel).toList();
    if (file.sound()) {
      shelves.pictures().put(id, new Picture(id, title, says, panels), file, "drawing");
    }
  }

  private static PicturePanel panel(YamlFields from) {
    from.require("strokes", "Write strokes: and under it each line, such as - line 0 0, 10 0.");
    PicturePanel panel =
        new PicturePanel(
            from.text("panel"),
            from.text("says"),
            from.flag("wrong"),
            from.textOrEmpty("drawn"),
            from.textOrEmpty("which"),
            from.list("strokes", PictureStroke::read));
    if (panel.strokes().isEmpty() && from.has("strokes")) {
      from.wrong("strokes", "Nothing is drawn here.", "One stroke at least: - line 0 0, 10 0.");
    }
    from.sound();
    return panel;
  }
}
