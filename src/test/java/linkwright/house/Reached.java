package linkwright.house;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.domain.JavaFieldAccess.AccessType;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.ReferencedClassObject;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which methods, constructors and fields of the program its own code can come to from where it
 * begins, as far as bytecode tells. A call of a method may end in each one that overrides it; a
 * method that overrides one of a library's is called by the library; what a library finds by an
 * annotation is used by it. Whatever could run is taken to run.
 */
final class Reached {
  private final Set<JavaMember> members = new HashSet<>();
  private final Set<JavaClass> classes = new HashSet<>();
  private final Set<JavaClass> listedWhole = new HashSet<>();
  private final Deque<JavaCodeUnit> open = new ArrayDeque<>();

  /** Follows everything that begins here; may be called again for another beginning. */
  Reached from(JavaCodeUnit beginning) {
    add(beginning);
    while (!open.isEmpty()) {
      follow(open.remove());
    }
    return this;
  }

  /** Follows everything that a class has, for what is found by reflection. */
  Reached fromAllOf(JavaClass type) {
    addClass(type);
    members.addAll(type.getFields());
    type.getCodeUnits().forEach(this::from);
    return this;
  }

  boolean has(JavaClass type) {
    return classes.contains(type);
  }

  /** Whether a method is called, or a field read. */
  boolean has(JavaMember member) {
    return members.contains(member);
  }

  /** Whether all constants of an enum can come up at once. */
  boolean listsAllOf(JavaClass type) {
    return listedWhole.contains(type);
  }

  private void add(JavaCodeUnit unit) {
    if (Program.isOurs(unit.getOwner()) && members.add(unit)) {
      addClass(unit.getOwner());
      open.add(unit);
    }
  }

  private void addClass(JavaClass type) {
    JavaClass ours = type.getBaseComponentType();
    if (!Program.isOurs(ours) || !classes.add(ours)) {
      return;
    }
    ours.getStaticInitializer().ifPresent(this::add);
    ours.getRawSuperclass().ifPresent(this::addClass);
    ours.getRawInterfaces().forEach(this::addClass);
    ours.getMethods().stream().filter(Reached::overridesALibrarys).forEach(this::add);
    ours.getAnnotations().forEach(this::addNamedIn);
    for (JavaMember member : ours.getMembers()) {
      if (member.getAnnotations().stream().anyMatch(Reached::isReadByALibrary)) {
        members.add(member);
        if (member instanceof JavaCodeUnit unit) {
          add(unit);
        }
      }
      member.getAnnotations().forEach(this::addNamedIn);
    }
  }

  private static boolean isReadByALibrary(JavaAnnotation<?> annotation) {
    String name = annotation.getRawType().getPackageName();
    return !name.startsWith("java.") && !Program.isOurs(annotation.getRawType());
  }

  /** Classes that an annotation names are made by whoever reads it. */
  private void addNamedIn(JavaAnnotation<?> annotation) {
    for (Object value : annotation.getProperties().values()) {
      Stream<?> all = value instanceof Object[] several ? Stream.of(several) : Stream.of(value);
      all.filter(JavaClass.class::isInstance)
          .map(JavaClass.class::cast)
          .filter(Program::isOurs)
          .forEach(type -> type.getConstructors().forEach(this::add));
    }
  }

  private static boolean overridesALibrarys(JavaMethod method) {
    JavaClass owner = method.getOwner();
    return Stream.concat(
            owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
        .filter(type -> !Program.isOurs(type))
        .flatMap(type -> type.getMethods().stream())
        .anyMatch(
            theirs ->
                theirs.getName().equals(method.getName())
                    && theirs.getRawParameterTypes().size()
                        == method.getRawParameterTypes().size());
  }

  private void follow(JavaCodeUnit unit) {
    for (JavaAccess<?> access : unit.getAccessesFromSelf()) {
      addClass(access.getTargetOwner());
      if (access instanceof JavaFieldAccess field) {
        read(unit, field);
      } else if (access.getTarget() instanceof CodeUnitAccessTarget target) {
        call(target);
      }
    }
    unit.getReferencedClassObjects().stream()
        .map(ReferencedClassObject::getRawType)
        .forEach(this::addClass);
    unit.getInstanceofChecks().forEach(check -> addClass(check.getRawType()));
    unit.getTryCatchBlocks().forEach(block -> block.getCaughtThrowables().forEach(this::addClass));
  }

  private void read(JavaCodeUnit by, JavaFieldAccess access) {
    // What the compiler makes of an enum reads all its constants, a switch those that it has a case
    // for: neither makes one come up.
    boolean ownEnum = by.getOwner().equals(access.getTargetOwner()) && by.getOwner().isEnum();
    boolean writes = access.getAccessType() == AccessType.SET;
    access
        .getTarget()
        .resolveMember()
        .filter(field -> !writes)
        .filter(field -> !(isConstant(field) && ((ownEnum && isMade(by)) || isSwitch(by))))
        .ifPresent(members::add);
  }

  static boolean isConstant(JavaField field) {
    return field.getOwner().isEnum() && field.getRawType().equals(field.getOwner());
  }

  private static boolean isMade(JavaCodeUnit unit) {
    return unit.getName().equals("<clinit>") || unit.getName().equals("$values");
  }

  private static boolean isSwitch(JavaCodeUnit unit) {
    return unit.getOwner().getFields().stream()
        .anyMatch(field -> field.getName().startsWith("$SwitchMap$"));
  }

  private void call(CodeUnitAccessTarget target) {
    target.resolveMember().ifPresent(this::add);
    JavaClass owner = target.getOwner();
    if (owner.isEnum()
        && (target.getName().equals("values") || target.getName().equals("valueOf"))) {
      listedWhole.add(owner);
    }
    for (JavaClass type : owner.getAllSubclasses()) {
      type.getAllMethods().stream()
          .filter(method -> method.getName().equals(target.getName()))
          .filter(method -> method.getRawParameterTypes().equals(target.getRawParameterTypes()))
          .forEach(this::add);
    }
  }
}
