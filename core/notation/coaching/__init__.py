"""What a coach says of one athlete: faults, wishes, leeway, easy days."""
