"""Remedies seen from outside: the change is made, and the garden judged anew."""

from gardencanvas.fit.checker import check
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.planner.remedies import apply

WORTH_A_WORD = 0.02  # of the light


def replay(garden, layout_id, finding, remedy):
    """What a remedy leaves to be desired, in words; empty when it keeps its promise."""
    before = check(garden, layout_id)
    after = check(apply(garden, layout_id, remedy), layout_id)
    wrong = [
        f"{i} is worse: {fit.verdict.word}, was {before.plantings[i].verdict.word}"
        for i, fit in after.plantings.items()
        if fit.verdict > before.plantings[i].verdict
    ]
    old = {f.id: f for f in before.findings if f.verdict >= Verdict.STRAINS}
    for f in after.findings:
        if f.verdict < Verdict.STRAINS:
            continue
        if f.id == finding.id:
            wrong.append(f"{f.id} is still there: {f.verdict.word}")
        elif f.id not in old and not _only_blamed_anew(f, old, before, after):
            wrong.append(f"{f.id} is new: {f.verdict.word}")
        elif f.id in old and f.verdict > old[f.id].verdict:
            wrong.append(f"{f.id} is worse")
    return wrong


def _only_blamed_anew(finding, old, before, after):
    """Whether a plant that lacked light before lacks no more of it, and only another is blamed."""
    who = finding.plantings[0]
    lacked = [f for f in old.values() if f.kind is Kind.SHADING and f.plantings[0] == who]
    lost = before.plantings[who].light - after.plantings[who].light
    same = any(f.verdict >= finding.verdict for f in lacked)
    return finding.kind is Kind.SHADING and same and lost < WORTH_A_WORD
