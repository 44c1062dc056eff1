from tests.support.durable import bells, bot, post, store, tables

__all__ = ["bells", "bot", "post", "store", "tables"]
