package linkwright.coach;
import java.util.Optional;
public interface Held { }
