"""One line of a board: how much of what, with what."""
