package linkwright.terminal;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.function.IntConsumer;

/**
 * Listens to signals that Java has no public way for: the window's size changed, the program was
 * stopped and goes on. Where the virtual machine has none, nothing is listened to; the program then
 * works but won't notice a changed size.
 */
final class Signals {
  /**
   * What would end the program on the spot, without its shutdown hooks: no terminal would be given
   * back. HUP, INT and TERM run the hooks by themselves. QUIT, KILL and what tells of a fault of
   * the virtual machine can't be listened to; USR2 is its own where the start script gives it no
   * other, PROF a profiler's, PIPE it passes over.
   */
  private static final List<String> ENDING =
      List.of("USR1", "ALRM", "VTALRM", "XCPU", "IO", "PWR", "STKFLT");

  private Signals() {}

  /** Signals that would end the program on the spot end it in order. */
  static void endTheProgram() {
    for (String signal : ENDING) {
      on(signal, number -> System.exit(128 + number));
    }
  }

  /** Runs the action whenever a signal comes, on a thread of the system's. */
  static void on(String signal, Runnable action) {
    on(signal, number -> action.run());
  }

  private static void on(String signal, IntConsumer action) {
    try {
      // By name, for the compiler warns of the type itself and the strict build refuses warnings.
      Class<?> type = Class.forName("sun.misc.Signal");
      Class<?> handlerType = Class.forName("sun.misc.SignalHandler");
      Method number = type.getMethod("getNumber");
      Object handler =
          Proxy.newProxyInstance(
              Signals.class.getClassLoader(),
              new Class<?>[] {handlerType},
              (self, method, arguments) -> {
                switch (method.getName()) {
                  case "handle" -> action.accept((int) number.invoke(arguments[0]));
                  case "equals" -> {
                    return self == arguments[0];
                  }
                  case "hashCode" -> {
                    return System.identityHashCode(self);
                  }
                  case "toString" -> {
                    return "listens to " + signal;
                  }
                  default -> throw new UnsupportedOperationException(method.getName());
                }
                return null;
              });
      type.getMethod("handle", type, handlerType)
          .invoke(null, type.getConstructor(String.class).newInstance(signal), handler);
    } catch (ClassNotFoundException
        | NoSuchMethodException
        | IllegalAccessException
        | InstantiationException
        | InvocationTargetException e) {
      // The class comment says what is then missing.
    }
  }
}
