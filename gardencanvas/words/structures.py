"""Names of supports and covers, from their codes."""

from gardencanvas.words.language import mark, say, say_many

_SUPPORTS = {
    "cane row": mark("row of canes"),
    "cane ring": mark("ring of canes"),
    "net": mark("net"),
    "trellis": mark("trellis"),
    "stake": mark("stake"),
    "cane": mark("cane"),
}
_COVERS = {
    "fleece": mark("fleece"),
    "mesh": mark("mesh"),
    "cloche": mark("cloche"),
    "frame": mark("frame"),
}


def support_name(code: str) -> str:
    """What a crop climbs on: a kind of support, or what a crop is said to want; the code if it is unknown."""
    return say(_SUPPORTS.get(code, code))


def cover_name(code: str) -> str:
    """A kind of cover in words."""
    return say(_COVERS[code])


def supports_counted(code: str, number: int) -> str:
    """So many supports of a kind: ``a net``, ``2 rows of canes``."""
    match code:
        case "cane row":
            return say_many("a row of canes", "{n} rows of canes", number)
        case "cane ring":
            return say_many("a ring of canes", "{n} rings of canes", number)
        case "net":
            return say_many("a net", "{n} nets", number)
        case "trellis":
            return say_many("a trellis", "{n} trellises", number)
        case "stake":
            return say_many("a stake", "{n} stakes", number)
        case "cane":
            return say_many("a cane", "{n} canes", number)
    return code  # of a crop of the grower's own
