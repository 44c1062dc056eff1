"""The choice of design 6.4 as one weighted model for an independent solver, OR-Tools CP-SAT."""

from itertools import combinations, product
from operator import attrgetter

from ortools.sat.python import cp_model

# The parts of a value, in their order, and what none of them reaches on these instances.
BELOW = (6, 64, 256, 128, 6, 6, 64, 6, 6)


def weights():
    """One more of a part outweighs the most of all that follow it."""
    found = [1]
    for below in reversed(BELOW[1:]):
        found.insert(0, found[0] * below)
    return found


def solve(sections):
    """The parts of the best value, without the order of the options."""
    model = cp_model.CpModel()
    picks = [[[model.new_bool_var("") for _ in line] for line in section.lines] for section in sections]
    lines = [
        (line, row)
        for section, rows in zip(sections, picks, strict=True)
        for line, row in zip(section.lines, rows, strict=True)
    ]
    for _, row in lines:
        model.add_exactly_one(row)
    _share(model, lines)
    repeats = _meetings(model, sections, picks, _repeat)
    changes = _meetings(model, sections, picks, _differ)
    misfit, fresh = attrgetter("misfit"), attrgetter("fresh")
    parts = [*_alone(model, lines), repeats, _sum(lines, misfit), changes, _sum(lines, fresh)]
    model.minimize(sum(weight * part for weight, part in zip(weights(), parts, strict=True)))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    return tuple(int(solver.value(part)) for part in parts)


def _share(model, lines):
    """A shared thing has one setting wherever it is used."""
    settings: dict[object, dict[object, cp_model.IntVar]] = {}
    for line, row in lines:
        for one, pick in zip(line, row, strict=True):
            if one.thing is not None:
                at = settings.setdefault(one.thing, {}).setdefault(one.load, model.new_bool_var(""))
                model.add_implication(pick, at)
    for loads in settings.values():
        model.add_at_most_one(loads.values())


def _alone(model, lines):
    worst = model.new_int_var(0, BELOW[1] - 1, "")
    for line, row in lines:
        model.add(worst >= sum(one.alone[1] * pick for one, pick in zip(line, row, strict=True)))
    unsafe, beyond, distance, breathing = (_sum(lines, lambda one, at=at: one.alone[at]) for at in range(4))
    return unsafe, worst, beyond, distance, breathing


def _sum(lines, part):
    return sum(part(one) * pick for line, row in lines for one, pick in zip(line, row, strict=True))


def _repeat(one, other):
    return one.kind is not None and one.kind == other.kind


def _differ(one, other):
    return one.held is not None and other.held is not None and one.held != other.held


def _meetings(model, sections, picks, counts):
    """How many neighbours meet in a way that counts."""
    met = []
    for section, rows in zip(sections, picks, strict=True):
        for here, there in _neighbours(len(rows), ring=section.ring):
            met.append(model.new_bool_var(""))
            for n, m in product(range(len(rows[here])), range(len(rows[there]))):
                if counts(section.lines[here][n], section.lines[there][m]):
                    model.add(met[-1] >= rows[here][n] + rows[there][m] - 1)
    return sum(met)


def _neighbours(count, *, ring):
    if count == 2 and ring:
        return [(0, 1), (1, 0)]
    pairs = [(n, m) for n, m in combinations(range(count), 2) if m == n + 1]
    return [*pairs, (count - 1, 0)] if ring and count > 1 else pairs
