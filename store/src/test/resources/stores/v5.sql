-- A whole store as the fifth schema wrote it, over the store of the fourth, in the form of sqlite3's .dump. Kept as it is for ever.
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
INSERT INTO flyway_schema_history VALUES(2,'2','chain and orders','SQL','V2__chain_and_orders.sql',-1547218048,'','2026-11-25 13:32:39.033',28,1);
INSERT INTO flyway_schema_history VALUES(3,'3','link old entries','JDBC','org.hosewright.store.LinkOldEntries',NULL,'','2026-11-25 13:32:39.536',481,1);
INSERT INTO flyway_schema_history VALUES(4,'4','leaves','SQL','V4__leaves.sql',1878057291,'','2026-11-25 18:27:30.272',7,1);
INSERT INTO flyway_schema_history VALUES(5,'5','people','SQL','V5__people.sql',1245274712,'','2026-11-25 21:28:38.739',6,1);
CREATE TABLE history (
  entry bigint not null primary key,
  at text not null,
  who text not null,
  why text not null,
  what text not null,
  subject text not null,
  subject_id text not null,
  version bigint not null
, hat text not null default '', content text not null default '', previous text not null default '', hash text not null default '');
INSERT INTO history VALUES(1,'2026-05-12T23:04:05.006Z','Training officer','first kit','saved the kit','kit','kit',1,'','b6da08f25c9f273cf3c700ae82065dd45213308709292fa9348f30eae4a251b8','0000000000000000000000000000000000000000000000000000000000000000','ed9c40e8069c7801454d4e646b2fe78b3d22285cb7f33d24d369147b09d14597');
INSERT INTO history VALUES(2,'2026-05-12T23:04:05.006Z','Recorder','','started the drill with 3 readings','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',1,'','c6982826810e64197456a5f7a8fee6a7e4456f0d4fabd6d4ee8b85bfdfb60753','ed9c40e8069c7801454d4e646b2fe78b3d22285cb7f33d24d369147b09d14597','53ce4e7af3b2b239a5ba907fbc4170610a7955968e32e916f130905eed755013');
INSERT INTO history VALUES(3,'2026-05-12T23:04:05.006Z','Recorder','','changed 1 reading, set 1 reading aside','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',2,'','ca31fd32fbec37c50028f8d228447e1083ca95670616225e97185879ec7cdec2','53ce4e7af3b2b239a5ba907fbc4170610a7955968e32e916f130905eed755013','d05489d2449c615283bd2d56956265437509288086cb82a2f8284a51c1fbc1c8');
INSERT INTO history VALUES(4,'2026-05-12T23:04:05.006Z','Recorder','typed twice','removed 1 reading','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',3,'','f4e1b44b7837a3a730c287228dd654607c63143a86c342a21dc7da256a5b99ab','d05489d2449c615283bd2d56956265437509288086cb82a2f8284a51c1fbc1c8','d4da1d6125461c5c9e7215719fd84be72ff9b93bdb4fca476e4e64a730b56241');
INSERT INTO history VALUES(5,'2026-05-12T23:04:05.006Z','Training officer','flow test of 12 May','ruled to use 1 reading','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',4,'','6951c54d1fe147cdd39d5368b5bcda03eae20262f29c8a2b47285fcc02acb890','d4da1d6125461c5c9e7215719fd84be72ff9b93bdb4fca476e4e64a730b56241','d72d881526eb05c4acd3aa65881b6e1d1ec58d956847a07595ca700197eebe88');
INSERT INTO history VALUES(6,'2026-05-12T23:04:05.006Z','Recorder','','started the drill with 0 readings','drill','019e1e6e-e68e-7000-a877-ab73cef3cfb1',1,'','e9d8b205a7420f93edcd09017c7870daac35c3b1ed4ce5323c0c35c12d6ff7e4','d72d881526eb05c4acd3aa65881b6e1d1ec58d956847a07595ca700197eebe88','1a567c24c0b703576672e43cd6b83b01d72a59db023acbb97c70cc716eb5bf52');
INSERT INTO history VALUES(7,'2026-05-12T23:04:05.006Z','Recorder','','changed name, date or columns','drill','019e1e6e-e68e-7000-a877-ab73cef3cfb1',2,'','54731ef85fb7ce411f8fa51f01d026be7fc6fc3e13ead46495b27981e1370088','1a567c24c0b703576672e43cd6b83b01d72a59db023acbb97c70cc716eb5bf52','ee22b4b7bbfdd9be026c2f06b2ab590b184e6d16f8767d4bb3fe47a94cf78266');
INSERT INTO history VALUES(8,'2026-05-12T23:04:05.006Z','Training officer','flow test of 12 May','accepted the numbers into kit 2','drill','019e1e6e-e68e-7000-935f-d6eba8f42633',5,'','274850eea00c1ac2d4bc843352dd4375b9e7f5d7961382d1aa8487735cd832f3','ee22b4b7bbfdd9be026c2f06b2ab590b184e6d16f8767d4bb3fe47a94cf78266','9ec30c8f6d9261a5b42307180789d8d115fb292a7db04d65b476a51f7b57794d');
INSERT INTO history VALUES(9,'2026-05-13T23:04:05.006Z','Training officer','after the May test','proposed order 1','order','1',1,'analyst','2d7f6b9b133feb52ff6ed3107207e6295354321a494eb02723fbce3a1e1e4e93','9ec30c8f6d9261a5b42307180789d8d115fb292a7db04d65b476a51f7b57794d','91763b74a89337c1217b9db88c497d483f3d41421a171416f3d749ac274c4603');
INSERT INTO history VALUES(10,'2026-05-13T23:04:05.006Z','Chief','','signed order 1','order','1',2,'approver','c37fed37b1a3da58ce4b222f0d28868b3231706dec62d8e5a0eef2f2890c8a04','91763b74a89337c1217b9db88c497d483f3d41421a171416f3d749ac274c4603','5cdcdd7ec1c980cb36cfdf02f26e3077b043971ab12c00e4da8a79c788757565');
INSERT INTO history VALUES(11,'2026-05-13T23:04:05.006Z','A. Fenn','','reported order 1 for engine-41','order','1',3,'operator','5757bd88224011fefcf7442b375bab9125c252023898d4168ffac97beb046dc7','5cdcdd7ec1c980cb36cfdf02f26e3077b043971ab12c00e4da8a79c788757565','63fbdf5d04c151ada69e7a1ae4302b8670773768ca3104169d4235876431df61');
INSERT INTO history VALUES(12,'2026-05-14T19:30:00.000Z','A. Fenn','morning check','added the bed Engine 41','leaf','bed/engine-41',1,'operator','a89b474eb7652510ff416e60e3f7a8c4c324b249c44831391b0b2db237a313c3','63fbdf5d04c151ada69e7a1ae4302b8670773768ca3104169d4235876431df61','5b381dd023b7add1eea19f6454abef9ecfc69d874bf7fdfa5aeb743b575980d0');
INSERT INTO history VALUES(13,'2026-05-14T19:30:00.000Z','A. Fenn','morning check','changed the bed Engine 41','leaf','bed/engine-41',2,'operator','402061cc9ceeb21e6944747044f40982cfaa3922055d08b65bd319873e1c9630','5b381dd023b7add1eea19f6454abef9ecfc69d874bf7fdfa5aeb743b575980d0','c1bfecdd9d6d656141a9bfdeeb06744b8c5c6b17a3d4d18a091bc6c10a614557');
INSERT INTO history VALUES(14,'2026-05-14T19:30:00.000Z','A. Fenn','morning check','added the walk Mill Lane','leaf','walk/mill-lane',1,'recorder','ad107f765c65c3450e838986cb565ed307f9df420ed13d28cc56d1a2caa7f599','c1bfecdd9d6d656141a9bfdeeb06744b8c5c6b17a3d4d18a091bc6c10a614557','58e5c2e1f45d4a43dabc2748e5ad82ccaf49935adcb18ed2dfc3854d3498aac5');
INSERT INTO history VALUES(15,'2026-05-14T19:30:00.000Z','Chief','walked the wrong lane','took out the walk Mill Lane','leaf','walk/mill-lane',2,'recorder','3ce3c2ab541020e9e38e02eef95c38ade514a67d5839219b5026fa3f6b91d8d8','58e5c2e1f45d4a43dabc2748e5ad82ccaf49935adcb18ed2dfc3854d3498aac5','66ad6c2f1c9cd683741bd8a37344bc1fbfffb1e60cbb3f94c3f67875687e04bc');
INSERT INTO history VALUES(16,'2026-11-25T21:40:00.000Z','A. Fenn','','gave A. Fenn an account: approver, owner','person','01a214a6-b780-7000-a3d2-c4e781e63e95',1,'owner','60d20f8884cb69f466cf7fd8492aaa6d900a336db536dcaf0ffc419b962e669c','66ad6c2f1c9cd683741bd8a37344bc1fbfffb1e60cbb3f94c3f67875687e04bc','f8286e5c5dcdc7ef0015f7dc1da89c78258fcd883c210a1e529df8683346de20');
INSERT INTO history VALUES(17,'2026-11-25T21:40:00.000Z','A. Fenn','','gave B. Moss an account: recorder','person','01a214a6-b780-7000-b28e-215a28ff7a01',1,'owner','3e3780d20c2bd08fc0e6a02adef3bfc2cc9284452485e2f158a16bbd93fc29de','f8286e5c5dcdc7ef0015f7dc1da89c78258fcd883c210a1e529df8683346de20','21842d7e6e3aa320087b031151438a2a2cfc12237d010c23a5cabc2ab0460e34');
INSERT INTO history VALUES(18,'2026-11-25T21:40:00.000Z','A. Fenn','','changed what B. Moss may do: may not sign in','person','01a214a6-b780-7000-b28e-215a28ff7a01',2,'owner','71366f1d93b4960f03e3e16f07b7053c7e01904112bf0304fc093817d35b930f','21842d7e6e3aa320087b031151438a2a2cfc12237d010c23a5cabc2ab0460e34','d8d7f79ef00452de4ea48f9344f5f18100af812fcfcb8bd62c73129687dcd007');
INSERT INTO history VALUES(19,'2026-11-25T21:40:00.000Z','A. Fenn','','chose another password','person','01a214a6-b780-7000-a3d2-c4e781e63e95',2,'','5e3cef9620168f0c731349aca7ef5ddb8f9fd396720e535aaa51a142795a03d6','d8d7f79ef00452de4ea48f9344f5f18100af812fcfcb8bd62c73129687dcd007','13e5ad9195ed2e77da2c9a1cbd27bd85b803c5c113d2c934e8c627c6e81001e5');
CREATE TABLE history_head (
  id bigint not null primary key,
  last bigint not null
);
INSERT INTO history_head VALUES(1,19);
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
CREATE TABLE order_revision (
  number bigint not null primary key,
  code text not null,
  kit_version bigint not null references kit_revision (version),
  order_text text not null,
  entry bigint not null references history (entry) deferrable initially deferred
);
INSERT INTO order_revision VALUES(1,'3f2a90c1',2,'{}',9);
CREATE TABLE order_step (
  number bigint not null references order_revision (number),
  place bigint not null,
  kind text not null,
  engine text not null,
  note text not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (number, place)
);
INSERT INTO order_step VALUES(1,1,'signed','','',10);
INSERT INTO order_step VALUES(1,2,'reported','engine-41','tag of crosslay 2 says 110',11);
CREATE TABLE leaf (
  kind text not null,
  id text not null,
  version bigint not null,
  gone bigint not null,
  primary key (kind, id)
);
INSERT INTO leaf VALUES('bed','engine-41',2,0);
INSERT INTO leaf VALUES('walk','mill-lane',2,1);
CREATE TABLE leaf_version (
  kind text not null,
  id text not null,
  version bigint not null,
  title text not null,
  leaf_text text not null,
  gone bigint not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (kind, id, version),
  foreign key (kind, id) references leaf (kind, id)
);
INSERT INTO leaf_version VALUES('bed','engine-41',1,'Engine 41','{"crosslay-1": "200 ft"}',0,12);
INSERT INTO leaf_version VALUES('bed','engine-41',2,'Engine 41','{"crosslay-1": "250 ft"}',0,13);
INSERT INTO leaf_version VALUES('walk','mill-lane',1,'Mill Lane','{}',0,14);
INSERT INTO leaf_version VALUES('walk','mill-lane',2,'Mill Lane','{}',1,15);
CREATE TABLE person (
  id text not null primary key,
  version bigint not null
);
INSERT INTO person VALUES('01a214a6-b780-7000-a3d2-c4e781e63e95',2);
INSERT INTO person VALUES('01a214a6-b780-7000-b28e-215a28ff7a01',2);
CREATE TABLE person_version (
  id text not null references person (id),
  version bigint not null,
  name text not null,
  hats text not null,
  active bigint not null,
  secret text not null,
  given bigint not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (id, version)
);
INSERT INTO person_version VALUES('01a214a6-b780-7000-a3d2-c4e781e63e95',1,'A. Fenn','approver,owner',1,'$argon2id$v=19$m=19456,t=3,p=1$Zml4dHVyZXNhbHQ$Zml4dHVyZWhhc2g',0,16);
INSERT INTO person_version VALUES('01a214a6-b780-7000-b28e-215a28ff7a01',1,'B. Moss','recorder',1,'$argon2id$v=19$m=19456,t=3,p=1$Zml4dHVyZXNhbHQ$Zml4dHVyZWhhc2gZ',1,17);
INSERT INTO person_version VALUES('01a214a6-b780-7000-b28e-215a28ff7a01',2,'B. Moss','recorder',0,'$argon2id$v=19$m=19456,t=3,p=1$Zml4dHVyZXNhbHQ$Zml4dHVyZWhhc2gZ',1,18);
INSERT INTO person_version VALUES('01a214a6-b780-7000-a3d2-c4e781e63e95',2,'A. Fenn','approver,owner',1,'$argon2id$v=19$m=19456,t=3,p=1$Zml4dHVyZXNhbHQ$Zml4dHVyZWhhc2gY',0,19);
CREATE INDEX "flyway_schema_history_s_idx" ON "flyway_schema_history" ("success");
CREATE INDEX history_of_subject on history (subject, subject_id, entry);
CREATE INDEX drill_row_of_drill on drill_row (drill_id, place);
CREATE INDEX ruling_of_drill on ruling (drill_id, place);
CREATE INDEX kit_revision_of_entry on kit_revision (entry);
CREATE INDEX drill_head_of_entry on drill_head (entry);
CREATE INDEX drill_row_revision_of_entry on drill_row_revision (entry);
CREATE INDEX ruling_of_entry on ruling (entry);
CREATE INDEX acceptance_of_entry on acceptance (entry);
CREATE INDEX order_revision_of_entry on order_revision (entry);
CREATE INDEX order_step_of_entry on order_step (entry);
CREATE INDEX leaf_version_of_entry on leaf_version (entry);
CREATE INDEX person_version_of_entry on person_version (entry);
