-- A whole store as the first schema wrote it, in the form of sqlite3's .dump. Kept as it is for ever.
CREATE TABLE IF NOT EXISTS "flyway_schema_history" (
    "installed_rank" INT NOT NULL PRIMARY KEY,
    "version" VARCHAR(50),
    "description" VARCHAR(200) NOT NULL,
    "type" VARCHAR(20) NOT NULL,
    "script" VARCHAR(1000) NOT NULL,
    "checksum" INT,
    "installed_by" VARCHAR(100) NOT NULL,
    "installed_on" TEXT NOT NULL DEFAULT (strftime('%Y-%m-%d %H:%M:%f','now')),
    "execution_time" INT NOT NULL,
    "success" BOOLEAN NOT NULL
);
INSERT INTO flyway_schema_history VALUES(1,'1','kit drills history','SQL','V1__kit_drills_history.sql',381284736,'','2026-11-25 09:30:41.714',19,1);
CREATE TABLE history (
  entry bigint not null primary key,
  at text not null,
  who text not null,
  why text not null,
  what text not null,
  subject text not null,
  subject_id text not null,
  version bigint not null
);
INSERT INTO history VALUES(1,'2026-05-12T23:04:05.006Z','Training officer','first kit','saved the kit','kit','kit',1);
INSERT INTO history VALUES(2,'2026-05-12T23:04:05.006Z','Recorder','','started the drill with 3 readings','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',1);
INSERT INTO history VALUES(3,'2026-05-12T23:04:05.006Z','Recorder','','changed 1 reading, set 1 reading aside','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',2);
INSERT INTO history VALUES(4,'2026-05-12T23:04:05.006Z','Recorder','typed twice','removed 1 reading','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',3);
INSERT INTO history VALUES(5,'2026-05-12T23:04:05.006Z','Training officer','flow test of 12 May','ruled to use 1 reading','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',4);
INSERT INTO history VALUES(6,'2026-05-12T23:04:05.006Z','Recorder','','started the drill with 0 readings','drill','019e1e6e-e68e-7000-a877-ab73cef3cfb1',1);
INSERT INTO history VALUES(7,'2026-05-12T23:04:05.006Z','Recorder','','changed name, date or columns','drill','019e1e6e-e68e-7000-a877-ab73cef3cfb1',2);
INSERT INTO history VALUES(8,'2026-05-12T23:04:05.006Z','Training officer','flow test of 12 May','accepted the numbers into kit 2','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',5);
CREATE TABLE history_head (
  id bigint not null primary key,
  last bigint not null
);
INSERT INTO history_head VALUES(1,8);
CREATE TABLE kit_revision (
  version bigint not null primary key,
  kit_text text not null,
  entry bigint not null references history (entry) deferrable initially deferred
);
INSERT INTO kit_revision VALUES(1,replace('company: Brindle Falls Fire Company\n# 1 ¾ in ± 2 %\nunits: us\n','\n',char(10)),1);
INSERT INTO kit_revision VALUES(2,replace('company: Brindle Falls Fire Company\nunits: us\n# measured\n','\n',char(10)),8);
CREATE TABLE drill (
  id text not null primary key,
  version bigint not null,
  head_version bigint not null
);
INSERT INTO drill VALUES('019e1e6e-e68e-7000-935f-d6eba8f42633',5,1);
INSERT INTO drill VALUES('019e1e6e-e68e-7000-a877-ab73cef3cfb1',2,2);
CREATE TABLE drill_head (
  drill_id text not null references drill (id),
  version bigint not null,
  name text not null,
  night text not null,
  column_names text not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (drill_id, version)
);
INSERT INTO drill_head VALUES('019e1e6e-e68e-7000-935f-d6eba8f42633',1,'drill-night','2026-05-12','["reading","discharge","hose","length [ft]","nozzle","pump [psi]","tip [psi]"]',2);
INSERT INTO drill_head VALUES('019e1e6e-e68e-7000-a877-ab73cef3cfb1',1,'October ½','2026-10-03','["reading","pump [kPa]"]',6);
INSERT INTO drill_head VALUES('019e1e6e-e68e-7000-a877-ab73cef3cfb1',2,'October flow test','2026-10-03','["reading","pump [kPa]","tip [kPa]"]',7);
CREATE TABLE drill_row (
  id text not null primary key,
  drill_id text not null references drill (id),
  place bigint not null,
  version bigint not null
);
INSERT INTO drill_row VALUES('019e1e6e-e68e-7000-afc3-67c4c3a1503f','019e1e6e-e68e-7000-935f-d6eba8f42633',1,2);
INSERT INTO drill_row VALUES('019e1e6e-e68e-7000-a3d4-55410642a198','019e1e6e-e68e-7000-935f-d6eba8f42633',2,2);
INSERT INTO drill_row VALUES('019e1e6e-e68e-7000-b466-a862baa2e433','019e1e6e-e68e-7000-935f-d6eba8f42633',3,1);
CREATE TABLE drill_row_revision (
  row_id text not null references drill_row (id),
  version bigint not null,
  cells text not null,
  removed bigint not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (row_id, version)
);
INSERT INTO drill_row_revision VALUES('019e1e6e-e68e-7000-afc3-67c4c3a1503f',1,'{"reading":"1","discharge":"crosslay-1","hose":"attack-175","length [ft]":"200","nozzle":"sb-78","pump [psi]":"103","tip [psi]":"50"}',0,2);
INSERT INTO drill_row_revision VALUES('019e1e6e-e68e-7000-a3d4-55410642a198',1,'{"reading":"2","discharge":"crosslay-1","hose":"attack-175","length [ft]":"150","nozzle":"sb-78","pump [psi]":"91","tip [psi]":"49.5"}',0,2);
INSERT INTO drill_row_revision VALUES('019e1e6e-e68e-7000-b466-a862baa2e433',1,'{"reading":"3","discharge":"crosslay-1","hose":"attack-175","length [ft]":"200","nozzle":"sb-78","pump [psi]":"203","tip [psi]":"50"}',0,2);
INSERT INTO drill_row_revision VALUES('019e1e6e-e68e-7000-afc3-67c4c3a1503f',2,'{"reading":"1","discharge":"crosslay-1","hose":"attack-175","length [ft]":"200","nozzle":"sb-78","pump [psi]":"130","tip [psi]":"50"}',0,3);
INSERT INTO drill_row_revision VALUES('019e1e6e-e68e-7000-a3d4-55410642a198',2,'{"reading":"2","discharge":"crosslay-1","hose":"attack-175","length [ft]":"150","nozzle":"sb-78","pump [psi]":"91","tip [psi]":"49.5"}',1,4);
CREATE TABLE ruling (
  id text not null primary key,
  drill_id text not null references drill (id),
  row_id text not null references drill_row (id),
  row_version bigint not null,
  place bigint not null,
  verdict text not null,
  reason text not null,
  entry bigint not null references history (entry) deferrable initially deferred
);
INSERT INTO ruling VALUES('019e1e6e-e68e-7000-8aa7-fdf3f80ccf31','019e1e6e-e68e-7000-935f-d6eba8f42633','019e1e6e-e68e-7000-b466-a862baa2e433',1,1,'set aside','kink at the door',3);
INSERT INTO ruling VALUES('019e1e6e-e68e-7000-b1e1-7e7e8eb7f894','019e1e6e-e68e-7000-935f-d6eba8f42633','019e1e6e-e68e-7000-b466-a862baa2e433',1,2,'use','walked it: no kink',5);
CREATE TABLE acceptance (
  drill_id text not null references drill (id),
  drill_version bigint not null,
  kit_version bigint not null references kit_revision (version),
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (drill_id, drill_version)
);
INSERT INTO acceptance VALUES('019e1e6e-e68e-7000-935f-d6eba8f42633',5,2,8);
CREATE INDEX "flyway_schema_history_s_idx" ON "flyway_schema_history" ("success");
CREATE INDEX history_of_subject on history (subject, subject_id, entry);
CREATE INDEX drill_row_of_drill on drill_row (drill_id, place);
CREATE INDEX ruling_of_drill on ruling (drill_id, place);
