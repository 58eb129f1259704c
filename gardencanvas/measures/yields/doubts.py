"""How far off a relative yield may be: what the model misses of published trials."""

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.density import held_back
from gardencanvas.measures.yields.bedful import Bedful
from gardencanvas.measures.yields.density import THINNEST, relative_yield
from gardencanvas.measures.yields.draws import COUNT, factor, normal
from gardencanvas.season.departing import ONE_IN_TEN

Floats = NDArray[np.float64]

# How far the model misses published trials: of the partial ratios of every other article eight of ten lie
# between 0.58 and 1.42 times the predicted one (tests/oracles/trials_table.md; Paut et al. 2024). Seventeen
# articles foretell one more with a range wider by t/z √(1 + 1/17) = 1.073 in logarithms.
BAND = (0.56, 1.46)
# … of the variance of these misses so much is of the article, and the same for all its crops …
OF_THE_GARDEN = 0.18
# … and nine of ten of those predicted to lose next to nothing (0.85 and more) gave at most so much.
MOST = 1.07


def possible(bedful: Bedful, relative: Floats, density: Floats) -> Floats:
    """Draws of relative yields, shape (COUNT, stands).

    Parameters
    ----------
    relative
        Relative yields in each drawn year, of the same shape.
    density
        Plants over the usual number, shape (stands,).
    """
    drawn = relative * _missed(bedful) * _thinned_otherwise(bedful, density)
    return np.minimum(drawn, np.maximum(relative, MOST))


def _missed(bedful: Bedful) -> Floats:
    """Draws of how far off the model may be, shape (COUNT, stands): nothing for a crop without company.

    One for each crop and the company it keeps: the same mixture is missed in the same way in both layouts.
    Its mean is 1, so that a sum over many crops is not drawn away from the sum that is told.
    """
    missed = np.ones((COUNT, len(bedful.stands)))
    for k, stand in enumerate(bedful.stands):
        company = sorted(
            {
                o.crop.id
                for o in bedful.stands
                if o.crop.id != stand.crop.id and o.begin < stand.end and stand.begin < o.end
            }
        )
        if company:
            name = f"{stand.crop.id} beside {', '.join(company)}"
            drawn = factor(*BAND, name, OF_THE_GARDEN)
            missed[:, k] = drawn / drawn.mean()
    return missed


def _thinned_otherwise(bedful: Bedful, density: Floats) -> Floats:
    """Draws of how far off the yield of thin stands may be, shape (COUNT, stands).

    From the range of c in the reciprocal yield law, how far a crop's plants hold each other back at the usual
    spacing. Stands thinner than published densities are taken as no less sure.
    """
    thin = np.clip(density, THINNEST, 1.0)
    found = np.ones((COUNT, len(bedful.stands)))
    for k, stand in enumerate(bedful.stands):
        low, mid, high, _ = held_back(stand.crop, stand.ground.need_m2, stand.planting.per_station)
        z = normal(f"crowding of {stand.crop.id}") / ONE_IN_TEN
        c = np.clip(mid + np.where(z > 0.0, high - mid, mid - low) * z, 0.0, 1.0)
        drawn = relative_yield(thin[k], c)
        found[:, k] = drawn / drawn.mean()
    return found
