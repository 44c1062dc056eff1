"""A coach's pasted text -> Session, row by row and part by part, and back."""
