"""Changes sound documents into broken, hostile or odd ones, knowing what is in them."""

import copy
import json

HOSTILE = [
    None, True, False, 0, -1, 1, 2**31, 2**63, -(2**64), 10**30, 1e308, -1e308, 5e-324, -0.0, 0.005, 1e-9,
    "", " ", "x", "x" * 300, "x" * 20_000, "\x00", "\n\r\t", "\u202e", "\ud83c\udf31", "<b>&amp;</b>",
    "../../etc", "2027-02-30", "0000-00-00", "9999-12-31", "2027-05-01T00:00", "sown", "rows", "drift",
    "NaN", "1e5",
    [], {}, [[]], [None], {"": None}, {"kind": "rows"}, [0, 0], [[0, 0], [0, 0], [0, 0]], [1e308, -1e308],
]  # fmt: skip


def places(document):
    """Every place of a tree: the thing that holds it, and its key or index there."""
    found, open_ = [], [document]
    while open_:
        holder = open_.pop()
        entries = holder.items() if isinstance(holder, dict) else enumerate(holder)
        for key, value in entries:
            found.append((holder, key))
            if isinstance(value, (dict, list)):
                open_.append(value)
    return found


def _value(draw, document):
    """A hostile value, or one from elsewhere in the document."""
    if draw.random() < 0.5:
        return copy.deepcopy(draw.choice(HOSTILE))
    holder, key = draw.choice(places(document))
    return copy.deepcopy(holder[key])


def _replace(draw, document):
    holder, key = draw.choice(places(document))
    holder[key] = _value(draw, document)


def _near(draw, document):
    """A number a little or very much off: past a limit, below nought, the other kind of number."""
    numbers = [
        (h, k) for h, k in places(document) if isinstance(h[k], (int, float)) and not isinstance(h[k], bool)
    ]
    holder, key = draw.choice(numbers)
    holder[key] = draw.choice([-holder[key], holder[key] * 1000, holder[key] / 1000, holder[key] + 0.5, 1e6])


def _remove(draw, document):
    holder, key = draw.choice(places(document))
    del holder[key]


def _add(draw, document):
    holders = [h for h, _ in places(document) if isinstance(h, dict)]
    draw.choice(holders)[draw.choice(["weather", "", "format", "id", "kind", "x" * 500])] = _value(
        draw, document
    )


def _multiply(draw, document):
    lists = [h[k] for h, k in places(document) if isinstance(h[k], list) and h[k]]
    chosen = draw.choice(lists)
    chosen.extend(copy.deepcopy(chosen[: draw.choice([1, 1, 3])]) * draw.choice([1, 2, 50]))


def _rename(draw, document):
    """The same ids, crops and kinds in other places."""
    words = [(h, k) for h, k in places(document) if isinstance(h[k], str)]
    (one, a), (other, b) = draw.choice(words), draw.choice(words)
    one[a], other[b] = other[b], one[a]


MUTATIONS = [_replace, _replace, _near, _near, _remove, _add, _multiply, _rename]


def mutated(draw, base):
    """A document with one to four changes, as bytes; some changes are to the text itself.

    Parameters
    ----------
    draw
        A ``random.Random``.
    base
        The sound document, as JSON.
    """
    document = json.loads(base)
    for _ in range(draw.choice([1, 1, 1, 2, 4])):
        draw.choice(MUTATIONS)(draw, document)
    data = json.dumps(document, ensure_ascii=draw.random() < 0.5).encode("utf-8", "surrogatepass")
    if draw.random() < 0.2:
        data = _torn(draw, data)
    return data


def _torn(draw, data):
    """The text cut, doubled, with a byte changed or a piece moved."""
    at, to = sorted((draw.randrange(len(data)), draw.randrange(len(data))))
    return draw.choice(
        [
            data[:at],
            data[:at] + bytes([draw.randrange(256)]) + data[at + 1 :],
            data[:at] + data[to:],
            data + data,
            data[:to] + data[at:],
            data.replace(b",", b",,", 1),
            b"\xef\xbb\xbf" + data,
            data.decode("utf-8", "replace").encode("utf-16"),
        ]
    )
