"""What people write -> acts: read everything, then choose."""
