"""How the fields of acts are filled: a table for each kind of act, as in `core/understanding/acts`."""
