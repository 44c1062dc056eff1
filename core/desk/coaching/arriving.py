"""Which members of a group have no version of their own yet, and how far they have come."""

from collections.abc import Iterable

from core.desk.joining.says import Arriving
from core.store.records import Membership
from core.store.unit import Unit


async def arriving(uow: Unit, members: Iterable[Membership]) -> Arriving:
    """By name, in the members' order: a score or a sign-up in the group needs no private chat."""
    at_questions: list[str] = []
    in_group_only: list[str] = []
    without_notes: list[str] = []
    for member in members:
        profile = await uow.profiles.get(member.person_id, member.person.name)
        if profile.screening is not None:
            continue
        chat = await uow.chats.private_of(member.person_id)
        if chat is None:
            in_group_only.append(profile.name)
        elif await uow.consents.given(member.person_id) or await uow.questions.open_in(chat.id):
            at_questions.append(profile.name)
        else:
            without_notes.append(profile.name)
    return Arriving(
        at_questions=tuple(at_questions),
        in_group_only=tuple(in_group_only),
        without_notes=tuple(without_notes),
    )
