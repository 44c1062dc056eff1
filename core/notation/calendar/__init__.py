"""Days, hours, zones and classes in words."""
