"""`bellwether unit`: a unit file for systemd."""

import sys
from pathlib import Path

from bot.commands.console import print_text

# Exit 2 says that a setting is wrong: starting again wouldn't help. Everything else is worth another try.
TEMPLATE = """\
[Unit]
Description=Bellwether, a chat assistant for remote coaching groups
Wants=network-online.target
After=network-online.target
StartLimitIntervalSec=0

[Service]
Type=exec
# The folder of the .env file with BELLWETHER_TOKEN and the other settings, and of the database.
WorkingDirectory={folder}
ExecStart={python} -m bot serve
User={user}
UMask=0077
Restart=always
RestartSec=5
RestartPreventExitStatus=2
KillSignal=SIGTERM
TimeoutStopSec=40
MemoryMax=1G
NoNewPrivileges=true
PrivateTmp=true
ProtectSystem=strict
ProtectHome=read-only
ReadWritePaths={folder}

[Install]
WantedBy=multi-user.target"""


def unit() -> None:
    """Print a unit file for this folder: `bellwether unit > /etc/systemd/system/bellwether.service`."""
    folder = Path.cwd()
    print_text(TEMPLATE.format(folder=folder, python=sys.executable, user=folder.owner()))
