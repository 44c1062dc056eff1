"""The choice as one weighted model for an independent solver, OR-Tools CP-SAT."""

from itertools import combinations, product

from ortools.sat.python import cp_model


def solve(sections, meeting):
    """The least that a choice for every line costs."""
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
    alone = sum(one.cost * pick for line, row in lines for one, pick in zip(line, row, strict=True))
    repeats = _meetings(model, sections, picks, _same, _neighbours)
    changes = _meetings(model, sections, picks, _differ, _neighbours)
    heaps = _meetings(model, sections, picks, _heap, _any_two)
    heaps += _meetings(model, sections, picks, _same, _any_two)
    strains = _meetings(model, sections, picks, _strain, _any_two)
    parted = _meetings(model, sections, picks, _part, _any_two)
    near = meeting.repeats * repeats + meeting.change * changes
    far = meeting.heaps * heaps + meeting.strains * strains + meeting.parted * parted
    model.minimize(alone + near + far)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    return round(solver.objective_value)


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


def _same_asked(one, other):
    return one.asked is not None and one.asked == other.asked


def _same(one, other):
    return one.kind is not None and one.kind == other.kind and not _same_asked(one, other)


def _part(one, other):
    other_way = one.line == other.line and one.done != other.done
    return _same_asked(one, other) and (one.kind != other.kind or other_way)


def _differ(one, other):
    return one.held is not None and other.held is not None and one.held != other.held


def _heap(one, other):
    heaped = one.part is not None and one.part == other.part and (one.adds or other.adds)
    return heaped and not _same_asked(one, other)


def _strain(one, other):
    return one.joint is not None and one.joint == other.joint


def _meetings(model, sections, picks, counts, pairs):
    """How many pairs of lines meet in a way that counts."""
    met = []
    for section, rows in zip(sections, picks, strict=True):
        for here, there in pairs(len(rows), ring=section.ring):
            met.append(model.new_bool_var(""))
            for n, m in product(range(len(rows[here])), range(len(rows[there]))):
                if counts(section.lines[here][n], section.lines[there][m]):
                    model.add(met[-1] >= rows[here][n] + rows[there][m] - 1)
    return sum(met)


def _any_two(count, *, ring):
    del ring  # wherever they are
    return combinations(range(count), 2)


def _neighbours(count, *, ring):
    if count == 2 and ring:
        return [(0, 1), (1, 0)]
    pairs = [(n, m) for n, m in combinations(range(count), 2) if m == n + 1]
    return [*pairs, (count - 1, 0)] if ring and count > 1 else pairs
