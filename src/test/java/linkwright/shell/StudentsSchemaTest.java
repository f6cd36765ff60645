package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linkwright.files.Home;
import linkwright.lesson.Roster;
import linkwright.schema.FileSchemas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The teacher's file of names, by its reader and by an independent validator of its schema. */
class StudentsSchemaTest {
  @TempDir Path folder;

  private static boolean valid(String text) throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(new ObjectMapper().valueToTree(FileSchemas.of("students").orElseThrow()))
        .validate(new YAMLMapper().readTree(text))
        .isEmpty();
  }

  private boolean read(String text) throws IOException {
    Files.writeString(folder.resolve("students.yaml"), text);
    return StudentsFile.load(new Home(folder)).problems().isEmpty();
  }

  @Test
  void what_the_program_writes_is_valid() throws IOException {
    Roster two = Roster.EMPTY.and("mara", "Mara \"the torch\"").and("t-2", "007");
    for (Roster roster : List.of(Roster.EMPTY, two)) {
      assertThat(new StudentsFile(roster, List.of()).save(new Home(folder))).isEmpty();
      String text = Files.readString(folder.resolve("students.yaml"));
      assertThat(valid(text)).as(text).isTrue();
      assertThat(read(text)).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "format: 1\ngap-days: 0\n",
        "format: 1\ngap-days: 91\n",
        "format: 1\nnames: {a: Ann}\n",
        "format: 2\n",
        "students: {a: Ann}\n"
      })
  void what_the_program_refuses_is_not_valid(String text) throws IOException {
    assertThat(read(text)).isFalse();
    assertThat(valid(text)).isFalse();
  }
}
