"""What of a plan is hidden for the time being: whole sorts of things, and single ones."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from gardencanvas.garden.garden import Item
from gardencanvas.garden.sorts import Sort, sort_of


@dataclass(frozen=True, slots=True)
class Hidden:
    """Belongs to the window, not to the garden: it is neither saved nor undone."""

    sorts: frozenset[Sort] = frozenset()
    ids: frozenset[str] = frozenset()

    def __bool__(self) -> bool:
        return bool(self.sorts or self.ids)

    def hides(self, item: Item) -> bool:
        """Whether a thing is hidden."""
        return item.id in self.ids or sort_of(item) in self.sorts

    def with_ids(self, ids: Iterable[str]) -> "Hidden":
        """These single things hidden, too."""
        return replace(self, ids=self.ids | frozenset(ids))

    def with_sort(self, sort: Sort, *, on: bool) -> "Hidden":
        """A whole sort hidden, or all of it shown again."""
        return replace(self, sorts=self.sorts | {sort} if on else self.sorts - {sort})

    def showing(self, items: Iterable[Item]) -> "Hidden":
        """These things shown, with the rest of their sorts where those were hidden whole."""
        shown = list(items)
        sorts = {sort_of(item) for item in shown}
        return Hidden(self.sorts - sorts, self.ids - {item.id for item in shown})
