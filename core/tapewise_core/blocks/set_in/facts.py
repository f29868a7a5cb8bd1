"""What proofs ask of a body drafted with armholes."""

from __future__ import annotations

from tapewise_core.blocks.set_in.trunk import Trunk
from tapewise_core.drafting.facts import BareArmhole, Facts, Level, Side, Underarm
from tapewise_core.measures.body import Body
from tapewise_core.parts.bare_finish import Bare
from tapewise_core.parts.hand import hand_of
from tapewise_core.parts.neck_finish import Finish, head_of
from tapewise_core.parts.stride import body_hem


def facts(
    trunk: Trunk, body: Body, finish: Finish, levels: tuple[Level, ...], bare: Bare | None = None
) -> Facts:
    """Return the facts of a trunk, on its lower side where its sides differ; ``bare`` is what an
    armhole without a sleeve got."""
    seam, style, wish = trunk.drawn.seam, trunk.style, trunk.plan.wish
    own = wish.quarters.waist + seam.dart - abs(trunk.drawn.share.at(seam.at.waist))
    under = wish.levels.armscye.depth + wish.lower
    return Facts(
        head=head_of(body),
        ease=style.trunk.ease.mm,
        hand=hand_of(body, style.sleeve.length),
        neck=finish.neck,
        underarm=Underarm(seam.at.underarm, under, wish.levels.waist.depth),
        side=Side(own),
        hem=None if style.bodice else body_hem(body, style.hem, finish.back, finish.front),
        bare=BareArmhole(bare.taken, trunk.drawn.swing, bare.ratio) if bare else None,
        levels=levels,
    )
