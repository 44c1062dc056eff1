"""The Bot API's types and methods as an independent library models them, each built when it is first needed.

All at once they take seconds to build, in every process of the tests; most are never looked at.
"""

import typing
from types import ModuleType
from unittest import mock

from pydantic import BaseModel


def _loaded() -> tuple[ModuleType, ModuleType, type]:
    deferred = {**BaseModel.model_config, "defer_build": True}
    not_yet = classmethod(lambda _model, **_: None)
    with mock.patch.multiple(BaseModel, model_config=deferred, model_rebuild=not_yet):
        import aiogram.methods  # noqa: PLC0415 - its models are made while it is imported
        import aiogram.types  # noqa: PLC0415 - as above
        from aiogram.client.default import Default  # noqa: PLC0415 - as above
    return aiogram.types, aiogram.methods, Default


types, methods, Default = _loaded()


def built(model: type[BaseModel]) -> type[BaseModel]:
    """The model, ready to validate; what it is made of is built with it."""
    if not model.__pydantic_complete__:
        model.model_rebuild(_types_namespace=_names())
    return model


def _names() -> dict[str, object]:
    named = {name: getattr(types, name) for name in types.__all__}
    return vars(typing) | named | {"Default": Default}
