"""Crops by identity, as keys: values of their size are slow to hash."""

from gardencanvas.crops.model import Crop


class Held:
    """A crop that equals only itself; it is kept, so that its identity stays its own."""

    __slots__ = ("crop",)

    def __init__(self, crop: Crop) -> None:
        self.crop = crop

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Held) and other.crop is self.crop

    def __hash__(self) -> int:
        return id(self.crop)
