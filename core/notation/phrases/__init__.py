"""What coaches type around the lines: clocks, rounds, rests, aims, how hard it is."""
