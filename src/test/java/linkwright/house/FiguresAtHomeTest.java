package linkwright.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassReader;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Handle;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.MethodVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Opcodes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What shows figures computes none: in its rooms no amount is added, taken off, multiplied or
 * divided. Read from the compiled classes, where an amount is a double and a count is not.
 */
class FiguresAtHomeTest {
  private static final Set<String> SHOWING = Set.of("coach", "view", "plain", "cli");

  private static final Set<Integer> SUMS =
      Set.of(Opcodes.DADD, Opcodes.DSUB, Opcodes.DMUL, Opcodes.DDIV, Opcodes.DREM);

  private static final Set<String> OWNERS_OF_SUMS =
      Set.of("java/util/stream/DoubleStream", "java/lang/Double", "java/lang/Math");

  private static final Set<String> NAMES_OF_SUMS =
      Set.of("sum", "average", "hypot", "sqrt", "pow", "exp", "log", "cbrt");

  @Test
  void whatever_computes_where_figures_are_shown_is_listed_with_its_reason() throws IOException {
    Set<String> found = new TreeSet<>();
    for (JavaClass type : Program.CLASSES) {
      String name = Program.shortName(type);
      if (SHOWING.contains(name.split("\\.", -1)[0]) && computes(type)) {
        found.add(name.replaceAll("\\.\\d+$", ""));
      }
    }
    Exceptions.of("figures-elsewhere").areAllThatIsFound(found);
  }

  private static boolean computes(JavaClass type) {
    Sums sums = new Sums();
    try (InputStream code = type.getSource().orElseThrow().getUri().toURL().openStream()) {
      new ClassReader(code.readAllBytes()).accept(sums, 0);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return sums.found;
  }

  /** Looks through the methods of one class. */
  private static final class Sums extends ClassVisitor {
    private boolean found;

    Sums() {
      super(Opcodes.ASM9);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String descriptor, String signature, String[] exceptions) {
      return new MethodVisitor(Opcodes.ASM9) {
        @Override
        public void visitInsn(int opcode) {
          found |= SUMS.contains(opcode);
        }

        @Override
        public void visitMethodInsn(
            int opcode, String owner, String called, String types, boolean ofInterface) {
          found |= OWNERS_OF_SUMS.contains(owner) && NAMES_OF_SUMS.contains(called);
        }

        @Override
        public void visitInvokeDynamicInsn(
            String called, String types, Handle bootstrap, Object... arguments) {
          for (Object argument : arguments) {
            found |=
                argument instanceof Handle handle
                    && OWNERS_OF_SUMS.contains(handle.getOwner())
                    && NAMES_OF_SUMS.contains(handle.getName());
          }
        }
      };
    }
  }
}
