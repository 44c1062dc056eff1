"""Which movement of the catalogue a name means, however it is typed."""
