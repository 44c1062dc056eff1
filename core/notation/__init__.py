"""What people type -> values of the core, and back. The only part that knows slang."""

from core.notation.session import read_session
from core.notation.values import Corrected, NotUnderstood, ReadEquipment, ReadSession

__all__ = ["Corrected", "NotUnderstood", "ReadEquipment", "ReadSession", "read_session"]
