"""What a hostile client can make up: fields of presses, texts, names. Drawn at random with a seed."""

import string

NUMBERS = (
    *map(str, range(-1, 8)),
    *(str(2**n + d) for n in (15, 31, 32, 53, 62, 63, 64) for d in (-1, 0, 1)),
    *("-9223372036854775809", "9" * 20, "1e5", "0x10", "1_0", "٣", "½", "NaN", "inf", "-0", "1.5", " 1"),
    *("202603031830", "202613312560", "739000", "999999", "1000000", "3652060", "29000000"),
)
WORDS = (
    *("", "yes", "True", "0", "no", "y", "ynnn", "yyyyyyyy", "xx", "pain", "sore", "wrist", "left", "both"),
    *("push-up", "goblet squat", "nothing", "dumbbell", "chair", "unnamed", "gym", "home", "trip"),
    *("Europe/Berlin", "../../etc/passwd", "UTC", "kg", "lb", "lead", "equipment", "fever", "gone", "today"),
    *("too-hard", "bored", "menu", "harder", "free", "checked", "counts_again", "all", "one", "bad", "legs"),
    *("a" * 40, "\x00", "\u202e", "💥", "'; DROP TABLE person; --", "%s%n", "{0}", "<b>", "null", "None"),
)
TEXTS = (
    "adjustable dumbbell 1-500 kg in 0.00000001 kg steps",
    "barbell 20 kg, plates: " + ", ".join(f"{n} x {n}.{n} kg" for n in range(2, 30)),
    "dumbbells " + " ".join(str(n / 8) for n in range(1, 300)),
    "AMRAP 12\n0 ring dips\n10 push-ups",
    "AMRAP 0\n10 push-ups @ 0 kg",
    "5 x 99999 back squats @ 99999.999999999999 kg",
    "\n".join(f"AMRAP {n}\n10 push-ups\n5 pull-ups" for n in range(1, 60)),
    "49 x 5 min amrap\n" + "\n".join(["10 push-ups"] * 60),
    "for time\n" + ", ".join(["1 push-up"] * 300),
    "9" * 4000,
    "(" * 4000,
    "7+12 " * 800,
    "rpe " * 1000,
    "rpe 7",
    "1/2/3/4/5/6/7/8/9/0" * 200,
    "\u0301" * 4000,
    "a\u202eb\u0000c\ufeff",
    "💪" * 2000,
    "<b>&amp;</i>" * 300,
    "I can do 999 push-ups",
    "I can do 300 deadlifts at 400 kg",
    "remind me 99999999 hours before",
    "quiet hours 99 to 77",
    "class Tuesdays 25:99, 999999 min",
    "I have 99999 minutes",
    "I weigh 0.0001 kg",
    "I'm away until 99.99.9999",
    "post it on 31 February at 25:00",
    "Ilse 999999+999999",
    "99999999+1",
    "8:99",
    "-1",
    "/start v99999999999999999999999",
    "/start v0",
    "/start g-1",
    "/start " + "x" * 500,
    "/board@" + "x" * 300,
    "/",
    " ",
)


def press(random, code, kind):
    """Data with this code: as many fields as the command has, or one more or less; each of them anything."""
    count = len(kind.model_fields) + random.choice((0, 0, 0, 0, 0, 0, 0, 0, 0, 1, -1))
    fields = [random.choice(NUMBERS if random.random() < 0.7 else WORDS) for _ in range(max(count, 0))]
    return ":".join([code, *fields])


def text(random):
    """A hostile text, a mix of several, or noise."""
    draw = random.random()
    if draw < 0.6:
        return random.choice(TEXTS)[:4096]
    if draw < 0.8:
        pieces = [random.choice(TEXTS) for _ in range(3)]
        return " ".join(piece[: random.randrange(1, 400)] for piece in pieces)[:4096]
    letters = string.printable + "éß漢字٣½💥\u200b\u2028\u0300"
    return "".join(random.choice(letters) for _ in range(random.randrange(1, 600)))
