package linkwright.coach.kernel;

public interface Held { }
