"""What a sentence about a finding is made of."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from gardencanvas.fit.report import Finding
from gardencanvas.words.language import say
from gardencanvas.words.plain import Measure, day, day_year


@dataclass(frozen=True)
class Told:
    """A finding with the names of its plantings, the one that suffers first."""

    finding: Finding
    names: tuple[str, ...]
    measure: Measure
    families: Mapping[str, str]  # botanical name -> name in words

    @property
    def who(self) -> str:
        """The planting that suffers."""
        return self.names[0]

    @property
    def others(self) -> str:
        """The plantings that cause it."""
        return joined(self.names[1:]) or self.who

    @property
    def several(self) -> bool:
        """Whether those that cause it have more than one name, so that a verb is in the plural."""
        return len(set(self.names[1:])) > 1

    @property
    def kinds(self) -> str:
        """A sentence on pest kinds kept apart, where the finding is about two families; else nothing."""
        apart = self.finding.numbers.get("families", 1) != 1
        return f" {say('Of two families, they have few pests in common.')}" if apart else ""

    def number(self, key: str) -> float:
        """One of the finding's numbers."""
        return float(self._value(key))

    def count(self, key: str) -> int:
        """One of its numbers, whole."""
        return int(self._value(key))

    def day(self, key: str) -> str:
        """One of its dates."""
        value = self._value(key)
        return day(value) if isinstance(value, date) else str(value)

    def date(self, key: str) -> str:
        """One of its dates, with the year where that is not the year in which the finding begins."""
        value = self._value(key)
        if isinstance(value, date) and value.year != self.finding.first.year:
            return day_year(value)
        return self.day(key)

    def has(self, key: str) -> bool:
        """Whether it has such a number."""
        return key in self.finding.numbers

    def text(self, key: str) -> str:
        """One of its words."""
        return str(self._value(key))

    def small(self, key: str) -> str:
        """One of its lengths, in the grower's units."""
        return self.measure.small(self.number(key))

    def _value(self, key: str) -> Any:
        return self.finding.numbers[key]


def joined(names: Iterable[str]) -> str:
    """Names in a row, each once: ``Leek, Onion and Carrot``; empty for none."""
    *some, last = dict.fromkeys(names) or ("",)
    return say("{some} and {last}", some=", ".join(some), last=last) if some else last
