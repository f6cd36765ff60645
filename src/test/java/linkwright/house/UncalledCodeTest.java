package linkwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import linkwright.Main;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;

/** What only tests use is shown to nobody: it is to be shown, or to go. */
class UncalledCodeTest {
  private static final Set<String> MADE_BY_THE_COMPILER =
      Set.of("values", "valueOf", "$values", "<clinit>");

  private static Reached reached() {
    Reached reached =
        new Reached().from(Program.CLASSES.get(Main.class).getMethod("main", String[].class));
    // Written and read by reflection over their components.
    Program.CLASSES.stream()
        .filter(type -> type.isAssignableTo(Fact.class))
        .forEach(reached::fromAllOf);
    return reached;
  }

  @Test
  void is_listed_with_its_reason() throws IOException {
    Exceptions.of("uncalled-code").areAllThatIsFound(uncalled(reached()));
  }

  @Test
  void is_found_where_the_program_begins_elsewhere() {
    JavaClass text = Program.CLASSES.get("linkwright.text.Text");
    List<String> uncalled = uncalled(new Reached().from(text.getMethod("safe", String.class)));
    assertThat(uncalled)
        .contains("Main", "coach.kernel.Model", "view.Screens", "text.Text.wrap(String, int)")
        .doesNotContain("text.Text", "text.Text.safe(String)");
  }

  private static List<String> uncalled(Reached reached) {
    List<String> uncalled = new ArrayList<>();
    for (JavaClass type : Program.CLASSES) {
      boolean outerListed =
          type.getEnclosingClass().filter(outer -> !reached.has(outer)).isPresent();
      if (type.getSimpleName().equals("package-info") || outerListed) {
        continue;
      }
      String name = Program.shortName(type);
      if (!reached.has(type)) {
        if (!type.reflect().isSynthetic()
            && !type.getMembers().stream().allMatch(member -> !isToBeCalled(member, reached))) {
          uncalled.add(name);
        }
        continue;
      }
      type.getMembers().stream()
          .filter(member -> !reached.has(member) && isToBeCalled(member, reached))
          .map(member -> name + "." + told(member))
          .distinct()
          .forEach(uncalled::add);
    }
    return uncalled;
  }

  private static boolean isToBeCalled(JavaMember member, Reached reached) {
    Set<JavaModifier> modifiers = member.getModifiers();
    if (modifiers.contains(JavaModifier.SYNTHETIC)
        || modifiers.contains(JavaModifier.BRIDGE)
        || MADE_BY_THE_COMPILER.contains(member.getName())) {
      return false;
    }
    if (member instanceof JavaField field) {
      if (Reached.isConstant(field)) {
        return !reached.listsAllOf(field.getOwner());
      }
      // The compiler puts the values of plain constants where they are used, and a record's
      // components are judged by how they are asked for.
      boolean inlined =
          modifiers.contains(JavaModifier.STATIC)
              && (field.getRawType().isPrimitive()
                  || field.getRawType().isEquivalentTo(String.class));
      return !inlined && !field.getOwner().isRecord();
    }
    if (isComponent(member)) {
      return !reached.has(member.getOwner().getField(member.getName()));
    }
    boolean keepsOthersFromMakingOne =
        member instanceof JavaConstructor constructor
            && modifiers.contains(JavaModifier.PRIVATE)
            && constructor.getParameters().isEmpty();
    return !keepsOthersFromMakingOne;
  }

  private static boolean isComponent(JavaMember member) {
    return member instanceof JavaMethod method
        && method.getOwner().isRecord()
        && method.getParameters().isEmpty()
        && method.getOwner().tryGetField(method.getName()).isPresent();
  }

  private static String told(JavaMember member) {
    if (member instanceof JavaCodeUnit unit) {
      String name = unit instanceof JavaConstructor ? "new" : unit.getName();
      return name
          + "("
          + String.join(
              ", ", unit.getRawParameterTypes().stream().map(JavaClass::getSimpleName).toList())
          + ")";
    }
    return member.getName();
  }
}
