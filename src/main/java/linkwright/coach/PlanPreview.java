package linkwright.coach;

/** placeholder until the plan is here. */
public record PlanPreview() {}
