"""What a stretch of a board is, learned from examples: a rest, a cap, a heading, talk."""
