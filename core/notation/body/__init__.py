"""What people say of their bodies: what hurts, where, how it felt, and what means stop."""
