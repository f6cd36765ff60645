package linkwright.coach;
public enum PlaceId { TRAY }
