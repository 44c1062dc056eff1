"""What a session comes to for one athlete: an expected score with its range, and how to pace it."""
