package linkwright.coach.kernel;

public enum PlaceId { TRAY }
