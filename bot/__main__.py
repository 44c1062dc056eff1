"""`python -m bot` is `bellwether`."""

from bot.cli import main

main()
