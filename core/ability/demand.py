"""What one repetition asks of the body: the load moved, in kg."""

from core.movements.values import Hold, Share, Variant

# The heights of a share's table were measured on adults of about this stature (estimate).
REFERENCE_STATURE_CM = 175.0


def body_share(share: Share, height_cm: float | None = None, stature_cm: float | None = None) -> float:
    """Share of body mass moved with hands (or feet) at `height_cm`, which counts relative to stature.

    Interpolated between the measured heights and clamped beyond them; None means the usual height.
    """
    if height_cm is None or stature_cm is None:
        return share.at(height_cm)
    return share.at(height_cm * REFERENCE_STATURE_CM / stature_cm)


def load_moved(
    variant: Variant,
    body_mass_kg: float,
    hold: Hold | None = None,
    load_kg: float = 0.0,
    height_cm: float | None = None,
) -> float:
    """`share x body mass + factor x external load` in kg. `load_kg` is per implement; a hold may have two."""
    own = body_share(variant.body_share, height_cm) * body_mass_kg
    return own if hold is None else own + hold.factor * hold.count * load_kg
