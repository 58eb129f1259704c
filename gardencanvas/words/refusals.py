"""Why something was refused, in the language shown."""

from gardencanvas.crops.errors import Sayable
from gardencanvas.words.language import mark, say

_JOINED = {
    "crop": mark("crop"),
    "varieties": mark("varieties"),
    "shares": mark("shares of the varieties"),
    "start": mark("start"),
    "end": mark("end"),
    "per_station": mark("clump size"),
}


def why_refused(error: Exception) -> str:
    """The sentence of an error; that of one which is no sentence of ours stays as it is."""
    if not isinstance(error, Sayable):
        return str(error)
    values = {name: _value(name, value) for name, value in error.values.items()}
    return say(error.text, **values)


def _value(name: str, value: object) -> object:
    if isinstance(value, Exception):
        return why_refused(value)
    return say(_JOINED[value]) if name == "field" and isinstance(value, str) and value in _JOINED else value
