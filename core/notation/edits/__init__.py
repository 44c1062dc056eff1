"""A coach's change of a session in words -> another text of it."""
