"""Which reading of a message was meant: all that its numbers allow, and a choice between them that is learned."""
