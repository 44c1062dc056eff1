"""`bellwether replay`: it stands beside `bellwether parked`, whose names it takes."""

from bot.commands.parked import replay

__all__ = ["replay"]
