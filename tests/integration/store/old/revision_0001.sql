-- Invented people, as revision 0001 stored them. Never changed: every later head has to read it.
BEGIN TRANSACTION;
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0001');
CREATE TABLE attempt (
	id INTEGER NOT NULL, 
	outbox_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	started_at DATETIME NOT NULL, 
	ended_at DATETIME, 
	outcome VARCHAR, 
	detail VARCHAR, 
	CONSTRAINT pk_attempt PRIMARY KEY (id), 
	CONSTRAINT fk_attempt_outbox_id_outbox FOREIGN KEY(outbox_id) REFERENCES outbox (id), 
	CONSTRAINT uq_attempt_outbox_id_number UNIQUE (outbox_id, number)
);
INSERT INTO "attempt" VALUES(1,1,1,'2026-03-02 07:30:00.000000',NULL,NULL,NULL);
CREATE TABLE chat (
	id INTEGER NOT NULL, 
	address BIGINT NOT NULL, 
	kind VARCHAR NOT NULL, 
	person_id INTEGER, 
	reachable BOOLEAN NOT NULL, 
	unreachable_since DATETIME, 
	CONSTRAINT pk_chat PRIMARY KEY (id), 
	CONSTRAINT fk_chat_person_id_person FOREIGN KEY(person_id) REFERENCES person (id), 
	CONSTRAINT uq_chat_address UNIQUE (address)
);
INSERT INTO "chat" VALUES(1,-1005000,'group',NULL,1,NULL);
INSERT INTO "chat" VALUES(2,101,'private',2,1,NULL);
CREATE TABLE consent (
	id INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	about VARCHAR NOT NULL, 
	given_at DATETIME NOT NULL, 
	withdrawn_at DATETIME, 
	CONSTRAINT pk_consent PRIMARY KEY (id), 
	CONSTRAINT fk_consent_person_id_person FOREIGN KEY(person_id) REFERENCES person (id)
);
INSERT INTO "consent" VALUES(1,2,'health','2026-03-02 07:30:00.000000',NULL);
CREATE TABLE document (
	id INTEGER NOT NULL, 
	kind VARCHAR NOT NULL, 
	schema_number INTEGER NOT NULL, 
	body JSON NOT NULL, 
	created_at DATETIME NOT NULL, 
	CONSTRAINT pk_document PRIMARY KEY (id)
);
INSERT INTO "document" VALUES(1,'session',1,'{"title": "Monday", "date": "2026-03-02", "blocks": [{"kind": "main", "format": "amrap", "minutes": 12.0, "rounds": null, "scheme": [], "every_s": null, "work_s": null, "rest_s": null, "cap_s": null, "team": null, "scored": true, "aim": {"of": "score", "low": 6.0, "high": 9.0}, "buy_in": [], "cash_out": [], "lines": [{"written": "12 goblet squats @ 24/16 kg", "movement": "goblet squat", "variant": null, "implement": null, "amount": null, "amount_to": null, "second_amount": null, "unit": "reps", "per_side": false, "side": null, "station": null, "count": null, "loads_kg": ["24", "16"], "load_rule": null, "tempo": null, "notes": null}], "notes": null}]}','2026-03-02 07:30:00.000000');
INSERT INTO "document" VALUES(2,'version',1,'{"athlete": "Ilse", "as_written": false, "effort_at_most": null, "scored": true, "blocks": [{"block": 0, "format": "amrap", "minutes": null, "rounds": null, "scheme": [], "cap_s": null, "scored": true, "buy_in": [], "lines": [{"line": 0, "written": "12 goblet squats @ 24/16 kg", "movement": "goblet squat", "variant": "goblet squat", "implement": "dumbbell", "count": 1, "load_kg": "12.5", "load_moved_kg": null, "height_cm": null, "amount": 12.0, "scheme": [], "unit": "reps", "per_side": false, "unbroken": null, "set_cost": null, "cost_window": [0.4, 0.7], "change": "load", "reason": {"because": "not_owned", "about": "24 kg", "load_kg": null, "keeps": "movement"}}], "cash_out": []}], "cautions": [], "needs_coach": []}','2026-03-02 07:30:00.000000');
CREATE TABLE due (
	id INTEGER NOT NULL, 
	"key" VARCHAR NOT NULL, 
	kind VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	refs JSON NOT NULL, 
	state VARCHAR NOT NULL, 
	done_at DATETIME, 
	CONSTRAINT pk_due PRIMARY KEY (id), 
	CONSTRAINT uq_due_key UNIQUE ("key")
);
INSERT INTO "due" VALUES(1,'post:9','post','2026-03-02 07:30:00.000000','{"session": 9}','waiting',NULL);
CREATE TABLE evidence (
	id INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	movement VARCHAR NOT NULL, 
	kind VARCHAR NOT NULL, 
	day DATE, 
	schema_number INTEGER NOT NULL, 
	body JSON NOT NULL, 
	added_at DATETIME NOT NULL, 
	CONSTRAINT pk_evidence PRIMARY KEY (id), 
	CONSTRAINT fk_evidence_person_id_person FOREIGN KEY(person_id) REFERENCES person (id)
);
INSERT INTO "evidence" VALUES(1,2,'push-up','test','2026-03-02',1,'{"kind": "test", "movement": "push-up", "variant": null, "on": "2026-03-02", "reps": 4.0, "load_kg": null, "distance_m": null, "seconds": null}','2026-03-02 07:30:00.000000');
CREATE TABLE inbox (
	id INTEGER NOT NULL, 
	update_id BIGINT NOT NULL, 
	lane BIGINT NOT NULL, 
	body JSON NOT NULL, 
	received_at DATETIME NOT NULL, 
	state VARCHAR NOT NULL, 
	attempts INTEGER NOT NULL, 
	error VARCHAR, 
	CONSTRAINT pk_inbox PRIMARY KEY (id), 
	CONSTRAINT uq_inbox_update_id UNIQUE (update_id)
);
INSERT INTO "inbox" VALUES(1,900,-1005000,'{"update_id": 900, "message": {"text": "hello"}}','2026-03-02 07:30:00.000000','waiting',0,NULL);
CREATE TABLE membership (
	id INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	group_id INTEGER NOT NULL, 
	role VARCHAR NOT NULL, 
	pair INTEGER, 
	shares_limits BOOLEAN NOT NULL, 
	lead_minutes INTEGER NOT NULL, 
	joined_at DATETIME NOT NULL, 
	left_at DATETIME, 
	CONSTRAINT pk_membership PRIMARY KEY (id), 
	CONSTRAINT fk_membership_group_id_training_group FOREIGN KEY(group_id) REFERENCES training_group (id), 
	CONSTRAINT fk_membership_person_id_person FOREIGN KEY(person_id) REFERENCES person (id), 
	CONSTRAINT uq_membership_person_id_group_id UNIQUE (person_id, group_id)
);
INSERT INTO "membership" VALUES(1,1,1,'coach',NULL,0,60,'2026-03-02 07:30:00.000000',NULL);
INSERT INTO "membership" VALUES(2,2,1,'athlete',NULL,0,60,'2026-03-02 07:30:00.000000',NULL);
CREATE TABLE outbox (
	id INTEGER NOT NULL, 
	chat_id INTEGER NOT NULL, 
	purpose VARCHAR NOT NULL, 
	method VARCHAR NOT NULL, 
	payload JSON NOT NULL, 
	refs JSON NOT NULL, 
	"key" VARCHAR NOT NULL, 
	subject VARCHAR, 
	edits_id INTEGER, 
	priority INTEGER NOT NULL, 
	due_at DATETIME NOT NULL, 
	expires_at DATETIME, 
	state VARCHAR NOT NULL, 
	leased_until DATETIME, 
	message_id BIGINT, 
	tries INTEGER NOT NULL, 
	resends INTEGER NOT NULL, 
	created_at DATETIME NOT NULL, 
	settled_at DATETIME, 
	CONSTRAINT pk_outbox PRIMARY KEY (id), 
	CONSTRAINT fk_outbox_chat_id_chat FOREIGN KEY(chat_id) REFERENCES chat (id), 
	CONSTRAINT fk_outbox_edits_id_outbox FOREIGN KEY(edits_id) REFERENCES outbox (id), 
	CONSTRAINT uq_outbox_key UNIQUE ("key")
);
INSERT INTO "outbox" VALUES(1,2,'answer','sendMessage','{"text": "hello"}','{"session": 1}','hello',NULL,NULL,1,'2026-03-02 07:30:00.000000',NULL,'leased','2026-03-02 07:30:00.000000',NULL,1,0,'2026-03-02 07:30:00.000000',NULL);
INSERT INTO "outbox" VALUES(2,1,'answer','sendMessage','{"text": "later"}','{}','later',NULL,NULL,1,'2026-03-02 08:30:00.000000',NULL,'waiting',NULL,NULL,0,0,'2026-03-02 07:30:00.000000',NULL);
CREATE TABLE person (
	id INTEGER NOT NULL, 
	user_id BIGINT NOT NULL, 
	name VARCHAR NOT NULL, 
	language VARCHAR NOT NULL, 
	created_at DATETIME NOT NULL, 
	CONSTRAINT pk_person PRIMARY KEY (id), 
	CONSTRAINT uq_person_user_id UNIQUE (user_id)
);
INSERT INTO "person" VALUES(1,102,'Bero','en','2026-03-02 07:30:00.000000');
INSERT INTO "person" VALUES(2,101,'Ilse','en','2026-03-02 07:30:00.000000');
CREATE TABLE profile (
	person_id INTEGER NOT NULL, 
	schema_number INTEGER NOT NULL, 
	body JSON NOT NULL, 
	changed_at DATETIME NOT NULL, 
	CONSTRAINT pk_profile PRIMARY KEY (person_id), 
	CONSTRAINT fk_profile_person_id_person FOREIGN KEY(person_id) REFERENCES person (id)
);
INSERT INTO "profile" VALUES(2,1,'{"body_mass_kg": "61.5", "body_mass_skipped": false, "birth_year": null, "sex": null, "units": "kg", "pair": null, "screening": null, "equipment": [{"implement": "dumbbell", "loads_kg": ["12.5"], "each": 1, "from_kg": null, "to_kg": null, "step_kg": null, "height_cm": null}], "space": {"jumping": true, "running": true, "overhead": true}, "limits": [], "today": {"minutes": null, "sick": false, "sore": []}}','2026-03-02 07:30:00.000000');
CREATE TABLE question (
	chat_id INTEGER NOT NULL, 
	kind VARCHAR NOT NULL, 
	refs JSON NOT NULL, 
	asked_at DATETIME NOT NULL, 
	CONSTRAINT pk_question PRIMARY KEY (chat_id), 
	CONSTRAINT fk_question_chat_id_chat FOREIGN KEY(chat_id) REFERENCES chat (id)
);
INSERT INTO "question" VALUES(2,'limits','{"session": 1}','2026-03-02 07:30:00.000000');
CREATE TABLE score (
	id INTEGER NOT NULL, 
	session_id INTEGER NOT NULL, 
	block INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	version_id INTEGER, 
	text VARCHAR NOT NULL, 
	schema_number INTEGER NOT NULL, 
	body JSON NOT NULL, 
	recorded_at DATETIME NOT NULL, 
	entered_by INTEGER NOT NULL, 
	state VARCHAR NOT NULL, 
	CONSTRAINT pk_score PRIMARY KEY (id), 
	CONSTRAINT fk_score_entered_by_person FOREIGN KEY(entered_by) REFERENCES person (id), 
	CONSTRAINT fk_score_person_id_person FOREIGN KEY(person_id) REFERENCES person (id), 
	CONSTRAINT fk_score_session_id_session FOREIGN KEY(session_id) REFERENCES session (id), 
	CONSTRAINT fk_score_version_id_version FOREIGN KEY(version_id) REFERENCES version (id)
);
INSERT INTO "score" VALUES(1,1,0,2,1,'7+3',1,'{"value": 7.25, "unit": "rounds", "rounds": 7, "reps": 3, "seconds": null, "load_kg": null, "capped": false, "scaled": true, "note": null, "pain": null, "ranked": true}','2026-03-02 07:30:00.000000',2,'counts');
CREATE TABLE session (
	id INTEGER NOT NULL, 
	group_id INTEGER NOT NULL, 
	author_id INTEGER NOT NULL, 
	day DATE NOT NULL, 
	title VARCHAR, 
	revision INTEGER NOT NULL, 
	state VARCHAR NOT NULL, 
	post_at DATETIME, 
	posted_at DATETIME, 
	CONSTRAINT pk_session PRIMARY KEY (id), 
	CONSTRAINT fk_session_author_id_person FOREIGN KEY(author_id) REFERENCES person (id), 
	CONSTRAINT fk_session_group_id_training_group FOREIGN KEY(group_id) REFERENCES training_group (id)
);
INSERT INTO "session" VALUES(1,1,1,'2026-03-02','Monday',1,'posted',NULL,'2026-03-02 07:30:00.000000');
CREATE TABLE session_revision (
	session_id INTEGER NOT NULL, 
	revision INTEGER NOT NULL, 
	document_id INTEGER NOT NULL, 
	text VARCHAR NOT NULL, 
	created_at DATETIME NOT NULL, 
	CONSTRAINT pk_session_revision PRIMARY KEY (session_id, revision), 
	CONSTRAINT fk_session_revision_document_id_document FOREIGN KEY(document_id) REFERENCES document (id), 
	CONSTRAINT fk_session_revision_session_id_session FOREIGN KEY(session_id) REFERENCES session (id)
);
INSERT INTO "session_revision" VALUES(1,1,1,'12 min amrap
12 goblet squats @ 24/16 kg','2026-03-02 07:30:00.000000');
CREATE TABLE training_group (
	id INTEGER NOT NULL, 
	chat_id INTEGER NOT NULL, 
	title VARCHAR NOT NULL, 
	zone VARCHAR, 
	units VARCHAR NOT NULL, 
	state VARCHAR NOT NULL, 
	created_at DATETIME NOT NULL, 
	CONSTRAINT pk_training_group PRIMARY KEY (id), 
	CONSTRAINT fk_training_group_chat_id_chat FOREIGN KEY(chat_id) REFERENCES chat (id), 
	CONSTRAINT uq_training_group_chat_id UNIQUE (chat_id)
);
INSERT INTO "training_group" VALUES(1,1,'Early birds','Europe/Vienna','kg','ready','2026-03-02 07:30:00.000000');
CREATE TABLE version (
	id INTEGER NOT NULL, 
	session_id INTEGER NOT NULL, 
	session_revision INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	document_id INTEGER NOT NULL, 
	revision INTEGER NOT NULL, 
	state VARCHAR NOT NULL, 
	shown_at DATETIME NOT NULL, 
	CONSTRAINT pk_version PRIMARY KEY (id), 
	CONSTRAINT fk_version_document_id_document FOREIGN KEY(document_id) REFERENCES document (id), 
	CONSTRAINT fk_version_person_id_person FOREIGN KEY(person_id) REFERENCES person (id), 
	CONSTRAINT fk_version_session_id_session FOREIGN KEY(session_id) REFERENCES session (id), 
	CONSTRAINT uq_version_session_id_person_id_revision UNIQUE (session_id, person_id, revision)
);
INSERT INTO "version" VALUES(1,1,1,2,2,1,'current','2026-03-02 07:30:00.000000');
CREATE INDEX ix_chat_person_id ON chat (person_id);
CREATE INDEX ix_consent_person_id ON consent (person_id);
CREATE INDEX ix_evidence_person_id ON evidence (person_id);
CREATE INDEX ix_membership_group_id ON membership (group_id);
CREATE INDEX ix_session_author_id_state ON session (author_id, state);
CREATE INDEX ix_session_group_id_state_day ON session (group_id, state, day);
CREATE INDEX ix_session_group_id_state_posted_at ON session (group_id, state, posted_at);
CREATE INDEX ix_version_person_id ON version (person_id);
CREATE INDEX ix_score_person_id ON score (person_id);
CREATE INDEX ix_score_session_id_block_state ON score (session_id, block, state);
CREATE INDEX ix_score_session_id_person_id ON score (session_id, person_id);
CREATE INDEX ix_inbox_state_id ON inbox (state, id);
CREATE INDEX ix_inbox_state_lane_id ON inbox (state, lane, id);
CREATE INDEX ix_outbox_chat_id_message_id ON outbox (chat_id, message_id);
CREATE INDEX ix_outbox_chat_id_state_id ON outbox (chat_id, state, id);
CREATE INDEX ix_outbox_state_due_at ON outbox (state, due_at);
CREATE INDEX ix_outbox_state_edits_id ON outbox (state, edits_id);
CREATE INDEX ix_outbox_state_expires_at ON outbox (state, expires_at);
CREATE INDEX ix_outbox_state_leased_until ON outbox (state, leased_until);
CREATE INDEX ix_outbox_state_priority_id ON outbox (state, priority, id);
CREATE INDEX ix_outbox_subject_state ON outbox (subject, state);
CREATE INDEX ix_due_state_at_id ON due (state, at, id);
COMMIT;
