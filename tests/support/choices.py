"""Random instances of the choice, and what one choice of them costs."""

from itertools import combinations

from core.scaling.choice import Candidate, Meeting, Section, neighbours

THINGS = (None, None, None, 0, 1)
KINDS = (None, "swing", "deadlift")
REST = Candidate(400)
PARTS = (None, "hinge", "push")
JOINTS = (None, None, None, "wrist")
MEETING = Meeting(repeats=14, change=2, heaps=9, strains=5, parted=6)


def some_candidate(random, asked=None):
    thing = random.choice(THINGS)
    load = float(random.choice((4, 6, 8)))
    held = random.choice((None, ("dumbbell", 1, load), ("kettlebell", 1, 16.0)))
    held = held if thing is None else (f"thing {thing}", 1, load)
    seen = random.choice(PARTS), random.random() < 0.4, random.choice(JOINTS)
    points, kind, line = random.choice((0, 1, 2, 4, 9, 20, 40)), random.choice(KINDS), asked and f"a {asked}"
    return Candidate(points, kind, held, thing, load, *seen, asked, line, done=(kind, held))


def some_line(random, most):
    asked = random.choice((None, "row", "run"))
    line = [some_candidate(random, asked) for _ in range(random.randint(1, most))]
    return [*line, REST]  # always an option, and shares nothing


def some_sections(random, lines=(1, 4), options=5):
    """Lines between these counts, with so many options at most beside rest; the first are a buy-in, maybe."""
    lines = [some_line(random, options) for _ in range(random.randint(*lines))]
    cut = random.randrange(len(lines))
    return [Section(lines[:cut], ring=False), Section(lines[cut:], ring=random.random() < 0.8)]


def value_of(sections, chosen, meeting):
    """What one choice for every line costs, straight from the definition of the choice."""
    rest = iter(chosen)
    cost = 0
    for section in sections:
        row = [line[next(rest)] for line in section.lines]
        cost += sum(one.cost for one in row)
        cost += sum(meeting.between(*pair) for pair in neighbours(row, ring=section.ring))
        cost += sum(meeting.anywhere(*pair) for pair in combinations(row, 2))
    return cost, tuple(chosen)
