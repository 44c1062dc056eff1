"""English. Importing it registers every wording of every room."""

from importlib import import_module
from pkgutil import walk_packages

for _module in walk_packages(__path__, f"{__name__}."):
    import_module(_module.name)
