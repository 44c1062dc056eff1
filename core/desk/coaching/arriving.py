"""Which members of a group have no version of their own yet, and how far they have come."""

from collections.abc import Iterable

from core.desk.joining.says import Arriving
from core.store.records import Membership
from core.store.unit import Unit


async def arriving(uow: Unit, members: Iterable[Membership]) -> Arriving:
    """By name, in the members' order: a score or a sign-up in the group needs no private chat."""
    at_questions: list[str] = []
    in_group_only: list[str] = []
    for member in members:
        profile = await uow.profiles.get(member.person_id, member.person.name)
        if profile.screening is None:
            chat = await uow.chats.private_of(member.person_id)
            (at_questions if chat else in_group_only).append(profile.name)
    return Arriving(at_questions=tuple(at_questions), in_group_only=tuple(in_group_only))
