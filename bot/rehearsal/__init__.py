"""A stand-in for the Bot API server, and the voices of the people who use it: try the bot with no account.

The heart: `platform.py` (one world: `chats.py`, `updates.py`, `diary.py`), `methods/` (what bots call),
`people.py` and `hearing.py` (what people do, and which bot hears of it), `faults.py`, `rates.py`, `clock.py`.
The edges: `server.py` with `wire.py` (a transport for bots; tests have one more), `acts.py` and `stage.py`
(two ways to the same acts), `remote_clock.py`. On top: `voice.py`, what tests and the demo say; `day/`, what the demo
plays; `transcript.py` and `room/`, two ways to watch it.
"""
