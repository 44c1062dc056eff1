"""How the fields of an act are filled from what is named in a stretch."""
