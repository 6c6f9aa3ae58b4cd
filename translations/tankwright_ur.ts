<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ur">
<context>
    <name>Drawings</name>
    <message>
        <source>Cove, radius %1</source>
        <translation>گولا، رداس %1</translation>
    </message>
    <message>
        <source>%1, %2 thick</source>
        <comment>layer and its thickness</comment>
        <translation>%1، موٹائی %2</translation>
    </message>
    <message>
        <source>Undisturbed ground</source>
        <translation>بغیر چھیڑی زمین</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>clear length %1</source>
        <translation>اندر کی لمبائی %1</translation>
    </message>
    <message>
        <source>clear width %1</source>
        <translation>اندر کی چوڑائی %1</translation>
    </message>
    <message>
        <source>clear diameter %1</source>
        <translation>اندر کا قطر %1</translation>
    </message>
    <message>
        <source>clear floor length %1</source>
        <translation>اندر کے فرش کی لمبائی %1</translation>
    </message>
    <message>
        <source>clear floor width %1</source>
        <translation>اندر کے فرش کی چوڑائی %1</translation>
    </message>
    <message>
        <source>clear floor diameter %1</source>
        <translation>اندر کے فرش کا قطر %1</translation>
    </message>
    <message>
        <source>clear rim length %1</source>
        <translation>اوپری کنارے پر اندر کی لمبائی %1</translation>
    </message>
    <message>
        <source>clear rim width %1</source>
        <translation>اوپری کنارے پر اندر کی چوڑائی %1</translation>
    </message>
    <message>
        <source>clear rim diameter %1</source>
        <translation>اوپری کنارے پر اندر کا قطر %1</translation>
    </message>
    <message>
        <source>pit top length %1</source>
        <translation>گڑھے کی اوپر لمبائی %1</translation>
    </message>
    <message>
        <source>pit top width %1</source>
        <translation>گڑھے کی اوپر چوڑائی %1</translation>
    </message>
    <message>
        <source>pit top diameter %1</source>
        <translation>گڑھے کا اوپر قطر %1</translation>
    </message>
    <message>
        <source>A</source>
        <comment>letter of the section</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>Scale 1 : %1</source>
        <translation>پیمانہ 1 : %1</translation>
    </message>
    <message>
        <source>rim and ground: 0</source>
        <translation>اوپری کنارہ اور زمین: 0</translation>
    </message>
    <message>
        <source>overflow: %1 down</source>
        <translation>اوور فلو: %1 نیچے</translation>
    </message>
    <message>
        <source>pit floor: %1 down</source>
        <translation>گڑھے کا تلا: %1 نیچے</translation>
    </message>
    <message>
        <source>pit floor diameter %1</source>
        <translation>گڑھے کے تلے کا قطر %1</translation>
    </message>
    <message>
        <source>pit floor width %1</source>
        <translation>گڑھے کے تلے کی چوڑائی %1</translation>
    </message>
    <message>
        <source>clear depth %1</source>
        <translation>اندر کی گہرائی %1</translation>
    </message>
    <message>
        <source>pit depth %1</source>
        <translation>گڑھے کی گہرائی %1</translation>
    </message>
    <message>
        <source>corner peg at the pit edge, or centre</source>
        <translation>گڑھے کے کنارے پر کونے کی کھونٹی، یا مرکز</translation>
    </message>
    <message>
        <source>%1, at A-A</source>
        <translation>%1، A-A پر</translation>
    </message>
    <message>
        <source>mark on the string for the right angle, 3-4-5</source>
        <translation>ڈوری پر گنیا کا نشان، 3-4-5</translation>
    </message>
    <message>
        <source>section</source>
        <translation>سیکشن</translation>
    </message>
    <message>
        <source>offset peg, 1 m clear of the digging; A1 and A2 belong to A</source>
        <translation>ہٹا کر لگی کھونٹی، کھدائی سے 1 m پرے؛ A1 اور A2 کا تعلق A سے ہے</translation>
    </message>
    <message>
        <source>rim collar length %1</source>
        <translation>کنارے کے کالر کی لمبائی %1</translation>
    </message>
    <message>
        <source>rim collar width %1</source>
        <translation>کنارے کے کالر کی چوڑائی %1</translation>
    </message>
    <message>
        <source>rim collar diameter %1</source>
        <translation>کنارے کے کالر کا قطر %1</translation>
    </message>
    <message>
        <source>clear floor: %1 down</source>
        <translation>اندر کا فرش: %1 نیچے</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>quantity (unit)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>source</source>
        <translation>ذریعہ</translation>
    </message>
    <message>
        <source>roof</source>
        <translation>چھت</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>زمین</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>ٹینکی پر بارش</translation>
    </message>
    <message>
        <source>people</source>
        <translation>لوگ</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>جانور</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>کیاریاں</translation>
    </message>
    <message>
        <source>Left bar, comes in:</source>
        <translation>بائیں پٹی، آتا ہے:</translation>
    </message>
    <message>
        <source>Right bar, needed:</source>
        <translation>دائیں پٹی، چاہیے:</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>کمی</translation>
    </message>
    <message>
        <source>in %1, needed %2</source>
        <comment>amounts of water in a month</comment>
        <translation>آمد %1، ضرورت %2</translation>
    </message>
    <message>
        <source>missing %1</source>
        <translation>کمی %1</translation>
    </message>
    <message>
        <source>Enter the weather, what brings water and what needs it, to see them month by month.</source>
        <translation>موسم، پانی کہاں سے آتا ہے اور کس کو چاہیے، یہ درج کریں تو مہینہ بہ مہینہ نظر آئے گا۔</translation>
    </message>
    <message>
        <source>Water in a month</source>
        <translation>مہینے کا پانی</translation>
    </message>
    <message>
        <source>8 years in ten</source>
        <translation>دس میں سے 8 سال</translation>
    </message>
    <message>
        <source>middle year</source>
        <translation>درمیانہ سال</translation>
    </message>
    <message>
        <source>all years</source>
        <translation>سب سال</translation>
    </message>
    <message>
        <source>the last %1, not to be taken out</source>
        <translation>آخری %1، جو نہیں نکالنا</translation>
    </message>
    <message>
        <source>full: %1</source>
        <translation>بھری ہوئی: %1</translation>
    </message>
    <message>
        <source>Enter the weather to see how the water in the tank rises and falls.</source>
        <translation>موسم درج کریں تو نظر آئے گا کہ ٹینکی میں پانی کیسے چڑھتا اور اترتا ہے۔</translation>
    </message>
    <message>
        <source>Water in the tank</source>
        <translation>ٹینکی میں پانی</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 سے کم</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 تا %2</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts:</source>
        <translation>دس میں سے کتنے سال پانی پورا پڑتا ہے:</translation>
    </message>
    <message>
        <source>target</source>
        <translation>ہدف</translation>
    </message>
    <message>
        <source>this tank and its beds</source>
        <translation>یہ ٹینکی اور اس کی کیاریاں</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>ہدف %1</translation>
    </message>
    <message>
        <source>Enter the beds to see what size of tank waters how much of them.</source>
        <translation>کیاریاں درج کریں تو نظر آئے گا کہ کس سائز کی ٹینکی کتنی کیاریوں کو پانی دیتی ہے۔</translation>
    </message>
    <message>
        <source>The map is being worked out.</source>
        <translation>گراف کا حساب لگ رہا ہے۔</translation>
    </message>
    <message>
        <source>Enter the weather and the beds to see what size of tank waters how much of them.</source>
        <translation>موسم اور کیاریاں درج کریں تو نظر آئے گا کہ کس سائز کی ٹینکی کتنی کیاریوں کو پانی دیتی ہے۔</translation>
    </message>
    <message>
        <source>Area of the beds</source>
        <translation>کیاریوں کا رقبہ</translation>
    </message>
    <message>
        <source>Water when the tank is full</source>
        <translation>بھری ٹینکی میں پانی</translation>
    </message>
    <message>
        <source>being refined</source>
        <translation>باریکی سے حساب جاری ہے</translation>
    </message>
    <message>
        <source>this tank: %1</source>
        <translation>یہ ٹینکی: %1</translation>
    </message>
    <message>
        <source>enough: %1</source>
        <translation>کافی: %1</translation>
    </message>
    <message>
        <source>Enter the weather and what needs water to see how large a tank is enough.</source>
        <translation>موسم اور پانی کی ضرورت درج کریں تو نظر آئے گا کہ کتنی بڑی ٹینکی کافی ہے۔</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts</source>
        <translation>دس میں سے کتنے سال پانی پورا پڑتا ہے</translation>
    </message>
    <message>
        <source>the water lasts in %1 of %2 years</source>
        <translation>%2 میں سے %1 سال پانی پورا پڑتا ہے</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>part of an amount</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: no water comes in.</source>
        <translation>%1: پانی نہیں آتا۔</translation>
    </message>
    <message>
        <source>%1: %2 come in (%3).</source>
        <translation>%1: %2 پانی آتا ہے (%3)۔</translation>
    </message>
    <message>
        <source>Nothing is needed.</source>
        <translation>کوئی ضرورت نہیں۔</translation>
    </message>
    <message>
        <source>%1 are needed (%2).</source>
        <translation>%1 پانی چاہیے (%2)۔</translation>
    </message>
    <message>
        <source>%1 of it are missing, on %2.</source>
        <translation>اس میں سے %1 کی کمی ہے، %2 میں۔</translation>
    </message>
    <message>
        <source>%1: half of the years hold %2 or more; one year in ten less than %3</source>
        <translation>%1: آدھے سالوں میں %2 یا زیادہ پانی ہوتا ہے؛ دس میں سے ایک سال %3 سے کم</translation>
    </message>
    <message>
        <source>Tank of %1, beds of %2: %3</source>
        <translation>ٹینکی %1، کیاریاں %2: %3</translation>
    </message>
    <message>
        <source>Tank of %1: %2</source>
        <translation>ٹینکی %1: %2</translation>
    </message>
    <message>
        <source>Time since it was full</source>
        <translation>بھری ہونے کے بعد گزرا وقت</translation>
    </message>
    <message>
        <source>Minutes since it was full</source>
        <translation>بھری ہونے کے بعد گزرے منٹ</translation>
    </message>
    <message>
        <source>%1 min</source>
        <comment>minutes</comment>
        <translation>%1 منٹ</translation>
    </message>
    <message>
        <source>the line draws no lower than %1 over the floor</source>
        <translation>پائپ لائن فرش سے %1 اوپر تک ہی پانی نکالتی ہے، اس سے نیچے نہیں</translation>
    </message>
    <message>
        <source>drawn down after %1</source>
        <translation>%1 بعد پانی نکل چکا</translation>
    </message>
    <message>
        <source>The tank is not emptied through this line.</source>
        <translation>اس پائپ لائن سے ٹینکی خالی نہیں ہوتی۔</translation>
    </message>
    <message>
        <source>How the tank empties is not known: %1.</source>
        <translation>ٹینکی کیسے خالی ہوتی ہے، معلوم نہیں: %1۔</translation>
    </message>
    <message>
        <source>Water over the floor</source>
        <translation>فرش سے اوپر پانی</translation>
    </message>
    <message>
        <source>After %1 the water stands %2 over the floor</source>
        <translation>%1 بعد پانی فرش سے %2 اوپر ہے</translation>
    </message>
    <message>
        <source>pit edge</source>
        <translation>گڑھے کا کنارہ</translation>
    </message>
    <message>
        <source>platform edge, level %1</source>
        <translation>پلیٹ فارم کا کنارہ، لیول %1</translation>
    </message>
    <message>
        <source>cut face, up to the ground</source>
        <translation>کٹائی کی سطح، اوپر زمین تک</translation>
    </message>
    <message>
        <source>fill face, down to the ground</source>
        <translation>بھرائی کی سطح، نیچے زمین تک</translation>
    </message>
    <message>
        <source>platform edge</source>
        <translation>پلیٹ فارم کا کنارہ</translation>
    </message>
    <message>
        <source>natural ground, level (%1)</source>
        <translation>قدرتی زمین، لیول (%1)</translation>
    </message>
    <message>
        <source>fall %1</source>
        <translation>ڈھلوان %1</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north</comment>
        <translation>شمال</translation>
    </message>
    <message>
        <source>spoil heap</source>
        <translation>مٹی کا ڈھیر</translation>
    </message>
    <message>
        <source>%1 to the pit</source>
        <translation>گڑھے تک %1</translation>
    </message>
    <message>
        <source>No flow: %1.</source>
        <translation>پانی نہیں چلتا: %1۔</translation>
    </message>
    <message>
        <source>Tank full, no flow: %1.</source>
        <translation>ٹینکی بھری، پانی نہیں چلتا: %1۔</translation>
    </message>
    <message>
        <source>Tank nearly empty, no flow: %1.</source>
        <translation>ٹینکی تقریباً خالی، پانی نہیں چلتا: %1۔</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>پائپ</translation>
    </message>
    <message>
        <source>still water</source>
        <translation>کھڑا پانی</translation>
    </message>
    <message>
        <source>head, tank full</source>
        <translation>ہیڈ، ٹینکی بھری</translation>
    </message>
    <message>
        <source>head</source>
        <translation>ہیڈ</translation>
    </message>
    <message>
        <source>head, nearly empty</source>
        <translation>ہیڈ، تقریباً خالی</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>سکشن</translation>
    </message>
    <message>
        <source>high point</source>
        <translation>اونچا مقام</translation>
    </message>
    <message>
        <source>Enter the way of the pipe to see the head of the water along it.</source>
        <translation>پائپ کا راستہ درج کریں تو راستے بھر پانی کا ہیڈ نظر آئے گا۔</translation>
    </message>
    <message>
        <source>Level from the rim</source>
        <translation>اوپری کنارے سے لیول</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>پائپ لائن پر فاصلہ</translation>
    </message>
    <message>
        <source>%1 along: pipe level with the rim</source>
        <translation>راستے میں %1 پر: پائپ اوپری کنارے کے برابر</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 over the rim</source>
        <translation>راستے میں %1 پر: پائپ اوپری کنارے سے %2 اوپر</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 under the rim</source>
        <translation>راستے میں %1 پر: پائپ اوپری کنارے سے %2 نیچے</translation>
    </message>
    <message>
        <source>%1, suction %2</source>
        <translation>%1، سکشن %2</translation>
    </message>
    <message>
        <source>%1, head %2</source>
        <translation>%1، ہیڈ %2</translation>
    </message>
    <message>
        <source>level with the rim</source>
        <translation>اوپری کنارے کے برابر</translation>
    </message>
    <message>
        <source>%1 over the rim</source>
        <translation>اوپری کنارے سے %1 اوپر</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 نیچے</translation>
    </message>
    <message>
        <source>rim: 0</source>
        <translation>اوپری کنارہ: 0</translation>
    </message>
    <message>
        <source>sill: %1</source>
        <translation>دہلیز: %1</translation>
    </message>
    <message>
        <source>lip: %1</source>
        <translation>لب: %1</translation>
    </message>
    <message>
        <source>in a storm: %1</source>
        <translation>طوفانی بارش میں: %1</translation>
    </message>
    <message>
        <source>when blocked: %1</source>
        <translation>بند ہونے پر: %1</translation>
    </message>
    <message>
        <source>The water level in a storm is not known: %1.</source>
        <translation>طوفانی بارش میں پانی کا لیول معلوم نہیں: %1۔</translation>
    </message>
    <message>
        <source>The water level when the overflow is blocked is not known: %1.</source>
        <translation>اوور فلو بند ہونے پر پانی کا لیول معلوم نہیں: %1۔</translation>
    </message>
    <message>
        <source>freeboard left %1</source>
        <translation>بچا ہوا فری بورڈ %1</translation>
    </message>
    <message>
        <source>over the rim by %1</source>
        <translation>اوپری کنارے سے %1 اوپر</translation>
    </message>
    <message>
        <source>There is no room between the overflow and the rim to draw.</source>
        <translation>اوور فلو اور اوپری کنارے کے بیچ نقشہ بنانے کی جگہ نہیں۔</translation>
    </message>
    <message>
        <source>heights to scale, lengths not</source>
        <translation>اونچائیاں پیمانے پر، لمبائیاں نہیں</translation>
    </message>
    <message>
        <source>rim and platform: 0</source>
        <translation>اوپری کنارہ اور پلیٹ فارم: 0</translation>
    </message>
    <message>
        <source>natural ground</source>
        <translation>قدرتی زمین</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>ٹینکی خالی</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>ٹینکی بھری اور لیک</translation>
    </message>
    <message>
        <source>No slip was searched for.</source>
        <translation>پھسلن تلاش نہیں کی گئی۔</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall does not make a sound section.</source>
        <translation>کوئی پھسلن نہیں ملی: ڈھلان کی طرف زمین کا ٹھیک سیکشن نہیں بنتا۔</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall is level.</source>
        <translation>کوئی پھسلن نہیں ملی: ڈھلان کی طرف زمین ہموار ہے۔</translation>
    </message>
    <message>
        <source>No slip was found: no circle through this ground has a factor.</source>
        <translation>کوئی پھسلن نہیں ملی: اس زمین میں کسی دائرے کا فیکٹر نہیں نکلتا۔</translation>
    </message>
    <message>
        <source>The search for a slip was stopped.</source>
        <translation>پھسلن کی تلاش روک دی گئی۔</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>بوجھ %1</translation>
    </message>
    <message>
        <source>factor %1</source>
        <translation>فیکٹر %1</translation>
    </message>
    <message>
        <source>radius %1</source>
        <translation>رداس %1</translation>
    </message>
    <message>
        <source>water in the ground</source>
        <translation>زمین میں پانی</translation>
    </message>
    <message>
        <source>P1 stands inward of Q1, P2 of Q2, and so on</source>
        <translation>P1، Q1 سے اندر کی طرف ہے، P2، Q2 سے، اور اسی طرح آگے</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>water in the evening</source>
        <translation>شام کو پانی</translation>
    </message>
    <message>
        <source>wall under wet sacks</source>
        <translation>گیلے ٹاٹ کے نیچے دیوار</translation>
    </message>
    <message>
        <source>filling starts</source>
        <translation>پانی بھرنا شروع</translation>
    </message>
    <message>
        <source>should start by</source>
        <translation>اس دن تک شروع ہو جائے</translation>
    </message>
    <message>
        <source>full on %1</source>
        <translation>%1 کو بھری</translation>
    </message>
    <message>
        <source>not full within a year</source>
        <translation>ایک سال میں نہیں بھرتی</translation>
    </message>
    <message>
        <source>Enter what flows into the tank to see how it fills for the first time.</source>
        <translation>ٹینکی میں آنے والا پانی درج کریں تو نظر آئے گا کہ پہلی بار کیسے بھرتی ہے۔</translation>
    </message>
    <message>
        <source>Height over the floor</source>
        <translation>فرش سے اونچائی</translation>
    </message>
    <message>
        <source>this tank</source>
        <translation>یہ ٹینکی</translation>
    </message>
    <message>
        <source>most water</source>
        <translation>سب سے زیادہ پانی</translation>
    </message>
    <message>
        <source>cheapest that meets the target</source>
        <translation>ہدف پورا کرنے والی سب سے سستی</translation>
    </message>
    <message>
        <source>fewest bags that meet the target</source>
        <translation>ہدف پورا کرنے والی سب سے کم بوریاں</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>خرچ</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>سیمنٹ کی بوریاں</translation>
    </message>
    <message>
        <source>No size is within the limits.</source>
        <translation>کوئی سائز حدوں کے اندر نہیں۔</translation>
    </message>
    <message>
        <source>Search the sizes to see which are worth their price.</source>
        <translation>سائز تلاش کریں تو نظر آئے گا کہ کون سے اپنی قیمت کے لائق ہیں۔</translation>
    </message>
    <message>
        <source>building it, spread over its life</source>
        <translation>بنانے کا خرچ، عمر پر بانٹ کر</translation>
    </message>
    <message>
        <source>upkeep</source>
        <translation>دیکھ بھال</translation>
    </message>
    <message>
        <source>Enter the prices of linings to see what each costs a year.</source>
        <translation>لائننگ کی قیمتیں درج کریں تو ہر ایک کا سالانہ خرچ نظر آئے گا۔</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>سالانہ خرچ</translation>
    </message>
    <message>
        <source>goods and carrying</source>
        <translation>سامان اور ڈھلائی</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>مزدوری</translation>
    </message>
    <message>
        <source>Enter prices and when the works start to see when money is needed.</source>
        <translation>قیمتیں اور تعمیر شروع ہونے کا دن درج کریں تو نظر آئے گا کہ رقم کب چاہیے۔</translation>
    </message>
    <message>
        <source>Money needed up to then</source>
        <translation>اس دن تک درکار رقم</translation>
    </message>
    <message>
        <source>Money needed on the day</source>
        <translation>اس دن درکار رقم</translation>
    </message>
    <message>
        <source>when it rises, the outcome rises</source>
        <comment>of an input</comment>
        <translation>یہ بڑھے تو نتیجہ بڑھتا ہے</translation>
    </message>
    <message>
        <source>when it rises, the outcome falls</source>
        <comment>of an input</comment>
        <translation>یہ بڑھے تو نتیجہ گھٹتا ہے</translation>
    </message>
    <message>
        <source>goods and carrying %1</source>
        <comment>amount of money</comment>
        <translation>سامان اور ڈھلائی %1</translation>
    </message>
    <message>
        <source>wages %1</source>
        <comment>amount of money</comment>
        <translation>مزدوری %1</translation>
    </message>
    <message>
        <source>together up to then %1</source>
        <comment>amount of money</comment>
        <translation>اس دن تک کل %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: amounts</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 a year (building it %3, upkeep %4), lasts %5</source>
        <comment>lining: amounts, years</comment>
        <translation>%1: سالانہ %2 (بنانا %3، دیکھ بھال %4)، عمر %5</translation>
    </message>
    <message>
        <source>%1 a year for each %2</source>
        <comment>amount of money, volume</comment>
        <translation>ہر %2 پر سالانہ %1</translation>
    </message>
    <message>
        <source>%1: %2 of the spread</source>
        <comment>input, percentage</comment>
        <translation>%1: فرق کا %2</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <comment>diameter, depth</comment>
        <translation>قطر %1، گہرائی %2</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <comment>length, width, depth</comment>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>%1 cannot be built.</source>
        <translation>%1: یہ نہیں بن سکتی۔</translation>
    </message>
    <message>
        <source>Add an option to see the tanks side by side.</source>
        <translation>متبادل شامل کریں تو ٹینکیاں ساتھ ساتھ نظر آئیں گی۔</translation>
    </message>
    <message>
        <source>None of the options can be built.</source>
        <translation>کوئی بھی متبادل نہیں بن سکتا۔</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>مزدور</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>مستری</translation>
    </message>
    <message>
        <source>people wetting</source>
        <translation>ترائی والے</translation>
    </message>
    <message>
        <source>goes on until %1 →</source>
        <translation>→ %1 تک جاری</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see the people of each day.</source>
        <translation>تعمیر کب شروع ہو گی اور کون لوگ ہوں گے، درج کریں تو ہر دن کے لوگ نظر آئیں گے۔</translation>
    </message>
    <message>
        <source>People on a day</source>
        <translation>ایک دن کے لوگ</translation>
    </message>
    <message>
        <source>8 times in ten</source>
        <translation>دس میں سے 8 بار</translation>
    </message>
    <message>
        <source>half of the times less</source>
        <translation>آدھی بار اس سے کم</translation>
    </message>
    <message>
        <source>all times</source>
        <translation>ہر بار</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>جیسا درج ہے</translation>
    </message>
    <message>
        <source>What the spread comes from:</source>
        <translation>فرق کس چیز سے آتا ہے:</translation>
    </message>
    <message>
        <source>raises the outcome</source>
        <comment>an input that grows</comment>
        <translation>نتیجہ بڑھاتا ہے</translation>
    </message>
    <message>
        <source>lowers the outcome</source>
        <comment>an input that grows</comment>
        <translation>نتیجہ گھٹاتا ہے</translation>
    </message>
    <message>
        <source>How far the numbers may be off is not worked out yet.</source>
        <translation>اعداد میں کتنا فرق ہو سکتا ہے، ابھی حساب نہیں لگا۔</translation>
    </message>
    <message>
        <source>first coat as planned, and best</source>
        <translation>پہلا کوٹ منصوبے کے مطابق، اور بہترین</translation>
    </message>
    <message>
        <source>first coat as planned</source>
        <translation>پہلا کوٹ منصوبے کے مطابق</translation>
    </message>
    <message>
        <source>best week</source>
        <translation>بہترین ہفتہ</translation>
    </message>
    <message>
        <source>Enter the weather to see in which weeks coats are likely to stay undisturbed.</source>
        <translation>موسم درج کریں تو نظر آئے گا کہ کن ہفتوں میں کوٹ سلامت رہنے کا امکان ہے۔</translation>
    </message>
    <message>
        <source>planned, best</source>
        <translation>طے شدہ، بہترین</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>طے شدہ</translation>
    </message>
    <message>
        <source>best</source>
        <translation>بہترین</translation>
    </message>
    <message>
        <source>Times in ten that coats of this week stay undisturbed</source>
        <translation>دس میں سے کتنی بار اس ہفتے کے کوٹ سلامت رہتے ہیں</translation>
    </message>
    <message>
        <source>no work on this day</source>
        <translation>اس دن کام نہیں</translation>
    </message>
    <message>
        <source>work</source>
        <translation>کام</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>تاخیر کی گنجائش نہیں</translation>
    </message>
    <message>
        <source>room to slip</source>
        <translation>تاخیر کی گنجائش</translation>
    </message>
    <message>
        <source>kept wet</source>
        <translation>گیلا رکھا جائے</translation>
    </message>
    <message>
        <source>filling</source>
        <translation>پانی بھرنا</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>آخری دن</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>%1 تک</translation>
    </message>
    <message>
        <source>%1: not before %2</source>
        <translation>%1: %2 سے پہلے نہیں</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see their days.</source>
        <translation>تعمیر کب شروع ہو گی اور کون لوگ ہوں گے، درج کریں تو ہر کام کے دن نظر آئیں گے۔</translation>
    </message>
    <message>
        <source>%1 labourer</source>
        <translation>%1 مزدور</translation>
    </message>
    <message numerus="yes">
        <source>%1 labourers</source>
        <translation>
            <numerusform>%1 مزدور</numerusform>
            <numerusform>%1 مزدور</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mason</source>
        <translation>%1 مستری</translation>
    </message>
    <message numerus="yes">
        <source>%1 masons</source>
        <translation>
            <numerusform>%1 مستری</numerusform>
            <numerusform>%1 مستری</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 person wetting</source>
        <translation>%1 ترائی والا</translation>
    </message>
    <message numerus="yes">
        <source>%1 people wetting</source>
        <translation>
            <numerusform>%1 ترائی والا</numerusform>
            <numerusform>%1 ترائی والے</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>people (so many of them masons)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>room to slip: %1</source>
        <translation>تاخیر کی گنجائش: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>last day of something</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <comment>task: when and who; how far it may slip</comment>
        <translation>%1: %2؛ %3</translation>
    </message>
    <message>
        <source>%1 for wetting</source>
        <comment>litres of water</comment>
        <translation>ترائی کے لیے %1</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>کوئی نہیں</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: people</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 flow in</source>
        <comment>litres</comment>
        <translation>%1 پانی آتا ہے</translation>
    </message>
    <message>
        <source>%1 are lost</source>
        <comment>litres</comment>
        <translation>%1 ضائع ہوتا ہے</translation>
    </message>
    <message>
        <source>%1: %2. In the evening %3 over the floor, %4.</source>
        <comment>date: flows; level, volume</comment>
        <translation>%1: %2۔ شام کو فرش سے %3 اوپر، %4۔</translation>
    </message>
    <message>
        <source>%1 to keep the %2 of wall above the water wet.</source>
        <translation>پانی سے اوپر کی %2 دیوار گیلی رکھنے کے لیے %1۔</translation>
    </message>
    <message>
        <source>Week from %1: undisturbed %2 times of %3; heavy rain %4, frost %5, heat or cold %6</source>
        <translation>%1 سے ہفتہ: %3 میں سے %2 بار سلامت؛ بھاری بارش %4، کورا %5، گرمی یا سردی %6</translation>
    </message>
    <message>
        <source>The person is %1 tall.</source>
        <translation>یہ شخص %1 لمبا ہے۔</translation>
    </message>
    <message>
        <source>cost not known</source>
        <translation>خرچ معلوم نہیں</translation>
    </message>
    <message>
        <source>%1: cost not known</source>
        <comment>lining</comment>
        <translation>%1: خرچ معلوم نہیں</translation>
    </message>
    <message>
        <source>plumb line and bob</source>
        <translation>ساہول اور ڈوری</translation>
    </message>
    <message>
        <source>level side: spirit level or hose</source>
        <translation>ہموار پہلو: اسپرٹ لیول یا لیول پائپ</translation>
    </message>
    <message>
        <source>slanting side lies on the pit wall</source>
        <translation>ترچھا پہلو گڑھے کی دیوار سے لگتا ہے</translation>
    </message>
    <message>
        <source>straight staff stands on the pit wall</source>
        <translation>سیدھی چھڑ گڑھے کی دیوار سے لگی کھڑی ہے</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 اوپر</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>%1 باہر</translation>
    </message>
    <message>
        <source>The board gives the lean of the pit wall, as it is dug.</source>
        <translation>پھٹا گڑھے کی دیوار کی سلامی بتاتا ہے، جیسی کھودی جاتی ہے۔</translation>
    </message>
    <message>
        <source>The pit wall is dug upright.</source>
        <translation>گڑھے کی دیوار سیدھی کھڑی کھودی جاتی ہے۔</translation>
    </message>
    <message>
        <source>Plaster follows it: the clear wall leans the same.</source>
        <translation>پلستر اسی کے ساتھ چلتا ہے: اندر کی دیوار کی سلامی بھی اتنی ہی ہوتی ہے۔</translation>
    </message>
    <message>
        <source>%1, level with the string: 0</source>
        <translation>%1، ڈوری کے برابر: 0</translation>
    </message>
    <message>
        <source>%1, dig to here: %2 down</source>
        <translation>%1، یہاں تک کھودیں: %2 نیچے</translation>
    </message>
    <message>
        <source>%1, the clear floor: %2 down</source>
        <translation>%1، اندر کا فرش: %2 نیچے</translation>
    </message>
    <message>
        <source>%1: %2 down</source>
        <translation>%1: %2 نیچے</translation>
    </message>
    <message>
        <source>clear face: inside of the finished plaster</source>
        <translation>اندر کی سطح: تیار پلستر کا اندر</translation>
    </message>
    <message>
        <source>coats, %1 thick in all, each brought up to the collar</source>
        <translation>کوٹ، سب ملا کر %1 موٹے، ہر ایک کالر تک لایا ہوا</translation>
    </message>
    <message>
        <source>pit wall, as it is dug; ground behind it</source>
        <translation>گڑھے کی دیوار، جیسی کھودی گئی؛ اس کے پیچھے زمین</translation>
    </message>
    <message>
        <source>pipe, %1 outside</source>
        <translation>پائپ، باہر سے %1</translation>
    </message>
    <message>
        <source>pipe, %1 outside as an example</source>
        <translation>پائپ، باہر سے %1، مثال کے طور پر</translation>
    </message>
    <message>
        <source>collar of stiff mortar all round the pipe</source>
        <translation>پائپ کے چاروں طرف سخت مسالے کا کالر</translation>
    </message>
    <message>
        <source>outside end: on beyond the pit edge, no joint in the wall</source>
        <translation>باہر کا سرا: گڑھے کے کنارے سے آگے تک، دیوار میں کوئی جوڑ نہیں</translation>
    </message>
    <message>
        <source>clamp: the pipe cannot pull or shake on the rim</source>
        <translation>کلیمپ: پائپ کنارے پر نہ کھنچے نہ ہلے</translation>
    </message>
    <message>
        <source>bell mouth, above the dead level</source>
        <translation>پھیلا ہوا منہ، ڈیڈ لیول سے اوپر</translation>
    </message>
    <message>
        <source>dead level: %1 over the clear floor</source>
        <translation>ڈیڈ لیول: اندر کے فرش سے %1 اوپر</translation>
    </message>
    <message>
        <source>Pipe through the wall</source>
        <translation>دیوار میں سے پائپ</translation>
    </message>
    <message>
        <source>Pipe over the rim</source>
        <translation>اوپری کنارے کے اوپر سے پائپ</translation>
    </message>
    <message>
        <source>B</source>
        <comment>letter of the section</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>%1, at B-B</source>
        <translation>%1، B-B پر</translation>
    </message>
    <message>
        <source>pit floor length %1</source>
        <translation>گڑھے کے تلے کی لمبائی %1</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>diameter %1</source>
        <translation>قطر %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>حوالہ: %1</translation>
    </message>
    <message>
        <source>%1: net %2, to order %3</source>
        <translation>%1: خالص %2، منگوانا %3</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>گنجائش، اوور فلو تک بھری</translation>
    </message>
    <message>
        <source>%1 to the rim</source>
        <translation>اوپری کنارے تک %1</translation>
    </message>
    <message>
        <source>Prismoidal formula: depth ÷ 6 × (floor + 4 × middle + surface), all clear inside areas.</source>
        <translation>منشور نما (prismoidal) کا کلیہ: گہرائی ÷ 6 × (فرش + 4 × درمیان + پانی کی اوپری سطح)، سب اندر کے رقبے۔</translation>
    </message>
    <message>
        <source>Water depth %1, floor %2, water surface %3.</source>
        <translation>پانی کی گہرائی %1، فرش %2، پانی کی اوپری سطح %3۔</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>قابلِ استعمال پانی</translation>
    </message>
    <message>
        <source>Held to the overflow less what lies below the dead depth.</source>
        <translation>اوور فلو تک کا پانی، ڈیڈ لیول سے نیچے کا پانی نکال کر۔</translation>
    </message>
    <message>
        <source>%1 less %2 below %3.</source>
        <translation>%1 میں سے %3 سے نیچے کا %2 نکال کر۔</translation>
    </message>
    <message>
        <source>%1: shell %2, to mix %3, cement %4</source>
        <translation>%1: اصل حجم %2، مسالا بنانے کو %3، سیمنٹ %4</translation>
    </message>
    <message>
        <source>Placed plaster × %1 loose ingredients, shared out by the parts of the mix; cement weighs %2.</source>
        <translation>لگا ہوا پلستر × %1 کھلا سامان، مسالے کے تناسب کے حصوں میں بانٹ کر؛ سیمنٹ کا وزن %2۔</translation>
    </message>
    <message>
        <source>Unevenness %1 on coat 1, waste %2, whole bags.</source>
        <translation>کوٹ 1 پر ناہمواری %1، ضائع مال %2، پوری بوریاں۔</translation>
    </message>
    <message>
        <source>Cement to order</source>
        <translation>سیمنٹ جو منگوانا ہے</translation>
    </message>
    <message>
        <source>of %1 each</source>
        <translation>ہر بوری %1 کی</translation>
    </message>
    <message>
        <source>From the exact shells and the mixes, with waste, sieving loss and the bulking of damp sand.</source>
        <translation>اصل حجم اور مسالے کے تناسب سے، ضائع مال، چھاننے کا نقصان اور گیلی ریت کا پھولنا ملا کر۔</translation>
    </message>
    <message>
        <source>Soil, sand and stone to bring</source>
        <translation>مٹی، ریت اور پتھر جو لانا ہے</translation>
    </message>
    <message>
        <source>Soil %1
Sand %2
Stone %3</source>
        <translation>مٹی %1
ریت %2
پتھر %3</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>محنت</translation>
    </message>
    <message>
        <source>People and dates are not part of this project.</source>
        <translation>لوگ اور تاریخیں اس پراجیکٹ میں شامل نہیں۔</translation>
    </message>
    <message>
        <source>%1: %2 (%3 to %4)</source>
        <translation>%1: %2 (%3 تا %4)</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>اس دن تک پانی بھرنا شروع کریں</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 تا %3</translation>
    </message>
    <message>
        <source>The clear inside, grown by all coats square to their faces and by the stone bed under the floor.</source>
        <translation>اندر کے ناپ، جن میں ہر کوٹ اپنی سطح کی گنیا میں اور فرش کے نیچے پتھر کی سولنگ بڑھائی گئی ہے۔</translation>
    </message>
    <message>
        <source>Pit floor %1.</source>
        <translation>گڑھے کا تلا %1۔</translation>
    </message>
    <message>
        <source>Loose spoil %1.</source>
        <translation>کھدائی کی کھلی مٹی %1۔</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>گڑھا جو کھودنا ہے</translation>
    </message>
    <message>
        <source>pit at ground %1, pit depth %2</source>
        <translation>زمین پر گڑھا %1، گڑھے کی گہرائی %2</translation>
    </message>
    <message>
        <source>Finished clear inside</source>
        <translation>اندر کے تیار ناپ</translation>
    </message>
    <message>
        <source>floor %1
rim %2
clear depth %3</source>
        <translation>فرش %1
اوپری کنارہ %2
اندر کی گہرائی %3</translation>
    </message>
    <message>
        <source>What the water touches, after all coats. The walls lean out by batter × height.</source>
        <translation>جہاں پانی لگتا ہے، سب کوٹوں کے بعد۔ دیواریں سلامی × اونچائی جتنی باہر کو جھکی ہیں۔</translation>
    </message>
    <message>
        <source>Floor %1, walls along the slope %2, opening at the rim %3.</source>
        <translation>فرش %1، دیواریں ڈھلان پر %2، اوپر کا منہ %3۔</translation>
    </message>
    <message>
        <source>Latitude, weather, source and needs are not known yet: see the tab Water.</source>
        <translation>عرض بلد، موسم، پانی کا ذریعہ اور ضرورتیں ابھی معلوم نہیں: ٹیب ”پانی“ دیکھیں۔</translation>
    </message>
    <message>
        <source>Reference evapotranspiration %1 a year, rain %2.</source>
        <translation>معیاری بخاراتی خرچ سالانہ %1، بارش %2۔</translation>
    </message>
    <message>
        <source>Sizes that meet the target</source>
        <translation>ہدف پورا کرنے والے سائز</translation>
    </message>
    <message>
        <source>smallest tank %1</source>
        <translation>سب سے چھوٹی ٹینکی %1</translation>
    </message>
    <message>
        <source>no tank up to %1</source>
        <translation>%1 تک کوئی ٹینکی نہیں</translation>
    </message>
    <message>
        <source>largest beds %1</source>
        <translation>سب سے بڑی کیاریاں %1</translation>
    </message>
    <message>
        <source>no beds, however small</source>
        <translation>کوئی کیاری نہیں، چاہے کتنی چھوٹی ہو</translation>
    </message>
    <message>
        <source>The tank&apos;s plan is made larger or smaller at the same depth and batter; the beds keep their shares. Every size is run through all weather years.</source>
        <translation>ٹینکی کی لمبائی چوڑائی بڑھائی یا گھٹائی جاتی ہے، گہرائی اور سلامی وہی رہتی ہے؛ کیاریوں کے حصے وہی رہتے ہیں۔ ہر سائز کا حساب سب موسمی سالوں میں لگتا ہے۔</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>دس میں سے کتنے سال پورا سال پانی</translation>
    </message>
    <message>
        <source>Each day: water held + source + runoff + rain − evaporation − seepage − need, kept between empty and full; a day is short of water when less than the need can be drawn.</source>
        <translation>ہر دن: موجود پانی + ذریعہ + بہتا پانی + بارش − بخارات − رساؤ − ضرورت، خالی اور بھری کے بیچ؛ جس دن ضرورت سے کم پانی نکل سکے وہ کم پانی کا دن ہے۔</translation>
    </message>
    <message>
        <source>%1 of %2 weather years pass without a day short of water. Days met: %3, water met: %4.</source>
        <translation>%2 میں سے %1 موسمی سال کم پانی کے کسی دن کے بغیر گزرتے ہیں۔ پورے پڑے دن: %3، پوری ہوئی ضرورت: %4۔</translation>
    </message>
    <message>
        <source>days short of water in a mean year %1, in the worst %2</source>
        <translation>کم پانی کے دن: اوسط سال میں %1، سب سے برے سال میں %2</translation>
    </message>
    <message>
        <source>almost any tank</source>
        <translation>تقریباً کوئی بھی ٹینکی</translation>
    </message>
    <message>
        <source>beds of %1 or more</source>
        <translation>کیاریاں %1 یا زیادہ</translation>
    </message>
    <message>
        <source>Target: %1 years in ten with water all year.</source>
        <translation>ہدف: دس میں سے %1 سال پورا سال پانی۔</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>کل خرچ</translation>
    </message>
    <message>
        <source>Money is not part of this project: see the tab Money.</source>
        <translation>رقم اس پراجیکٹ میں شامل نہیں: ٹیب ”رقم“ دیکھیں۔</translation>
    </message>
    <message>
        <source>Materials %1, labour %2, other %3, carriage %4, contingency %5.</source>
        <translation>سامان %1، مزدوری %2، دیگر %3، ڈھلائی %4، غیر متوقع خرچ %5۔</translation>
    </message>
    <message>
        <source>Paid %1, given %2.</source>
        <translation>ادا %1، مفت حصہ %2۔</translation>
    </message>
    <message>
        <source>%1 for each cubic metre held.</source>
        <translation>گنجائش کے ہر مکعب میٹر پر %1۔</translation>
    </message>
    <message>
        <source>Prices that are missing: %1. The sum is too small.</source>
        <translation>جو قیمتیں نہیں ہیں: %1۔ جمع اصل سے کم ہے۔</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>%1 سے زیادہ</translation>
    </message>
    <message>
        <source>paid %1, given %2</source>
        <translation>ادا %1، مفت حصہ %2</translation>
    </message>
    <message>
        <source>%1 after the first day of the works, %2</source>
        <translation>تعمیر کے پہلے دن سے %1 بعد، %2</translation>
    </message>
</context>
<context>
    <name>Handouts</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 تا %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>دن</translation>
    </message>
    <message>
        <source>morning</source>
        <translation>صبح</translation>
    </message>
    <message>
        <source>noon</source>
        <translation>دوپہر</translation>
    </message>
    <message>
        <source>evening</source>
        <translation>شام</translation>
    </message>
    <message>
        <source>Start filling no later than %1.</source>
        <translation>%1 تک پانی بھرنا شروع کر دیں۔</translation>
    </message>
    <message>
        <source>Filling begun. Until water covers a wall, its sacks stay on and stay wet.</source>
        <translation>پانی بھرنا شروع۔ جب تک پانی دیوار کو نہ ڈھک لے، اس کے ٹاٹ لگے رہیں اور گیلے رہیں۔</translation>
    </message>
    <message>
        <source>Work for each task</source>
        <translation>ہر کام کی محنت</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>کام</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>کون</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>محنت</translation>
    </message>
    <message>
        <source>Cover the fresh coat with sacks and keep them wet day and night, rest days too. Tick each wetting. Plaster that dries early cracks and leaks.</source>
        <translation>تازہ کوٹ کو ٹاٹ سے ڈھکیں اور دن رات گیلا رکھیں، چھٹی کے دن بھی۔ ہر ترائی پر نشان لگائیں۔ جو پلستر جلدی سوکھ جائے وہ پھٹتا ہے اور لیک کرتا ہے۔</translation>
    </message>
    <message>
        <source>%1 across</source>
        <translation>قطر %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>length by width</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Holds when full</source>
        <translation>بھری ہو تو گنجائش</translation>
    </message>
    <message>
        <source>Can be drawn from it</source>
        <translation>جو نکالا جا سکتا ہے</translation>
    </message>
    <message>
        <source>Clear size at the floor</source>
        <translation>فرش پر اندر کے ناپ</translation>
    </message>
    <message>
        <source>Clear size at the rim</source>
        <translation>اوپری کنارے پر اندر کے ناپ</translation>
    </message>
    <message>
        <source>Pit to dig, at the ground</source>
        <translation>گڑھا جو کھودنا ہے، زمین پر</translation>
    </message>
    <message>
        <source>Pit depth to dig</source>
        <translation>گڑھے کی گہرائی جو کھودنی ہے</translation>
    </message>
    <message>
        <source>Clear depth when finished</source>
        <translation>تیار ہونے پر اندر کی گہرائی</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>so many bags of so many kilograms</comment>
        <translation>%1، ہر ایک %2</translation>
    </message>
    <message>
        <source>Work, all together</source>
        <translation>کل محنت</translation>
    </message>
    <message>
        <source>Work starts</source>
        <translation>کام شروع</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>اس دن تک پانی بھرنا شروع کریں</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for each bag.</source>
        <translation>سیمنٹ جو خریدنا ہے: ہر بوری کی ایک تصویر۔</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for every %1 bags, the last may be part.</source>
        <translation>سیمنٹ جو خریدنا ہے: ہر %1 بوریوں کی ایک تصویر، آخری ادھوری ہو سکتی ہے۔</translation>
    </message>
    <message>
        <source>Cement to buy</source>
        <translation>سیمنٹ جو خریدنا ہے</translation>
    </message>
    <message>
        <source>No crew and dates were given, so these sheets have no work calendar and no wetting calendar.</source>
        <translation>ٹیم اور تاریخیں نہیں دی گئیں، اس لیے ان شیٹوں میں کام کا کیلنڈر اور ترائی کا کیلنڈر نہیں ہے۔</translation>
    </message>
    <message>
        <source>Clear sizes are what the water fills. Pit sizes are what is dug; the lining takes up the rest.</source>
        <translation>اندر کے ناپ وہ ہیں جنہیں پانی بھرتا ہے۔ گڑھے کے ناپ وہ ہیں جو کھودا جاتا ہے؛ باقی جگہ لائننگ لیتی ہے۔</translation>
    </message>
    <message>
        <source>The construction sheets are marked NOT FOR CONSTRUCTION: see the findings.</source>
        <translation>تعمیر کی شیٹوں پر لکھا ہے ”تعمیر کے لیے نہیں“: نکات دیکھیں۔</translation>
    </message>
    <message>
        <source>Where the pegs stand</source>
        <translation>کھونٹیاں کہاں لگتی ہیں</translation>
    </message>
    <message>
        <source>Measured from the centre O; x toward A, y toward B.</source>
        <translation>مرکز O سے ناپا گیا؛ x کا رخ A کی طرف، y کا رخ B کی طرف۔</translation>
    </message>
    <message>
        <source>Measured from peg A; x along side A to B, y square to it, into the pit.</source>
        <translation>کھونٹی A سے ناپا گیا؛ x ضلع A سے B کے ساتھ، y اس کی گنیا میں، گڑھے کے اندر کی طرف۔</translation>
    </message>
    <message>
        <source>Peg</source>
        <translation>کھونٹی</translation>
    </message>
    <message>
        <source>What it marks</source>
        <translation>کس کا نشان</translation>
    </message>
    <message>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <source>y</source>
        <translation>y</translation>
    </message>
    <message>
        <source>Check with the tape</source>
        <translation>فیتے سے جانچیں</translation>
    </message>
    <message>
        <source>From peg to peg</source>
        <translation>کھونٹی سے کھونٹی</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>کیا ہے</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>لمبائی</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>جانچ لیا</translation>
    </message>
    <message>
        <source>Batter board: how far the pit wall has come in</source>
        <translation>سلامی کا پھٹا: گڑھے کی دیوار کتنی اندر آ گئی ہے</translation>
    </message>
    <message>
        <source>Depth below ground</source>
        <translation>زمین سے نیچے گہرائی</translation>
    </message>
    <message>
        <source>In from the pit edge</source>
        <translation>گڑھے کے کنارے سے اندر</translation>
    </message>
    <message>
        <source>Depth rod: marks measured down from the string at ground level</source>
        <translation>گہرائی کی چھڑ: نشان زمین کے برابر لگی ڈوری سے نیچے ناپیں</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>لیول</translation>
    </message>
    <message>
        <source>Below the string</source>
        <translation>ڈوری سے نیچے</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>نشان لگایا</translation>
    </message>
    <message>
        <source>Walls stand upright.</source>
        <translation>دیواریں ساہول میں سیدھی کھڑی ہیں۔</translation>
    </message>
    <message>
        <source>Walls lean outward: %1 out for each %2 up.</source>
        <translation>دیواریں باہر کو جھکی ہیں: ہر %2 اونچائی پر %1 باہر۔</translation>
    </message>
    <message>
        <source>Clear sizes are inside the finished plaster. Pit sizes are what is dug, before any lining. </source>
        <translation>اندر کے ناپ تیار پلستر کے اندر کے ہیں۔ گڑھے کے ناپ وہ ہیں جو لائننگ سے پہلے کھودا جاتا ہے۔ </translation>
    </message>
    <message>
        <source>Section A-A of the plan. </source>
        <translation>اوپر کے نقشے کا سیکشن A-A۔ </translation>
    </message>
    <message>
        <source>Foot of the wall, enlarged. Thickness of a coat is measured square to its face.</source>
        <translation>دیوار کی جڑ، بڑی کر کے۔ کوٹ کی موٹائی اس کی سطح کی گنیا میں ناپی جاتی ہے۔</translation>
    </message>
    <message>
        <source>NOT FOR CONSTRUCTION</source>
        <translation>تعمیر کے لیے نہیں</translation>
    </message>
    <message>
        <source>Caution. Pit walls can fall in: never work alone, keep spoil %1 back, keep a ladder in the pit. Cement burns skin and eyes, its dust harms the lungs: gloves, boots, wash at once. Lift bags two together. Fence the pit: people fall in and drown.</source>
        <translation>احتیاط۔ گڑھے کی دیواریں گر سکتی ہیں: کبھی اکیلے کام نہ کریں، کھدائی کی مٹی %1 پیچھے رکھیں، گڑھے میں سیڑھی رکھیں۔ سیمنٹ جلد اور آنکھیں جلاتا ہے، اس کی گرد پھیپھڑوں کو نقصان دیتی ہے: دستانے، بوٹ، فوراً دھوئیں۔ بوریاں دو آدمی مل کر اٹھائیں۔ گڑھے کے گرد باڑ لگائیں: لوگ گرتے ہیں اور ڈوب جاتے ہیں۔</translation>
    </message>
    <message>
        <source>This bar is 100 mm on a true print.</source>
        <translation>صحیح پرنٹ پر یہ پٹی 100 mm ہوتی ہے۔</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>صفحہ %1 از %2</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first.</source>
        <translation>مقامی ضابطے اور لائسنس یافتہ ماہرین کی ہدایت سب سے پہلے ہیں۔</translation>
    </message>
    <message>
        <source>Design mark %1</source>
        <translation>ڈیزائن کا نشان %1</translation>
    </message>
    <message>
        <source>Work %1 to %2</source>
        <translation>کام %1 تا %2</translation>
    </message>
    <message>
        <source>Farm water tank</source>
        <translation>کھیت کی پانی کی ٹینکی</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>جواب نہیں</translation>
    </message>
    <message>
        <source>How each is reckoned</source>
        <translation>ہر ایک کا حساب کیسے لگا</translation>
    </message>
    <message>
        <source>Net: each coat&apos;s exact shell, taken from the geometry, times %1 loose parts for one of placed plaster, shared out by the parts of its mix. Cement weighs %2 loose.</source>
        <translation>خالص: ہر کوٹ کا اصل حجم، اس کی شکل سے لیا گیا، ضرب لگے ہوئے پلستر کے ایک حصے پر %1 کھلے حصے، مسالے کے تناسب کے حصوں میں بانٹ کر۔ کھلے سیمنٹ کا وزن %2۔</translation>
    </message>
    <message>
        <source>Order: net with %1 for uneven dug faces (stone bed and coat 1) and %2 waste; soil and sand with %3 sieving loss, damp sand with %4 bulking; loose stone is %5 times the compacted bed; cement in whole bags of %6.</source>
        <translation>منگوانا: خالص، جمع کھدی ناہموار سطحوں کے لیے %1 (پتھر کی سولنگ اور کوٹ 1) اور %2 ضائع مال؛ مٹی اور ریت پر چھاننے کا نقصان %3، گیلی ریت کا پھولنا %4؛ کھلا پتھر کوٹی ہوئی سولنگ کا %5 گنا؛ سیمنٹ %6 کی پوری بوریوں میں۔</translation>
    </message>
    <message>
        <source>Water: %1 for mixing, %2 for wetting each coat. Sacks: %3 each, %4 spare.</source>
        <translation>پانی: مسالا بنانے کو %1، ہر کوٹ کی ترائی کو %2۔ ٹاٹ: ہر ایک %3، فالتو %4۔</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>تہیں</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>تہہ</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>موٹائی</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>سطح</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>حجم</translation>
    </message>
    <message>
        <source>Trust two, and the third follows</source>
        <translation>دو پر بھروسا کریں، تیسری خود نکل آتی ہے</translation>
    </message>
    <message>
        <source>If these are right</source>
        <translation>اگر یہ درست ہیں</translation>
    </message>
    <message>
        <source>then</source>
        <translation>تو</translation>
    </message>
    <message>
        <source>by exact shells</source>
        <translation>اصل حجم سے</translation>
    </message>
    <message>
        <source>by area × thickness</source>
        <translation>رقبہ × موٹائی سے</translation>
    </message>
    <message>
        <source>thickness and mix</source>
        <translation>موٹائی اور تناسب</translation>
    </message>
    <message>
        <source>cement is</source>
        <translation>سیمنٹ ہے</translation>
    </message>
    <message>
        <source>cement and mix</source>
        <translation>سیمنٹ اور تناسب</translation>
    </message>
    <message>
        <source>coats are</source>
        <translation>کوٹ ہیں</translation>
    </message>
    <message>
        <source>cement and thickness</source>
        <translation>سیمنٹ اور موٹائی</translation>
    </message>
    <message>
        <source>mixes are, soil : sand : cement</source>
        <translation>تناسب ہیں، مٹی : ریت : سیمنٹ</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>سامان</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>خالص</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>منگوانا</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>خریدا</translation>
    </message>
    <message>
        <source>On site</source>
        <translation>موقع پر</translation>
    </message>
    <message>
        <source>The customary bill as it was given stands beside what thicknesses and mixes need. Nothing has been scaled or averaged; all figures are net, without waste. Ratio: computed over customary.</source>
        <translation>رواجی حساب، جیسا بتایا گیا، اس کے ساتھ کھڑا ہے جو موٹائی اور تناسب سے بنتا ہے۔ نہ کچھ گھٹایا بڑھایا گیا، نہ اوسط نکالی گئی؛ سب اعداد خالص ہیں، ضائع مال کے بغیر۔ نسبت: نکالا ہوا حساب بٹا رواجی۔</translation>
    </message>
    <message>
        <source>Customary</source>
        <translation>رواجی</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>اصل حجم</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>نسبت</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>رقبہ × موٹائی</translation>
    </message>
    <message>
        <source>Exact shells: the solid between the outer and inner face of each coat. Area × thickness: the clear inside face times the thickness, as reckoned on paper; it leaves out what the corners add.</source>
        <translation>اصل حجم: ہر کوٹ کی باہر اور اندر کی سطح کے بیچ کا ٹھوس حصہ۔ رقبہ × موٹائی: اندر کی سطح ضرب موٹائی، جیسے کاغذ پر حساب لگاتے ہیں؛ کونوں سے جو بڑھتا ہے وہ اس میں رہ جاتا ہے۔</translation>
    </message>
    <message>
        <source>Soil for one part of sand: %1 in the bill, %2 in the mixes.</source>
        <translation>ریت کے ایک حصے پر مٹی: رواجی حساب میں %1، مسالے کے تناسب میں %2۔</translation>
    </message>
    <message>
        <source>Which two to trust is for the people on site to settle, by measuring a finished coat and counting the bags that went into it.</source>
        <translation>کن دو پر بھروسا کرنا ہے، یہ موقع کے لوگ طے کریں: تیار کوٹ ناپیں اور گنیں کہ اس میں کتنی بوریاں لگیں۔</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>سیمنٹ</translation>
    </message>
    <message>
        <source>Makes plaster</source>
        <translation>اتنا پلستر بنتا ہے</translation>
    </message>
    <message>
        <source>Covers at this thickness</source>
        <translation>اس موٹائی پر ڈھکتا ہے</translation>
    </message>
    <message>
        <source>Batches for the whole coat</source>
        <translation>پورے کوٹ کی گھانیاں</translation>
    </message>
    <message>
        <source>Coat %1: %2 thick on %3</source>
        <translation>کوٹ %1: %3 پر %2 موٹا</translation>
    </message>
    <message>
        <source>%1 soil : %2 sand : %3 cement, by loose volume</source>
        <translation>%1 مٹی : %2 ریت : %3 سیمنٹ، کھلے ناپ سے</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>مٹی</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>ریت</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>سیمنٹ</translation>
    </message>
    <message>
        <source>For one batch</source>
        <translation>ایک گھانی کے لیے</translation>
    </message>
    <message>
        <source>1 bag of cement</source>
        <translation>سیمنٹ کی 1 بوری</translation>
    </message>
    <message>
        <source>half a bag</source>
        <translation>آدھی بوری</translation>
    </message>
    <message>
        <source>Measure loose, level with the rim. Mix dry until one colour, then add clean water little by little.</source>
        <translation>کھلا ناپیں، برتن کے منہ تک برابر۔ سوکھا ملائیں یہاں تک کہ ایک رنگ ہو جائے، پھر صاف پانی تھوڑا تھوڑا کر کے ڈالیں۔</translation>
    </message>
    <message>
        <source>Tick a box for each one-bag batch:</source>
        <translation>ایک بوری والی ہر گھانی پر ایک خانے میں نشان لگائیں:</translation>
    </message>
    <message>
        <source>Tick a box for every %1 one-bag batches:</source>
        <translation>ایک بوری والی ہر %1 گھانیوں پر ایک خانے میں نشان لگائیں:</translation>
    </message>
    <message>
        <source>The tank at a glance</source>
        <translation>ٹینکی ایک نظر میں</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>سامان</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one</source>
        <translation>رواجی حساب اور نکالا ہوا حساب ساتھ ساتھ</translation>
    </message>
    <message>
        <source>Mix cards</source>
        <translation>مسالے کے تناسب کے کارڈ</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>اوپر کا نقشہ</translation>
    </message>
    <message>
        <source>Section A-A</source>
        <translation>سیکشن A-A</translation>
    </message>
    <message>
        <source>Foot of the wall and depth rod</source>
        <translation>دیوار کی جڑ اور گہرائی کی چھڑ</translation>
    </message>
    <message>
        <source>Setting out</source>
        <translation>لے آؤٹ</translation>
    </message>
    <message>
        <source>Work calendar</source>
        <translation>کام کا کیلنڈر</translation>
    </message>
    <message>
        <source>Wetting calendar</source>
        <translation>ترائی کا کیلنڈر</translation>
    </message>
    <message>
        <source>Dip-stick</source>
        <translation>پانی کی چھڑ</translation>
    </message>
    <message>
        <source>Working and living safely</source>
        <translation>کام اور رہن سہن میں حفاظت</translation>
    </message>
    <message>
        <source>Findings and their sources</source>
        <translation>نکات اور ان کے حوالے</translation>
    </message>
    <message>
        <source>Water at</source>
        <translation>پانی کا لیول</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>گنجائش</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>کھدائی</translation>
    </message>
    <message>
        <source>Pit walls fall in without warning. Stop and get out when you see cracks along the edge, bulging, or water in the wall.</source>
        <translation>گڑھے کی دیواریں بغیر خبر کیے گرتی ہیں۔ کنارے کے ساتھ دراڑیں، دیوار کا پھولنا یا دیوار میں پانی نظر آئے تو رک جائیں اور باہر نکل آئیں۔</translation>
    </message>
    <message>
        <source>Keep spoil, stones, bags and animals at least %1 back from the edge.</source>
        <translation>کھدائی کی مٹی، پتھر، بوریاں اور جانور کنارے سے کم از کم %1 پیچھے رکھیں۔</translation>
    </message>
    <message>
        <source>Keep a ladder in the pit at all times. No one digs alone; someone stays at the top.</source>
        <translation>گڑھے میں ہر وقت سیڑھی رکھیں۔ کوئی اکیلا نہ کھودے؛ ایک آدمی اوپر رہے۔</translation>
    </message>
    <message>
        <source>Never dig under a wall, and never stand in a narrow cut deeper than your waist without support.</source>
        <translation>دیوار کے نیچے سے کبھی نہ کھودیں، اور کمر سے گہری تنگ کھدائی میں ٹیک لگائے بغیر کبھی کھڑے نہ ہوں۔</translation>
    </message>
    <message>
        <source>Bags and stones: two people, backs straight, paths clear and dry.</source>
        <translation>بوریاں اور پتھر: دو آدمی، کمر سیدھی، راستہ صاف اور سوکھا۔</translation>
    </message>
    <message>
        <source>Wet cement burns skin and eyes. Wear gloves, boots and long sleeves; wash splashes off at once with much clean water.</source>
        <translation>گیلا سیمنٹ جلد اور آنکھیں جلاتا ہے۔ دستانے، بوٹ اور پوری آستین پہنیں؛ چھینٹے فوراً بہت سارے صاف پانی سے دھوئیں۔</translation>
    </message>
    <message>
        <source>Cement dust harms the lungs. Open bags with the wind behind you, cover nose and mouth.</source>
        <translation>سیمنٹ کی گرد پھیپھڑوں کو نقصان دیتی ہے۔ بوریاں ہوا کی طرف پیٹھ کر کے کھولیں، ناک اور منہ ڈھکیں۔</translation>
    </message>
    <message>
        <source>No bare feet in the mix. Children stay away.</source>
        <translation>مسالے میں ننگے پاؤں نہیں۔ بچے دور رہیں۔</translation>
    </message>
    <message>
        <source>The finished tank</source>
        <translation>تیار ٹینکی</translation>
    </message>
    <message>
        <source>A child can drown in it, and no one can climb out of smooth sloping walls. Fence all four sides, with a gate that shuts.</source>
        <translation>اس میں بچہ ڈوب سکتا ہے، اور چکنی ڈھلوان دیواروں سے کوئی چڑھ کر باہر نہیں آ سکتا۔ چاروں طرف باڑ لگائیں، بند ہونے والے گیٹ کے ساتھ۔</translation>
    </message>
    <message>
        <source>Fix a ladder or a knotted rope that reaches the floor, and keep a float beside it.</source>
        <translation>فرش تک پہنچنے والی سیڑھی یا گرہوں والی رسی پکی لگائیں، اور پاس تیرنے والا سہارا رکھیں۔</translation>
    </message>
    <message>
        <source>An empty tank is a pit: keep the fence shut while it is dry, and never go in alone.</source>
        <translation>خالی ٹینکی بھی ایک گڑھا ہے: سوکھی ہو تب بھی باڑ بند رکھیں، اور اندر کبھی اکیلے نہ جائیں۔</translation>
    </message>
    <message>
        <source>The water is for fields and animals. It is not drinking water.</source>
        <translation>یہ پانی کھیتوں اور جانوروں کے لیے ہے۔ یہ پینے کا پانی نہیں۔</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first. On a slope, on filled ground, near a house or a drop, or where ground water is high, ask a licensed engineer before digging.</source>
        <translation>مقامی ضابطے اور لائسنس یافتہ ماہرین کی ہدایت سب سے پہلے ہیں۔ ڈھلان پر، بھرائی والی زمین پر، گھر یا کھائی کے پاس، یا جہاں زیرِ زمین پانی اونچا ہو، کھودنے سے پہلے لائسنس یافتہ انجینئر سے پوچھیں۔</translation>
    </message>
    <message>
        <source>Stand a marked stick upright on the finished floor, read where it is wet, and look up what the tank holds.</source>
        <translation>نشان لگی چھڑ تیار فرش پر سیدھی کھڑی کریں، دیکھیں کہاں تک گیلی ہے، اور جدول میں دیکھیں کہ ٹینکی میں کتنا پانی ہے۔</translation>
    </message>
    <message>
        <source>Full to the overflow at %1: %2.</source>
        <translation>اوور فلو تک بھری، %1 پر: %2۔</translation>
    </message>
    <message>
        <source>Below %1 no water can be drawn; %2 stay in the tank.</source>
        <translation>%1 سے نیچے پانی نہیں نکالا جا سکتا؛ %2 ٹینکی میں رہتا ہے۔</translation>
    </message>
    <message>
        <source>What a practitioner should look at before building. A finding is not a verdict; what is not known never counts as safe.</source>
        <translation>وہ باتیں جو ماہر کو بنانے سے پہلے دیکھنی چاہئیں۔ نکتہ فیصلہ نہیں ہے؛ جو معلوم نہیں وہ کبھی محفوظ نہیں گنا جاتا۔</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>حوالہ: %1</translation>
    </message>
    <message>
        <source>How much does the tap or spring give? Catch all of its water in a vessel of known size and take the time until it is full.</source>
        <translation>نلکا یا چشمہ کتنا پانی دیتا ہے؟ اس کا سارا پانی معلوم ناپ کے برتن میں لیں اور بھرنے تک کا وقت دیکھیں۔</translation>
    </message>
    <message>
        <source>Take a vessel that needs %1 or longer to fill; a larger one where it fills sooner.</source>
        <translation>ایسا برتن لیں جو بھرنے میں %1 یا زیادہ لے؛ جلدی بھرے تو بڑا برتن لیں۔</translation>
    </message>
    <message>
        <source>Fill it, read the seconds, empty it, and do it again: more than %1 readings each time you come. One line for each reading.</source>
        <translation>بھریں، سیکنڈ پڑھیں، خالی کریں، اور پھر دہرائیں: ہر بار آئیں تو %1 سے زیادہ ریڈنگ لیں۔ ہر ریڈنگ کی ایک سطر۔</translation>
    </message>
    <message>
        <source>Where it fills quickly, fill it several times running: a stroke in the tally for each time, and the seconds for all of them together.</source>
        <translation>جہاں جلدی بھرتا ہو، لگاتار کئی بار بھریں: ہر بار کی ایک لکیر، اور سب کے سیکنڈ ملا کر لکھیں۔</translation>
    </message>
    <message>
        <source>Come back in every month, above all in the driest. The flow of the dry months decides.</source>
        <translation>ہر مہینے دوبارہ آئیں، سب سے بڑھ کر سب سے خشک مہینے میں۔ فیصلہ خشک مہینوں کے بہاؤ سے ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Litres in a minute: litres of the vessel × strokes × %1 ÷ seconds.</source>
        <translation>ایک منٹ میں لیٹر: برتن کے لیٹر × لکیریں × %1 ÷ سیکنڈ۔</translation>
    </message>
    <message>
        <source>Tap or spring:</source>
        <translation>نلکا یا چشمہ:</translation>
    </message>
    <message>
        <source>Measured by:</source>
        <translation>ناپنے والا:</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>تاریخ</translation>
    </message>
    <message>
        <source>Vessel, litres</source>
        <translation>برتن، لیٹر</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>سیکنڈ</translation>
    </message>
    <message>
        <source>Times filled, tally</source>
        <translation>کتنی بار بھرا، لکیریں</translation>
    </message>
    <message>
        <source>Remarks: weather, hours it runs</source>
        <translation>نوٹ: موسم، کتنے گھنٹے چلتا ہے</translation>
    </message>
    <message>
        <source>Water through the year</source>
        <translation>سال بھر کا پانی</translation>
    </message>
    <message>
        <source>Flow log</source>
        <translation>بہاؤ کا ریکارڈ</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>آمد اور ضرورت</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>ٹینکی کا سائز اور کیاریاں</translation>
    </message>
    <message>
        <source>Figures of the water balance</source>
        <translation>پانی کے حساب کے اعداد</translation>
    </message>
    <message>
        <source>Flow,
%1</source>
        <translation>بہاؤ،
%1</translation>
    </message>
    <message>
        <source>Hours a day</source>
        <translation>دن میں گھنٹے</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>مہینہ</translation>
    </message>
    <message>
        <source>Tap or spring</source>
        <translation>نلکا یا چشمہ</translation>
    </message>
    <message>
        <source>Readings with bucket and watch:</source>
        <translation>بالٹی اور گھڑی سے ریڈنگ:</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>بارش</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>بارش کے دن</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>کم سے کم</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>نمی</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>ہوا</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>دھوپ</translation>
    </message>
    <message>
        <source>Weather, means of many years</source>
        <translation>موسم، کئی سالوں کی اوسط</translation>
    </message>
    <message>
        <source>Left out because of gaps, years that begin in: %1.</source>
        <translation>خالی جگہوں کی وجہ سے چھوڑے گئے سال، جو شروع ہوتے ہیں: %1۔</translation>
    </message>
    <message>
        <source>Values put in for gaps: %1.</source>
        <translation>خالی جگہوں پر ڈالی گئی قدریں: %1۔</translation>
    </message>
    <message>
        <source>%1 of daily weather are made from the monthly means, by a chain of wet and dry days with gamma amounts, %2. The draw starts with the number %3: the same number gives the same weather.</source>
        <translation>ماہانہ اوسط سے %1 کا روزانہ موسم بنایا گیا ہے، بارش اور بے بارش دنوں کی زنجیر اور گاما (gamma) مقداروں سے، %2۔ قرعہ نمبر %3 سے شروع ہوتا ہے: وہی نمبر وہی موسم دیتا ہے۔</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>موسمی سال</translation>
    </message>
    <message>
        <source>Rain in a mean year: %1; spread from year to year (standard deviation over mean): %2.</source>
        <translation>اوسط سال کی بارش: %1؛ سال بہ سال فرق (معیاری انحراف بٹا اوسط): %2۔</translation>
    </message>
    <message>
        <source>Reference evapotranspiration ET0 in a mean year: Penman-Monteith %1 %2, Hargreaves %3 %4. Reckoned with: %5.</source>
        <translation>اوسط سال کا معیاری بخاراتی خرچ ET0: Penman-Monteith %1 %2، Hargreaves %3 %4۔ حساب جس سے لگا: %5۔</translation>
    </message>
    <message>
        <source>Water at the end of a day = water at its start + tap or spring + runoff led in + rain on the tank − evaporation − seepage − drawn.</source>
        <translation>دن کے آخر کا پانی = دن کے شروع کا پانی + نلکا یا چشمہ + لایا گیا بہتا پانی + ٹینکی پر بارش − بخارات − رساؤ − نکالا۔</translation>
    </message>
    <message>
        <source>It is never less than none and never more than full: what is more runs over. No water is drawn from below the outlet. Evaporation is ET0 × the factor of open water × the water&apos;s surface; seepage goes through the wetted plaster. A bed needs what its crop uses and rain does not bring, over the share that reaches the roots, %1.</source>
        <translation>یہ نہ کبھی صفر سے کم ہوتا ہے نہ بھری سے زیادہ: زائد پانی اوپر سے بہتا ہے۔ نکاس سے نیچے کا پانی نہیں نکلتا۔ بخارات = ET0 × کھلے پانی کا فیکٹر × پانی کی اوپری سطح؛ رساؤ گیلے پلستر میں سے ہوتا ہے۔ کیاری کو وہ چاہیے جو فصل لیتی ہے اور بارش نہیں دیتی، بٹا وہ حصہ جو جڑوں تک پہنچتا ہے، %1۔</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>معلوم نہیں</translation>
    </message>
    <message>
        <source>not known, %1 taken</source>
        <translation>معلوم نہیں، %1 لیا گیا</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>درج</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>اعداد کہاں سے آئے</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>نمبر</translation>
    </message>
    <message>
        <source>Source, and how well it is founded</source>
        <translation>حوالہ، اور کتنا پکا ہے</translation>
    </message>
    <message>
        <source>What was entered</source>
        <translation>جو درج کیا گیا</translation>
    </message>
    <message>
        <source>What</source>
        <translation>کیا</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>قدر</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>حوالہ</translation>
    </message>
    <message>
        <source>What is usual, to hold the figures against</source>
        <translation>عام طور پر کیا ہوتا ہے، اعداد کا مقابلہ کرنے کے لیے</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>عدد</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>کم</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>عام</translation>
    </message>
    <message>
        <source>High</source>
        <translation>زیادہ</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>کیاریاں</translation>
    </message>
    <message>
        <source>Net need: what the crop uses and rain does not bring. Drawn: net need over the share that reaches the roots (%1).</source>
        <translation>خالص ضرورت: جو فصل لیتی ہے اور بارش نہیں دیتی۔ نکالا: خالص ضرورت بٹا وہ حصہ جو جڑوں تک پہنچتا ہے (%1)۔</translation>
    </message>
    <message>
        <source>Crop, season</source>
        <translation>فصل، عرصہ</translation>
    </message>
    <message>
        <source>Watered by, reaches the roots</source>
        <translation>پانی دینے کا طریقہ، جڑوں تک پہنچتا ہے</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>رقبہ</translation>
    </message>
    <message>
        <source>Crop use, net need</source>
        <translation>فصل کا پانی، خالص ضرورت</translation>
    </message>
    <message>
        <source>Drawn in a year</source>
        <translation>سال میں نکالا</translation>
    </message>
    <message>
        <source>Peak in a day</source>
        <translation>ایک دن میں سب سے زیادہ</translation>
    </message>
    <message>
        <source>Crops</source>
        <translation>فصلیں</translation>
    </message>
    <message>
        <source>Kc: use of the crop over ET0. p: share of the water in the root zone that may be used before the crop suffers. Sources: %1; Kc for this climate, daily use and root zone: %2, eq. 62, 65, 66 and 82 to 85.</source>
        <translation>Kc: فصل کا پانی بٹا ET0۔ p: جڑوں کے علاقے کے پانی کا وہ حصہ جو فصل کو تکلیف ہونے سے پہلے خرچ ہو سکتا ہے۔ حوالے: %1؛ اس موسم کے لیے Kc، روزانہ پانی اور جڑوں کا علاقہ: %2، مساوات 62، 65، 66 اور 82 تا 85۔</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>فصل</translation>
    </message>
    <message>
        <source>Kc: first, mid, end</source>
        <translation>Kc: ابتدائی، درمیانی، آخری</translation>
    </message>
    <message>
        <source>Kc for this climate</source>
        <translation>اس موسم کے لیے Kc</translation>
    </message>
    <message>
        <source>Stages, days</source>
        <translation>مرحلے، دن</translation>
    </message>
    <message>
        <source>Height, roots</source>
        <translation>اونچائی، جڑیں</translation>
    </message>
    <message>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>جانور</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>جانور</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>کتنے</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>ہر ایک پیتا ہے</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 سے کم</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>مہینہ بہ مہینہ</translation>
    </message>
    <message>
        <source>Means of all years reckoned: good years bring more than this, bad years less. Read the stick on the first of each month and write it down; tick the months in which the water lasted.</source>
        <translation>حساب میں آئے سب سالوں کی اوسط: اچھے سال اس سے زیادہ لاتے ہیں، برے سال کم۔ ہر مہینے کی پہلی تاریخ کو چھڑ پڑھیں اور لکھیں؛ جن مہینوں میں پانی پورا پڑا ان پر نشان لگائیں۔</translation>
    </message>
    <message>
        <source>Needed each day</source>
        <translation>ہر دن چاہیے</translation>
    </message>
    <message>
        <source>Read on the stick</source>
        <translation>چھڑ پر پڑھا</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>پورا پڑا</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>سالانہ</translation>
    </message>
    <message>
        <source>Comes in</source>
        <translation>آتا ہے</translation>
    </message>
    <message>
        <source>Runoff of the roof</source>
        <translation>چھت کا بہتا پانی</translation>
    </message>
    <message>
        <source>Runoff of the ground</source>
        <translation>زمین کا بہتا پانی</translation>
    </message>
    <message>
        <source>Rain on the tank</source>
        <translation>ٹینکی پر بارش</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>کل</translation>
    </message>
    <message>
        <source>Goes out</source>
        <translation>جاتا ہے</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>بخارات</translation>
    </message>
    <message>
        <source>Seepage</source>
        <translation>رساؤ</translation>
    </message>
    <message>
        <source>Runs over</source>
        <translation>اوپر سے بہتا ہے</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>نکالا</translation>
    </message>
    <message>
        <source>Is needed for</source>
        <translation>ضرورت کس کے لیے</translation>
    </message>
    <message>
        <source>People</source>
        <translation>لوگ</translation>
    </message>
    <message>
        <source>Of this</source>
        <translation>اس میں سے</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>کمی</translation>
    </message>
    <message>
        <source>Means of %1. What comes in equals what goes out within %2.</source>
        <translation>%1 کی اوسط۔ جو آتا ہے وہ جانے والے کے برابر ہے، %2 کے اندر اندر۔</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 more than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>%1 کی اوسط۔ اوسط سال کے آخر میں ٹینکی میں شروع سے %2 زیادہ پانی ہوتا ہے؛ اسے گن کر جو آتا ہے وہ جانے والے کے برابر ہے، %3 کے اندر اندر۔</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 less than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>%1 کی اوسط۔ اوسط سال کے آخر میں ٹینکی میں شروع سے %2 کم پانی ہوتا ہے؛ اسے گن کر جو آتا ہے وہ جانے والے کے برابر ہے، %3 کے اندر اندر۔</translation>
    </message>
    <message>
        <source>almost any</source>
        <translation>تقریباً کوئی بھی</translation>
    </message>
    <message>
        <source>none up to %1</source>
        <translation>%1 تک کوئی نہیں</translation>
    </message>
    <message>
        <source>none</source>
        <translation>کوئی نہیں</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 یا زیادہ</translation>
    </message>
    <message>
        <source>Years in ten with water all year: wanted</source>
        <translation>دس میں سے کتنے سال پورا سال پانی: جتنے چاہئیں</translation>
    </message>
    <message>
        <source>Years in ten with water all year: as planned</source>
        <translation>دس میں سے کتنے سال پورا سال پانی: منصوبے کے مطابق</translation>
    </message>
    <message>
        <source>This tank holds when full</source>
        <translation>یہ ٹینکی بھری ہو تو گنجائش</translation>
    </message>
    <message>
        <source>Smallest tank for the years wanted, same depth</source>
        <translation>جتنے سال چاہئیں ان کے لیے سب سے چھوٹی ٹینکی، گہرائی یہی</translation>
    </message>
    <message>
        <source>Beds as entered</source>
        <translation>کیاریاں، جیسی درج ہیں</translation>
    </message>
    <message>
        <source>Largest beds for the years wanted, this tank</source>
        <translation>جتنے سال چاہئیں ان کے لیے سب سے بڑی کیاریاں، ٹینکی یہی</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>سوال</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>جواب</translation>
    </message>
    <message>
        <source>Find the size of a tank at the foot of the first picture and the area of beds at its left: where they meet it says in how many years of ten the water lasts.</source>
        <translation>پہلی تصویر کے نیچے ٹینکی کا سائز اور اس کے بائیں کیاریوں کا رقبہ ڈھونڈیں: جہاں دونوں ملتے ہیں وہاں لکھا ہے کہ دس میں سے کتنے سال پانی پورا پڑتا ہے۔</translation>
    </message>
    <message>
        <source>A finding says stop; overridden by %1, licence %2, on %3: %4.</source>
        <translation>ایک نکتہ کہتا ہے رکیں؛ اس کے باوجود خصوصی اجازت دی %1 نے، لائسنس %2، تاریخ %3: %4۔</translation>
    </message>
    <message>
        <source>Comes in, in the month</source>
        <translation>اس مہینے میں آتا ہے</translation>
    </message>
    <message>
        <source>Days short of water</source>
        <translation>کم پانی کے دن</translation>
    </message>
    <message>
        <source>%1, class %2</source>
        <translation>%1، کلاس %2</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>ٹینکی بھری</translation>
    </message>
    <message>
        <source>Nearly empty</source>
        <translation>تقریباً خالی</translation>
    </message>
    <message>
        <source>Flow, end wide open</source>
        <translation>بہاؤ، سرا پورا کھلا</translation>
    </message>
    <message>
        <source>By Hazen-Williams, to check</source>
        <translation>Hazen-Williams سے، جانچ کے لیے</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>رفتار</translation>
    </message>
    <message>
        <source>Head that drives the flow</source>
        <translation>ہیڈ جو پانی چلاتا ہے</translation>
    </message>
    <message>
        <source>Lost by friction</source>
        <translation>رگڑ میں ضائع</translation>
    </message>
    <message>
        <source>Lost in bends and valves</source>
        <translation>موڑوں اور والوز میں ضائع</translation>
    </message>
    <message>
        <source>Leaves as velocity</source>
        <translation>رفتار بن کر نکلتا ہے</translation>
    </message>
    <message>
        <source>Water over its end</source>
        <translation>سرے سے اوپر پانی</translation>
    </message>
    <message>
        <source>Pressure, end shut</source>
        <translation>دباؤ، سرا بند</translation>
    </message>
    <message>
        <source>Left of the pressure class</source>
        <translation>پریشر کلاس میں سے باقی</translation>
    </message>
    <message>
        <source>bore measured</source>
        <translation>پائپ کا اندرونی قطر ناپا ہوا</translation>
    </message>
    <message>
        <source>at %1, %2 over the way before it</source>
        <translation>%1 پر، اس سے پہلے کے راستے سے %2 اوپر</translation>
    </message>
    <message>
        <source>Pipe: %1; bore %2, length %3.</source>
        <translation>پائپ: %1؛ اندرونی قطر %2، لمبائی %3۔</translation>
    </message>
    <message>
        <source>High points: %1.</source>
        <translation>اونچے مقام: %1۔</translation>
    </message>
    <message>
        <source>Friction by Darcy-Weisbach and Colebrook-White: %1
Cross-check: %2</source>
        <translation>رگڑ، Darcy-Weisbach اور Colebrook-White سے: %1
دوسری جانچ: %2</translation>
    </message>
    <message>
        <source>As it flows</source>
        <translation>پانی کیسے چلتا ہے</translation>
    </message>
    <message>
        <source>From the source to the tank</source>
        <translation>ذریعے سے ٹینکی تک</translation>
    </message>
    <message>
        <source>Top over the water</source>
        <translation>چوٹی، پانی سے اوپر</translation>
    </message>
    <message>
        <source>Most that it may be, at rest</source>
        <translation>زیادہ سے زیادہ جتنی ہو سکتی ہے، کھڑے پانی میں</translation>
    </message>
    <message>
        <source>Left of it with the valve open</source>
        <translation>والو کھلا ہو تو اس میں سے باقی</translation>
    </message>
    <message>
        <source>Pressure at the top, as head</source>
        <translation>چوٹی پر دباؤ، ہیڈ میں</translation>
    </message>
    <message>
        <source>Speed that clears air</source>
        <translation>رفتار جو ہوا نکال دے</translation>
    </message>
    <message>
        <source>Most flow the top allows</source>
        <translation>زیادہ سے زیادہ بہاؤ جو چوٹی چلنے دے</translation>
    </message>
    <message>
        <source>Water that fills it</source>
        <translation>اسے بھرنے والا پانی</translation>
    </message>
    <message>
        <source>The siphon</source>
        <translation>سائفن</translation>
    </message>
    <message>
        <source>Speed that clears air: %1</source>
        <translation>رفتار جو ہوا نکال دے: %1</translation>
    </message>
    <message>
        <source>Head left at them</source>
        <translation>ان پر بچا ہیڈ</translation>
    </message>
    <message>
        <source>Head wanted</source>
        <translation>جتنا ہیڈ چاہیے</translation>
    </message>
    <message>
        <source>Outlet, %1; open at a time: %2</source>
        <translation>نکاس، %1؛ ایک وقت میں کھلے: %2</translation>
    </message>
    <message>
        <source>Drawing the tank down, end wide open</source>
        <translation>ٹینکی خالی ہونا، سرا پورا کھلا</translation>
    </message>
    <message>
        <source>From the tank to the field</source>
        <translation>ٹینکی سے کھیت تک</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>چپکاؤ (cohesion) c</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>رگڑ φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>فی حجم وزن γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut</source>
        <translation>ساہول میں کٹائی کی اونچائی</translation>
    </message>
    <message>
        <source>This face, Culmann, just stands</source>
        <translation>یہ سطح، Culmann، بمشکل کھڑی</translation>
    </message>
    <message>
        <source>This face, Culmann, factor %1</source>
        <translation>یہ سطح، Culmann، فیکٹر %1</translation>
    </message>
    <message>
        <source>Stability number c / (γ H)</source>
        <translation>پائیداری کا نمبر c / (γ H)</translation>
    </message>
    <message>
        <source>This face by that number</source>
        <translation>یہ سطح، اس نمبر سے</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>اس سے اس کٹائی کا فیکٹر</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Vertical cut</source>
        <translation>ساہول میں کٹائی</translation>
    </message>
    <message>
        <source>Culmann, plane slip through the toe, face β</source>
        <translation>Culmann، جڑ سے گزرتی سیدھی پھسلن، سطح β</translation>
    </message>
    <message>
        <source>Stability number, circles through the toe</source>
        <translation>پائیداری کا نمبر، جڑ سے گزرتے دائرے</translation>
    </message>
    <message>
        <source>A factor F is put on cohesion and friction alike: c / F and tan φ / F. No water in the face, no crack, nothing standing on its edge.</source>
        <translation>فیکٹر F چپکاؤ اور رگڑ دونوں پر برابر لگتا ہے: c / F اور tan φ / F۔ سطح میں پانی نہیں، دراڑ نہیں، کنارے پر کچھ کھڑا نہیں۔</translation>
    </message>
    <message>
        <source>Cut: the wall of the pit</source>
        <translation>کٹائی: گڑھے کی دیوار</translation>
    </message>
    <message>
        <source>Face at %1 from the level, pit %2 deep, factor wanted %3.</source>
        <translation>سطح ہموار سے %1 پر، گڑھا %2 گہرا، فیکٹر جو چاہیے %3۔</translation>
    </message>
    <message>
        <source>The soil is not known, so no height is reckoned.</source>
        <translation>مٹی معلوم نہیں، اس لیے کسی اونچائی کا حساب نہیں لگا۔</translation>
    </message>
    <message>
        <source>Strength of the soil %1</source>
        <translation>مٹی کی مضبوطی %1</translation>
    </message>
    <message>
        <source>–: friction alone holds the face, or it lies outside the table of stability numbers. Judge by the low strengths.</source>
        <translation>–: سطح اکیلی رگڑ سے کھڑی ہے، یا پائیداری کے نمبروں کے جدول سے باہر ہے۔ فیصلہ کم مضبوطی سے کریں۔</translation>
    </message>
    <message>
        <source>Tank empty</source>
        <translation>ٹینکی خالی</translation>
    </message>
    <message>
        <source>Tank full and leaking</source>
        <translation>ٹینکی بھری اور لیک</translation>
    </message>
    <message>
        <source>lower without one</source>
        <translation>دراڑ کے بغیر کم</translation>
    </message>
    <message>
        <source>%1 deep, dry</source>
        <translation>%1 گہری، سوکھی</translation>
    </message>
    <message>
        <source>%1 deep, %2 full of water</source>
        <translation>%1 گہری، %2 پانی سے بھری</translation>
    </message>
    <message>
        <source>Lowest factor of safety; wanted</source>
        <translation>حفاظت کا سب سے کم فیکٹر؛ جتنا چاہیے</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1؛ %2</translation>
    </message>
    <message>
        <source>Centre of the circle x, z</source>
        <translation>دائرے کا مرکز x، z</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>رداس</translation>
    </message>
    <message>
        <source>Ends of the slip x, x</source>
        <translation>پھسلن کے سرے x، x</translation>
    </message>
    <message>
        <source>Crack</source>
        <translation>دراڑ</translation>
    </message>
    <message>
        <source>Circles tried; without a factor</source>
        <translation>آزمائے گئے دائرے؛ بغیر فیکٹر</translation>
    </message>
    <message>
        <source>Slices; of them in pull</source>
        <translation>قاشیں؛ ان میں سے کھنچاؤ میں</translation>
    </message>
    <message>
        <source>Slices in pull: the method asks the soil there to pull, which it cannot. Where there are many, look at the circle before trusting its factor.</source>
        <translation>کھنچاؤ والی قاشیں: وہاں یہ طریقہ مٹی سے کھنچاؤ سہنے کو کہتا ہے، جو مٹی نہیں سہہ سکتی۔ جہاں ایسی بہت ہوں، فیکٹر پر بھروسا کرنے سے پہلے دائرہ دیکھیں۔</translation>
    </message>
    <message>
        <source>A slip ends at the end of the section: a longer one may have a lower factor.</source>
        <translation>ایک پھسلن سیکشن کے سرے پر ختم ہوتی ہے: اس سے لمبی کا فیکٹر کم ہو سکتا ہے۔</translation>
    </message>
    <message>
        <source>Slip circle</source>
        <translation>پھسلن کا دائرہ</translation>
    </message>
    <message>
        <source>Not reckoned: the soil is not known.</source>
        <translation>حساب نہیں لگا: مٹی معلوم نہیں۔</translation>
    </message>
    <message>
        <source>Not reckoned: the ground is level and no terrace edge is entered, so there is nothing to slip.</source>
        <translation>حساب نہیں لگا: زمین ہموار ہے اور سیڑھی کھیت کا کوئی کنارہ درج نہیں، اس لیے پھسلنے کو کچھ نہیں۔</translation>
    </message>
    <message>
        <source>Downhill side: slip circles</source>
        <translation>ڈھلان کی طرف: پھسلن کے دائرے</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall, dropping at the terrace edge.</source>
        <translation>سیکشن: ڈھلان کی طرف تیار زمین، سیڑھی کھیت کے کنارے پر نیچے اترتی۔</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall.</source>
        <translation>سیکشن: ڈھلان کی طرف تیار زمین۔</translation>
    </message>
    <message>
        <source>Bishop&apos;s simplified method</source>
        <translation>Bishop کا آسان طریقہ</translation>
    </message>
    <message>
        <source>b width, W weight and α base slope of a slice, u water pressure on its base; P thrust of water in a crack, e its depth below the centre, R the radius. x runs downhill from the middle of the tank, z up from its finished floor.</source>
        <translation>b قاش کی چوڑائی، W وزن اور α اس کے تلے کی ڈھلان، u اس کے تلے پر پانی کا دباؤ؛ P دراڑ کے پانی کا دھکا، e مرکز سے نیچے اس کی گہرائی، R رداس۔ x ٹینکی کے درمیان سے ڈھلان کی طرف نیچے جاتا ہے، z اس کے تیار فرش سے اوپر۔</translation>
    </message>
    <message>
        <source>The circles were not searched for when this page was made; there is no factor yet.</source>
        <translation>جب یہ صفحہ بنا اس وقت دائرے تلاش نہیں کیے گئے تھے؛ ابھی کوئی فیکٹر نہیں۔</translation>
    </message>
    <message>
        <source>What is taken for granted</source>
        <translation>جو مان لیا گیا ہے</translation>
    </message>
    <message>
        <source>Strengths come from tables by the name of the soil, not from tests %1.</source>
        <translation>مضبوطی مٹی کے نام سے جدولوں سے لی گئی ہے، ٹیسٹ سے نہیں %1۔</translation>
    </message>
    <message>
        <source>Low strengths are taken for the slips: cohesion %1, friction %2, unit weight %3.</source>
        <translation>پھسلن کے لیے کم مضبوطی لی گئی ہے: چپکاؤ %1، رگڑ %2، فی حجم وزن %3۔</translation>
    </message>
    <message>
        <source>Plane strain: the slip is as wide as the slope. No earthquake.</source>
        <translation>سیدھی پٹی کا حساب (plane strain): پھسلن ڈھلان جتنی چوڑی ہے۔ زلزلہ شامل نہیں۔</translation>
    </message>
    <message>
        <source>The pit counts as still full of ground, which weighs more than water and lining. Nothing else stands on the ground: no house, wall, heap or animals.</source>
        <translation>گڑھا مٹی سے بھرا ہی گنا گیا ہے، جو پانی اور لائننگ سے بھاری ہے۔ زمین پر اور کچھ نہیں کھڑا: نہ گھر، نہ دیوار، نہ ڈھیر، نہ جانور۔</translation>
    </message>
    <message>
        <source>The tank&apos;s hole has no strength: each state is searched with and without a crack as deep as the pit (no deeper than the ground falls away), and the lower factor counts. Behind a crack only slips that come out no higher than its foot are counted.</source>
        <translation>ٹینکی کے خالی حصے کی کوئی مضبوطی نہیں: ہر حالت گڑھے جتنی گہری دراڑ کے ساتھ اور اس کے بغیر تلاش کی جاتی ہے (دراڑ اس سے گہری نہیں جتنی زمین نیچے اترتی ہے)، اور کم والا فیکٹر گنا جاتا ہے۔ دراڑ کے پیچھے صرف وہ پھسلن گنی جاتی ہے جو اس کی جڑ سے اوپر نہ نکلے۔</translation>
    </message>
    <message>
        <source>The terrace edge is taken to run out %1 for each 1 that it falls.</source>
        <translation>مانا گیا ہے کہ سیڑھی کھیت کا کنارہ ہر 1 نیچے اترنے پر %1 آگے جاتا ہے۔</translation>
    </message>
    <message>
        <source>Slips shallower than %1, and those that begin more than %2 downhill from the middle of the tank, leave tank and walkway alone and are left out.</source>
        <translation>جو پھسلن %1 سے کم گہری ہو، یا ٹینکی کے درمیان سے ڈھلان کی طرف %2 سے آگے شروع ہو، وہ ٹینکی اور چلنے کی پٹی کو نہیں چھیڑتی اور چھوڑ دی گئی ہے۔</translation>
    </message>
    <message>
        <source>Checked by a licensed engineer</source>
        <translation>لائسنس یافتہ انجینئر نے جانچا</translation>
    </message>
    <message>
        <source>Checked by:</source>
        <translation>جانچنے والا:</translation>
    </message>
    <message>
        <source>Licence:</source>
        <translation>لائسنس:</translation>
    </message>
    <message>
        <source>Date:</source>
        <translation>تاریخ:</translation>
    </message>
    <message>
        <source>Signature:</source>
        <translation>دستخط:</translation>
    </message>
    <message>
        <source>A calculation for a licensed engineer to check. It is not a promise that the ground stands.</source>
        <translation>یہ حساب لائسنس یافتہ انجینئر کی جانچ کے لیے ہے۔ یہ اس بات کا وعدہ نہیں کہ زمین کھڑی رہے گی۔</translation>
    </message>
    <message>
        <source>level with the platform</source>
        <translation>پلیٹ فارم کے برابر</translation>
    </message>
    <message>
        <source>%1 above the platform</source>
        <translation>پلیٹ فارم سے %1 اوپر</translation>
    </message>
    <message>
        <source>%1 below the platform</source>
        <translation>پلیٹ فارم سے %1 نیچے</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>کچھ نہیں</translation>
    </message>
    <message>
        <source>dig down %1</source>
        <translation>%1 نیچے کھودیں</translation>
    </message>
    <message>
        <source>fill up %1</source>
        <translation>%1 اوپر بھریں</translation>
    </message>
    <message>
        <source>%1: cut, %2 out</source>
        <translation>%1: کٹائی، %2 باہر</translation>
    </message>
    <message>
        <source>%1: fill, %2 out</source>
        <translation>%1: بھرائی، %2 باہر</translation>
    </message>
    <message>
        <source>Pegs of the platform</source>
        <translation>پلیٹ فارم کی کھونٹیاں</translation>
    </message>
    <message>
        <source>Ground there</source>
        <translation>وہاں زمین</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>کیا کرنا ہے</translation>
    </message>
    <message>
        <source>Where the face ends</source>
        <translation>سطح کہاں ختم ہوتی ہے</translation>
    </message>
    <message>
        <source>(chosen)</source>
        <translation>(منتخب)</translation>
    </message>
    <message>
        <source>At which level the platform can lie</source>
        <translation>پلیٹ فارم کس لیول پر ہو سکتا ہے</translation>
    </message>
    <message>
        <source>How the level is found</source>
        <translation>لیول کیسے نکالا</translation>
    </message>
    <message>
        <source>The platform lies</source>
        <translation>پلیٹ فارم کا لیول</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>کٹائی</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>بھرائی</translation>
    </message>
    <message>
        <source>Ground over the pit</source>
        <translation>گڑھے سے اوپر زمین</translation>
    </message>
    <message>
        <source>Ground over the pit: natural ground over floor and walls of the pit where it is least. Less than nothing means that part of the tank stands on fill.</source>
        <translation>گڑھے سے اوپر زمین: گڑھے کے تلے اور دیواروں سے اوپر قدرتی زمین، جہاں سب سے کم ہو۔ صفر سے کم کا مطلب ہے کہ ٹینکی کا کچھ حصہ بھرائی پر کھڑا ہے۔</translation>
    </message>
    <message>
        <source>Topsoil is kept apart: never under the fill, never in the plaster.</source>
        <translation>اوپر کی زرخیز مٹی الگ رکھیں: نہ کبھی بھرائی کے نیچے، نہ کبھی پلستر میں۔</translation>
    </message>
    <message>
        <source>Cut steps into the ground under the fill, so that it cannot slide.</source>
        <translation>بھرائی کے نیچے زمین میں سیڑھیاں کاٹیں، تاکہ بھرائی پھسل نہ سکے۔</translation>
    </message>
    <message>
        <source>Fill in layers of about %1. Break clods, take out roots and straw; the ground should be damp enough to hold together when pressed in the fist.</source>
        <translation>تقریباً %1 کی تہوں میں بھریں۔ ڈھیلے توڑیں، جڑیں اور بھوسا نکالیں؛ مٹی اتنی نم ہو کہ مٹھی میں دبانے پر جڑی رہے۔</translation>
    </message>
    <message>
        <source>Ram each layer until the rammer leaves hardly a mark, then bring the next. Begin at the foot and keep each layer level.</source>
        <translation>ہر تہہ کو کوٹیں یہاں تک کہ دُرمٹ کا نشان مشکل سے پڑے، پھر اگلی تہہ ڈالیں۔ جڑ سے شروع کریں اور ہر تہہ ہموار رکھیں۔</translation>
    </message>
    <message>
        <source>Never dump fill down the slope from above.</source>
        <translation>بھرائی کی مٹی کبھی اوپر سے ڈھلان پر نہ پھینکیں۔</translation>
    </message>
    <message>
        <source>Steps, layers and ramming: %1.</source>
        <translation>سیڑھیاں، تہیں اور دُرمٹ سے کوٹنا: %1۔</translation>
    </message>
    <message>
        <source>The toe of every heap stays %1 or more back from the pit edge (29 CFR 1926.651(j)(2)).</source>
        <translation>ہر ڈھیر کی جڑ گڑھے کے کنارے سے %1 یا زیادہ پیچھے رہے (29 CFR 1926.651(j)(2))۔</translation>
    </message>
    <message>
        <source>Earth: how to work it</source>
        <translation>مٹی: کام کیسے کریں</translation>
    </message>
    <message>
        <source>Does the tank lose water through its lining? The sun takes water too. A bucket that floats in the tank shows how much; what the tank loses more has leaked.</source>
        <translation>کیا ٹینکی لائننگ سے پانی کھو رہی ہے؟ دھوپ بھی پانی اڑاتی ہے۔ ٹینکی میں تیرتی بالٹی بتاتی ہے کتنا؛ ٹینکی اس سے زیادہ جو کھوئے وہ لیکیج ہے۔</translation>
    </message>
    <message>
        <source>Fill the tank to the overflow. A new tank stands full for some days first, for dry plaster drinks. Choose days without rain.</source>
        <translation>ٹینکی اوور فلو تک بھریں۔ نئی ٹینکی پہلے کچھ دن بھری رکھیں، کیونکہ سوکھا پلستر پانی پیتا ہے۔ بارش سے خالی دن چنیں۔</translation>
    </message>
    <message>
        <source>Shut inlet and outlet. No one draws water until the test is over.</source>
        <translation>داخلہ اور نکاس بند کریں۔ ٹیسٹ ختم ہونے تک کوئی پانی نہ نکالے۔</translation>
    </message>
    <message>
        <source>Measure with a ruler, to the millimetre: in the tank from a mark on the rim down to the water, in the bucket from a mark on its edge down to the water.</source>
        <translation>پیمانے (رولر) سے ملی میٹر تک ناپیں: ٹینکی میں اوپری کنارے کے نشان سے نیچے پانی تک، بالٹی میں اس کے کنارے کے نشان سے نیچے پانی تک۔</translation>
    </message>
    <message>
        <source>Measure both again at the same hour on the next day, and on two days more. Rain in between: begin again.</source>
        <translation>اگلے دن اسی وقت دونوں پھر ناپیں، اور مزید دو دن بھی۔ بیچ میں بارش ہو جائے تو نئے سرے سے شروع کریں۔</translation>
    </message>
    <message>
        <source>Leak = fall in the tank less fall in the bucket, in millimetres, for one day.</source>
        <translation>لیکیج = ٹینکی میں جتنا پانی اترا، منفی بالٹی میں جتنا اترا، ملی میٹر میں، ایک دن کا۔</translation>
    </message>
    <message>
        <source>In this tank, full, one millimetre is %1.</source>
        <translation>اس ٹینکی میں، بھری ہو تو، ایک ملی میٹر %1 ہے۔</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>لیکیج</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>%1 تک</translation>
    </message>
    <message>
        <source>Tight. Nothing to do; test again each year.</source>
        <translation>ٹھیک بند ہے۔ کچھ نہیں کرنا؛ ہر سال پھر ٹیسٹ کریں۔</translation>
    </message>
    <message>
        <source>more, up to %1</source>
        <translation>زیادہ، %1 تک</translation>
    </message>
    <message>
        <source>Watch: look for wet ground; test again in some weeks.</source>
        <translation>نظر رکھیں: گیلی زمین ڈھونڈیں؛ چند ہفتوں میں پھر ٹیسٹ کریں۔</translation>
    </message>
    <message>
        <source>Find the cracks and mend them; then test again.</source>
        <translation>دراڑیں ڈھونڈیں اور مرمت کریں؛ پھر ٹیسٹ کریں۔</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>%1 سے زیادہ</translation>
    </message>
    <message>
        <source>Let no more water in, empty the tank and mend it.</source>
        <translation>اور پانی نہ آنے دیں، ٹینکی خالی کریں اور مرمت کریں۔</translation>
    </message>
    <message>
        <source>These limits: %1.</source>
        <translation>یہ حدیں: %1۔</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>وقت</translation>
    </message>
    <message>
        <source>Tank, mm</source>
        <translation>ٹینکی، mm</translation>
    </message>
    <message>
        <source>Bucket, mm</source>
        <translation>بالٹی، mm</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>دستخط</translation>
    </message>
    <message>
        <source>notch, %1 wide</source>
        <translation>کھانچا، %1 چوڑا</translation>
    </message>
    <message>
        <source>pipe, %1 inside</source>
        <translation>پائپ، اندر سے %1</translation>
    </message>
    <message>
        <source>Roof led in</source>
        <translation>چھت جس کا پانی لایا گیا</translation>
    </message>
    <message>
        <source>Ground led in</source>
        <translation>زمین جس کا پانی لایا گیا</translation>
    </message>
    <message>
        <source>The tank&apos;s own opening</source>
        <translation>ٹینکی کا اپنا منہ</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>طوفانی بارش</translation>
    </message>
    <message>
        <source>%1, planning value</source>
        <translation>%1، منصوبے کی قدر</translation>
    </message>
    <message>
        <source>Rain that runs in</source>
        <translation>بارش جو اندر آتی ہے</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>ذریعے سے</translation>
    </message>
    <message>
        <source>What runs in</source>
        <translation>جو اندر آتا ہے</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>اوور فلو</translation>
    </message>
    <message>
        <source>Water over its sill</source>
        <translation>اس کی دہلیز سے اوپر پانی</translation>
    </message>
    <message>
        <source>Freeboard left in the storm</source>
        <translation>طوفانی بارش میں بچا فری بورڈ</translation>
    </message>
    <message>
        <source>Freeboard wanted</source>
        <translation>جتنا فری بورڈ چاہیے</translation>
    </message>
    <message>
        <source>Passes with water at the rim</source>
        <translation>پانی اوپری کنارے پر ہو تو گزرتا ہے</translation>
    </message>
    <message>
        <source>Overflow free</source>
        <translation>اوور فلو کھلا</translation>
    </message>
    <message>
        <source>over the low part of the rim</source>
        <translation>اوپری کنارے کے نیچے والے حصے پر سے</translation>
    </message>
    <message>
        <source>over the rest of the rim</source>
        <translation>باقی اوپری کنارے پر سے</translation>
    </message>
    <message>
        <source>Overflow blocked</source>
        <translation>اوور فلو بند</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>گہرا</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>بہاؤ</translation>
    </message>
    <message>
        <source>Bottom width and depth of the channel</source>
        <translation>نالی کے تلے کی چوڑائی اور گہرائی</translation>
    </message>
    <message>
        <source>Fall</source>
        <translation>ڈھلوان</translation>
    </message>
    <message>
        <source>Water in it</source>
        <translation>اس میں پانی</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>رفتار</translation>
    </message>
    <message>
        <source>Spill channel</source>
        <translation>فالتو پانی کی نالی</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>چوڑائی</translation>
    </message>
    <message>
        <source>Depth, all together</source>
        <translation>گہرائی، کل</translation>
    </message>
    <message>
        <source>Of it for water that settles</source>
        <translation>اس میں سے پانی ٹھہرنے کے لیے</translation>
    </message>
    <message>
        <source>Of it for mud</source>
        <translation>اس میں سے کیچڑ کے لیے</translation>
    </message>
    <message>
        <source>The grain sinks</source>
        <translation>ذرہ بیٹھتا ہے</translation>
    </message>
    <message>
        <source>%1 a second</source>
        <translation>ایک سیکنڈ میں %1</translation>
    </message>
    <message>
        <source>Water may run through at most at</source>
        <translation>پانی زیادہ سے زیادہ اس رفتار سے گزرے</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>گاد کی حوضی</translation>
    </message>
    <message>
        <source>Smallest grain that must stay behind</source>
        <translation>سب سے چھوٹا ذرہ جسے رکنا ہے</translation>
    </message>
    <message>
        <source>%1, source and storm</source>
        <translation>%1، ذریعہ اور طوفانی بارش</translation>
    </message>
    <message>
        <source>Clean it out every</source>
        <translation>صفائی کا وقفہ</translation>
    </message>
    <message>
        <source>For the grain named</source>
        <translation>بتائے گئے ذرے کے لیے</translation>
    </message>
    <message>
        <source>Area, speed and mud: %1</source>
        <translation>رقبہ، رفتار اور کیچڑ: %1</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>شرط پوری</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>شرط پوری نہیں</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>لیکیج ٹیسٹ</translation>
    </message>
    <message>
        <source>Tank falls</source>
        <translation>ٹینکی میں اترا</translation>
    </message>
    <message>
        <source>Bucket falls: evaporation</source>
        <translation>بالٹی میں اترا: بخارات</translation>
    </message>
    <message>
        <source>Error of the readings, either way</source>
        <translation>ریڈنگ کی غلطی، کم یا زیادہ</translation>
    </message>
    <message>
        <source>Water lost</source>
        <translation>ضائع پانی</translation>
    </message>
    <message>
        <source>Share of the water a day</source>
        <translation>ایک دن میں پانی کا حصہ</translation>
    </message>
    <message>
        <source>Published marks for concrete tanks</source>
        <translation>کنکریٹ کی ٹینکیوں کی شائع شدہ حدیں</translation>
    </message>
    <message>
        <source>Allows</source>
        <translation>اجازت</translation>
    </message>
    <message>
        <source>This tank</source>
        <translation>یہ ٹینکی</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>زمین اور پلیٹ فارم</translation>
    </message>
    <message>
        <source>Pipes and siphon</source>
        <translation>پائپ اور سائفن</translation>
    </message>
    <message>
        <source>Overflow, silt trap and leak test</source>
        <translation>اوور فلو، گاد کی حوضی اور لیکیج ٹیسٹ</translation>
    </message>
    <message>
        <source>Engineer&apos;s calculation: cut and downhill side</source>
        <translation>انجینئر کا حساب: کٹائی اور ڈھلان کی طرف</translation>
    </message>
    <message>
        <source>Thresholds of site and safety</source>
        <translation>جگہ اور حفاظت کی حدیں</translation>
    </message>
    <message>
        <source>From these numbers findings about site and safety are raised. A practitioner should question those that no published source stands behind.</source>
        <translation>جگہ اور حفاظت کے نکات انہی اعداد سے اٹھتے ہیں۔ جن کے پیچھے کوئی شائع شدہ حوالہ نہیں، ماہر کو ان پر سوال اٹھانا چاہیے۔</translation>
    </message>
    <message>
        <source>Fill counts as loose fill: cohesion %1, friction %2, unit weight %3.</source>
        <translation>بھرائی کو کچی بھرائی گنا گیا ہے: چپکاؤ %1، رگڑ %2، فی حجم وزن %3۔</translation>
    </message>
    <message>
        <source>With the tank empty the ground is dry down to the ground water entered. With the tank full and leaking, water stands in the ground as drawn: level with the tank&apos;s water to the pit edge, from there straight to where the ground lies as low as the pit floor.</source>
        <translation>ٹینکی خالی ہو تو زمین درج کیے گئے زیرِ زمین پانی تک سوکھی ہے۔ ٹینکی بھری اور لیک ہو تو زمین میں پانی ویسا کھڑا ہے جیسا نقشے میں ہے: گڑھے کے کنارے تک ٹینکی کے پانی کے برابر، وہاں سے سیدھا اس جگہ تک جہاں زمین گڑھے کے تلے جتنی نیچی ہے۔</translation>
    </message>
    <message>
        <source>Set a light bucket afloat, tied so that it stands clear of the walls. Fill it with water until only a hand&apos;s breadth of it stays dry, so that it floats upright and deep.</source>
        <translation>ایک ہلکی بالٹی تیرائیں، ایسے باندھ کر کہ دیواروں سے نہ لگے۔ اس میں پانی بھریں یہاں تک کہ صرف ایک ہتھیلی کی چوڑائی سوکھی رہے، تاکہ سیدھی اور گہری تیرے۔</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains from</source>
        <translation>موجودہ حوضی اس سے بڑے ذرے روکتی ہے</translation>
    </message>
    <message>
        <source>Mud is brought by</source>
        <translation>کیچڑ لاتا ہے</translation>
    </message>
    <message>
        <source>the source, and one hour of the storm</source>
        <translation>ذریعہ، اور طوفانی بارش کا ایک گھنٹہ</translation>
    </message>
    <message>
        <source>A peg P is a corner of the platform. Heights are told from the finished platform, which the rim of the tank is level with. A peg Q stands straight out from the corner of its number, where the face of the cut or the fill meets the ground.</source>
        <translation>کھونٹی P پلیٹ فارم کا کونا ہے۔ اونچائیاں تیار پلیٹ فارم سے بتائی گئی ہیں، جس کے برابر ٹینکی کا اوپری کنارہ ہے۔ کھونٹی Q اپنے نمبر کے کونے سے سیدھی باہر لگتی ہے، جہاں کٹائی یا بھرائی کی سطح زمین سے ملتی ہے۔</translation>
    </message>
    <message>
        <source>Materials together</source>
        <translation>سامان کل</translation>
    </message>
    <message>
        <source>Wages together</source>
        <translation>مزدوری کل</translation>
    </message>
    <message>
        <source>Other things together</source>
        <translation>دیگر چیزیں کل</translation>
    </message>
    <message>
        <source>For what</source>
        <translation>کس لیے</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>کتنا</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>ایک کی قیمت</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>رقم</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>مفت حصہ</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>نقد</translation>
    </message>
    <message>
        <source>%1; split each piece into %2</source>
        <translation>%1؛ ہر نگ کے %2 حصے کریں</translation>
    </message>
    <message>
        <source>Carrying it to the place</source>
        <translation>موقع تک ڈھلائی</translation>
    </message>
    <message>
        <source>By</source>
        <translation>کس سے</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>وزن</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>بوجھ</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>ایک ڈھونے والے کے دن</translation>
    </message>
    <message>
        <source>Wages</source>
        <translation>مزدوری</translation>
    </message>
    <message>
        <source>Other things</source>
        <translation>دیگر چیزیں</translation>
    </message>
    <message>
        <source>Carrying</source>
        <translation>ڈھلائی</translation>
    </message>
    <message>
        <source>Put aside for what is not foreseen, %1</source>
        <translation>غیر متوقع خرچ کے لیے الگ رکھا، %1</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>کل</translation>
    </message>
    <message>
        <source>Of it given in work and kind</source>
        <translation>اس میں سے محنت اور سامان کی شکل میں مفت حصہ</translation>
    </message>
    <message>
        <source>Of it in cash</source>
        <translation>اس میں سے نقد</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>منظور</translation>
    </message>
    <message>
        <source>For</source>
        <translation>کس کی طرف سے</translation>
    </message>
    <message>
        <source>Name and date</source>
        <translation>نام اور تاریخ</translation>
    </message>
    <message>
        <source>or thumb</source>
        <translation>یا انگوٹھا</translation>
    </message>
    <message>
        <source>the household or group</source>
        <translation>گھرانہ یا گروپ</translation>
    </message>
    <message>
        <source>masons and labourers</source>
        <translation>مستری اور مزدور</translation>
    </message>
    <message>
        <source>who pays a share</source>
        <translation>حصہ دینے والا</translation>
    </message>
    <message>
        <source>a witness</source>
        <translation>گواہ</translation>
    </message>
    <message>
        <source>%1, after a quarter of the day</source>
        <translation>%1، دن کا ایک چوتھائی گزرنے پر</translation>
    </message>
    <message>
        <source>%1, for the last quarter of the day</source>
        <translation>%1، دن کے آخری چوتھائی میں</translation>
    </message>
    <message>
        <source>%1, at midday</source>
        <translation>%1، دوپہر کو</translation>
    </message>
    <message>
        <source>%1 for wetting</source>
        <translation>ترائی کے لیے %1</translation>
    </message>
    <message>
        <source>%1, masons among them: %2</source>
        <translation>%1، ان میں مستری: %2</translation>
    </message>
    <message>
        <source>%1, rest days too</source>
        <translation>%1، چھٹی کے دن بھی</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>تاخیر کی گنجائش نہیں</translation>
    </message>
    <message>
        <source>may slip %1</source>
        <translation>%1 ٹل سکتا ہے</translation>
    </message>
    <message>
        <source>Solid bar: work. Hatched bar: keep wet, rest days too. Open bar: the tank fills or is watched. Triangle alone: last day.</source>
        <translation>بھری پٹی: کام۔ لکیروں والی پٹی: گیلا رکھیں، چھٹی کے دن بھی۔ خالی پٹی: ٹینکی بھر رہی ہے یا اس پر نظر رکھی جا رہی ہے۔ اکیلا تکون: آخری دن۔</translation>
    </message>
    <message>
        <source>Arrow at the right: later than these bars reach.</source>
        <translation>دائیں طرف تیر: ان پٹیوں کی حد کے بعد۔</translation>
    </message>
    <message>
        <source>No room to slip: when this is late, the end is late.</source>
        <translation>تاخیر کی گنجائش نہیں: اس میں دیر ہوئی تو آخر میں بھی دیر ہو گی۔</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>روزانہ %1</translation>
    </message>
    <message>
        <source>%1, what the source gives</source>
        <translation>%1، جو ذریعہ دیتا ہے</translation>
    </message>
    <message>
        <source>%1, as entered</source>
        <translation>%1، جیسا درج ہے</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>پانی بھرنا شروع</translation>
    </message>
    <message>
        <source>It must start no later than</source>
        <translation>لازمی شروع ہو اس دن تک</translation>
    </message>
    <message>
        <source>The tank is full on</source>
        <translation>ٹینکی بھر جاتی ہے</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>ایک سال میں نہیں</translation>
    </message>
    <message>
        <source>Flows in on the first day</source>
        <translation>پہلے دن آتا ہے</translation>
    </message>
    <message>
        <source>The water may rise in a day by at most</source>
        <translation>پانی ایک دن میں زیادہ سے زیادہ چڑھے</translation>
    </message>
    <message>
        <source>Water for sacks after the last curing day</source>
        <translation>ترائی کے آخری دن کے بعد ٹاٹ کا پانی</translation>
    </message>
    <message>
        <source>Water to bring by hand, to cover all walls in time</source>
        <translation>ہاتھ سے لانے کا پانی، تاکہ سب دیواریں وقت پر ڈھک جائیں</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>پانی بھرنا</translation>
    </message>
    <message>
        <source>Walls that stay under wet sacks until the water covers them</source>
        <translation>دیواریں جو پانی کے ڈھکنے تک گیلے ٹاٹ کے نیچے رہیں</translation>
    </message>
    <message>
        <source>Height above the finished floor</source>
        <translation>تیار فرش سے اونچائی</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>دیوار</translation>
    </message>
    <message>
        <source>Keep wet until</source>
        <translation>گیلا رکھیں اس دن تک</translation>
    </message>
    <message>
        <source>Wet for</source>
        <translation>گیلا کتنے دن</translation>
    </message>
    <message>
        <source>The water rises, first by days, then by weeks</source>
        <translation>پانی کا چڑھنا، پہلے دنوں میں، پھر ہفتوں میں</translation>
    </message>
    <message>
        <source>The water rises day by day</source>
        <translation>پانی کا چڑھنا، دن بہ دن</translation>
    </message>
    <message>
        <source>Level: above the finished floor, in the evening of the day, or of the week&apos;s last day. Write beside it what the rod shows.</source>
        <translation>لیول: تیار فرش سے اوپر، اس دن کی شام کو، یا ہفتے کے آخری دن کی شام کو۔ ساتھ لکھیں کہ چھڑ کیا بتاتی ہے۔</translation>
    </message>
    <message>
        <source>Day or week</source>
        <translation>دن یا ہفتہ</translation>
    </message>
    <message>
        <source>Runs in</source>
        <translation>اندر آتا ہے</translation>
    </message>
    <message>
        <source>To wet sacks</source>
        <translation>ٹاٹ گیلے کرنے کو</translation>
    </message>
    <message>
        <source>Level measured</source>
        <translation>ناپا ہوا لیول</translation>
    </message>
    <message>
        <source>No one enters the tank while it fills. The fence stands, ladder and rope hang inside.</source>
        <translation>جب تک ٹینکی بھر رہی ہو، کوئی اندر نہ جائے۔ باڑ لگی رہے، سیڑھی اور رسی اندر لٹکی رہیں۔</translation>
    </message>
    <message>
        <source>Filling begun on:</source>
        <translation>پانی بھرنا شروع ہوا:</translation>
    </message>
    <message>
        <source>Full on:</source>
        <translation>بھر گئی:</translation>
    </message>
    <message>
        <source>Hour %1</source>
        <translation>گھنٹہ %1</translation>
    </message>
    <message>
        <source>Place the coat in one go, within %1: %2 people needed, %3 planned; masons among them: %4 needed, %5 planned.</source>
        <translation>کوٹ ایک ہی بار میں لگائیں، %1 کے اندر: لوگ چاہئیں %2، طے شدہ %3؛ ان میں مستری: چاہئیں %4، طے شدہ %5۔</translation>
    </message>
    <message>
        <source>Price of the lining</source>
        <translation>لائننگ کی قیمت</translation>
    </message>
    <message>
        <source>Digging and platform</source>
        <translation>کھدائی اور پلیٹ فارم</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>سرمایہ</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>عمر</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>فیکٹر</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>سالانہ دیکھ بھال</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>سالانہ خرچ</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>گنجائش کے ہر m³ پر سالانہ خرچ</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>لائننگ</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>لائننگیں، سالانہ خرچ کے لحاظ سے</translation>
    </message>
    <message>
        <source>Cost a year = capital × factor + upkeep; factor = i (1 + i)^n / ((1 + i)^n − 1), with i interest a year (%1 %2) and n life in years %3.</source>
        <translation>سالانہ خرچ = سرمایہ × فیکٹر + دیکھ بھال؛ فیکٹر = i (1 + i)^n / ((1 + i)^n − 1)، جہاں i سالانہ سود (%1 %2) اور n سالوں میں عمر %3۔</translation>
    </message>
    <message>
        <source>Cost of a cubic metre</source>
        <translation>ایک مکعب میٹر کا خرچ</translation>
    </message>
    <message>
        <source>Each m³ held = the whole bill ÷ water when full: %1 ÷ %2 = %3.</source>
        <translation>گنجائش کا ہر m³ = پورا تخمینہ ÷ بھری ٹینکی کا پانی: %1 ÷ %2 = %3۔</translation>
    </message>
    <message>
        <source>Dry months, with rain below half of the reference evapotranspiration %1: %2.</source>
        <translation>خشک مہینے، جن میں بارش معیاری بخاراتی خرچ کے آدھے سے کم ہے %1: %2۔</translation>
    </message>
    <message>
        <source>What a m³ delivered costs is not reckoned: whether the water lasts is not asked.</source>
        <translation>ملنے والے ایک m³ پانی کے خرچ کا حساب نہیں لگا: پانی پورا پڑنے کا سوال نہیں پوچھا گیا۔</translation>
    </message>
    <message>
        <source>Cash needed, first by days, then by weeks</source>
        <translation>نقد کی ضرورت، پہلے دنوں میں، پھر ہفتوں میں</translation>
    </message>
    <message>
        <source>Goods and carrying</source>
        <translation>سامان اور ڈھلائی</translation>
    </message>
    <message>
        <source>Together so far</source>
        <translation>اب تک کل</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>کافی</translation>
    </message>
    <message>
        <source>TOO FEW</source>
        <translation>کم ہیں</translation>
    </message>
    <message>
        <source>People on the coat</source>
        <translation>کوٹ پر لوگ</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>ان میں مستری</translation>
    </message>
    <message>
        <source>Batches an hour</source>
        <translation>گھنٹے میں گھانیاں</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>مسالا بنانے کی جگہیں</translation>
    </message>
    <message>
        <source>In one go</source>
        <translation>ایک ہی بار میں</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>چاہئیں</translation>
    </message>
    <message>
        <source>There</source>
        <translation>موجود</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>وقت پر</translation>
    </message>
    <message>
        <source>TOO LATE</source>
        <translation>بہت دیر</translation>
    </message>
    <message>
        <source>Putting on a batch</source>
        <translation>ایک گھانی لگانا</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>لگتا ہے</translation>
    </message>
    <message>
        <source>may take</source>
        <translation>لگ سکتا ہے</translation>
    </message>
    <message>
        <source>with a whole bag</source>
        <translation>پوری بوری سے</translation>
    </message>
    <message>
        <source>with half a bag</source>
        <translation>آدھی بوری سے</translation>
    </message>
    <message>
        <source>Ready beside the pit before the first batch</source>
        <translation>پہلی گھانی سے پہلے گڑھے کے پاس تیار</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>تیار</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>سیمنٹ کی بوریاں</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>مسالا بنانے کا پانی</translation>
    </message>
    <message>
        <source>Sacks to cover the coat</source>
        <translation>کوٹ ڈھکنے کے ٹاٹ</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for each; by the end of an hour its row must be full.</source>
        <translation>پوری بوری والی گھانیاں: %1۔ ہر ایک پر ایک خانے میں نشان لگائیں؛ گھنٹہ ختم ہونے تک اس کی قطار بھر جائے۔</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for every %2; by the end of an hour its row must be full.</source>
        <translation>پوری بوری والی گھانیاں: %1۔ ہر %2 پر ایک خانے میں نشان لگائیں؛ گھنٹہ ختم ہونے تک اس کی قطار بھر جائے۔</translation>
    </message>
    <message>
        <source>Coat %1, within %2: %3 of work</source>
        <translation>کوٹ %1، %2 کے اندر: %3 محنت</translation>
    </message>
    <message>
        <source>A coat that is begun is finished the same day: plaster put beside plaster that has set does not hold water.</source>
        <translation>جو کوٹ شروع ہو وہ اسی دن ختم کیا جائے: جمے ہوئے پلستر کے ساتھ لگایا گیا پلستر پانی نہیں روکتا۔</translation>
    </message>
    <message>
        <source>Option %1 cannot be built: %2</source>
        <translation>متبادل %1 نہیں بن سکتا: %2</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>نتیجہ کیا نکلتا ہے</translation>
    </message>
    <message>
        <source>Lines that are the same in all options are left out.</source>
        <translation>جو سطریں سب متبادلوں میں ایک جیسی ہیں وہ چھوڑ دی گئی ہیں۔</translation>
    </message>
    <message>
        <source>Each coat in one go</source>
        <translation>ہر کوٹ ایک ہی بار میں</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>پہلی بار پانی بھرنا</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>تخمینہ اور حصے</translation>
    </message>
    <message>
        <source>Works: tasks, people and weather</source>
        <translation>تعمیر: کام، لوگ اور موسم</translation>
    </message>
    <message>
        <source>Money: linings and ranges</source>
        <translation>رقم: لائننگ اور کمی بیشی</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>متبادل ساتھ ساتھ</translation>
    </message>
    <message>
        <source>As entered</source>
        <translation>جیسا درج ہے</translation>
    </message>
    <message>
        <source>P10</source>
        <translation>P10</translation>
    </message>
    <message>
        <source>P50</source>
        <translation>P50</translation>
    </message>
    <message>
        <source>P90</source>
        <translation>P90</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>درج چیز</translation>
    </message>
    <message>
        <source>What drives the spread</source>
        <translation>فرق کس چیز سے آتا ہے</translation>
    </message>
    <message>
        <source>Low and high: how far an input may lie from what is entered. Then its share of the spread; +: more of the input makes more, −: more of it makes less.</source>
        <translation>کم اور زیادہ: درج کی گئی قدر سے کوئی چیز کتنی دور ہو سکتی ہے۔ پھر فرق میں اس کا حصہ؛ +: یہ بڑھے تو نتیجہ بڑھتا ہے، −: یہ بڑھے تو نتیجہ گھٹتا ہے۔</translation>
    </message>
    <message>
        <source>How sure the numbers are</source>
        <translation>اعداد کتنے پکے ہیں</translation>
    </message>
    <message>
        <source>The ranges were not drawn when this page was made.</source>
        <translation>جب یہ صفحہ بنا اس وقت کمی بیشی کے قرعے نہیں نکالے گئے تھے۔</translation>
    </message>
    <message>
        <source>%1 draws; each input triangular between low and high about what is entered. 1 draw in 10 is below P10, half are below P50, 9 in 10 below P90. The draws start with the number %2: the same number gives the same answer.</source>
        <translation>%1 قرعے؛ ہر درج چیز کم اور زیادہ کے بیچ درج قدر کے گرد تکونی بٹی ہوئی ہے۔ 10 میں سے 1 قرعہ P10 سے کم ہے، آدھے P50 سے کم، 10 میں سے 9 P90 سے کم۔ قرعے نمبر %2 سے شروع ہوتے ہیں: وہی نمبر وہی جواب دیتا ہے۔</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>ہفتہ شروع</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>اچھا</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>کورا</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>گرمی</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries is not reckoned: humidity or wind is not known.</source>
        <translation>تازہ پلستر کتنی جلدی سوکھتا ہے، حساب نہیں لگا: نمی یا ہوا معلوم نہیں۔</translation>
    </message>
    <message>
        <source>km/h</source>
        <translation>km/h</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries</source>
        <translation>تازہ پلستر کتنی جلدی سوکھتا ہے</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>کوٹ</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>ہوا (درجہ)</translation>
    </message>
    <message>
        <source>E water lost in kg for each m² and hour, Tc and Ta plaster and air in °C, r humidity from 0 to 1, V wind in km/h; the mean weather of the week, plaster as warm as the air.</source>
        <translation>E ہر m² پر ہر گھنٹے ضائع پانی kg میں، Tc اور Ta پلستر اور ہوا کا درجہ حرارت °C میں، r نمی 0 سے 1 تک، V ہوا کی رفتار km/h میں؛ ہفتے کا اوسط موسم، پلستر ہوا جتنا گرم۔</translation>
    </message>
    <message>
        <source>Weather window: how often coats stay undisturbed, week by week</source>
        <translation>موزوں موسم کے ہفتے: کوٹ کتنی بار سلامت رہتے ہیں، ہفتہ بہ ہفتہ</translation>
    </message>
    <message>
        <source>Good: nothing disturbs, of all start days of the week and %1 of weather. Rain: %2 or more on the day of a coat or the day after. Frost: a night at or below 0 °C within 7 days of a coat. Heat: a day of a coat outside 5 to 35 °C. * week of the first coat as planned; + best week.</source>
        <translation>اچھا: کچھ خراب نہیں ہوتا، ہفتے کے سب شروع کے دنوں اور %1 کے موسم میں سے۔ بارش: کوٹ کے دن یا اگلے دن %2 یا زیادہ۔ کورا: کوٹ کے بعد 7 دن کے اندر کوئی رات 0 °C یا کم۔ گرمی: کوٹ کا دن 5 تا 35 °C سے باہر۔ * منصوبے کے مطابق پہلے کوٹ کا ہفتہ؛ + بہترین ہفتہ۔</translation>
    </message>
    <message>
        <source>wetted</source>
        <translation>ترائی ہوئی</translation>
    </message>
    <message>
        <source>all %1 times</source>
        <translation>سب %1 بار</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>پانی</translation>
    </message>
    <message>
        <source>Water covers it on</source>
        <translation>پانی ڈھک لیتا ہے</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>ڈھک گئی</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>%1 سے اوپر</translation>
    </message>
    <message>
        <source>Wet the walls</source>
        <translation>دیواروں کی ترائی کریں</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>ہفتہ</translation>
    </message>
    <message>
        <source>Water a day, at most</source>
        <translation>روزانہ پانی، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Later weeks: a box for each day</source>
        <translation>بعد کے ہفتے: ہر دن کا ایک خانہ</translation>
    </message>
    <message>
        <source>While the tank fills: walls that the water has not reached</source>
        <translation>جب ٹینکی بھر رہی ہو: دیواریں جن تک پانی نہیں پہنچا</translation>
    </message>
    <message>
        <source>When the water covers the walls is not known, or takes more than a year. Sacks stay wet on every wall up to the overflow until water covers it.</source>
        <translation>پانی دیواروں کو کب ڈھکتا ہے، معلوم نہیں، یا ایک سال سے زیادہ لگتا ہے۔ اوور فلو تک ہر دیوار پر ٹاٹ گیلے رہیں، جب تک پانی اسے نہ ڈھک لے۔</translation>
    </message>
    <message>
        <source>After the curing days</source>
        <translation>ترائی کے دنوں کے بعد</translation>
    </message>
    <message>
        <source>Water: for all wetting on that day.</source>
        <translation>پانی: اس دن کی ساری ترائی کے لیے۔</translation>
    </message>
    <message>
        <source>%1; not before %2, as wished</source>
        <translation>%1؛ خواہش کے مطابق %2 سے پہلے نہیں</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation>کوئی نہیں</translation>
    </message>
    <message>
        <source>All tasks</source>
        <translation>سب کام</translation>
    </message>
    <message>
        <source>Heavy type and NONE: no room to slip. Curing, filling and watching count all days, other tasks the days that are worked.</source>
        <translation>موٹے حروف اور ”کوئی نہیں“: تاخیر کی گنجائش نہیں۔ ترائی، پانی بھرنا اور نظر رکھنا سب دن گنتے ہیں، باقی کام صرف کام کے دن۔</translation>
    </message>
    <message>
        <source>Starts</source>
        <translation>شروع</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>ختم</translation>
    </message>
    <message>
        <source>starts after the end of: %1</source>
        <translation>شروع ہوتا ہے اس کے ختم ہونے کے بعد: %1</translation>
    </message>
    <message>
        <source>starts after the start of: %1</source>
        <translation>شروع ہوتا ہے اس کے شروع ہونے کے بعد: %1</translation>
    </message>
    <message>
        <source>ends after the end of: %1</source>
        <translation>ختم ہوتا ہے اس کے ختم ہونے کے بعد: %1</translation>
    </message>
    <message>
        <source>ends after the start of: %1</source>
        <translation>ختم ہوتا ہے اس کے شروع ہونے کے بعد: %1</translation>
    </message>
    <message>
        <source>What waits for what</source>
        <translation>کون سا کام کس کا انتظار کرتا ہے</translation>
    </message>
    <message>
        <source>Its order</source>
        <translation>اس کی ترتیب</translation>
    </message>
    <message>
        <source>People by day</source>
        <translation>دن کے حساب سے لوگ</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>دن</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>مزدور</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>مستری</translation>
    </message>
    <message>
        <source>Wetting</source>
        <translation>ترائی</translation>
    </message>
    <message>
        <source>Dates: critical path method, forward and backward pass %1. Room: days that a task may slip before the last day moves.</source>
        <translation>تاریخیں: کریٹیکل پاتھ کا طریقہ، آگے اور پیچھے کا حساب %1۔ گنجائش: اتنے دن کام ٹل سکتا ہے اور آخری دن نہیں ہٹتا۔</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>ہر کام کی دیہاڑیاں</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>استعمال</translation>
    </message>
    <message>
        <source>Digging the pit by the published norm: %1; by what is told of earlier tanks: %2.</source>
        <translation>گڑھے کی کھدائی شائع شدہ معیار سے: %1؛ پہلے بنی ٹینکیوں کے بارے میں بتائی گئی بات سے: %2۔</translation>
    </message>
    <message>
        <source>Rates in force</source>
        <translation>کام کی لاگو رفتار</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>موقع پر ناپا گیا</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>ریکارڈ</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>سب سے کم</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>درمیانی</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>سب سے زیادہ</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>درج</translation>
    </message>
    <message>
        <source>Not in these sums, for the price, the weight or how much is needed is not known: %1.</source>
        <translation>ان جمعوں میں شامل نہیں، کیونکہ قیمت، وزن یا ضرورت کی مقدار معلوم نہیں: %1۔</translation>
    </message>
    <message>
        <source>%1 to watch</source>
        <translation>نظر رکھنے کو %1</translation>
    </message>
    <message>
        <source>Soil-cement without a price of its own: materials, their carriage and the work of stone bed, coats and curing, with %1 for what is not foreseen, as on digging and platform. Other prices are as entered.</source>
        <translation>مٹی سیمنٹ جس کی اپنی قیمت درج نہیں: سامان، اس کی ڈھلائی اور پتھر کی سولنگ، کوٹوں اور ترائی کی محنت، غیر متوقع خرچ کے %1 کے ساتھ، جیسے کھدائی اور پلیٹ فارم پر۔ باقی قیمتیں جیسی درج ہیں۔</translation>
    </message>
    <message>
        <source>Not reckoned while prices are missing.</source>
        <translation>قیمتیں پوری نہ ہوں تو حساب نہیں لگتا۔</translation>
    </message>
    <message>
        <source>Each m³ delivered = cost of the whole tank a year (the bill × the factor of soil-cement + its upkeep) ÷ water drawn in the dry months of a mean year: %1 ÷ %2 = %3.</source>
        <translation>ملنے والا ہر m³ = پوری ٹینکی کا سالانہ خرچ (تخمینہ × مٹی سیمنٹ کا فیکٹر + اس کی دیکھ بھال) ÷ اوسط سال کے خشک مہینوں میں نکالا گیا پانی: %1 ÷ %2 = %3۔</translation>
    </message>
    <message>
        <source>≠ and heavy type: not as in A</source>
        <translation>≠ اور موٹے حروف: A جیسا نہیں</translation>
    </message>
    <message>
        <source>all of the coat</source>
        <translation>پورا کوٹ</translation>
    </message>
    <message>
        <source>Until the next coat goes on</source>
        <translation>اگلا کوٹ لگنے تک</translation>
    </message>
    <message>
        <source>Room, days</source>
        <translation>گنجائش، دن</translation>
    </message>
    <message>
        <source>starts %2 after the end of: %1</source>
        <translation>شروع ہوتا ہے اس کے ختم ہونے کے %2 بعد: %1</translation>
    </message>
    <message>
        <source>starts %2 before the end of: %1</source>
        <translation>شروع ہوتا ہے اس کے ختم ہونے سے %2 پہلے: %1</translation>
    </message>
    <message>
        <source>starts %2 after the start of: %1</source>
        <translation>شروع ہوتا ہے اس کے شروع ہونے کے %2 بعد: %1</translation>
    </message>
    <message>
        <source>starts %2 before the start of: %1</source>
        <translation>شروع ہوتا ہے اس کے شروع ہونے سے %2 پہلے: %1</translation>
    </message>
    <message>
        <source>ends %2 after the end of: %1</source>
        <translation>ختم ہوتا ہے اس کے ختم ہونے کے %2 بعد: %1</translation>
    </message>
    <message>
        <source>ends %2 before the end of: %1</source>
        <translation>ختم ہوتا ہے اس کے ختم ہونے سے %2 پہلے: %1</translation>
    </message>
    <message>
        <source>ends %2 after the start of: %1</source>
        <translation>ختم ہوتا ہے اس کے شروع ہونے کے %2 بعد: %1</translation>
    </message>
    <message>
        <source>ends %2 before the start of: %1</source>
        <translation>ختم ہوتا ہے اس کے شروع ہونے سے %2 پہلے: %1</translation>
    </message>
    <message>
        <source>%1 (rest days counted)</source>
        <translation>%1 (چھٹی کے دن گن کر)</translation>
    </message>
    <message>
        <source>%1. From: %2. %3</source>
        <translation>%1۔ ان سے: %2۔ %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Every number of this plan: what it is, how it was reckoned, from which numbers, and where the figures come from. A number that is reckoned from others names them; each stands here in its own place.</source>
        <translation>اس منصوبے کا ہر عدد: کیا ہے، حساب کیسے لگا، کن عددوں سے، اور اعداد کا حوالہ کیا ہے۔ جو عدد دوسروں سے نکلا ہے وہ ان کے نام بتاتا ہے؛ ان میں سے ہر ایک یہاں اپنی جگہ پر ہے۔</translation>
    </message>
    <message>
        <source>Cleaning, each year before the rains</source>
        <translation>صفائی، ہر سال بارشوں سے پہلے</translation>
    </message>
    <message>
        <source>Two people, never one alone in the tank, not even in an empty one. Ladder to the floor; get out when you feel dizzy.</source>
        <translation>دو آدمی؛ ٹینکی میں کبھی کوئی اکیلا نہ ہو، خالی ٹینکی میں بھی نہیں۔ سیڑھی فرش تک ہو؛ چکر آئے تو فوراً باہر نکلیں۔</translation>
    </message>
    <message>
        <source>Choose the weeks when the tank is nearly empty and the rains are near. Draw the last water for the beds.</source>
        <translation>وہ ہفتے چنیں جب ٹینکی تقریباً خالی ہو اور بارشیں قریب ہوں۔ آخری پانی کیاریوں کے لیے نکال لیں۔</translation>
    </message>
    <message>
        <source>Loosen the silt with a soft brush and a wooden scoop. No spade, no hoe, no wire brush: they cut the plaster.</source>
        <translation>گاد کو نرم برش اور لکڑی کے کڑچھے سے ڈھیلا کریں۔ نہ بیلچہ، نہ کدال، نہ تار کا برش: یہ پلستر کو کاٹتے ہیں۔</translation>
    </message>
    <message>
        <source>Lift the silt out in buckets, the bucket never over someone&apos;s head. Silt is good soil: spread it on the beds as manure.</source>
        <translation>گاد بالٹیوں میں اوپر نکالیں، بالٹی کبھی کسی کے سر کے اوپر نہ ہو۔ گاد اچھی مٹی ہے: کھاد کی طرح کیاریوں میں پھیلا دیں۔</translation>
    </message>
    <message>
        <source>Look for cracks on walls and floor while it is clean. Mark them with charcoal and mend them now.</source>
        <translation>صاف ہوتے ہی دیواروں اور فرش پر دراڑیں دیکھیں۔ کوئلے سے نشان لگائیں اور ابھی مرمت کریں۔</translation>
    </message>
    <message>
        <source>Do not let the plaster dry out: it shrinks and cracks. Keep it wet and fill the tank again within days.</source>
        <translation>پلستر کو سوکھنے نہ دیں: سکڑتا ہے اور دراڑیں پڑتی ہیں۔ اسے گیلا رکھیں اور چند دن میں ٹینکی پھر بھر دیں۔</translation>
    </message>
    <message>
        <source>Mortar, as for the last coat: %1 soil : %2 sand : %3 cement, by loose volume, mixed stiff.</source>
        <translation>مسالا، جیسا آخری کوٹ کا: %1 مٹی : %2 ریت : %3 سیمنٹ، کھلے ناپ سے، سخت گھولا ہوا۔</translation>
    </message>
    <message>
        <source>Mending cracks</source>
        <translation>دراڑوں کی مرمت</translation>
    </message>
    <message>
        <source>Hairline crack, thinner than a fingernail: brush it clean, wet it, and rub in cement stirred with water to a cream.</source>
        <translation>بال جیسی دراڑ، ناخن سے پتلی: برش سے صاف کریں، گیلا کریں، اور سیمنٹ کو پانی میں ملائی جیسا گھول کر رگڑ دیں۔</translation>
    </message>
    <message>
        <source>Open crack: cut it out to a groove like a V, as deep as it is wide, until sound plaster shows. Brush out all dust and wet the groove well.</source>
        <translation>کھلی دراڑ: کاٹ کر V جیسی جھری بنائیں، جتنی چوڑی اتنی گہری، یہاں تک کہ پکا پلستر نکل آئے۔ ساری دھول برش سے نکالیں اور جھری کو خوب گیلا کریں۔</translation>
    </message>
    <message>
        <source>Rub cement cream into the wet groove, then press the mortar in hard, in two layers where it is deep, and float it level with the old face.</source>
        <translation>گیلی جھری میں سیمنٹ کی ملائی رگڑیں، پھر مسالا زور سے دبا کر بھریں، گہری ہو تو دو تہوں میں، اور گرمالے سے پرانی سطح کے برابر کریں۔</translation>
    </message>
    <message>
        <source>Wet sacks over the place for %1. Then fill, and make the leak test (sheet F6).</source>
        <translation>اس جگہ پر %1 تک گیلے ٹاٹ رکھیں۔ پھر پانی بھریں، اور لیکیج ٹیسٹ کریں (شیٹ F6)۔</translation>
    </message>
    <message>
        <source>A wall that bulges, leans or sinks, or a crack that opens again after mending: do not go in, let no more water in, and ask a licensed engineer. Mortar does not hold moving ground.</source>
        <translation>دیوار باہر پھولے، جھکے یا بیٹھے، یا دراڑ مرمت کے بعد پھر کھلے: اندر نہ جائیں، مزید پانی نہ آنے دیں، اور لائسنس یافتہ انجینئر سے پوچھیں۔ مسالا ہلتی زمین کو نہیں روکتا۔</translation>
    </message>
    <message>
        <source>Cleaned on</source>
        <translation>صفائی کی تاریخ</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>کس نے کی</translation>
    </message>
    <message>
        <source>Silt, buckets</source>
        <translation>گاد، بالٹیاں</translation>
    </message>
    <message>
        <source>Filled again on</source>
        <translation>پھر بھری، تاریخ</translation>
    </message>
    <message>
        <source>How to clean and mend: %1.</source>
        <translation>صفائی اور مرمت کا طریقہ: %1۔</translation>
    </message>
    <message>
        <source>Mended on</source>
        <translation>مرمت کی تاریخ</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>کہاں</translation>
    </message>
    <message>
        <source>Wet sacks until</source>
        <translation>گیلے ٹاٹ کب تک</translation>
    </message>
    <message>
        <source>%1, TOO FEW: %2 needed</source>
        <translation>%1، بہت کم: %2 چاہییں</translation>
    </message>
    <message>
        <source>People planned on it</source>
        <translation>منصوبے میں اس پر لوگ</translation>
    </message>
    <message>
        <source>Put on within</source>
        <translation>اتنے وقت میں لگائیں</translation>
    </message>
    <message>
        <source>Sacks to cover it</source>
        <translation>ڈھانپنے کو ٹاٹ</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>پوری بوری والی گھانیاں</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>گیلے ٹاٹ کے نیچے دن</translation>
    </message>
    <message>
        <source>This coat</source>
        <translation>یہ کوٹ</translation>
    </message>
    <message>
        <source>Wet the earth walls and the stone bed until they are dark but no water stands on them. Dry earth drinks the plaster&apos;s water.</source>
        <translation>مٹی کی دیواریں اور پتھر کی سولنگ اتنی گیلی کریں کہ رنگ گہرا ہو جائے مگر اوپر پانی کھڑا نہ ہو۔ سوکھی مٹی پلستر کا پانی پی جاتی ہے۔</translation>
    </message>
    <message>
        <source>The coat below is roughened and free of dust. Wet it until it is dark but no water stands on it.</source>
        <translation>نیچے کا کوٹ کھردرا کیا ہوا اور دھول سے پاک ہو۔ اسے اتنا گیلا کریں کہ رنگ گہرا ہو جائے مگر اوپر پانی کھڑا نہ ہو۔</translation>
    </message>
    <message>
        <source>Rub it even with the wooden float, then scratch it crosswise so that the next coat holds.</source>
        <translation>لکڑی کے گرمالے سے برابر کریں، پھر آڑی ترچھی لکیریں کھرچیں تاکہ اگلا کوٹ پکڑے۔</translation>
    </message>
    <message>
        <source>Rub it smooth and dense with the float while it is still fresh; no cracks, no pits.</source>
        <translation>ابھی تازہ ہو تو گرمالے سے چکنا اور ٹھوس کریں؛ نہ دراڑ ہو نہ چھید۔</translation>
    </message>
    <message>
        <source>Press walls and floor into one another where they meet: no joint.</source>
        <translation>جہاں دیوار اور فرش ملتے ہیں، دونوں کو ایک دوسرے میں دبا دیں: کوئی جوڑ نہ رہے۔</translation>
    </message>
    <message>
        <source>Round off the corner of wall and floor with a radius of %1: no joint.</source>
        <translation>دیوار اور فرش کا کونا %1 نصف قطر سے گول کریں: کوئی جوڑ نہ رہے۔</translation>
    </message>
    <message>
        <source>Begin early and finish in one go. Walls first, from the foot upward, all round, pressed on hard, %1 thick by a marked nail; then the floor, backing out to the ladder.</source>
        <translation>صبح جلدی شروع کریں اور ایک ہی بار میں ختم کریں۔ پہلے دیواریں، جڑ سے اوپر کو، چاروں طرف، زور سے دبا کر، نشان لگی کیل سے %1 موٹی؛ پھر فرش، سیڑھی کی طرف پیچھے ہٹتے ہوئے۔</translation>
    </message>
    <message>
        <source>Keep shade over the fresh coat. None is put on in rain, or when frost is to come.</source>
        <translation>تازہ کوٹ پر سایہ رکھیں۔ بارش میں یا جب کورا پڑنے والا ہو، کوئی کوٹ نہ لگائیں۔</translation>
    </message>
    <message>
        <source>Wet sacks over all of it as soon as it takes no thumb print, within the hour in sun or wind. Keep them wet by the wetting calendar.</source>
        <translation>جیسے ہی انگوٹھے کا نشان نہ پڑے، سب پر گیلے ٹاٹ ڈالیں، دھوپ یا ہوا میں ایک گھنٹے کے اندر۔ ترائی کے کیلنڈر کے مطابق گیلے رکھیں۔</translation>
    </message>
    <message>
        <source>The plan does not say yet which pipes go through the lining.</source>
        <translation>منصوبہ ابھی نہیں بتاتا کہ لائننگ میں سے کون سے پائپ گزرتے ہیں۔</translation>
    </message>
    <message>
        <source>Through the lining go the pipe to the field and the overflow pipe.</source>
        <translation>لائننگ میں سے کھیت کو جانے والا پائپ اور اوور فلو کا پائپ گزرتے ہیں۔</translation>
    </message>
    <message>
        <source>Through the lining goes the pipe to the field.</source>
        <translation>لائننگ میں سے کھیت کو جانے والا پائپ گزرتا ہے۔</translation>
    </message>
    <message>
        <source>Through the lining goes the overflow pipe.</source>
        <translation>لائننگ میں سے اوور فلو کا پائپ گزرتا ہے۔</translation>
    </message>
    <message>
        <source>By this plan no pipe goes through the lining: pipes lie over the rim.</source>
        <translation>اس منصوبے میں لائننگ میں سے کوئی پائپ نہیں گزرتا: پائپ اوپری کنارے کے اوپر سے جاتے ہیں۔</translation>
    </message>
    <message>
        <source>Pipes and collars, before coat 1</source>
        <translation>پائپ اور کالر، کوٹ 1 سے پہلے</translation>
    </message>
    <message>
        <source>Every pipe through the wall is laid before coat 1. Roughen it where the plaster will hold it; smooth plastic lets water along.</source>
        <translation>دیوار میں سے جانے والا ہر پائپ کوٹ 1 سے پہلے بچھائیں۔ جہاں پلستر اسے پکڑے گا وہاں کھردرا کریں؛ چکنے پلاسٹک کے ساتھ ساتھ پانی نکل جاتا ہے۔</translation>
    </message>
    <message>
        <source>Bed it in rammed earth over its whole length, so that it cannot sink and break away.</source>
        <translation>پوری لمبائی میں کوٹی ہوئی مٹی پر بٹھائیں، تاکہ نہ دھنسے اور نہ ٹوٹ کر الگ ہو۔</translation>
    </message>
    <message>
        <source>Set a collar of stiff plaster around it, a hand&apos;s breadth wide on every side, let into the earth wall. Coat 1 goes on while the collar is still damp.</source>
        <translation>اس کے گرد سخت پلستر کا کالر لگائیں، ہر طرف ایک ہتھیلی کی چوڑائی، مٹی کی دیوار میں بٹھا کر۔ کوٹ 1 تب لگائیں جب کالر ابھی گیلا ہو۔</translation>
    </message>
    <message>
        <source>Where it can be, take the pipe over the rim instead: a hole that is not made cannot leak.</source>
        <translation>جہاں ہو سکے، پائپ اوپری کنارے کے اوپر سے لے جائیں: جو سوراخ بنا ہی نہیں وہ لیک نہیں ہوتا۔</translation>
    </message>
    <message>
        <source>Pipes through the wall and over the rim</source>
        <translation>دیوار میں سے اور اوپری کنارے کے اوپر سے پائپ</translation>
    </message>
    <message>
        <source>The design in short form, to scan or to type into the program:</source>
        <translation>ڈیزائن کی مختصر شکل، اسکین کرنے یا پروگرام میں ٹائپ کرنے کے لیے:</translation>
    </message>
    <message>
        <source>From %1 deep on a ladder stands in the pit, close to those who dig, until the last one is out.</source>
        <translation>%1 گہرائی سے آگے گڑھے میں سیڑھی کھڑی رہے، کھودنے والوں کے پاس، جب تک آخری آدمی باہر نہ آ جائے۔</translation>
    </message>
    <message>
        <source>Throw the spoil %1 or more back from the edge. No stones, tools, bags or animals nearer than that.</source>
        <translation>کھدائی کی مٹی کنارے سے %1 یا زیادہ دور پھینکیں۔ اس سے قریب نہ پتھر، نہ اوزار، نہ بوریاں، نہ جانور۔</translation>
    </message>
    <message>
        <source>Fence the pit, by night and on rest days too. Children stay away.</source>
        <translation>گڑھے کے گرد باڑ لگائیں، رات کو اور چھٹی کے دن بھی۔ بچے دور رہیں۔</translation>
    </message>
    <message>
        <source>Dig inside the strings. Leave the pegs where they stand: all sizes are measured from them.</source>
        <translation>ڈوریوں کے اندر کھودیں۔ کھونٹیاں جہاں ہیں وہیں رہنے دیں: سب ناپ انہی سے لیے جاتے ہیں۔</translation>
    </message>
    <message>
        <source>Take the whole floor down evenly, no more than %1 at a time. Never dig under a wall.</source>
        <translation>پورا تلا برابر نیچے لے جائیں، ایک بار میں %1 سے زیادہ نہیں۔ دیوار کے نیچے کبھی نہ کھودیں۔</translation>
    </message>
    <message>
        <source>After every such step hold the batter board against the walls and check sides and diagonals (sheet M5). Cut off what stands out; do not fill what was dug too far with loose earth.</source>
        <translation>ہر ایسے قدم کے بعد سلامی کا پھٹا دیواروں سے لگائیں اور پہلو اور وتر جانچیں (شیٹ M5)۔ جو باہر نکلا ہو کاٹ دیں؛ جو زیادہ کھد گیا ہو اسے کچی مٹی سے نہ بھریں۔</translation>
    </message>
    <message>
        <source>Watch walls and edge. Cracks along the edge, bulging, falling crumbs or water in the wall: everybody out at once, and ask before going on.</source>
        <translation>دیواروں اور کنارے پر نظر رکھیں۔ کنارے کے ساتھ دراڑیں، پھولتی دیوار، جھڑتی مٹی یا دیوار میں پانی: سب فوراً باہر، اور آگے بڑھنے سے پہلے پوچھیں۔</translation>
    </message>
    <message>
        <source>Stop in rain. Lead water away from the edge. Go in again only when the walls have been looked at all round.</source>
        <translation>بارش میں کام روک دیں۔ پانی کو کنارے سے دور لے جائیں۔ دوبارہ تبھی اندر جائیں جب دیواریں چاروں طرف سے دیکھ لی گئی ہوں۔</translation>
    </message>
    <message>
        <source>Dig the last hand&apos;s breadth by scraping, to the rod&apos;s mark for the pit floor; then ram the floor.</source>
        <translation>آخری ایک ہتھیلی کی چوڑائی چھیل کر کھودیں، چھڑ پر گڑھے کے تلے کے نشان تک؛ پھر تلا کوٹیں۔</translation>
    </message>
    <message>
        <source>This pit gets deeper than %1. Walls of that height bury people: ask a licensed engineer how far they must lean or be propped, and follow the local code.</source>
        <translation>یہ گڑھا %1 سے زیادہ گہرا ہو گا۔ اتنی اونچی دیواریں لوگوں کو دبا کر مار دیتی ہیں: لائسنس یافتہ انجینئر سے پوچھیں کہ کتنی سلامی یا ٹیک ضروری ہے، اور مقامی ضابطے پر عمل کریں۔</translation>
    </message>
    <message>
        <source>Loose spoil left over</source>
        <translation>بچی ہوئی کھلی مٹی</translation>
    </message>
    <message>
        <source>Heap of it</source>
        <translation>اس کا ڈھیر</translation>
    </message>
    <message>
        <source>%1 high, %2 across</source>
        <translation>%1 اونچا، %2 چوڑا</translation>
    </message>
    <message>
        <source>Pit at the ground</source>
        <translation>گڑھا، زمین پر</translation>
    </message>
    <message>
        <source>Pit at its floor</source>
        <translation>گڑھا، تلے پر</translation>
    </message>
    <message>
        <source>Pit depth, ground to pit floor</source>
        <translation>گڑھے کی گہرائی، زمین سے تلے تک</translation>
    </message>
    <message>
        <source>To dig for the pit, as it lies</source>
        <translation>گڑھے کی کھدائی، ٹھوس زمین</translation>
    </message>
    <message>
        <source>What is dug, before any lining</source>
        <translation>جو کھودنا ہے، لائننگ سے پہلے</translation>
    </message>
    <message>
        <source>The pit when it is dug</source>
        <translation>گڑھا، کھدائی کے بعد</translation>
    </message>
    <message>
        <source>The board for the lean of the dug wall</source>
        <translation>کھودی ہوئی دیوار کی سلامی کا پھٹا</translation>
    </message>
    <message>
        <source>Sections: A-A on sheet M3, B-B on sheet M15.</source>
        <translation>سیکشن: A-A شیٹ M3 پر، B-B شیٹ M15 پر۔</translation>
    </message>
    <message>
        <source>B-B: sheet M15.</source>
        <translation>B-B: شیٹ M15۔</translation>
    </message>
    <message>
        <source>Section B-B of the plan. A-A: sheet M3.</source>
        <translation>اوپر کے نقشے کا سیکشن B-B۔ A-A: شیٹ M3۔</translation>
    </message>
    <message>
        <source>The rod, standing in the pit</source>
        <translation>چھڑ، گڑھے میں کھڑی</translation>
    </message>
    <message>
        <source>Take soil from below the roots, dry and crush it, sieve out stones and straw.</source>
        <translation>جڑوں سے نیچے کی مٹی لیں، سکھا کر پیسیں، کنکر اور بھوسا چھان کر نکال دیں۔</translation>
    </message>
    <message>
        <source>Fill a clear jar with straight sides to a third with the soil. Add a pinch of salt or washing powder, and water until two fingers of air are left.</source>
        <translation>سیدھی دیواروں والے شفاف جار کا تیسرا حصہ مٹی سے بھریں۔ ایک چٹکی نمک یا کپڑے دھونے کا پاؤڈر ڈالیں، اور پانی اتنا کہ اوپر دو انگل خالی رہے۔</translation>
    </message>
    <message>
        <source>Shut it, shake it hard for %1 minutes, set it down level and do not move it again.</source>
        <translation>بند کریں، %1 منٹ زور سے ہلائیں، ہموار جگہ پر رکھیں اور پھر نہ ہلائیں۔</translation>
    </message>
    <message>
        <source>After %1 minute mark the top of the sand on the jar, after %2 hours the top of the silt. When the water is clear, after %3 to %4 hours, mark the top of the clay.</source>
        <translation>%1 منٹ بعد جار پر ریت کے اوپر نشان لگائیں، %2 گھنٹے بعد گاد کے اوپر۔ جب پانی صاف ہو جائے، %3 تا %4 گھنٹے بعد، چکنی مٹی کے اوپر نشان لگائیں۔</translation>
    </message>
    <message>
        <source>Fold the sheet along the ruler&apos;s edge, stand it at the jar with its zero at the jar&apos;s floor inside, and read how thick each layer is.</source>
        <translation>شیٹ کو پیمانے کے کنارے پر موڑیں، جار کے ساتھ ایسے کھڑی کریں کہ صفر جار کے اندر کے پیندے پر ہو، اور پڑھیں کہ ہر تہہ کتنی موٹی ہے۔</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>جار</translation>
    </message>
    <message>
        <source>Soil from where, how deep</source>
        <translation>مٹی کہاں سے، کتنی گہرائی سے</translation>
    </message>
    <message>
        <source>Sand, mm</source>
        <translation>ریت، mm</translation>
    </message>
    <message>
        <source>Silt, mm</source>
        <translation>گاد، mm</translation>
    </message>
    <message>
        <source>Clay, mm</source>
        <translation>چکنی مٹی، mm</translation>
    </message>
    <message>
        <source>All, mm</source>
        <translation>کل، mm</translation>
    </message>
    <message>
        <source>Clay, %</source>
        <translation>چکنی مٹی، %</translation>
    </message>
    <message>
        <source>How much clay is in the soil? In water sand sinks first, then silt, clay last.</source>
        <translation>مٹی میں چکنی مٹی کتنی ہے؟ پانی میں پہلے ریت بیٹھتی ہے، پھر گاد، آخر میں چکنی مٹی۔</translation>
    </message>
    <message>
        <source>Clay in the soil, in percent = clay ÷ all × %1.</source>
        <translation>مٹی میں چکنی مٹی، فیصد = چکنی مٹی ÷ کل × %1۔</translation>
    </message>
    <message>
        <source>Read by:</source>
        <translation>کس نے پڑھا:</translation>
    </message>
    <message>
        <source>Type the thickness of each layer in on the tab %1.</source>
        <translation>ہر تہہ کی موٹائی ٹیب %1 میں درج کریں۔</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>نوٹ</translation>
    </message>
    <message>
        <source>How the jar is done: %1. A laboratory measures it more exactly.</source>
        <translation>جار ٹیسٹ کا طریقہ: %1۔ لیبارٹری زیادہ ٹھیک ناپتی ہے۔</translation>
    </message>
    <message>
        <source>or</source>
        <translation>یا</translation>
    </message>
    <message>
        <source>For 1 bag of cement, and below it for half a bag (½): boxes of %1, or pans of %2, or buckets of %3, level with the rim.</source>
        <translation>سیمنٹ کی 1 بوری کے لیے، اور اس کے نیچے آدھی بوری (½) کے لیے: %1 کی ناپ کی پیٹیاں، یا %2 کی تغاریاں، یا %3 کی بالٹیاں، کنارے تک برابر بھری۔</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>آزمائشی گڑھے</translation>
    </message>
    <message>
        <source>Soil by ball and ribbon</source>
        <translation>گولی اور ربن سے مٹی</translation>
    </message>
    <message>
        <source>Jar test</source>
        <translation>جار ٹیسٹ</translation>
    </message>
    <message>
        <source>Slope by water level</source>
        <translation>لیول پائپ سے ڈھلان</translation>
    </message>
    <message>
        <source>Section B-B</source>
        <translation>سیکشن B-B</translation>
    </message>
    <message>
        <source>Build stages</source>
        <translation>تعمیر کے مرحلے</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>پتھر کی سولنگ</translation>
    </message>
    <message>
        <source>Coats and pipes</source>
        <translation>کوٹ اور پائپ</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>مہینوں کا استعمال</translation>
    </message>
    <message>
        <source>Cleaning and crack repair</source>
        <translation>صفائی اور دراڑوں کی مرمت</translation>
    </message>
    <message>
        <source>Calculation sheet</source>
        <translation>حساب کی شیٹ</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Take a handful of soil without stones. Drip water on and knead it until it is like putty: no dry crumbs, no water running.</source>
        <translation>بغیر کنکر کی ایک مٹھی مٹی لیں۔ پانی ٹپکاتے ہوئے گوندھیں یہاں تک کہ پٹین جیسی ہو جائے: نہ سوکھے ذرے رہیں، نہ پانی بہے۔</translation>
    </message>
    <message>
        <source>Squeeze it in the fist. Does a ball hold together?</source>
        <translation>مٹھی میں دبائیں۔ کیا گولی جڑی رہتی ہے؟</translation>
    </message>
    <message>
        <source>Push the ball with the thumb over the forefinger to a flat ribbon of even thickness, and let it hang until it breaks. Lay it on the strip below and read its length.</source>
        <translation>گولی کو انگوٹھے سے شہادت کی انگلی کے اوپر دھکیل کر برابر موٹائی کا چپٹا ربن بنائیں، اور لٹکنے دیں جب تک ٹوٹ نہ جائے۔ اسے نیچے کی پٹی پر رکھیں اور لمبائی پڑھیں۔</translation>
    </message>
    <message>
        <source>Wet a pinch in the palm very much and rub it with a finger. Is it above all gritty, above all smooth, or neither? Then wash your hands.</source>
        <translation>ایک چٹکی ہتھیلی میں بہت گیلی کریں اور انگلی سے رگڑیں۔ زیادہ تر کرکری ہے، زیادہ تر ملائم ہے، یا دونوں نہیں؟ پھر ہاتھ دھو لیں۔</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>میرا والی ریت</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>گولی اور ربن</translation>
    </message>
    <message>
        <source>Gritty</source>
        <translation>کرکری</translation>
    </message>
    <message>
        <source>Neither</source>
        <translation>دونوں نہیں</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>ملائم</translation>
    </message>
    <message>
        <source>no ball holds</source>
        <translation>گولی نہیں بنتی</translation>
    </message>
    <message>
        <source>ball, but no ribbon</source>
        <translation>گولی، مگر ربن نہیں</translation>
    </message>
    <message>
        <source>ribbon shorter than %1</source>
        <translation>ربن %1 سے چھوٹا</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>ریتلی میرا</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>میرا مٹی</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>گاد والی میرا</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>ریتلی چکنی میرا</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>چکنی میرا</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>گاد والی چکنی میرا</translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation>%1 یا لمبا</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>ریتلی چکنی مٹی</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>چکنی مٹی</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>گاد والی چکنی مٹی</translation>
    </message>
    <message>
        <source>Soil from where</source>
        <translation>مٹی کہاں سے</translation>
    </message>
    <message>
        <source>Ball</source>
        <translation>گولی</translation>
    </message>
    <message>
        <source>Ribbon, mm</source>
        <translation>ربن، mm</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>کیسی ہے</translation>
    </message>
    <message>
        <source>What soil is it? Hands can tell, with a little water.</source>
        <translation>یہ کون سی مٹی ہے؟ تھوڑا پانی ہو تو ہاتھ بتا دیتے ہیں۔</translation>
    </message>
    <message>
        <source>Type the readings in on the tab %1.</source>
        <translation>ریڈنگیں ٹیب %1 میں درج کریں۔</translation>
    </message>
    <message>
        <source>Two people who look where they step. Never walk backward toward the edge of a terrace or a pit.</source>
        <translation>دو آدمی، جو دیکھ کر قدم رکھیں۔ سیڑھی کھیت یا گڑھے کے کنارے کی طرف کبھی الٹے پاؤں نہ چلیں۔</translation>
    </message>
    <message>
        <source>Take a clear hose of %1 to %2 m and two sticks with marks every centimetre. Fill the hose until no bubble is left in it, and tie an end to each stick.</source>
        <translation>%1 تا %2 m کا شفاف ربڑ پائپ اور دو چھڑیں لیں جن پر ہر سینٹی میٹر کا نشان ہو۔ پائپ کو بھریں یہاں تک کہ کوئی بلبلا نہ رہے، اور ہر چھڑ سے ایک سرا باندھ دیں۔</translation>
    </message>
    <message>
        <source>One stick stands uphill, one straight downhill, both upright on the ground. Both ends of the hose are open.</source>
        <translation>ایک چھڑ ڈھلان پر اوپر کھڑی ہو، دوسری سیدھی اس سے نیچے، دونوں زمین پر سیدھی کھڑی۔ پائپ کے دونوں سرے کھلے ہوں۔</translation>
    </message>
    <message>
        <source>Wait until the water stands still: it is equally high at both ends. Read it on both sticks, from the ground up.</source>
        <translation>انتظار کریں کہ پانی ٹھہر جائے: دونوں سروں پر ایک ہی اونچائی پر ہوتا ہے۔ دونوں چھڑوں پر زمین سے اوپر کو پڑھیں۔</translation>
    </message>
    <message>
        <source>Drop = reading downhill less reading uphill; less than nothing where the ground rises. Run = how far the sticks are apart, with the tape held level. Write both down.</source>
        <translation>اترائی = نچلی ریڈنگ منفی اوپر کی ریڈنگ؛ زمین چڑھتی ہو تو صفر سے کم۔ ہموار فاصلہ = چھڑیں کتنی دور ہیں، فیتہ ہموار پکڑ کر۔ دونوں لکھیں۔</translation>
    </message>
    <message>
        <source>The uphill stick goes where the downhill one stood, and so on over the whole place of the tank and some metres beyond.</source>
        <translation>اوپر والی چھڑ وہاں جائے جہاں نیچے والی تھی، اور اسی طرح ٹینکی کی پوری جگہ اور اس سے کچھ میٹر آگے تک۔</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>مجموعہ</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>پیمائش</translation>
    </message>
    <message>
        <source>Uphill, m</source>
        <translation>اوپر، m</translation>
    </message>
    <message>
        <source>Downhill, m</source>
        <translation>نیچے، m</translation>
    </message>
    <message>
        <source>Drop, m</source>
        <translation>اترائی، m</translation>
    </message>
    <message>
        <source>Run, m</source>
        <translation>ہموار فاصلہ، m</translation>
    </message>
    <message>
        <source>How steep is the ground? Water in a hose stands equally high at both ends.</source>
        <translation>زمین کتنی ڈھلواں ہے؟ پائپ میں پانی دونوں سروں پر ایک ہی اونچائی پر ٹھہرتا ہے۔</translation>
    </message>
    <message>
        <source>Fall in percent = sum of the drops ÷ sum of the runs × %1.</source>
        <translation>ڈھلوان فیصد میں = اترائیوں کا مجموعہ ÷ ہموار فاصلوں کا مجموعہ × %1۔</translation>
    </message>
    <message>
        <source>Fall, %:</source>
        <translation>ڈھلوان، %:</translation>
    </message>
    <message>
        <source>Downhill toward, by compass:</source>
        <translation>ڈھلان کس طرف، قطب نما سے:</translation>
    </message>
    <message>
        <source>Type runs and drops in on the tab %1.</source>
        <translation>ہموار فاصلے اور اترائیاں ٹیب %1 میں درج کریں۔</translation>
    </message>
    <message>
        <source>How the hose is used: %1.</source>
        <translation>لیول پائپ کا طریقہ: %1۔</translation>
    </message>
    <message>
        <source>first on %1</source>
        <translation>پہلی بار %1 کو</translation>
    </message>
    <message>
        <source>How the tank grows, with the first day on which it stands so.</source>
        <translation>ٹینکی کیسے بنتی جاتی ہے، اور کس دن پہلی بار ایسی کھڑی ہوتی ہے۔</translation>
    </message>
    <message>
        <source>How the tank grows, cut upright at A-A.</source>
        <translation>ٹینکی کیسے بنتی جاتی ہے، A-A پر سیدھا کھڑا کاٹ کر۔</translation>
    </message>
    <message>
        <source>Wet cement burns, its dust harms the lungs. Wear all of these; wash splashes off at once with much clean water.</source>
        <translation>گیلا سیمنٹ جلد کو جلاتا ہے، اس کی دھول پھیپھڑوں کو نقصان دیتی ہے۔ یہ سب چیزیں پہنیں؛ چھینٹے پڑیں تو فوراً بہت سے صاف پانی سے دھوئیں۔</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone: one works, one stays at the top, watches the walls and can fetch help.</source>
        <translation>گڑھے میں کوئی اکیلا نہ جائے: ایک کام کرے، ایک اوپر رہے، دیواروں پر نظر رکھے اور مدد بلا سکے۔</translation>
    </message>
    <message>
        <source>Thickness, rammed</source>
        <translation>موٹائی، کوٹی ہوئی</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>لانے کا پتھر، کھلا</translation>
    </message>
    <message>
        <source>Top of the bed below the string at ground level</source>
        <translation>سولنگ کا اوپر، زمین کے برابر لگی ڈوری سے نیچے</translation>
    </message>
    <message>
        <source>Stone bed under the floor</source>
        <translation>فرش کے نیچے پتھر کی سولنگ</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone. Heavy stones: two people. Hand them or let them down; never throw stones into a pit where somebody stands.</source>
        <translation>گڑھے میں کوئی اکیلا نہ جائے۔ بھاری پتھر: دو آدمی اٹھائیں۔ ہاتھ سے دیں یا رسی سے نیچے اتاریں؛ جس گڑھے میں کوئی کھڑا ہو اس میں پتھر کبھی نہ پھینکیں۔</translation>
    </message>
    <message>
        <source>Take hard, clean stones, about %1 high when they stand on edge. No soft or rotten ones.</source>
        <translation>سخت، صاف پتھر لیں، کھڑے رکھنے پر تقریباً %1 اونچے۔ نرم یا گلے ہوئے نہ لیں۔</translation>
    </message>
    <message>
        <source>Set them on edge on the rammed floor, close together, from the far side toward the ladder.</source>
        <translation>انہیں کوٹے ہوئے تلے پر کھڑا کر کے پاس پاس جمائیں، دور کے پہلو سے سیڑھی کی طرف۔</translation>
    </message>
    <message>
        <source>Ram them until none moves under the foot. Fill all gaps with gravel and small stones, and ram again.</source>
        <translation>کوٹیں یہاں تک کہ پاؤں کے نیچے کوئی نہ ہلے۔ سب خالی جگہیں بجری اور چھوٹے پتھروں سے بھریں، اور پھر کوٹیں۔</translation>
    </message>
    <message>
        <source>Check with string and rod in the middle and along all sides: the top lies %1 below the string everywhere.</source>
        <translation>بیچ میں اور سب پہلوؤں کے ساتھ ڈوری اور چھڑ سے جانچیں: ہر جگہ اوپر ڈوری سے %1 نیچے ہو۔</translation>
    </message>
    <message>
        <source>Wash dust off and keep the bed moist until the first coat goes on.</source>
        <translation>دھول دھو دیں اور پہلے کوٹ تک سولنگ کو نم رکھیں۔</translation>
    </message>
    <message>
        <source>Pit:</source>
        <translation>گڑھا:</translation>
    </message>
    <message>
        <source>A narrow pit caves in on whoever stands in it. Nobody climbs into one deeper than the waist: look from above, lift soil out with the spade. Deeper than %1 only with an auger or a wide, leaning pit.</source>
        <translation>تنگ گڑھا اس میں کھڑے آدمی پر گر جاتا ہے۔ کمر سے گہرے گڑھے میں کوئی نہ اترے: اوپر سے دیکھیں، مٹی بیلچے سے باہر نکالیں۔ %1 سے گہرا صرف برمے سے یا چوڑے، سلامی والے گڑھے سے۔</translation>
    </message>
    <message>
        <source>Two people at each pit. Fence or cover it while it is open, and fill it when it has been logged: people and animals fall in.</source>
        <translation>ہر گڑھے پر دو آدمی۔ کھلا ہو تو باڑ لگائیں یا ڈھانپیں، اور لکھ لینے کے بعد بھر دیں: لوگ اور جانور گر جاتے ہیں۔</translation>
    </message>
    <message>
        <source>Dig or bore two or three, at the tank&apos;s place and beside it. The tank&apos;s pit will be %1 deep (dashed line): go deeper.</source>
        <translation>دو یا تین کھودیں یا برمے سے کریں، ٹینکی کی جگہ پر اور پاس میں۔ ٹینکی کا گڑھا %1 گہرا ہو گا (ٹوٹی لکیر): اس سے گہرا جائیں۔</translation>
    </message>
    <message>
        <source>Draw a line in the strip wherever the soil changes, and write one row of the log for each layer. Soil is one of: %1.</source>
        <translation>پٹی میں جہاں مٹی بدلے وہاں لکیر کھینچیں، اور ہر تہہ کے لیے ریکارڈ کی ایک قطار لکھیں۔ مٹی ان میں سے ایک ہے: %1۔</translation>
    </message>
    <message>
        <source>Write how deep water comes in. Look again the next day, and in the wet months.</source>
        <translation>لکھیں پانی کتنی گہرائی پر آتا ہے۔ اگلے دن اور بارش کے مہینوں میں پھر دیکھیں۔</translation>
    </message>
    <message>
        <source>Hard: a pick is needed. Firm: the spade goes in under the foot. Soft: the thumb goes in.</source>
        <translation>سخت: گینتی چاہیے۔ ٹھوس: بیلچہ پاؤں کے زور سے گھستا ہے۔ نرم: انگوٹھا گھس جاتا ہے۔</translation>
    </message>
    <message>
        <source>Type the layers in on the tab %1.</source>
        <translation>تہیں ٹیب %1 میں درج کریں۔</translation>
    </message>
    <message>
        <source>Pit</source>
        <translation>گڑھا</translation>
    </message>
    <message>
        <source>From, m</source>
        <translation>سے، m</translation>
    </message>
    <message>
        <source>To, m</source>
        <translation>تک، m</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>مٹی</translation>
    </message>
    <message>
        <source>Hard, firm or soft</source>
        <translation>سخت، ٹھوس یا نرم</translation>
    </message>
    <message>
        <source>Water at, m</source>
        <translation>پانی، m پر</translation>
    </message>
    <message>
        <source>Logged by:</source>
        <translation>کس نے لکھا:</translation>
    </message>
    <message>
        <source>Wanted in the month</source>
        <translation>مہینے کی ضرورت</translation>
    </message>
    <message>
        <source>There to use in the month</source>
        <translation>مہینے میں استعمال کو موجود</translation>
    </message>
    <message>
        <source>There to use each day</source>
        <translation>روزانہ استعمال کو موجود</translation>
    </message>
    <message>
        <source>Stick, usual year</source>
        <translation>چھڑ، عام سال</translation>
    </message>
    <message>
        <source>Stick, bad year</source>
        <translation>چھڑ، برا سال</translation>
    </message>
    <message>
        <source>Used each day</source>
        <translation>روزانہ استعمال</translation>
    </message>
    <message>
        <source>On the first of each month read the dip-stick and look at the row.</source>
        <translation>ہر مہینے کی پہلی تاریخ کو پانی کی چھڑ پڑھیں اور قطار دیکھیں۔</translation>
    </message>
    <message>
        <source>As much as in a usual year, or more: use what the row says for each day. Less than in a bad year: use less from this day on, and water the beds that matter most. Between: use with care.</source>
        <translation>عام سال جتنا یا زیادہ: روزانہ اتنا استعمال کریں جتنا قطار بتاتی ہے۔ برے سال سے کم: آج سے کم استعمال کریں، اور سب سے ضروری کیاریوں کو پانی دیں۔ بیچ میں: سنبھل کر استعمال کریں۔</translation>
    </message>
    <message>
        <source>A bucket of the mix cards holds %1. Count the buckets of one day and write down what was used.</source>
        <translation>مسالے کے کارڈوں کی ایک بالٹی میں %1 آتا ہے۔ ایک دن کی بالٹیاں گنیں اور لکھیں کہ کتنا استعمال ہوا۔</translation>
    </message>
    <message>
        <source>Wanted and there to use: means of all years reckoned. Usual year: half of the years had more in the tank on that day. Bad year: one year in ten had less.</source>
        <translation>ضرورت اور استعمال کو موجود: حساب میں آئے سب سالوں کی اوسط۔ عام سال: اس دن آدھے سالوں میں ٹینکی میں اس سے زیادہ تھا۔ برا سال: دس میں سے ایک سال میں کم تھا۔</translation>
    </message>
</context>
<context>
    <name>Summary</name>
    <message>
        <source>Farm water tank</source>
        <translation>کھیت کی پانی کی ٹینکی</translation>
    </message>
    <message>
        <source>to the rim</source>
        <translation>اوپری کنارے تک</translation>
    </message>
    <message>
        <source>to the overflow level</source>
        <translation>اوور فلو کے لیول تک</translation>
    </message>
    <message>
        <source>usable above the dead depth</source>
        <translation>ڈیڈ لیول سے اوپر قابلِ استعمال</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>گنجائش</translation>
    </message>
    <message>
        <source>clear, at the finished floor</source>
        <translation>اندر، تیار فرش پر</translation>
    </message>
    <message>
        <source>clear, at the rim</source>
        <translation>اندر، اوپری کنارے پر</translation>
    </message>
    <message>
        <source>clear depth, floor to rim</source>
        <translation>اندر کی گہرائی، فرش سے اوپری کنارے تک</translation>
    </message>
    <message>
        <source>pit, at the ground</source>
        <translation>گڑھا، زمین پر</translation>
    </message>
    <message>
        <source>pit, at its floor</source>
        <translation>گڑھا، اپنے تلے پر</translation>
    </message>
    <message>
        <source>pit depth below the ground</source>
        <translation>زمین سے نیچے گڑھے کی گہرائی</translation>
    </message>
    <message>
        <source>earth dug, as it lies</source>
        <translation>کھودی گئی ٹھوس زمین</translation>
    </message>
    <message>
        <source>spoil, loose</source>
        <translation>کھدائی کی مٹی، کھلی</translation>
    </message>
    <message>
        <source>Sizes (diameters)</source>
        <translation>ناپ (قطر)</translation>
    </message>
    <message>
        <source>Sizes (length x width)</source>
        <translation>ناپ (لمبائی x چوڑائی)</translation>
    </message>
    <message>
        <source>Layers (thickness, volume, face)</source>
        <translation>تہیں (موٹائی، حجم، سطح)</translation>
    </message>
    <message>
        <source>Materials (net, order)</source>
        <translation>سامان (خالص، منگوانا)</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one (customary; exact shells; area times thickness)</source>
        <translation>رواجی حساب اور نکالا ہوا حساب ساتھ ساتھ (رواجی؛ اصل حجم؛ رقبہ ضرب موٹائی)</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>جواب نہیں</translation>
    </message>
    <message>
        <source>trust thickness and mix: cement</source>
        <translation>موٹائی اور تناسب پر بھروسا: سیمنٹ</translation>
    </message>
    <message>
        <source>trust cement and mix: thickness of the coats</source>
        <translation>سیمنٹ اور تناسب پر بھروسا: کوٹوں کی موٹائی</translation>
    </message>
    <message>
        <source>trust cement and thickness: soil:sand:cement</source>
        <translation>سیمنٹ اور موٹائی پر بھروسا: مٹی:ریت:سیمنٹ</translation>
    </message>
    <message>
        <source>Which to trust (exact shells; area times thickness)</source>
        <translation>کس پر بھروسا کریں (اصل حجم؛ رقبہ ضرب موٹائی)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 تا %2</translation>
    </message>
    <message>
        <source>Labour (at the rate used, range, who)</source>
        <translation>محنت (استعمال کی گئی رفتار پر، کمی بیشی، کون)</translation>
    </message>
    <message>
        <source>Order of work (first day, last day, crew)</source>
        <translation>کام کی ترتیب (پہلا دن، آخری دن، ٹیم)</translation>
    </message>
    <message>
        <source>What to know</source>
        <translation>جاننے کی باتیں</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>کیا پانی پورا پڑے گا</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>تاریخیں</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>کوٹ ایک ہی بار میں</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>پہلی بار پانی بھرنا</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>موسم</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>قیمت نہیں</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>تخمینہ</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>رقم</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>لائننگیں، سالانہ خرچ کے لحاظ سے</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>متبادل ساتھ ساتھ</translation>
    </message>
    <message>
        <source>How sure is it</source>
        <translation>یہ کتنا پکا ہے</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>ڈھلائی، کل</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>غیر متوقع خرچ</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>کل</translation>
    </message>
</context>
<context>
    <name>app</name>
    <message>
        <source>problem</source>
        <translation>مسئلہ</translation>
    </message>
    <message>
        <source>note</source>
        <translation>نوٹ</translation>
    </message>
    <message>
        <source>There is no translation for %1 yet; texts are in English.</source>
        <translation>%1 کا ترجمہ ابھی نہیں ہے؛ متن انگریزی میں ہیں۔</translation>
    </message>
    <message>
        <source>%1: no problems found.</source>
        <translation>%1: کوئی مسئلہ نہیں ملا۔</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 نہیں پڑھی جا سکتی: %2</translation>
    </message>
    <message>
        <source>This project has no sheet %1.</source>
        <translation>اس پراجیکٹ میں %1 نام کی شیٹ نہیں۔</translation>
    </message>
</context>
<context>
    <name>ui::Actions</name>
    <message>
        <source>&amp;File</source>
        <translation>فائل (&amp;F)</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>نیا (&amp;N)</translation>
    </message>
    <message>
        <source>Open the e&amp;xample</source>
        <translation>مثال کھولیں (&amp;X)</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>کھولیں (&amp;O)…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>حالیہ کھولیں (&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>محفوظ کریں (&amp;S)</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>نئے نام سے محفوظ کریں (&amp;A)…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>ایکسپورٹ (&amp;E)…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>پرنٹ (&amp;P)…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>بند کریں (&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>ترمیم (&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>واپس لیں (&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>دوبارہ کریں (&amp;R)</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>منظر (&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Pit</source>
        <translation>گڑھا (&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Drawings</source>
        <translation>نقشے (&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Sheets</source>
        <translation>شیٹیں (&amp;S)</translation>
    </message>
    <message>
        <source>Look from &amp;above and aside</source>
        <translation>اوپر اور پہلو سے دیکھیں (&amp;A)</translation>
    </message>
    <message>
        <source>Look straight d&amp;own</source>
        <translation>سیدھا اوپر سے نیچے دیکھیں (&amp;O)</translation>
    </message>
    <message>
        <source>Look at the &amp;cut</source>
        <translation>کٹا ہوا رخ دیکھیں (&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>اکائیاں (&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Metres</source>
        <translation>میٹر (&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Feet and inches</source>
        <translation>فٹ اور انچ (&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>رنگ (&amp;C)</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>ڈیسک ٹاپ کے مطابق (&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>ہلکا (&amp;L)</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>گہرا (&amp;A)</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>ڈیسک ٹاپ کے مطابق</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>مدد (&amp;H)</translation>
    </message>
    <message>
        <source>&amp;About Tankwright</source>
        <translation>Tankwright کے بارے میں (&amp;A)</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>اوزار</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>پانی (&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation>زمین (&amp;G)</translation>
    </message>
    <message>
        <source>P&amp;ipes</source>
        <translation>پائپ (&amp;I)</translation>
    </message>
    <message>
        <source>Wor&amp;ks</source>
        <translation>تعمیر (&amp;K)</translation>
    </message>
    <message>
        <source>&amp;Money</source>
        <translation>رقم (&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Options</source>
        <translation>متبادل (&amp;O)</translation>
    </message>
    <message>
        <source>Open from s&amp;hort form…</source>
        <translation>مختصر شکل سے کھولیں (&amp;H)…</translation>
    </message>
    <message>
        <source>&amp;Copy the design in short form</source>
        <translation>ڈیزائن کی مختصر شکل کاپی کریں (&amp;C)</translation>
    </message>
    <message>
        <source>Group &amp;view, whole screen</source>
        <translation>گروپ کا منظر، پوری اسکرین (&amp;V)</translation>
    </message>
    <message>
        <source>No&amp;tes</source>
        <translation>نوٹ (&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>زبان (&amp;L)</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>زبان کے مطابق</translation>
    </message>
    <message>
        <source>&amp;Numbers and dates</source>
        <translation>اعداد اور تاریخیں (&amp;N)</translation>
    </message>
</context>
<context>
    <name>ui::BillPanel</name>
    <message>
        <source> then </source>
        <translation> پھر </translation>
    </message>
    <message>
        <source>Use this thickness</source>
        <translation>یہ موٹائی استعمال کریں</translation>
    </message>
    <message>
        <source>Use this mix</source>
        <translation>یہ تناسب استعمال کریں</translation>
    </message>
    <message>
        <source>Enter the bill people reckon with today (at the left) to see it beside this one.</source>
        <translation>آج کل لوگ جو حساب لگاتے ہیں وہ (بائیں طرف) درج کریں تو وہ اس کے ساتھ نظر آئے گا۔</translation>
    </message>
    <message>
        <source>bill</source>
        <translation>رواجی</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>نکالا ہوا</translation>
    </message>
    <message>
        <source>  area × thickness</source>
        <translation>  رقبہ × موٹائی</translation>
    </message>
    <message>
        <source>Trust thickness and mix: cement %1 (area × thickness: %2).</source>
        <translation>موٹائی اور تناسب پر بھروسا: سیمنٹ %1 (رقبہ × موٹائی: %2)۔</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: coats of %1 (area × thickness: %2).</source>
        <translation>رواجی حساب کے سیمنٹ اور تناسب پر بھروسا: کوٹ %1 کے (رقبہ × موٹائی: %2)۔</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: no thickness answers to them.</source>
        <translation>رواجی حساب کے سیمنٹ اور تناسب پر بھروسا: ان سے کوئی موٹائی نہیں نکلتی۔</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: mix %1, soil : sand : cement (area × thickness: %2).</source>
        <translation>رواجی حساب کے سیمنٹ اور موٹائی پر بھروسا: تناسب %1، مٹی : ریت : سیمنٹ (رقبہ × موٹائی: %2)۔</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: no mix answers to them.</source>
        <translation>رواجی حساب کے سیمنٹ اور موٹائی پر بھروسا: ان سے کوئی تناسب نہیں نکلتا۔</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>نسبت</translation>
    </message>
</context>
<context>
    <name>ui::BillTable</name>
    <message>
        <source>The bill</source>
        <translation>تخمینہ</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>مد</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>مقدار</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>قیمت</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>رقم</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>مفت حصہ</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>ادا</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>بوجھ</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>ڈھلائی</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>ڈھلائی، کل</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>غیر متوقع خرچ</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>کل</translation>
    </message>
</context>
<context>
    <name>ui::ChartView</name>
    <message>
        <source>Point at the chart, or walk through it with the arrow keys.</source>
        <translation>گراف پر ماؤس لے جائیں، یا تیر والی کیز سے اس پر چلیں۔</translation>
    </message>
</context>
<context>
    <name>ui::ChoiceRow</name>
    <message>
        <source>not known</source>
        <translation>معلوم نہیں</translation>
    </message>
</context>
<context>
    <name>ui::CoatsPanel</name>
    <message>
        <source>Add a coat</source>
        <translation>کوٹ شامل کریں</translation>
    </message>
    <message>
        <source>Adds a coat on the water side, like the last one</source>
        <translation>پانی کی طرف ایک کوٹ بڑھاتا ہے، آخری کوٹ جیسا</translation>
    </message>
    <message>
        <source>%1, against the earth</source>
        <translation>%1، مٹی کے ساتھ لگا</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>%1 نکالیں</translation>
    </message>
    <message>
        <source>Take out a coat</source>
        <translation>کوٹ نکالیں</translation>
    </message>
</context>
<context>
    <name>ui::CutControls</name>
    <message>
        <source>&amp;Cut open</source>
        <translation>کاٹ کر دکھائیں (&amp;C)</translation>
    </message>
    <message>
        <source>along</source>
        <translation>لمبائی میں</translation>
    </message>
    <message>
        <source>across</source>
        <translation>چوڑائی میں</translation>
    </message>
    <message>
        <source>Direction of the cut: along the length or across it</source>
        <translation>کاٹ کا رخ: لمبائی کے ساتھ یا چوڑائی میں</translation>
    </message>
    <message>
        <source>Direction of the cut</source>
        <translation>کاٹ کا رخ</translation>
    </message>
    <message>
        <source>Place of the cut; the middle of the slider is the middle of the tank</source>
        <translation>کاٹ کی جگہ؛ سلائیڈر کا درمیان ٹینکی کا درمیان ہے</translation>
    </message>
    <message>
        <source>Place of the cut</source>
        <translation>کاٹ کی جگہ</translation>
    </message>
</context>
<context>
    <name>ui::DeliveryPanel</name>
    <message>
        <source>Plan pipes and overflow</source>
        <translation>پائپ اور اوور فلو کا منصوبہ بنائیں</translation>
    </message>
    <message>
        <source>How does the water come, and where does too much of it go?</source>
        <translation>پانی کیسے آتا ہے، اور زیادہ ہو تو کہاں جاتا ہے؟</translation>
    </message>
    <message>
        <source>Heads along the line</source>
        <translation>پائپ لائن پر ہیڈ</translation>
    </message>
    <message>
        <source>Water level while the line runs wide open</source>
        <translation>پائپ لائن پوری کھلی ہو تو پانی کا لیول</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>ذریعے سے</translation>
    </message>
    <message>
        <source>The way of the pipe, from its inlet at the source to its end at the tank</source>
        <translation>پائپ کا راستہ، ذریعے پر داخلے سے ٹینکی پر سرے تک</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>کھیت تک</translation>
    </message>
    <message>
        <source>The way of the pipe, from the rim of the tank to the outlets</source>
        <translation>پائپ کا راستہ، ٹینکی کے اوپری کنارے سے نکاس تک</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>اوور فلو</translation>
    </message>
    <message>
        <source>Water at the rim in a storm</source>
        <translation>طوفانی بارش میں اوپری کنارے پر پانی</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>گاد کی حوضی</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>لیکیج ٹیسٹ</translation>
    </message>
</context>
<context>
    <name>ui::DrawingsPanel</name>
    <message>
        <source>Drawing of the tank</source>
        <translation>ٹینکی کا نقشہ</translation>
    </message>
    <message>
        <source>Plan and section</source>
        <translation>اوپر کا نقشہ اور سیکشن</translation>
    </message>
    <message>
        <source>Setting-out</source>
        <translation>لے آؤٹ</translation>
    </message>
    <message>
        <source>Foot of the wall</source>
        <translation>دیوار کی جڑ</translation>
    </message>
    <message>
        <source>Sections A-A and B-B</source>
        <translation>سیکشن A-A اور B-B</translation>
    </message>
</context>
<context>
    <name>ui::EditorPanel</name>
    <message>
        <source>Plan people and dates</source>
        <translation>لوگوں اور تاریخوں کا منصوبہ بنائیں</translation>
    </message>
    <message>
        <source>Place and soil</source>
        <translation>جگہ اور مٹی</translation>
    </message>
    <message>
        <source>Tank, finished inside</source>
        <translation>ٹینکی، اندر کے تیار ناپ</translation>
    </message>
    <message>
        <source>Stone bed and coats</source>
        <translation>پتھر کی سولنگ اور کوٹ</translation>
    </message>
    <message>
        <source>Materials and measures</source>
        <translation>سامان اور ناپ</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>رواجی حساب</translation>
    </message>
    <message>
        <source>People and dates</source>
        <translation>لوگ اور تاریخیں</translation>
    </message>
    <message>
        <source>Smallest tank recommended</source>
        <translation>سب سے چھوٹی تجویز کردہ ٹینکی</translation>
    </message>
    <message>
        <source>Roof, ground and losses</source>
        <translation>چھت، زمین اور پانی کا نقصان</translation>
    </message>
    <message>
        <source>Needs and target</source>
        <translation>ضرورتیں اور ہدف</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>موسم</translation>
    </message>
    <message>
        <source>Override by a licensed engineer</source>
        <translation>لائسنس یافتہ انجینئر کی خصوصی اجازت</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>زمین اور پلیٹ فارم</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>ذریعے سے آنے والا پائپ</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>کھیت کو جانے والا پائپ</translation>
    </message>
    <message>
        <source>Overflow and spill path</source>
        <translation>اوور فلو اور فالتو پانی کا راستہ</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>گاد کی حوضی</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>لیکیج ٹیسٹ</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>پہلی بار پانی بھرنا</translation>
    </message>
    <message>
        <source>Loads and money</source>
        <translation>بوجھ اور رقم</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>تلاش کی حدیں</translation>
    </message>
</context>
<context>
    <name>ui::Explained</name>
    <message>
        <source>From: %1</source>
        <translation>ان سے: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>حوالہ: %1</translation>
    </message>
    <message>
        <source>How is this reckoned?</source>
        <translation>اس کا حساب کیسے لگا؟</translation>
    </message>
    <message>
        <source>How is this reckoned? %1</source>
        <translation>اس کا حساب کیسے لگا؟ %1</translation>
    </message>
    <message>
        <source>Unfolded; press to fold</source>
        <translation>کھلا ہے؛ بند کرنے کو دبائیں</translation>
    </message>
    <message>
        <source>Folded; press to unfold</source>
        <translation>بند ہے؛ کھولنے کو دبائیں</translation>
    </message>
    <message>
        <source>There is no number to reckon yet.</source>
        <translation>ابھی حساب کرنے کو کوئی عدد نہیں۔</translation>
    </message>
</context>
<context>
    <name>ui::Export</name>
    <message>
        <source>The ending of “%1” is not one of %2.</source>
        <translation>”%1“ کا آخری حصہ ان میں سے نہیں: %2۔</translation>
    </message>
    <message>
        <source>Keep the bare walls wet</source>
        <translation>ننگی دیواریں گیلی رکھیں</translation>
    </message>
</context>
<context>
    <name>ui::FieldRow</name>
    <message>
        <source>This would do now: press Enter to use it, Escape to leave it.</source>
        <translation>یہ اس وقت ٹھیک رہے گا: استعمال کرنے کو Enter دبائیں، چھوڑنے کو Escape۔</translation>
    </message>
</context>
<context>
    <name>ui::FiguresPanel</name>
    <message>
        <source>To look out for</source>
        <translation>دھیان رکھنے کی باتیں</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>رواجی حساب</translation>
    </message>
</context>
<context>
    <name>ui::FindingsList</name>
    <message>
        <source>show</source>
        <translation>دکھائیں</translation>
    </message>
</context>
<context>
    <name>ui::FlagRow</name>
    <message>
        <source>not known</source>
        <translation>معلوم نہیں</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ہاں</translation>
    </message>
    <message>
        <source>no</source>
        <translation>نہیں</translation>
    </message>
</context>
<context>
    <name>ui::GroundPanel</name>
    <message>
        <source>The ground seen from above</source>
        <translation>زمین اوپر سے</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>اوپر سے</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>اونچائی کے نقطے</translation>
    </message>
    <message>
        <source>Platform &amp;level</source>
        <translation>پلیٹ فارم کا لیول (&amp;L)</translation>
    </message>
    <message>
        <source>Level of the platform over the ground at the middle of the tank</source>
        <translation>ٹینکی کے درمیان زمین سے پلیٹ فارم کا لیول</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>پلیٹ فارم کا لیول</translation>
    </message>
    <message>
        <source>Cut %1, fill %2</source>
        <translation>کٹائی %1، بھرائی %2</translation>
    </message>
    <message>
        <source>Not possible on this ground</source>
        <translation>اس زمین پر ممکن نہیں</translation>
    </message>
    <message>
        <source>no platform</source>
        <translation>پلیٹ فارم نہیں</translation>
    </message>
</context>
<context>
    <name>ui::MainWindow</name>
    <message>
        <source>Pit</source>
        <translation>گڑھا</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>نقشے</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>شیٹیں</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>ابھی محفوظ نہیں</translation>
    </message>
    <message>
        <source>%1[*] – Tankwright</source>
        <translation>%1[*] – Tankwright</translation>
    </message>
    <message>
        <source>%1 (%2)[*] – Tankwright</source>
        <translation>%1 (%2)[*] – Tankwright</translation>
    </message>
    <message>
        <source>About Tankwright</source>
        <translation>Tankwright کے بارے میں</translation>
    </message>
    <message>
        <source>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;Plans small hand-dug farm water tanks lined with soil-cement plaster.&lt;/p&gt;&lt;p&gt;Digging, cement, lifting and open water can hurt and kill. Local codes and licensed practice come first; this program does not replace them.&lt;/p&gt;</source>
        <translation>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;ہاتھ سے کھودی گئی، مٹی سیمنٹ کے پلستر کی لائننگ والی کھیت کی پانی کی چھوٹی ٹینکیوں کا منصوبہ بناتا ہے۔&lt;/p&gt;&lt;p&gt;کھدائی، سیمنٹ، بوجھ اٹھانا اور کھلا پانی زخمی کر سکتے ہیں اور جان لے سکتے ہیں۔ مقامی ضابطے اور لائسنس یافتہ ماہرین کی ہدایت سب سے پہلے ہیں؛ یہ پروگرام ان کی جگہ نہیں لیتا۔&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>کام محفوظ نہیں ہوا</translation>
    </message>
    <message>
        <source>This project has changes that are not saved.</source>
        <translation>اس پراجیکٹ میں تبدیلیاں ہیں جو محفوظ نہیں ہوئیں۔</translation>
    </message>
    <message>
        <source>%1 was not opened.</source>
        <translation>%1 نہیں کھولی گئی۔</translation>
    </message>
    <message>
        <source>%1 is open.</source>
        <translation>%1 کھلی ہے۔</translation>
    </message>
    <message>
        <source>Not saved; your changes are still here.</source>
        <translation>محفوظ نہیں ہوا؛ آپ کی تبدیلیاں ابھی یہیں ہیں۔</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>%1 کے نام سے محفوظ ہوا۔</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>اور %1 مزید</translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation>پراجیکٹ کھولیں</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright);;All files (*)</source>
        <translation>Tankwright کے پراجیکٹ (*.tankwright);;سب فائلیں (*)</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>ٹینکی</translation>
    </message>
    <message>
        <source>Save the project</source>
        <translation>پراجیکٹ محفوظ کریں</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright)</source>
        <translation>Tankwright کے پراجیکٹ (*.tankwright)</translation>
    </message>
    <message>
        <source>Sheets as PDF (*.pdf)</source>
        <translation>شیٹیں PDF میں (*.pdf)</translation>
    </message>
    <message>
        <source>Tables as CSV (*.csv)</source>
        <translation>جدول CSV میں (*.csv)</translation>
    </message>
    <message>
        <source>Solids as STL (*.stl)</source>
        <translation>ٹھوس شکلیں STL میں (*.stl)</translation>
    </message>
    <message>
        <source>Solids as glTF (*.glb)</source>
        <translation>ٹھوس شکلیں glTF میں (*.glb)</translation>
    </message>
    <message>
        <source>Plan and section (*.svg)</source>
        <translation>اوپر کا نقشہ اور سیکشن (*.svg)</translation>
    </message>
    <message>
        <source>Picture of the pit (*.png)</source>
        <translation>گڑھے کی تصویر (*.png)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>ایکسپورٹ</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>%1 لکھی جا رہی ہے…</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>لکھی گئی: %1۔</translation>
    </message>
    <message>
        <source>%1 was not written. %2</source>
        <translation>%1 نہیں لکھی گئی۔ %2</translation>
    </message>
    <message>
        <source>a project without a name</source>
        <translation>بے نام پراجیکٹ</translation>
    </message>
    <message>
        <source>The program stopped before %1 was saved. What you had at %2 is kept.</source>
        <translation>%1 محفوظ ہونے سے پہلے پروگرام رک گیا۔ %2 پر جو آپ کے پاس تھا وہ رکھا ہوا ہے۔</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>وہیں سے دوبارہ شروع کریں</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>پھینک دیں</translation>
    </message>
    <message>
        <source>The kept work cannot be used.</source>
        <translation>رکھا ہوا کام استعمال نہیں ہو سکتا۔</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>پانی</translation>
    </message>
    <message>
        <source>Read a daily record</source>
        <translation>روزانہ ریکارڈ پڑھیں</translation>
    </message>
    <message>
        <source>Tables with date, rain_mm, t_min_c, t_max_c (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>جدول جن میں date, rain_mm, t_min_c, t_max_c ہوں (*.csv *.txt *.tsv);;سب فائلیں (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 نہیں پڑھی جا سکتی: %2</translation>
    </message>
    <message>
        <source>%1 was not taken; nothing has changed.</source>
        <translation>%1 نہیں لی گئی؛ کچھ نہیں بدلا۔</translation>
    </message>
    <message>
        <source>%1: %2 taken.</source>
        <translation>%1: %2 لیے گئے۔</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>زمین</translation>
    </message>
    <message>
        <source>Pipes</source>
        <translation>پائپ</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>ریڈنگ %1</translation>
    </message>
    <message>
        <source>Read spot heights</source>
        <translation>اونچائی کے نقطے پڑھیں</translation>
    </message>
    <message>
        <source>Joining %1 spot heights to triangles</source>
        <translation>اونچائی کے %1 نقطے تکونوں میں جوڑے جا رہے ہیں</translation>
    </message>
    <message>
        <source>Tables with east, north, height in metres (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>جدول جن میں مشرق، شمال، اونچائی میٹر میں ہوں (*.csv *.txt *.tsv);;سب فائلیں (*)</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>تعمیر</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>رقم</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>متبادل</translation>
    </message>
    <message>
        <source>Read a district file</source>
        <translation>ضلع کی فائل پڑھیں</translation>
    </message>
    <message>
        <source>District files (*.district);;All files (*)</source>
        <translation>ضلع کی فائلیں (*.district);;سب فائلیں (*)</translation>
    </message>
    <message>
        <source>Write a district file</source>
        <translation>ضلع کی فائل لکھیں</translation>
    </message>
    <message>
        <source>District files (*.district)</source>
        <translation>ضلع کی فائلیں (*.district)</translation>
    </message>
    <message>
        <source>%1: prices, records and rates taken.</source>
        <translation>%1: قیمتیں، ریکارڈ اور کام کی رفتار لے لی گئیں۔</translation>
    </message>
    <message>
        <source>%1 was not written.</source>
        <translation>%1 نہیں لکھی گئی۔</translation>
    </message>
    <message>
        <source>Dates for a calendar (*.ics)</source>
        <translation>کیلنڈر کے لیے تاریخیں (*.ics)</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>نوٹ</translation>
    </message>
    <message>
        <source>The short form was not taken.</source>
        <translation>مختصر شکل قبول نہیں ہوئی۔</translation>
    </message>
    <message>
        <source>The design is there. What a short form does not hold is as in a new project.</source>
        <translation>ڈیزائن آ گیا۔ جو مختصر شکل میں نہیں ہوتا، وہ نئے پراجیکٹ جیسا ہے۔</translation>
    </message>
    <message>
        <source>Open from short form</source>
        <translation>مختصر شکل سے کھولیں</translation>
    </message>
    <message>
        <source>Type, paste or scan the line from the cover sheet:</source>
        <translation>پہلی شیٹ والی سطر ٹائپ، پیسٹ یا اسکین کریں:</translation>
    </message>
    <message>
        <source>The short form can be pasted into a message.</source>
        <translation>مختصر شکل پیغام میں پیسٹ کی جا سکتی ہے۔</translation>
    </message>
</context>
<context>
    <name>ui::MessageBar</name>
    <message>
        <source>Close this message</source>
        <translation>یہ پیغام بند کریں</translation>
    </message>
</context>
<context>
    <name>ui::MoneyPanel</name>
    <message>
        <source>What does it cost, and who gives what?</source>
        <translation>خرچ کتنا ہے، اور کون کیا دیتا ہے؟</translation>
    </message>
    <message>
        <source>Plan the money</source>
        <translation>رقم کا منصوبہ بنائیں</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>تخمینہ</translation>
    </message>
    <message>
        <source>Prices. A quantity that is left empty comes from the plan.</source>
        <translation>قیمتیں۔ خالی چھوڑی گئی مقدار منصوبے سے آتی ہے۔</translation>
    </message>
    <message>
        <source>Read a district file…</source>
        <translation>ضلع کی فائل پڑھیں…</translation>
    </message>
    <message>
        <source>Write a district file…</source>
        <translation>ضلع کی فائل لکھیں…</translation>
    </message>
    <message>
        <source>Money by day</source>
        <translation>دن کے حساب سے رقم</translation>
    </message>
    <message>
        <source>Money needed on each day</source>
        <translation>ہر دن درکار رقم</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>لائننگیں</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>لائننگیں، سالانہ خرچ کے لحاظ سے</translation>
    </message>
    <message>
        <source>How sure is it?</source>
        <translation>یہ کتنا پکا ہے؟</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>حساب لگ رہا ہے…</translation>
    </message>
    <message>
        <source>What the chart is about</source>
        <translation>گراف کس بارے میں ہے</translation>
    </message>
    <message>
        <source>Spread of one outcome and what drives it</source>
        <translation>ایک نتیجے کا فرق اور وہ کس چیز سے آتا ہے</translation>
    </message>
    <message>
        <source>How far each may lie from the value in force</source>
        <translation>ہر ایک لاگو قدر سے کتنی دور ہو سکتا ہے</translation>
    </message>
    <message>
        <source>Price of the lining alone, digging left out. For soil-cement an empty price is reckoned from the bill and the works.</source>
        <translation>صرف لائننگ کی قیمت، کھدائی کے بغیر۔ مٹی سیمنٹ کی خالی قیمت تخمینے اور تعمیر سے نکالی جاتی ہے۔</translation>
    </message>
</context>
<context>
    <name>ui::NotesPanel</name>
    <message>
        <source>In short</source>
        <translation>مختصر بات</translation>
    </message>
    <message>
        <source>Put these in place of what was entered</source>
        <translation>جو درج تھا اس کی جگہ یہ رکھیں</translation>
    </message>
    <message>
        <source>Put the notes in place</source>
        <translation>نوٹ لاگو کریں</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>بہاؤ</translation>
    </message>
    <message>
        <source>Ask in the tab Water whether the water lasts.</source>
        <translation>ٹیب ”پانی“ میں پوچھیں کہ پانی پورا پڑتا ہے یا نہیں۔</translation>
    </message>
    <message>
        <source>No flow measured yet.</source>
        <translation>ابھی کوئی بہاؤ نہیں ناپا گیا۔</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>بالٹی اور گھڑی: دیکھیں کہ برتن بھرنے میں کتنا وقت لگتا ہے، تین بار سے زیادہ</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>جار</translation>
    </message>
    <message>
        <source>Layers of soil settled in a jar, read with a ruler</source>
        <translation>جار میں بیٹھی مٹی کی تہیں، پیمانے سے پڑھی ہوئی</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>گولی اور ربن</translation>
    </message>
    <message>
        <source>Moist soil squeezed to a ball and pushed to a ribbon</source>
        <translation>نم مٹی، دبا کر گولی اور دھکیل کر ربن بنائی</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>آزمائشی گڑھے</translation>
    </message>
    <message>
        <source>Layers of the test pits, from the ground down</source>
        <translation>آزمائشی گڑھوں کی تہیں، زمین سے نیچے کو</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>ڈھلان</translation>
    </message>
    <message>
        <source>Settings of the hose level, one after the other down the fall</source>
        <translation>لیول پائپ کی پیمائشیں، ایک کے بعد ایک، ڈھلان کی طرف نیچے کو</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>لیکیج</translation>
    </message>
    <message>
        <source>Plan pipes and overflow in the tab Pipes first.</source>
        <translation>پہلے ٹیب ”پائپ“ میں پائپ اور اوور فلو کا منصوبہ بنائیں۔</translation>
    </message>
</context>
<context>
    <name>ui::NumberRow</name>
    <message>
        <source>by soil</source>
        <translation>مٹی کے مطابق</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>معلوم نہیں</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
</context>
<context>
    <name>ui::OptionsPanel</name>
    <message>
        <source>Side by side</source>
        <translation>ساتھ ساتھ</translation>
    </message>
    <message>
        <source>The options side by side at one scale</source>
        <translation>متبادل ساتھ ساتھ، ایک ہی پیمانے پر</translation>
    </message>
    <message>
        <source>Find a size</source>
        <translation>سائز ڈھونڈیں</translation>
    </message>
    <message>
        <source>Try all sizes</source>
        <translation>سب سائز آزمائیں</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>روکیں</translation>
    </message>
    <message>
        <source>Share of the sizes tried</source>
        <translation>آزمائے گئے سائز کا حصہ</translation>
    </message>
    <message>
        <source>Money against years without a dry day</source>
        <translation>رقم کے مقابلے میں وہ سال جن میں کم پانی کا کوئی دن نہیں</translation>
    </message>
    <message>
        <source>%1. Click, or press Enter, to take this size.</source>
        <translation>%1۔ یہ سائز لینے کو کلک کریں، یا Enter دبائیں۔</translation>
    </message>
    <message>
        <source>Take the cheapest that meets the target</source>
        <translation>ہدف پورا کرنے والی سب سے سستی لیں</translation>
    </message>
    <message>
        <source>Take the largest within the limits</source>
        <translation>حدوں کے اندر سب سے بڑی لیں</translation>
    </message>
    <message>
        <source>Sizes within the limits of footprint and depth: %1.</source>
        <translation>گھیری جگہ اور گہرائی کی حدوں کے اندر سائز: %1۔</translation>
    </message>
    <message>
        <source>The limits stand at the left under “Limits of the search”: with ten bags as the limit, this answers what ten bags can build.</source>
        <translation>حدیں بائیں طرف ”تلاش کی حدیں“ کے نیچے ہیں: حد دس بوریاں رکھیں تو یہ بتاتا ہے کہ دس بوریوں سے کیا بن سکتا ہے۔</translation>
    </message>
    <message>
        <source>The project has changed since: try again.</source>
        <translation>اس کے بعد پراجیکٹ بدل گیا ہے: پھر آزمائیں۔</translation>
    </message>
    <message>
        <source>Take a size</source>
        <translation>سائز لیں</translation>
    </message>
    <message>
        <source>The limit on people is not used: people and dates are not part of this project.</source>
        <translation>لوگوں کی حد استعمال نہیں ہوئی: لوگ اور تاریخیں اس پراجیکٹ میں شامل نہیں۔</translation>
    </message>
    <message>
        <source>The limit on money is not used: prices are missing.</source>
        <translation>رقم کی حد استعمال نہیں ہوئی: قیمتیں پوری نہیں۔</translation>
    </message>
</context>
<context>
    <name>ui::OptionsTable</name>
    <message>
        <source>Options side by side</source>
        <translation>متبادل ساتھ ساتھ</translation>
    </message>
    <message>
        <source>Add an option</source>
        <translation>متبادل شامل کریں</translation>
    </message>
    <message>
        <source>Take out the option</source>
        <translation>متبادل نکالیں</translation>
    </message>
    <message>
        <source>Build this one</source>
        <translation>یہ بنائیں</translation>
    </message>
    <message>
        <source>Field in which the options differ</source>
        <translation>خانہ جس میں متبادل الگ ہیں</translation>
    </message>
    <message>
        <source>Differ also in…</source>
        <translation>ان میں بھی الگ…</translation>
    </message>
    <message>
        <source>Build another option</source>
        <translation>دوسرا متبادل بنائیں</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>پہلے جیسا</translation>
    </message>
    <message>
        <source>Field in which options differ</source>
        <translation>خانہ جس میں متبادل الگ ہوں</translation>
    </message>
    <message>
        <source>A, as it stands</source>
        <translation>A، جیسا ہے</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>نام</translation>
    </message>
    <message>
        <source>As A. Type a value to change it.</source>
        <translation>A جیسا۔ بدلنے کو قدر لکھیں۔</translation>
    </message>
    <message>
        <source>Name of an option</source>
        <translation>متبادل کا نام</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>حساب لگ رہا ہے…</translation>
    </message>
</context>
<context>
    <name>ui::PitPanel</name>
    <message>
        <source>&amp;Dimensions</source>
        <translation>ناپ (&amp;D)</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>گڑھا تین رخوں میں (3D)</translation>
    </message>
    <message>
        <source>Oblique</source>
        <translation>ترچھا</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>اوپر کا نقشہ</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>سیکشن</translation>
    </message>
    <message>
        <source>View: %1</source>
        <translation>منظر: %1</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>تہیں</translation>
    </message>
    <message>
        <source>Show and hide the ground, each layer, the water and the person</source>
        <translation>زمین، ہر تہہ، پانی اور آدمی کو دکھائیں یا چھپائیں</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>پانی (&amp;W)</translation>
    </message>
    <message>
        <source>Water level above the finished floor</source>
        <translation>تیار فرش سے اوپر پانی کا لیول</translation>
    </message>
    <message>
        <source>To the overflow</source>
        <translation>اوور فلو تک</translation>
    </message>
    <message>
        <source>%1 deep: %2</source>
        <translation>%1 گہرا: %2</translation>
    </message>
    <message>
        <source>What the water level follows</source>
        <translation>پانی کا لیول کس کے مطابق ہو</translation>
    </message>
    <message>
        <source>level set by hand</source>
        <translation>لیول ہاتھ سے رکھا</translation>
    </message>
    <message>
        <source>day of a middle year</source>
        <translation>درمیانے سال کا دن</translation>
    </message>
    <message>
        <source>day of a dry year</source>
        <translation>خشک سال کا دن</translation>
    </message>
    <message>
        <source>In a dry year the tank holds less than in nine of ten years on each day; the tab Water has the weather</source>
        <translation>خشک سال میں ہر دن ٹینکی میں دس میں سے نو سالوں سے کم پانی ہوتا ہے؛ موسم ٹیب ”پانی“ میں ہے</translation>
    </message>
    <message>
        <source>%1: %2 deep, %3</source>
        <translation>%1: %2 گہرا، %3</translation>
    </message>
</context>
<context>
    <name>ui::PointTable</name>
    <message>
        <source>Clear outline</source>
        <translation>اندر کا خاکہ</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>نقطہ شامل کریں</translation>
    </message>
    <message>
        <source>Remove the point</source>
        <translation>نقطہ نکالیں</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>پیسٹ</translation>
    </message>
</context>
<context>
    <name>ui::RowTable</name>
    <message>
        <source>Add a row</source>
        <translation>قطار شامل کریں</translation>
    </message>
    <message>
        <source>Take out the row</source>
        <translation>یہ قطار نکالیں</translation>
    </message>
    <message>
        <source>Paste cells</source>
        <translation>خانے پیسٹ کریں</translation>
    </message>
    <message>
        <source>Take out a row</source>
        <translation>قطار نکالیں</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>کچھ پیسٹ نہیں ہوا۔</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ہاں</translation>
    </message>
    <message>
        <source>no</source>
        <translation>نہیں</translation>
    </message>
</context>
<context>
    <name>ui::SheetsPanel</name>
    <message>
        <source>Page before</source>
        <translation>پچھلا صفحہ</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>اگلا صفحہ</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>صفحہ</translation>
    </message>
    <message>
        <source>Size of the page on the screen</source>
        <translation>اسکرین پر صفحے کا سائز</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>پورا صفحہ</translation>
    </message>
    <message>
        <source>Export PDF…</source>
        <translation>PDF ایکسپورٹ…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>پرنٹ…</translation>
    </message>
    <message>
        <source>Sheets to print</source>
        <translation>پرنٹ کرنے کی شیٹیں</translation>
    </message>
    <message>
        <source>Tick what is to be printed</source>
        <translation>جو پرنٹ کرنا ہو اس پر نشان لگائیں</translation>
    </message>
    <message>
        <source>Language of the sheets</source>
        <translation>شیٹوں کی زبان</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>کاغذ</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>All</source>
        <translation>سب</translation>
    </message>
    <message>
        <source>Farmers</source>
        <translation>کسان</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>مستری</translation>
    </message>
</context>
<context>
    <name>ui::StageBar</name>
    <message>
        <source>To the stage before</source>
        <translation>پچھلے مرحلے پر</translation>
    </message>
    <message>
        <source>To the next stage</source>
        <translation>اگلے مرحلے پر</translation>
    </message>
    <message>
        <source>Day of the works</source>
        <translation>تعمیر کا دن</translation>
    </message>
    <message>
        <source>Shows the pit as it stands on that day; at the far end the tank is finished</source>
        <translation>دکھاتا ہے کہ اس دن گڑھا کیسا ہو گا؛ آخری سرے پر ٹینکی تیار ہے</translation>
    </message>
    <message>
        <source>&amp;Building</source>
        <translation>تعمیر کے مرحلے (&amp;B)</translation>
    </message>
    <message>
        <source>finished tank</source>
        <translation>تیار ٹینکی</translation>
    </message>
</context>
<context>
    <name>ui::SurveyTable</name>
    <message>
        <source>East</source>
        <translation>مشرق</translation>
    </message>
    <message>
        <source>North</source>
        <translation>شمال</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>اونچائی</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>اور %1 مزید</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>اونچائی کے نقطے</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>نقطہ شامل کریں</translation>
    </message>
    <message>
        <source>Remove points</source>
        <translation>نقطے نکالیں</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>پیسٹ</translation>
    </message>
    <message>
        <source>Read a table…</source>
        <translation>جدول پڑھیں…</translation>
    </message>
    <message>
        <source>Reading the table</source>
        <translation>جدول پڑھا جا رہا ہے</translation>
    </message>
    <message>
        <source>Nothing has changed.</source>
        <translation>کچھ نہیں بدلا۔</translation>
    </message>
    <message>
        <source>Taken off every point: %1 east, %2 north.</source>
        <translation>ہر نقطے سے گھٹایا گیا: %1 مشرق، %2 شمال۔</translation>
    </message>
    <message>
        <source>Paste spot heights</source>
        <translation>اونچائی کے نقطے پیسٹ کریں</translation>
    </message>
    <message>
        <source>Doubtful spot heights</source>
        <translation>اونچائی کے مشکوک نقطے</translation>
    </message>
    <message>
        <source>Puts the copied rows in place of all points: east, north, height, in metres</source>
        <translation>سب نقطوں کی جگہ کاپی کی گئی قطاریں رکھتا ہے: مشرق، شمال، اونچائی، میٹر میں</translation>
    </message>
    <message>
        <source>The tank stood outside the survey and was moved to its middle: %1 east, %2 north.</source>
        <translation>ٹینکی سروے سے باہر تھی اور اس کے درمیان لائی گئی: %1 مشرق، %2 شمال۔</translation>
    </message>
    <message>
        <source>The numbers were taken as metres.</source>
        <translation>اعداد میٹر مانے گئے۔</translation>
    </message>
</context>
<context>
    <name>ui::TaskControls</name>
    <message>
        <source>As usual</source>
        <translation>معمول کے مطابق</translation>
    </message>
    <message>
        <source>The task starts on this day or later</source>
        <translation>کام اس دن یا بعد میں شروع ہوتا ہے</translation>
    </message>
    <message>
        <source>People on the task</source>
        <translation>اس کام پر لوگ</translation>
    </message>
    <message>
        <source>Forget what was wished for this task</source>
        <translation>اس کام کی خواہش بھلا دیں</translation>
    </message>
    <message>
        <source>not before</source>
        <translation>اس سے پہلے نہیں</translation>
    </message>
    <message>
        <source>people</source>
        <translation>لوگ</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>اس سے پہلے نہیں</translation>
    </message>
    <message>
        <source>People on a task</source>
        <translation>کام پر لوگ</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 ہٹائیں</translation>
    </message>
    <message>
        <source>Task as usual</source>
        <translation>کام معمول کے مطابق</translation>
    </message>
    <message>
        <source>Choose a bar to move it or to give it more people.</source>
        <translation>پٹی چنیں، پھر اسے ہٹائیں یا زیادہ لوگ دیں۔</translation>
    </message>
</context>
<context>
    <name>ui::TextRow</name>
    <message>
        <source>year-month-day</source>
        <translation>سال-مہینہ-دن</translation>
    </message>
</context>
<context>
    <name>ui::Waiting</name>
    <message>
        <source>Give up</source>
        <translation>انتظار چھوڑیں</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>روکا جا رہا ہے…</translation>
    </message>
</context>
<context>
    <name>ui::WaterChartsView</name>
    <message>
        <source>Level through the year</source>
        <translation>سال بھر کا لیول</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>آمد اور ضرورت</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>ٹینکی کا سائز اور کیاریاں</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>ذخیرہ</translation>
    </message>
    <message>
        <source>Water in the tank through the year</source>
        <translation>سال بھر ٹینکی میں پانی</translation>
    </message>
    <message>
        <source>Supply and need by month</source>
        <translation>مہینے کے حساب سے آمد اور ضرورت</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank and area of the beds</source>
        <translation>دس میں سے کتنے سال پورا سال پانی، ٹینکی کے سائز اور کیاریوں کے رقبے کے لحاظ سے</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank</source>
        <translation>دس میں سے کتنے سال پورا سال پانی، ٹینکی کے سائز کے لحاظ سے</translation>
    </message>
</context>
<context>
    <name>ui::WaterPanel</name>
    <message>
        <source>Crop %1</source>
        <translation>فصل %1</translation>
    </message>
    <message>
        <source>Ask whether the water lasts</source>
        <translation>پوچھیں کہ پانی پورا پڑے گا یا نہیں</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>گراف</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>ذریعہ</translation>
    </message>
    <message>
        <source>Beds and animals</source>
        <translation>کیاریاں اور جانور</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>موسم</translation>
    </message>
    <message>
        <source>What the tap or spring gives, month by month</source>
        <translation>نلکا یا چشمہ کتنا دیتا ہے، مہینہ بہ مہینہ</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>بالٹی اور گھڑی: دیکھیں کہ برتن بھرنے میں کتنا وقت لگتا ہے، تین بار سے زیادہ</translation>
    </message>
    <message>
        <source>Use the medians as flows</source>
        <translation>درمیانی قدروں کو بہاؤ بنائیں</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>کیاریاں</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>جانور</translation>
    </message>
    <message>
        <source>Crops of your own, beside the table of crops</source>
        <translation>آپ کی اپنی فصلیں، فصلوں کے جدول کے علاوہ</translation>
    </message>
    <message>
        <source>Means of many years, month by month</source>
        <translation>کئی سالوں کی اوسط، مہینہ بہ مہینہ</translation>
    </message>
    <message>
        <source>Read a daily record…</source>
        <translation>روزانہ ریکارڈ پڑھیں…</translation>
    </message>
    <message>
        <source>Take the record out</source>
        <translation>ریکارڈ نکال دیں</translation>
    </message>
    <message>
        <source>Enter the latitude and the weather, and the answer stands here.</source>
        <translation>عرض بلد اور موسم درج کریں تو جواب یہاں آئے گا۔</translation>
    </message>
    <message>
        <source>Will the water last the dry season?</source>
        <translation>کیا پانی خشک موسم میں پورا پڑے گا؟</translation>
    </message>
    <message>
        <source>Enter the weather, and the answer stands here.</source>
        <translation>موسم درج کریں تو جواب یہاں آئے گا۔</translation>
    </message>
    <message>
        <source>Enter the latitude, and the answer stands here.</source>
        <translation>عرض بلد درج کریں تو جواب یہاں آئے گا۔</translation>
    </message>
</context>
<context>
    <name>ui::WorksPanel</name>
    <message>
        <source>Who does what, when, and can each coat be finished in a day?</source>
        <translation>کون کیا اور کب کرے، اور کیا ہر کوٹ ایک دن میں ختم ہو سکتا ہے؟</translation>
    </message>
    <message>
        <source>Plan labour and dates</source>
        <translation>محنت اور تاریخوں کا منصوبہ بنائیں</translation>
    </message>
    <message>
        <source>Bars of all tasks over the days</source>
        <translation>سب کاموں کی پٹیاں، دنوں پر</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>تاریخیں</translation>
    </message>
    <message>
        <source>People</source>
        <translation>لوگ</translation>
    </message>
    <message>
        <source>People on each day</source>
        <translation>ہر دن کے لوگ</translation>
    </message>
    <message>
        <source>Days on which nobody works, besides the rest day of the week</source>
        <translation>دن جن پر کوئی کام نہیں کرتا، ہفتے کی چھٹی کے علاوہ</translation>
    </message>
    <message>
        <source>Wishes for single tasks: dragging a bar makes one</source>
        <translation>الگ الگ کاموں کی خواہشیں: پٹی کھینچنے سے بن جاتی ہے</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>کوٹ ایک ہی بار میں</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>پہلی بار پانی بھرنا</translation>
    </message>
    <message>
        <source>There is no coat to fill after.</source>
        <translation>کوئی کوٹ نہیں جس کے بعد پانی بھرا جائے۔</translation>
    </message>
    <message>
        <source>Water level and wet walls, day by day</source>
        <translation>پانی کا لیول اور گیلی دیواریں، دن بہ دن</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>موسم</translation>
    </message>
    <message>
        <source>Enter the weather in the tab Water, and the weeks stand here.</source>
        <translation>ٹیب ”پانی“ میں موسم درج کریں تو ہفتے یہاں آئیں گے۔</translation>
    </message>
    <message>
        <source>Chance of undisturbed coats in each week of the year</source>
        <translation>سال کے ہر ہفتے میں کوٹ سلامت رہنے کا امکان</translation>
    </message>
    <message>
        <source>Start so that the coats fall in the best week</source>
        <translation>ایسے شروع کریں کہ کوٹ بہترین ہفتے میں آئیں</translation>
    </message>
    <message>
        <source>Best start</source>
        <translation>بہترین آغاز</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>موقع پر ناپا گیا</translation>
    </message>
    <message>
        <source>Trial batches: mix one, put it on, measure what it covers</source>
        <translation>آزمائشی گھانیاں: ایک بنائیں، لگائیں، ناپیں کتنا ڈھکتی ہے</translation>
    </message>
    <message>
        <source>Work done and the person-days it took</source>
        <translation>کیا ہوا کام اور اس پر لگی دیہاڑیاں</translation>
    </message>
    <message>
        <source>The district&apos;s own rates, person-days for each unit of work</source>
        <translation>ضلع کی اپنی کام کی رفتار، ہر اکائی کام پر دیہاڑیاں</translation>
    </message>
    <message>
        <source>Change between the records and what is entered</source>
        <translation>ریکارڈ اور درج قدروں کے بیچ بدلیں</translation>
    </message>
    <message>
        <source>Records in force</source>
        <translation>لاگو ریکارڈ</translation>
    </message>
</context>
<context>
    <name>ui::group::GroupView</name>
    <message>
        <source>Blank</source>
        <translation>خالی اسکرین</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>گڑھا تین رخوں میں (3D)</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>گنجائش</translation>
    </message>
    <message>
        <source>Water all year</source>
        <translation>پورا سال پانی</translation>
    </message>
    <message>
        <source>Usable</source>
        <translation>قابلِ استعمال</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>سیمنٹ</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>خرچ</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>محنت</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>چلائیں</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>دن</translation>
    </message>
    <message>
        <source>1 Size</source>
        <translation>1 سائز</translation>
    </message>
    <message>
        <source>2 Options</source>
        <translation>2 متبادل</translation>
    </message>
    <message>
        <source>3 Building</source>
        <translation>3 تعمیر</translation>
    </message>
    <message>
        <source>4 Water</source>
        <translation>4 پانی</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>باہر نکلیں</translation>
    </message>
    <message>
        <source>Group view – Tankwright</source>
        <translation>گروپ کا منظر – Tankwright</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <comment>years</comment>
        <translation>10 میں سے %1</translation>
    </message>
    <message>
        <source>%1, in a dry year: %2 in the tank</source>
        <translation>%1، سوکھے سال میں: ٹینکی میں %2</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>رکیں</translation>
    </message>
</context>
<context>
    <name>ui::group::OptionsStrip</name>
    <message>
        <source>There are no options yet: the tab Options adds them.</source>
        <translation>ابھی کوئی متبادل نہیں: ٹیب ”متبادل“ میں شامل کریں۔</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>گنجائش</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>سیمنٹ</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>خرچ</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>محنت</translation>
    </message>
</context>
<context>
    <name>ui::words</name>
    <message>
        <source>level</source>
        <translation>ہموار</translation>
    </message>
    <message>
        <source>even slope</source>
        <translation>ایک جیسی ڈھلان</translation>
    </message>
    <message>
        <source>surveyed spot heights</source>
        <translation>سروے کے اونچائی کے نقطے</translation>
    </message>
    <message>
        <source>stiff clay</source>
        <translation>سخت چکنی مٹی</translation>
    </message>
    <message>
        <source>firm loam</source>
        <translation>ٹھوس میرا مٹی</translation>
    </message>
    <message>
        <source>sandy</source>
        <translation>ریتلی</translation>
    </message>
    <message>
        <source>loose fill</source>
        <translation>کچی بھرائی</translation>
    </message>
    <message>
        <source>soft and wet</source>
        <translation>نرم اور گیلی</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>چٹان</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>مستطیل</translation>
    </message>
    <message>
        <source>round</source>
        <translation>گول</translation>
    </message>
    <message>
        <source>polygon</source>
        <translation>کئی کونوں والی</translation>
    </message>
    <message>
        <source>finished floor</source>
        <translation>تیار فرش</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>اوپری کنارہ</translation>
    </message>
    <message>
        <source>none</source>
        <translation>کوئی نہیں</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>پیر</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>منگل</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>بدھ</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>جمعرات</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>جمعہ</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>ہفتہ</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>اتوار</translation>
    </message>
    <message>
        <source>Name of the tank as it shall stand on every sheet.</source>
        <translation>ٹینکی کا نام، جیسا ہر شیٹ پر لکھا جائے۔</translation>
    </message>
    <message>
        <source>Village and field where the tank is dug.</source>
        <translation>گاؤں اور کھیت جہاں ٹینکی کھودی جائے گی۔</translation>
    </message>
    <message>
        <source>Who made this plan and answers questions about it.</source>
        <translation>یہ منصوبہ کس نے بنایا اور اس پر سوالوں کا جواب کون دیتا ہے۔</translation>
    </message>
    <message>
        <source>Short name of the money used, for example Rs.</source>
        <translation>استعمال ہونے والی کرنسی کا چھوٹا نام، مثلاً Rs۔</translation>
    </message>
    <message>
        <source>Degrees north of the equator; south is negative. Leave empty if not known.</source>
        <translation>خطِ استوا سے شمال کی طرف ڈگری؛ جنوب منفی ہے۔ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>From a map or a phone, at the tank. Leave empty if not known.</source>
        <translation>نقشے یا فون سے، ٹینکی کی جگہ پر۔ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>How the natural ground lies where the tank is dug, before any levelling.</source>
        <translation>ٹینکی کی کھدائی کی جگہ قدرتی زمین کیسی ہے، ہموار کرنے سے پہلے۔</translation>
    </message>
    <message>
        <source>Drop of the natural ground straight downhill over 100 of level distance.</source>
        <translation>ڈھلان کی طرف ہموار فاصلے کے ہر 100 پر قدرتی زمین کتنی نیچے اترتی ہے۔</translation>
    </message>
    <message>
        <source>Compass direction in which water would run off: north 0, east 90, south 180.</source>
        <translation>قطب نما کا وہ رخ جدھر پانی بہے گا: شمال 0، مشرق 90، جنوب 180۔</translation>
    </message>
    <message>
        <source>The weakest soil found in the trial pit down to the pit floor; choose “not known” rather than guess.</source>
        <translation>آزمائشی گڑھے میں گڑھے کے تلے تک ملی سب سے کمزور مٹی؛ اندازہ لگانے کے بجائے ”معلوم نہیں“ چنیں۔</translation>
    </message>
    <message>
        <source>Clay in the soil used for plaster, from a jar test. Leave empty if not known.</source>
        <translation>پلستر کی مٹی میں چکنی مٹی کا حصہ، جار ٹیسٹ سے۔ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>From the ground down to ground water at its highest in the year. Leave empty if not known.</source>
        <translation>زمین سے زیرِ زمین پانی تک، جب سال میں سب سے اونچا ہو۔ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Level distance from the pit edge to the nearest terrace edge or bank downhill.</source>
        <translation>گڑھے کے کنارے سے ڈھلان کی طرف سب سے قریبی سیڑھی کھیت یا کھائی کے کنارے تک ہموار فاصلہ۔</translation>
    </message>
    <message>
        <source>Drop of that terrace edge or bank.</source>
        <translation>اُس سیڑھی کھیت یا کھائی کا کنارہ کتنا نیچے اترتا ہے۔</translation>
    </message>
    <message>
        <source>Whether the pit floor, or part of it, lies on rock.</source>
        <translation>کیا گڑھے کا تلا، یا اس کا کچھ حصہ، چٹان پر ہے۔</translation>
    </message>
    <message>
        <source>Level distance to the nearest house, path or shed that escaping water would reach.</source>
        <translation>سب سے قریبی گھر، راستے یا چھپر تک ہموار فاصلہ، جہاں بہہ نکلنے والا پانی پہنچے گا۔</translation>
    </message>
    <message>
        <source>Whether children who cannot yet swim or climb out live or play within 20 m.</source>
        <translation>کیا 20 m کے اندر ایسے بچے رہتے یا کھیلتے ہیں جو ابھی نہ تیر سکتے ہیں نہ خود چڑھ کر باہر آ سکتے ہیں۔</translation>
    </message>
    <message>
        <source>Clear length of the smallest tank that builders here recommend.</source>
        <translation>سب سے چھوٹی ٹینکی کی اندر کی لمبائی جو یہاں کے بنانے والے تجویز کرتے ہیں۔</translation>
    </message>
    <message>
        <source>Clear width of the smallest tank that builders here recommend.</source>
        <translation>سب سے چھوٹی ٹینکی کی اندر کی چوڑائی جو یہاں کے بنانے والے تجویز کرتے ہیں۔</translation>
    </message>
    <message>
        <source>Clear depth of the smallest tank that builders here recommend.</source>
        <translation>سب سے چھوٹی ٹینکی کی اندر کی گہرائی جو یہاں کے بنانے والے تجویز کرتے ہیں۔</translation>
    </message>
    <message>
        <source>Shape of the finished floor seen from above.</source>
        <translation>تیار فرش کی شکل، اوپر سے دیکھیں تو۔</translation>
    </message>
    <message>
        <source>Whether the clear sizes below are those of the finished floor or of the opening at the rim.</source>
        <translation>نیچے دیے گئے اندر کے ناپ تیار فرش کے ہیں یا اوپر کے منہ کے۔</translation>
    </message>
    <message>
        <source>Finished inside length that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>تیار ٹینکی کے اندر کی لمبائی جسے پانی چھوتا ہے، پلستر سے پلستر؛ گڑھا اس سے بڑا کھودا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Finished inside width that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>تیار ٹینکی کے اندر کی چوڑائی جسے پانی چھوتا ہے، پلستر سے پلستر؛ گڑھا اس سے بڑا کھودا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Finished inside diameter that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>تیار ٹینکی کے اندر کا قطر جسے پانی چھوتا ہے، پلستر سے پلستر؛ گڑھا اس سے بڑا کھودا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Corners of the finished inside in plan, anticlockwise, with no corner bent inward.</source>
        <translation>اوپر کے نقشے میں تیار ٹینکی کے اندر کے کونے، گھڑی کی الٹی سمت میں، کوئی کونا اندر کو مڑا نہ ہو۔</translation>
    </message>
    <message>
        <source>Finished floor straight up to the rim; the pit is deeper by the coats and the stone bed.</source>
        <translation>تیار فرش سے سیدھا اوپر اوپری کنارے تک؛ گڑھا کوٹوں اور پتھر کی سولنگ جتنا زیادہ گہرا ہوتا ہے۔</translation>
    </message>
    <message>
        <source>How far the wall leans outward for each unit of height: 0 is upright, 0.10 is 1 in 10.</source>
        <translation>اونچائی کی ہر اکائی پر دیوار کتنی باہر کو جھکی ہے: 0 سیدھی کھڑی، 0.10 یعنی 10 میں 1۔</translation>
    </message>
    <message>
        <source>Rounding of the corners of the clear floor in plan; 0 leaves them sharp.</source>
        <translation>اوپر کے نقشے میں اندر کے فرش کے کونوں کی گولائی؛ 0 سے کونے تیز رہتے ہیں۔</translation>
    </message>
    <message>
        <source>Height from the overflow level, where water runs out, up to the rim.</source>
        <translation>اوور فلو کے لیول سے، جہاں پانی باہر بہتا ہے، اوپری کنارے تک اونچائی۔</translation>
    </message>
    <message>
        <source>Water left above the finished floor that the outlet cannot draw.</source>
        <translation>تیار فرش سے اوپر بچنے والا پانی جو نکاس نہیں نکال سکتا۔</translation>
    </message>
    <message>
        <source>Thickness of the compacted stone under the floor; there is none behind the walls.</source>
        <translation>فرش کے نیچے کوٹے ہوئے پتھر کی موٹائی؛ دیواروں کے پیچھے پتھر نہیں۔</translation>
    </message>
    <message>
        <source>Volume of loose soil, sand and cement that makes one volume of plaster on the wall.</source>
        <translation>کھلی مٹی، ریت اور سیمنٹ کا حجم جس سے دیوار پر پلستر کا ایک حجم بنتا ہے۔</translation>
    </message>
    <message>
        <source>Extra plaster for what falls, sticks to tools or sets before it is placed.</source>
        <translation>فالتو پلستر، اس کے لیے جو گرے، اوزاروں سے چپکے یا لگنے سے پہلے جم جائے۔</translation>
    </message>
    <message>
        <source>Extra for hollows in the dug faces, on the stone bed and on coat 1 alone.</source>
        <translation>کھدی سطحوں کی اونچ نیچ کے لیے فالتو، صرف پتھر کی سولنگ اور کوٹ 1 پر۔</translation>
    </message>
    <message>
        <source>Weight printed on the cement bag sold nearby.</source>
        <translation>قریب بکنے والی سیمنٹ کی بوری پر لکھا وزن۔</translation>
    </message>
    <message>
        <source>Weight of cement poured loose into a gauge box.</source>
        <translation>ناپ کی پیٹی میں کھلا ڈالے گئے سیمنٹ کا وزن۔</translation>
    </message>
    <message>
        <source>Finished thickness of the coat, measured square to the face.</source>
        <translation>کوٹ کی تیار موٹائی، سطح کی گنیا میں ناپی گئی۔</translation>
    </message>
    <message>
        <source>Parts of sieved soil in the mix, by loose volume.</source>
        <translation>مسالے کے تناسب میں چھنی ہوئی مٹی کے حصے، کھلے ناپ سے۔</translation>
    </message>
    <message>
        <source>Parts of sand in the mix, by loose volume.</source>
        <translation>مسالے کے تناسب میں ریت کے حصے، کھلے ناپ سے۔</translation>
    </message>
    <message>
        <source>Parts of cement in the mix, by loose volume.</source>
        <translation>مسالے کے تناسب میں سیمنٹ کے حصے، کھلے ناپ سے۔</translation>
    </message>
    <message>
        <source>Days for which the coat is kept under wet sacks, rest days too.</source>
        <translation>کتنے دن کوٹ گیلے ٹاٹ کے نیچے رکھا جائے، چھٹی کے دن بھی۔</translation>
    </message>
    <message>
        <source>Rounded fillet between clear floor and wall; 0 leaves a sharp corner.</source>
        <translation>اندر کے فرش اور دیوار کے بیچ گولائی؛ 0 سے کونا تیز رہتا ہے۔</translation>
    </message>
    <message>
        <source>Width of the plaster collar let into the ground around the top, outward of the coats; 0 for none.</source>
        <translation>اوپر کے گرد زمین میں لگے پلستر کے کالر کی چوڑائی، کوٹوں سے باہر کی طرف؛ نہ ہو تو 0۔</translation>
    </message>
    <message>
        <source>Thickness of that collar; 0 for none.</source>
        <translation>اس کالر کی موٹائی؛ نہ ہو تو 0۔</translation>
    </message>
    <message>
        <source>Share of soil and sand that stays on the sieve and cannot be used.</source>
        <translation>مٹی اور ریت کا وہ حصہ جو چھلنی پر رہ جاتا ہے اور کام نہیں آتا۔</translation>
    </message>
    <message>
        <source>How much more room damp sand takes than dry sand.</source>
        <translation>گیلی ریت سوکھی ریت سے کتنی زیادہ جگہ لیتی ہے۔</translation>
    </message>
    <message>
        <source>Volume of loose stone to buy for one volume of compacted bed.</source>
        <translation>کوٹی ہوئی سولنگ کے ایک حجم کے لیے خریدنے کو کھلے پتھر کا حجم۔</translation>
    </message>
    <message>
        <source>Water to mix one volume of mortar.</source>
        <translation>مسالے کا ایک حجم بنانے کا پانی۔</translation>
    </message>
    <message>
        <source>Water to keep one unit of plastered face wet for a day.</source>
        <translation>پلستر کی سطح کی ایک اکائی کو ایک دن گیلا رکھنے کا پانی۔</translation>
    </message>
    <message>
        <source>Face that one sack covers once laps are taken off.</source>
        <translation>ایک ٹاٹ کتنی سطح ڈھکتا ہے، اوپر تلے چڑھا حصہ نکال کر۔</translation>
    </message>
    <message>
        <source>Sacks beyond those that just cover the face.</source>
        <translation>اتنے ٹاٹ زیادہ جو بس سطح ڈھکنے سے اوپر ہوں۔</translation>
    </message>
    <message>
        <source>Measure it: fill the box with water from a bottle of known size.</source>
        <translation>ناپ لیں: معلوم ناپ کی بوتل سے پیٹی پانی سے بھریں۔</translation>
    </message>
    <message>
        <source>Measure it: fill the pan level with water from a bottle of known size.</source>
        <translation>ناپ لیں: معلوم ناپ کی بوتل سے تغاری منہ تک پانی سے بھریں۔</translation>
    </message>
    <message>
        <source>Measure it: fill the bucket with water from a bottle of known size.</source>
        <translation>ناپ لیں: معلوم ناپ کی بوتل سے بالٹی پانی سے بھریں۔</translation>
    </message>
    <message>
        <source>Soil for such a tank as people reckon it today; shown beside the computed soil, never mixed with it.</source>
        <translation>ایسی ٹینکی کی مٹی جتنی لوگ آج کل حساب کرتے ہیں؛ نکالے ہوئے حساب کی مٹی کے ساتھ دکھائی جاتی ہے، اس میں کبھی ملائی نہیں جاتی۔</translation>
    </message>
    <message>
        <source>Sand for such a tank as people reckon it today; shown beside the computed sand, never mixed with it.</source>
        <translation>ایسی ٹینکی کی ریت جتنی لوگ آج کل حساب کرتے ہیں؛ نکالے ہوئے حساب کی ریت کے ساتھ دکھائی جاتی ہے، اس میں کبھی ملائی نہیں جاتی۔</translation>
    </message>
    <message>
        <source>Stone for such a tank as people reckon it today; shown beside the computed stone, never mixed with it.</source>
        <translation>ایسی ٹینکی کا پتھر جتنا لوگ آج کل حساب کرتے ہیں؛ نکالے ہوئے حساب کے پتھر کے ساتھ دکھایا جاتا ہے، اس میں کبھی ملایا نہیں جاتا۔</translation>
    </message>
    <message>
        <source>Cement for such a tank as people reckon it today; shown beside the computed cement, never mixed with it.</source>
        <translation>ایسی ٹینکی کا سیمنٹ جتنا لوگ آج کل حساب کرتے ہیں؛ نکالے ہوئے حساب کے سیمنٹ کے ساتھ دکھایا جاتا ہے، اس میں کبھی ملایا نہیں جاتا۔</translation>
    </message>
    <message>
        <source>Masons, mixers and carriers together on a coat; a coat is placed in one go, within the day.</source>
        <translation>ایک کوٹ پر مستری، مسالا بنانے والے اور ڈھونے والے سب ملا کر؛ کوٹ ایک ہی بار میں، اسی دن کے اندر لگتا ہے۔</translation>
    </message>
    <message>
        <source>Nobody digs or plasters on this day; wetting goes on.</source>
        <translation>اس دن کوئی کھدائی یا پلستر نہیں کرتا؛ ترائی جاری رہتی ہے۔</translation>
    </message>
    <message>
        <source>Latest start of the first filling, counted in days after the last coat.</source>
        <translation>پہلی بار پانی بھرنا زیادہ سے زیادہ کب تک شروع ہو، آخری کوٹ کے بعد کے دنوں میں۔</translation>
    </message>
    <message>
        <source>One person&apos;s days to dig and throw out ground as it lies; leave empty to take it from the soil.</source>
        <translation>ٹھوس زمین کھودنے اور باہر پھینکنے میں ایک آدمی کے دن؛ خالی چھوڑیں تو مٹی کے مطابق لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>One person&apos;s days to lay and compact the stone bed.</source>
        <translation>پتھر کی سولنگ بچھانے اور کوٹنے میں ایک آدمی کے دن۔</translation>
    </message>
    <message>
        <source>One person&apos;s days to plaster one coat, helpers counted.</source>
        <translation>ایک کوٹ پلستر کرنے میں ایک آدمی کے دن، مددگار گن کر۔</translation>
    </message>
    <message>
        <source>One person&apos;s days to mix mortar by hand.</source>
        <translation>ہاتھ سے مسالا بنانے میں ایک آدمی کے دن۔</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>عنوان</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>جگہ</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>بنانے والا</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>کرنسی</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>عرض بلد</translation>
    </message>
    <message>
        <source>Height above sea level</source>
        <translation>سطح سمندر سے بلندی</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>زمین</translation>
    </message>
    <message>
        <source>Fall of the ground</source>
        <translation>زمین کی ڈھلوان</translation>
    </message>
    <message>
        <source>Downhill direction</source>
        <translation>ڈھلان کا رخ</translation>
    </message>
    <message>
        <source>Soil of the pit</source>
        <translation>گڑھے کی مٹی</translation>
    </message>
    <message>
        <source>Clay in the soil</source>
        <translation>مٹی میں چکنی مٹی</translation>
    </message>
    <message>
        <source>Depth to ground water</source>
        <translation>زیرِ زمین پانی کی گہرائی</translation>
    </message>
    <message>
        <source>Distance to the terrace edge</source>
        <translation>سیڑھی کھیت کے کنارے تک فاصلہ</translation>
    </message>
    <message>
        <source>Height of the terrace edge</source>
        <translation>سیڑھی کھیت کے کنارے کی اونچائی</translation>
    </message>
    <message>
        <source>Rock in the pit floor</source>
        <translation>گڑھے کے تلے میں چٹان</translation>
    </message>
    <message>
        <source>Distance to the nearest house downhill</source>
        <translation>نیچے سب سے قریبی گھر تک فاصلہ</translation>
    </message>
    <message>
        <source>Small children live within 20 m</source>
        <translation>20 m کے اندر چھوٹے بچے رہتے ہیں</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>شکل</translation>
    </message>
    <message>
        <source>Clear size measured at</source>
        <translation>اندر کے ناپ کہاں کے</translation>
    </message>
    <message>
        <source>Clear length</source>
        <translation>اندر کی لمبائی</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation>اندر کی چوڑائی</translation>
    </message>
    <message>
        <source>Clear diameter</source>
        <translation>اندر کا قطر</translation>
    </message>
    <message>
        <source>Clear outline</source>
        <translation>اندر کا خاکہ</translation>
    </message>
    <message>
        <source>Clear depth, floor to rim</source>
        <translation>اندر کی گہرائی، فرش سے اوپری کنارے تک</translation>
    </message>
    <message>
        <source>Batter of the walls</source>
        <translation>دیواروں کی سلامی</translation>
    </message>
    <message>
        <source>Corner radius, clear floor</source>
        <translation>کونے کا رداس، اندر کا فرش</translation>
    </message>
    <message>
        <source>Freeboard</source>
        <translation>فری بورڈ</translation>
    </message>
    <message>
        <source>Dead depth</source>
        <translation>ڈیڈ لیول</translation>
    </message>
    <message>
        <source>Stone bed, compacted</source>
        <translation>پتھر کی سولنگ، کوٹی ہوئی</translation>
    </message>
    <message>
        <source>Loose ingredients per placed plaster</source>
        <translation>لگے پلستر پر کھلا سامان</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>ضائع مال</translation>
    </message>
    <message>
        <source>Unevenness of dug faces</source>
        <translation>کھدی سطحوں کی ناہمواری</translation>
    </message>
    <message>
        <source>Cement in a bag</source>
        <translation>بوری میں سیمنٹ</translation>
    </message>
    <message>
        <source>Loose weight of cement</source>
        <translation>سیمنٹ کا کھلا وزن</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>موٹائی</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>مٹی</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>ریت</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>سیمنٹ</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>گیلے ٹاٹ کے نیچے دن</translation>
    </message>
    <message>
        <source>Cove radius, floor to wall</source>
        <translation>گولے کا رداس، فرش سے دیوار تک</translation>
    </message>
    <message>
        <source>Rim collar, width</source>
        <translation>کنارے کا کالر، چوڑائی</translation>
    </message>
    <message>
        <source>Rim collar, thickness</source>
        <translation>کنارے کا کالر، موٹائی</translation>
    </message>
    <message>
        <source>Loss in sieving</source>
        <translation>چھاننے میں کمی</translation>
    </message>
    <message>
        <source>Bulking of damp sand</source>
        <translation>گیلی ریت کا پھولنا</translation>
    </message>
    <message>
        <source>Loose stone per compacted bed</source>
        <translation>کوٹی ہوئی سولنگ پر کھلا پتھر</translation>
    </message>
    <message>
        <source>Mixing water</source>
        <translation>مسالا بنانے کا پانی</translation>
    </message>
    <message>
        <source>Curing water</source>
        <translation>ترائی کا پانی</translation>
    </message>
    <message>
        <source>Face covered by one sack</source>
        <translation>ایک ٹاٹ سے ڈھکی سطح</translation>
    </message>
    <message>
        <source>Spare sacks</source>
        <translation>فالتو ٹاٹ</translation>
    </message>
    <message>
        <source>Gauge box holds</source>
        <translation>ناپ کی پیٹی کی گنجائش</translation>
    </message>
    <message>
        <source>Pan holds</source>
        <translation>تغاری کی گنجائش</translation>
    </message>
    <message>
        <source>Bucket holds</source>
        <translation>بالٹی کی گنجائش</translation>
    </message>
    <message>
        <source>Customary bill: soil</source>
        <translation>رواجی حساب: مٹی</translation>
    </message>
    <message>
        <source>Customary bill: sand</source>
        <translation>رواجی حساب: ریت</translation>
    </message>
    <message>
        <source>Customary bill: stone</source>
        <translation>رواجی حساب: پتھر</translation>
    </message>
    <message>
        <source>Customary bill: cement</source>
        <translation>رواجی حساب: سیمنٹ</translation>
    </message>
    <message>
        <source>Smallest recommended clear length</source>
        <translation>اندر کی کم سے کم مناسب لمبائی</translation>
    </message>
    <message>
        <source>Smallest recommended clear width</source>
        <translation>اندر کی کم سے کم مناسب چوڑائی</translation>
    </message>
    <message>
        <source>Smallest recommended clear depth</source>
        <translation>اندر کی کم سے کم مناسب گہرائی</translation>
    </message>
    <message>
        <source>Diggers</source>
        <translation>کھدائی کرنے والے</translation>
    </message>
    <message>
        <source>People on a coat</source>
        <translation>ایک کوٹ پر لوگ</translation>
    </message>
    <message>
        <source>Weekly rest day</source>
        <translation>ہفتے کی چھٹی</translation>
    </message>
    <message>
        <source>Start filling within</source>
        <translation>اتنے دن کے اندر پانی بھرنا شروع</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>کھدائی</translation>
    </message>
    <message>
        <source>Laying the stone bed</source>
        <translation>پتھر کی سولنگ بچھانا</translation>
    </message>
    <message>
        <source>Plastering a coat</source>
        <translation>ایک کوٹ پلستر کرنا</translation>
    </message>
    <message>
        <source>Mixing mortar</source>
        <translation>مسالا بنانا</translation>
    </message>
    <message>
        <source>The tank is smaller than the smallest one that builders recommend: %1 long, %2 wide and %3 deep (clear), which is %4 to the rim.</source>
        <translation>ٹینکی اُس سب سے چھوٹی ٹینکی سے بھی چھوٹی ہے جو بنانے والے مناسب بتاتے ہیں: لمبائی %1، چوڑائی %2، گہرائی %3 (اندر کے ناپ)، یعنی اوپری کنارے تک %4۔</translation>
    </message>
    <message>
        <source>%1 parts of sand to 1 part of soil would reach it.</source>
        <translation>1 حصہ مٹی پر %1 حصے ریت ہو تو یہ پورا ہو جائے گا۔</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together; %3 to %4 is wanted, or the plaster crumbles.</source>
        <translation>%1: اس کی مٹی اور ریت ملا کر دیکھیں تو چکنی مٹی صرف %2 ہے؛ %3 تا %4 چاہیے، ورنہ پلستر جھڑنے لگتا ہے۔</translation>
    </message>
    <message>
        <source>%1: clay is %2 of its soil and sand together; %3 to %4 is wanted, or the plaster shrinks and cracks.</source>
        <translation>%1: اس کی مٹی اور ریت ملا کر دیکھیں تو چکنی مٹی %2 ہے؛ %3 تا %4 چاہیے، ورنہ پلستر سکڑتا ہے اور اس میں دراڑیں پڑتی ہیں۔</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together, and even the soil alone has less than the %3 wanted. Look for a soil with more clay.</source>
        <translation>%1: اس کی مٹی اور ریت ملا کر دیکھیں تو چکنی مٹی صرف %2 ہے، اور اکیلی مٹی میں بھی مطلوبہ %3 سے کم ہے۔ زیادہ چکنی مٹی والی جگہ کی مٹی تلاش کریں۔</translation>
    </message>
    <message>
        <source>The clay in the soil is not known, so the mix cannot be judged. Do a jar test and enter its result.</source>
        <translation>مٹی میں چکنی مٹی کتنی ہے، معلوم نہیں، اس لیے مسالے کا تناسب جانچا نہیں جا سکتا۔ جار ٹیسٹ کریں اور اس کا نتیجہ درج کریں۔</translation>
    </message>
    <message>
        <source>The soil of the pit is not known. Digging is reckoned as for firm loam, and the walls cannot be called safe.</source>
        <translation>گڑھے کی مٹی معلوم نہیں۔ کھدائی کا حساب ٹھوس میرا مٹی مان کر لگایا گیا ہے، اور دیواروں کو محفوظ نہیں کہا جا سکتا۔</translation>
    </message>
    <message>
        <source>%1 is kept wet for %2. Ordinary cement practice is at least %3; shorter curing is reported from tanks of this kind, and leaves the plaster weaker.</source>
        <translation>%1 کو %2 گیلا رکھا جاتا ہے۔ سیمنٹ کے عام کام میں کم از کم %3 رکھتے ہیں؛ اس قسم کی ٹینکیوں میں اس سے کم ترائی بھی سننے میں آئی ہے، مگر اس سے پلستر کمزور رہتا ہے۔</translation>
    </message>
    <message>
        <source>The last coat is kept wet for %1, but filling shall start within %2 of placing it. Keep the walls above the water under wet sacks after filling has begun.</source>
        <translation>آخری کوٹ کو %1 گیلا رکھنا ہے، لیکن پانی بھرنا کوٹ لگنے کے بعد %2 کے اندر شروع ہونا ہے۔ پانی بھرنا شروع ہونے کے بعد بھی پانی سے اوپر کی دیواروں کو گیلے ٹاٹ کے نیچے رکھیں۔</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on a ladder must stand in it while anyone works there. Local codes and licensed practice come first.</source>
        <translation>گڑھا %1 گہرا ہے۔ %2 گہرائی سے آگے، جب تک کوئی اس میں کام کرے، اس میں سیڑھی کھڑی رہنا لازمی ہے۔ مقامی ضابطے اور لائسنس یافتہ ماہرین کی ہدایت سب سے پہلے ہیں۔</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on its walls must be held against cave-in: slope or step them back, or shore them, and let a competent person look at them each day. Local codes and licensed practice come first.</source>
        <translation>گڑھا %1 گہرا ہے۔ %2 گہرائی سے آگے اس کی دیواروں کو گرنے سے روکنا لازمی ہے: انہیں سلامی دے کر یا سیڑھی کی طرح پیچھے کاٹیں، یا ٹیک لگائیں، اور کوئی اہل اور تجربہ کار آدمی روزانہ انہیں دیکھے۔ مقامی ضابطے اور لائسنس یافتہ ماہرین کی ہدایت سب سے پہلے ہیں۔</translation>
    </message>
    <message>
        <source>The pit is %1 deep, more than the %2 that this program allows to be dug by hand. Have an engineer design it, or make the tank shallower and wider.</source>
        <translation>گڑھا %1 گہرا ہے، یعنی اُس %2 سے زیادہ جو یہ پروگرام ہاتھ کی کھدائی کے لیے مانتا ہے۔ اس کا ڈیزائن انجینئر سے کروائیں، یا ٹینکی کم گہری اور زیادہ چوڑی بنائیں۔</translation>
    </message>
    <message>
        <source>The mixes and thicknesses entered need %1 times the cement of the customary bill by exact shells, %2 times by area times thickness. Decide which to trust, thickness, mix or cement; the others follow from your choice.</source>
        <translation>درج تناسب اور موٹائیوں کے لیے رواجی حساب سے %1 گنا سیمنٹ چاہیے (اصل حجم سے)، یا %2 گنا (رقبہ × موٹائی سے)۔ فیصلہ کریں کہ موٹائی، تناسب یا سیمنٹ میں سے کس پر بھروسا ہے؛ باقی آپ کے فیصلے سے نکلیں گے۔</translation>
    </message>
    <message>
        <source>The customary bill has %1 parts of soil to 1 part of sand; the mixes entered need %2. Both cannot be right.</source>
        <translation>رواجی حساب میں 1 حصہ ریت پر %1 حصے مٹی ہے؛ درج تناسب کے لیے %2 چاہیے۔ دونوں ایک ساتھ ٹھیک نہیں ہو سکتے۔</translation>
    </message>
    <message>
        <source>Digging takes %1 by published rate norms and %2 by local practice. Check which fits your diggers before you promise dates.</source>
        <translation>کھدائی پر شائع شدہ معیار سے %1 لگتی ہیں اور مقامی طریقے سے %2۔ تاریخوں کا وعدہ کرنے سے پہلے دیکھیں کہ آپ کے کھدائی کرنے والوں پر کون سا پورا آتا ہے۔</translation>
    </message>
    <message>
        <source>The file&apos;s entry “%1” is not known to this version. It is kept and not used.</source>
        <translation>فائل کے اندراج ”%1“ کو یہ ورژن نہیں جانتا۔ اسے رکھا گیا ہے، استعمال نہیں کیا گیا۔</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>پتھر کی سولنگ</translation>
    </message>
    <message>
        <source>Cove</source>
        <translation>گولا</translation>
    </message>
    <message>
        <source>Rim collar</source>
        <translation>کنارے کا کالر</translation>
    </message>
    <message>
        <source>Dug pit</source>
        <translation>کھودا ہوا گڑھا</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>پانی</translation>
    </message>
    <message>
        <source>Person for scale</source>
        <translation>قد کے اندازے کے لیے آدمی</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>سیمنٹ کی بوریاں</translation>
    </message>
    <message>
        <source>Soil, sieved</source>
        <translation>مٹی، چھنی ہوئی</translation>
    </message>
    <message>
        <source>Stone, loose</source>
        <translation>پتھر، کھلا</translation>
    </message>
    <message>
        <source>Water, all together</source>
        <translation>پانی، کل</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>مسالا بنانے کا پانی</translation>
    </message>
    <message>
        <source>Water for wetting</source>
        <translation>ترائی کا پانی</translation>
    </message>
    <message>
        <source>Sacks to keep wet</source>
        <translation>گیلے رکھنے کے ٹاٹ</translation>
    </message>
    <message>
        <source>Dig the pit</source>
        <translation>گڑھا کھودنا</translation>
    </message>
    <message>
        <source>Lay and compact the stone bed</source>
        <translation>پتھر کی سولنگ بچھانا اور کوٹنا</translation>
    </message>
    <message>
        <source>Keep the coats wet</source>
        <translation>کوٹوں کو گیلا رکھنا</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>اس دن تک پانی بھرنا شروع کریں</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>مزدور</translation>
    </message>
    <message>
        <source>masons and helpers</source>
        <translation>مستری اور مددگار</translation>
    </message>
    <message>
        <source>clear length</source>
        <translation>اندر کی لمبائی</translation>
    </message>
    <message>
        <source>clear width</source>
        <translation>اندر کی چوڑائی</translation>
    </message>
    <message>
        <source>clear diameter</source>
        <translation>اندر کا قطر</translation>
    </message>
    <message>
        <source>clear depth</source>
        <translation>اندر کی گہرائی</translation>
    </message>
    <message>
        <source>pit length</source>
        <translation>گڑھے کی لمبائی</translation>
    </message>
    <message>
        <source>pit width</source>
        <translation>گڑھے کی چوڑائی</translation>
    </message>
    <message>
        <source>pit diameter</source>
        <translation>گڑھے کا قطر</translation>
    </message>
    <message>
        <source>pit depth</source>
        <translation>گڑھے کی گہرائی</translation>
    </message>
    <message>
        <source>Pit floor</source>
        <translation>گڑھے کا تلا</translation>
    </message>
    <message>
        <source>Top of stone bed</source>
        <translation>پتھر کی سولنگ کا اوپر</translation>
    </message>
    <message>
        <source>Overflow level</source>
        <translation>اوور فلو کا لیول</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>اوپری کنارہ</translation>
    </message>
    <message>
        <source>pit corner at ground</source>
        <translation>زمین پر گڑھے کا کونا</translation>
    </message>
    <message>
        <source>offset peg, clear of the pit</source>
        <translation>ہٹا کر لگی کھونٹی، گڑھے سے پرے</translation>
    </message>
    <message>
        <source>pit corner at floor</source>
        <translation>تلے پر گڑھے کا کونا</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>مرکز</translation>
    </message>
    <message>
        <source>centre of the rounded corner</source>
        <translation>گول کونے کا مرکز</translation>
    </message>
    <message>
        <source>mark for the right angle</source>
        <translation>گنیا کا نشان</translation>
    </message>
    <message>
        <source>side</source>
        <translation>ضلع</translation>
    </message>
    <message>
        <source>diagonal</source>
        <translation>وتر</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>رداس</translation>
    </message>
    <message>
        <source>3-4-5 triangle</source>
        <translation>3-4-5 کی تکون</translation>
    </message>
    <message>
        <source>site</source>
        <translation>جگہ</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>ٹینکی</translation>
    </message>
    <message>
        <source>lining</source>
        <translation>لائننگ</translation>
    </message>
    <message>
        <source>water balance</source>
        <translation>پانی کا حساب</translation>
    </message>
    <message>
        <source>labour and dates</source>
        <translation>مزدوری اور تاریخیں</translation>
    </message>
    <message>
        <source>prices and cost</source>
        <translation>قیمتیں اور خرچہ</translation>
    </message>
    <message>
        <source>options side by side</source>
        <translation>متبادل ساتھ ساتھ</translation>
    </message>
    <message>
        <source>%1 bag</source>
        <translation>%1 بوری</translation>
    </message>
    <message>
        <source>Coat %1</source>
        <translation>کوٹ %1</translation>
    </message>
    <message>
        <source>Place coat %1</source>
        <translation>کوٹ %1 لگانا</translation>
    </message>
    <message>
        <source>Keep coat %1 wet</source>
        <translation>کوٹ %1 کو گیلا رکھنا</translation>
    </message>
    <message>
        <source>Top of coat %1</source>
        <translation>کوٹ %1 کا اوپر</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>پڑھنا ممکن نہیں</translation>
    </message>
    <message>
        <source>cannot be written; what was there before is untouched</source>
        <translation>لکھنا ممکن نہیں؛ جو پہلے سے تھا وہ ویسا ہی ہے</translation>
    </message>
    <message>
        <source>is too large, in bytes</source>
        <translation>سائز حد سے زیادہ ہے، بائٹ میں</translation>
    </message>
    <message>
        <source>is not JSON from this line and column on</source>
        <translation>اس سطر اور کالم سے آگے JSON نہیں</translation>
    </message>
    <message>
        <source>has too many levels of brackets</source>
        <translation>بریکٹ کے اندر بریکٹ بہت زیادہ ہیں</translation>
    </message>
    <message>
        <source>is not UTF-8 text from this line and column on</source>
        <translation>اس سطر اور کالم سے آگے UTF-8 متن نہیں</translation>
    </message>
    <message>
        <source>is not a Tankwright project</source>
        <translation>یہ Tankwright کا پراجیکٹ نہیں</translation>
    </message>
    <message>
        <source>is of a version that this program does not know</source>
        <translation>ایسا ورژن ہے جسے یہ پروگرام نہیں جانتا</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>موجود نہیں</translation>
    </message>
    <message>
        <source>is of the wrong kind</source>
        <translation>غلط قسم کا اندراج ہے</translation>
    </message>
    <message>
        <source>is not a finite number</source>
        <translation>محدود عدد نہیں</translation>
    </message>
    <message>
        <source>is outside the allowed range</source>
        <translation>اجازت کی حد سے باہر ہے</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>دیے گئے انتخابوں میں سے نہیں</translation>
    </message>
    <message>
        <source>is too long, in bytes of UTF-8</source>
        <translation>حد سے لمبا متن ہے، UTF-8 بائٹ میں</translation>
    </message>
    <message>
        <source>is not a calendar date written year-month-day</source>
        <translation>سال-مہینہ-دن کی شکل میں کیلنڈر کی تاریخ نہیں</translation>
    </message>
    <message>
        <source>is given twice</source>
        <translation>دو بار درج ہے</translation>
    </message>
    <message>
        <source>has too few entries</source>
        <translation>اندراج ضرورت سے کم ہیں</translation>
    </message>
    <message>
        <source>has too many entries</source>
        <translation>اندراج حد سے زیادہ ہیں</translation>
    </message>
    <message>
        <source>runs clockwise; list the corners anticlockwise</source>
        <translation>ترتیب گھڑی کی سمت ہے؛ کونے گھڑی کی الٹی سمت میں درج کریں</translation>
    </message>
    <message>
        <source>touches or crosses itself</source>
        <translation>لکیر اپنے آپ کو چھوتی یا کاٹتی ہے</translation>
    </message>
    <message>
        <source>is bent inward at this corner; every corner must point outward</source>
        <translation>یہ کونا اندر کو مڑا ہے؛ ہر کونا باہر کی طرف ہونا لازمی ہے</translation>
    </message>
    <message>
        <source>puts the overflow level at or below the clear floor; it must be less than the clear depth</source>
        <translation>اس سے اوور فلو کا لیول اندر کے فرش پر یا اس سے نیچے آتا ہے؛ یہ اندر کی گہرائی سے کم ہونا لازمی ہے</translation>
    </message>
    <message>
        <source>reaches the overflow level; it must be less than the clear depth without the freeboard</source>
        <translation>اوور فلو کے لیول تک پہنچتا ہے؛ یہ اندر کی گہرائی میں سے فری بورڈ نکال کر جو بچے اس سے کم ہونا لازمی ہے</translation>
    </message>
    <message>
        <source>make a lining thicker than the clear inside of the tank</source>
        <translation>ان سے لائننگ ٹینکی کے اندر کی جگہ سے بھی موٹی ہو جاتی ہے</translation>
    </message>
    <message>
        <source>leaves no clear floor: the size at the rim is too small for this depth and batter</source>
        <translation>اندر کا فرش نہیں بچتا: اس گہرائی اور سلامی کے لیے اوپری کنارے پر سائز بہت چھوٹا ہے</translation>
    </message>
    <message>
        <source>does not fit into the corners of the clear floor</source>
        <translation>اندر کے فرش کے کونوں میں نہیں سماتا</translation>
    </message>
    <message>
        <source>is too small: with this batter the corners would vanish at the floor</source>
        <translation>بہت چھوٹا ہے: اس سلامی سے فرش پر کونے ختم ہو جائیں گے</translation>
    </message>
    <message>
        <source>does not fit between the clear floor and the rim</source>
        <translation>اندر کے فرش اور اوپری کنارے کے بیچ نہیں سماتا</translation>
    </message>
    <message>
        <source>has neither soil nor sand; give at least one of them some parts</source>
        <translation>نہ مٹی ہے نہ ریت؛ کم از کم ایک کے کچھ حصے دیں</translation>
    </message>
    <message>
        <source>leaves no pit floor to stand on</source>
        <translation>کھڑے ہونے کے لیے گڑھے کا تلا نہیں بچتا</translation>
    </message>
    <message>
        <source>is not known to this version; it is kept and not used</source>
        <translation>اسے یہ ورژن نہیں جانتا؛ رکھا گیا ہے، استعمال نہیں کیا گیا</translation>
    </message>
    <message>
        <source>The project file</source>
        <translation>پراجیکٹ کی فائل</translation>
    </message>
    <message>
        <source>Format mark</source>
        <translation>فارمیٹ کا نشان</translation>
    </message>
    <message>
        <source>Version of the format</source>
        <translation>فارمیٹ کا ورژن</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>جگہ</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>اونچائی کے نقطے</translation>
    </message>
    <message>
        <source>Terrace edge</source>
        <translation>سیڑھی کھیت کا کنارہ</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>ٹینکی</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>لائننگ</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>کوٹ</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>رواجی حساب</translation>
    </message>
    <message>
        <source>Recommended by builders</source>
        <translation>بنانے والوں کی رائے</translation>
    </message>
    <message>
        <source>Labour and dates</source>
        <translation>مزدوری اور تاریخیں</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>ایک عدد</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>ایک پورا عدد</translation>
    </message>
    <message>
        <source>text</source>
        <translation>متن</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>ایک فہرست</translation>
    </message>
    <message>
        <source>a group in braces</source>
        <translation>بریکٹ { } میں ایک گروپ</translation>
    </message>
    <message>
        <source>all corners pointing outward</source>
        <translation>سب کونے باہر کی طرف</translation>
    </message>
    <message>
        <source>corners listed anticlockwise</source>
        <translation>کونے گھڑی کی الٹی سمت میں</translation>
    </message>
    <message>
        <source>no corner given twice, no sides crossing</source>
        <translation>کوئی کونا دو بار نہ ہو، کوئی ضلع دوسرے کو نہ کاٹے</translation>
    </message>
    <message>
        <source>%1, entry %2</source>
        <translation>%1، اندراج %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 تا %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>%1 in the file, %2</source>
        <translation>%1 فائل میں، %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <translation>%1: %2۔</translation>
    </message>
    <message>
        <source>%1 %2: found %3.</source>
        <translation>%1: %2؛ ملا: %3۔</translation>
    </message>
    <message>
        <source>%1 %2: allowed %3.</source>
        <translation>%1: %2؛ اجازت ہے: %3۔</translation>
    </message>
    <message>
        <source>%1 %2: found %3; allowed %4.</source>
        <translation>%1: %2؛ ملا: %3؛ اجازت ہے: %4۔</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 یا زیادہ</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>%1 تک</translation>
    </message>
    <message>
        <source>published</source>
        <translation>شائع شدہ</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>عام رواج، بغیر حوالہ</translation>
    </message>
    <message>
        <source>from memory, to be verified</source>
        <translation>یادداشت سے، تصدیق باقی</translation>
    </message>
    <message>
        <source>this program&apos;s proposal, to be changed where practice differs</source>
        <translation>اس پروگرام کی تجویز، جہاں رواج الگ ہو وہاں بدلیں</translation>
    </message>
    <message>
        <source>entered or fixed by the design</source>
        <translation>درج کیا گیا یا ڈیزائن سے طے</translation>
    </message>
    <message>
        <source>measured or chosen on site</source>
        <translation>موقع پر ناپا یا چنا گیا</translation>
    </message>
    <message>
        <source>plane and solid geometry; the prismoidal formula is exact for a straight batter</source>
        <translation>سطحی اور ٹھوس جیومیٹری؛ سیدھی سلامی کے لیے منشور نما (prismoidal) کلیہ بالکل درست ہے</translation>
    </message>
    <message>
        <source>this program&apos;s proposal; change it to suit the district</source>
        <translation>اس پروگرام کی تجویز؛ ضلع کے مطابق بدلیں</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>نوٹ</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>احتیاط</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>رکیں</translation>
    </message>
    <message>
        <source>Allowed: %1.</source>
        <translation>اجازت ہے: %1۔</translation>
    </message>
    <message>
        <source>Source of the default: %1.</source>
        <translation>پہلے سے درج عدد کا حوالہ: %1۔</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>ft²</source>
        <translation>ft²</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>ft³</translation>
    </message>
    <message>
        <source>kg/ft³</source>
        <translation>kg/ft³</translation>
    </message>
    <message>
        <source>L/ft³</source>
        <translation>L/ft³</translation>
    </message>
    <message>
        <source>L/ft² per day</source>
        <translation>L/ft² روزانہ</translation>
    </message>
    <message>
        <source>person-days per 100 ft³</source>
        <translation>دیہاڑیاں فی 100 ft³</translation>
    </message>
    <message>
        <source>person-days per 100 ft²</source>
        <translation>دیہاڑیاں فی 100 ft²</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>m²</source>
        <translation>m²</translation>
    </message>
    <message>
        <source>m³</source>
        <translation>m³</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>days</source>
        <translation>دن</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>گھنٹے</translation>
    </message>
    <message>
        <source>people</source>
        <translation>لوگ</translation>
    </message>
    <message>
        <source>person-days</source>
        <translation>دیہاڑیاں</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>حصے</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation>kg/m³</translation>
    </message>
    <message>
        <source>L/m³</source>
        <translation>L/m³</translation>
    </message>
    <message>
        <source>L/m² per day</source>
        <translation>L/m² روزانہ</translation>
    </message>
    <message>
        <source>person-days per m³</source>
        <translation>دیہاڑیاں فی m³</translation>
    </message>
    <message>
        <source>person-days per m²</source>
        <translation>دیہاڑیاں فی m²</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 دن</translation>
    </message>
    <message>
        <source>%1 hour</source>
        <translation>%1 گھنٹہ</translation>
    </message>
    <message>
        <source>%1 person</source>
        <translation>%1 آدمی</translation>
    </message>
    <message>
        <source>%1 person-day</source>
        <translation>%1 دیہاڑی</translation>
    </message>
    <message>
        <source>%1 part</source>
        <translation>%1 حصہ</translation>
    </message>
    <message numerus="yes">
        <source>%1 days</source>
        <translation>
            <numerusform>%1 دن</numerusform>
            <numerusform>%1 دن</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 hours</source>
        <translation>
            <numerusform>%1 گھنٹہ</numerusform>
            <numerusform>%1 گھنٹے</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 people</source>
        <translation>
            <numerusform>%1 آدمی</numerusform>
            <numerusform>%1 لوگ</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 person-days</source>
        <translation>
            <numerusform>%1 دیہاڑی</numerusform>
            <numerusform>%1 دیہاڑیاں</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 parts</source>
        <translation>
            <numerusform>%1 حصہ</numerusform>
            <numerusform>%1 حصے</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>، </translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 یا %2</translation>
    </message>
    <message>
        <source>Not in the project, so not in the plan: %1.</source>
        <translation>پراجیکٹ میں نہیں، اس لیے منصوبے میں بھی نہیں: %1۔</translation>
    </message>
    <message>
        <source>%1 must be placed in one go, within the day. People entered for it: %2; needed: %3.</source>
        <translation>%1 ایک ہی بار میں، اسی دن کے اندر لگنا لازمی ہے۔ اس کے لیے درج لوگ: %2؛ چاہییں: %3۔</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1: %2 (%3)۔</translation>
    </message>
    <message numerus="yes">
        <source>%1 bags</source>
        <translation>
            <numerusform>%1 بوری</numerusform>
            <numerusform>%1 بوریاں</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <translation>%1 (مسودہ)</translation>
    </message>
    <message>
        <source>end of the rounded corner&apos;s arc</source>
        <translation>گول کونے کی گولائی کا سرا</translation>
    </message>
    <message>
        <source>watering can or bucket</source>
        <translation>فوارہ ڈبہ یا بالٹی</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>ربڑ پائپ</translation>
    </message>
    <message>
        <source>furrows</source>
        <translation>کھیلیاں</translation>
    </message>
    <message>
        <source>sprinkler</source>
        <translation>اسپرنکلر</translation>
    </message>
    <message>
        <source>drip lines</source>
        <translation>ڈرپ پائپ</translation>
    </message>
    <message>
        <source>cattle</source>
        <translation>گائے بیل</translation>
    </message>
    <message>
        <source>cow in milk</source>
        <translation>دودھ دینے والی گائے</translation>
    </message>
    <message>
        <source>buffalo</source>
        <translation>بھینس</translation>
    </message>
    <message>
        <source>horse or mule</source>
        <translation>گھوڑا یا خچر</translation>
    </message>
    <message>
        <source>donkey</source>
        <translation>گدھا</translation>
    </message>
    <message>
        <source>goat or sheep</source>
        <translation>بکری یا بھیڑ</translation>
    </message>
    <message>
        <source>pig</source>
        <translation>سور</translation>
    </message>
    <message>
        <source>hen or other poultry</source>
        <translation>مرغی یا دوسرا پالتو پرندہ</translation>
    </message>
    <message>
        <source>monthly means</source>
        <translation>ماہانہ اوسط</translation>
    </message>
    <message>
        <source>daily record</source>
        <translation>روزانہ ریکارڈ</translation>
    </message>
    <message>
        <source>Penman-Monteith</source>
        <translation>Penman-Monteith</translation>
    </message>
    <message>
        <source>Hargreaves</source>
        <translation>Hargreaves</translation>
    </message>
    <message>
        <source>leave the year out</source>
        <translation>وہ سال چھوڑ دیں</translation>
    </message>
    <message>
        <source>fill in from the nearest year</source>
        <translation>قریب ترین سال سے بھریں</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>ذریعہ</translation>
    </message>
    <message>
        <source>Months of the source</source>
        <translation>ذریعے کے مہینے</translation>
    </message>
    <message>
        <source>Readings of the source</source>
        <translation>ذریعے کی ریڈنگ</translation>
    </message>
    <message>
        <source>Roof</source>
        <translation>چھت</translation>
    </message>
    <message>
        <source>Ground led to the tank</source>
        <translation>زمین جس کا پانی ٹینکی میں آئے</translation>
    </message>
    <message>
        <source>Losses</source>
        <translation>پانی کا نقصان</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>کیاریاں</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>جانور</translation>
    </message>
    <message>
        <source>Own crops</source>
        <translation>اپنی فصلیں</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>موسم</translation>
    </message>
    <message>
        <source>Months of the climate</source>
        <translation>موسم کے مہینے</translation>
    </message>
    <message>
        <source>Daily record</source>
        <translation>روزانہ ریکارڈ</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>ریڈنگ %1</translation>
    </message>
    <message>
        <source>Bed %1</source>
        <translation>کیاری %1</translation>
    </message>
    <message>
        <source>Animals %1</source>
        <translation>جانور %1</translation>
    </message>
    <message>
        <source>Own crop %1</source>
        <translation>اپنی فصل %1</translation>
    </message>
    <message>
        <source>Source in %1</source>
        <translation>ذریعہ، %1</translation>
    </message>
    <message>
        <source>Climate of %1</source>
        <translation>موسم، %1</translation>
    </message>
    <message>
        <source>date</source>
        <translation>تاریخ</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>بارش</translation>
    </message>
    <message>
        <source>lowest temperature</source>
        <translation>کم سے کم درجہ حرارت</translation>
    </message>
    <message>
        <source>highest temperature</source>
        <translation>زیادہ سے زیادہ درجہ حرارت</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>ہوا</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>نمی</translation>
    </message>
    <message>
        <source>sunshine</source>
        <translation>دھوپ</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Line %1 of the table</source>
        <translation>جدول کی سطر %1</translation>
    </message>
    <message>
        <source>is neither in the table of crops nor one of your own; choose one, or enter it among your own crops</source>
        <translation>نہ فصلوں کے جدول میں ہے نہ آپ کی اپنی فصلوں میں؛ کوئی ایک چنیں، یا اسے اپنی فصلوں میں درج کریں</translation>
    </message>
    <message>
        <source>is a day that this month does not have; choose an earlier one</source>
        <translation>اس مہینے میں یہ دن نہیں ہوتا؛ پہلے کا دن چنیں</translation>
    </message>
    <message>
        <source>makes the whole season too long; shorten the stages</source>
        <translation>اس سے پورا موسم حد سے لمبا ہو جاتا ہے؛ مرحلے چھوٹے کریں</translation>
    </message>
    <message>
        <source>leaves a month with rain without a wet day; enter on how many days it rains</source>
        <translation>اس سے بارش والے مہینے میں بارش کا کوئی دن نہیں بچتا؛ درج کریں کہ کتنے دن بارش ہوتی ہے</translation>
    </message>
    <message>
        <source>is more than the days of this month; enter fewer</source>
        <translation>اس مہینے کے دنوں سے زیادہ ہے؛ کم درج کریں</translation>
    </message>
    <message>
        <source>is too little for the wet days of this month: each has 0.1 mm at least</source>
        <translation>اس مہینے کے بارش کے دنوں کے لیے بہت کم ہے: ہر دن کم از کم 0.1 mm بارش ہوتی ہے</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same month; check both</source>
        <translation>اسی مہینے کے کم سے کم درجہ حرارت سے نیچے ہے؛ دونوں دیکھیں</translation>
    </message>
    <message>
        <source>is not later than the day before it; put the days in order</source>
        <translation>اپنے سے پہلے والے دن کے بعد کا نہیں؛ دنوں کو ترتیب سے رکھیں</translation>
    </message>
    <message>
        <source>does not name the columns; begin the table with a line such as date,rain_mm,t_min_c,t_max_c</source>
        <translation>کالموں کے نام نہیں؛ جدول کو ایسی سطر سے شروع کریں: date,rain_mm,t_min_c,t_max_c</translation>
    </message>
    <message>
        <source>is not among the columns; add it to the table and to its first line</source>
        <translation>یہ کالم موجود نہیں؛ اسے جدول میں اور اس کی پہلی سطر میں شامل کریں</translation>
    </message>
    <message>
        <source>does not have as many cells as the first line; look for a mark too many or too few between them</source>
        <translation>خانے پہلی سطر کے خانوں کے برابر نہیں؛ دیکھیں کہ ان کے بیچ کوئی نشان زیادہ یا کم تو نہیں</translation>
    </message>
    <message>
        <source>stands in the table already; keep one line for each day</source>
        <translation>جدول میں پہلے سے موجود ہے؛ ہر دن کی ایک ہی سطر رکھیں</translation>
    </message>
    <message>
        <source>is earlier than the date above it; sort the lines by date</source>
        <translation>اوپر والی تاریخ سے پہلے کی ہے؛ سطروں کو تاریخ کی ترتیب سے رکھیں</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same day; check both</source>
        <translation>اسی دن کے کم سے کم درجہ حرارت سے نیچے ہے؛ دونوں دیکھیں</translation>
    </message>
    <message>
        <source>comes after days that are left out, which count as gaps of the record</source>
        <translation>اس سے پہلے کچھ دن چھوٹے ہوئے ہیں، جو ریکارڈ کی خالی جگہ گنے جاتے ہیں</translation>
    </message>
    <message>
        <source>names a column that is not used</source>
        <translation>ایک ایسے کالم کا نام ہے جو استعمال نہیں ہوتا</translation>
    </message>
    <message>
        <source>The weather table</source>
        <translation>موسم کا جدول</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>mm per day</source>
        <translation>mm روزانہ</translation>
    </message>
    <message>
        <source>mm per m</source>
        <translation>mm فی m</translation>
    </message>
    <message>
        <source>L/min</source>
        <translation>L/min</translation>
    </message>
    <message>
        <source>L per day</source>
        <translation>L روزانہ</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>years</source>
        <translation>سال</translation>
    </message>
    <message>
        <source>%1 year</source>
        <translation>%1 سال</translation>
    </message>
    <message numerus="yes">
        <source>%1 years</source>
        <translation>
            <numerusform>%1 سال</numerusform>
            <numerusform>%1 سال</numerusform>
        </translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1.</source>
        <translation>پانی کی کمی جب بھی ہوتی ہے، %1 میں ہوتی ہے۔</translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1; most often in %2.</source>
        <translation>پانی کی کمی جب بھی ہوتی ہے، %1 میں ہوتی ہے؛ زیادہ تر %2 میں۔</translation>
    </message>
    <message>
        <source>Full at the start of %1 and with nothing more flowing in, the tank lasts a year or longer.</source>
        <translation>اگر %1 کے شروع میں ٹینکی بھری ہو اور پھر کوئی پانی نہ آئے، تو وہ ایک سال یا زیادہ چلتی ہے۔</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank does not fill within a year.</source>
        <translation>کچھ نہ نکالا جائے تب بھی خالی ٹینکی ایک سال میں نہیں بھرتی۔</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills in %1.</source>
        <translation>کچھ نہ نکالا جائے تو خالی ٹینکی %1 میں بھر جاتی ہے۔</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills quickest from the start of %1 on: in %2.</source>
        <translation>کچھ نہ نکالا جائے تو خالی ٹینکی سب سے جلدی %1 کے شروع سے بھرتی ہے: %2 میں۔</translation>
    </message>
    <message>
        <source>Almost any tank gives as many good years as are wanted.</source>
        <translation>تقریباً ہر ٹینکی اتنے اچھے سال دے دیتی ہے جتنے چاہییں۔</translation>
    </message>
    <message>
        <source>A tank that holds about %1 already gives as many good years as are wanted.</source>
        <translation>تقریباً %1 کی ٹینکی ہی اتنے اچھے سال دے دیتی ہے جتنے چاہییں۔</translation>
    </message>
    <message>
        <source>With this tank, beds of no size have as many good years as are wanted.</source>
        <translation>اس ٹینکی سے کسی بھی سائز کی کیاریوں کو اتنے اچھے سال نہیں ملتے جتنے چاہییں۔</translation>
    </message>
    <message>
        <source>With this tank, even beds of %1 have as many good years as are wanted.</source>
        <translation>اس ٹینکی سے %1 تک کی کیاریوں کو بھی اتنے اچھے سال مل جاتے ہیں جتنے چاہییں۔</translation>
    </message>
    <message>
        <source>With this tank, beds of up to about %1 have as many good years as are wanted; entered: %2.</source>
        <translation>اس ٹینکی سے تقریباً %1 تک کی کیاریوں کو اتنے اچھے سال ملتے ہیں جتنے چاہییں؛ درج: %2۔</translation>
    </message>
    <message>
        <source>In a mean year about %1 run over unused.</source>
        <translation>اوسط سال میں تقریباً %1 پانی استعمال ہوئے بغیر اوپر سے بہہ جاتا ہے۔</translation>
    </message>
    <message>
        <source>The latitude of the site is not known, so whether the water lasts cannot be answered. Read it from a map or a phone.</source>
        <translation>جگہ کا عرض بلد معلوم نہیں، اس لیے پانی پورا پڑے گا یا نہیں، بتایا نہیں جا سکتا۔ اسے نقشے یا فون سے پڑھیں۔</translation>
    </message>
    <message>
        <source>The climate is not known, so whether the water lasts cannot be answered. Enter rain, wet days, lowest and highest temperature of all twelve months, or take in a daily record.</source>
        <translation>موسم معلوم نہیں، اس لیے پانی پورا پڑے گا یا نہیں، بتایا نہیں جا سکتا۔ بارہ مہینوں کی بارش، بارش کے دن، کم سے کم اور زیادہ سے زیادہ درجہ حرارت درج کریں، یا روزانہ ریکارڈ لے آئیں۔</translation>
    </message>
    <message>
        <source>The height above sea level is not known; evaporation is reckoned as at sea level. Read it from a map or a phone.</source>
        <translation>سطح سمندر سے بلندی معلوم نہیں؛ بخارات کا حساب سطح سمندر کے برابر مان کر لگایا گیا ہے۔ بلندی نقشے یا فون سے پڑھیں۔</translation>
    </message>
    <message>
        <source>Only rain on the tank itself brings water. Enter what the source gives in each month, or a roof or ground that is led to the tank.</source>
        <translation>صرف ٹینکی پر پڑنے والی بارش سے پانی آتا ہے۔ درج کریں کہ ذریعہ ہر مہینے کتنا دیتا ہے، یا کوئی چھت یا زمین جس کا پانی ٹینکی میں آئے۔</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank. Enter beds, animals or people who use its water.</source>
        <translation>ٹینکی سے کچھ نہیں نکالا جاتا۔ کیاریاں، جانور یا لوگ درج کریں جو اس کا پانی استعمال کرتے ہیں۔</translation>
    </message>
    <message>
        <source>Water from an open tank is not safe to drink as it is. Use it for washing and the house, and treat what is drunk. People counted: %1.</source>
        <translation>کھلی ٹینکی کا پانی ایسے ہی پینے کے لیے محفوظ نہیں۔ اسے دھونے اور گھر کے کام میں لائیں، اور پینے کا پانی صاف کر کے پئیں۔ گنے گئے لوگ: %1۔</translation>
    </message>
    <message>
        <source>The water lasts in %1 of 10 years; %2 of 10 are wanted.</source>
        <translation>10 میں سے %1 سال پانی پورا پڑتا ہے؛ 10 میں سے %2 سال چاہییں۔</translation>
    </message>
    <message>
        <source>A tank that holds about %1 would reach it.</source>
        <translation>تقریباً %1 کی ٹینکی سے یہ پورا ہو جائے گا۔</translation>
    </message>
    <message>
        <source>Beds of about %1 in all would reach it.</source>
        <translation>کل تقریباً %1 کی کیاریوں سے یہ پورا ہو جائے گا۔</translation>
    </message>
    <message>
        <source>The tank does not fill in any year: it holds %1, and the most that is ever in it is about %2. Lead in more water, or build it smaller.</source>
        <translation>ٹینکی کسی سال نہیں بھرتی: اس میں %1 آتا ہے، اور زیادہ سے زیادہ جو کبھی اس میں ہوتا ہے وہ تقریباً %2 ہے۔ زیادہ پانی لائیں، یا ٹینکی چھوٹی بنائیں۔</translation>
    </message>
    <message>
        <source>How much the rain differs from year to year is not known. The years made from monthly means differ by %1, real ones mostly by more. Ask the weather station for the spread of yearly rain.</source>
        <translation>معلوم نہیں کہ بارش سال بہ سال کتنی بدلتی ہے۔ ماہانہ اوسط سے بنے سالوں میں فرق %1 ہے، اصل سالوں میں اکثر اس سے زیادہ ہوتا ہے۔ موسمی اسٹیشن سے سالانہ بارش کا فرق پوچھیں۔</translation>
    </message>
    <message>
        <source>The record has whole years: %1. At least %2 are wanted to see how often the water runs short.</source>
        <translation>ریکارڈ میں پورے سال: %1۔ یہ دیکھنے کے لیے کہ پانی کتنی بار کم پڑتا ہے، کم از کم %2 چاہییں۔</translation>
    </message>
    <message>
        <source>Years of the record left out for their gaps: %1, the first one beginning in %2. Add what is missing, or have gaps filled in from the nearest year.</source>
        <translation>خالی جگہوں کی وجہ سے ریکارڈ کے چھوڑے گئے سال: %1، پہلا %2 سے شروع۔ جو نہیں ہے وہ شامل کریں، یا خالی جگہیں قریب ترین سال سے بھروائیں۔</translation>
    </message>
    <message>
        <source>Missing values of the record filled in from the nearest year: %1.</source>
        <translation>ریکارڈ کے غائب اعداد جو قریب ترین سال سے بھرے گئے: %1۔</translation>
    </message>
    <message>
        <source>Readings of the source in %1: %2. Take more than three, so that a wrong one shows.</source>
        <translation>%1 میں ذریعے کی ریڈنگ: %2۔ تین سے زیادہ لیں، تاکہ غلط والی نظر آ جائے۔</translation>
    </message>
    <message>
        <source>Reading %1 gives %2, far from the middle of its month, %3. Measure once more, and take the reading out if something went wrong.</source>
        <translation>ریڈنگ %1 سے %2 نکلتا ہے، جو اس مہینے کی درمیانی ریڈنگ %3 سے بہت دور ہے۔ ایک بار پھر ناپیں، اور اگر کچھ غلط ہوا تھا تو ریڈنگ نکال دیں۔</translation>
    </message>
    <message>
        <source>Reading %1: the vessel was full after %2. Below 3 seconds a watch is too coarse; take a larger vessel.</source>
        <translation>ریڈنگ %1: برتن %2 میں بھر گیا۔ 3 سیکنڈ سے کم وقت گھڑی سے ٹھیک نہیں ناپا جاتا؛ بڑا برتن لیں۔</translation>
    </message>
    <message>
        <source>For %1 a flow of %2 is entered; the middle of the readings is %3. Enter the one you trust.</source>
        <translation>%1 کے لیے بہاؤ %2 درج ہے؛ ریڈنگ کی درمیانی قدر %3 ہے۔ جس پر آپ کو بھروسا ہو وہ درج کریں۔</translation>
    </message>
    <message>
        <source>Rain alone waters the beds; nothing has to be drawn from the tank.</source>
        <translation>اکیلی بارش کیاریوں کو پانی دے دیتی ہے؛ ٹینکی سے کچھ نکالنا نہیں پڑتا۔</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank yet. Enter beds, animals or people who use its water.</source>
        <translation>ابھی ٹینکی سے کچھ نہیں نکالا جاتا۔ کیاریاں، جانور یا لوگ درج کریں جو اس کا پانی استعمال کرتے ہیں۔</translation>
    </message>
    <message>
        <source>the beds</source>
        <translation>کیاریوں</translation>
    </message>
    <message>
        <source>the animals</source>
        <translation>جانوروں</translation>
    </message>
    <message>
        <source>the people</source>
        <translation>لوگوں</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) the beds stay watered.</source>
        <translation>حساب کیے سالوں (%1) میں سے ہر سال کیاریوں کو پانی ملتا رہتا ہے۔</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) there is water for %2.</source>
        <translation>حساب کیے سالوں (%1) میں سے ہر سال %2 کے لیے پانی ہے۔</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) do the beds stay watered all year.</source>
        <translation>حساب کیے سالوں (%1) میں سے کسی سال بھی کیاریوں کو سارا سال پانی نہیں ملتا۔</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) is there water all year for %2.</source>
        <translation>حساب کیے سالوں (%1) میں سے کسی سال بھی %2 کے لیے سارا سال پانی نہیں ہے۔</translation>
    </message>
    <message>
        <source>In %1 of %2 years the beds stay watered all year.</source>
        <translation>%2 میں سے %1 سال کیاریوں کو سارا سال پانی ملتا رہتا ہے۔</translation>
    </message>
    <message>
        <source>In %1 of %2 years there is water all year for %3.</source>
        <translation>%2 میں سے %1 سال %3 کے لیے سارا سال پانی ہے۔</translation>
    </message>
    <message>
        <source>Water is missing on %1, about %2 in all.</source>
        <translation>%1 پانی کی کمی رہتی ہے، کل تقریباً %2۔</translation>
    </message>
    <message>
        <source>In the worst of %1 water is missing on %2, about %3 in all.</source>
        <translation>%1 میں سے سب سے برے سال میں %2 پانی کی کمی رہتی ہے، کل تقریباً %3۔</translation>
    </message>
    <message>
        <source>In a middling year it is missing on %1.</source>
        <translation>درمیانے سال میں %1 کمی رہتی ہے۔</translation>
    </message>
    <message>
        <source>What the tap or spring gives while it runs; time how long a vessel of known size takes to fill.</source>
        <translation>نلکا یا چشمہ چلتے وقت کتنا دیتا ہے؛ گھڑی سے دیکھیں کہ معلوم ناپ کا برتن کتنی دیر میں بھرتا ہے۔</translation>
    </message>
    <message>
        <source>How long in a day the water runs into the tank; a spring led in day and night runs 24 hours.</source>
        <translation>دن میں کتنی دیر پانی ٹینکی میں آتا ہے؛ جو چشمہ دن رات آتا ہے وہ 24 گھنٹے چلتا ہے۔</translation>
    </message>
    <message>
        <source>Month in which this reading was taken.</source>
        <translation>وہ مہینہ جس میں یہ ریڈنگ لی گئی۔</translation>
    </message>
    <message>
        <source>What the vessel holds up to the mark to which it was filled; take one that fills in 3 seconds or more.</source>
        <translation>جس نشان تک برتن بھرا گیا، وہاں تک اس میں کتنا آتا ہے؛ ایسا برتن لیں جو 3 سیکنڈ یا زیادہ میں بھرے۔</translation>
    </message>
    <message>
        <source>Time from putting the empty vessel under the flow until it is full, by watch.</source>
        <translation>خالی برتن کو دھار کے نیچے رکھنے سے بھر جانے تک کا وقت، گھڑی سے۔</translation>
    </message>
    <message>
        <source>Roof whose gutters lead to the tank, as seen from above: length times width of its level shadow.</source>
        <translation>وہ چھت جس کے پرنالے ٹینکی تک جاتے ہیں، اوپر سے دیکھیں تو: اس کے ہموار سائے کی لمبائی ضرب چوڑائی۔</translation>
    </message>
    <message>
        <source>Part of the rain on the roof that reaches the tank: 0.80 is 80 litres of 100.</source>
        <translation>چھت کی بارش کا وہ حصہ جو ٹینکی تک پہنچتا ہے: 0.80 یعنی 100 میں سے 80 لیٹر۔</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that is let run off to wash the roof; 0 when nothing is turned away.</source>
        <translation>بارش کے سلسلے کے شروع کی وہ بارش جو چھت دھونے کے لیے بہنے دی جاتی ہے؛ کچھ نہ چھوڑا جائے تو 0۔</translation>
    </message>
    <message>
        <source>Ground uphill whose runoff a ditch leads to the tank; pace its length and width along the level.</source>
        <translation>اوپر کی طرف کی وہ زمین جس کا بہتا پانی نالی سے ٹینکی تک آتا ہے؛ لمبائی اور چوڑائی ہموار قدموں سے ناپیں۔</translation>
    </message>
    <message>
        <source>Part of the rain on this ground that reaches the tank; bare and steep ground sheds more than grass.</source>
        <translation>اس زمین کی بارش کا وہ حصہ جو ٹینکی تک پہنچتا ہے؛ بغیر سبزے کی اور کھڑی زمین سے گھاس کی نسبت زیادہ پانی بہتا ہے۔</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that only wets the ground or is let run past with its mud.</source>
        <translation>بارش کے سلسلے کے شروع کی وہ بارش جو صرف زمین بھگوتی ہے یا کیچڑ سمیت آگے بہنے دی جاتی ہے۔</translation>
    </message>
    <message>
        <source>Evaporation of open water for each unit of reference evapotranspiration; 1.05 for shallow water.</source>
        <translation>معیاری بخاراتی خرچ کی ہر اکائی پر کھلے پانی کے بخارات؛ کم گہرے پانی کے لیے 1.05۔</translation>
    </message>
    <message>
        <source>Share of the evaporation that a roof, a shade cloth or a floating cover keeps back; 0 for open water.</source>
        <translation>بخارات کا وہ حصہ جو چھت، سایہ جالی یا تیرتا ڈھکن روک لیتا ہے؛ کھلے پانی کے لیے 0۔</translation>
    </message>
    <message>
        <source>Depth of water lost through the wetted plaster in a day; measure on a covered tank how far the level falls over several days without inflow or drawing.</source>
        <translation>گیلے پلستر سے ایک دن میں جتنی گہرائی کا پانی رس جاتا ہے؛ ڈھکی ٹینکی میں، جب نہ پانی آئے نہ نکلے، ناپیں کہ کئی دنوں میں لیول کتنا گرتا ہے۔</translation>
    </message>
    <message>
        <source>Crop of this bed, from the table or one of your own.</source>
        <translation>اس کیاری کی فصل، جدول سے یا آپ کی اپنی فصلوں میں سے۔</translation>
    </message>
    <message>
        <source>Planted area that is watered from the tank, paths left out.</source>
        <translation>بویا ہوا رقبہ جسے ٹینکی سے پانی ملتا ہے، راستے نکال کر۔</translation>
    </message>
    <message>
        <source>Month in which the crop is sown or planted out each year.</source>
        <translation>وہ مہینہ جس میں ہر سال فصل بوئی جاتی ہے یا پنیری لگائی جاتی ہے۔</translation>
    </message>
    <message>
        <source>Day of that month; the first or the middle is near enough.</source>
        <translation>اس مہینے کا دن؛ پہلی تاریخ یا مہینے کا بیچ کافی ہے۔</translation>
    </message>
    <message>
        <source>How the water is given to the bed.</source>
        <translation>کیاری کو پانی کیسے دیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Share of the water drawn that stays where the roots can use it; leave empty to take it from the way of watering.</source>
        <translation>نکالے گئے پانی کا وہ حصہ جو جڑوں کی پہنچ میں رہتا ہے؛ خالی چھوڑیں تو پانی دینے کے طریقے سے لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Animals that drink from the tank.</source>
        <translation>وہ جانور جو ٹینکی سے پیتے ہیں۔</translation>
    </message>
    <message>
        <source>Number of these animals, on average.</source>
        <translation>ان جانوروں کی تعداد، اوسطاً۔</translation>
    </message>
    <message>
        <source>Water one animal drinks in a day; count the buckets, or leave empty to take the usual for its kind.</source>
        <translation>ایک جانور دن میں کتنا پانی پیتا ہے؛ بالٹیاں گنیں، یا خالی چھوڑیں تو اس قسم کی عام مقدار لی جاتی ہے۔</translation>
    </message>
    <message>
        <source>People whose water for washing and the house comes from the tank.</source>
        <translation>وہ لوگ جن کے دھونے اور گھر کے کام کا پانی ٹینکی سے آتا ہے۔</translation>
    </message>
    <message>
        <source>Water one person takes from the tank in a day; count the vessels carried home.</source>
        <translation>ایک آدمی دن میں ٹینکی سے کتنا پانی لیتا ہے؛ گھر لے جائے گئے برتن گنیں۔</translation>
    </message>
    <message>
        <source>Name by which the beds call this crop; each one only once.</source>
        <translation>وہ نام جس سے کیاریوں میں یہ فصل چنی جاتی ہے؛ ہر نام صرف ایک بار۔</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration from planting until a tenth of the ground is covered.</source>
        <translation>پانی کا خرچ معیاری بخاراتی خرچ کے مقابلے میں، بوائی سے لے کر زمین کا دسواں حصہ ڈھکنے تک۔</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration while the crop covers the ground fully.</source>
        <translation>پانی کا خرچ معیاری بخاراتی خرچ کے مقابلے میں، جب فصل زمین کو پورا ڈھکے ہو۔</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration on the day of harvest or when the leaves die.</source>
        <translation>پانی کا خرچ معیاری بخاراتی خرچ کے مقابلے میں، کٹائی کے دن یا جب پتے سوکھ جائیں۔</translation>
    </message>
    <message>
        <source>Height of the full-grown crop, or to the top of its stakes.</source>
        <translation>پوری بڑھی فصل کی اونچائی، یا اس کے سہارے کی لکڑیوں کے سرے تک۔</translation>
    </message>
    <message>
        <source>Days from planting until a tenth of the ground is covered.</source>
        <translation>بوائی سے لے کر زمین کا دسواں حصہ ڈھکنے تک کے دن۔</translation>
    </message>
    <message>
        <source>Days from then until the leaves cover the ground.</source>
        <translation>اس کے بعد پتوں کے زمین ڈھک لینے تک کے دن۔</translation>
    </message>
    <message>
        <source>Days from full cover until the leaves begin to yellow or fruit ripens.</source>
        <translation>زمین پوری ڈھکنے سے لے کر پتے پیلے ہونے یا پھل پکنے تک کے دن۔</translation>
    </message>
    <message>
        <source>Days from then until harvest or until watering stops.</source>
        <translation>اس کے بعد کٹائی یا پانی بند کرنے تک کے دن۔</translation>
    </message>
    <message>
        <source>Depth from which most roots draw; dig beside a grown plant and look.</source>
        <translation>وہ گہرائی جہاں تک سے زیادہ تر جڑیں پانی لیتی ہیں؛ بڑے پودے کے پاس کھود کر دیکھیں۔</translation>
    </message>
    <message>
        <source>Part of the water held by the soil that the crop may use up before it suffers: 0.40 is 40 litres of 100.</source>
        <translation>مٹی میں رکے پانی کا وہ حصہ جو فصل نقصان اٹھائے بغیر لے سکتی ہے: 0.40 یعنی 100 میں سے 40 لیٹر۔</translation>
    </message>
    <message>
        <source>Water the soil keeps for roots after it has drained, down to wilting: sand little, loam and clay much.</source>
        <translation>فالتو پانی نکل جانے کے بعد سے پودے مرجھانے تک، جڑوں کے لیے مٹی میں رکا پانی: ریت میں کم، میرا اور چکنی مٹی میں زیادہ۔</translation>
    </message>
    <message>
        <source>Whether twelve monthly means or a table of single days from a weather station is at hand.</source>
        <translation>پاس میں بارہ ماہانہ اوسط ہیں یا موسمی اسٹیشن کا ایک ایک دن کا جدول۔</translation>
    </message>
    <message>
        <source>Rain of this month, mean of many years, from the nearest weather station.</source>
        <translation>اس مہینے کی بارش، کئی سالوں کی اوسط، قریب ترین موسمی اسٹیشن سے۔</translation>
    </message>
    <message>
        <source>Days of this month on which it rains 0.1 mm or more, mean of many years.</source>
        <translation>اس مہینے کے وہ دن جن میں 0.1 mm یا زیادہ بارش ہوتی ہے، کئی سالوں کی اوسط۔</translation>
    </message>
    <message>
        <source>Mean of the lowest temperatures of each day, in the shade.</source>
        <translation>ہر دن کے کم سے کم درجہ حرارت کی اوسط، سائے میں۔</translation>
    </message>
    <message>
        <source>Mean of the highest temperatures of each day, in the shade.</source>
        <translation>ہر دن کے زیادہ سے زیادہ درجہ حرارت کی اوسط، سائے میں۔</translation>
    </message>
    <message>
        <source>Mean relative humidity of the air; leave empty when not known, then it is estimated from the temperature.</source>
        <translation>ہوا کی اوسط نمی (فیصد)؛ معلوم نہ ہو تو خالی چھوڑیں، پھر درجہ حرارت سے اندازہ لگایا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Mean wind 2 m above the ground; leave empty when not known, then a light wind is reckoned with.</source>
        <translation>زمین سے 2 m اوپر ہوا کی اوسط رفتار؛ معلوم نہ ہو تو خالی چھوڑیں، پھر ہلکی ہوا مان کر حساب لگایا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Mean hours of bright sunshine a day; leave empty when not known, then it is estimated from the temperatures.</source>
        <translation>روزانہ تیز دھوپ کے اوسط گھنٹے؛ معلوم نہ ہو تو خالی چھوڑیں، پھر درجہ حرارت سے اندازہ لگایا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Standard deviation of the yearly rain over its mean, from the weather station. Leave empty if not known.</source>
        <translation>سالانہ بارش کا معیاری انحراف اس کی اوسط کے مقابلے میں، موسمی اسٹیشن سے۔ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>How many years of daily weather are made from the monthly means; more years show rare droughts better and take longer.</source>
        <translation>ماہانہ اوسط سے روزانہ موسم کے کتنے سال بنائے جائیں؛ زیادہ سالوں سے کبھی کبھار کی خشک سالی بہتر نظر آتی ہے اور وقت زیادہ لگتا ہے۔</translation>
    </message>
    <message>
        <source>The same number gives the same years; another one shows how much the answer depends on chance.</source>
        <translation>ایک ہی عدد سے وہی سال بنتے ہیں؛ دوسرا عدد دکھاتا ہے کہ جواب کتنا اتفاق پر ہے۔</translation>
    </message>
    <message>
        <source>Penman-Monteith is the standard and estimates what was not measured; Hargreaves uses temperatures alone.</source>
        <translation>Penman-Monteith معیاری طریقہ ہے اور جو ناپا نہیں گیا اس کا اندازہ لگاتا ہے؛ Hargreaves صرف درجہ حرارت سے چلتا ہے۔</translation>
    </message>
    <message>
        <source>Turns the day&apos;s range of temperature into sunshine where none was measured: 0.16 inland, 0.19 at a coast.</source>
        <translation>جہاں دھوپ ناپی نہیں گئی وہاں دن کے درجہ حرارت کے فرق سے دھوپ نکالتا ہے: ساحل سے دور 0.16، ساحل پر 0.19۔</translation>
    </message>
    <message>
        <source>What to do with years in which days or values of the record are missing.</source>
        <translation>جن سالوں کے دن یا اعداد ریکارڈ میں نہیں، ان کا کیا کیا جائے۔</translation>
    </message>
    <message>
        <source>In how many of ten years there shall be water on every day; ask those who live from the beds.</source>
        <translation>دس میں سے کتنے سالوں میں ہر دن پانی ہونا چاہیے؛ ان سے پوچھیں جن کی روزی کیاریوں سے ہے۔</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>بہاؤ</translation>
    </message>
    <message>
        <source>Runs each day</source>
        <translation>روزانہ چلتا ہے</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>مہینہ</translation>
    </message>
    <message>
        <source>Vessel holds</source>
        <translation>برتن کی گنجائش</translation>
    </message>
    <message>
        <source>Time to fill</source>
        <translation>بھرنے کا وقت</translation>
    </message>
    <message>
        <source>Roof area</source>
        <translation>چھت کا رقبہ</translation>
    </message>
    <message>
        <source>Share of rain off the roof</source>
        <translation>چھت کی بارش کا حصہ</translation>
    </message>
    <message>
        <source>First flush off the roof</source>
        <translation>چھت کا پہلا دھوون</translation>
    </message>
    <message>
        <source>Ground area</source>
        <translation>زمین کا رقبہ</translation>
    </message>
    <message>
        <source>Share of rain off the ground</source>
        <translation>زمین کی بارش کا حصہ</translation>
    </message>
    <message>
        <source>First flush off the ground</source>
        <translation>زمین کا پہلا دھوون</translation>
    </message>
    <message>
        <source>Evaporation factor of open water</source>
        <translation>کھلے پانی کے بخارات کا فیکٹر</translation>
    </message>
    <message>
        <source>Evaporation stopped by a cover</source>
        <translation>ڈھکن سے رکے بخارات</translation>
    </message>
    <message>
        <source>Seepage through the plaster</source>
        <translation>پلستر سے رساؤ</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>فصل</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>رقبہ</translation>
    </message>
    <message>
        <source>Planted, month</source>
        <translation>بوائی، مہینہ</translation>
    </message>
    <message>
        <source>Planted, day</source>
        <translation>بوائی، دن</translation>
    </message>
    <message>
        <source>Watered by</source>
        <translation>پانی دینے کا طریقہ</translation>
    </message>
    <message>
        <source>Reaches the roots</source>
        <translation>جڑوں تک پہنچتا ہے</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>جانور</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>کتنے</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>ہر ایک پیتا ہے</translation>
    </message>
    <message>
        <source>People who use the water</source>
        <translation>پانی استعمال کرنے والے لوگ</translation>
    </message>
    <message>
        <source>Water for each person</source>
        <translation>فی آدمی پانی</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>نام</translation>
    </message>
    <message>
        <source>Kc, first stage</source>
        <translation>Kc، ابتدائی مرحلہ</translation>
    </message>
    <message>
        <source>Kc, mid season</source>
        <translation>Kc، درمیانی مرحلہ</translation>
    </message>
    <message>
        <source>Kc, last day</source>
        <translation>Kc، آخری دن</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>اونچائی</translation>
    </message>
    <message>
        <source>First stage</source>
        <translation>ابتدائی مرحلہ</translation>
    </message>
    <message>
        <source>Growing stage</source>
        <translation>بڑھوتری کا مرحلہ</translation>
    </message>
    <message>
        <source>Mid season</source>
        <translation>درمیانی مرحلہ</translation>
    </message>
    <message>
        <source>Late season</source>
        <translation>آخری مرحلہ</translation>
    </message>
    <message>
        <source>Root depth</source>
        <translation>جڑوں کی گہرائی</translation>
    </message>
    <message>
        <source>Share used before stress</source>
        <translation>نقصان سے پہلے لیا جانے والا حصہ</translation>
    </message>
    <message>
        <source>Water the soil of the beds holds</source>
        <translation>کیاریوں کی مٹی میں رکا پانی</translation>
    </message>
    <message>
        <source>Weather known as</source>
        <translation>موسم کی معلومات</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>بارش</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>بارش کے دن</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>نمی</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>ہوا</translation>
    </message>
    <message>
        <source>Sunshine</source>
        <translation>دھوپ</translation>
    </message>
    <message>
        <source>Spread of yearly rain</source>
        <translation>سالانہ بارش کا فرق</translation>
    </message>
    <message>
        <source>Weather years to make</source>
        <translation>بنانے کے موسمی سال</translation>
    </message>
    <message>
        <source>Number that starts the draw</source>
        <translation>قرعہ شروع کرنے والا عدد</translation>
    </message>
    <message>
        <source>Reference evapotranspiration by</source>
        <translation>معیاری بخاراتی خرچ کا طریقہ</translation>
    </message>
    <message>
        <source>Radiation factor kRs</source>
        <translation>دھوپ کا فیکٹر kRs</translation>
    </message>
    <message>
        <source>Gaps in the record</source>
        <translation>ریکارڈ کی خالی جگہیں</translation>
    </message>
    <message>
        <source>Good years wanted in ten</source>
        <translation>دس میں سے کتنے اچھے سال چاہییں</translation>
    </message>
    <message>
        <source>Tomato</source>
        <translation>ٹماٹر</translation>
    </message>
    <message>
        <source>Sweet pepper</source>
        <translation>شملہ مرچ</translation>
    </message>
    <message>
        <source>Aubergine (eggplant)</source>
        <translation>بینگن</translation>
    </message>
    <message>
        <source>Potato</source>
        <translation>آلو</translation>
    </message>
    <message>
        <source>Onion, for bulbs</source>
        <translation>پیاز، گنٹھے کے لیے</translation>
    </message>
    <message>
        <source>Onion, green</source>
        <translation>پیاز، ہرا</translation>
    </message>
    <message>
        <source>Garlic</source>
        <translation>لہسن</translation>
    </message>
    <message>
        <source>Cabbage</source>
        <translation>بند گوبھی</translation>
    </message>
    <message>
        <source>Cauliflower</source>
        <translation>پھول گوبھی</translation>
    </message>
    <message>
        <source>Broccoli</source>
        <translation>بروکلی</translation>
    </message>
    <message>
        <source>Carrot</source>
        <translation>گاجر</translation>
    </message>
    <message>
        <source>Lettuce</source>
        <translation>سلاد پتا</translation>
    </message>
    <message>
        <source>Spinach</source>
        <translation>پالک</translation>
    </message>
    <message>
        <source>Radish</source>
        <translation>مولی</translation>
    </message>
    <message>
        <source>Cucumber</source>
        <translation>کھیرا</translation>
    </message>
    <message>
        <source>Beans, green</source>
        <translation>پھلیاں، ہری</translation>
    </message>
    <message>
        <source>Beans, dry</source>
        <translation>لوبیا، خشک</translation>
    </message>
    <message>
        <source>Peas</source>
        <translation>مٹر</translation>
    </message>
    <message>
        <source>Lentils</source>
        <translation>مسور</translation>
    </message>
    <message>
        <source>Maize, for grain</source>
        <translation>مکئی، دانے کے لیے</translation>
    </message>
    <message>
        <source>Maize, sweet</source>
        <translation>مکئی، میٹھی</translation>
    </message>
    <message>
        <source>Winter wheat</source>
        <translation>سردیوں کی گندم</translation>
    </message>
    <message>
        <source>Barley</source>
        <translation>جو</translation>
    </message>
    <message>
        <source>Millet</source>
        <translation>باجرہ</translation>
    </message>
    <message>
        <source>Citrus trees</source>
        <translation>مالٹے اور لیموں کے درخت</translation>
    </message>
    <message>
        <source>Fruit trees that shed their leaves</source>
        <translation>پت جھڑ والے پھل دار درخت</translation>
    </message>
    <message>
        <source>metal sheet roof</source>
        <translation>ٹین کی چھت</translation>
    </message>
    <message>
        <source>tiled or slate roof</source>
        <translation>کھپریل یا سلیٹ کی چھت</translation>
    </message>
    <message>
        <source>thatched roof</source>
        <translation>گھاس پھوس کی چھت</translation>
    </message>
    <message>
        <source>bare ground</source>
        <translation>بغیر سبزے کی زمین</translation>
    </message>
    <message>
        <source>pasture</source>
        <translation>چراگاہ</translation>
    </message>
    <message>
        <source>tilled ground</source>
        <translation>ہل چلی زمین</translation>
    </message>
    <message>
        <source>first flush off a roof</source>
        <translation>چھت کا پہلا دھوون</translation>
    </message>
    <message>
        <source>first flush off ground</source>
        <translation>زمین کا پہلا دھوون</translation>
    </message>
    <message>
        <source>open water</source>
        <translation>کھلا پانی</translation>
    </message>
    <message>
        <source>shade cloth, one layer</source>
        <translation>سایہ جالی، ایک تہہ</translation>
    </message>
    <message>
        <source>shade cloth, two layers</source>
        <translation>سایہ جالی، دو تہیں</translation>
    </message>
    <message>
        <source>seepage through the plaster</source>
        <translation>پلستر سے رساؤ</translation>
    </message>
    <message>
        <source>one person</source>
        <translation>ایک آدمی</translation>
    </message>
    <message>
        <source>%1: median %2 of %3, from %4 to %5.</source>
        <translation>%1: %3 کی درمیانی قدر %2، %4 تا %5۔</translation>
    </message>
    <message>
        <source>Apart from the others: row %1.</source>
        <translation>باقیوں سے الگ: قطار %1۔</translation>
    </message>
    <message>
        <source>%1 reading</source>
        <translation>%1 ریڈنگ</translation>
    </message>
    <message numerus="yes">
        <source>%1 readings</source>
        <translation>
            <numerusform>%1 ریڈنگ</numerusform>
            <numerusform>%1 ریڈنگ</numerusform>
        </translation>
    </message>
    <message>
        <source>A daily record is a table with the columns date (year-month-day), rain_mm, t_min_c, t_max_c and, where measured, wind_m_s, humidity_percent, sun_hours. Gaps are reported and never filled silently.</source>
        <translation>روزانہ ریکارڈ ایک جدول ہے جس کے کالم یہ ہیں: date (سال-مہینہ-دن)، rain_mm، t_min_c، t_max_c اور، جہاں ناپا گیا ہو، wind_m_s، humidity_percent، sun_hours۔ خالی جگہیں بتائی جاتی ہیں، کبھی چپکے سے نہیں بھری جاتیں۔</translation>
    </message>
    <message>
        <source>The project holds a daily record from %1 to %2, %3.</source>
        <translation>پراجیکٹ میں %1 سے %2 تک کا روزانہ ریکارڈ ہے، %3۔</translation>
    </message>
    <message>
        <source>It is not used now: the weather comes from monthly means.</source>
        <translation>ابھی یہ استعمال نہیں ہو رہا: موسم ماہانہ اوسط سے لیا جا رہا ہے۔</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 اور %2</translation>
    </message>
    <message>
        <source>Whether a fence on all four sides, a gate that shuts itself and a ladder or rope to climb out are part of the work.</source>
        <translation>کیا چاروں طرف باڑ، خود بند ہونے والا گیٹ اور باہر نکلنے کی سیڑھی یا رسی کام میں شامل ہیں۔</translation>
    </message>
    <message>
        <source>Whether runoff from roof or ground passes a silt trap before it enters the tank.</source>
        <translation>کیا چھت یا زمین کا بہتا پانی ٹینکی میں جانے سے پہلے گاد کی حوضی سے گزرتا ہے۔</translation>
    </message>
    <message>
        <source>Name of the licensed engineer who answers for building although a finding says stop. Counts only with licence, reason and date, and is printed on the sheets.</source>
        <translation>اُس لائسنس یافتہ انجینئر کا نام جو ”رکیں“ والے نکتے کے باوجود تعمیر کا ذمہ لیتا ہے۔ صرف لائسنس، وجہ اور تاریخ کے ساتھ مانا جاتا ہے، اور شیٹوں پر چھپتا ہے۔</translation>
    </message>
    <message>
        <source>Number or register of the engineer&apos;s licence.</source>
        <translation>انجینئر کے لائسنس کا نمبر یا رجسٹر۔</translation>
    </message>
    <message>
        <source>What the engineer found and asks for, so that it may be built.</source>
        <translation>انجینئر نے کیا دیکھا اور کیا مانگتا ہے، تاکہ تعمیر ہو سکے۔</translation>
    </message>
    <message>
        <source>Day on which the engineer decided.</source>
        <translation>وہ دن جب انجینئر نے فیصلہ کیا۔</translation>
    </message>
    <message>
        <source>Fence, gate and ladder planned</source>
        <translation>باڑ، گیٹ اور سیڑھی منصوبے میں ہیں</translation>
    </message>
    <message>
        <source>Silt trap planned</source>
        <translation>گاد کی حوضی منصوبے میں ہے</translation>
    </message>
    <message>
        <source>Override: engineer</source>
        <translation>خصوصی اجازت: انجینئر</translation>
    </message>
    <message>
        <source>Override: licence</source>
        <translation>خصوصی اجازت: لائسنس</translation>
    </message>
    <message>
        <source>Override: reason</source>
        <translation>خصوصی اجازت: وجہ</translation>
    </message>
    <message>
        <source>Override: date</source>
        <translation>خصوصی اجازت: تاریخ</translation>
    </message>
    <message>
        <source>holds fewer different points than a surface needs</source>
        <translation>الگ الگ نقطے اتنے نہیں جتنے سطح بنانے کے لیے چاہییں</translation>
    </message>
    <message>
        <source>holds points that all lie on one line; survey some beside it</source>
        <translation>سب نقطے ایک ہی لکیر پر ہیں؛ کچھ اس کے پہلو میں بھی ناپیں</translation>
    </message>
    <message>
        <source>repeats an earlier point and is left out</source>
        <translation>پہلے والا نقطہ دوبارہ آیا ہے، اس لیے چھوڑ دیا گیا</translation>
    </message>
    <message>
        <source>stands far above or below the points around it; check its height</source>
        <translation>آس پاس کے نقطوں سے بہت اوپر یا نیچے ہے؛ اس کی اونچائی دیکھیں</translation>
    </message>
    <message>
        <source>lies far from all other points; check its place</source>
        <translation>باقی سب نقطوں سے بہت دور ہے؛ اس کی جگہ دیکھیں</translation>
    </message>
    <message>
        <source>The soil is loose fill. Fill settles unevenly and cracks the lining: no floor or wall may stand on it. Choose a place in natural ground, or let a licensed engineer decide.</source>
        <translation>مٹی کچی بھرائی ہے۔ بھرائی ایک جیسی نہیں بیٹھتی اور لائننگ میں دراڑیں ڈالتی ہے: اس پر کوئی فرش یا دیوار نہ بنے۔ قدرتی زمین میں جگہ چنیں، یا فیصلہ لائسنس یافتہ انجینئر پر چھوڑیں۔</translation>
    </message>
    <message>
        <source>The soil is soft and wet. It does not carry the lining and its cut does not stand. Choose a drier place, or let a licensed engineer decide.</source>
        <translation>مٹی نرم اور گیلی ہے۔ یہ لائننگ کا بوجھ نہیں اٹھاتی اور اس کی کٹائی کھڑی نہیں رہتی۔ زیادہ سوکھی جگہ چنیں، یا فیصلہ لائسنس یافتہ انجینئر پر چھوڑیں۔</translation>
    </message>
    <message>
        <source>Part of the floor is rock. The lining cracks where rock and earth meet: bed it evenly on stones all over, and break no rock without someone trained for it.</source>
        <translation>گڑھے کے تلے کا کچھ حصہ چٹان ہے۔ جہاں چٹان اور مٹی ملتی ہیں وہاں لائننگ میں دراڑ پڑتی ہے: پورے تلے پر پتھروں کی ایک جیسی سولنگ بچھائیں، اور چٹان کسی تربیت یافتہ آدمی کے بغیر ہرگز نہ توڑیں۔</translation>
    </message>
    <message>
        <source>The soil holds %1 clay. From about %2 on, clay may swell when wet and crack the lining. Test it: dry a clod and see how far it shrinks.</source>
        <translation>مٹی میں %1 چکنی مٹی ہے۔ تقریباً %2 سے آگے چکنی مٹی گیلی ہو کر پھول سکتی ہے اور لائننگ میں دراڑیں ڈال سکتی ہے۔ اسے آزمائیں: ایک ڈھیلا سکھائیں اور دیکھیں کہ کتنا سکڑتا ہے۔</translation>
    </message>
    <message>
        <source>The pit is %1 deep and its walls lean back %2 for each unit of height; the published table asks for %3 in this soil. Slope the open cut back further, step it, or shore it. Local codes and licensed practice come first.</source>
        <translation>گڑھا %1 گہرا ہے اور اس کی دیواریں اونچائی کی ہر اکائی پر %2 پیچھے جھکی ہیں؛ شائع شدہ جدول اس مٹی میں %3 مانگتا ہے۔ کھلی کٹائی کو اور پیچھے سلامی دیں، سیڑھی کی طرح کاٹیں، یا ٹیک لگائیں۔ مقامی ضابطے اور لائسنس یافتہ ماہرین کی ہدایت سب سے پہلے ہیں۔</translation>
    </message>
    <message>
        <source>The pit is %1 deep. In the weakest soil of this kind a cut with this batter is reckoned to stand to %2 only, with a safety of %3. Dig less deep, lean the walls back, shore them, or let a licensed engineer test the soil.</source>
        <translation>گڑھا %1 گہرا ہے۔ حساب سے اس قسم کی سب سے کمزور مٹی میں اس سلامی کی کٹائی صرف %2 تک کھڑی رہتی ہے، حفاظتی فیکٹر %3 کے ساتھ۔ کم گہرا کھودیں، دیواروں کو پیچھے سلامی دیں، ٹیک لگائیں، یا لائسنس یافتہ انجینئر سے مٹی کی جانچ کروائیں۔</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on look for cracks, springs, leaning trees and old slips before you choose the place.</source>
        <translation>زمین کی ڈھلوان %1 ہے۔ %2 سے آگے، جگہ چننے سے پہلے دراڑیں، چشمے، جھکے درخت اور پرانی پھسلن تلاش کریں۔</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on no tank is built without a licensed engineer: a leak can bring the slope down.</source>
        <translation>زمین کی ڈھلوان %1 ہے۔ %2 سے آگے لائسنس یافتہ انجینئر کے بغیر کوئی ٹینکی نہیں بنائی جاتی: لیکیج پوری ڈھلان کو نیچے لا سکتی ہے۔</translation>
    </message>
    <message>
        <source>Distance and drop of the nearest edge downhill are not known, and not known is not safe. Measure both.</source>
        <translation>ڈھلان کی طرف نیچے سب سے قریبی کنارے کا فاصلہ اور اونچائی معلوم نہیں، اور جو معلوم نہیں وہ محفوظ نہیں۔ دونوں ناپیں۔</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away. One rule (drop plus pit depth) asks for %2, another (a third of the drop, as for footings) for %3; they disagree here. Move the tank back if you can.</source>
        <translation>ڈھلان کی طرف نیچے کنارہ %1 دور ہے۔ ایک قاعدہ (کنارے کی اونچائی جمع گڑھے کی گہرائی) %2 مانگتا ہے، دوسرا (کنارے کی اونچائی کا تہائی، جیسے بنیادوں کے لیے) %3؛ یہاں دونوں ایک نہیں۔ ہو سکے تو ٹینکی کو پیچھے ہٹائیں۔</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away, nearer than both rules allow: %2 (drop plus pit depth) and %3 (a third of the drop, as for footings). Move the tank back, or let a licensed engineer decide.</source>
        <translation>ڈھلان کی طرف نیچے کنارہ %1 دور ہے، دونوں قاعدوں کی حد سے قریب: %2 (کنارے کی اونچائی جمع گڑھے کی گہرائی) اور %3 (کنارے کی اونچائی کا تہائی، جیسے بنیادوں کے لیے)۔ ٹینکی کو پیچھے ہٹائیں، یا فیصلہ لائسنس یافتہ انجینئر پر چھوڑیں۔</translation>
    </message>
    <message>
        <source>The depth of ground water is not known, and not known is not safe: it can lift an empty tank. Ask how high wells and springs stand in the rains.</source>
        <translation>زیرِ زمین پانی کی گہرائی معلوم نہیں، اور جو معلوم نہیں وہ محفوظ نہیں: یہ خالی ٹینکی کو اوپر اٹھا سکتا ہے۔ پوچھیں کہ برسات میں کنوؤں اور چشموں کا پانی کہاں تک آتا ہے۔</translation>
    </message>
    <message>
        <source>Never let the water sink below %1 above the floor then.</source>
        <translation>تب پانی کو کبھی فرش سے %1 اوپر کے لیول سے نیچے نہ جانے دیں۔</translation>
    </message>
    <message>
        <source>Not even a full tank would hold it down.</source>
        <translation>بھری ہوئی ٹینکی بھی اسے نیچے دبا کر نہ رکھ سکے گی۔</translation>
    </message>
    <message>
        <source>Ground water stands %1 over the underside of the floor and lifts the empty tank: its weight is %2 of the lift, %3 is wanted.</source>
        <translation>زیرِ زمین پانی فرش کے نچلے رخ سے %1 اوپر ہے اور خالی ٹینکی کو اوپر اٹھاتا ہے: ٹینکی کا وزن اٹھانے والی طاقت کا %2 گنا ہے، %3 گنا چاہیے۔</translation>
    </message>
    <message>
        <source>Whether a house lies downhill is not known, and not known is not safe. Walk the way that escaping water would take.</source>
        <translation>معلوم نہیں کہ ڈھلان کی طرف نیچے کوئی گھر ہے یا نہیں، اور جو معلوم نہیں وہ محفوظ نہیں۔ جس راستے سے چھوٹا ہوا پانی جائے گا اس پر چل کر دیکھیں۔</translation>
    </message>
    <message>
        <source>A house lies %1 downhill, within %2. Lead the overflow, and the way of the water if the tank breaks, past it, or choose another place.</source>
        <translation>ڈھلان کی طرف نیچے %1 پر گھر ہے، یعنی %2 کے اندر۔ اوور فلو کو، اور ٹینکی ٹوٹنے پر پانی کے راستے کو، گھر سے بچا کر نکالیں، یا کوئی اور جگہ چنیں۔</translation>
    </message>
    <message>
        <source>Small children live near and no fence is planned. A child drowns in silence and cannot climb a smooth wall: plan a fence on all four sides with a gate that shuts itself, and a ladder or rope to climb out.</source>
        <translation>پاس میں چھوٹے بچے رہتے ہیں اور باڑ منصوبے میں نہیں۔ بچہ بغیر آواز ڈوبتا ہے اور ہموار دیوار پر نہیں چڑھ سکتا: چاروں طرف باڑ، خود بند ہونے والا گیٹ، اور باہر نکلنے کی سیڑھی یا رسی منصوبے میں رکھیں۔</translation>
    </message>
    <message>
        <source>Whether small children live within 20 m is not known, and not known is not safe. Plan the fence, or ask.</source>
        <translation>معلوم نہیں کہ 20 m کے اندر چھوٹے بچے رہتے ہیں یا نہیں، اور جو معلوم نہیں وہ محفوظ نہیں۔ باڑ منصوبے میں رکھیں، یا پوچھ لیں۔</translation>
    </message>
    <message>
        <source>Runoff is led in and no silt trap is planned. Silt fills the tank and wears the lining: plan a trap and a way to let the first rain go.</source>
        <translation>بہتا پانی ٹینکی میں لایا جاتا ہے اور گاد کی حوضی منصوبے میں نہیں۔ گاد ٹینکی کو بھر دیتی اور لائننگ کو گھسا دیتی ہے: گاد کی حوضی اور پہلی بارش کو باہر نکالنے کا راستہ منصوبے میں رکھیں۔</translation>
    </message>
    <message>
        <source>In %1 the mean lowest temperature is %2. Do not plaster or cure in frost, and ask locally whether ice has broken linings.</source>
        <translation>%1 میں کم سے کم درجہ حرارت کی اوسط %2 ہے۔ کورے میں نہ پلستر کریں نہ ترائی، اور مقامی لوگوں سے پوچھیں کہ کیا برف جمنے سے لائننگ ٹوٹی ہے۔</translation>
    </message>
    <message>
        <source>Water is missing all year round; most often in %1.</source>
        <translation>پانی کی کمی سارا سال ہوتی ہے؛ زیادہ تر %1 میں۔</translation>
    </message>
    <message>
        <source>Full at the start of %1, when it is used up fastest, and with nothing more flowing in, the tank lasts %2.</source>
        <translation>اگر %1 کے شروع میں ٹینکی بھری ہو، جب پانی سب سے جلدی ختم ہوتا ہے، اور پھر کوئی پانی نہ آئے، تو وہ %2 چلتی ہے۔</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, gives as many good years as are wanted.</source>
        <translation>اس گہرائی اور سلامی کی کوئی ٹینکی، %1 تک، اتنے اچھے سال نہیں دیتی جتنے چاہییں۔</translation>
    </message>
    <message>
        <source>To give as many good years as are wanted, a tank of this depth has to hold about %1.</source>
        <translation>جتنے اچھے سال چاہییں، ان کے لیے اس گہرائی کی ٹینکی میں تقریباً %1 گنجائش ہونی چاہیے۔</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, would reach it: lead in more water, or need less.</source>
        <translation>اس گہرائی اور سلامی کی کوئی ٹینکی، %1 تک، اسے پورا نہیں کرے گی: زیادہ پانی لائیں، یا ضرورت کم کریں۔</translation>
    </message>
    <message>
        <source>The yearly rain of the weather years made differs by %1; a spread of %2 is entered. Check the spread and the wet days, or have more years made.</source>
        <translation>بنے ہوئے موسمی سالوں میں سالانہ بارش کا فرق %1 ہے؛ درج فرق %2 ہے۔ فرق اور بارش کے دن دیکھ لیں، یا زیادہ سال بنوائیں۔</translation>
    </message>
    <message>
        <source>Weather years made from the monthly means: %1. Have at least %2 made to see how often the water runs short.</source>
        <translation>ماہانہ اوسط سے بنے موسمی سال: %1۔ یہ دیکھنے کے لیے کہ پانی کتنی بار کم پڑتا ہے، کم از کم %2 بنوائیں۔</translation>
    </message>
    <message>
        <source>Reference evapotranspiration of a mean year is %1 by Penman-Monteith and %2 by Hargreaves. Enter or check humidity, wind and sunshine, which only the first one uses.</source>
        <translation>اوسط سال کا معیاری بخاراتی خرچ Penman-Monteith سے %1 اور Hargreaves سے %2 ہے۔ نمی، ہوا اور دھوپ درج کریں یا دوبارہ دیکھیں، جنہیں صرف پہلا طریقہ استعمال کرتا ہے۔</translation>
    </message>
    <message>
        <source>Mean daily lowest</source>
        <translation>روزانہ کم سے کم کی اوسط</translation>
    </message>
    <message>
        <source>Mean daily highest</source>
        <translation>روزانہ زیادہ سے زیادہ کی اوسط</translation>
    </message>
    <message>
        <source>The record holds no whole year without gaps, counted from its wettest month. Add days, or have gaps filled in.</source>
        <translation>ریکارڈ میں خالی جگہوں کے بغیر کوئی پورا سال نہیں، سب سے زیادہ بارش والے مہینے سے گنیں تو۔ دن شامل کریں، یا خالی جگہیں بھروائیں۔</translation>
    </message>
    <message>
        <source>Reckoned with: %1.</source>
        <translation>حساب میں لیا گیا: %1۔</translation>
    </message>
    <message>
        <source>tank in natural ground</source>
        <translation>ٹینکی قدرتی زمین میں</translation>
    </message>
    <message>
        <source>cut and fill balanced</source>
        <translation>کٹائی اور بھرائی برابر</translation>
    </message>
    <message>
        <source>open end of the pipe</source>
        <translation>پائپ کا کھلا سرا</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>نلکا</translation>
    </message>
    <message>
        <source>low-head drip kit</source>
        <translation>کم ہیڈ والی ڈرپ کٹ</translation>
    </message>
    <message>
        <source>drip lines at full pressure</source>
        <translation>پورے دباؤ پر ڈرپ پائپ</translation>
    </message>
    <message>
        <source>micro-sprinkler</source>
        <translation>چھوٹا اسپرنکلر</translation>
    </message>
    <message>
        <source>notch in the rim</source>
        <translation>اوپری کنارے میں کھانچا</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>پائپ</translation>
    </message>
    <message>
        <source>bare soil</source>
        <translation>کچی مٹی</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>گھاس</translation>
    </message>
    <message>
        <source>stone pitching</source>
        <translation>پتھر کی پچنگ</translation>
    </message>
    <message>
        <source>plaster</source>
        <translation>پلستر</translation>
    </message>
    <message>
        <source>the line from the source</source>
        <translation>ذریعے سے آنے والی پائپ لائن</translation>
    </message>
    <message>
        <source>the line to the field</source>
        <translation>کھیت کو جانے والی پائپ لائن</translation>
    </message>
    <message>
        <source>Water does not flow as it should through %1: %2.</source>
        <translation>پانی %1 میں ویسے نہیں چلتا جیسے چلنا چاہیے: %2۔</translation>
    </message>
    <message>
        <source>With the outlet shut, the water in %1 presses with %2; the pipe bears %3. Take a stronger class, or let the water fall into an open tank on the way, which breaks the pressure.</source>
        <translation>نکاس بند ہو تو %1 میں پانی کا دباؤ %2 ہوتا ہے؛ پائپ %3 سہتا ہے۔ زیادہ مضبوط کلاس لیں، یا راستے میں پانی کو کھلی ٹینکی میں گرائیں، جو دباؤ توڑ دیتی ہے۔</translation>
    </message>
    <message>
        <source>In %1, at %2 along it, the pressure head would sink to %3; under %4 the column of water parts and the flow reckoned does not come about. Lay the pipe lower there, or throttle it at its end.</source>
        <translation>%1 میں، راستے کے %2 پر، دباؤ کا ہیڈ %3 تک گر جائے گا؛ %4 سے کم پر پانی کا سلسلہ ٹوٹ جاتا ہے اور حساب کیا بہاؤ نہیں ملتا۔ وہاں پائپ نیچے ڈالیں، یا اس کے آخری سرے پر بہاؤ کم کریں۔</translation>
    </message>
    <message>
        <source>From %2 to %3 along %1 the pipe lies above the line of heads and sucks, down to %4 of pressure head: air gathers, and a leak draws in dirt. Lay it lower there, or throttle the line at its end.</source>
        <translation>%1 پر %2 سے %3 تک پائپ ہیڈ کی لکیر سے اوپر ہے اور سکشن کرتا ہے، دباؤ کے ہیڈ %4 تک: اس میں ہوا جمع ہوتی ہے، اور کہیں لیکیج ہو تو گندگی اندر کھنچتی ہے۔ وہاں پائپ نیچے ڈالیں، یا پائپ لائن کے آخری سرے پر بہاؤ کم کریں۔</translation>
    </message>
    <message>
        <source>Air behind the high points of %1, the first at %2 along it, can hold back %3 of head; there are only %4 to drive the water, so it may not start to flow. Lay the pipe with a steady fall, or put an air valve on each high point.</source>
        <translation>%1 کے اونچے مقاموں کے پیچھے، جن میں پہلا راستے کے %2 پر ہے، رکی ہوا %3 ہیڈ روک سکتی ہے؛ پانی چلانے کو صرف %4 ہے، اس لیے ہو سکتا ہے پانی چلے ہی نہیں۔ پائپ کو لگاتار ڈھلوان میں ڈالیں، یا ہر اونچے مقام پر ایئر والو لگائیں۔</translation>
    </message>
    <message>
        <source>No pipe of the table brings that much and bears the pressure: find more fall, or break the pressure on the way.</source>
        <translation>جدول کا کوئی پائپ اتنا پانی نہیں لاتا جو یہ دباؤ بھی سہے: زیادہ ڈھلوان ڈھونڈیں، یا راستے میں دباؤ توڑیں۔</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter would bring it.</source>
        <translation>بیرونی قطر %1 کا پائپ یہ لے آئے گا۔</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter, class %2, would bring it.</source>
        <translation>بیرونی قطر %1 اور کلاس %2 کا پائپ یہ لے آئے گا۔</translation>
    </message>
    <message>
        <source>Only %2 come through %1; %3 are wanted.</source>
        <translation>%1 سے صرف %2 آتا ہے؛ %3 چاہیے۔</translation>
    </message>
    <message>
        <source>The pipe to the field goes through the lining. A tank of plaster leaks first where a pipe passes it, and the leak soaks the ground below. A siphon over the rim needs no hole.</source>
        <translation>کھیت کا پائپ لائننگ میں سے گزرتا ہے۔ پلستر کی ٹینکی سب سے پہلے وہیں لیک ہوتی ہے جہاں پائپ گزرے، اور لیکیج نیچے کی زمین کو بھگو دیتی ہے۔ اوپری کنارے کے اوپر سے سائفن لگے تو سوراخ کی ضرورت نہیں۔</translation>
    </message>
    <message>
        <source>The top of the siphon lies %1 above the water; at this height above the sea it can be %2 at most. Lay the top nearer to the rim, or let the water sink less deep.</source>
        <translation>سائفن کا سب سے اونچا مقام پانی سے %1 اوپر ہے؛ سطح سمندر سے اس بلندی پر یہ زیادہ سے زیادہ %2 ہو سکتا ہے۔ اسے اوپری کنارے کے قریب تر رکھیں، یا پانی کو کم گہرا اترنے دیں۔</translation>
    </message>
    <message>
        <source>The siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Lay the top lower.</source>
        <translation>سائفن ٹوٹ جاتا ہے: اس کا سب سے اونچا مقام پانی سے %1 اوپر ہے، اور وہاں پائپ کی سکشن حد سے زیادہ ہے۔ اسے نیچے رکھیں۔</translation>
    </message>
    <message>
        <source>Wide open, the siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Put a valve at its lower end and open it to %2 at most, or lay the top lower.</source>
        <translation>پورا کھلا ہو تو سائفن ٹوٹ جاتا ہے: اس کا سب سے اونچا مقام پانی سے %1 اوپر ہے، اور وہاں پائپ کی سکشن حد سے زیادہ ہے۔ اس کے نچلے سرے پر والو لگائیں اور زیادہ سے زیادہ %2 تک کھولیں، یا سب سے اونچا مقام نیچے رکھیں۔</translation>
    </message>
    <message>
        <source>Water runs through the siphon at %1; under %2 it does not carry air down, which gathers at the top and stops it in time. Take a narrower pipe, or put a plug at the top to fill it anew.</source>
        <translation>سائفن میں پانی %1 سے چلتا ہے؛ %2 سے کم پر وہ ہوا کو نیچے نہیں لے جاتا، جو اوپر جمع ہو کر آخر اسے روک دیتی ہے۔ کم قطر کا پائپ لیں، یا سب سے اونچے مقام پر ڈاٹ لگائیں تاکہ دوبارہ بھرا جا سکے۔</translation>
    </message>
    <message>
        <source>The outlet chosen (%1) wants a head of %2. Left are %3 with the tank full and %4 when it is nearly empty: %5. Lay the end of the line lower, take a wider pipe, or choose an outlet that needs less.</source>
        <translation>چنے گئے نکاس (%1) کو %2 ہیڈ چاہیے۔ ٹینکی بھری ہو تو %3 بچتا ہے اور تقریباً خالی ہو تو %4: %5۔ پائپ لائن کا سرا نیچے رکھیں، بڑے قطر کا پائپ لیں، یا ایسا نکاس چنیں جسے کم چاہیے۔</translation>
    </message>
    <message>
        <source>How hard it rains here at worst is not known; the overflow is reckoned for %1. Ask the weather station for the heaviest rain of ten minutes or a quarter of an hour.</source>
        <translation>معلوم نہیں کہ یہاں زیادہ سے زیادہ کتنی تیز بارش ہوتی ہے؛ اوور فلو کا حساب %1 سے لگایا گیا ہے۔ موسمی اسٹیشن سے دس منٹ یا پندرہ منٹ کی سب سے تیز بارش پوچھیں۔</translation>
    </message>
    <message>
        <source>A notch %1 wide would leave it.</source>
        <translation>%1 چوڑا کھانچا ہو تو اتنا بچ جائے گا۔</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would leave it.</source>
        <translation>اندرونی قطر %1 کا اوور فلو پائپ ہو تو اتنا بچ جائے گا۔</translation>
    </message>
    <message>
        <source>Give more freeboard, or lead less water in during a storm.</source>
        <translation>فری بورڈ زیادہ رکھیں، یا طوفانی بارش میں کم پانی اندر آنے دیں۔</translation>
    </message>
    <message>
        <source>If leaves block the overflow, water runs over the rim anywhere, up to %1 deep, and nobody knows where it goes. Lay a part of the rim lower, on the side where it does no harm.</source>
        <translation>اگر پتے اوور فلو بند کر دیں تو پانی اوپری کنارے پر کہیں سے بھی بہتا ہے، %1 تک گہرا، اور کسی کو معلوم نہیں کہ کہاں جاتا ہے۔ جس طرف نقصان نہ ہو، ادھر اوپری کنارے کا ایک حصہ نیچا رکھیں۔</translation>
    </message>
    <message>
        <source>In a storm the water in the spill path would stand %1 deep; the channel is %2 deep. Dig it deeper or wider.</source>
        <translation>طوفانی بارش میں فالتو پانی کی نالی میں پانی %1 گہرا ہوگا؛ نالی %2 گہری ہے۔ اسے زیادہ گہرا یا چوڑا کھودیں۔</translation>
    </message>
    <message>
        <source>In a storm the water runs down the spill path at %1 and may dig itself in: %2 bears about %3. Make the path wider or flatter, or pave it with stones.</source>
        <translation>طوفانی بارش میں فالتو پانی نالی میں %1 سے بہتا ہے اور کٹاؤ کر سکتا ہے: %2 تقریباً %3 سہتی ہے۔ نالی کو چوڑا یا کم ڈھلوان بنائیں، یا اس میں پتھر جڑیں۔</translation>
    </message>
    <message>
        <source>Make it deeper, longer or wider, or lead less water through it.</source>
        <translation>اسے زیادہ گہرا، لمبا یا چوڑا بنائیں، یا اس میں سے کم پانی گزاریں۔</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside would hold them.</source>
        <translation>اندر سے %1 لمبی اور %2 چوڑی حوضی انہیں روک لے گی۔</translation>
    </message>
    <message>
        <source>The silt trap holds grains down to %1 back; it should hold those of %2 too.</source>
        <translation>گاد کی حوضی %1 تک کے ذرے روکتی ہے؛ اسے %2 کے ذرے بھی روکنے چاہییں۔</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2. Look for cracks and for wet ground below it, and test again in some weeks.</source>
        <translation>ٹینکی سے %1 لیکیج ہے، تقریباً %2۔ دراڑیں اور اس کے نیچے گیلی زمین تلاش کریں، اور کچھ ہفتوں بعد دوبارہ ٹیسٹ کریں۔</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2.</source>
        <translation>ٹینکی سے %1 لیکیج ہے، تقریباً %2۔</translation>
    </message>
    <message>
        <source>That can soften the ground below it: let no more water in, empty it and mend it.</source>
        <translation>اس سے نیچے کی زمین نرم پڑ سکتی ہے: اور پانی نہ آنے دیں، ٹینکی خالی کریں اور مرمت کریں۔</translation>
    </message>
    <message>
        <source>Let the water sink until it stops: the leak is at that height. Mend the cracks there.</source>
        <translation>پانی کو اترنے دیں جب تک خود رک جائے: لیکیج اسی اونچائی پر ہے۔ وہاں کی دراڑیں مرمت کریں۔</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained %1, more than the readings&apos; error of %2: water ran in, or a reading is wrong. Shut all inlets and test again in dry weather.</source>
        <translation>بالٹی کے مقابلے میں ٹینکی میں %1 پانی بڑھا، جو ریڈنگ کی غلطی %2 سے زیادہ ہے: کہیں سے پانی اندر آیا، یا کوئی ریڈنگ غلط ہے۔ پانی کے سب داخلے بند کریں اور سوکھے موسم میں دوبارہ ٹیسٹ کریں۔</translation>
    </message>
    <message>
        <source>The leak test shows %1, no more than the readings&apos; error of %2, so it tells nothing. Let it run longer.</source>
        <translation>لیکیج ٹیسٹ %1 دکھاتا ہے، جو ریڈنگ کی غلطی %2 سے زیادہ نہیں، اس لیے اس سے کچھ پتا نہیں چلتا۔ اسے زیادہ دیر چلائیں۔</translation>
    </message>
    <message>
        <source>Of the water in the line, by thermometer; cold water flows a little slower, and over 20 °C plastic pipe bears less.</source>
        <translation>پائپ لائن کے پانی کا، تھرمامیٹر سے؛ ٹھنڈا پانی ذرا آہستہ چلتا ہے، اور 20 °C سے اوپر پلاسٹک پائپ کم دباؤ سہتا ہے۔</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from its inlet at the source to this point; measure with a tape held level.</source>
        <translation>ذریعے پر پائپ کے داخلے سے اس نقطے تک، پائپ کے راستے کے ساتھ ہموار فاصلہ؛ فیتہ ہموار پکڑ کر ناپیں۔</translation>
    </message>
    <message>
        <source>Height of the pipe at this point over the rim of the tank, by water level tube; a point lower than the rim is negative.</source>
        <translation>اس نقطے پر پائپ کی ٹینکی کے اوپری کنارے سے اونچائی، لیول پائپ سے؛ اوپری کنارے سے نیچا نقطہ منفی ہے۔</translation>
    </message>
    <message>
        <source>Depth of water over the middle of the pipe&apos;s inlet at the source when it is lowest.</source>
        <translation>ذریعے پر پائپ کے داخلے کے بیچ سے اوپر پانی کی گہرائی، جب پانی سب سے کم ہو۔</translation>
    </message>
    <message>
        <source>What the line shall bring, at most what the source gives. Leave empty if anything will do.</source>
        <translation>پائپ لائن کتنا پانی لائے، زیادہ سے زیادہ جتنا ذریعہ دیتا ہے۔ کوئی بھی مقدار چلے تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe from the source.</source>
        <translation>پولی تھین کی مضبوطی، ذریعے سے آنے والے پائپ پر چھپی ہوئی۔</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe from the source; it is printed along it.</source>
        <translation>دکان دار ذریعے سے آنے والے پائپ کا جو سائز بتاتا ہے؛ پائپ پر چھپا ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Pressure that the pipe from the source is made for, printed on it as PN.</source>
        <translation>وہ دباؤ جس کے لیے ذریعے سے آنے والا پائپ بنا ہے، پائپ پر PN لکھا ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe from the source, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>ذریعے سے آنے والے پائپ کا اندرونی قطر، صاف کٹے سرے پر ناپا ہوا۔ خالی چھوڑیں تو پائپوں کے جدول سے لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between source and tank; the pipe&apos;s own wide curves do not count.</source>
        <translation>ذریعے اور ٹینکی کے بیچ فٹنگ والے تیز موڑ؛ پائپ کے اپنے کھلے موڑ نہیں گنے جاتے۔</translation>
    </message>
    <message>
        <source>Valves between source and tank, reckoned wide open.</source>
        <translation>ذریعے اور ٹینکی کے بیچ والو، حساب میں پورے کھلے۔</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from where it leaves the tank to this point; measure with a tape held level.</source>
        <translation>جہاں پائپ ٹینکی سے نکلتا ہے وہاں سے اس نقطے تک، پائپ کے راستے کے ساتھ ہموار فاصلہ؛ فیتہ ہموار پکڑ کر ناپیں۔</translation>
    </message>
    <message>
        <source>Height of the field pipe at this point over the rim of the tank, by water level tube; most points lie lower and are negative.</source>
        <translation>اس نقطے پر کھیت کے پائپ کی ٹینکی کے اوپری کنارے سے اونچائی، لیول پائپ سے؛ زیادہ تر نقطے نیچے ہوتے ہیں اور منفی ہیں۔</translation>
    </message>
    <message>
        <source>Whether the pipe climbs over the rim and works as a siphon; else it goes through the lining, where tanks leak first.</source>
        <translation>کیا پائپ اوپری کنارے کے اوپر سے جاتا ہے اور سائفن کا کام کرتا ہے؛ ورنہ لائننگ میں سے گزرتا ہے، جہاں ٹینکیاں سب سے پہلے لیک ہوتی ہیں۔</translation>
    </message>
    <message>
        <source>Height of the middle of the pipe over the rim where it is highest; the lower, the better it runs.</source>
        <translation>جہاں پائپ سب سے اونچا ہے وہاں پائپ کے بیچ کی اوپری کنارے سے اونچائی؛ جتنا نیچا، اتنا بہتر چلتا ہے۔</translation>
    </message>
    <message>
        <source>What stands at the end of the line; each kind needs its own head of water.</source>
        <translation>پائپ لائن کے سرے پر کیا لگا ہے؛ ہر قسم کو اپنا ہیڈ چاہیے۔</translation>
    </message>
    <message>
        <source>How many of them run at the same time.</source>
        <translation>ان میں سے ایک وقت میں کتنے چلتے ہیں۔</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe to the field.</source>
        <translation>پولی تھین کی مضبوطی، کھیت کو جانے والے پائپ پر چھپی ہوئی۔</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe to the field; it is printed along it.</source>
        <translation>دکان دار کھیت کو جانے والے پائپ کا جو سائز بتاتا ہے؛ پائپ پر چھپا ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Pressure that the pipe to the field is made for, printed on it as PN.</source>
        <translation>وہ دباؤ جس کے لیے کھیت کو جانے والا پائپ بنا ہے، پائپ پر PN لکھا ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe to the field, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>کھیت کو جانے والے پائپ کا اندرونی قطر، صاف کٹے سرے پر ناپا ہوا۔ خالی چھوڑیں تو پائپوں کے جدول سے لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between tank and field, those at the rim counted; the pipe&apos;s own wide curves do not count.</source>
        <translation>ٹینکی اور کھیت کے بیچ فٹنگ والے تیز موڑ، اوپری کنارے والے بھی گنیں؛ پائپ کے اپنے کھلے موڑ نہیں گنے جاتے۔</translation>
    </message>
    <message>
        <source>Valves between tank and field, reckoned wide open.</source>
        <translation>ٹینکی اور کھیت کے بیچ والو، حساب میں پورے کھلے۔</translation>
    </message>
    <message>
        <source>Where spare water leaves: a notch in the rim, or a pipe below it.</source>
        <translation>فالتو پانی کہاں سے نکلتا ہے: اوپری کنارے کے کھانچے سے، یا اس سے نیچے لگے پائپ سے۔</translation>
    </message>
    <message>
        <source>Clear width of the notch along the rim; its sill lies at the overflow level.</source>
        <translation>اوپری کنارے کے ساتھ کھانچے کی اندر کی چوڑائی؛ اس کی دہلیز اوور فلو کے لیول پر ہوتی ہے۔</translation>
    </message>
    <message>
        <source>Inside diameter of the overflow pipe; its inside bottom lies at the overflow level.</source>
        <translation>اوور فلو پائپ کا اندرونی قطر؛ پائپ کے اندر کا نچلا حصہ اوور فلو کے لیول پر ہوتا ہے۔</translation>
    </message>
    <message>
        <source>From its inlet in the tank to where it ends over the spill path.</source>
        <translation>ٹینکی میں اس کے منہ سے لے کر وہاں تک جہاں یہ فالتو پانی کی نالی پر ختم ہوتا ہے۔</translation>
    </message>
    <message>
        <source>How much lower the end of the overflow pipe lies than its inlet.</source>
        <translation>اوور فلو پائپ کا آخری سرا اس کے منہ سے کتنا نیچے ہے۔</translation>
    </message>
    <message>
        <source>Heaviest rain that falls here in some minutes, counted for an hour; ask the weather station. Leave empty if not known.</source>
        <translation>یہاں چند منٹ میں پڑنے والی سب سے تیز بارش، ایک گھنٹے کے حساب سے؛ موسمی اسٹیشن سے پوچھیں۔ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Length of rim laid a little lower, so that water leaves there and nowhere else when the overflow is blocked; 0 for none.</source>
        <translation>اوپری کنارے کی وہ لمبائی جو ذرا نیچی رکھی گئی ہے، تاکہ اوور فلو بند ہو تو پانی وہیں سے نکلے، کہیں اور سے نہیں؛ نہ ہو تو 0۔</translation>
    </message>
    <message>
        <source>How much lower this part of the rim is laid; check it with water in a clear tube.</source>
        <translation>اوپری کنارے کا یہ حصہ کتنا نیچا رکھا گیا ہے؛ شفاف لیول پائپ میں پانی سے جانچیں۔</translation>
    </message>
    <message>
        <source>Width of the bed of the channel that leads spare water away from the tank.</source>
        <translation>جو نالی فالتو پانی کو ٹینکی سے دور لے جاتی ہے، اس کے تلے کی چوڑائی۔</translation>
    </message>
    <message>
        <source>Depth of this channel from its edge down to its bed.</source>
        <translation>اس نالی کی گہرائی، اس کے کنارے سے تلے تک۔</translation>
    </message>
    <message>
        <source>How far each side of the channel leans outward for each unit of height; 0 is upright.</source>
        <translation>نالی کا ہر پہلو اونچائی کی ہر اکائی پر کتنا باہر جھکتا ہے؛ 0 یعنی سیدھا کھڑا۔</translation>
    </message>
    <message>
        <source>Drop of the bed over 100 of length where it is steepest; measure it with a water level tube.</source>
        <translation>جہاں ڈھلوان سب سے زیادہ ہے وہاں 100 لمبائی پر تلا کتنا نیچے جاتا ہے؛ لیول پائپ سے ناپیں۔</translation>
    </message>
    <message>
        <source>What the water of the spill path runs over.</source>
        <translation>فالتو پانی کی نالی کا پانی کس چیز پر بہتا ہے۔</translation>
    </message>
    <message>
        <source>The trap is made long enough for this grain to sink; 0.1 mm is fine sand that can just be felt between the fingers.</source>
        <translation>حوضی اتنی لمبی بنائی جاتی ہے کہ یہ ذرہ بیٹھ جائے؛ 0.1 mm باریک ریت ہے جو انگلیوں میں بس محسوس ہوتی ہے۔</translation>
    </message>
    <message>
        <source>Most water that passes the trap at a time. Leave empty to take what source line and storm bring.</source>
        <translation>ایک وقت میں حوضی سے گزرنے والا زیادہ سے زیادہ پانی۔ خالی چھوڑیں تو ذریعے کی پائپ لائن اور طوفانی بارش کا پانی لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Dry weight of what settles overnight from muddy water as it comes in; let a full bucket stand, dry the mud and weigh it.</source>
        <translation>آنے والے گدلے پانی میں سے رات بھر میں جو بیٹھ جائے، اس کا خشک وزن؛ بھری بالٹی رکھ چھوڑیں، کیچڑ سکھائیں اور تولیں۔</translation>
    </message>
    <message>
        <source>Time in the wet season after which someone empties the trap.</source>
        <translation>بارشوں کے موسم میں کتنے وقت بعد کوئی حوضی خالی کرتا ہے۔</translation>
    </message>
    <message>
        <source>Inside length, along the water, of a trap that stands or is planned by eye. Leave empty if there is none.</source>
        <translation>جو حوضی بنی ہوئی ہے یا اندازے سے سوچی گئی ہے، اس کی اندر کی لمبائی، پانی کے رخ۔ نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Inside width, across the water, of that trap. Leave empty if there is none.</source>
        <translation>اس حوضی کی اندر کی چوڑائی، پانی کے آرپار۔ نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Water over the mud in that trap just before it is cleaned. Leave empty if there is none.</source>
        <translation>صفائی سے ذرا پہلے اس حوضی میں کیچڑ کے اوپر پانی۔ نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Water over the finished floor while the test runs. Leave empty if the tank is full.</source>
        <translation>ٹیسٹ کے دوران تیار فرش سے اوپر پانی۔ ٹینکی بھری ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>How far the water in the tank sank between the two readings, on a scale fixed to the wall; nothing may flow in or out.</source>
        <translation>دو ریڈنگ کے بیچ ٹینکی کا پانی کتنا اترا، دیوار پر لگے پیمانے سے؛ نہ پانی اندر آئے نہ باہر جائے۔</translation>
    </message>
    <message>
        <source>From the first reading to the second; a day or longer, without rain.</source>
        <translation>پہلی ریڈنگ سے دوسری تک؛ ایک دن یا زیادہ، بغیر بارش کے۔</translation>
    </message>
    <message>
        <source>How far one reading of the scale may be wrong; read it twice and see.</source>
        <translation>پیمانے کی ایک ریڈنگ کتنی غلط ہو سکتی ہے؛ دو بار پڑھ کر دیکھیں۔</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>پانی کا درجہ حرارت</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>پائپ لائن پر فاصلہ</translation>
    </message>
    <message>
        <source>Height over the rim</source>
        <translation>اوپری کنارے سے اونچائی</translation>
    </message>
    <message>
        <source>Water over the inlet</source>
        <translation>داخلے سے اوپر پانی</translation>
    </message>
    <message>
        <source>Flow wanted from the source</source>
        <translation>ذریعے سے مطلوبہ بہاؤ</translation>
    </message>
    <message>
        <source>Source pipe: grade</source>
        <translation>ذریعے کا پائپ: گریڈ</translation>
    </message>
    <message>
        <source>Source pipe: outside diameter</source>
        <translation>ذریعے کا پائپ: بیرونی قطر</translation>
    </message>
    <message>
        <source>Source pipe: pressure class</source>
        <translation>ذریعے کا پائپ: پریشر کلاس</translation>
    </message>
    <message>
        <source>Source pipe: bore, measured</source>
        <translation>ذریعے کا پائپ: ناپا ہوا اندرونی قطر</translation>
    </message>
    <message>
        <source>Source pipe: elbows</source>
        <translation>ذریعے کا پائپ: ایلبو</translation>
    </message>
    <message>
        <source>Source pipe: valves</source>
        <translation>ذریعے کا پائپ: والو</translation>
    </message>
    <message>
        <source>Siphon over the rim</source>
        <translation>اوپری کنارے کے اوپر سے سائفن</translation>
    </message>
    <message>
        <source>Top of the siphon over the rim</source>
        <translation>سائفن کا سب سے اونچا مقام، اوپری کنارے سے</translation>
    </message>
    <message>
        <source>Water let out through</source>
        <translation>پانی کس سے نکلتا ہے</translation>
    </message>
    <message>
        <source>Open at a time</source>
        <translation>ایک وقت میں کھلے</translation>
    </message>
    <message>
        <source>Field pipe: grade</source>
        <translation>کھیت کا پائپ: گریڈ</translation>
    </message>
    <message>
        <source>Field pipe: outside diameter</source>
        <translation>کھیت کا پائپ: بیرونی قطر</translation>
    </message>
    <message>
        <source>Field pipe: pressure class</source>
        <translation>کھیت کا پائپ: پریشر کلاس</translation>
    </message>
    <message>
        <source>Field pipe: bore, measured</source>
        <translation>کھیت کا پائپ: ناپا ہوا اندرونی قطر</translation>
    </message>
    <message>
        <source>Field pipe: elbows</source>
        <translation>کھیت کا پائپ: ایلبو</translation>
    </message>
    <message>
        <source>Field pipe: valves</source>
        <translation>کھیت کا پائپ: والو</translation>
    </message>
    <message>
        <source>Overflow through</source>
        <translation>اوور فلو کس سے</translation>
    </message>
    <message>
        <source>Width of the notch</source>
        <translation>کھانچے کی چوڑائی</translation>
    </message>
    <message>
        <source>Overflow pipe: inside diameter</source>
        <translation>اوور فلو پائپ: اندرونی قطر</translation>
    </message>
    <message>
        <source>Overflow pipe: length</source>
        <translation>اوور فلو پائپ: لمبائی</translation>
    </message>
    <message>
        <source>Overflow pipe: fall</source>
        <translation>اوور فلو پائپ: ڈھلوان</translation>
    </message>
    <message>
        <source>Heaviest short rain</source>
        <translation>سب سے تیز مختصر بارش</translation>
    </message>
    <message>
        <source>Low part of the rim: length</source>
        <translation>اوپری کنارے کا نیچا حصہ: لمبائی</translation>
    </message>
    <message>
        <source>Low part of the rim: lower by</source>
        <translation>اوپری کنارے کا نیچا حصہ: کتنا نیچا</translation>
    </message>
    <message>
        <source>Spill path: bottom width</source>
        <translation>فالتو پانی کی نالی: تلے کی چوڑائی</translation>
    </message>
    <message>
        <source>Spill path: depth</source>
        <translation>فالتو پانی کی نالی: گہرائی</translation>
    </message>
    <message>
        <source>Spill path: side slope</source>
        <translation>فالتو پانی کی نالی: پہلو کی ڈھلان</translation>
    </message>
    <message>
        <source>Spill path: fall</source>
        <translation>فالتو پانی کی نالی: ڈھلوان</translation>
    </message>
    <message>
        <source>Spill path: bed</source>
        <translation>فالتو پانی کی نالی: تلا</translation>
    </message>
    <message>
        <source>Smallest grain to keep back</source>
        <translation>روکنے کا سب سے چھوٹا ذرہ</translation>
    </message>
    <message>
        <source>Flow through the silt trap</source>
        <translation>گاد کی حوضی سے بہاؤ</translation>
    </message>
    <message>
        <source>Silt in the water</source>
        <translation>پانی میں گاد</translation>
    </message>
    <message>
        <source>Silt trap cleaned every</source>
        <translation>گاد کی حوضی کی صفائی ہر</translation>
    </message>
    <message>
        <source>Silt trap as it is: length</source>
        <translation>موجودہ گاد کی حوضی: لمبائی</translation>
    </message>
    <message>
        <source>Silt trap as it is: width</source>
        <translation>موجودہ گاد کی حوضی: چوڑائی</translation>
    </message>
    <message>
        <source>Silt trap as it is: water depth</source>
        <translation>موجودہ گاد کی حوضی: پانی کی گہرائی</translation>
    </message>
    <message>
        <source>Water in the tank during the test</source>
        <translation>ٹیسٹ کے دوران ٹینکی میں پانی</translation>
    </message>
    <message>
        <source>Drop in the tank</source>
        <translation>ٹینکی میں پانی کتنا اترا</translation>
    </message>
    <message>
        <source>Drop in the bucket</source>
        <translation>بالٹی میں پانی کتنا اترا</translation>
    </message>
    <message>
        <source>Time between the readings</source>
        <translation>ریڈنگ کے بیچ کا وقت</translation>
    </message>
    <message>
        <source>Error of one reading</source>
        <translation>ایک ریڈنگ کی غلطی</translation>
    </message>
    <message>
        <source>north</source>
        <translation>شمال</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>شمال مشرق</translation>
    </message>
    <message>
        <source>east</source>
        <translation>مشرق</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>جنوب مشرق</translation>
    </message>
    <message>
        <source>south</source>
        <translation>جنوب</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>جنوب مغرب</translation>
    </message>
    <message>
        <source>west</source>
        <translation>مغرب</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>شمال مغرب</translation>
    </message>
    <message>
        <source>The ground is level.</source>
        <translation>زمین ہموار ہے۔</translation>
    </message>
    <message>
        <source>The ground falls %1 towards the %2.</source>
        <translation>زمین کی ڈھلوان %1 ہے، %2 کی طرف۔</translation>
    </message>
    <message>
        <source>The platform lies %1; the rim is level with it.</source>
        <translation>پلیٹ فارم %1 ہے؛ اوپری کنارہ اس کے برابر ہے۔</translation>
    </message>
    <message>
        <source>To make it, %1 are cut and %2 filled in, rammed in layers.</source>
        <translation>اسے بنانے کے لیے %1 کٹائی ہوتی ہے اور %2 بھرائی، جو تہوں میں کوٹی جاتی ہے۔</translation>
    </message>
    <message>
        <source>First strip %1 of topsoil and keep it apart: it belongs on the beds.</source>
        <translation>پہلے %1 اوپر کی زرخیز مٹی اتار کر الگ رکھیں: یہ کیاریوں میں ڈالنے کی ہے۔</translation>
    </message>
    <message>
        <source>The whole tank just stands in natural ground: the platform may be no higher.</source>
        <translation>پوری ٹینکی بس قدرتی زمین میں آ جاتی ہے: پلیٹ فارم اس سے اونچا نہیں ہو سکتا۔</translation>
    </message>
    <message>
        <source>The whole tank stands in natural ground; where it is least, %1 of it lie over the pit.</source>
        <translation>پوری ٹینکی قدرتی زمین میں ہے؛ جہاں سب سے کم ہے وہاں بھی قدرتی زمین گڑھے سے %1 اوپر تک ہے۔</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: natural ground ends %1 short of the pit.</source>
        <translation>ٹینکی کا کچھ حصہ بھرائی پر کھڑا ہوگا: قدرتی زمین گڑھے سے %1 پہلے ختم ہو جاتی ہے۔</translation>
    </message>
    <message>
        <source>It would not with the platform %1, or lower.</source>
        <translation>پلیٹ فارم %1، یا اس سے نیچے ہو تو ایسا نہیں ہوگا۔</translation>
    </message>
    <message>
        <source>The fill takes all that is dug; no spoil is left over.</source>
        <translation>بھرائی میں کھدائی کی ساری مٹی لگ جاتی ہے؛ کچھ نہیں بچتی۔</translation>
    </message>
    <message>
        <source>As it lies, %1 of ground are left over; how large the heap gets depends on the soil, which is not known.</source>
        <translation>ٹھوس زمین کے ناپ سے %1 مٹی بچتی ہے؛ ڈھیر کتنا بڑا ہوگا، یہ مٹی پر ہے، جو معلوم نہیں۔</translation>
    </message>
    <message>
        <source>Left over are %1 of loose ground: a heap %2 high and %3 across.</source>
        <translation>%1 کھلی مٹی بچتی ہے: ڈھیر کی اونچائی %2 اور پھیلاؤ %3۔</translation>
    </message>
    <message>
        <source>Heap it to the %1 of the tank, its toe %2 back from the pit edge; never nearer than %3.</source>
        <translation>اسے ٹینکی کے %1 میں ڈھیر کریں، ڈھیر کی جڑ گڑھے کے کنارے سے %2 پیچھے؛ %3 سے قریب کبھی نہیں۔</translation>
    </message>
    <message>
        <source>Later spread it thin on beds below, or raise the lips of terraces well away with it.</source>
        <translation>بعد میں اسے نیچے کی کیاریوں پر پتلا پھیلا دیں، یا اس سے دور کے سیڑھی کھیتوں کی وٹیں اونچی کریں۔</translation>
    </message>
    <message>
        <source>Never heap it uphill of the pit, where rain washes it in, nor on the downhill edge, which its weight can bring down.</source>
        <translation>اسے کبھی گڑھے سے اوپر کی طرف ڈھیر نہ کریں، جہاں سے بارش اسے اندر بہا لائے، نہ ڈھلان کی طرف کے کنارے پر، جسے اس کا وزن گرا سکتا ہے۔</translation>
    </message>
    <message>
        <source>Never heap it beside the pit edge or on the edge of a terrace, which its weight can bring down.</source>
        <translation>اسے کبھی گڑھے کے کنارے کے ساتھ یا سیڑھی کھیت کے کنارے پر ڈھیر نہ کریں، جسے اس کا وزن گرا سکتا ہے۔</translation>
    </message>
    <message>
        <source>Middle of the tank, east</source>
        <translation>ٹینکی کا درمیان، مشرق کو</translation>
    </message>
    <message>
        <source>Middle of the tank, north</source>
        <translation>ٹینکی کا درمیان، شمال کو</translation>
    </message>
    <message>
        <source>Tank turned by</source>
        <translation>ٹینکی کتنی گھومی ہوئی</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>پلیٹ فارم کا لیول</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle</source>
        <translation>بیچ میں زمین سے پلیٹ فارم کی اونچائی</translation>
    </message>
    <message>
        <source>Walkway round the rim</source>
        <translation>اوپری کنارے کے گرد چلنے کی پٹی</translation>
    </message>
    <message>
        <source>Batter of the cut face</source>
        <translation>کٹائی کی سطح کی سلامی</translation>
    </message>
    <message>
        <source>Batter of the fill face</source>
        <translation>بھرائی کی سطح کی سلامی</translation>
    </message>
    <message>
        <source>Topsoil stripped</source>
        <translation>اتاری گئی زرخیز مٹی</translation>
    </message>
    <message>
        <source>Compacted fill per ground dug</source>
        <translation>کوٹی بھرائی فی کھودی مٹی</translation>
    </message>
    <message>
        <source>Direction of the spoil heap</source>
        <translation>مٹی کے ڈھیر کی سمت</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies east of the zero of the spot heights; west of it is negative.</source>
        <translation>ٹینکی کا درمیان اونچائی کے نقطوں کے صفر سے کتنا مشرق کو ہے؛ مغرب کو ہو تو منفی۔</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies north of the zero of the spot heights; south of it is negative.</source>
        <translation>ٹینکی کا درمیان اونچائی کے نقطوں کے صفر سے کتنا شمال کو ہے؛ جنوب کو ہو تو منفی۔</translation>
    </message>
    <message>
        <source>How high the level place round the tank lies: so low that the whole tank stands in natural ground, so that cut and fill balance, or as you give it.</source>
        <translation>ٹینکی کے گرد ہموار جگہ کتنی اونچی ہو: اتنی نیچی کہ پوری ٹینکی قدرتی زمین میں ہو، یا ایسی کہ کٹائی اور بھرائی برابر ہوں، یا جتنی آپ دیں۔</translation>
    </message>
    <message>
        <source>Height of the platform, which the rim is level with, over the natural ground at the middle of the tank; below that ground it is negative.</source>
        <translation>پلیٹ فارم کی اونچائی، جس کے برابر اوپری کنارہ ہے، ٹینکی کے درمیان کی قدرتی زمین سے؛ اس زمین سے نیچے ہو تو منفی۔</translation>
    </message>
    <message>
        <source>Level ground left all round outside the rim collar, to walk and carry on.</source>
        <translation>کنارے کے کالر سے باہر چاروں طرف چھوڑی گئی ہموار زمین، چلنے اور سامان اٹھا کر لے جانے کے لیے۔</translation>
    </message>
    <message>
        <source>How far the face cut into the hill leans back for each unit of height; look at old cuts in the same soil that still stand.</source>
        <translation>پہاڑی میں کٹی سطح اونچائی کی ہر اکائی پر کتنی پیچھے جھکتی ہے؛ اسی مٹی کی پرانی کٹائیاں دیکھیں جو اب تک کھڑی ہیں۔</translation>
    </message>
    <message>
        <source>Depth of the dark soil with roots in the trial pit, which is taken off first and kept for beds.</source>
        <translation>آزمائشی گڑھے میں جڑوں والی کالی مٹی کی گہرائی، جو سب سے پہلے اتاری اور کیاریوں کے لیے رکھی جاتی ہے۔</translation>
    </message>
    <message>
        <source>Volume that ground fills once it is placed in layers and rammed, for each unit dug: 0.90 when it packs closer than it lay.</source>
        <translation>تہوں میں ڈال کر کوٹنے کے بعد مٹی کتنی جگہ بھرتی ہے، کھودی گئی ہر اکائی پر: 0.90 جب پہلے سے زیادہ دب جائے۔</translation>
    </message>
    <message>
        <source>Compass direction from the tank to the heap: north 0, east 90, south 180. Leave empty to have it put across the fall.</source>
        <translation>ٹینکی سے ڈھیر کی سمت، قطب نما سے: شمال 0، مشرق 90، جنوب 180۔ خالی چھوڑیں تو ڈھلوان کے آڑے رکھا جاتا ہے۔</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: a surface needs three at different places. Survey more, all round the tank.</source>
        <translation>اونچائی کے نقطوں سے زمین نہیں بن سکتی: سطح کے لیے الگ الگ جگہ کے تین نقطے چاہییں۔ ٹینکی کے چاروں طرف اور نقطے ناپیں۔</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they all lie on one line. Survey some to the side of it.</source>
        <translation>اونچائی کے نقطوں سے زمین نہیں بن سکتی: سب ایک ہی لکیر پر ہیں۔ کچھ اس کے پہلو میں ناپیں۔</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they could not be joined to triangles. Look for points that stand nearly at the same place, and take them out.</source>
        <translation>اونچائی کے نقطوں سے زمین نہیں بن سکتی: انہیں جوڑ کر تکونیں نہیں بن سکیں۔ وہ نقطے ڈھونڈیں جو تقریباً ایک ہی جگہ ہیں، اور انہیں نکالیں۔</translation>
    </message>
    <message>
        <source>The platform does not lie wholly inside the survey. Move the tank, or survey more ground around it.</source>
        <translation>پلیٹ فارم پورا سروے کے اندر نہیں۔ ٹینکی کو ہٹائیں، یا اس کے گرد اور زمین کا سروے کریں۔</translation>
    </message>
    <message>
        <source>The ground is as steep as a face of cut or fill, which so never meets it. Choose flatter ground, or a steeper batter if the soil bears it.</source>
        <translation>زمین اتنی ہی کھڑی ہے جتنی کٹائی یا بھرائی کی سطح، اس لیے وہ زمین سے کبھی نہیں ملتی۔ کم ڈھلوان زمین چنیں، یا زیادہ کھڑی سلامی رکھیں اگر مٹی اسے سہتی ہو۔</translation>
    </message>
    <message>
        <source>At no level do cut and fill balance here. Give the level of the platform, or have the tank stand in natural ground.</source>
        <translation>یہاں کسی لیول پر کٹائی اور بھرائی برابر نہیں ہوتیں۔ پلیٹ فارم کا لیول خود دیں، یا ٹینکی کو قدرتی زمین میں رکھیں۔</translation>
    </message>
    <message>
        <source>Spot heights that look doubtful: %1, the first in row %2. Each stands far above, below or away from the others, or repeats one. Look at the place and mend or delete the row.</source>
        <translation>اونچائی کے نقطے جن پر شک ہے: %1، پہلا قطار %2 میں۔ ہر ایک باقیوں سے بہت اوپر، نیچے یا دور ہے، یا کسی کو دہراتا ہے۔ جگہ دیکھیں اور قطار ٹھیک کریں یا مٹائیں۔</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: where it is worst, natural ground ends %1 short of floor or wall. Fill settles and cracks the lining. The platform lies %2; lay it %3, or lower.</source>
        <translation>ٹینکی کا کچھ حصہ بھرائی پر کھڑا ہوگا: جہاں سب سے خراب ہے وہاں قدرتی زمین فرش یا دیوار سے %1 پہلے ختم ہو جاتی ہے۔ بھرائی بیٹھتی ہے اور لائننگ میں دراڑیں ڈالتی ہے۔ پلیٹ فارم %2 ہے؛ اسے %3 رکھیں، یا اس سے نیچے۔</translation>
    </message>
    <message>
        <source>as high as the natural ground at the middle of the tank</source>
        <translation>ٹینکی کے درمیان کی قدرتی زمین کے برابر</translation>
    </message>
    <message>
        <source>%1 over the natural ground at the middle of the tank</source>
        <translation>ٹینکی کے درمیان کی قدرتی زمین سے %1 اوپر</translation>
    </message>
    <message>
        <source>%1 below the natural ground at the middle of the tank</source>
        <translation>ٹینکی کے درمیان کی قدرتی زمین سے %1 نیچے</translation>
    </message>
    <message>
        <source>roughness, plastic pipe</source>
        <translation>کھردراپن، پلاسٹک پائپ</translation>
    </message>
    <message>
        <source>roughness, steel pipe</source>
        <translation>کھردراپن، لوہے کا پائپ</translation>
    </message>
    <message>
        <source>roughness, galvanised pipe</source>
        <translation>کھردراپن، جستی پائپ</translation>
    </message>
    <message>
        <source>roughness, cast iron pipe</source>
        <translation>کھردراپن، ڈھلواں لوہے کا پائپ</translation>
    </message>
    <message>
        <source>roughness, concrete pipe</source>
        <translation>کھردراپن، کنکریٹ کا پائپ</translation>
    </message>
    <message>
        <source>Hazen-Williams C, plastic pipe</source>
        <translation>Hazen-Williams کا C، پلاسٹک پائپ</translation>
    </message>
    <message>
        <source>Hazen-Williams C, galvanised pipe</source>
        <translation>Hazen-Williams کا C، جستی پائپ</translation>
    </message>
    <message>
        <source>loss, sharp entrance</source>
        <translation>ہیڈ کا نقصان، تیز کنارے والا داخلہ</translation>
    </message>
    <message>
        <source>loss, entrance that juts out</source>
        <translation>ہیڈ کا نقصان، آگے نکلا داخلہ</translation>
    </message>
    <message>
        <source>loss, rounded entrance</source>
        <translation>ہیڈ کا نقصان، گول کیا داخلہ</translation>
    </message>
    <message>
        <source>loss, foot valve</source>
        <translation>ہیڈ کا نقصان، فٹ والو</translation>
    </message>
    <message>
        <source>loss, 90° elbow</source>
        <translation>ہیڈ کا نقصان، 90° ایلبو</translation>
    </message>
    <message>
        <source>loss, wide 90° elbow</source>
        <translation>ہیڈ کا نقصان، کھلا 90° ایلبو</translation>
    </message>
    <message>
        <source>loss, 45° elbow</source>
        <translation>ہیڈ کا نقصان، 45° ایلبو</translation>
    </message>
    <message>
        <source>loss, tee, straight on</source>
        <translation>ہیڈ کا نقصان، ٹی، سیدھا</translation>
    </message>
    <message>
        <source>loss, tee, into the branch</source>
        <translation>ہیڈ کا نقصان، ٹی، شاخ میں</translation>
    </message>
    <message>
        <source>loss, gate valve, open</source>
        <translation>ہیڈ کا نقصان، گیٹ والو، کھلا</translation>
    </message>
    <message>
        <source>loss, gate valve, half closed</source>
        <translation>ہیڈ کا نقصان، گیٹ والو، آدھا بند</translation>
    </message>
    <message>
        <source>loss, globe valve, open</source>
        <translation>ہیڈ کا نقصان، گلوب والو، کھلا</translation>
    </message>
    <message>
        <source>loss, ball valve, open</source>
        <translation>ہیڈ کا نقصان، بال والو، کھلا</translation>
    </message>
    <message>
        <source>loss, check valve</source>
        <translation>ہیڈ کا نقصان، چیک والو</translation>
    </message>
    <message>
        <source>loss, water meter</source>
        <translation>ہیڈ کا نقصان، پانی کا میٹر</translation>
    </message>
    <message>
        <source>loss, screen</source>
        <translation>ہیڈ کا نقصان، جالی</translation>
    </message>
    <message>
        <source>head kept over vapour in a pipe</source>
        <translation>پائپ میں بھاپ کے دباؤ سے اوپر رکھا گیا ہیڈ</translation>
    </message>
    <message>
        <source>head kept over vapour at the top of a siphon</source>
        <translation>سائفن کے سب سے اونچے مقام پر بھاپ کے دباؤ سے اوپر رکھا گیا ہیڈ</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plastic pipe</source>
        <translation>Manning کا n، پلاسٹک پائپ</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plaster</source>
        <translation>Manning کا n، پلستر</translation>
    </message>
    <message>
        <source>Manning&apos;s n, bare earth</source>
        <translation>Manning کا n، کچی مٹی</translation>
    </message>
    <message>
        <source>Manning&apos;s n, short grass</source>
        <translation>Manning کا n، چھوٹی گھاس</translation>
    </message>
    <message>
        <source>Manning&apos;s n, stone pitching</source>
        <translation>Manning کا n، پتھر کی پچنگ</translation>
    </message>
    <message>
        <source>broad sill, flow in theory</source>
        <translation>چوڑی دہلیز، نظری بہاؤ</translation>
    </message>
    <message>
        <source>broad sill, share of the flow in theory</source>
        <translation>چوڑی دہلیز، نظری بہاؤ کا حصہ</translation>
    </message>
    <message>
        <source>opening with a sharp edge</source>
        <translation>تیز کنارے والا سوراخ</translation>
    </message>
    <message>
        <source>storm runoff, roof</source>
        <translation>طوفانی بارش کا بہتا پانی، چھت</translation>
    </message>
    <message>
        <source>storm runoff, woodland</source>
        <translation>طوفانی بارش کا بہتا پانی، جنگل</translation>
    </message>
    <message>
        <source>storm runoff, pasture</source>
        <translation>طوفانی بارش کا بہتا پانی، چراگاہ</translation>
    </message>
    <message>
        <source>storm runoff, tilled ground</source>
        <translation>طوفانی بارش کا بہتا پانی، ہل چلی زمین</translation>
    </message>
    <message>
        <source>storm runoff, bare packed ground</source>
        <translation>طوفانی بارش کا بہتا پانی، بغیر سبزے کی سخت زمین</translation>
    </message>
    <message>
        <source>storm runoff, the tank itself</source>
        <translation>طوفانی بارش کا پانی، خود ٹینکی</translation>
    </message>
    <message>
        <source>silt trap, area over the least in theory</source>
        <translation>گاد کی حوضی، رقبہ نظری کم سے کم کے مقابلے میں</translation>
    </message>
    <message>
        <source>silt trap, speed factor</source>
        <translation>گاد کی حوضی، رفتار کا فیکٹر</translation>
    </message>
    <message>
        <source>silt, weight of the sinking grain</source>
        <translation>گاد، ڈوبتے ذرے کا وزن</translation>
    </message>
    <message>
        <source>silt, weight of settled grains</source>
        <translation>گاد، بیٹھے ذروں کا وزن</translation>
    </message>
    <message>
        <source>silt, share of grain in the mud</source>
        <translation>گاد، کیچڑ میں ذروں کا حصہ</translation>
    </message>
    <message>
        <source>silt trap, length over width</source>
        <translation>گاد کی حوضی، لمبائی فی چوڑائی</translation>
    </message>
    <message>
        <source>leak up to which a tank is tight</source>
        <translation>لیکیج جس تک ٹینکی پانی بند مانی جائے</translation>
    </message>
    <message>
        <source>leak up to which a tank is watched</source>
        <translation>لیکیج جس تک ٹینکی پر نظر رکھی جائے</translation>
    </message>
    <message>
        <source>leak up to which a tank is mended in use</source>
        <translation>لیکیج جس تک ٹینکی چلتے ہوئے مرمت کی جائے</translation>
    </message>
    <message>
        <source>leak of concrete tanks, drop allowed</source>
        <translation>کنکریٹ کی ٹینکیوں کی لیکیج، لیول کتنا گر سکتا ہے</translation>
    </message>
    <message>
        <source>leak of concrete tanks, within</source>
        <translation>کنکریٹ کی ٹینکیوں کی لیکیج، کتنے وقت میں</translation>
    </message>
    <message>
        <source>leak of concrete tanks, share of the volume a day</source>
        <translation>کنکریٹ کی ٹینکیوں کی لیکیج، روزانہ حجم کا حصہ</translation>
    </message>
    <message>
        <source>head wanted, %1</source>
        <translation>مطلوبہ ہیڈ، %1</translation>
    </message>
    <message>
        <source>usual flow, %1</source>
        <translation>عام بہاؤ، %1</translation>
    </message>
    <message>
        <source>speed that scours, %1</source>
        <translation>کٹاؤ کرنے والی رفتار، %1</translation>
    </message>
    <message>
        <source>its way needs two points at least</source>
        <translation>اس کے راستے کے لیے کم از کم دو نقطے چاہییں</translation>
    </message>
    <message>
        <source>the points of its way do not follow one another</source>
        <translation>اس کے راستے کے نقطے ایک کے بعد ایک نہیں آتے</translation>
    </message>
    <message>
        <source>a fitting lies outside its way</source>
        <translation>کوئی فٹنگ اس کے راستے سے باہر ہے</translation>
    </message>
    <message>
        <source>its inlet does not lie under water; lay it lower</source>
        <translation>اس کا داخلہ پانی کے نیچے نہیں؛ اسے نیچے رکھیں</translation>
    </message>
    <message>
        <source>there is no fall from the water at its inlet to its outlet; lay the outlet lower</source>
        <translation>داخلے کے پانی سے نکاس تک کوئی ڈھلوان نہیں؛ نکاس کو نیچے رکھیں</translation>
    </message>
    <message>
        <source>no pipe of the table bears the pressure; break it on the way</source>
        <translation>جدول کا کوئی پائپ یہ دباؤ نہیں سہتا؛ راستے میں دباؤ توڑیں</translation>
    </message>
    <message>
        <source>no pipe of the table is wide enough; find more fall</source>
        <translation>جدول کے کسی پائپ کا قطر کافی نہیں؛ زیادہ ڈھلوان ڈھونڈیں</translation>
    </message>
    <message>
        <source>its top lies below its outlet, so it is no siphon</source>
        <translation>اس کا سب سے اونچا مقام اس کے نکاس سے نیچے ہے، اس لیے یہ سائفن نہیں</translation>
    </message>
    <message>
        <source>the outflow stops before the water is that low</source>
        <translation>پانی اتنا نیچے آنے سے پہلے نکلنا بند ہو جاتا ہے</translation>
    </message>
    <message>
        <source>the outflow dies away, so that the end is never reached</source>
        <translation>پانی کا نکلنا دھیما پڑتے پڑتے ختم ہو جاتا ہے، اس لیے آخر کبھی نہیں آتا</translation>
    </message>
    <message>
        <source>the overflow pipe has no fall</source>
        <translation>اوور فلو پائپ کی کوئی ڈھلوان نہیں</translation>
    </message>
    <message>
        <source>there is no rim to run over</source>
        <translation>کوئی اوپری کنارہ نہیں جس کے اوپر سے پانی بہے</translation>
    </message>
    <message>
        <source>the grain is too large for the law by which it sinks</source>
        <translation>ذرہ اتنا بڑا ہے کہ بیٹھنے کا قاعدہ اس پر نہیں چلتا</translation>
    </message>
    <message>
        <source>water rose in the bucket: it rained; test again in dry weather</source>
        <translation>بالٹی میں پانی بڑھا: بارش ہوئی؛ سوکھے موسم میں دوبارہ ٹیسٹ کریں</translation>
    </message>
    <message>
        <source>a figure is not in the table</source>
        <translation>ایک عدد جدول میں نہیں</translation>
    </message>
    <message>
        <source>the temperature of the water is out of range</source>
        <translation>پانی کا درجہ حرارت حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the height above sea level is out of range</source>
        <translation>سطح سمندر سے بلندی حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the water flows too slowly or too fast to be reckoned</source>
        <translation>پانی اتنا آہستہ یا اتنا تیز چلتا ہے کہ حساب نہیں لگ سکتا</translation>
    </message>
    <message>
        <source>the roughness of the pipe is out of range</source>
        <translation>پائپ کا کھردراپن حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the inside diameter of the pipe is out of range</source>
        <translation>پائپ کا اندرونی قطر حد سے باہر ہے</translation>
    </message>
    <message>
        <source>a length is out of range</source>
        <translation>ایک لمبائی حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the flow is out of range</source>
        <translation>بہاؤ حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the head is out of range</source>
        <translation>ہیڈ حد سے باہر ہے</translation>
    </message>
    <message>
        <source>a coefficient is out of range</source>
        <translation>ایک فیکٹر حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the loss of a fitting is out of range</source>
        <translation>کسی فٹنگ کا نقصان حد سے باہر ہے</translation>
    </message>
    <message>
        <source>a slope is out of range</source>
        <translation>ایک ڈھلان حد سے باہر ہے</translation>
    </message>
    <message>
        <source>a width is out of range</source>
        <translation>ایک چوڑائی حد سے باہر ہے</translation>
    </message>
    <message>
        <source>a depth is out of range</source>
        <translation>ایک گہرائی حد سے باہر ہے</translation>
    </message>
    <message>
        <source>an area is out of range</source>
        <translation>ایک رقبہ حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the size of the grain is out of range</source>
        <translation>ذرے کا سائز حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the weight of the grain is out of range</source>
        <translation>ذرے کا وزن حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the silt in the water is out of range</source>
        <translation>پانی میں گاد حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the time is out of range</source>
        <translation>وقت حد سے باہر ہے</translation>
    </message>
    <message>
        <source>a level is out of range</source>
        <translation>ایک لیول حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the pressure is out of range</source>
        <translation>دباؤ حد سے باہر ہے</translation>
    </message>
    <message>
        <source>a reading is out of range</source>
        <translation>ایک ریڈنگ حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the reserve is out of range</source>
        <translation>ریزرو حد سے باہر ہے</translation>
    </message>
    <message>
        <source>the rain of the storm is out of range</source>
        <translation>طوفانی بارش کی مقدار حد سے باہر ہے</translation>
    </message>
    <message>
        <source>it works</source>
        <translation>کام کرتا ہے</translation>
    </message>
    <message>
        <source>it works, but weakly</source>
        <translation>کام کرتا ہے، مگر کمزور</translation>
    </message>
    <message>
        <source>it works only while the tank is rather full</source>
        <translation>صرف تب کام کرتا ہے جب ٹینکی کافی بھری ہو</translation>
    </message>
    <message>
        <source>it does not work</source>
        <translation>کام نہیں کرتا</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 منٹ</translation>
    </message>
    <message>
        <source>Nothing flows: %1.</source>
        <translation>کچھ نہیں بہتا: %1۔</translation>
    </message>
    <message>
        <source>The line brings %1 when the tank is nearly empty; when it is full, %2.</source>
        <translation>ٹینکی تقریباً خالی ہو تو پائپ لائن %1 لاتی ہے؛ بھری ہو تو %2۔</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full; when it is nearly empty, %2.</source>
        <translation>ٹینکی بھری ہو تو پائپ لائن %1 لاتی ہے؛ تقریباً خالی ہو تو %2۔</translation>
    </message>
    <message>
        <source>The line brings %1.</source>
        <translation>پائپ لائن %1 لاتی ہے۔</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full and %2 when it is nearly empty.</source>
        <translation>پائپ لائن بھری ٹینکی پر %1 لاتی ہے اور تقریباً خالی ٹینکی پر %2۔</translation>
    </message>
    <message>
        <source>Wide open it will not bring that much: the pipe sucks so hard at its high parts that the column of water parts.</source>
        <translation>پورا کھلا ہو تو اتنا نہیں لائے گا: اونچے حصوں پر پائپ کی سکشن اتنی ہے کہ پانی کا سلسلہ ٹوٹ جاتا ہے۔</translation>
    </message>
    <message>
        <source>Wanted are %1.</source>
        <translation>%1 چاہیے۔</translation>
    </message>
    <message>
        <source>Wanted are %1, but %2.</source>
        <translation>%1 چاہیے، لیکن %2۔</translation>
    </message>
    <message>
        <source>The smallest pipe that brings the %1 wanted has %2 outside diameter, class %3.</source>
        <translation>مطلوبہ %1 لانے والے سب سے چھوٹے پائپ کا بیرونی قطر %2 ہے، کلاس %3۔</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1.</source>
        <translation>سرا بند ہو تو پائپ کے سب سے نچلے مقام کو %1 سہنا پڑتا ہے۔</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1; it is good for %2.</source>
        <translation>سرا بند ہو تو پائپ کے سب سے نچلے مقام کو %1 سہنا پڑتا ہے؛ وہ %2 تک سہہ سکتا ہے۔</translation>
    </message>
    <message>
        <source>High points on the way, where air gathers: %1, the first at %2.</source>
        <translation>راستے کے اونچے مقام جہاں ہوا جمع ہوتی ہے: %1، پہلا %2 پر۔</translation>
    </message>
    <message>
        <source>The siphon cannot be started with the tank nearly empty: its top lies %1 over the water, and %2 is the most.</source>
        <translation>ٹینکی تقریباً خالی ہو تو سائفن چلایا نہیں جا سکتا: اس کا سب سے اونچا مقام پانی سے %1 اوپر ہے، اور زیادہ سے زیادہ %2 ہو سکتا ہے۔</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks; let no more than %1 through its valve.</source>
        <translation>پورا کھلا ہو تو سائفن ٹوٹ جاتا ہے؛ اس کے والو سے %1 سے زیادہ نہ جانے دیں۔</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its end does not lie below the water.</source>
        <translation>ٹینکی تقریباً خالی ہونے سے پہلے سائفن رک جاتا ہے: اس کا سرا پانی سے نیچے نہیں۔</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its inlet falls dry.</source>
        <translation>ٹینکی تقریباً خالی ہونے سے پہلے سائفن رک جاتا ہے: اس کا داخلہ پانی سے باہر آ جاتا ہے۔</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks.</source>
        <translation>پورا کھلا ہو تو سائفن ٹوٹ جاتا ہے۔</translation>
    </message>
    <message>
        <source>The siphon cannot be reckoned: %1.</source>
        <translation>سائفن کا حساب نہیں لگ سکتا: %1۔</translation>
    </message>
    <message>
        <source>To start the siphon, fill it with %1 of water.</source>
        <translation>سائفن چلانے کے لیے اس میں %1 پانی بھریں۔</translation>
    </message>
    <message>
        <source>What head is left at the outlet cannot be told: %1.</source>
        <translation>نکاس پر کتنا ہیڈ بچتا ہے، بتایا نہیں جا سکتا: %1۔</translation>
    </message>
    <message>
        <source>Outlet, %1: a head of %2 is left with the tank full and %3 when it is nearly empty, %4 is wanted; %5.</source>
        <translation>نکاس، %1: ٹینکی بھری ہو تو %2 ہیڈ بچتا ہے اور تقریباً خالی ہو تو %3، جبکہ %4 چاہیے؛ %5۔</translation>
    </message>
    <message>
        <source>How long it takes to draw the tank down to %1 over the floor cannot be told: %2.</source>
        <translation>ٹینکی کو فرش سے %1 اوپر تک خالی کرنے میں کتنا وقت لگتا ہے، بتایا نہیں جا سکتا: %2۔</translation>
    </message>
    <message>
        <source>Wide open, it draws the full tank down to %1 over the floor in %2.</source>
        <translation>پورا کھلا ہو تو بھری ٹینکی کو فرش سے %1 اوپر تک %2 میں خالی کرتا ہے۔</translation>
    </message>
    <message>
        <source>No way is entered for the line from the source. Give two points at least: the pipe&apos;s inlet and its end over the tank.</source>
        <translation>ذریعے سے آنے والی پائپ لائن کا راستہ درج نہیں۔ کم از کم دو نقطے دیں: پائپ کا داخلہ اور ٹینکی کے اوپر اس کا سرا۔</translation>
    </message>
    <message>
        <source>No way is entered for the line to the field. Give two points at least: where the pipe leaves the tank and where it ends.</source>
        <translation>کھیت کو جانے والی پائپ لائن کا راستہ درج نہیں۔ کم از کم دو نقطے دیں: جہاں پائپ ٹینکی سے نکلتا ہے اور جہاں ختم ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Ground cut down</source>
        <translation>کٹی ہوئی زمین</translation>
    </message>
    <message>
        <source>Ground filled up</source>
        <translation>بھری ہوئی زمین</translation>
    </message>
    <message>
        <source>Spoil heap</source>
        <translation>مٹی کا ڈھیر</translation>
    </message>
    <message>
        <source>Arrow down the fall</source>
        <translation>ڈھلوان کی طرف تیر</translation>
    </message>
    <message>
        <source>Marked place</source>
        <translation>نشان لگی جگہ</translation>
    </message>
    <message>
        <source>Pattern of the cut</source>
        <translation>کٹائی کا نمونہ</translation>
    </message>
    <message>
        <source>Pattern of the fill</source>
        <translation>بھرائی کا نمونہ</translation>
    </message>
    <message>
        <source>platform corner</source>
        <translation>پلیٹ فارم کا کونا</translation>
    </message>
    <message>
        <source>top of the cut, where it meets the ground</source>
        <translation>کٹائی کا اوپری سرا، جہاں وہ زمین سے ملتی ہے</translation>
    </message>
    <message>
        <source>toe of the fill, where it meets the ground</source>
        <translation>بھرائی کی جڑ، جہاں وہ زمین سے ملتی ہے</translation>
    </message>
    <message>
        <source>pipes, overflow and silt trap</source>
        <translation>پائپ، اوور فلو اور گاد کی حوضی</translation>
    </message>
    <message>
        <source>Taken is a storm of %1, for the heaviest rain here is not known: %2 run in.</source>
        <translation>یہاں کی سب سے تیز بارش معلوم نہیں، اس لیے %1 کی طوفانی بارش لی گئی ہے: %2 پانی اندر آتا ہے۔</translation>
    </message>
    <message>
        <source>In a storm of %1, %2 run into the tank.</source>
        <translation>%1 کی طوفانی بارش میں %2 پانی ٹینکی میں آتا ہے۔</translation>
    </message>
    <message>
        <source>Of these, %1 are rain and %2 come from the source.</source>
        <translation>اس میں سے %1 بارش کا ہے اور %2 ذریعے سے آتا ہے۔</translation>
    </message>
    <message>
        <source>How high the water then stands cannot be told: %1.</source>
        <translation>تب پانی کتنا اونچا ہوگا، بتایا نہیں جا سکتا: %1۔</translation>
    </message>
    <message>
        <source>The overflow passes %1 at most, so water runs over the rim.</source>
        <translation>اوور فلو سے زیادہ سے زیادہ %1 نکلتا ہے، اس لیے پانی اوپری کنارے کے اوپر سے بہتا ہے۔</translation>
    </message>
    <message>
        <source>A notch %1 wide would be enough.</source>
        <translation>%1 چوڑا کھانچا کافی ہوگا۔</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would be enough.</source>
        <translation>اندرونی قطر %1 کا اوور فلو پائپ کافی ہوگا۔</translation>
    </message>
    <message>
        <source>Where the water goes if the overflow is blocked cannot be told: %1.</source>
        <translation>اوور فلو بند ہو تو پانی کہاں جاتا ہے، بتایا نہیں جا سکتا: %1۔</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water runs over the rim anywhere, %1 deep.</source>
        <translation>اوور فلو بند ہو تو پانی اوپری کنارے پر کہیں سے بھی بہتا ہے، %1 گہرا۔</translation>
    </message>
    <message>
        <source>If the overflow is blocked, all of the water leaves over the low part of the rim, %1 deep.</source>
        <translation>اوور فلو بند ہو تو سارا پانی اوپری کنارے کے نیچے رکھے حصے سے نکلتا ہے، %1 گہرا۔</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water leaves over the low part of the rim, %1 deep, and over the rest of it too: make the low part longer or lower.</source>
        <translation>اوور فلو بند ہو تو پانی اوپری کنارے کے نیچے رکھے حصے سے نکلتا ہے، %1 گہرا، اور باقی کنارے سے بھی: اس حصے کو اور لمبا یا اور نیچا کریں۔</translation>
    </message>
    <message>
        <source>How the spill path carries the water cannot be told: %1.</source>
        <translation>فالتو پانی کی نالی پانی کیسے لے جاتی ہے، بتایا نہیں جا سکتا: %1۔</translation>
    </message>
    <message>
        <source>In the spill path, %1 deep, the water runs %2 deep at %3.</source>
        <translation>%1 گہری فالتو پانی کی نالی میں پانی %2 گہرا، %3 سے بہتا ہے۔</translation>
    </message>
    <message>
        <source>Its bed bears that speed (%1).</source>
        <translation>نالی کا تلا یہ رفتار سہتا ہے (%1)۔</translation>
    </message>
    <message>
        <source>Its bed may not bear that speed (%1).</source>
        <translation>ہو سکتا ہے نالی کا تلا یہ رفتار نہ سہے (%1)۔</translation>
    </message>
    <message>
        <source>Its bed is washed out at that speed (%1).</source>
        <translation>اس رفتار سے نالی کا تلا بہہ جاتا ہے (%1)۔</translation>
    </message>
    <message>
        <source>A trap for grains of %1 and a flow of %2 cannot be reckoned: %3.</source>
        <translation>%1 کے ذروں اور %2 بہاؤ کے لیے حوضی کا حساب نہیں لگ سکتا: %3۔</translation>
    </message>
    <message>
        <source>To hold back grains of %1 at a flow of %2, the trap is made %3 long, %4 wide and %5 deep inside.</source>
        <translation>%2 بہاؤ پر %1 کے ذرے روکنے کے لیے حوضی اندر سے %3 لمبی، %4 چوڑی اور %5 گہری بنائی جاتی ہے۔</translation>
    </message>
    <message>
        <source>Between two cleanings about %1 of mud settle in it, %2 deep.</source>
        <translation>دو صفائیوں کے بیچ اس میں تقریباً %1 کیچڑ بیٹھتا ہے، %2 گہرا۔</translation>
    </message>
    <message>
        <source>What the trap as it is holds back cannot be told: %1.</source>
        <translation>موجودہ حوضی کیا روکتی ہے، بتایا نہیں جا سکتا: %1۔</translation>
    </message>
    <message>
        <source>The trap as it is has room for grains of %1 to sink, but water runs so fast through it that it carries them on: make it deeper or wider.</source>
        <translation>موجودہ حوضی میں %1 کے ذروں کے بیٹھنے کی جگہ ہے، لیکن پانی اس میں اتنا تیز چلتا ہے کہ انہیں آگے لے جاتا ہے: اسے زیادہ گہرا یا چوڑا بنائیں۔</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains of %1 and larger.</source>
        <translation>موجودہ حوضی %1 اور اس سے بڑے ذرے روکتی ہے۔</translation>
    </message>
    <message>
        <source>The tank loses %1 through its lining, about %2.</source>
        <translation>ٹینکی کی لائننگ سے %1 پانی جاتا ہے، تقریباً %2۔</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained water: some ran in, or a reading is wrong. Test again.</source>
        <translation>بالٹی کے مقابلے میں ٹینکی میں پانی بڑھا: کچھ اندر آیا، یا کوئی ریڈنگ غلط ہے۔ دوبارہ ٹیسٹ کریں۔</translation>
    </message>
    <message>
        <source>The difference is no more than the readings&apos; error of %1, so it tells nothing. Let the test run longer.</source>
        <translation>فرق ریڈنگ کی غلطی %1 سے زیادہ نہیں، اس لیے اس سے کچھ پتا نہیں چلتا۔ ٹیسٹ زیادہ دیر چلائیں۔</translation>
    </message>
    <message>
        <source>For a tank of plaster that is tight.</source>
        <translation>پلستر کی ٹینکی کے لیے یہ پانی بند ہے۔</translation>
    </message>
    <message>
        <source>Watch it: test again in some weeks.</source>
        <translation>اس پر نظر رکھیں: کچھ ہفتوں بعد دوبارہ ٹیسٹ کریں۔</translation>
    </message>
    <message>
        <source>Find the cracks and mend them.</source>
        <translation>دراڑیں ڈھونڈیں اور مرمت کریں۔</translation>
    </message>
    <message>
        <source>Let no more water in, empty it and mend it.</source>
        <translation>اور پانی نہ آنے دیں، ٹینکی خالی کریں اور مرمت کریں۔</translation>
    </message>
    <message>
        <source>It keeps to a mark for concrete tanks, %1: %2.</source>
        <translation>کنکریٹ کی ٹینکیوں کی ایک حد (%1) کے اندر ہے: %2۔</translation>
    </message>
    <message>
        <source>It does not keep to a mark for concrete tanks, %1: %2.</source>
        <translation>کنکریٹ کی ٹینکیوں کی ایک حد (%1) کے اندر نہیں: %2۔</translation>
    </message>
    <message>
        <source>What the tank loses more than the bucket goes through the lining.</source>
        <translation>ٹینکی میں پانی بالٹی سے جتنا زیادہ گھٹتا ہے، وہ لائننگ سے نکلتا ہے۔</translation>
    </message>
    <message>
        <source>The leak test tells nothing: %1.</source>
        <translation>لیکیج ٹیسٹ سے کچھ پتا نہیں چلتا: %1۔</translation>
    </message>
    <message>
        <source>Place of the tank</source>
        <translation>ٹینکی کی جگہ</translation>
    </message>
    <message>
        <source>Platform</source>
        <translation>پلیٹ فارم</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>پانی لانا اور لے جانا</translation>
    </message>
    <message>
        <source>Line from the source</source>
        <translation>ذریعے سے آنے والی پائپ لائن</translation>
    </message>
    <message>
        <source>Points of the source line</source>
        <translation>ذریعے کی پائپ لائن کے نقطے</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>ذریعے سے آنے والا پائپ</translation>
    </message>
    <message>
        <source>Line to the field</source>
        <translation>کھیت کو جانے والی پائپ لائن</translation>
    </message>
    <message>
        <source>Points of the field line</source>
        <translation>کھیت کی پائپ لائن کے نقطے</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>کھیت کو جانے والا پائپ</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>اوور فلو</translation>
    </message>
    <message>
        <source>Spill path</source>
        <translation>فالتو پانی کی نالی</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>گاد کی حوضی</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>لیکیج ٹیسٹ</translation>
    </message>
    <message>
        <source>Spot height, row %1</source>
        <translation>اونچائی کا نقطہ، قطار %1</translation>
    </message>
    <message>
        <source>Source line, point %1</source>
        <translation>ذریعے کی پائپ لائن، نقطہ %1</translation>
    </message>
    <message>
        <source>Field line, point %1</source>
        <translation>کھیت کی پائپ لائن، نقطہ %1</translation>
    </message>
    <message>
        <source>is not further along the line than the point before it; list the points in the order in which the water meets them</source>
        <translation>اپنے سے پہلے نقطے سے آگے نہیں؛ نقطے اسی ترتیب میں درج کریں جس میں پانی ان تک پہنچتا ہے</translation>
    </message>
    <message>
        <source>is not in the table of pipes of this grade; choose one that is, or enter the bore as measured</source>
        <translation>اس گریڈ کے پائپوں کے جدول میں نہیں؛ جو ہو وہ چنیں، یا ناپا ہوا اندرونی قطر درج کریں</translation>
    </message>
    <message>
        <source>could not be joined to a surface, for the work was broken off; try again and let it finish</source>
        <translation>جوڑ کر سطح نہیں بن سکی، کیونکہ کام بیچ میں روک دیا گیا؛ دوبارہ کریں اور پورا ہونے دیں</translation>
    </message>
    <message>
        <source>pit depth from which a ladder stands in it</source>
        <translation>گڑھے کی گہرائی جس سے آگے اس میں سیڑھی لازمی ہے</translation>
    </message>
    <message>
        <source>pit depth from which walls are held against cave-in</source>
        <translation>گڑھے کی گہرائی جس سے آگے دیواروں کو گرنے سے روکنا لازمی ہے</translation>
    </message>
    <message>
        <source>deepest pit dug by hand</source>
        <translation>ہاتھ سے کھودا جانے والا سب سے گہرا گڑھا</translation>
    </message>
    <message>
        <source>pit depth to which the table of batters goes</source>
        <translation>گڑھے کی گہرائی جہاں تک سلامی کا جدول جاتا ہے</translation>
    </message>
    <message>
        <source>depth of an open cut in the firmest soil that stands a day</source>
        <translation>سب سے سخت مٹی میں کھلی کٹائی کی گہرائی جو ایک دن کھڑی رہے</translation>
    </message>
    <message>
        <source>furthest way to the ladder</source>
        <translation>سیڑھی تک زیادہ سے زیادہ راستہ</translation>
    </message>
    <message>
        <source>toe of the heap back from the pit edge</source>
        <translation>ڈھیر کی جڑ گڑھے کے کنارے سے کتنی پیچھے</translation>
    </message>
    <message>
        <source>height of the heap at most</source>
        <translation>ڈھیر کی زیادہ سے زیادہ اونچائی</translation>
    </message>
    <message>
        <source>steepest side of loose ground</source>
        <translation>کھلی مٹی کا سب سے کھڑا پہلو</translation>
    </message>
    <message>
        <source>slope from which old slips are looked for</source>
        <translation>ڈھلان جس سے آگے پرانی پھسلن تلاش کی جائے</translation>
    </message>
    <message>
        <source>slope from which an engineer decides</source>
        <translation>ڈھلان جس سے آگے انجینئر فیصلہ کرے</translation>
    </message>
    <message>
        <source>factor of safety wanted of a slope</source>
        <translation>ڈھلان کا مطلوبہ حفاظتی فیکٹر</translation>
    </message>
    <message>
        <source>factor of safety wanted of a cut</source>
        <translation>کٹائی کا مطلوبہ حفاظتی فیکٹر</translation>
    </message>
    <message>
        <source>walkway round the rim</source>
        <translation>اوپری کنارے کے گرد چلنے کی پٹی</translation>
    </message>
    <message>
        <source>batter of the cut face</source>
        <translation>کٹائی کی سطح کی سلامی</translation>
    </message>
    <message>
        <source>batter of the fill face</source>
        <translation>بھرائی کی سطح کی سلامی</translation>
    </message>
    <message>
        <source>topsoil stripped</source>
        <translation>اتاری گئی زرخیز مٹی</translation>
    </message>
    <message>
        <source>compacted fill per ground dug</source>
        <translation>کوٹی بھرائی فی کھودی مٹی</translation>
    </message>
    <message>
        <source>natural ground wanted over floor and walls</source>
        <translation>فرش اور دیواروں سے اوپر مطلوبہ قدرتی زمین</translation>
    </message>
    <message>
        <source>distance to the edge, share of its drop, as for footings</source>
        <translation>کنارے تک فاصلہ، اس کی اونچائی کا حصہ، جیسے بنیادوں کے لیے</translation>
    </message>
    <message>
        <source>distance to the edge at most, as for footings</source>
        <translation>کنارے تک زیادہ سے زیادہ فاصلہ، جیسے بنیادوں کے لیے</translation>
    </message>
    <message>
        <source>house downhill within</source>
        <translation>ڈھلان کی طرف نیچے گھر، اس فاصلے کے اندر</translation>
    </message>
    <message>
        <source>weight over uplift wanted</source>
        <translation>اوپر اٹھانے والی طاقت کے مقابلے میں مطلوبہ وزن</translation>
    </message>
    <message>
        <source>ground water that feeds frost, within</source>
        <translation>کورے کو پانی دینے والا زیرِ زمین پانی، اس گہرائی کے اندر</translation>
    </message>
    <message>
        <source>shrinkage of moderate swelling</source>
        <translation>درمیانے پھولاؤ کا سکڑاؤ</translation>
    </message>
    <message>
        <source>shrinkage of high swelling</source>
        <translation>زیادہ پھولاؤ کا سکڑاؤ</translation>
    </message>
    <message>
        <source>shrinkage of very high swelling</source>
        <translation>بہت زیادہ پھولاؤ کا سکڑاؤ</translation>
    </message>
    <message>
        <source>clay from which soil may swell</source>
        <translation>چکنی مٹی جس سے آگے مٹی پھول سکتی ہے</translation>
    </message>
    <message>
        <source>low</source>
        <translation>کم</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>عام</translation>
    </message>
    <message>
        <source>high</source>
        <translation>زیادہ</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>mm per hour</source>
        <translation>mm فی گھنٹہ</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>kN/m³</source>
        <translation>kN/m³</translation>
    </message>
    <message>
        <source>level set by hand</source>
        <translation>لیول ہاتھ سے رکھا</translation>
    </message>
    <message>
        <source>A freeboard of %1 would leave it.</source>
        <translation>%1 فری بورڈ ہو تو اتنا بچ جائے گا۔</translation>
    </message>
    <message>
        <source>As low as it is now, it has to be %1 long.</source>
        <translation>جتنا نیچا یہ اب ہے، اس پر اس کی لمبائی %1 ہونی چاہیے۔</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside, with %3 of water and mud, would hold them.</source>
        <translation>اندر سے %1 لمبی اور %2 چوڑی حوضی، جس میں %3 پانی اور کیچڑ ہو، انہیں روک لے گی۔</translation>
    </message>
    <message>
        <source>The overflow</source>
        <translation>اوور فلو</translation>
    </message>
    <message>
        <source>The blocked overflow</source>
        <translation>بند اوور فلو</translation>
    </message>
    <message>
        <source>The silt trap</source>
        <translation>گاد کی حوضی</translation>
    </message>
    <message>
        <source>The leak test</source>
        <translation>لیکیج ٹیسٹ</translation>
    </message>
    <message>
        <source>%1 could not be reckoned, so nothing is known of it: %2.</source>
        <translation>%1 کا حساب نہیں لگ سکا، اس لیے اس کے بارے میں کچھ معلوم نہیں: %2۔</translation>
    </message>
    <message>
        <source>How far the water sank in a light bucket that floats deep in the tank, only a hand&apos;s breadth of it dry: this much evaporated.</source>
        <translation>ٹینکی میں گہری تیرتی ہلکی بالٹی میں، جس کی صرف ایک ہتھیلی کی چوڑائی سوکھی رہے، پانی کتنا اترا: اتنا پانی بخارات بن کر اڑا۔</translation>
    </message>
    <message>
        <source>To make it, %1 are cut; next to nothing is filled in.</source>
        <translation>اسے بنانے کے لیے %1 کٹائی ہوتی ہے؛ بھرائی نہ ہونے کے برابر ہے۔</translation>
    </message>
    <message>
        <source>Anticlockwise seen from above; at 0 the length runs east. A tank whose length lies across the fall, on one level, needs the least digging.</source>
        <translation>اوپر سے دیکھیں تو گھڑی کی الٹی سمت؛ 0 پر لمبائی مشرق کو جاتی ہے۔ جس ٹینکی کی لمبائی ڈھلوان کے آڑے، ایک ہی لیول پر ہو، اس میں سب سے کم کھدائی لگتی ہے۔</translation>
    </message>
    <message>
        <source>How far the filled face runs out for each unit of height; 1.5 is usual for ground that is well rammed.</source>
        <translation>بھرائی کی سطح اونچائی کی ہر اکائی پر کتنی باہر نکلتی ہے؛ اچھی کوٹی مٹی کے لیے عام طور پر 1.5۔</translation>
    </message>
    <message>
        <source>Cut or fill runs out of the survey before it meets the ground. Survey further out or move the tank; steeper cut faces help too, if the soil bears them.</source>
        <translation>کٹائی یا بھرائی زمین سے ملنے سے پہلے ہی سروے سے باہر نکل جاتی ہے۔ اور باہر تک سروے کریں یا ٹینکی کو ہٹائیں؛ کٹائی کی سطح زیادہ کھڑی رکھنا بھی مدد دیتا ہے، اگر مٹی اسے سہتی ہو۔</translation>
    </message>
    <message>
        <source>The ground below the tank may slip even with the tank empty, while it is dug.</source>
        <translation>ٹینکی سے نیچے کی زمین خالی ٹینکی پر بھی، کھدائی کے دوران، پھسل سکتی ہے۔</translation>
    </message>
    <message>
        <source>The ground below the tank may slip when the tank leaks.</source>
        <translation>ٹینکی میں لیکیج ہو تو اس سے نیچے کی زمین پھسل سکتی ہے۔</translation>
    </message>
    <message>
        <source>A licensed engineer must look at it before anyone digs (calculation sheet E1). A place further from the edge, or on flatter ground, would help.</source>
        <translation>کسی کے کھودنے سے پہلے لائسنس یافتہ انجینئر کا اسے دیکھنا لازمی ہے (حساب کی شیٹ E1)۔ کنارے سے زیادہ دور، یا کم ڈھلوان زمین پر جگہ ہو تو بہتر ہوگا۔</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie downhill of the tank, where its weight loads the ground that carries it. Heap it across the fall, to the %1 of the tank.</source>
        <translation>مٹی کا ڈھیر ٹینکی سے ڈھلان کی طرف نیچے رکھا جانا ہے، جہاں اس کا وزن اُس زمین پر بوجھ ڈالتا ہے جو ٹینکی کو سنبھالتی ہے۔ اسے ڈھلوان کے آڑے، ٹینکی کے %1 میں ڈھیر کریں۔</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie uphill of the tank, where rain washes it in. Heap it across the fall, to the %1 of the tank.</source>
        <translation>مٹی کا ڈھیر ٹینکی سے اوپر کی طرف رکھا جانا ہے، جہاں سے بارش اسے اندر بہا لائے گی۔ اسے ڈھلوان کے آڑے، ٹینکی کے %1 میں ڈھیر کریں۔</translation>
    </message>
    <message>
        <source>The cut face of the platform stands up to %1 high and leans back %2 for each unit of height; the published table asks for %3 in this soil. Lean it back, or widen the walkway where it stands close over the pit.</source>
        <translation>پلیٹ فارم کی کٹائی کی سطح %1 تک اونچی ہے اور اونچائی کی ہر اکائی پر %2 پیچھے جھکتی ہے؛ شائع شدہ جدول اس مٹی میں %3 مانگتا ہے۔ اسے اور پیچھے سلامی دیں، یا جہاں یہ گڑھے کے بالکل اوپر کھڑی ہے وہاں چلنے کی پٹی چوڑی کریں۔</translation>
    </message>
    <message>
        <source>The fill face of the platform runs out %1 for each unit of height; loose ground comes to rest at %2. Make it %2 or flatter.</source>
        <translation>پلیٹ فارم کی بھرائی کی سطح اونچائی کی ہر اکائی پر %1 باہر نکلتی ہے؛ کھلی مٹی %2 پر ٹھہرتی ہے۔ اسے %2 یا اس سے کم کھڑی بنائیں۔</translation>
    </message>
    <message>
        <source>the siphon does not run with its end wide open</source>
        <translation>سرا پورا کھلا ہو تو سائفن نہیں چلتا</translation>
    </message>
    <message>
        <source>It fills the empty tank in %1 when nothing is drawn.</source>
        <translation>کچھ نہ نکالا جائے تو یہ خالی ٹینکی کو %1 میں بھر دیتی ہے۔</translation>
    </message>
    <message>
        <source>The siphon cannot be started, not even with the tank full: its top lies %1 over the water, and %2 is the most.</source>
        <translation>سائفن چلایا نہیں جا سکتا، بھری ٹینکی پر بھی نہیں: اس کا سب سے اونچا مقام پانی سے %1 اوپر ہے، اور زیادہ سے زیادہ %2 ہو سکتا ہے۔</translation>
    </message>
    <message>
        <source>has another height than an earlier point at the same place</source>
        <translation>اسی جگہ کے پہلے والے نقطے سے اونچائی الگ ہے</translation>
    </message>
    <message>
        <source>%1 %2, %4: found %3.</source>
        <translation>%1: %2، %4؛ ملا: %3۔</translation>
    </message>
    <message>
        <source>The table of spot heights</source>
        <translation>اونچائی کے نقطوں کا جدول</translation>
    </message>
    <message>
        <source>spoil heap off the line of the fall, least</source>
        <translation>مٹی کا ڈھیر ڈھلوان کی لکیر سے کم از کم کتنا ہٹا ہو</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1; the water then stands only %2 below the lowest part of the rim, and %3 is wanted.</source>
        <translation>طوفانی بارش میں اوور فلو سے %1 نکلنا ہے؛ تب پانی اوپری کنارے کے سب سے نچلے حصے سے صرف %2 نیچے ہوتا ہے، جبکہ %3 چاہیے۔</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1 and cannot: the water runs over the rim and washes out the ground behind the lining. It should stay %2 below the lowest part of it.</source>
        <translation>طوفانی بارش میں اوور فلو سے %1 نکلنا ہے مگر نکل نہیں سکتا: پانی اوپری کنارے کے اوپر سے بہتا ہے اور لائننگ کے پیچھے کی زمین بہا لے جاتا ہے۔ پانی کو اس کے سب سے نچلے حصے سے %2 نیچے رہنا چاہیے۔</translation>
    </message>
    <message>
        <source>The overflow passes it: the water stays %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>اوور فلو یہ نکال دیتا ہے: پانی اوپری کنارے کے سب سے نچلے حصے سے %1 نیچے رہتا ہے، %2 چاہیے۔</translation>
    </message>
    <message>
        <source>The overflow just passes it: the water stays only %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>اوور فلو یہ بس نکال پاتا ہے: پانی اوپری کنارے کے سب سے نچلے حصے سے صرف %1 نیچے رہتا ہے، %2 چاہیے۔</translation>
    </message>
    <message>
        <source>No leak test is entered. Let a light bucket float deep in the tank, only a hand&apos;s breadth of it dry; read both, and read them again after a dry day.</source>
        <translation>کوئی لیکیج ٹیسٹ درج نہیں۔ ایک ہلکی بالٹی ٹینکی میں گہری تیرائیں، جس کی صرف ایک ہتھیلی کی چوڑائی سوکھی رہے؛ دونوں کی ریڈنگ لیں، اور ایک بے بارش دن کے بعد پھر لیں۔</translation>
    </message>
    <message>
        <source>The fill takes all that is dug, and %1 more that would have to be brought.</source>
        <translation>بھرائی میں کھدائی کی ساری مٹی لگ جاتی ہے، اور %1 مزید باہر سے لانی پڑے گی۔</translation>
    </message>
    <message>
        <source>The fill takes more than all that is dug: %1 of ground would have to be brought. Lay the platform lower.</source>
        <translation>بھرائی میں کھدائی کی ساری مٹی سے زیادہ لگتی ہے: %1 مٹی باہر سے لانی پڑے گی۔ پلیٹ فارم نیچے رکھیں۔</translation>
    </message>
    <message>
        <source>By the levels of its ends alone the line would bring %1.</source>
        <translation>صرف سروں کے لیول دیکھیں تو پائپ لائن %1 لاتی۔</translation>
    </message>
    <message>
        <source>The tank costs about %1.</source>
        <translation>ٹینکی پر تقریباً %1 خرچ آتا ہے۔</translation>
    </message>
    <message>
        <source>The tank costs about %1: %2 in money, %3 given by the household in goods and work.</source>
        <translation>ٹینکی پر تقریباً %1 خرچ آتا ہے: %2 نقد، %3 گھرانے کا مفت حصہ، سامان اور کام میں۔</translation>
    </message>
    <message>
        <source>%1 for materials</source>
        <translation>سامان پر %1</translation>
    </message>
    <message>
        <source>%1 for work</source>
        <translation>کام پر %1</translation>
    </message>
    <message>
        <source>%1 for carrying</source>
        <translation>ڈھلائی پر %1</translation>
    </message>
    <message>
        <source>%1 for other things</source>
        <translation>دوسری چیزوں پر %1</translation>
    </message>
    <message>
        <source>%1 kept for what nobody foresees</source>
        <translation>غیر متوقع خرچ کے لیے %1</translation>
    </message>
    <message>
        <source>Of that, %1.</source>
        <translation>اس میں سے %1۔</translation>
    </message>
    <message>
        <source>For each m³ (%1) that the full tank stores, building costs %2.</source>
        <translation>بھری ٹینکی میں جمع ہر m³ (%1) پر تعمیر کا خرچ %2 ہے۔</translation>
    </message>
    <message>
        <source>all months</source>
        <translation>سب مہینے</translation>
    </message>
    <message>
        <source>What the water of the dry months costs cannot be told before the water balance is there.</source>
        <translation>جب تک پانی کا حساب نہ ہو، خشک مہینوں کے پانی کا خرچ بتایا نہیں جا سکتا۔</translation>
    </message>
    <message>
        <source>No month counts as dry, so the cost of water in the dry months cannot be told.</source>
        <translation>کوئی مہینہ خشک نہیں گنا جاتا، اس لیے خشک مہینوں کے پانی کا خرچ بتایا نہیں جا سکتا۔</translation>
    </message>
    <message>
        <source>In the dry months (%1) of a mean year %2 are drawn from the tank; what they cost cannot be told.</source>
        <translation>اوسط سال کے خشک مہینوں (%1) میں ٹینکی سے %2 نکالا جاتا ہے؛ اس کا خرچ بتایا نہیں جا سکتا۔</translation>
    </message>
    <message>
        <source>For each m³ (%1) that it delivers in the dry months (%2), the tank costs %3 over its life, interest and upkeep counted; in a mean year it delivers %4 then.</source>
        <translation>خشک مہینوں (%2) میں دیے گئے ہر m³ (%1) پر، ٹینکی کی پوری عمر میں، سود اور دیکھ بھال سمیت %3 خرچ آتا ہے؛ اوسط سال میں تب وہ %4 دیتی ہے۔</translation>
    </message>
    <message>
        <source>%1: %2 (%3 for a single one)</source>
        <translation>%1: %2 (ایک کے لیے %3)</translation>
    </message>
    <message>
        <source>Loads to carry: %1.</source>
        <translation>ڈھونے کے بوجھ: %1۔</translation>
    </message>
    <message>
        <source>; </source>
        <translation>؛ </translation>
    </message>
    <message>
        <source>%1 (into %2)</source>
        <translation>%1 (%2 میں)</translation>
    </message>
    <message>
        <source>Too heavy for one load and split even: %1.</source>
        <translation>ایک بوجھ کے لیے بہت بھاری، برابر حصوں میں بانٹا گیا: %1۔</translation>
    </message>
    <message>
        <source>Money is needed first on %1; most on one day is %2, on %3.</source>
        <translation>رقم سب سے پہلے %1 کو چاہیے؛ ایک دن میں سب سے زیادہ %2، %3 کو۔</translation>
    </message>
    <message>
        <source>No price is entered yet, so nothing is known of the money. Ask the shop and the people who work, and enter what one unit costs.</source>
        <translation>ابھی کوئی قیمت درج نہیں، اس لیے رقم کے بارے میں کچھ معلوم نہیں۔ دکان دار اور کام کرنے والوں سے پوچھیں، اور ایک اکائی کی قیمت درج کریں۔</translation>
    </message>
    <message>
        <source>digging</source>
        <translation>کھدائی</translation>
    </message>
    <message>
        <source>ramming fill</source>
        <translation>بھرائی کوٹنا</translation>
    </message>
    <message>
        <source>laying the stone bed</source>
        <translation>پتھر کی سولنگ بچھانا</translation>
    </message>
    <message>
        <source>spreading plaster</source>
        <translation>پلستر لگانا</translation>
    </message>
    <message>
        <source>mixing mortar</source>
        <translation>مسالا بنانا</translation>
    </message>
    <message>
        <source>not carried</source>
        <translation>ڈھویا نہیں جاتا</translation>
    </message>
    <message>
        <source>porter</source>
        <translation>پورٹر</translation>
    </message>
    <message>
        <source>mule</source>
        <translation>خچر</translation>
    </message>
    <message>
        <source>trolley</source>
        <translation>ٹرالی</translation>
    </message>
    <message>
        <source>soil-cement plaster</source>
        <translation>مٹی سیمنٹ کا پلستر</translation>
    </message>
    <message>
        <source>plastic sheet</source>
        <translation>پلاسٹک کی چادر</translation>
    </message>
    <message>
        <source>ferrocement</source>
        <translation>فیروسیمنٹ</translation>
    </message>
    <message>
        <source>stone masonry</source>
        <translation>پتھر کی چنائی</translation>
    </message>
    <message>
        <source>moulded plastic tank</source>
        <translation>پلاسٹک کی تیار ٹینکی</translation>
    </message>
    <message>
        <source>the whole job</source>
        <translation>پورا کام</translation>
    </message>
    <message>
        <source>one m² of face</source>
        <translation>ایک m² سطح</translation>
    </message>
    <message>
        <source>one m³ held</source>
        <translation>ایک m³ گنجائش</translation>
    </message>
    <message>
        <source>thickness of the coats</source>
        <translation>کوٹوں کی موٹائی</translation>
    </message>
    <message>
        <source>unevenness of dug faces</source>
        <translation>کھدی سطحوں کی ناہمواری</translation>
    </message>
    <message>
        <source>loose ingredients per placed plaster</source>
        <translation>لگے پلستر پر کھلا سامان</translation>
    </message>
    <message>
        <source>loose weight of cement</source>
        <translation>سیمنٹ کا کھلا وزن</translation>
    </message>
    <message>
        <source>time for digging</source>
        <translation>کھدائی کا وقت</translation>
    </message>
    <message>
        <source>time for plastering</source>
        <translation>پلستر کا وقت</translation>
    </message>
    <message>
        <source>prices of goods</source>
        <translation>سامان کی قیمتیں</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>مزدوری</translation>
    </message>
    <message>
        <source>flow of the source</source>
        <translation>ذریعے کا بہاؤ</translation>
    </message>
    <message>
        <source>Filling starts on %1, later than %2, by which it should: plaster that falls dry cracks.</source>
        <translation>پانی بھرنا %1 کو شروع ہوتا ہے، حالانکہ %2 تک شروع ہو جانا چاہیے: جو پلستر سوکھ جائے اس میں دراڑیں پڑتی ہیں۔</translation>
    </message>
    <message>
        <source>Filling starts on %1; it should start by %2 at the latest.</source>
        <translation>پانی بھرنا %1 کو شروع ہوتا ہے؛ زیادہ سے زیادہ %2 تک شروع ہو جانا چاہیے۔</translation>
    </message>
    <message>
        <source>with %1 a day let in, as entered</source>
        <translation>روزانہ %1 پانی چھوڑ کر، جیسا درج ہے</translation>
    </message>
    <message>
        <source>with %1 a day from the source at first</source>
        <translation>شروع میں ذریعے سے روزانہ %1 پانی پر</translation>
    </message>
    <message>
        <source>What flows in is not known, so nobody can say when the tank is full. Enter the water let in each day, or the flow of the source.</source>
        <translation>معلوم نہیں کہ کتنا پانی آتا ہے، اس لیے کوئی نہیں بتا سکتا کہ ٹینکی کب بھرے گی۔ روزانہ چھوڑا گیا پانی، یا ذریعے کا بہاؤ درج کریں۔</translation>
    </message>
    <message>
        <source>The tank is full on %1, %2.</source>
        <translation>ٹینکی %1 کو بھر جاتی ہے، %2۔</translation>
    </message>
    <message>
        <source>The tank does not fill within a year, %1: the water comes to %2 over the floor.</source>
        <translation>ٹینکی ایک سال میں نہیں بھرتی، %1: پانی فرش سے %2 اوپر تک آتا ہے۔</translation>
    </message>
    <message>
        <source>On some days less is let in than could be, so that the water does not rise too fast for the young plaster.</source>
        <translation>کچھ دن جتنا پانی آ سکتا ہے اس سے کم چھوڑا جاتا ہے، تاکہ کچے پلستر پر پانی بہت جلدی نہ چڑھے۔</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor: wet sacks until %3.</source>
        <translation>فرش سے %1 تا %2 اوپر کی دیوار: گیلے ٹاٹ %3 تک۔</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor, which the water does not cover: wet sacks until %3.</source>
        <translation>فرش سے %1 تا %2 اوپر کی دیوار، جسے پانی نہیں ڈھکتا: گیلے ٹاٹ %3 تک۔</translation>
    </message>
    <message>
        <source>Sacks on bare wall take about %1 of water after the last coat has cured.</source>
        <translation>آخری کوٹ کی ترائی پوری ہونے کے بعد کھلی دیوار کے ٹاٹوں پر تقریباً %1 پانی لگتا ہے۔</translation>
    </message>
    <message>
        <source>For the water to cover all walls by the time their curing ends, about %1 would have to be brought by hand.</source>
        <translation>ترائی ختم ہونے تک پانی سب دیواروں کو ڈھک لے، اس کے لیے تقریباً %1 پانی ہاتھ سے لانا پڑے گا۔</translation>
    </message>
    <message>
        <source>There is no coat yet after which the tank could be filled.</source>
        <translation>ابھی کوئی کوٹ نہیں جس کے بعد ٹینکی میں پانی بھرا جا سکے۔</translation>
    </message>
    <message>
        <source>Over the years %1 costs least: %2 a year, interest and upkeep counted.</source>
        <translation>کئی سالوں میں سب سے کم خرچ %1 پر آتا ہے: سالانہ %2، سود اور دیکھ بھال سمیت۔</translation>
    </message>
    <message>
        <source>That is %1 a year for each m³ (%2) stored.</source>
        <translation>یعنی جمع کیے گئے ہر m³ (%2) پر سالانہ %1۔</translation>
    </message>
    <message>
        <source>%1: %2 a year; %3 to build with its digging, lasts about %4, upkeep %5 a year.</source>
        <translation>%1: سالانہ %2؛ کھدائی سمیت بنانے پر %3، تقریباً %4 چلتی ہے، دیکھ بھال سالانہ %5۔</translation>
    </message>
    <message>
        <source>Life and upkeep are proposals to begin with: ask people who have such a lining, and change them.</source>
        <translation>عمر اور دیکھ بھال شروع کی تجویزیں ہیں: جن کے پاس ایسی لائننگ ہے ان سے پوچھیں، اور انہیں بدلیں۔</translation>
    </message>
    <message>
        <source>The bill comes out too low, for a price is missing: %1.</source>
        <translation>تخمینہ کم نکلتا ہے، کیونکہ ایک قیمت نہیں ہے: %1۔</translation>
    </message>
    <message>
        <source>The bill comes out too low, for prices are missing: %1. The first of them: %2.</source>
        <translation>تخمینہ کم نکلتا ہے، کیونکہ کچھ قیمتیں نہیں ہیں: %1۔ ان میں پہلی: %2۔</translation>
    </message>
    <message>
        <source>A bag of cement weighs %1, more than the %2 of one load (%3). Split each bag into dry, closed sacks of the same weight.</source>
        <translation>سیمنٹ کی بوری کا وزن %1 ہے، ایک بوجھ (%3) کے %2 سے زیادہ۔ ہر بوری کو برابر وزن کی خشک، بند بوریوں میں بانٹیں۔</translation>
    </message>
    <message>
        <source>Option %1 cannot be built as entered, so nothing is reckoned for it. The table of options says why.</source>
        <translation>متبادل %1 جیسا درج ہے ویسا بن نہیں سکتا، اس لیے اس کا کوئی حساب نہیں لگایا گیا۔ وجہ متبادلوں کے جدول میں ہے۔</translation>
    </message>
    <message>
        <source>What is bought or paid: an item of the plan, or one of your own such as a gate or a meal.</source>
        <translation>کیا خریدا یا ادا کیا جاتا ہے: منصوبے کی کوئی مد، یا آپ کی اپنی، جیسے گیٹ یا کھانا۔</translation>
    </message>
    <message>
        <source>What one unit costs where it is bought, without carrying; leave empty if not known.</source>
        <translation>جہاں سے خریدیں وہاں ایک اکائی کی قیمت، ڈھلائی کے بغیر؛ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>How many units; leave empty to take it from the plan. An item of your own needs it.</source>
        <translation>کتنی اکائیاں؛ خالی چھوڑیں تو منصوبے سے لی جاتی ہیں۔ اپنی مد کے لیے یہ درج کرنا ضروری ہے۔</translation>
    </message>
    <message>
        <source>Share that the household or the group gives itself, in goods or in work; no money is paid for it.</source>
        <translation>وہ حصہ جو گھرانہ یا گروپ خود دیتا ہے، سامان یا کام کی شکل میں؛ اس کا کوئی پیسہ نہیں دیا جاتا۔</translation>
    </message>
    <message>
        <source>Who carries it from the road to the tank.</source>
        <translation>سڑک سے ٹینکی تک کون ڈھوتا ہے۔</translation>
    </message>
    <message>
        <source>Weigh one unit; leave empty to take it from the table of weights.</source>
        <translation>ایک اکائی تولیں؛ خالی چھوڑیں تو وزن کے جدول سے لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>What one person carries on this path and comes back for again, all day; ask the porters.</source>
        <translation>اس راستے پر ایک آدمی جتنا اٹھا کر لاتا اور پھر لینے جاتا ہے، سارا دن؛ پورٹروں سے پوچھیں۔</translation>
    </message>
    <message>
        <source>How often a porter walks from road to tank and back in a day.</source>
        <translation>پورٹر دن میں سڑک سے ٹینکی تک کتنے پھیرے لگاتا ہے، آنا جانا ملا کر۔</translation>
    </message>
    <message>
        <source>What a porter is paid for one load from road to tank; leave empty if not known.</source>
        <translation>سڑک سے ٹینکی تک ایک بوجھ پر پورٹر کو کتنا دیا جاتا ہے؛ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>What one mule carries on this path; about a fifth of its own weight.</source>
        <translation>اس راستے پر ایک خچر جتنا اٹھاتا ہے؛ اپنے وزن کا تقریباً پانچواں حصہ۔</translation>
    </message>
    <message>
        <source>How often a mule goes from road to tank and back in a day.</source>
        <translation>خچر دن میں سڑک سے ٹینکی تک کتنے پھیرے لگاتا ہے، آنا جانا ملا کر۔</translation>
    </message>
    <message>
        <source>What is paid for one mule load from road to tank, its driver counted; leave empty if not known.</source>
        <translation>سڑک سے ٹینکی تک خچر کے ایک بوجھ پر کتنا دیا جاتا ہے، خچر والے سمیت؛ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>What one trolley or small tractor takes over this road.</source>
        <translation>اس سڑک پر ایک ٹرالی یا چھوٹا ٹریکٹر جتنا لے جاتا ہے۔</translation>
    </message>
    <message>
        <source>How often a trolley drives to the tank and back in a day.</source>
        <translation>ٹرالی دن میں ٹینکی تک کتنے پھیرے لگاتی ہے، آنا جانا ملا کر۔</translation>
    </message>
    <message>
        <source>What is paid for one trolley load, its driver counted; leave empty if not known.</source>
        <translation>ٹرالی کے ایک بوجھ پر کتنا دیا جاتا ہے، ڈرائیور سمیت؛ معلوم نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Share of the bill that is kept in reserve for breakage, rain and forgotten things.</source>
        <translation>تخمینے کا وہ حصہ جو ٹوٹ پھوٹ، بارش اور بھولی چیزوں کے لیے الگ رکھا جاتا ہے۔</translation>
    </message>
    <message>
        <source>What money costs or would earn in a year beyond the rise of prices; it makes linings that last long and short comparable.</source>
        <translation>قیمتوں کے بڑھنے سے اوپر، پیسے پر سال میں کتنا سود دینا پڑتا یا ملتا؛ اس سے دیر تک اور کم چلنے والی لائننگوں کا مقابلہ ہو سکتا ہے۔</translation>
    </message>
    <message>
        <source>One way to line the tank, to set beside the others.</source>
        <translation>ٹینکی کی لائننگ کا ایک طریقہ، دوسروں کے ساتھ رکھنے کے لیے۔</translation>
    </message>
    <message>
        <source>What the lining costs, put in place; leave empty if not known. For soil-cement plaster the bill of this plan is taken then.</source>
        <translation>لائننگ لگوانے کا پورا خرچ؛ معلوم نہ ہو تو خالی چھوڑیں۔ مٹی سیمنٹ کے پلستر کے لیے تب اس منصوبے کا تخمینہ لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>Whether the price is for the whole job, for a face of one m², or for one m³ that the tank holds.</source>
        <translation>قیمت پورے کام کی ہے، ایک m² سطح کی، یا ٹینکی کی ایک m³ گنجائش کی۔</translation>
    </message>
    <message>
        <source>Years until the lining has to be made anew; ask people who have one.</source>
        <translation>کتنے سال بعد لائننگ نئی بنانی پڑتی ہے؛ جن کے پاس ہو ان سے پوچھیں۔</translation>
    </message>
    <message>
        <source>What mending and cleaning cost in a year, as a share of the price.</source>
        <translation>مرمت اور صفائی پر سال میں کتنا خرچ آتا ہے، قیمت کے حصے کے طور پر۔</translation>
    </message>
    <message>
        <source>A figure of the plan that nobody knows exactly beforehand.</source>
        <translation>منصوبے کا وہ عدد جو پہلے سے کوئی ٹھیک ٹھیک نہیں جانتا۔</translation>
    </message>
    <message>
        <source>How far it may fall below the figure entered, at worst; 0 if it cannot.</source>
        <translation>بری سے بری صورت میں درج عدد سے کتنا کم ہو سکتا ہے؛ کم نہ ہو سکے تو 0۔</translation>
    </message>
    <message>
        <source>How far it may rise over the figure entered, at worst; 0 if it cannot.</source>
        <translation>بری سے بری صورت میں درج عدد سے کتنا زیادہ ہو سکتا ہے؛ زیادہ نہ ہو سکے تو 0۔</translation>
    </message>
    <message>
        <source>How many times the plan is reckoned with figures drawn by lot; more draws take longer and shake less.</source>
        <translation>قرعے سے نکلے اعداد کے ساتھ منصوبے کا حساب کتنی بار لگایا جائے؛ زیادہ قرعوں میں وقت زیادہ لگتا ہے اور نتیجہ کم ڈولتا ہے۔</translation>
    </message>
    <message>
        <source>Start of the lot; the same seed gives the same draws again.</source>
        <translation>قرعے کی شروعات؛ ایک ہی شروع عدد سے وہی قرعے دوبارہ نکلتے ہیں۔</translation>
    </message>
    <message>
        <source>Shortest length that is tried; of a round tank the smallest diameter. It is measured as the clear length of the tank is.</source>
        <translation>سب سے چھوٹی لمبائی جو آزمائی جائے؛ گول ٹینکی کا سب سے چھوٹا قطر۔ یہ ٹینکی کی اندر کی لمبائی کی طرح ناپی جاتی ہے۔</translation>
    </message>
    <message>
        <source>Longest length that is tried; of a round tank the largest diameter. Measure what fits on the platform.</source>
        <translation>سب سے بڑی لمبائی جو آزمائی جائے؛ گول ٹینکی کا سب سے بڑا قطر۔ ناپیں کہ پلیٹ فارم پر کتنا آتا ہے۔</translation>
    </message>
    <message>
        <source>Smallest clear width that is tried.</source>
        <translation>اندر کی سب سے کم چوڑائی جو آزمائی جائے۔</translation>
    </message>
    <message>
        <source>Largest clear width that is tried; measure what fits on the platform.</source>
        <translation>اندر کی سب سے زیادہ چوڑائی جو آزمائی جائے؛ ناپیں کہ پلیٹ فارم پر کتنا آتا ہے۔</translation>
    </message>
    <message>
        <source>Smallest clear depth that is tried.</source>
        <translation>اندر کی سب سے کم گہرائی جو آزمائی جائے۔</translation>
    </message>
    <message>
        <source>Largest clear depth that is tried; pits deeper than hand digging allows are left out all the same.</source>
        <translation>اندر کی سب سے زیادہ گہرائی جو آزمائی جائے؛ ہاتھ کی کھدائی کی حد سے گہرے گڑھے پھر بھی چھوڑ دیے جاتے ہیں۔</translation>
    </message>
    <message>
        <source>Sizes are tried this far apart; half the step means up to eight times as many sizes.</source>
        <translation>سائز اتنے اتنے فرق سے آزمائے جاتے ہیں؛ فرق آدھا کریں تو آٹھ گنا تک زیادہ سائز بنتے ہیں۔</translation>
    </message>
    <message>
        <source>What the bill may come to; leave empty if money sets no limit.</source>
        <translation>تخمینہ کتنے تک جا سکتا ہے؛ رقم کی کوئی حد نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Bags of cement that can be had; leave empty if cement sets no limit.</source>
        <translation>سیمنٹ کی کتنی بوریاں مل سکتی ہیں؛ سیمنٹ کی کوئی حد نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>People who can come for one coat on one day; leave empty if they set no limit.</source>
        <translation>ایک دن میں ایک کوٹ کے لیے کتنے لوگ آ سکتے ہیں؛ کوئی حد نہ ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>مد</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>ایک کی قیمت</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>مقدار</translation>
    </message>
    <message>
        <source>Given by the household</source>
        <translation>گھرانے کا مفت حصہ</translation>
    </message>
    <message>
        <source>Carried by</source>
        <translation>ڈھلائی کس سے</translation>
    </message>
    <message>
        <source>Weight of one</source>
        <translation>ایک کا وزن</translation>
    </message>
    <message>
        <source>Porter: load at most</source>
        <translation>پورٹر: زیادہ سے زیادہ بوجھ</translation>
    </message>
    <message>
        <source>Porter: trips a day</source>
        <translation>پورٹر: روزانہ پھیرے</translation>
    </message>
    <message>
        <source>Porter: price of a trip</source>
        <translation>پورٹر: ایک پھیرے کی قیمت</translation>
    </message>
    <message>
        <source>Mule: load at most</source>
        <translation>خچر: زیادہ سے زیادہ بوجھ</translation>
    </message>
    <message>
        <source>Mule: trips a day</source>
        <translation>خچر: روزانہ پھیرے</translation>
    </message>
    <message>
        <source>Mule: price of a trip</source>
        <translation>خچر: ایک پھیرے کی قیمت</translation>
    </message>
    <message>
        <source>Trolley: load at most</source>
        <translation>ٹرالی: زیادہ سے زیادہ بوجھ</translation>
    </message>
    <message>
        <source>Trolley: trips a day</source>
        <translation>ٹرالی: روزانہ پھیرے</translation>
    </message>
    <message>
        <source>Trolley: price of a trip</source>
        <translation>ٹرالی: ایک پھیرے کی قیمت</translation>
    </message>
    <message>
        <source>Kept for what nobody foresees</source>
        <translation>غیر متوقع خرچ</translation>
    </message>
    <message>
        <source>Interest a year</source>
        <translation>سالانہ سود</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>قیمت</translation>
    </message>
    <message>
        <source>Price is for</source>
        <translation>قیمت کس کی</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>کتنا چلتی ہے</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>سالانہ دیکھ بھال</translation>
    </message>
    <message>
        <source>What is uncertain</source>
        <translation>غیر یقینی کیا ہے</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>کم سے کم</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Number of draws</source>
        <translation>قرعوں کی تعداد</translation>
    </message>
    <message>
        <source>Seed of the draws</source>
        <translation>قرعوں کا شروع عدد</translation>
    </message>
    <message>
        <source>Length from</source>
        <translation>لمبائی، کم سے کم</translation>
    </message>
    <message>
        <source>Length to</source>
        <translation>لمبائی، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Width from</source>
        <translation>چوڑائی، کم سے کم</translation>
    </message>
    <message>
        <source>Width to</source>
        <translation>چوڑائی، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Depth from</source>
        <translation>گہرائی، کم سے کم</translation>
    </message>
    <message>
        <source>Depth to</source>
        <translation>گہرائی، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>In steps of</source>
        <translation>اتنے فرق سے</translation>
    </message>
    <message>
        <source>Money at most</source>
        <translation>رقم، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Bags of cement at most</source>
        <translation>سیمنٹ کی بوریاں، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>People on a coat at most</source>
        <translation>ایک کوٹ پر لوگ، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>پتھر</translation>
    </message>
    <message>
        <source>Sacks</source>
        <translation>ٹاٹ</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>مزدور</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>مستری</translation>
    </message>
    <message>
        <source>Fence</source>
        <translation>باڑ</translation>
    </message>
    <message>
        <source>Porters</source>
        <translation>پورٹر</translation>
    </message>
    <message>
        <source>Mules</source>
        <translation>خچر</translation>
    </message>
    <message>
        <source>Trolley</source>
        <translation>ٹرالی</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>بوری</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>عدد</translation>
    </message>
    <message>
        <source>person-day</source>
        <translation>دیہاڑی</translation>
    </message>
    <message>
        <source>job</source>
        <translation>کام</translation>
    </message>
    <message>
        <source>Person-days of work</source>
        <translation>کام کی دیہاڑیاں</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>رقم</translation>
    </message>
    <message>
        <source>Days to fill the tank</source>
        <translation>ٹینکی بھرنے کے دن</translation>
    </message>
    <message>
        <source>weight of loose soil</source>
        <translation>کھلی مٹی کا وزن</translation>
    </message>
    <message>
        <source>weight of loose sand</source>
        <translation>کھلی ریت کا وزن</translation>
    </message>
    <message>
        <source>weight of loose stone</source>
        <translation>کھلے پتھر کا وزن</translation>
    </message>
    <message>
        <source>weight of water</source>
        <translation>پانی کا وزن</translation>
    </message>
    <message>
        <source>weight of an empty sack</source>
        <translation>خالی ٹاٹ کا وزن</translation>
    </message>
    <message>
        <source>weight of pipe</source>
        <translation>پائپ کا وزن</translation>
    </message>
    <message>
        <source>weight of fence</source>
        <translation>باڑ کا وزن</translation>
    </message>
    <message>
        <source>Clear the ground</source>
        <translation>زمین صاف کرنا</translation>
    </message>
    <message>
        <source>Set out with pegs and string</source>
        <translation>کھونٹیوں اور ڈوری سے لے آؤٹ</translation>
    </message>
    <message>
        <source>Strip the topsoil</source>
        <translation>اوپر کی زرخیز مٹی اتارنا</translation>
    </message>
    <message>
        <source>Cut the platform</source>
        <translation>پلیٹ فارم کاٹنا</translation>
    </message>
    <message>
        <source>Fill and ram the platform</source>
        <translation>پلیٹ فارم کی بھرائی اور کوٹنا</translation>
    </message>
    <message>
        <source>Dig the low part of the pit</source>
        <translation>گڑھے کا نچلا حصہ کھودنا</translation>
    </message>
    <message>
        <source>Carry the spoil to its heap</source>
        <translation>کھدائی کی مٹی ڈھیر تک لے جانا</translation>
    </message>
    <message>
        <source>Trim walls and floor</source>
        <translation>دیواریں اور تلا چھیل کر برابر کرنا</translation>
    </message>
    <message>
        <source>Lay pipes and their collars</source>
        <translation>پائپ اور ان کے کالر لگانا</translation>
    </message>
    <message>
        <source>Fill for the first time</source>
        <translation>پہلی بار پانی بھرنا</translation>
    </message>
    <message>
        <source>Watch the first filling</source>
        <translation>پہلی بار بھرنے پر نظر رکھنا</translation>
    </message>
    <message>
        <source>Test for leaks</source>
        <translation>لیکیج ٹیسٹ کرنا</translation>
    </message>
    <message>
        <source>Build the silt trap</source>
        <translation>گاد کی حوضی بنانا</translation>
    </message>
    <message>
        <source>Build overflow and spill path</source>
        <translation>اوور فلو اور فالتو پانی کی نالی بنانا</translation>
    </message>
    <message>
        <source>Build fence, gate and ladder</source>
        <translation>باڑ، گیٹ اور سیڑھی بنانا</translation>
    </message>
    <message>
        <source>Plant the beds</source>
        <translation>کیاریوں میں بوائی</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>مستری</translation>
    </message>
    <message>
        <source>people who wet</source>
        <translation>ترائی والے</translation>
    </message>
    <message>
        <source>records of work and batches</source>
        <translation>کام اور گھانیوں کے ریکارڈ</translation>
    </message>
    <message>
        <source>ranges of uncertain figures</source>
        <translation>غیر یقینی اعداد کی کمی بیشی</translation>
    </message>
    <message>
        <source>limits of the search</source>
        <translation>تلاش کی حدیں</translation>
    </message>
    <message>
        <source>%1 can be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 ایک ہی بار میں لگ سکتا ہے: %2 کے اندر لگانے کو %3 چاہییں (%4)، اور موجود ہیں %5 (%6)۔</translation>
    </message>
    <message>
        <source>%1 cannot be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 ایک ہی بار میں نہیں لگ سکتا: %2 کے اندر لگانے کو %3 چاہییں (%4)، اور موجود ہیں %5 (%6)۔</translation>
    </message>
    <message>
        <source>No smaller tank of this depth is found that these people could plaster in one go: ask for more people.</source>
        <translation>اس گہرائی کی کوئی چھوٹی ٹینکی نہیں ملی جسے یہ لوگ ایک ہی بار میں پلستر کر سکیں: اور لوگ بلائیں۔</translation>
    </message>
    <message>
        <source>%1: batches with a whole bag each: %2, which is %3 an hour; the mixing places bring %4 an hour.</source>
        <translation>%1: پوری بوری والی گھانیاں: %2، یعنی %3 فی گھنٹہ؛ مسالا بنانے کی جگہوں سے %4 فی گھنٹہ نکلتی ہیں۔</translation>
    </message>
    <message>
        <source>That is too slow; mixing places needed: %1.</source>
        <translation>یہ بہت آہستہ ہے؛ مسالا بنانے کی جگہیں چاہییں: %1۔</translation>
    </message>
    <message>
        <source>%1: a batch is on the wall in %2; it may take %3 before it stiffens.</source>
        <translation>%1: ایک گھانی %2 میں دیوار پر لگ جاتی ہے؛ جمنے لگنے سے پہلے %3 کا وقت ہے۔</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3. Mix half a bag at a time, which is on the wall in %4.</source>
        <translation>%1: ایک گھانی لگانے میں %2 لگتے ہیں اور وہ %3 بعد جمنے لگتی ہے۔ ایک وقت میں آدھی بوری بنائیں، جو %4 میں دیوار پر لگ جاتی ہے۔</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3; even half a bag takes %4. More people have to spread.</source>
        <translation>%1: ایک گھانی لگانے میں %2 لگتے ہیں اور وہ %3 بعد جمنے لگتی ہے؛ آدھی بوری میں بھی %4 لگتے ہیں۔ لگانے والے اور لوگ ہونے چاہییں۔</translation>
    </message>
    <message>
        <source>%1: have ready %2 of cement, %3 of water for mixing and %4 sacks to cover it.</source>
        <translation>%1: %2 سیمنٹ، مسالے کے لیے %3 پانی اور ڈھکنے کے لیے %4 ٹاٹ تیار رکھیں۔</translation>
    </message>
    <message>
        <source>one of them a mason</source>
        <translation>ان میں ایک مستری</translation>
    </message>
    <message>
        <source>none of them a mason</source>
        <translation>ان میں کوئی مستری نہیں</translation>
    </message>
    <message numerus="yes">
        <source>%1 of them masons</source>
        <translation>
            <numerusform>ان میں %1 مستری</numerusform>
            <numerusform>ان میں %1 مستری</numerusform>
        </translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 across and holds about %2.</source>
        <translation>یہ لوگ اسی گہرائی کی ایسی ٹینکی پلستر کر سکتے ہیں جس کا قطر %1 ہو اور گنجائش تقریباً %2۔</translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 long and %2 wide and holds about %3.</source>
        <translation>یہ لوگ اسی گہرائی کی ایسی ٹینکی پلستر کر سکتے ہیں جو %1 لمبی اور %2 چوڑی ہو اور گنجائش تقریباً %3۔</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ہاں</translation>
    </message>
    <message>
        <source>no</source>
        <translation>نہیں</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>درج نہیں</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>Cannot be built</source>
        <translation>بنانا ممکن نہیں</translation>
    </message>
    <message>
        <source>Clear floor and depth</source>
        <translation>اندر کا فرش اور گہرائی</translation>
    </message>
    <message>
        <source>Holds when full</source>
        <translation>بھری ہو تو گنجائش</translation>
    </message>
    <message>
        <source>Can be drawn</source>
        <translation>نکالا جا سکتا ہے</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>دس میں سے کتنے سال پورا سال پانی</translation>
    </message>
    <message>
        <source>Days without water in a mean year</source>
        <translation>اوسط سال میں کم پانی کے دن</translation>
    </message>
    <message>
        <source>Drawn in the dry months of a mean year</source>
        <translation>اوسط سال کے خشک مہینوں میں نکالا</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>خرچ</translation>
    </message>
    <message>
        <source>Of it in money</source>
        <translation>اس میں سے نقد</translation>
    </message>
    <message>
        <source>Cost for each m³ stored</source>
        <translation>جمع کیے ہر m³ پر خرچ</translation>
    </message>
    <message>
        <source>Ground to dig for the pit</source>
        <translation>گڑھے کے لیے کھودنے کی زمین</translation>
    </message>
    <message>
        <source>People on a coat, at most</source>
        <translation>ایک کوٹ پر لوگ، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>Works begin</source>
        <translation>تعمیر شروع</translation>
    </message>
    <message>
        <source>Works end</source>
        <translation>تعمیر ختم</translation>
    </message>
    <message>
        <source>Findings that say stop</source>
        <translation>”رکیں“ والے نکات</translation>
    </message>
    <message>
        <source>Findings that ask for caution</source>
        <translation>”احتیاط“ والے نکات</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Closed days</source>
        <translation>چھٹی کے دن</translation>
    </message>
    <message>
        <source>Wishes for tasks</source>
        <translation>کاموں کی خواہشیں</translation>
    </message>
    <message>
        <source>Own rates</source>
        <translation>کام کی اپنی رفتار</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>ریکارڈ</translation>
    </message>
    <message>
        <source>Trial batches</source>
        <translation>آزمائشی گھانیاں</translation>
    </message>
    <message>
        <source>Work measured</source>
        <translation>ناپا ہوا کام</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>قیمتیں</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>قیمتوں کی فہرست</translation>
    </message>
    <message>
        <source>Porter</source>
        <translation>پورٹر</translation>
    </message>
    <message>
        <source>Mule</source>
        <translation>خچر</translation>
    </message>
    <message>
        <source>Linings compared</source>
        <translation>لائننگوں کا مقابلہ</translation>
    </message>
    <message>
        <source>Ranges</source>
        <translation>کمی بیشی</translation>
    </message>
    <message>
        <source>Uncertain figures</source>
        <translation>غیر یقینی اعداد</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>تلاش کی حدیں</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>متبادل</translation>
    </message>
    <message>
        <source>Closed days %1</source>
        <translation>چھٹی کے دن %1</translation>
    </message>
    <message>
        <source>Wish %1</source>
        <translation>خواہش %1</translation>
    </message>
    <message>
        <source>Own rate %1</source>
        <translation>کام کی اپنی رفتار %1</translation>
    </message>
    <message>
        <source>Trial batch %1</source>
        <translation>آزمائشی گھانی %1</translation>
    </message>
    <message>
        <source>Work measured %1</source>
        <translation>ناپا ہوا کام %1</translation>
    </message>
    <message>
        <source>Price list, line %1</source>
        <translation>قیمتوں کی فہرست، سطر %1</translation>
    </message>
    <message>
        <source>Lining %1</source>
        <translation>لائننگ %1</translation>
    </message>
    <message>
        <source>Uncertain figure %1</source>
        <translation>غیر یقینی عدد %1</translation>
    </message>
    <message>
        <source>Option %1</source>
        <translation>متبادل %1</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>تبدیلیاں</translation>
    </message>
    <message>
        <source>stands there already; give each line its own</source>
        <translation>یہ پہلے سے موجود ہے؛ ہر سطر کو الگ دیں</translation>
    </message>
    <message>
        <source>leaves no day to work on; give fewer closed days, or another rest day</source>
        <translation>کام کا کوئی دن نہیں بچتا؛ چھٹی کے دن کم دیں، یا ہفتے کی چھٹی کا دن بدلیں</translation>
    </message>
    <message>
        <source>does not lie in order: low must not be over typical, nor typical over high</source>
        <translation>ترتیب میں نہیں: کم والا عام سے زیادہ نہ ہو، نہ عام والا زیادہ والے سے زیادہ</translation>
    </message>
    <message>
        <source>is no entry that an option can change; take the change out of the option</source>
        <translation>ایسا اندراج نہیں جسے متبادل بدل سکے؛ یہ تبدیلی متبادل سے نکالیں</translation>
    </message>
    <message>
        <source>is not in the table of rates; choose one that is</source>
        <translation>کام کی رفتار کے جدول میں نہیں؛ جو ہو وہ چنیں</translation>
    </message>
    <message>
        <source>%1: %2, hardly more or less.</source>
        <translation>%1: %2، تقریباً کوئی کمی بیشی نہیں۔</translation>
    </message>
    <message>
        <source>%1: %2 in the middle; in one of ten cases more than %3, in one of ten less than %4.</source>
        <translation>%1: درمیان میں %2؛ دس میں سے ایک بار %3 سے زیادہ، دس میں سے ایک بار %4 سے کم۔</translation>
    </message>
    <message>
        <source>With the figures as entered it is %1.</source>
        <translation>درج اعداد سے یہ %1 ہے۔</translation>
    </message>
    <message>
        <source>What moves it most: %1.</source>
        <translation>جس سے یہ سب سے زیادہ بدلتا ہے: %1۔</translation>
    </message>
    <message>
        <source>Nothing has been drawn yet, so no range can be told.</source>
        <translation>ابھی کوئی قرعہ نہیں نکالا گیا، اس لیے کمی بیشی بتائی نہیں جا سکتی۔</translation>
    </message>
    <message>
        <source>From %1 draws between the lowest and highest values entered. A range is no promise: it is as good as these values.</source>
        <translation>درج کی گئی سب سے کم اور سب سے زیادہ قدروں کے بیچ %1 قرعوں سے۔ کمی بیشی کوئی وعدہ نہیں: یہ اتنی ہی ٹھیک ہے جتنی یہ قدریں۔</translation>
    </message>
    <message numerus="yes">
        <source>%1 records</source>
        <translation>
            <numerusform>%1 ریکارڈ</numerusform>
            <numerusform>%1 ریکارڈ</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: one record, %2; entered is %3.</source>
        <translation>%1: ایک ریکارڈ، %2؛ درج ہے %3۔</translation>
    </message>
    <message>
        <source>%1: %2, the middle one %3, from %4 to %5; entered is %6.</source>
        <translation>%1: %2، درمیانی قدر %3، %4 سے %5 تک؛ درج ہے %6۔</translation>
    </message>
    <message>
        <source>The plan is reckoned with the middle values of the records, not with the figures entered.</source>
        <translation>منصوبے کا حساب ریکارڈ کی درمیانی قدروں سے لگا ہے، درج اعداد سے نہیں۔</translation>
    </message>
    <message>
        <source>The plan is reckoned with the figures entered; the records stand beside them.</source>
        <translation>منصوبے کا حساب درج اعداد سے لگا ہے؛ ریکارڈ ان کے ساتھ رکھے ہیں۔</translation>
    </message>
    <message>
        <source>No records yet. Mix one batch and measure the face that it covers, or write down how many people took how many days for a piece of work: the order of cement and the dates then follow your own sand, soil and people.</source>
        <translation>ابھی کوئی ریکارڈ نہیں۔ ایک گھانی بنائیں اور ناپیں کہ کتنی سطح ڈھکتی ہے، یا لکھیں کہ کسی کام میں کتنے لوگوں کو کتنے دن لگے: پھر سیمنٹ کا آرڈر اور تاریخیں آپ کی اپنی ریت، مٹی اور لوگوں کے مطابق ہوں گی۔</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <translation>قطر %1، گہرائی %2</translation>
    </message>
    <message>
        <source>%1 of %2 years</source>
        <translation>%2 میں سے %1 سال</translation>
    </message>
    <message>
        <source>The cheapest size with water all year in %1: %2.</source>
        <translation>%1 میں سارا سال پانی دینے والا سب سے سستا سائز: %2۔</translation>
    </message>
    <message>
        <source>The size with least cement and with water all year in %1: %2.</source>
        <translation>%1 میں سارا سال پانی دینے والا سب سے کم سیمنٹ کا سائز: %2۔</translation>
    </message>
    <message>
        <source>No size within the limits gives water all year in %1. Widen the limits, find more water, or water smaller beds.</source>
        <translation>حدوں کے اندر کوئی سائز %1 میں سارا سال پانی نہیں دیتا۔ حدیں کھلی کریں، زیادہ پانی ڈھونڈیں، یا چھوٹی کیاریوں کو پانی دیں۔</translation>
    </message>
    <message>
        <source>Whether the water lasts is not known, so sizes are told apart by what they hold.</source>
        <translation>پانی پورا پڑے گا یا نہیں، معلوم نہیں، اس لیے سائزوں کا فرق ان کی گنجائش سے دیکھا گیا ہے۔</translation>
    </message>
    <message>
        <source>The size that holds most within the limits: %1.</source>
        <translation>حدوں کے اندر سب سے زیادہ گنجائش والا سائز: %1۔</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all cheaper ones: %1. Of the others there is always one that gives as much for less money.</source>
        <translation>دیکھنے کے قابل سائز، ہر ایک اپنے سے سستے سب سائزوں سے بہتر: %1۔ باقیوں کی جگہ ہمیشہ کوئی ایسا ہوتا ہے جو کم پیسوں میں اتنا ہی دے۔</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all that take less cement: %1. Of the others there is always one that gives as much for less cement.</source>
        <translation>دیکھنے کے قابل سائز، ہر ایک اپنے سے کم سیمنٹ والے سب سائزوں سے بہتر: %1۔ باقیوں کی جگہ ہمیشہ کوئی ایسا ہوتا ہے جو کم سیمنٹ میں اتنا ہی دے۔</translation>
    </message>
    <message>
        <source>the lining does not fit into them (%1)</source>
        <translation>لائننگ ان میں نہیں سماتی (%1)</translation>
    </message>
    <message>
        <source>the pit is too deep to dig by hand (%1)</source>
        <translation>گڑھا ہاتھ سے کھودنے کے لیے بہت گہرا ہے (%1)</translation>
    </message>
    <message>
        <source>the cut is higher than this soil bears (%1)</source>
        <translation>کٹائی اس مٹی کی برداشت سے اونچی ہے (%1)</translation>
    </message>
    <message>
        <source>no platform can be made for them (%1)</source>
        <translation>ان کے لیے پلیٹ فارم نہیں بن سکتا (%1)</translation>
    </message>
    <message>
        <source>a coat takes more people than can come (%1)</source>
        <translation>ایک کوٹ کے لیے جتنے لوگ آ سکتے ہیں اس سے زیادہ چاہییں (%1)</translation>
    </message>
    <message>
        <source>they take more cement than can be had (%1)</source>
        <translation>جتنا سیمنٹ مل سکتا ہے اس سے زیادہ لگتا ہے (%1)</translation>
    </message>
    <message>
        <source>they cost more than is there (%1)</source>
        <translation>جتنی رقم ہے اس سے زیادہ خرچ آتا ہے (%1)</translation>
    </message>
    <message>
        <source>Sizes tried: %1; within all limits: %2.</source>
        <translation>آزمائے گئے سائز: %1؛ سب حدوں کے اندر: %2۔</translation>
    </message>
    <message>
        <source>Sizes are left out because %1.</source>
        <translation>کچھ سائز چھوڑ دیے گئے کیونکہ %1۔</translation>
    </message>
    <message>
        <source>No size was tried: the limits leave none, or the search was broken off.</source>
        <translation>کوئی سائز نہیں آزمایا گیا: حدوں میں کوئی نہیں بچتا، یا تلاش بیچ میں روک دی گئی۔</translation>
    </message>
    <message>
        <source>No size keeps to all limits; widen them.</source>
        <translation>کوئی سائز سب حدوں کے اندر نہیں؛ حدیں کھلی کریں۔</translation>
    </message>
    <message>
        <source>kg/ft² per hour</source>
        <translation>kg/ft² فی گھنٹہ</translation>
    </message>
    <message>
        <source>min</source>
        <translation>منٹ</translation>
    </message>
    <message>
        <source>kg/m² per hour</source>
        <translation>kg/m² فی گھنٹہ</translation>
    </message>
    <message>
        <source>With the first coat in the week from %1, as planned, the coats stay undisturbed %2, by %3 of weather.</source>
        <translation>پہلا کوٹ منصوبے کے مطابق %1 سے شروع ہفتے میں لگے تو %3 کے موسم کے حساب سے کوٹ سلامت رہتے ہیں: %2۔</translation>
    </message>
    <message>
        <source>%1 or more of rain on the day of a coat or the day after (%2)</source>
        <translation>کوٹ کے دن یا اگلے دن %1 یا زیادہ بارش (%2)</translation>
    </message>
    <message>
        <source>a night of frost in the week after a coat (%1)</source>
        <translation>کوٹ کے بعد کے ہفتے میں کسی رات کورا (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold for plaster (%1)</source>
        <translation>دن پلستر کے لیے بہت گرم یا بہت ٹھنڈا (%1)</translation>
    </message>
    <message>
        <source>What disturbs them: %1.</source>
        <translation>انہیں کیا خراب کرتا ہے: %1۔</translation>
    </message>
    <message>
        <source>No other week of the year is better.</source>
        <translation>سال کا کوئی اور ہفتہ اس سے بہتر نہیں۔</translation>
    </message>
    <message>
        <source>The best week for the first coat begins on %1: undisturbed %2. For that the works start on %3.</source>
        <translation>پہلے کوٹ کے لیے سب سے اچھا ہفتہ %1 سے شروع ہوتا ہے؛ کوٹ سلامت: %2۔ اس کے لیے تعمیر %3 کو شروع ہو۔</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water.</source>
        <translation>%1: اس دن کے اوسط موسم میں تازہ پلستر سے %2 پانی اڑتا ہے۔</translation>
    </message>
    <message>
        <source>This is a chance, not a forecast: look at the sky and hear the forecast before you call people together.</source>
        <translation>یہ امکان ہے، پیش گوئی نہیں: لوگوں کو بلانے سے پہلے آسمان دیکھیں اور موسم کی خبر سنیں۔</translation>
    </message>
    <message>
        <source>The weather of the place is not known, so nobody can say how often rain or frost disturbs the coats. Enter the climate with the water, by monthly means or a daily record.</source>
        <translation>جگہ کا موسم معلوم نہیں، اس لیے کوئی نہیں بتا سکتا کہ بارش یا کورا کوٹوں کو کتنی بار خراب کرتا ہے۔ پانی کے ساتھ موسم درج کریں، ماہانہ اوسط سے یا روزانہ ریکارڈ سے۔</translation>
    </message>
    <message>
        <source>There is nothing to do yet.</source>
        <translation>ابھی کرنے کو کچھ نہیں۔</translation>
    </message>
    <message>
        <source>The works begin on %1 and end on %2: %3 in all, days of rest and of wetting counted.</source>
        <translation>تعمیر %1 کو شروع اور %2 کو ختم ہوتی ہے: کل %3، چھٹی اور ترائی کے دن ملا کر۔</translation>
    </message>
    <message>
        <source>The beds are planted from %1 on.</source>
        <translation>کیاریوں کی بوائی %1 سے۔</translation>
    </message>
    <message>
        <source>coat %1 on %2</source>
        <translation>کوٹ %1، %2 کو</translation>
    </message>
    <message>
        <source>Call people together for %1.</source>
        <translation>لوگوں کو بلائیں: %1۔</translation>
    </message>
    <message>
        <source>Water must be let in by %1.</source>
        <translation>%1 تک پانی چھوڑنا لازمی ہے۔</translation>
    </message>
    <message>
        <source>A day lost on one of these moves the end, for they leave no room: %1.</source>
        <translation>ان میں سے کسی پر ایک دن ضائع ہو تو آخری تاریخ آگے چلی جاتی ہے، کیونکہ ان میں تاخیر کی گنجائش نہیں: %1۔</translation>
    </message>
    <message>
        <source>Most people are needed on %1: %2, %3.</source>
        <translation>سب سے زیادہ لوگ %1 کو چاہییں: %2، %3۔</translation>
    </message>
    <message>
        <source>All tasks together take %1; %2 of it is masons&apos; work.</source>
        <translation>سب کاموں پر کل %1 لگتی ہیں؛ ان میں سے %2 مستریوں کا کام ہے۔</translation>
    </message>
    <message>
        <source>For digging two rules of thumb are at hand: a published norm makes it %1, reports from practice, without a source, %2. Ask people who have dug in this soil.</source>
        <translation>کھدائی کے لیے دو اندازے ہیں: شائع شدہ معیار سے %1، عملی تجربے کی باتوں سے، بغیر حوالہ، %2۔ ان سے پوچھیں جنہوں نے اس مٹی میں کھدائی کی ہے۔</translation>
    </message>
    <message>
        <source>Sacks have to be wetted on days of rest too: %1. Agree beforehand who comes.</source>
        <translation>ٹاٹوں کی ترائی چھٹی کے دن بھی کرنی ہے: %1۔ پہلے سے طے کریں کہ کون آئے گا۔</translation>
    </message>
    <message>
        <source>Wetting takes most water on %1: %2.</source>
        <translation>ترائی میں سب سے زیادہ پانی %1 کو لگتا ہے: %2۔</translation>
    </message>
    <message>
        <source>%1 needs more hands that lay plaster with skill. Masons entered: %2; needed to put it on in one go: %3.</source>
        <translation>%1 کے لیے پلستر لگانے والے اور ماہر ہاتھ چاہییں۔ درج مستری: %2؛ ایک ہی بار میں لگانے کو چاہییں: %3۔</translation>
    </message>
    <message>
        <source>%1 takes %2 batches an hour to be on in time; the mixing places that there are bring %3. Mixing places needed: %4.</source>
        <translation>وقت پر لگنے کے لیے %1 کو فی گھنٹہ %2 گھانیاں چاہییں؛ موجود مسالا بنانے کی جگہوں سے %3 نکلتی ہیں۔ مسالا بنانے کی جگہیں چاہییں: %4۔</translation>
    </message>
    <message>
        <source>%1: the people there take %2 to spread a batch with a whole bag of cement; after %3 it stiffens.</source>
        <translation>%1: موجود لوگوں کو سیمنٹ کی پوری بوری کی گھانی لگانے میں %2 لگتے ہیں؛ %3 بعد وہ جمنے لگتی ہے۔</translation>
    </message>
    <message>
        <source>Mix half a bag at a time: that is on the wall in %1.</source>
        <translation>ایک وقت میں آدھی بوری بنائیں: وہ %1 میں دیوار پر لگ جاتی ہے۔</translation>
    </message>
    <message>
        <source>Half a bag at a time takes %1 and stiffens too: put more people on the coat, or mix still less at a time.</source>
        <translation>ایک وقت میں آدھی بوری بھی %1 لیتی ہے اور جمنے لگتی ہے: کوٹ پر اور لوگ لگائیں، یا ایک وقت میں اس سے بھی کم بنائیں۔</translation>
    </message>
    <message>
        <source>On %1 more people are needed than there are: %2 needed, %3 there. Tasks lie on top of each other; move one of them, or ask for more people.</source>
        <translation>%1 کو جتنے لوگ ہیں اس سے زیادہ چاہییں: چاہییں %2، موجود %3۔ کام ایک ہی دن آ رہے ہیں؛ ان میں سے ایک کو آگے پیچھے کریں، یا اور لوگ بلائیں۔</translation>
    </message>
    <message>
        <source>A wish is entered for a task that this plan does not have: %1. It is kept and not used.</source>
        <translation>ایسے کام کی خواہش درج ہے جو اس منصوبے میں نہیں: %1۔ اسے رکھا گیا ہے، استعمال نہیں کیا گیا۔</translation>
    </message>
    <message>
        <source>What flows into the new tank is not known, so nobody can say when the water covers the walls. Enter the water let in each day, or the flow of the source.</source>
        <translation>معلوم نہیں کہ نئی ٹینکی میں کتنا پانی آتا ہے، اس لیے کوئی نہیں بتا سکتا کہ پانی دیواروں کو کب ڈھکے گا۔ روزانہ چھوڑا گیا پانی، یا ذریعے کا بہاؤ درج کریں۔</translation>
    </message>
    <message>
        <source>Filling is planned to start on %1, but should start by %2: plaster that falls dry cracks. Start earlier, or keep all walls under wet sacks until then.</source>
        <translation>منصوبے میں پانی بھرنا %1 کو شروع ہے، لیکن %2 تک شروع ہو جانا چاہیے: جو پلستر سوکھ جائے اس میں دراڑیں پڑتی ہیں۔ پہلے شروع کریں، یا تب تک سب دیواروں کو گیلے ٹاٹ کے نیچے رکھیں۔</translation>
    </message>
    <message>
        <source>The first filling does not reach the overflow level of %1 within a year: the water stands at %2 then. Find more water, or make the tank smaller.</source>
        <translation>پہلی بار پانی بھرنے پر ایک سال میں بھی اوور فلو کے لیول %1 تک نہیں پہنچتا: تب پانی %2 پر ہوتا ہے۔ زیادہ پانی ڈھونڈیں، یا ٹینکی چھوٹی بنائیں۔</translation>
    </message>
    <message>
        <source>The water rises slowly: after the last coat has cured, bare wall must stay under wet sacks for %1 more, until %2. That takes up to %3.</source>
        <translation>پانی آہستہ چڑھتا ہے: آخری کوٹ کی ترائی پوری ہونے کے بعد بھی کھلی دیوار کا %1 مزید، %2 تک، گیلے ٹاٹ کے نیچے رہنا لازمی ہے۔ اس پر %3 تک پانی لگتا ہے۔</translation>
    </message>
    <message>
        <source>Or bring about %1 of water by hand, so that it covers the walls in time.</source>
        <translation>یا تقریباً %1 پانی ہاتھ سے لائیں، تاکہ وہ دیواروں کو وقت پر ڈھک لے۔</translation>
    </message>
    <message>
        <source>heavy rain (%1)</source>
        <translation>بھاری بارش (%1)</translation>
    </message>
    <message>
        <source>frost (%1)</source>
        <translation>کورا (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold (%1)</source>
        <translation>بہت گرم یا بہت ٹھنڈا دن (%1)</translation>
    </message>
    <message>
        <source>By the weather of the years reckoned, coats put on as planned stay undisturbed %1.</source>
        <translation>حساب کیے سالوں کے موسم سے، منصوبے کے مطابق لگے کوٹ سلامت رہتے ہیں: %1۔</translation>
    </message>
    <message>
        <source>With the works begun on %1 the first coat falls into the best week of the year, and they stay undisturbed %2.</source>
        <translation>تعمیر %1 کو شروع ہو تو پہلا کوٹ سال کے سب سے اچھے ہفتے میں آتا ہے، اور کوٹ سلامت رہتے ہیں: %2۔</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water; from %3 on it may crack while it is soft. Begin at dawn, keep sun and wind off it, and lay wet sacks on as soon as it bears them.</source>
        <translation>%1: اس دن کے اوسط موسم میں تازہ پلستر سے %2 پانی اڑتا ہے؛ %3 سے آگے نرم حالت میں ہی اس میں دراڑیں پڑ سکتی ہیں۔ فجر کے وقت شروع کریں، دھوپ اور ہوا سے بچائیں، اور جیسے ہی پلستر سہہ سکے گیلے ٹاٹ ڈال دیں۔</translation>
    </message>
    <message>
        <source>The plan is reckoned with few records. %1: %2 so far; from %3 on their middle value says more.</source>
        <translation>منصوبے کا حساب تھوڑے ریکارڈ سے لگا ہے۔ %1: اب تک %2؛ %3 سے آگے ان کی درمیانی قدر زیادہ بھروسے کی ہے۔</translation>
    </message>
    <message>
        <source>%1: the records say %2, and the plan is reckoned with the %3 entered. Find out why, or let the records stand in its place.</source>
        <translation>%1: ریکارڈ %2 بتاتے ہیں، اور منصوبے کا حساب درج %3 سے لگا ہے۔ وجہ معلوم کریں، یا اس کی جگہ ریکارڈ کو لینے دیں۔</translation>
    </message>
    <message>
        <source>Day on which the first task may begin; nothing begins before it.</source>
        <translation>جس دن پہلا کام شروع ہو سکتا ہے؛ اس سے پہلے کچھ شروع نہیں ہوتا۔</translation>
    </message>
    <message>
        <source>People who dig, carry spoil and lay the stone bed each working day.</source>
        <translation>ہر کام کے دن کھدائی کرنے، کھدائی کی مٹی ڈھونے اور پتھر کی سولنگ بچھانے والے لوگ۔</translation>
    </message>
    <message>
        <source>How many of the people on a coat lay plaster with skill; the others mix, carry and hand up.</source>
        <translation>کوٹ پر لگے لوگوں میں سے کتنے پلستر لگانے کے ماہر ہیں؛ باقی مسالا بناتے، ڈھوتے اور پکڑاتے ہیں۔</translation>
    </message>
    <message>
        <source>First day on which nobody works: a feast, a market, a funeral, a day kept for sowing.</source>
        <translation>پہلا دن جس میں کوئی کام نہیں کرتا: عید، میلہ، جنازہ، بوائی کے لیے رکھا دن۔</translation>
    </message>
    <message>
        <source>How many days nobody works, the first one counted; wetting goes on.</source>
        <translation>کتنے دن کوئی کام نہیں کرتا، پہلا دن بھی گنیں؛ ترائی جاری رہتی ہے۔</translation>
    </message>
    <message>
        <source>What the days are kept for, in a word; it is printed in the calendar.</source>
        <translation>دن کس لیے رکھے گئے ہیں، ایک لفظ میں؛ کیلنڈر پر چھپتا ہے۔</translation>
    </message>
    <message>
        <source>Hours of work behind one person-day, breaks not counted.</source>
        <translation>ایک دیہاڑی میں کام کے گھنٹے، وقفے نکال کر۔</translation>
    </message>
    <message>
        <source>Hours of daylight and cool weather in which a coat is begun and finished, without a stop over night.</source>
        <translation>دن کی روشنی اور ٹھنڈے وقت کے گھنٹے جن میں کوٹ شروع اور ختم ہو، رات کو رکے بغیر۔</translation>
    </message>
    <message>
        <source>Boards or floors on which mortar is mixed at the same time, each with its own mixers.</source>
        <translation>تختے یا پکی جگہیں جہاں ایک ہی وقت میں مسالا بنتا ہے، ہر ایک پر اپنے بنانے والے۔</translation>
    </message>
    <message>
        <source>Time it with a watch: from filling the gauge boxes until the batch at one place is ready to carry.</source>
        <translation>گھڑی سے ناپیں: ناپ کی پیٹیاں بھرنے سے لے کر ایک جگہ کی گھانی ڈھونے کے لیے تیار ہونے تک۔</translation>
    </message>
    <message>
        <source>Time from wetting the cement until the mortar stiffens; what is older is thrown away, not wetted again. Try it on a hot day.</source>
        <translation>سیمنٹ گیلا ہونے سے مسالا جمنے لگنے تک کا وقت؛ جو اس سے پرانا ہو اسے پھینک دیں، دوبارہ پانی ملا کر ہرگز استعمال نہ کریں۔ گرم دن میں آزمائیں۔</translation>
    </message>
    <message>
        <source>People who pour water over the sacks on each day of curing, rest days too; they are not counted among the diggers.</source>
        <translation>جو لوگ ترائی کے ہر دن ٹاٹوں پر پانی ڈالتے ہیں، چھٹی کے دن بھی؛ کھدائی کرنے والوں میں نہیں گنے جاتے۔</translation>
    </message>
    <message>
        <source>How often the sacks are wetted on a day of curing; in dry wind more often.</source>
        <translation>ترائی کے ایک دن میں ٹاٹ کتنی بار گیلے کیے جاتے ہیں؛ خشک ہوا میں زیادہ بار۔</translation>
    </message>
    <message>
        <source>Measure it: level distance from the middle of the pit to the middle of the heap.</source>
        <translation>ناپیں: گڑھے کے بیچ سے ڈھیر کے بیچ تک ہموار فاصلہ۔</translation>
    </message>
    <message>
        <source>How many times as long the low part of a deep pit takes, where ground is thrown up twice; 1 is the same.</source>
        <translation>گہرے گڑھے کے نچلے حصے میں کتنے گنا وقت لگتا ہے، جہاں مٹی دو بار اوپر پھینکنی پڑتی ہے؛ 1 یعنی برابر۔</translation>
    </message>
    <message>
        <source>Water that runs or is carried into the new tank each day; leave empty to take what the source gives in that month.</source>
        <translation>نئی ٹینکی میں روزانہ جتنا پانی آتا یا ڈھویا جاتا ہے؛ خالی چھوڑیں تو اس مہینے ذریعہ جتنا دیتا ہے وہ لیا جاتا ہے۔</translation>
    </message>
    <message>
        <source>The inflow is held back to this rise, so that young plaster is loaded slowly.</source>
        <translation>پانی روک کر اتنا ہی چڑھنے دیا جاتا ہے، تاکہ کچے پلستر پر بوجھ آہستہ آئے۔</translation>
    </message>
    <message>
        <source>The walls are told in bands of this height: until when the sacks of each must stay wet.</source>
        <translation>دیواروں کا حساب اتنی اونچائی کی پٹیوں میں بتایا جاتا ہے: ہر پٹی کے ٹاٹ کب تک گیلے رہنا لازمی ہے۔</translation>
    </message>
    <message>
        <source>Rain of one day from which on a fresh coat is washed or pitted; a rain gauge shows it.</source>
        <translation>ایک دن کی وہ بارش جس سے آگے تازہ کوٹ دھل جاتا یا اس میں گڑھے پڑ جاتے ہیں؛ بارش ناپنے کا آلہ بتاتا ہے۔</translation>
    </message>
    <message>
        <source>The task for which a day or a number of people is wished.</source>
        <translation>وہ کام جس کے لیے کوئی دن یا لوگوں کی تعداد چاہی گئی ہے۔</translation>
    </message>
    <message>
        <source>The task begins on this day or later; leave empty if it may begin as soon as it can.</source>
        <translation>کام اس دن یا اس کے بعد شروع ہوتا ہے؛ جتنی جلدی ہو سکے شروع کرنا ہو تو خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>People on this task; leave empty for as many as usual.</source>
        <translation>اس کام پر لوگ؛ خالی چھوڑیں تو جتنے عام طور پر ہوتے ہیں۔</translation>
    </message>
    <message>
        <source>The work for which the district has a rate of its own.</source>
        <translation>وہ کام جس کی ضلع کی اپنی رفتار ہے۔</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when all goes well.</source>
        <translation>سب ٹھیک چلے تو اس کام کی ایک اکائی پر دیہاڑیاں۔</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work on a usual day; the plan is reckoned with it.</source>
        <translation>عام دن میں اس کام کی ایک اکائی پر دیہاڑیاں؛ منصوبے کا حساب اسی سے لگتا ہے۔</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when it goes badly.</source>
        <translation>کام خراب چلے تو اس کام کی ایک اکائی پر دیہاڑیاں۔</translation>
    </message>
    <message>
        <source>Whether the middle values of what was measured stand in place of the figures entered.</source>
        <translation>کیا ناپی گئی چیزوں کی درمیانی قدریں درج اعداد کی جگہ لیں۔</translation>
    </message>
    <message>
        <source>The coat whose mix the trial batch had, counted from the dug face.</source>
        <translation>جس کوٹ کے تناسب سے آزمائشی گھانی بنی، کھودی سطح سے گن کر۔</translation>
    </message>
    <message>
        <source>Cement in the trial batch, in bags and parts of a bag.</source>
        <translation>آزمائشی گھانی میں سیمنٹ، بوریوں اور بوری کے حصوں میں۔</translation>
    </message>
    <message>
        <source>Face that the trial batch covered: measure length and height of the patch.</source>
        <translation>آزمائشی گھانی نے جتنی سطح ڈھکی: اس ٹکڑے کی لمبائی اور اونچائی ناپیں۔</translation>
    </message>
    <message>
        <source>Thickness of the patch, square to the face: push a nail in at several places and take the middle.</source>
        <translation>اس ٹکڑے کی موٹائی، سطح کی گنیا میں: کئی جگہ کیل اندر دبائیں اور درمیانی قدر لیں۔</translation>
    </message>
    <message>
        <source>What was done and measured, here or on an earlier tank of the district.</source>
        <translation>کیا کام ہوا اور ناپا گیا، یہاں یا ضلع کی کسی پہلی ٹینکی پر۔</translation>
    </message>
    <message>
        <source>How much of it: ground dug as it lay, fill as rammed, stone bed and mortar as placed in m³; spreading in m².</source>
        <translation>کتنا کام: کھدائی ٹھوس زمین کے ناپ سے، بھرائی کوٹنے کے بعد، سولنگ اور مسالا لگنے کے بعد، m³ میں؛ پلستر لگانا m² میں۔</translation>
    </message>
    <message>
        <source>People times days that it took, helpers counted; half a day of four people is 2.</source>
        <translation>لوگ ضرب جتنے دن لگے، مددگار بھی گنیں؛ چار لوگوں کا آدھا دن 2 ہے۔</translation>
    </message>
    <message>
        <source>First day of the works</source>
        <translation>تعمیر کا پہلا دن</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>ان میں مستری</translation>
    </message>
    <message>
        <source>Closed from</source>
        <translation>چھٹی شروع</translation>
    </message>
    <message>
        <source>Closed for</source>
        <translation>چھٹی کے کتنے دن</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>وجہ</translation>
    </message>
    <message>
        <source>Hours of a person-day</source>
        <translation>دیہاڑی کے گھنٹے</translation>
    </message>
    <message>
        <source>Hours to put on a coat</source>
        <translation>کوٹ لگانے کے گھنٹے</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>مسالا بنانے کی جگہیں</translation>
    </message>
    <message>
        <source>Mixing one batch takes</source>
        <translation>ایک گھانی بنانے کا وقت</translation>
    </message>
    <message>
        <source>A batch must be on the wall within</source>
        <translation>گھانی دیوار پر لگنے کا وقت</translation>
    </message>
    <message>
        <source>People who keep the sacks wet</source>
        <translation>ٹاٹ گیلے رکھنے والے لوگ</translation>
    </message>
    <message>
        <source>Wettings a day</source>
        <translation>ترائی، دن میں کتنی بار</translation>
    </message>
    <message>
        <source>Way to the spoil heap</source>
        <translation>مٹی کے ڈھیر تک راستہ</translation>
    </message>
    <message>
        <source>Digging low in the pit takes, times</source>
        <translation>گڑھے کے نچلے حصے کی کھدائی، کتنے گنا</translation>
    </message>
    <message>
        <source>Water let in for the first filling</source>
        <translation>پہلی بار بھرنے کو چھوڑا پانی</translation>
    </message>
    <message>
        <source>Water may rise in a day by</source>
        <translation>پانی ایک دن میں کتنا چڑھ سکتا ہے</translation>
    </message>
    <message>
        <source>Height of a band of wall</source>
        <translation>دیوار کی پٹی کی اونچائی</translation>
    </message>
    <message>
        <source>Heavy rain, in a day</source>
        <translation>بھاری بارش، ایک دن میں</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>کام</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>اس سے پہلے نہیں</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>مطلوبہ لوگ</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>کام</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>کم</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>عام</translation>
    </message>
    <message>
        <source>High</source>
        <translation>زیادہ</translation>
    </message>
    <message>
        <source>Reckon with the records</source>
        <translation>ریکارڈ سے حساب لگائیں</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>کوٹ</translation>
    </message>
    <message>
        <source>Face covered</source>
        <translation>ڈھکی سطح</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>کیا ہوا کام</translation>
    </message>
    <message>
        <source>It took</source>
        <translation>لگی دیہاڑیاں</translation>
    </message>
    <message>
        <source>digging, as reported from practice</source>
        <translation>کھدائی، عملی تجربے کی باتوں سے</translation>
    </message>
    <message>
        <source>digging, by the district&apos;s norm</source>
        <translation>کھدائی، ضلع کے معیار سے</translation>
    </message>
    <message>
        <source>clearing the ground</source>
        <translation>زمین صاف کرنا</translation>
    </message>
    <message>
        <source>setting out</source>
        <translation>لے آؤٹ</translation>
    </message>
    <message>
        <source>stripping topsoil</source>
        <translation>اوپر کی زرخیز مٹی اتارنا</translation>
    </message>
    <message>
        <source>filling and ramming</source>
        <translation>بھرائی اور کوٹنا</translation>
    </message>
    <message>
        <source>carrying spoil up to 10 m</source>
        <translation>کھدائی کی مٹی 10 m تک ڈھونا</translation>
    </message>
    <message>
        <source>carrying spoil up to 20 m</source>
        <translation>کھدائی کی مٹی 20 m تک ڈھونا</translation>
    </message>
    <message>
        <source>carrying spoil up to 50 m</source>
        <translation>کھدائی کی مٹی 50 m تک ڈھونا</translation>
    </message>
    <message>
        <source>trimming walls and floor</source>
        <translation>دیواریں اور تلا چھیل کر برابر کرنا</translation>
    </message>
    <message>
        <source>laying pipe</source>
        <translation>پائپ ڈالنا</translation>
    </message>
    <message>
        <source>plastering one coat</source>
        <translation>ایک کوٹ پلستر کرنا</translation>
    </message>
    <message>
        <source>keeping sacks wet</source>
        <translation>ٹاٹ گیلے رکھنا</translation>
    </message>
    <message>
        <source>watching the first filling</source>
        <translation>پہلی بار بھرنے پر نظر رکھنا</translation>
    </message>
    <message>
        <source>testing for leaks</source>
        <translation>لیکیج ٹیسٹ کرنا</translation>
    </message>
    <message>
        <source>building the fence</source>
        <translation>باڑ بنانا</translation>
    </message>
    <message>
        <source>building the silt trap</source>
        <translation>گاد کی حوضی بنانا</translation>
    </message>
    <message>
        <source>building the overflow</source>
        <translation>اوور فلو بنانا</translation>
    </message>
    <message>
        <source>planting the beds</source>
        <translation>کیاریوں میں بوائی</translation>
    </message>
    <message>
        <source>Ramming fill</source>
        <translation>بھرائی کوٹنا</translation>
    </message>
    <message>
        <source>Spreading plaster</source>
        <translation>پلستر لگانا</translation>
    </message>
    <message>
        <source>%1 job</source>
        <translation>%1 کام</translation>
    </message>
    <message numerus="yes">
        <source>%1 jobs</source>
        <translation>
            <numerusform>%1 کام</numerusform>
            <numerusform>%1 کام</numerusform>
        </translation>
    </message>
    <message>
        <source>a quarter of a day</source>
        <translation>چوتھائی دن</translation>
    </message>
    <message>
        <source>half a day</source>
        <translation>آدھا دن</translation>
    </message>
    <message>
        <source>three quarters of a day</source>
        <translation>پون دن</translation>
    </message>
    <message>
        <source>digging, %1</source>
        <translation>کھدائی، %1</translation>
    </message>
    <message>
        <source>every time</source>
        <translation>ہر بار</translation>
    </message>
    <message numerus="yes">
        <source>%1 times in %2</source>
        <translation>
            <numerusform>%2 میں سے %1 بار</numerusform>
            <numerusform>%2 میں سے %1 بار</numerusform>
        </translation>
    </message>
    <message>
        <source>once in %1 times</source>
        <translation>%1 میں سے ایک بار</translation>
    </message>
    <message>
        <source>less than once in %1 times</source>
        <translation>%1 میں سے ایک بار سے بھی کم</translation>
    </message>
    <message>
        <source>never</source>
        <translation>کبھی نہیں</translation>
    </message>
    <message>
        <source>Not counted, for what they cost or how much of them is needed is not known: %1. What is free stands in the price list with a price of 0.</source>
        <translation>حساب میں نہیں گنے گئے، کیونکہ ان کا خرچ یا مقدار معلوم نہیں: %1۔ جو چیز مفت ہو وہ قیمتوں کی فہرست میں 0 قیمت کے ساتھ ہوتی ہے۔</translation>
    </message>
    <message>
        <source>Not compared, for their price or their digging is not known: %1.</source>
        <translation>مقابلے میں شامل نہیں، کیونکہ ان کی قیمت یا کھدائی معلوم نہیں: %1۔</translation>
    </message>
    <message>
        <source>No lining can be compared yet: enter what one costs, how long it lasts and what its upkeep takes. All but the moulded tank need the works, too, and what a labourer costs, for their digging.</source>
        <translation>ابھی کسی لائننگ کا مقابلہ نہیں ہو سکتا: درج کریں کہ ایک پر کتنا خرچ آتا ہے، کتنا چلتی ہے اور دیکھ بھال پر کیا لگتا ہے۔ تیار ٹینکی کے سوا سب کے لیے تعمیر کی تفصیل اور مزدور کا خرچ بھی چاہیے، کھدائی کی وجہ سے۔</translation>
    </message>
    <message>
        <source>Only one lining can be reckoned; enter what the others cost to compare them.</source>
        <translation>صرف ایک لائننگ کا حساب لگ سکتا ہے؛ مقابلے کے لیے درج کریں کہ دوسریوں پر کتنا خرچ آتا ہے۔</translation>
    </message>
    <message>
        <source>Compared is the lining with the digging that it needs. What every tank needs, whatever its lining, is left out of all of them: pipes, fence, silt trap, overflow, clearing, filling and other things of your own.</source>
        <translation>مقابلہ لائننگ کا ہے، اس کی کھدائی سمیت۔ جو ہر ٹینکی کو چاہیے، لائننگ کوئی بھی ہو، وہ سب سے نکال دیا گیا ہے: پائپ، باڑ، گاد کی حوضی، اوور فلو، زمین صاف کرنا، پانی بھرنا اور آپ کی اپنی دوسری چیزیں۔</translation>
    </message>
    <message>
        <source>is not part of this project; its rates were left out</source>
        <translation>اس پراجیکٹ کا حصہ نہیں؛ اس کے کام کی رفتار چھوڑ دی گئی</translation>
    </message>
    <message>
        <source>%1 waits %2 for the next coat after its curing. Keep it under wet sacks all that time: the next coat does not hold on dry plaster.</source>
        <translation>%1 کو ترائی کے بعد اگلے کوٹ کے لیے %2 انتظار کرنا ہے۔ اس سارے وقت اسے گیلے ٹاٹ کے نیچے رکھیں: سوکھے پلستر پر اگلا کوٹ نہیں پکڑتا۔</translation>
    </message>
    <message>
        <source>Nobody is entered who keeps the sacks wet. Plaster that dries early cracks and leaks: agree who comes, rest days too.</source>
        <translation>ٹاٹ گیلے رکھنے والا کوئی درج نہیں۔ جو پلستر جلدی سوکھ جائے اس میں دراڑیں پڑتی ہیں اور وہ لیک کرتا ہے: طے کریں کہ کون آئے گا، چھٹی کے دن بھی۔</translation>
    </message>
    <message>
        <source>%1: the middle of the records is %2, outside of what can be (%3 to %4). It is not used; look at the records again.</source>
        <translation>%1: ریکارڈ کی درمیانی قدر %2 ہے، جو ممکن حد (%3 تا %4) سے باہر ہے۔ اسے استعمال نہیں کیا گیا؛ ریکارڈ دوبارہ دیکھیں۔</translation>
    </message>
    <message>
        <source>Only digging in the soil of this site counts. Left empty: it was such soil. Record the first 1.5 m of depth; what lies deeper is reckoned slower.</source>
        <translation>صرف اس جگہ کی مٹی کی کھدائی گنی جاتی ہے۔ خالی چھوڑا: یہی مٹی تھی۔ پہلی 1.5 m گہرائی کا ریکارڈ رکھیں؛ اس سے گہرے کا حساب آہستہ رفتار سے لگتا ہے۔</translation>
    </message>
    <message>
        <source>Soil dug</source>
        <translation>کھودی مٹی</translation>
    </message>
    <message>
        <source>Draft translation, to be checked by a speaker.</source>
        <translation>ترجمے کا مسودہ، زبان بولنے والے سے جانچ باقی ہے۔</translation>
    </message>
    <message>
        <source>Pegs and strings</source>
        <translation>کھونٹیاں اور ڈوریاں</translation>
    </message>
    <message>
        <source>Wet sacks</source>
        <translation>گیلے ٹاٹ</translation>
    </message>
    <message>
        <source>ground as it lies</source>
        <translation>زمین، جیسی ہے</translation>
    </message>
    <message>
        <source>pegs and strings</source>
        <translation>کھونٹیاں اور ڈوریاں</translation>
    </message>
    <message>
        <source>making the platform</source>
        <translation>پلیٹ فارم بنانا</translation>
    </message>
    <message>
        <source>pit dug and trimmed</source>
        <translation>گڑھا کھدا اور چھیل کر برابر</translation>
    </message>
    <message>
        <source>stone bed</source>
        <translation>پتھر کی سولنگ</translation>
    </message>
    <message>
        <source>first filling</source>
        <translation>پہلی بار پانی بھرنا</translation>
    </message>
    <message>
        <source>full tank</source>
        <translation>بھری ٹینکی</translation>
    </message>
    <message>
        <source>field notes</source>
        <translation>فیلڈ نوٹ</translation>
    </message>
    <message>
        <source>coat %1 put on</source>
        <translation>کوٹ %1 لگ گیا</translation>
    </message>
    <message>
        <source>coat %1 under wet sacks</source>
        <translation>کوٹ %1 گیلے ٹاٹ کے نیچے</translation>
    </message>
    <message>
        <source>%1: %2 sand, %3 silt, %4 clay; texture: %5.</source>
        <translation>%1: %2 ریت، %3 گاد، %4 چکنی مٹی؛ مٹی کی قسم: %5۔</translation>
    </message>
    <message>
        <source>Jar %1</source>
        <translation>جار %1</translation>
    </message>
    <message>
        <source>The jar shows %1 clay.</source>
        <translation>جار میں %1 چکنی مٹی ہے۔</translation>
    </message>
    <message>
        <source>The jars show %1 clay in the middle of %2.</source>
        <translation>جاروں میں %1 چکنی مٹی ہے (%2 میں درمیانی)۔</translation>
    </message>
    <message>
        <source>%1: %2 by ball and ribbon.</source>
        <translation>%1: گولی اور ربن سے %2۔</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>نمونہ %1</translation>
    </message>
    <message>
        <source>For digging this program takes such soil as: %1.</source>
        <translation>کھدائی کے لیے یہ پروگرام ایسی مٹی کو یہ مانتا ہے: %1۔</translation>
    </message>
    <message>
        <source>There is clay or clay loam. The hand does not tell whether it is stiff: dig a test pit, press a thumb into its wall, and write down what the layer is.</source>
        <translation>یہاں چکنی مٹی یا چکنی میرا ہے۔ ہاتھ نہیں بتاتا کہ یہ سخت ہے یا نہیں: آزمائشی گڑھا کھودیں، اس کی دیوار میں انگوٹھا دبائیں، اور لکھیں کہ تہہ کیا ہے۔</translation>
    </message>
    <message>
        <source>No layer down to the floor of the pit (%1) has its soil written down.</source>
        <translation>گڑھے کے تلے (%1) تک کسی تہہ کی مٹی نہیں لکھی گئی۔</translation>
    </message>
    <message>
        <source>The weakest soil down to the floor of the pit (%1) is: %2.</source>
        <translation>گڑھے کے تلے (%1) تک سب سے کمزور مٹی یہ ہے: %2۔</translation>
    </message>
    <message>
        <source>No water came in down to %1. Look again after the rains, or ask how high the nearest well stands then.</source>
        <translation>%1 تک پانی نہیں آیا۔ بارشوں کے بعد پھر دیکھیں، یا پوچھیں کہ تب سب سے قریبی کنویں میں پانی کتنا اونچا ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Water came in at %1 below the ground, and it may stand higher after the rains.</source>
        <translation>زمین سے %1 نیچے پانی آیا، اور بارشوں کے بعد یہ اور اونچا ہو سکتا ہے۔</translation>
    </message>
    <message>
        <source>The ground has no fall over %1.</source>
        <translation>%1 پر زمین کی کوئی ڈھلوان نہیں۔</translation>
    </message>
    <message>
        <source>The ground rises %1 over %2: the line was walked uphill. Walk it straight down the fall, or turn the signs of the drops.</source>
        <translation>زمین %2 پر %1 چڑھتی ہے: لکیر اوپر کی طرف چلی گئی۔ اسے سیدھا ڈھلان کی طرف نیچے چلیں، یا اترائیوں کے جمع منفی کے نشان الٹ دیں۔</translation>
    </message>
    <message>
        <source>The slope falls %1 over %2.</source>
        <translation>زمین %2 پر %1 نیچے اترتی ہے۔</translation>
    </message>
    <message>
        <source>No jar read yet. Fill a straight jar a third with soil, the rest with water and a pinch of salt, shake it long, put it down, and measure the layers when they have settled.</source>
        <translation>ابھی کوئی جار نہیں پڑھا گیا۔ سیدھے جار کا تیسرا حصہ مٹی سے، باقی پانی اور ایک چٹکی نمک سے بھریں، دیر تک ہلائیں، رکھ دیں، اور تہیں بیٹھ جائیں تو ناپیں۔</translation>
    </message>
    <message>
        <source>These are shares of the height, not of the weight: clay settles loosely, so by weight there is less of it.</source>
        <translation>یہ حصے اونچائی کے ہیں، وزن کے نہیں: چکنی مٹی پھول کر بیٹھتی ہے، اس لیے وزن سے یہ کم ہوتی ہے۔</translation>
    </message>
    <message>
        <source>No soil felt yet. Knead a moist handful, squeeze it to a ball, push it to a ribbon, and write down what happens.</source>
        <translation>ابھی کوئی مٹی ہاتھ سے نہیں دیکھی گئی۔ نم مٹی کی ایک مٹھی گوندھیں، دبا کر گولی بنائیں، دھکیل کر ربن بنائیں، اور لکھیں کیا ہوا۔</translation>
    </message>
    <message>
        <source>No test pit yet. Dig one beside the tank as deep as its pit (%1), and write down each layer and where water comes in. A pit can cave in: step its sides back, and never work in it alone.</source>
        <translation>ابھی کوئی آزمائشی گڑھا نہیں۔ ٹینکی کے پاس ایک کھودیں، ٹینکی کے گڑھے (%1) جتنا گہرا، اور ہر تہہ اور پانی آنے کی جگہ لکھیں۔ گڑھے کی دیواریں گر سکتی ہیں: پہلو سیڑھی کی طرح پیچھے کاٹیں، اور اس میں کبھی اکیلے کام نہ کریں۔</translation>
    </message>
    <message>
        <source>Layers without a soil: %1. Until they are known the pits do not count for the soil of the site.</source>
        <translation>جن تہوں کی مٹی نہیں لکھی: %1۔ جب تک معلوم نہ ہو، جگہ کی مٹی کے لیے یہ گڑھے نہیں گنے جاتے۔</translation>
    </message>
    <message>
        <source>The deepest test pit ends at %1, above the floor of the tank&apos;s pit: what lies below is not known.</source>
        <translation>سب سے گہرا آزمائشی گڑھا %1 پر ختم ہوتا ہے، ٹینکی کے گڑھے کے تلے سے اوپر: نیچے کیا ہے، معلوم نہیں۔</translation>
    </message>
    <message>
        <source>No slope taken yet. Hold a hose full of water along the fall, measure the level distance and both water marks, and go on from the lower staff.</source>
        <translation>ابھی ڈھلان نہیں ناپی گئی۔ پانی بھرا پائپ ڈھلان کی طرف رکھیں، ہموار فاصلہ اور پانی کے دونوں نشان ناپیں، اور نچلی چھڑ سے آگے بڑھیں۔</translation>
    </message>
    <message>
        <source>Setting %1: %2.</source>
        <translation>پیمائش %1: %2۔</translation>
    </message>
    <message>
        <source>The ground was surveyed; its spot heights stay in place of this fall.</source>
        <translation>زمین کا سروے ہو چکا ہے؛ اس کے اونچائی کے نقطے اس ڈھلوان کی جگہ رہتے ہیں۔</translation>
    </message>
    <message>
        <source>A test pit shows a weaker soil (%1) above the floor of the pit than the one entered (%2). The weakest layer decides how steep a cut may stand: enter that one.</source>
        <translation>آزمائشی گڑھا گڑھے کے تلے سے اوپر درج (%2) سے کمزور مٹی (%1) دکھاتا ہے۔ کٹائی کتنی سیدھی کھڑی رہ سکتی ہے، یہ سب سے کمزور تہہ طے کرتی ہے: وہی درج کریں۔</translation>
    </message>
    <message>
        <source>Water came into a test pit %1 below the ground; entered is %2. Enter the highest level that was seen, for it is the one that lifts the floor.</source>
        <translation>آزمائشی گڑھے میں زمین سے %1 نیچے پانی آیا؛ درج %2 ہے۔ جو سب سے اونچا لیول دیکھا گیا وہ درج کریں، کیونکہ فرش کو وہی اٹھاتا ہے۔</translation>
    </message>
    <message>
        <source>Where the soil in the jar was taken, and how deep; take it from where the soil for the mix will be dug.</source>
        <translation>جار کی مٹی کہاں سے لی گئی، اور کتنی گہرائی سے؛ وہاں سے لیں جہاں سے مسالے کی مٹی کھودی جائے گی۔</translation>
    </message>
    <message>
        <source>Height of the lowest layer, marked one minute after the jar was put down: grains that the eye can see.</source>
        <translation>سب سے نیچے کی تہہ کی اونچائی، جار رکھنے کے ایک منٹ بعد نشان لگایا: ذرے جو آنکھ دیکھ سکتی ہے۔</translation>
    </message>
    <message>
        <source>Height of the layer over the sand alone, marked after two hours; not from the bottom of the jar.</source>
        <translation>صرف ریت سے اوپر کی تہہ کی اونچائی، دو گھنٹے بعد نشان لگایا؛ جار کے پیندے سے نہیں۔</translation>
    </message>
    <message>
        <source>Height of the top layer alone, when the water over it is clear; that may take a day or more.</source>
        <translation>صرف سب سے اوپر کی تہہ کی اونچائی، جب اس کے اوپر پانی صاف ہو جائے؛ اس میں ایک دن یا زیادہ لگ سکتا ہے۔</translation>
    </message>
    <message>
        <source>Where the soil in the hand was taken, and how deep.</source>
        <translation>ہاتھ والی مٹی کہاں سے لی گئی، اور کتنی گہرائی سے۔</translation>
    </message>
    <message>
        <source>Moisten a handful, knead it like dough, squeeze it and open the hand. Left empty: not tried yet.</source>
        <translation>ایک مٹھی مٹی نم کریں، آٹے کی طرح گوندھیں، دبائیں اور ہاتھ کھولیں۔ خالی چھوڑا ہو: ابھی آزمایا نہیں۔</translation>
    </message>
    <message>
        <source>Push the ball out between thumb and finger to a flat ribbon and measure it when it breaks by its own weight; 0 when none forms.</source>
        <translation>گولی کو انگوٹھے اور انگلی کے بیچ سے دھکیل کر چپٹا ربن بنائیں اور جب اپنے وزن سے ٹوٹے تو ناپیں؛ نہ بنے تو 0۔</translation>
    </message>
    <message>
        <source>Rub a pinch with much water in the palm: grit like sugar, smooth like flour, or neither.</source>
        <translation>ایک چٹکی ہتھیلی میں بہت پانی کے ساتھ رگڑیں: چینی جیسی کرکری، آٹے جیسی ملائم، یا دونوں نہیں۔</translation>
    </message>
    <message>
        <source>Name of the test pit, the same in each of its layers. Nobody climbs into a pit deeper than the waist that is not stepped back or shored.</source>
        <translation>آزمائشی گڑھے کا نام، اس کی ہر تہہ میں ایک ہی۔ کمر سے گہرے ایسے گڑھے میں کوئی نہ اترے جس کے پہلو سیڑھی کی طرح نہ کاٹے گئے ہوں یا ٹیک نہ لگی ہو۔</translation>
    </message>
    <message>
        <source>Depth of the top of the layer below the ground; 0 for the first.</source>
        <translation>زمین سے تہہ کے اوپر تک کی گہرائی؛ پہلی کے لیے 0۔</translation>
    </message>
    <message>
        <source>Depth of the bottom of the layer below the ground; of the last layer, of the test pit.</source>
        <translation>زمین سے تہہ کے نیچے تک کی گہرائی؛ آخری تہہ کے لیے آزمائشی گڑھے کی پوری گہرائی۔</translation>
    </message>
    <message>
        <source>What the layer is. Clay is stiff when the thumb dents it but goes in only with great effort; leave the soil empty when nobody tried.</source>
        <translation>تہہ کس چیز کی ہے۔ چکنی مٹی سخت ہے جب انگوٹھا نشان ڈالے مگر بڑے زور سے ہی گھسے؛ کسی نے نہ آزمایا ہو تو مٹی کا خانہ خالی چھوڑیں۔</translation>
    </message>
    <message>
        <source>Whether water stood or seeped in there; look again on the next day. It stands highest after the rains.</source>
        <translation>کیا وہاں پانی کھڑا تھا یا رس کر آیا؛ اگلے دن پھر دیکھیں۔ بارشوں کے بعد سب سے اونچا ہوتا ہے۔</translation>
    </message>
    <message>
        <source>Distance of one setting of the hose, held level, straight down the fall; 0: not measured yet.</source>
        <translation>لیول پائپ کی ایک پیمائش کا فاصلہ، ہموار پکڑ کر، سیدھا ڈھلان کی طرف نیچے؛ 0: ابھی نہیں ناپا۔</translation>
    </message>
    <message>
        <source>Water mark on the lower staff less that on the upper one; less than 0 where the ground rises.</source>
        <translation>نچلی چھڑ پر پانی کا نشان منفی اوپر والی چھڑ کا نشان؛ زمین چڑھتی ہو تو 0 سے کم۔</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>کہاں سے لیا</translation>
    </message>
    <message>
        <source>Silt</source>
        <translation>گاد</translation>
    </message>
    <message>
        <source>Clay</source>
        <translation>چکنی مٹی</translation>
    </message>
    <message>
        <source>The ball</source>
        <translation>گولی</translation>
    </message>
    <message>
        <source>The ribbon breaks at</source>
        <translation>ربن ٹوٹتا ہے</translation>
    </message>
    <message>
        <source>Rubbed wet it is</source>
        <translation>گیلی رگڑنے پر</translation>
    </message>
    <message>
        <source>Test pit</source>
        <translation>آزمائشی گڑھا</translation>
    </message>
    <message>
        <source>From</source>
        <translation>کہاں سے</translation>
    </message>
    <message>
        <source>To</source>
        <translation>کہاں تک</translation>
    </message>
    <message>
        <source>Water came in</source>
        <translation>پانی آیا</translation>
    </message>
    <message>
        <source>Level distance</source>
        <translation>ہموار فاصلہ</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>اترائی</translation>
    </message>
    <message>
        <source>falls apart</source>
        <translation>بکھر جاتی ہے</translation>
    </message>
    <message>
        <source>holds together</source>
        <translation>جڑی رہتی ہے</translation>
    </message>
    <message>
        <source>gritty</source>
        <translation>کرکری</translation>
    </message>
    <message>
        <source>neither gritty nor smooth</source>
        <translation>نہ کرکری نہ ملائم</translation>
    </message>
    <message>
        <source>smooth like flour</source>
        <translation>آٹے جیسی ملائم</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>ریت</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>میرا والی ریت</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>ریتلی میرا</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>میرا مٹی</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>گاد والی میرا</translation>
    </message>
    <message>
        <source>silt</source>
        <translation>گاد</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>ریتلی چکنی میرا</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>چکنی میرا</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>گاد والی چکنی میرا</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>ریتلی چکنی مٹی</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>گاد والی چکنی مٹی</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>چکنی مٹی</translation>
    </message>
    <message>
        <source>%1: %2 in place of %3.</source>
        <translation>%1: %3 کی جگہ %2۔</translation>
    </message>
    <message>
        <source>Nothing noted yet. Type in what stands on the paper forms, page by page; what follows from it is shown at once and changes nothing until you put it in place.</source>
        <translation>ابھی کچھ نہیں لکھا۔ کاغذی فارموں پر جو لکھا ہے صفحہ بہ صفحہ درج کریں؛ اس سے جو نکلتا ہے فوراً دکھایا جاتا ہے، اور جب تک آپ اسے لاگو نہ کریں کچھ نہیں بدلتا۔</translation>
    </message>
    <message>
        <source>The notes change nothing of what is entered for the site.</source>
        <translation>نوٹ سے جگہ کے لیے درج چیزوں میں کچھ نہیں بدلتا۔</translation>
    </message>
    <message>
        <source>Putting the notes in place would change:</source>
        <translation>نوٹ لاگو کرنے سے یہ بدلے گا:</translation>
    </message>
    <message>
        <source>Field notes</source>
        <translation>فیلڈ نوٹ</translation>
    </message>
    <message>
        <source>Jars of soil</source>
        <translation>مٹی کے جار</translation>
    </message>
    <message>
        <source>Balls and ribbons</source>
        <translation>گولیاں اور ربن</translation>
    </message>
    <message>
        <source>Layers of test pits</source>
        <translation>آزمائشی گڑھوں کی تہیں</translation>
    </message>
    <message>
        <source>Settings of the hose level</source>
        <translation>لیول پائپ کی پیمائشیں</translation>
    </message>
    <message>
        <source>Ball and ribbon %1</source>
        <translation>گولی اور ربن %1</translation>
    </message>
    <message>
        <source>Layer %1</source>
        <translation>تہہ %1</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>پیمائش %1</translation>
    </message>
    <message>
        <source>is not deeper than the top of the layer; measure both down from the ground</source>
        <translation>تہہ کے اوپر سے گہرا نہیں؛ دونوں زمین سے نیچے کو ناپیں</translation>
    </message>
    <message>
        <source>does not begin with a mark that this program knows</source>
        <translation>ایسے نشان سے شروع نہیں ہوتا جسے یہ پروگرام جانتا ہو</translation>
    </message>
    <message>
        <source>was not copied as it stands, for its last four signs do not fit the rest; compare it sign by sign</source>
        <translation>ہو بہو نقل نہیں ہوا، کیونکہ آخری چار نشان باقی سے میل نہیں کھاتے؛ ایک ایک نشان ملا کر دیکھیں</translation>
    </message>
    <message>
        <source>holds a part that this program does not know; compare it sign by sign</source>
        <translation>اس میں ایسا حصہ ہے جسے یہ پروگرام نہیں جانتا؛ ایک ایک نشان ملا کر دیکھیں</translation>
    </message>
    <message>
        <source>The design on one line</source>
        <translation>ایک سطر میں ڈیزائن</translation>
    </message>
    <message>
        <source>%1 values, %2 to %3</source>
        <translation>%1 قدریں، %2 تا %3</translation>
    </message>
    <message>
        <source>%1; all others 0</source>
        <translation>%1؛ باقی سب 0</translation>
    </message>
    <message>
        <source>on the map</source>
        <translation>گراف پر</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>جیسا درج ہے</translation>
    </message>
    <message>
        <source>%1: as it stands there</source>
        <translation>%1: جیسا وہاں ہے</translation>
    </message>
    <message>
        <source>%1: as entered</source>
        <translation>%1: جیسا درج ہے</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>ٹینکی خالی</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>ٹینکی بھری اور لیک</translation>
    </message>
    <message>
        <source>The tank</source>
        <translation>ٹینکی</translation>
    </message>
    <message>
        <source>Pit, platform and setting out</source>
        <translation>گڑھا، پلیٹ فارم اور لے آؤٹ</translation>
    </message>
    <message>
        <source>Coats, materials and batches</source>
        <translation>کوٹ، سامان اور گھانیاں</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>مزدوری</translation>
    </message>
    <message>
        <source>Dates and people by day</source>
        <translation>تاریخیں اور ہر دن کے لوگ</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>موقع پر ناپا گیا</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>کوٹ ایک ہی بار میں</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>پہلی بار پانی بھرنا</translation>
    </message>
    <message>
        <source>Weather window</source>
        <translation>موزوں موسم کے ہفتے</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>کیا پانی پورا پڑے گا</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>ذریعے سے</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>کھیت تک</translation>
    </message>
    <message>
        <source>Emptying</source>
        <translation>ٹینکی خالی ہونا</translation>
    </message>
    <message>
        <source>Ground, platform and spoil</source>
        <translation>زمین، پلیٹ فارم اور کھدائی کی مٹی</translation>
    </message>
    <message>
        <source>Stability</source>
        <translation>پائیداری</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>تخمینہ اور حصے</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>لائننگیں</translation>
    </message>
    <message>
        <source>Coats in order</source>
        <translation>کوٹ، ترتیب سے</translation>
    </message>
    <message>
        <source>from the earth inward</source>
        <translation>مٹی سے اندر کی طرف</translation>
    </message>
    <message>
        <source>Work of each coat</source>
        <translation>ہر کوٹ کی محنت</translation>
    </message>
    <message>
        <source>face × spreading + plaster × mixing</source>
        <translation>سطح × لگانے کی رفتار + پلستر × مسالا بنانے کی رفتار</translation>
    </message>
    <message>
        <source>In which a coat must be on</source>
        <translation>کوٹ کتنی دیر میں لگ جانا چاہیے</translation>
    </message>
    <message>
        <source>People on each coat</source>
        <translation>ہر کوٹ پر لوگ</translation>
    </message>
    <message>
        <source>as entered, or as wished for the coat</source>
        <translation>جیسا درج ہے، یا جیسی اس کوٹ کی خواہش ہے</translation>
    </message>
    <message>
        <source>People needed</source>
        <translation>لوگ جو چاہییں</translation>
    </message>
    <message>
        <source>work × hours of a person-day ÷ hours for the coat, rounded up</source>
        <translation>محنت × دیہاڑی کے گھنٹے ÷ کوٹ کے گھنٹے، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Masons on each coat</source>
        <translation>ہر کوٹ پر مستری</translation>
    </message>
    <message>
        <source>as entered, no more than people on the coat</source>
        <translation>جیسا درج ہے، مگر کوٹ کے لوگوں سے زیادہ نہیں</translation>
    </message>
    <message>
        <source>Masons needed</source>
        <translation>مستری جو چاہییں</translation>
    </message>
    <message>
        <source>people needed × 0.074 ÷ 0.260, rounded up</source>
        <translation>لوگ جو چاہییں × 0.074 ÷ 0.260، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>پوری بوری والی گھانیاں</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield of a batch, rounded up</source>
        <translation>بنانے کا پلستر ÷ ایک گھانی سے بننے والا پلستر، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Batches an hour needed</source>
        <translation>فی گھنٹہ گھانیاں جو چاہییں</translation>
    </message>
    <message>
        <source>batches ÷ hours for the coat</source>
        <translation>گھانیاں ÷ کوٹ کے گھنٹے</translation>
    </message>
    <message>
        <source>Batches an hour possible</source>
        <translation>فی گھنٹہ گھانیاں جو بن سکتی ہیں</translation>
    </message>
    <message>
        <source>mixing places × 60 ÷ minutes for a batch</source>
        <translation>مسالا بنانے کی جگہیں × 60 ÷ ایک گھانی کے منٹ</translation>
    </message>
    <message>
        <source>Mixing places needed</source>
        <translation>مسالا بنانے کی جگہیں جو چاہییں</translation>
    </message>
    <message>
        <source>batches an hour × minutes for a batch ÷ 60, rounded up</source>
        <translation>فی گھنٹہ گھانیاں × ایک گھانی کے منٹ ÷ 60، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Minutes to put a batch on</source>
        <translation>ایک گھانی لگانے کے منٹ</translation>
    </message>
    <message>
        <source>face that it covers × spreading × hours of a person-day × 60 ÷ people who spread: their share of the work</source>
        <translation>جتنی سطح ڈھکتی ہے × لگانے کی رفتار × دیہاڑی کے گھنٹے × 60 ÷ لگانے والے لوگ: محنت میں ان کا حصہ</translation>
    </message>
    <message>
        <source>Minutes for a batch with half a bag</source>
        <translation>آدھی بوری والی گھانی کے منٹ</translation>
    </message>
    <message>
        <source>as for a whole bag</source>
        <translation>جیسے پوری بوری کے لیے</translation>
    </message>
    <message>
        <source>In which a batch must be on the wall</source>
        <translation>گھانی کتنی دیر میں دیوار پر لگ جانی چاہیے</translation>
    </message>
    <message>
        <source>Bags of cement for each coat</source>
        <translation>ہر کوٹ کے لیے سیمنٹ کی بوریاں</translation>
    </message>
    <message>
        <source>cement to mix ÷ weight of a bag, not rounded</source>
        <translation>مسالے کا سیمنٹ ÷ بوری کا وزن، پورا عدد کیے بغیر</translation>
    </message>
    <message>
        <source>Mixing water for each coat</source>
        <translation>ہر کوٹ کا مسالا بنانے کا پانی</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³</source>
        <translation>بنانے کا پلستر × ہر m³ کے لیٹر</translation>
    </message>
    <message>
        <source>Sacks to cover each coat</source>
        <translation>ہر کوٹ کو ڈھکنے کے ٹاٹ</translation>
    </message>
    <message>
        <source>face ÷ what a sack covers × (1 + spare), rounded up</source>
        <translation>سطح ÷ ایک ٹاٹ سے ڈھکی سطح × (1 + فالتو)، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Length and width times this, this crew could plaster</source>
        <translation>لمبائی اور چوڑائی کے اتنے گنا پر یہ ٹیم پلستر کر سکتی ہے</translation>
    </message>
    <message>
        <source>found by halving: largest plan, same depth, batter and lining, whose coat the crew can put on</source>
        <translation>آدھا آدھا کر کے نکالا: اسی گہرائی، سلامی اور لائننگ کا سب سے بڑی لمبائی چوڑائی جس کا کوٹ یہ ٹیم لگا سکتی ہے</translation>
    </message>
    <message>
        <source>Clear length of that tank</source>
        <translation>اس ٹینکی کی اندر کی لمبائی</translation>
    </message>
    <message>
        <source>length × factor</source>
        <translation>لمبائی × فیکٹر</translation>
    </message>
    <message>
        <source>Clear width of that tank</source>
        <translation>اس ٹینکی کی اندر کی چوڑائی</translation>
    </message>
    <message>
        <source>width × factor</source>
        <translation>چوڑائی × فیکٹر</translation>
    </message>
    <message>
        <source>Held by that tank, filled to the overflow</source>
        <translation>اس ٹینکی کی گنجائش، اوور فلو تک بھری</translation>
    </message>
    <message>
        <source>V(h) with its own floor</source>
        <translation>V(h)، اس کے اپنے فرش کے ساتھ</translation>
    </message>
    <message>
        <source>Inflow on the first day</source>
        <translation>پہلے دن آنے والا پانی</translation>
    </message>
    <message>
        <source>as entered, else flow × hours of the source in that month</source>
        <translation>جیسا درج ہے، ورنہ بہاؤ × اس مہینے میں ذریعہ چلنے کے گھنٹے</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>پانی بھرنا شروع</translation>
    </message>
    <message>
        <source>as in the dates: last day of curing or of the days within which it must start, whichever comes first</source>
        <translation>جیسا تاریخوں میں ہے: ترائی کا آخری دن، یا ان دنوں کا آخری جن میں بھرنا شروع ہونا لازم ہے، جو پہلے آئے</translation>
    </message>
    <message>
        <source>Latest start of filling</source>
        <translation>پانی بھرنا شروع، زیادہ سے زیادہ دیر سے</translation>
    </message>
    <message>
        <source>last coat + days within which filling must start</source>
        <translation>آخری کوٹ + جتنے دن کے اندر پانی بھرنا شروع ہونا لازم ہے</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>ٹینکی بھری</translation>
    </message>
    <message>
        <source>first day on which it holds what it can up to the overflow</source>
        <translation>پہلا دن جب ٹینکی میں اوور فلو تک جتنا آ سکتا ہے اتنا پانی ہو</translation>
    </message>
    <message>
        <source>Water for sacks after curing</source>
        <translation>ترائی کے بعد ٹاٹ کا پانی</translation>
    </message>
    <message>
        <source>sum over the days of wall still to be wet × litres a day for each m²</source>
        <translation>سب دنوں کا مجموعہ: دیوار جو ابھی گیلی رکھنی ہے × ہر m² کے روزانہ لیٹر</translation>
    </message>
    <message>
        <source>Water to bring by hand</source>
        <translation>ہاتھ سے لانے کا پانی</translation>
    </message>
    <message>
        <source>held if the water covered the walls by the latest start + curing, as far as the limit on the rise lets it − held then</source>
        <translation>ٹینکی میں پانی، اگر وہ آخری ممکن شروع + ترائی تک دیواریں ڈھک لے، جہاں تک چڑھنے کی حد اجازت دے − اس وقت کا پانی</translation>
    </message>
    <message>
        <source>Bands of the wall: lower edge</source>
        <translation>دیوار کی پٹیاں: نچلا کنارہ</translation>
    </message>
    <message>
        <source>even steps up from the floor</source>
        <translation>فرش سے اوپر برابر فاصلوں پر</translation>
    </message>
    <message>
        <source>Bands of the wall: upper edge</source>
        <translation>دیوار کی پٹیاں: اوپر کا کنارہ</translation>
    </message>
    <message>
        <source>even steps up to the overflow, then the rim</source>
        <translation>برابر فاصلوں پر اوور فلو تک، پھر ٹینکی کا اوپری کنارہ</translation>
    </message>
    <message>
        <source>Bands of the wall: area</source>
        <translation>دیوار کی پٹیاں: رقبہ</translation>
    </message>
    <message>
        <source>wet face up to the upper edge − up to the lower; wet face = floor + √(1 + batter²) × h × mean edge</source>
        <translation>پٹی کے اوپر کے کنارے تک گیلی سطح − نچلے کنارے تک؛ گیلی سطح = فرش + √(1 + سلامی²) × h × اوسط گھیرا</translation>
    </message>
    <message>
        <source>Bands: sacks wet from</source>
        <translation>پٹیاں: ٹاٹ گیلے اس دن سے</translation>
    </message>
    <message>
        <source>day after the last coat</source>
        <translation>آخری کوٹ کے بعد کا دن</translation>
    </message>
    <message>
        <source>Bands: covered by water on</source>
        <translation>پٹیاں: پانی سے ڈھکیں اس دن</translation>
    </message>
    <message>
        <source>first day at whose end the level is at the upper edge</source>
        <translation>پہلا دن جس کے آخر میں لیول پٹی کے اوپر کے کنارے پر ہو</translation>
    </message>
    <message>
        <source>Bands: sacks wet until</source>
        <translation>پٹیاں: ٹاٹ گیلے اس دن تک</translation>
    </message>
    <message>
        <source>day before it is covered, not before the end of curing</source>
        <translation>ڈھکنے سے پہلے کا دن، مگر ترائی ختم ہونے سے پہلے نہیں</translation>
    </message>
    <message>
        <source>Bands: days of wetting</source>
        <translation>پٹیاں: ترائی کے دن</translation>
    </message>
    <message>
        <source>from the first to the last, both counted</source>
        <translation>پہلے سے آخری تک، دونوں گن کر</translation>
    </message>
    <message>
        <source>Days of filling</source>
        <translation>پانی بھرنے کے دن</translation>
    </message>
    <message>
        <source>from the start until full, 366 at most</source>
        <translation>شروع سے بھرنے تک، زیادہ سے زیادہ 366</translation>
    </message>
    <message>
        <source>Let in each day</source>
        <translation>ہر دن چھوڑا پانی</translation>
    </message>
    <message>
        <source>inflow, held to what raises the level by no more than the limit</source>
        <translation>آنے والا پانی، اتنا ہی کہ لیول حد سے زیادہ نہ چڑھے</translation>
    </message>
    <message>
        <source>Lost each day</source>
        <translation>ہر دن ضائع</translation>
    </message>
    <message>
        <source>ET0 of the month × open water × (1 − cover) × surface + seepage × wet face, no more than there is</source>
        <translation>اس مہینے کا ET0 × کھلا پانی × (1 − ڈھکن) × پانی کی اوپری سطح + رساؤ × گیلی سطح، جتنا پانی ہے اس سے زیادہ نہیں</translation>
    </message>
    <message>
        <source>Held at the end of each day</source>
        <translation>ہر دن کے آخر میں ٹینکی میں پانی</translation>
    </message>
    <message>
        <source>held before + let in − lost</source>
        <translation>پہلے کا پانی + چھوڑا − ضائع</translation>
    </message>
    <message>
        <source>Level at the end of each day</source>
        <translation>ہر دن کے آخر میں لیول</translation>
    </message>
    <message>
        <source>h at which V(h) is what is held</source>
        <translation>وہ h جس پر V(h) ٹینکی کے پانی کے برابر ہو</translation>
    </message>
    <message>
        <source>Wall above the water each day</source>
        <translation>ہر دن پانی سے اوپر دیوار</translation>
    </message>
    <message>
        <source>floor + wall − wet face up to the level</source>
        <translation>فرش + دیوار − لیول تک گیلی سطح</translation>
    </message>
    <message>
        <source>Water for sacks each day</source>
        <translation>ہر دن ٹاٹ کا پانی</translation>
    </message>
    <message>
        <source>wall above the water still to be wet × litres a day for each m²</source>
        <translation>پانی سے اوپر کی دیوار جو ابھی گیلی رکھنی ہے × ہر m² کے روزانہ لیٹر</translation>
    </message>
    <message>
        <source>Weather years looked at</source>
        <translation>موسمی سال جو دیکھے گئے</translation>
    </message>
    <message>
        <source>all that there are</source>
        <translation>جتنے بھی ہیں سب</translation>
    </message>
    <message>
        <source>Rain in a day that spoils a fresh coat</source>
        <translation>ایک دن کی بارش جو تازہ کوٹ خراب کر دے</translation>
    </message>
    <message>
        <source>Week of the first coat, as planned</source>
        <translation>پہلے کوٹ کا ہفتہ، منصوبے کے مطابق</translation>
    </message>
    <message>
        <source>week of its day; weeks count from 1 January</source>
        <translation>اس کے دن کا ہفتہ؛ ہفتے 1 جنوری سے گنے جاتے ہیں</translation>
    </message>
    <message>
        <source>Week with the best chance</source>
        <translation>سب سے اچھے امکان والا ہفتہ</translation>
    </message>
    <message>
        <source>largest share of undisturbed starts; of equal ones the planned one, else the next after it</source>
        <translation>سلامت شروعاتوں کا سب سے بڑا حصہ؛ برابر ہوں تو طے شدہ ہفتہ، ورنہ اس کے بعد کا اگلا</translation>
    </message>
    <message>
        <source>First coat in that week</source>
        <translation>اس ہفتے میں پہلا کوٹ</translation>
    </message>
    <message>
        <source>works begun so that it falls there, with rest days and closed days</source>
        <translation>تعمیر ایسے شروع کہ کوٹ اسی ہفتے میں آئے، ہفتے کی چھٹی اور چھٹی کے دن ملا کر</translation>
    </message>
    <message>
        <source>Start of the works for it</source>
        <translation>اس کے لیے تعمیر کا شروع</translation>
    </message>
    <message>
        <source>planned start moved by as many days as the first coat, then until the coat falls in the week</source>
        <translation>طے شدہ شروع اتنے ہی دن ہٹا کر جتنے پہلا کوٹ ہٹا، پھر آگے جب تک کوٹ اس ہفتے میں نہ آ جائے</translation>
    </message>
    <message>
        <source>Weeks of the year</source>
        <translation>سال کے ہفتے</translation>
    </message>
    <message>
        <source>first day of each</source>
        <translation>ہر ایک کا پہلا دن</translation>
    </message>
    <message>
        <source>Share undisturbed, by week</source>
        <translation>سلامت کا حصہ، ہفتہ وار</translation>
    </message>
    <message>
        <source>start days of the week in all years on which none of the three below happens ÷ all</source>
        <translation>سب سالوں میں اس ہفتے کے شروع کے وہ دن جن پر نیچے کی تینوں باتوں میں سے کوئی نہ ہو ÷ کل</translation>
    </message>
    <message>
        <source>Share with heavy rain, by week</source>
        <translation>بھاری بارش کا حصہ، ہفتہ وار</translation>
    </message>
    <message>
        <source>heavy rain on a coat&apos;s day or the day after ÷ all</source>
        <translation>کوٹ کے دن یا اگلے دن بھاری بارش ÷ کل</translation>
    </message>
    <message>
        <source>Share with frost, by week</source>
        <translation>کورے کا حصہ، ہفتہ وار</translation>
    </message>
    <message>
        <source>night at or below 0 °C before a coat or in the 7 days after ÷ all</source>
        <translation>کوٹ سے پہلے یا بعد کے 7 دن میں 0 °C یا کم والی رات ÷ کل</translation>
    </message>
    <message>
        <source>Share too cold or too hot, by week</source>
        <translation>بہت ٹھنڈے یا بہت گرم دن کا حصہ، ہفتہ وار</translation>
    </message>
    <message>
        <source>mean below 5 °C or maximum above 35 °C on a coat&apos;s day ÷ all</source>
        <translation>کوٹ کے دن اوسط 5 °C سے کم یا زیادہ سے زیادہ 35 °C سے اوپر ÷ کل</translation>
    </message>
    <message>
        <source>Coats whose drying is reckoned</source>
        <translation>کوٹ جن کے سوکھنے کا حساب لگا</translation>
    </message>
    <message>
        <source>those in whose month wind was measured</source>
        <translation>جن کے مہینے میں ہوا ناپی گئی</translation>
    </message>
    <message>
        <source>Air in the warmest hours</source>
        <translation>سب سے گرم گھنٹوں میں ہوا کا درجہ حرارت</translation>
    </message>
    <message>
        <source>mean maximum of the days on which the coat falls</source>
        <translation>کوٹ جن دنوں پر آئے، ان کے زیادہ سے زیادہ کی اوسط</translation>
    </message>
    <message>
        <source>Humidity in the warmest hours</source>
        <translation>سب سے گرم گھنٹوں میں نمی</translation>
    </message>
    <message>
        <source>vapour pressure of the day ÷ saturation pressure at the maximum, eq. 11 and 19</source>
        <translation>دن کا بخارات کا دباؤ ÷ زیادہ سے زیادہ درجہ حرارت پر پوری نمی کا دباؤ، مساوات 11 اور 19</translation>
    </message>
    <message>
        <source>Wind, km an hour</source>
        <translation>ہوا کی رفتار، km فی گھنٹہ</translation>
    </message>
    <message>
        <source>mean wind × 3.6</source>
        <translation>ہوا کی اوسط رفتار × 3.6</translation>
    </message>
    <message>
        <source>Water lost by the fresh plaster</source>
        <translation>تازہ پلستر سے اڑنے والا پانی</translation>
    </message>
    <message>
        <source>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T air and plaster in °C, r humidity from 0 to 1, V wind in km an hour</source>
        <translation>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000؛ T ہوا اور پلستر کا درجہ حرارت °C میں، r نمی 0 سے 1 تک، V ہوا کی رفتار km فی گھنٹہ</translation>
    </message>
    <message>
        <source>Reckoned with exact shells, net</source>
        <translation>اصل حجم سے حساب، خالص</translation>
    </message>
    <message>
        <source>sums of the net mixes; stone: the bed</source>
        <translation>خالص مسالوں کے مجموعے؛ پتھر: سولنگ</translation>
    </message>
    <message>
        <source>Reckoned by area × thickness, net</source>
        <translation>رقبہ × موٹائی سے حساب، خالص</translation>
    </message>
    <message>
        <source>sums of the mixes by area × thickness; stone: floor × bed</source>
        <translation>رقبہ × موٹائی سے مسالوں کے مجموعے؛ پتھر: فرش × سولنگ</translation>
    </message>
    <message>
        <source>Exact shells over the bill</source>
        <translation>اصل حجم بٹا رواجی حساب</translation>
    </message>
    <message>
        <source>reckoned ÷ customary</source>
        <translation>حساب سے ÷ رواجی</translation>
    </message>
    <message>
        <source>Area × thickness over the bill</source>
        <translation>رقبہ × موٹائی بٹا رواجی حساب</translation>
    </message>
    <message>
        <source>Soil for each sand in the bill</source>
        <translation>رواجی حساب میں ریت کے ہر حصے پر مٹی</translation>
    </message>
    <message>
        <source>soil ÷ sand</source>
        <translation>مٹی ÷ ریت</translation>
    </message>
    <message>
        <source>Soil for each sand in the mixes</source>
        <translation>مسالوں میں ریت کے ہر حصے پر مٹی</translation>
    </message>
    <message>
        <source>net soil ÷ net sand</source>
        <translation>خالص مٹی ÷ خالص ریت</translation>
    </message>
    <message>
        <source>Cement that thickness and mix need</source>
        <translation>موٹائی اور تناسب کے لیے سیمنٹ</translation>
    </message>
    <message>
        <source>sum of the net mixes, exact shells</source>
        <translation>خالص مسالوں کا مجموعہ، اصل حجم سے</translation>
    </message>
    <message>
        <source>The same by area × thickness</source>
        <translation>وہی، رقبہ × موٹائی سے</translation>
    </message>
    <message>
        <source>sum of the mixes by area × thickness</source>
        <translation>رقبہ × موٹائی سے مسالوں کا مجموعہ</translation>
    </message>
    <message>
        <source>All coats times this would use the bill&apos;s cement</source>
        <translation>سب کوٹ اتنے گنا ہوں تو رواجی حساب کا سیمنٹ لگے</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with all coats × factor = cement of the bill</source>
        <translation>آدھا آدھا کر کے نکالا: سب کوٹ × فیکٹر پر اصل حجم کا سیمنٹ = رواجی حساب کا سیمنٹ</translation>
    </message>
    <message>
        <source>cement of the bill ÷ cement by area × thickness</source>
        <translation>رواجی حساب کا سیمنٹ ÷ رقبہ × موٹائی سے سیمنٹ</translation>
    </message>
    <message>
        <source>Coats as thick as that</source>
        <translation>اتنے موٹے کوٹ</translation>
    </message>
    <message>
        <source>thickness × factor</source>
        <translation>موٹائی × فیکٹر</translation>
    </message>
    <message>
        <source>Coats as thick as that, by area</source>
        <translation>اتنے موٹے کوٹ، رقبے سے</translation>
    </message>
    <message>
        <source>Soil and sand times this would use the bill&apos;s cement</source>
        <translation>مٹی اور ریت اتنے گنا ہوں تو رواجی حساب کا سیمنٹ لگے</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with soil and sand parts × factor = cement of the bill</source>
        <translation>آدھا آدھا کر کے نکالا: مٹی اور ریت کے حصے × فیکٹر پر اصل حجم کا سیمنٹ = رواجی حساب کا سیمنٹ</translation>
    </message>
    <message>
        <source>found by halving, volumes by area × thickness</source>
        <translation>آدھا آدھا کر کے نکالا، حجم رقبہ × موٹائی سے</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>مٹی</translation>
    </message>
    <message>
        <source>soil parts × factor</source>
        <translation>مٹی کے حصے × فیکٹر</translation>
    </message>
    <message>
        <source>sand parts × factor</source>
        <translation>ریت کے حصے × فیکٹر</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>سیمنٹ</translation>
    </message>
    <message>
        <source>cement parts, as entered</source>
        <translation>سیمنٹ کے حصے، جیسے درج ہیں</translation>
    </message>
    <message>
        <source>Mix that would use the bill&apos;s cement</source>
        <translation>تناسب جس سے رواجی حساب کا سیمنٹ لگے</translation>
    </message>
    <message>
        <source>Each task starts</source>
        <translation>ہر کام کا شروع</translation>
    </message>
    <message>
        <source>latest of: start of the works, the day wished, what each arrow to it asks for; forward pass on days that are worked; last day to start filling: last coat + days within which filling must start</source>
        <translation>ان میں سب سے بعد کا: تعمیر کا شروع، جس دن کی خواہش ہے، اور اس تک آنے والا ہر تیر جو مانگے؛ کام کے دنوں پر آگے کو گنتی؛ بھرنا شروع کرنے کا آخری دن: آخری کوٹ + جتنے دن کے اندر پانی بھرنا شروع ہونا لازم ہے</translation>
    </message>
    <message>
        <source>Each task ends</source>
        <translation>ہر کام کا آخر</translation>
    </message>
    <message>
        <source>start + duration on its clock, last day on which anything is done</source>
        <translation>شروع + کام کی مدت اس کے اپنے کیلنڈر سے، آخری دن جس پر کچھ بھی ہو</translation>
    </message>
    <message>
        <source>Duration of each task</source>
        <translation>ہر کام کی مدت</translation>
    </message>
    <message>
        <source>person-days ÷ people, up to the next quarter of a day, at least one; a coat one day; curing, filling and leak test their days</source>
        <translation>دیہاڑیاں ÷ لوگ، اگلے چوتھائی دن تک، کم از کم ایک چوتھائی؛ کوٹ ایک دن؛ ترائی، پانی بھرنا اور لیکیج ٹیسٹ اپنے دن</translation>
    </message>
    <message>
        <source>Days with work on them</source>
        <translation>دن جن پر کام ہے</translation>
    </message>
    <message>
        <source>days from start to end that are worked; all days for curing and filling</source>
        <translation>شروع سے آخر تک کام کے دن؛ ترائی اور پانی بھرنے کے لیے سب دن</translation>
    </message>
    <message>
        <source>People on each task</source>
        <translation>ہر کام پر لوگ</translation>
    </message>
    <message>
        <source>labourers + masons</source>
        <translation>مزدور + مستری</translation>
    </message>
    <message>
        <source>Labourers on each task</source>
        <translation>ہر کام پر مزدور</translation>
    </message>
    <message>
        <source>diggers, or people on a coat, or as wished; less the masons; spoil: as few as carry it while the pit is dug</source>
        <translation>کھدائی کرنے والے، یا کوٹ کے لوگ، یا جیسی خواہش ہے؛ مستری نکال کر؛ کھدائی کی مٹی: کم سے کم اتنے جو گڑھا کھدنے کے دوران ڈھو لیں</translation>
    </message>
    <message>
        <source>Masons on each task</source>
        <translation>ہر کام پر مستری</translation>
    </message>
    <message>
        <source>all there are for a coat, else people × skilled share, rounded up</source>
        <translation>کوٹ پر جتنے ہیں سب، ورنہ لوگ × مستریوں کا حصہ، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>People wetting on each task</source>
        <translation>ہر کام پر ترائی والے</translation>
    </message>
    <message>
        <source>as entered, on curing, filling and leak test</source>
        <translation>جیسے درج ہیں، ترائی، پانی بھرنے اور لیکیج ٹیسٹ پر</translation>
    </message>
    <message>
        <source>Share of the first day gone at the start</source>
        <translation>شروع پر پہلے دن کا کتنا حصہ گزر چکا</translation>
    </message>
    <message>
        <source>quarters of a day from the start of the day</source>
        <translation>دن کے شروع سے چوتھائیاں</translation>
    </message>
    <message>
        <source>Room of each task</source>
        <translation>ہر کام کی گنجائش</translation>
    </message>
    <message>
        <source>late start − early start on its clock; backward pass from the last end; curing has none of its own</source>
        <translation>دیر کا شروع − جلد کا شروع، اس کے اپنے کیلنڈر سے؛ آخری ختم سے پیچھے کو گنتی؛ ترائی کی اپنی کوئی گنجائش نہیں</translation>
    </message>
    <message>
        <source>Room that moves no other task</source>
        <translation>گنجائش جو کسی اور کام کو نہ ہلائے</translation>
    </message>
    <message>
        <source>earliest that the next task asks for − early end</source>
        <translation>اگلا کام جو جلد سے جلد دن مانگے − جلد کا ختم</translation>
    </message>
    <message>
        <source>Earliest start wished</source>
        <translation>جلد سے جلد شروع، خواہش کے مطابق</translation>
    </message>
    <message>
        <source>Days between two tasks</source>
        <translation>دو کاموں کے بیچ دن</translation>
    </message>
    <message>
        <source>0, one after the other; spoil a quarter of a day after the pit; filling: smaller of last curing and days within which it must start, less one</source>
        <translation>0، ایک کے بعد ایک؛ کھدائی کی مٹی گڑھے سے چوتھائی دن بعد؛ پانی بھرنا: آخری ترائی اور جتنے دن کے اندر شروع ہونا لازم ہے، ان میں کم والا، ایک نکال کر</translation>
    </message>
    <message>
        <source>Days of the works</source>
        <translation>تعمیر کے دن</translation>
    </message>
    <message>
        <source>each day from the first start to the last end</source>
        <translation>پہلے شروع سے آخری ختم تک ہر دن</translation>
    </message>
    <message>
        <source>Labourers by day</source>
        <translation>مزدور، دن وار</translation>
    </message>
    <message>
        <source>most who are there at one quarter of the day</source>
        <translation>دن کے کسی ایک چوتھائی میں موجود سب سے زیادہ</translation>
    </message>
    <message>
        <source>Masons by day</source>
        <translation>مستری، دن وار</translation>
    </message>
    <message>
        <source>Wetters by day</source>
        <translation>ترائی والے، دن وار</translation>
    </message>
    <message>
        <source>those who see to all sacks</source>
        <translation>جو سب ٹاٹ دیکھتے ہیں</translation>
    </message>
    <message>
        <source>Water for sacks by day</source>
        <translation>ٹاٹ کا پانی، دن وار</translation>
    </message>
    <message>
        <source>face of each coat that cures or waits for the next × litres a day for each m²; once filling has begun the bands of wall still to be wet</source>
        <translation>ہر کوٹ کی سطح جس کی ترائی جاری ہے یا جو اگلے کوٹ کے انتظار میں ہے × ہر m² کے روزانہ لیٹر؛ پانی بھرنا شروع ہونے کے بعد دیوار کی وہ پٹیاں جو ابھی گیلی رکھنی ہیں</translation>
    </message>
    <message>
        <source>batches that count</source>
        <translation>گنی جانے والی گھانیاں</translation>
    </message>
    <message>
        <source>trial batches of a coat of this lining</source>
        <translation>اس لائننگ کے کسی کوٹ کی آزمائشی گھانیاں</translation>
    </message>
    <message>
        <source>middle of the batches</source>
        <translation>گھانیوں کا درمیانہ</translation>
    </message>
    <message>
        <source>loose soil, sand and cement ÷ (area × thickness); the middle one, or mean of the two middle ones</source>
        <translation>کھلی مٹی، ریت اور سیمنٹ ÷ (رقبہ × موٹائی)؛ درمیانہ عدد، یا بیچ کے دو کی اوسط</translation>
    </message>
    <message>
        <source>smallest of the batches</source>
        <translation>گھانیوں میں سب سے کم</translation>
    </message>
    <message>
        <source>as the middle</source>
        <translation>درمیانی کی طرح</translation>
    </message>
    <message>
        <source>largest of the batches</source>
        <translation>گھانیوں میں سب سے زیادہ</translation>
    </message>
    <message>
        <source>what stands in the project without them</source>
        <translation>ان کے بغیر پراجیکٹ میں جو ہے</translation>
    </message>
    <message>
        <source>Dry to wet, from trial batches</source>
        <translation>خشک سے گیلے کی نسبت، آزمائشی گھانیوں سے</translation>
    </message>
    <message>
        <source>records that count</source>
        <translation>ریکارڈ جو گنے جاتے ہیں</translation>
    </message>
    <message>
        <source>digging in this soil; other work all</source>
        <translation>کھدائی صرف اس مٹی کی؛ باقی کام سب</translation>
    </message>
    <message>
        <source>middle of the records</source>
        <translation>ریکارڈ کی درمیانی قدر</translation>
    </message>
    <message>
        <source>person-days ÷ quantity; the middle one, or mean of the two middle ones</source>
        <translation>دیہاڑیاں ÷ مقدار؛ درمیانہ عدد، یا بیچ کے دو کی اوسط</translation>
    </message>
    <message>
        <source>smallest of the records</source>
        <translation>ریکارڈ میں سب سے کم</translation>
    </message>
    <message>
        <source>largest of the records</source>
        <translation>ریکارڈ میں سب سے زیادہ</translation>
    </message>
    <message>
        <source>as entered, else from the table of rates or the district&apos;s own</source>
        <translation>جیسا درج ہے، ورنہ کام کی رفتار کے جدول سے یا ضلع کی اپنی</translation>
    </message>
    <message>
        <source>Ramming</source>
        <translation>کوٹنا</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>پلستر لگانا</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>مسالا بنانا</translation>
    </message>
    <message>
        <source>Outlets open at a time</source>
        <translation>ایک وقت میں کھلے نکاس</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank full</source>
        <translation>نکاس پر بچا ہیڈ، ٹینکی بھری</translation>
    </message>
    <message>
        <source>overflow level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>اوور فلو کا لیول − پائپ لائن کا سرا − نقصان، جب نکاس اپنا عام بہاؤ لے رہے ہوں</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank nearly empty</source>
        <translation>نکاس پر بچا ہیڈ، ٹینکی تقریباً خالی</translation>
    </message>
    <message>
        <source>dead level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>ڈیڈ لیول − پائپ لائن کا سرا − نقصان، جب نکاس اپنا عام بہاؤ لے رہے ہوں</translation>
    </message>
    <message>
        <source>Head that the outlet usually needs</source>
        <translation>ہیڈ جو نکاس کو عام طور پر چاہیے</translation>
    </message>
    <message>
        <source>by kind of outlet</source>
        <translation>نکاس کی قسم کے حساب سے</translation>
    </message>
    <message>
        <source>Head over that, tank full</source>
        <translation>اس سے زیادہ ہیڈ، ٹینکی بھری</translation>
    </message>
    <message>
        <source>head left − head needed</source>
        <translation>بچا ہیڈ − جتنا ہیڈ چاہیے</translation>
    </message>
    <message>
        <source>Head over that, tank nearly empty</source>
        <translation>اس سے زیادہ ہیڈ، ٹینکی تقریباً خالی</translation>
    </message>
    <message>
        <source>The line draws down to</source>
        <translation>پائپ لائن یہاں تک پانی نکالتی ہے</translation>
    </message>
    <message>
        <source>highest of dead level, end of the line + 2 cm, crest − (air pressure less vapour − reserve)</source>
        <translation>ان میں سب سے اونچا: ڈیڈ لیول، پائپ لائن کا سرا + 2 cm، چوٹی − (ہوا کا دباؤ، بھاپ کا دباؤ نکال کر، − ریزرو)</translation>
    </message>
    <message>
        <source>Emptied in, end wide open</source>
        <translation>کتنے وقت میں خالی، سرا پورا کھلا</translation>
    </message>
    <message>
        <source>integral of surface(z) ÷ outflow(z) over the level z, Gauss-Kronrod with 15 points</source>
        <translation>لیول z پر پانی کی اوپری سطح(z) ÷ نکلنے والا بہاؤ(z) کا انٹیگرل، Gauss-Kronrod، 15 نقطوں سے</translation>
    </message>
    <message>
        <source>Error of that time at most</source>
        <translation>اس وقت کی غلطی، زیادہ سے زیادہ</translation>
    </message>
    <message>
        <source>sum of the differences of the rules</source>
        <translation>دونوں قاعدوں کے فرق کا مجموعہ</translation>
    </message>
    <message>
        <source>Levels while it empties</source>
        <translation>خالی ہوتے وقت کے لیول</translation>
    </message>
    <message>
        <source>even steps from the overflow down</source>
        <translation>اوور فلو سے نیچے برابر فاصلوں پر</translation>
    </message>
    <message>
        <source>Time at each level</source>
        <translation>ہر لیول کا وقت</translation>
    </message>
    <message>
        <source>integral from the overflow level down to it</source>
        <translation>اوور فلو کے لیول سے اس تک انٹیگرل</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>طوفانی بارش</translation>
    </message>
    <message>
        <source>as entered; 100 mm an hour when it is not known</source>
        <translation>جیسی درج ہے؛ معلوم نہ ہو تو 100 mm فی گھنٹہ</translation>
    </message>
    <message>
        <source>Water of the storm</source>
        <translation>طوفانی بارش کا پانی</translation>
    </message>
    <message>
        <source>rain × sum of (runoff × area): roof at least 0.9, ground at least 0.5, opening of the tank 1</source>
        <translation>بارش × (بہنے والا حصہ × رقبہ) کا مجموعہ: چھت کم از کم 0.9، زمین کم از کم 0.5، ٹینکی کا منہ 1</translation>
    </message>
    <message>
        <source>Water of the source</source>
        <translation>ذریعے کا پانی</translation>
    </message>
    <message>
        <source>flow of its line to the full tank; without a line the largest of a month</source>
        <translation>اس کی پائپ لائن کا بہاؤ، ٹینکی بھری؛ پائپ لائن نہ ہو تو سب سے زیادہ والے مہینے کا</translation>
    </message>
    <message>
        <source>Both together</source>
        <translation>دونوں مل کر</translation>
    </message>
    <message>
        <source>storm + source</source>
        <translation>طوفانی بارش + ذریعہ</translation>
    </message>
    <message>
        <source>Sill over the finished floor</source>
        <translation>تیار فرش سے دہلیز کی اونچائی</translation>
    </message>
    <message>
        <source>overflow level</source>
        <translation>اوور فلو کا لیول</translation>
    </message>
    <message>
        <source>Water over the sill in the storm</source>
        <translation>طوفانی بارش میں دہلیز سے اوپر پانی</translation>
    </message>
    <message>
        <source>notch: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; pipe: largest head of inlet, orifice, even flow and full pipe</source>
        <translation>کھانچا: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5؛ پائپ: داخلے، سوراخ، یکساں بہاؤ اور بھرے پائپ میں سب سے بڑا ہیڈ</translation>
    </message>
    <message>
        <source>Water level in the storm</source>
        <translation>طوفانی بارش میں پانی کا لیول</translation>
    </message>
    <message>
        <source>sill + water over it</source>
        <translation>دہلیز + اس سے اوپر پانی</translation>
    </message>
    <message>
        <source>Freeboard left</source>
        <translation>بچا ہوا فری بورڈ</translation>
    </message>
    <message>
        <source>lowest part of the rim − water level</source>
        <translation>اوپری کنارے کا سب سے نیچا حصہ − پانی کا لیول</translation>
    </message>
    <message>
        <source>Carries with water at the rim</source>
        <translation>پانی اوپری کنارے پر ہو تو کتنا نکالتا ہے</translation>
    </message>
    <message>
        <source>same formula with the head up to the lowest part of the rim</source>
        <translation>وہی فارمولا، ہیڈ اوپری کنارے کے سب سے نیچے حصے تک</translation>
    </message>
    <message>
        <source>Freeboard that should be left</source>
        <translation>فری بورڈ جو بچنا چاہیے</translation>
    </message>
    <message>
        <source>5 cm</source>
        <translation>5 cm</translation>
    </message>
    <message>
        <source>Notch that would leave it</source>
        <translation>کھانچا جس سے اتنا بچے</translation>
    </message>
    <message>
        <source>flow ÷ flow over 1 m of sill at that head</source>
        <translation>بہاؤ ÷ اس ہیڈ پر 1 m دہلیز کا بہاؤ</translation>
    </message>
    <message>
        <source>Pipe that would leave it, bore</source>
        <translation>پائپ جس سے اتنا بچے، اندرونی قطر</translation>
    </message>
    <message>
        <source>smallest from 20 mm in steps of 5 mm whose head is small enough</source>
        <translation>20 mm سے 5 mm کے فرق سے سب سے چھوٹا جس کا ہیڈ کافی کم ہو</translation>
    </message>
    <message>
        <source>Water level, overflow blocked</source>
        <translation>پانی کا لیول، اوور فلو بند</translation>
    </message>
    <message>
        <source>all of the flow over the rim, lowest parts first, each by the formula of the notch</source>
        <translation>سارا بہاؤ اوپری کنارے کے اوپر سے، سب سے نیچے حصے پہلے، ہر ایک کھانچے کے فارمولے سے</translation>
    </message>
    <message>
        <source>Water over the lowest part then</source>
        <translation>تب سب سے نیچے حصے سے اوپر پانی</translation>
    </message>
    <message>
        <source>water level − lowest part</source>
        <translation>پانی کا لیول − سب سے نیچا حصہ</translation>
    </message>
    <message>
        <source>Water over each part then</source>
        <translation>تب ہر حصے سے اوپر پانی</translation>
    </message>
    <message>
        <source>water level − level of the part, 0 where dry</source>
        <translation>پانی کا لیول − حصے کا لیول، سوکھا ہو تو 0</translation>
    </message>
    <message>
        <source>Flow over each part then</source>
        <translation>تب ہر حصے سے بہاؤ</translation>
    </message>
    <message>
        <source>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</source>
        <translation>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</translation>
    </message>
    <message>
        <source>Spill channel, deep</source>
        <translation>فالتو پانی کی نالی، گہرائی</translation>
    </message>
    <message>
        <source>Spill channel, Manning&apos;s n</source>
        <translation>فالتو پانی کی نالی، Manning کا n</translation>
    </message>
    <message>
        <source>by what it is dug in or covered with</source>
        <translation>جس میں کھدی ہو یا جس سے ڈھکی ہو، اس کے حساب سے</translation>
    </message>
    <message>
        <source>Water in the spill channel</source>
        <translation>فالتو پانی کی نالی میں پانی</translation>
    </message>
    <message>
        <source>depth of even flow: Q = A R^(2÷3) √S ÷ n</source>
        <translation>یکساں بہاؤ کی گہرائی: Q = A R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Speed in the spill channel</source>
        <translation>فالتو پانی کی نالی میں رفتار</translation>
    </message>
    <message>
        <source>R^(2÷3) √S ÷ n</source>
        <translation>R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Width of the water there</source>
        <translation>وہاں پانی کی چوڑائی</translation>
    </message>
    <message>
        <source>bottom width + 2 × side slope × depth</source>
        <translation>تلے کی چوڑائی + 2 × پہلو کی ڈھلان × گہرائی</translation>
    </message>
    <message>
        <source>Froude number there</source>
        <translation>وہاں Froude نمبر</translation>
    </message>
    <message>
        <source>V ÷ √(g A ÷ top width)</source>
        <translation>V ÷ √(g A ÷ اوپر کی چوڑائی)</translation>
    </message>
    <message>
        <source>Speed that is safe</source>
        <translation>رفتار جو محفوظ ہے</translation>
    </message>
    <message>
        <source>by soil or cover, low figure</source>
        <translation>مٹی یا اوپر کی تہہ کے حساب سے، کم والا عدد</translation>
    </message>
    <message>
        <source>Speed that scours</source>
        <translation>رفتار جو کٹاؤ کرتی ہے</translation>
    </message>
    <message>
        <source>by soil or cover, high figure</source>
        <translation>مٹی یا اوپر کی تہہ کے حساب سے، زیادہ والا عدد</translation>
    </message>
    <message>
        <source>Flow through the trap</source>
        <translation>حوضی سے بہاؤ</translation>
    </message>
    <message>
        <source>as entered, else source + storm led in from roof and ground</source>
        <translation>جیسا درج ہے، ورنہ ذریعہ + طوفانی بارش جو چھت اور زمین سے لائی گئی</translation>
    </message>
    <message>
        <source>Smallest grain that must stay</source>
        <translation>سب سے چھوٹا ذرہ جو رکنا لازم ہے</translation>
    </message>
    <message>
        <source>Speed at which that grain falls</source>
        <translation>رفتار جس سے وہ ذرہ بیٹھتا ہے</translation>
    </message>
    <message>
        <source>R g d² ÷ (18 ν + √(0.75 R g d³)), R = density over water − 1, 2650 kg/m³</source>
        <translation>R g d² ÷ (18 ν + √(0.75 R g d³))، R = پانی کے مقابلے میں کثافت − 1، 2650 kg/m³</translation>
    </message>
    <message>
        <source>Least area</source>
        <translation>کم سے کم رقبہ</translation>
    </message>
    <message>
        <source>flow ÷ settling speed</source>
        <translation>بہاؤ ÷ بیٹھنے کی رفتار</translation>
    </message>
    <message>
        <source>Area with reserve</source>
        <translation>ریزرو کے ساتھ رقبہ</translation>
    </message>
    <message>
        <source>2 × least area</source>
        <translation>2 × کم سے کم رقبہ</translation>
    </message>
    <message>
        <source>Length of the trap</source>
        <translation>حوضی کی لمبائی</translation>
    </message>
    <message>
        <source>area ÷ width</source>
        <translation>رقبہ ÷ چوڑائی</translation>
    </message>
    <message>
        <source>Width of the trap</source>
        <translation>حوضی کی چوڑائی</translation>
    </message>
    <message>
        <source>√(area ÷ 6): six times as long as wide</source>
        <translation>√(رقبہ ÷ 6): لمبائی چوڑائی سے چھ گنا</translation>
    </message>
    <message>
        <source>Depth of the trap</source>
        <translation>حوضی کی گہرائی</translation>
    </message>
    <message>
        <source>10 cm freeboard + settling depth + depth of mud</source>
        <translation>10 cm فری بورڈ + بیٹھنے کی گہرائی + کیچڑ کی گہرائی</translation>
    </message>
    <message>
        <source>Greatest forward speed</source>
        <translation>آگے کو زیادہ سے زیادہ رفتار</translation>
    </message>
    <message>
        <source>0.44 × √(grain in mm)</source>
        <translation>0.44 × √(ذرہ mm میں)</translation>
    </message>
    <message>
        <source>Flow over area, a day</source>
        <translation>بہاؤ فی رقبہ، روزانہ</translation>
    </message>
    <message>
        <source>flow ÷ area × 86 400 s</source>
        <translation>بہاؤ ÷ رقبہ × 86 400 s</translation>
    </message>
    <message>
        <source>Settling depth</source>
        <translation>بیٹھنے کی گہرائی</translation>
    </message>
    <message>
        <source>flow ÷ (width × greatest forward speed)</source>
        <translation>بہاؤ ÷ (چوڑائی × آگے کو زیادہ سے زیادہ رفتار)</translation>
    </message>
    <message>
        <source>Mud between two cleanings</source>
        <translation>دو صفائیوں کے بیچ کیچڑ</translation>
    </message>
    <message>
        <source>flow × silt in it × days; the storm counts for one hour</source>
        <translation>بہاؤ × اس میں گاد × دن؛ طوفانی بارش ایک گھنٹہ گنی جاتی ہے</translation>
    </message>
    <message>
        <source>Room for it</source>
        <translation>اس کے لیے جگہ</translation>
    </message>
    <message>
        <source>mud ÷ (2600 kg/m³ × 0.5)</source>
        <translation>کیچڑ ÷ (2600 kg/m³ × 0.5)</translation>
    </message>
    <message>
        <source>Depth of mud</source>
        <translation>کیچڑ کی گہرائی</translation>
    </message>
    <message>
        <source>room ÷ area</source>
        <translation>جگہ ÷ رقبہ</translation>
    </message>
    <message>
        <source>Time in the trap</source>
        <translation>حوضی میں وقت</translation>
    </message>
    <message>
        <source>area × settling depth ÷ flow</source>
        <translation>رقبہ × بیٹھنے کی گہرائی ÷ بہاؤ</translation>
    </message>
    <message>
        <source>Smallest grain that the entered trap keeps</source>
        <translation>سب سے چھوٹا ذرہ جو درج حوضی روکتی ہے</translation>
    </message>
    <message>
        <source>grain that falls at 2 × flow ÷ (length × width)</source>
        <translation>ذرہ جو 2 × بہاؤ ÷ (لمبائی × چوڑائی) کی رفتار سے بیٹھے</translation>
    </message>
    <message>
        <source>Forward speed in it</source>
        <translation>اس میں آگے کو رفتار</translation>
    </message>
    <message>
        <source>flow ÷ (width × depth)</source>
        <translation>بہاؤ ÷ (چوڑائی × گہرائی)</translation>
    </message>
    <message>
        <source>Greatest forward speed for that grain</source>
        <translation>اس ذرے کے لیے آگے کو زیادہ سے زیادہ رفتار</translation>
    </message>
    <message>
        <source>Tank drops</source>
        <translation>ٹینکی میں پانی اترتا ہے</translation>
    </message>
    <message>
        <source>drop ÷ hours × 24</source>
        <translation>اترا پانی ÷ گھنٹے × 24</translation>
    </message>
    <message>
        <source>Evaporates</source>
        <translation>بخارات بنتے ہیں</translation>
    </message>
    <message>
        <source>drop of the bucket ÷ hours × 24</source>
        <translation>بالٹی میں اترا پانی ÷ گھنٹے × 24</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>لیکیج</translation>
    </message>
    <message>
        <source>tank − bucket</source>
        <translation>ٹینکی − بالٹی</translation>
    </message>
    <message>
        <source>Error of the leak</source>
        <translation>لیکیج کی غلطی</translation>
    </message>
    <message>
        <source>√2 × error of a reading ÷ hours × 24</source>
        <translation>√2 × ایک ریڈنگ کی غلطی ÷ گھنٹے × 24</translation>
    </message>
    <message>
        <source>Leaks, litres</source>
        <translation>لیکیج، لیٹر</translation>
    </message>
    <message>
        <source>leak × water surface at that level: 1 mm on 1 m² is 1 litre</source>
        <translation>لیکیج × اس لیول پر پانی کی اوپری سطح: 1 m² پر 1 mm، 1 لیٹر ہے</translation>
    </message>
    <message>
        <source>Leaks, share of what is held</source>
        <translation>لیکیج، ٹینکی کے پانی کا حصہ</translation>
    </message>
    <message>
        <source>leak ÷ volume at that level</source>
        <translation>لیکیج ÷ اس لیول پر حجم</translation>
    </message>
    <message>
        <source>Level in the test</source>
        <translation>ٹیسٹ میں لیول</translation>
    </message>
    <message>
        <source>as entered; else overflow − half of the drop</source>
        <translation>جیسا درج ہے؛ ورنہ اوور فلو − اترے پانی کا آدھا</translation>
    </message>
    <message>
        <source>Allowed by drop</source>
        <translation>اترنے کے حساب سے اجازت</translation>
    </message>
    <message>
        <source>10 mm in 7 days</source>
        <translation>7 دن میں 10 mm</translation>
    </message>
    <message>
        <source>Allowed by volume</source>
        <translation>حجم کے حساب سے اجازت</translation>
    </message>
    <message>
        <source>0.1 % of the volume a day ÷ water surface</source>
        <translation>روزانہ حجم کا 0.1 % ÷ پانی کی اوپری سطح</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>بہاؤ</translation>
    </message>
    <message>
        <source>found so that the head = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>ایسے نکالا کہ ہیڈ = (1 + K کا مجموعہ + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>flow by Hazen-Williams, to check</source>
        <translation>Hazen-Williams سے بہاؤ، جانچ کے لیے</translation>
    </message>
    <message>
        <source>same heads and fittings, wall by 10.67 L Q^1.852 ÷ (C^1.852 D^4.87), C 140</source>
        <translation>وہی ہیڈ اور فٹنگ، پائپ کی دیوار 10.67 L Q^1.852 ÷ (C^1.852 D^4.87) سے، C 140</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>رفتار</translation>
    </message>
    <message>
        <source>flow ÷ (π D² ÷ 4)</source>
        <translation>بہاؤ ÷ (π D² ÷ 4)</translation>
    </message>
    <message>
        <source>Reynolds number</source>
        <translation>Reynolds نمبر</translation>
    </message>
    <message>
        <source>V D ÷ kinematic viscosity of the water</source>
        <translation>V D ÷ پانی کی کائنیمیٹک وسکوسٹی</translation>
    </message>
    <message>
        <source>friction factor</source>
        <translation>رگڑ کا فیکٹر</translation>
    </message>
    <message>
        <source>Re under 2 000: 64 ÷ Re; over 4 000: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; straight between</source>
        <translation>Re 2 000 سے کم: 64 ÷ Re؛ 4 000 سے زیادہ: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f))، k 0.0015 mm؛ بیچ میں سیدھی لکیر</translation>
    </message>
    <message>
        <source>head that drives the flow</source>
        <translation>ہیڈ جو پانی چلاتا ہے</translation>
    </message>
    <message>
        <source>water over the inlet − end of the line, or the water it dips into − head wanted there</source>
        <translation>داخلے پر پانی کا لیول − پائپ لائن کا سرا، یا وہ پانی جس میں سرا ڈوبا ہے − وہاں مطلوبہ ہیڈ</translation>
    </message>
    <message>
        <source>length along the pipe</source>
        <translation>پائپ کے ساتھ لمبائی</translation>
    </message>
    <message>
        <source>sum over the pieces of √(level² + rise²)</source>
        <translation>ٹکڑوں پر √(ہموار فاصلہ² + چڑھائی²) کا مجموعہ</translation>
    </message>
    <message>
        <source>head lost to the wall</source>
        <translation>پائپ کی دیوار کی رگڑ میں ضائع ہیڈ</translation>
    </message>
    <message>
        <source>f L ÷ D × V² ÷ 2g</source>
        <translation>f L ÷ D × V² ÷ 2g</translation>
    </message>
    <message>
        <source>head lost in fittings</source>
        <translation>فٹنگ میں ضائع ہیڈ</translation>
    </message>
    <message>
        <source>sum of K × V² ÷ 2g</source>
        <translation>K کا مجموعہ × V² ÷ 2g</translation>
    </message>
    <message>
        <source>velocity head</source>
        <translation>رفتار کا ہیڈ</translation>
    </message>
    <message>
        <source>V² ÷ 2g</source>
        <translation>V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure head at the outlet</source>
        <translation>نکاس پر دباؤ کا ہیڈ</translation>
    </message>
    <message>
        <source>head wanted there, or the depth that it dips in</source>
        <translation>وہاں مطلوبہ ہیڈ، یا جتنی گہرائی تک ڈوبا ہے</translation>
    </message>
    <message>
        <source>head at the lowest point, outlet shut</source>
        <translation>سب سے نیچے مقام پر ہیڈ، نکاس بند</translation>
    </message>
    <message>
        <source>water over the inlet − lowest point of the pipe</source>
        <translation>داخلے پر پانی کا لیول − پائپ کا سب سے نیچا مقام</translation>
    </message>
    <message>
        <source>pressure at the lowest point, outlet shut</source>
        <translation>سب سے نیچے مقام پر دباؤ، نکاس بند</translation>
    </message>
    <message>
        <source>density × g × head</source>
        <translation>کثافت × g × ہیڈ</translation>
    </message>
    <message>
        <source>pressure class left</source>
        <translation>پریشر کلاس میں سے باقی</translation>
    </message>
    <message>
        <source>class that holds − pressure with the outlet shut</source>
        <translation>کلاس جو قائم رہے − نکاس بند ہونے پر دباؤ</translation>
    </message>
    <message>
        <source>lowest pressure head allowed</source>
        <translation>دباؤ کا سب سے کم ہیڈ جس کی اجازت ہے</translation>
    </message>
    <message>
        <source>vapour pressure + reserve of 2 m − air pressure of the place, as water column</source>
        <translation>بھاپ کا دباؤ + 2 m ریزرو − اس جگہ ہوا کا دباؤ، پانی کی اونچائی میں</translation>
    </message>
    <message>
        <source>head that air can hold back at worst</source>
        <translation>ہیڈ جو پھنسی ہوا بری سے بری صورت میں روک سکتی ہے</translation>
    </message>
    <message>
        <source>sum of the falls after all humps</source>
        <translation>سب ابھاروں کے بعد کی اترائیوں کا مجموعہ</translation>
    </message>
    <message>
        <source>heads along the line: place</source>
        <translation>پائپ لائن پر ہیڈ: جگہ</translation>
    </message>
    <message>
        <source>where the line bends and where fittings sit</source>
        <translation>جہاں پائپ لائن مڑتی ہے اور جہاں فٹنگ لگی ہیں</translation>
    </message>
    <message>
        <source>heads along the line: pipe</source>
        <translation>پائپ لائن پر ہیڈ: پائپ</translation>
    </message>
    <message>
        <source>straight between the points of the line</source>
        <translation>پائپ لائن کے نقطوں کے بیچ سیدھی لکیر</translation>
    </message>
    <message>
        <source>heads along the line: length so far</source>
        <translation>پائپ لائن پر ہیڈ: اب تک کی لمبائی</translation>
    </message>
    <message>
        <source>along the pipe</source>
        <translation>پائپ کے ساتھ</translation>
    </message>
    <message>
        <source>heads along the line: energy</source>
        <translation>پائپ لائن پر ہیڈ: توانائی</translation>
    </message>
    <message>
        <source>water over the inlet − lost to the wall so far − fittings so far</source>
        <translation>داخلے پر پانی کا لیول − اب تک پائپ کی دیوار میں ضائع − اب تک فٹنگ میں ضائع</translation>
    </message>
    <message>
        <source>heads along the line: head line</source>
        <translation>پائپ لائن پر ہیڈ: ہیڈ کی لکیر</translation>
    </message>
    <message>
        <source>energy − velocity head</source>
        <translation>توانائی − رفتار کا ہیڈ</translation>
    </message>
    <message>
        <source>heads along the line: pressure</source>
        <translation>پائپ لائن پر ہیڈ: دباؤ</translation>
    </message>
    <message>
        <source>head line − pipe</source>
        <translation>ہیڈ کی لکیر − پائپ</translation>
    </message>
    <message>
        <source>heads along the line: pressure with the outlet shut</source>
        <translation>پائپ لائن پر ہیڈ: نکاس بند ہونے پر دباؤ</translation>
    </message>
    <message>
        <source>water over the inlet − pipe</source>
        <translation>داخلے پر پانی کا لیول − پائپ</translation>
    </message>
    <message>
        <source>sucking stretch: from</source>
        <translation>سکشن والا ٹکڑا: یہاں سے</translation>
    </message>
    <message>
        <source>where the pressure passes 0</source>
        <translation>جہاں دباؤ 0 سے گزرتا ہے</translation>
    </message>
    <message>
        <source>sucking stretch: to</source>
        <translation>سکشن والا ٹکڑا: یہاں تک</translation>
    </message>
    <message>
        <source>sucking stretch: lowest pressure</source>
        <translation>سکشن والا ٹکڑا: سب سے کم دباؤ</translation>
    </message>
    <message>
        <source>lowest of its points</source>
        <translation>اس کے نقطوں میں سب سے کم</translation>
    </message>
    <message>
        <source>sucking stretch: where it is lowest</source>
        <translation>سکشن والا ٹکڑا: جہاں سب سے کم ہے</translation>
    </message>
    <message>
        <source>place of that point</source>
        <translation>اس نقطے کی جگہ</translation>
    </message>
    <message>
        <source>stretch near boiling: from</source>
        <translation>ابلنے کے قریب ٹکڑا: یہاں سے</translation>
    </message>
    <message>
        <source>where the pressure passes the lowest allowed</source>
        <translation>جہاں دباؤ اجازت کی سب سے کم حد سے گزرتا ہے</translation>
    </message>
    <message>
        <source>stretch near boiling: to</source>
        <translation>ابلنے کے قریب ٹکڑا: یہاں تک</translation>
    </message>
    <message>
        <source>stretch near boiling: lowest pressure</source>
        <translation>ابلنے کے قریب ٹکڑا: سب سے کم دباؤ</translation>
    </message>
    <message>
        <source>stretch near boiling: where it is lowest</source>
        <translation>ابلنے کے قریب ٹکڑا: جہاں سب سے کم ہے</translation>
    </message>
    <message>
        <source>humps: place</source>
        <translation>ابھار: جگہ</translation>
    </message>
    <message>
        <source>high points between inlet and outlet</source>
        <translation>داخلے اور نکاس کے بیچ اونچے مقام</translation>
    </message>
    <message>
        <source>humps: over the finished floor</source>
        <translation>ابھار: تیار فرش سے اونچائی</translation>
    </message>
    <message>
        <source>level of the pipe there</source>
        <translation>وہاں پائپ کا لیول</translation>
    </message>
    <message>
        <source>humps: rise</source>
        <translation>ابھار: چڑھائی</translation>
    </message>
    <message>
        <source>over the lowest point since the inlet or the hump before</source>
        <translation>داخلے یا پچھلے ابھار کے بعد کے سب سے نیچے مقام سے</translation>
    </message>
    <message>
        <source>humps: fall</source>
        <translation>ابھار: اترائی</translation>
    </message>
    <message>
        <source>to the lowest point before the next hump or the outlet</source>
        <translation>اگلے ابھار یا نکاس سے پہلے کے سب سے نیچے مقام تک</translation>
    </message>
    <message>
        <source>humps: over the straight line</source>
        <translation>ابھار: سیدھی لکیر سے اونچائی</translation>
    </message>
    <message>
        <source>over the line from inlet to outlet</source>
        <translation>داخلے سے نکاس تک کی لکیر سے اوپر</translation>
    </message>
    <message>
        <source>humps: pressure</source>
        <translation>ابھار: دباؤ</translation>
    </message>
    <message>
        <source>head line − pipe at the flow found</source>
        <translation>ہیڈ کی لکیر − پائپ، نکالے گئے بہاؤ پر</translation>
    </message>
    <message>
        <source>Work, all tasks together</source>
        <translation>محنت، سب کام مل کر</translation>
    </message>
    <message>
        <source>sum of the person-days</source>
        <translation>دیہاڑیوں کا مجموعہ</translation>
    </message>
    <message>
        <source>Skilled person-days among them</source>
        <translation>ان میں مستری کی دیہاڑیاں</translation>
    </message>
    <message>
        <source>sum of the masons&apos; share</source>
        <translation>مستریوں کے حصے کا مجموعہ</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>ہر کام کی دیہاڑیاں</translation>
    </message>
    <message>
        <source>quantity × rate</source>
        <translation>مقدار × کام کی رفتار</translation>
    </message>
    <message>
        <source>Person-days at the low rate</source>
        <translation>کام کی رفتار کے کم عدد سے دیہاڑیاں</translation>
    </message>
    <message>
        <source>quantity × low rate of the table, or of the district</source>
        <translation>مقدار × جدول یا ضلع کی کام کی رفتار کا کم عدد</translation>
    </message>
    <message>
        <source>Person-days at the high rate</source>
        <translation>کام کی رفتار کے زیادہ عدد سے دیہاڑیاں</translation>
    </message>
    <message>
        <source>quantity × high rate of the table, or of the district</source>
        <translation>مقدار × جدول یا ضلع کی کام کی رفتار کا زیادہ عدد</translation>
    </message>
    <message>
        <source>Skilled share of each task</source>
        <translation>ہر کام میں مستری کا حصہ</translation>
    </message>
    <message>
        <source>person-days × 0.074 ÷ 0.260 for coats, × 1 ÷ 4.5 for stone bed, trap and overflow</source>
        <translation>دیہاڑیاں × 0.074 ÷ 0.260 کوٹوں کے لیے، × 1 ÷ 4.5 پتھر کی سولنگ، حوضی اور اوور فلو کے لیے</translation>
    </message>
    <message>
        <source>Person-days for each unit of work</source>
        <translation>کام کی ہر اکائی پر دیہاڑیاں</translation>
    </message>
    <message>
        <source>table of rates, the district&apos;s own rate or the rate entered; below 1.5 m × the factor for deep digging; a coat: spreading + mixing × plaster ÷ face; carrying: less what the digging rate includes; wetting: × rounds a day ÷ 3 × people</source>
        <translation>کام کی رفتار کا جدول، ضلع کی اپنی یا درج رفتار؛ 1.5 m سے نیچے × گہری کھدائی کا فیکٹر؛ کوٹ: لگانا + مسالا بنانا × پلستر ÷ سطح؛ ڈھلائی: جو کھدائی کی رفتار میں شامل ہے وہ نکال کر؛ ترائی: × دن میں کتنی بار ÷ 3 × لوگ</translation>
    </message>
    <message>
        <source>Digging by the district norm</source>
        <translation>کھدائی، ضلع کے معیار سے</translation>
    </message>
    <message>
        <source>pit × 0.8 person-days for each m³</source>
        <translation>گڑھا × ہر m³ پر 0.8 دیہاڑی</translation>
    </message>
    <message>
        <source>Digging by what people report</source>
        <translation>کھدائی، لوگوں کے بتانے سے</translation>
    </message>
    <message>
        <source>pit × 0.62 person-days for each m³</source>
        <translation>گڑھا × ہر m³ پر 0.62 دیہاڑی</translation>
    </message>
    <message>
        <source>ground to clear</source>
        <translation>صاف کرنے کی زمین</translation>
    </message>
    <message>
        <source>outline of the pit at the ground, walkway and 1 m more all round</source>
        <translation>زمین پر گڑھے کا خاکہ، چلنے کی پٹی اور چاروں طرف 1 m اور</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>کام</translation>
    </message>
    <message>
        <source>topsoil to strip</source>
        <translation>اتارنے کی زرخیز مٹی</translation>
    </message>
    <message>
        <source>topsoil stripped first</source>
        <translation>اوپر کی زرخیز مٹی جو پہلے اتاری جائے</translation>
    </message>
    <message>
        <source>platform to cut</source>
        <translation>کاٹنے کا پلیٹ فارم</translation>
    </message>
    <message>
        <source>cut for the platform</source>
        <translation>پلیٹ فارم کی کٹائی</translation>
    </message>
    <message>
        <source>platform to ram</source>
        <translation>کوٹنے کا پلیٹ فارم</translation>
    </message>
    <message>
        <source>fill for the platform</source>
        <translation>پلیٹ فارم کی بھرائی</translation>
    </message>
    <message>
        <source>digging to 1.5 m</source>
        <translation>1.5 m تک کھدائی</translation>
    </message>
    <message>
        <source>pit less what lies deeper than 1.5 m</source>
        <translation>گڑھا، 1.5 m سے گہرا حصہ نکال کر</translation>
    </message>
    <message>
        <source>digging below 1.5 m</source>
        <translation>1.5 m سے نیچے کھدائی</translation>
    </message>
    <message>
        <source>pit below 1.5 m under the ground, same formula as for the pit</source>
        <translation>گڑھا، زمین سے 1.5 m سے نیچے، وہی فارمولا جو گڑھے کا ہے</translation>
    </message>
    <message>
        <source>spoil to carry</source>
        <translation>ڈھونے کی کھدائی کی مٹی</translation>
    </message>
    <message>
        <source>spoil left over, as it lies</source>
        <translation>بچی ہوئی کھدائی کی مٹی، ٹھوس زمین کے ناپ سے</translation>
    </message>
    <message>
        <source>pit faces to trim</source>
        <translation>گڑھے کی سطحیں، چھیل کر برابر کرنے کو</translation>
    </message>
    <message>
        <source>pit floor + edge half way down × pit depth × √(1 + batter²)</source>
        <translation>گڑھے کا تلا + آدھی گہرائی پر گھیرا × گڑھے کی گہرائی × √(1 + سلامی²)</translation>
    </message>
    <message>
        <source>pipes to lay</source>
        <translation>ڈالنے کے پائپ</translation>
    </message>
    <message>
        <source>level length of both ways</source>
        <translation>دونوں راستوں کی ہموار لمبائی</translation>
    </message>
    <message>
        <source>volume of the bed, net</source>
        <translation>سولنگ کا حجم، خالص</translation>
    </message>
    <message>
        <source>wetting, days</source>
        <translation>ترائی، دن</translation>
    </message>
    <message>
        <source>days under wet sacks of all coats, and days that sacks stay wet outside of them</source>
        <translation>سب کوٹوں کے گیلے ٹاٹ کے نیچے دن، اور ان کے علاوہ وہ دن جب ٹاٹ گیلے رہتے ہیں</translation>
    </message>
    <message>
        <source>silt trap</source>
        <translation>گاد کی حوضی</translation>
    </message>
    <message>
        <source>overflow</source>
        <translation>اوور فلو</translation>
    </message>
    <message>
        <source>fence</source>
        <translation>باڑ</translation>
    </message>
    <message>
        <source>all round, 1 m outside the clear opening</source>
        <translation>چاروں طرف، اندر کے اوپری منہ سے 1 m باہر</translation>
    </message>
    <message>
        <source>filling, days</source>
        <translation>پانی بھرنا، دن</translation>
    </message>
    <message>
        <source>days of the first filling</source>
        <translation>پہلی بار پانی بھرنے کے دن</translation>
    </message>
    <message>
        <source>leak test</source>
        <translation>لیکیج ٹیسٹ</translation>
    </message>
    <message>
        <source>beds to plant</source>
        <translation>بوائی کی کیاریاں</translation>
    </message>
    <message>
        <source>sum of the beds</source>
        <translation>کیاریوں کا مجموعہ</translation>
    </message>
    <message>
        <source>faces of the coats</source>
        <translation>کوٹوں کی سطحیں</translation>
    </message>
    <message>
        <source>face of the coat</source>
        <translation>کوٹ کی سطح</translation>
    </message>
    <message>
        <source>Quantity of work</source>
        <translation>کام کی مقدار</translation>
    </message>
    <message>
        <source>Thickness of each layer</source>
        <translation>ہر تہہ کی موٹائی</translation>
    </message>
    <message>
        <source>square to the face, as entered; of the cove its radius</source>
        <translation>سطح کی گنیا میں، جیسی درج ہے؛ گولے کا رداس</translation>
    </message>
    <message>
        <source>Volume of each layer, finished</source>
        <translation>ہر تہہ کا حجم، تیار</translation>
    </message>
    <message>
        <source>exact shell between its two faces, floor and wall together</source>
        <translation>اس کی دونوں سطحوں کے بیچ اصل حجم، فرش اور دیوار ملا کر</translation>
    </message>
    <message>
        <source>Face of each layer that is worked</source>
        <translation>ہر تہہ کی سطح جس پر کام ہوتا ہے</translation>
    </message>
    <message>
        <source>for a coat its inner face: floor + √(1 + batter²) × height × mean edge; for bed and rim the top</source>
        <translation>کوٹ کی اندر والی سطح: فرش + √(1 + سلامی²) × اونچائی × اوسط گھیرا؛ سولنگ اور اوپری کنارے کا اوپر</translation>
    </message>
    <message>
        <source>Thickness of each coat</source>
        <translation>ہر کوٹ کی موٹائی</translation>
    </message>
    <message>
        <source>square to the face, as entered</source>
        <translation>سطح کی گنیا میں، جیسی درج ہے</translation>
    </message>
    <message>
        <source>Face of each coat</source>
        <translation>ہر کوٹ کی سطح</translation>
    </message>
    <message>
        <source>finished inner face, floor and wall</source>
        <translation>تیار اندر والی سطح، فرش اور دیوار</translation>
    </message>
    <message>
        <source>Plaster of each coat, exact shell</source>
        <translation>ہر کوٹ کا پلستر، اصل حجم</translation>
    </message>
    <message>
        <source>volume of the layer; the last coat also holds cove and rim</source>
        <translation>تہہ کا حجم؛ آخری کوٹ میں گولا اور اوپری کنارہ بھی</translation>
    </message>
    <message>
        <source>Plaster by area × thickness</source>
        <translation>پلستر، رقبہ × موٹائی سے</translation>
    </message>
    <message>
        <source>(clear floor + clear wall) × thickness: the rule on paper, to stand beside the exact shell</source>
        <translation>(اندر کا فرش + اندر کی دیوار) × موٹائی: کاغذ والا قاعدہ، اصل حجم کے ساتھ رکھنے کو</translation>
    </message>
    <message>
        <source>Plaster to mix for each coat</source>
        <translation>ہر کوٹ کے لیے بنانے کا پلستر</translation>
    </message>
    <message>
        <source>shell × (1 + waste); coat 1 also × (1 + unevenness)</source>
        <translation>اصل حجم × (1 + ضائع مال)؛ کوٹ 1 پر × (1 + ناہمواری) بھی</translation>
    </message>
    <message>
        <source>Clay in soil and sand together</source>
        <translation>مٹی اور ریت ملا کر ان میں چکنی مٹی</translation>
    </message>
    <message>
        <source>clay of the soil × soil parts ÷ (soil + sand parts)</source>
        <translation>مٹی میں چکنی مٹی × مٹی کے حصے ÷ (مٹی + ریت کے حصے)</translation>
    </message>
    <message>
        <source>Cement: net weight</source>
        <translation>سیمنٹ: خالص وزن</translation>
    </message>
    <message>
        <source>sum over all coats of the net mix</source>
        <translation>سب کوٹوں کے خالص مسالے کا مجموعہ</translation>
    </message>
    <message>
        <source>Cement: to order</source>
        <translation>سیمنٹ: جو منگوانا ہے</translation>
    </message>
    <message>
        <source>whole bags × weight of a bag</source>
        <translation>پوری بوریاں × بوری کا وزن</translation>
    </message>
    <message>
        <source>Cement bags, net</source>
        <translation>سیمنٹ کی بوریاں، خالص</translation>
    </message>
    <message>
        <source>net cement ÷ weight of a bag</source>
        <translation>خالص سیمنٹ ÷ بوری کا وزن</translation>
    </message>
    <message>
        <source>Cement bags to order</source>
        <translation>سیمنٹ کی بوریاں جو منگوانی ہیں</translation>
    </message>
    <message>
        <source>cement of the plaster to mix ÷ weight of a bag, rounded up to whole bags</source>
        <translation>بنانے کے پلستر کا سیمنٹ ÷ بوری کا وزن، اوپر کی پوری بوریوں تک</translation>
    </message>
    <message>
        <source>Soil, net</source>
        <translation>مٹی، خالص</translation>
    </message>
    <message>
        <source>Soil to dig and sieve</source>
        <translation>مٹی جو کھودنی اور چھاننی ہے</translation>
    </message>
    <message>
        <source>soil of the plaster to mix ÷ (1 − lost in sieving), rounded up to 0.1 m³</source>
        <translation>بنانے کے پلستر کی مٹی ÷ (1 − چھاننے میں کمی)، اوپر کے 0.1 m³ تک</translation>
    </message>
    <message>
        <source>Sand, net</source>
        <translation>ریت، خالص</translation>
    </message>
    <message>
        <source>Sand to order, damp</source>
        <translation>ریت جو منگوانی ہے، گیلی</translation>
    </message>
    <message>
        <source>sand of the plaster to mix ÷ (1 − lost in sieving) × (1 + bulking), rounded up to 0.1 m³</source>
        <translation>بنانے کے پلستر کی ریت ÷ (1 − چھاننے میں کمی) × (1 + گیلی ریت کا پھولنا)، اوپر کے 0.1 m³ تک</translation>
    </message>
    <message>
        <source>Stone of the bed, net</source>
        <translation>سولنگ کا پتھر، خالص</translation>
    </message>
    <message>
        <source>volume of the stone bed</source>
        <translation>پتھر کی سولنگ کا حجم</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>پتھر جو لانا ہے، کھلا</translation>
    </message>
    <message>
        <source>bed × (1 + unevenness) × (1 + waste) × loose stone for each m³ of bed, rounded up to 0.1 m³</source>
        <translation>سولنگ × (1 + ناہمواری) × (1 + ضائع مال) × سولنگ کے ہر m³ پر کھلا پتھر، اوپر کے 0.1 m³ تک</translation>
    </message>
    <message>
        <source>Water, net</source>
        <translation>پانی، خالص</translation>
    </message>
    <message>
        <source>mixing water + curing water</source>
        <translation>مسالا بنانے کا پانی + ترائی کا پانی</translation>
    </message>
    <message>
        <source>Water to bring</source>
        <translation>پانی جو لانا ہے</translation>
    </message>
    <message>
        <source>mixing water + curing water, rounded up</source>
        <translation>مسالا بنانے کا پانی + ترائی کا پانی، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Mixing water, net</source>
        <translation>مسالا بنانے کا پانی، خالص</translation>
    </message>
    <message>
        <source>plaster, exact shells × litres for each m³</source>
        <translation>پلستر، اصل حجم × ہر m³ کے لیٹر</translation>
    </message>
    <message>
        <source>Mixing water to bring</source>
        <translation>مسالا بنانے کا پانی جو لانا ہے</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³, rounded up</source>
        <translation>بنانے کا پلستر × ہر m³ کے لیٹر، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Curing water, net</source>
        <translation>ترائی کا پانی، خالص</translation>
    </message>
    <message>
        <source>face of each coat × litres a day for each m² × its days under wet sacks</source>
        <translation>ہر کوٹ کی سطح × ہر m² کے روزانہ لیٹر × اس کے گیلے ٹاٹ کے نیچے دن</translation>
    </message>
    <message>
        <source>Curing water to bring</source>
        <translation>ترائی کا پانی جو لانا ہے</translation>
    </message>
    <message>
        <source>as net, rounded up</source>
        <translation>خالص جیسا، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>Wet sacks, net</source>
        <translation>گیلے ٹاٹ، خالص</translation>
    </message>
    <message>
        <source>largest face of a coat ÷ what a sack covers; one set is used again for each coat</source>
        <translation>کوٹ کی سب سے بڑی سطح ÷ ایک ٹاٹ سے ڈھکی سطح؛ ایک ہی سیٹ ہر کوٹ پر دوبارہ لگتا ہے</translation>
    </message>
    <message>
        <source>Wet sacks to bring</source>
        <translation>گیلے ٹاٹ جو لانے ہیں</translation>
    </message>
    <message>
        <source>net × (1 + spare), rounded up</source>
        <translation>خالص × (1 + فالتو)، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>soil for each coat</source>
        <translation>ہر کوٹ کی مٹی</translation>
    </message>
    <message>
        <source>plaster × dry to wet × soil parts ÷ all parts</source>
        <translation>پلستر × خشک سے گیلے کی نسبت × مٹی کے حصے ÷ کل حصے</translation>
    </message>
    <message>
        <source>sand for each coat</source>
        <translation>ہر کوٹ کی ریت</translation>
    </message>
    <message>
        <source>plaster × dry to wet × sand parts ÷ all parts</source>
        <translation>پلستر × خشک سے گیلے کی نسبت × ریت کے حصے ÷ کل حصے</translation>
    </message>
    <message>
        <source>cement for each coat, loose</source>
        <translation>ہر کوٹ کا سیمنٹ، کھلا</translation>
    </message>
    <message>
        <source>plaster × dry to wet × cement parts ÷ all parts</source>
        <translation>پلستر × خشک سے گیلے کی نسبت × سیمنٹ کے حصے ÷ کل حصے</translation>
    </message>
    <message>
        <source>cement for each coat</source>
        <translation>ہر کوٹ کا سیمنٹ</translation>
    </message>
    <message>
        <source>loose cement × its loose weight</source>
        <translation>کھلا سیمنٹ × اس کا کھلا وزن</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>اصل حجم</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>رقبہ × موٹائی</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>مسالا بنانے کو</translation>
    </message>
    <message>
        <source>for coat number</source>
        <translation>کوٹ نمبر کے لیے</translation>
    </message>
    <message>
        <source>the coats in order, from the earth</source>
        <translation>کوٹ ترتیب سے، مٹی کی طرف سے</translation>
    </message>
    <message>
        <source>bags of cement</source>
        <translation>سیمنٹ کی بوریاں</translation>
    </message>
    <message>
        <source>one bag, or half of one</source>
        <translation>ایک بوری، یا آدھی</translation>
    </message>
    <message>
        <source>soil parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>مٹی کے حصے × سیمنٹ ÷ اس کا کھلا وزن ÷ سیمنٹ کے حصے</translation>
    </message>
    <message>
        <source>sand parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>ریت کے حصے × سیمنٹ ÷ اس کا کھلا وزن ÷ سیمنٹ کے حصے</translation>
    </message>
    <message>
        <source>bags × weight of a bag</source>
        <translation>بوریاں × بوری کا وزن</translation>
    </message>
    <message>
        <source>plaster that it yields</source>
        <translation>اس سے بننے والا پلستر</translation>
    </message>
    <message>
        <source>soil, sand and cement, loose ÷ dry to wet</source>
        <translation>مٹی، ریت اور سیمنٹ، کھلے ÷ خشک سے گیلے کی نسبت</translation>
    </message>
    <message>
        <source>face that it covers</source>
        <translation>سطح جو اس سے ڈھکتی ہے</translation>
    </message>
    <message>
        <source>yield ÷ thickness of the coat</source>
        <translation>بننے والا پلستر ÷ کوٹ کی موٹائی</translation>
    </message>
    <message>
        <source>batches for the coat</source>
        <translation>کوٹ کے لیے گھانیاں</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield, rounded up</source>
        <translation>بنانے کا پلستر ÷ ایک گھانی سے بننے والا، اوپر کے پورے عدد تک</translation>
    </message>
    <message>
        <source>gauge boxes of soil</source>
        <translation>مٹی کی ناپ کی پیٹیاں</translation>
    </message>
    <message>
        <source>soil ÷ what the box holds</source>
        <translation>مٹی ÷ پیٹی کی گنجائش</translation>
    </message>
    <message>
        <source>gauge boxes of sand</source>
        <translation>ریت کی ناپ کی پیٹیاں</translation>
    </message>
    <message>
        <source>sand ÷ what the box holds</source>
        <translation>ریت ÷ پیٹی کی گنجائش</translation>
    </message>
    <message>
        <source>pans of soil</source>
        <translation>مٹی کی تغاریاں</translation>
    </message>
    <message>
        <source>soil ÷ what the pan holds</source>
        <translation>مٹی ÷ تغاری کی گنجائش</translation>
    </message>
    <message>
        <source>pans of sand</source>
        <translation>ریت کی تغاریاں</translation>
    </message>
    <message>
        <source>sand ÷ what the pan holds</source>
        <translation>ریت ÷ تغاری کی گنجائش</translation>
    </message>
    <message>
        <source>buckets of soil</source>
        <translation>مٹی کی بالٹیاں</translation>
    </message>
    <message>
        <source>soil ÷ what the bucket holds</source>
        <translation>مٹی ÷ بالٹی کی گنجائش</translation>
    </message>
    <message>
        <source>buckets of sand</source>
        <translation>ریت کی بالٹیاں</translation>
    </message>
    <message>
        <source>sand ÷ what the bucket holds</source>
        <translation>ریت ÷ بالٹی کی گنجائش</translation>
    </message>
    <message>
        <source>Batch with a whole bag</source>
        <translation>پوری بوری والی گھانی</translation>
    </message>
    <message>
        <source>Batch with half a bag</source>
        <translation>آدھی بوری والی گھانی</translation>
    </message>
    <message>
        <source>Numbers of the coats</source>
        <translation>کوٹوں کے نمبر</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>کل خرچ</translation>
    </message>
    <message>
        <source>materials + labour + other + carriage + contingency</source>
        <translation>سامان + مزدوری + دیگر + ڈھلائی + غیر متوقع خرچ</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>سامان</translation>
    </message>
    <message>
        <source>sum of their amounts</source>
        <translation>ان کی رقموں کا مجموعہ</translation>
    </message>
    <message>
        <source>sum of the amounts of labourers and masons</source>
        <translation>مزدوروں اور مستریوں کی رقموں کا مجموعہ</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>دیگر</translation>
    </message>
    <message>
        <source>sum of the amounts of own items</source>
        <translation>اپنی مدوں کی رقموں کا مجموعہ</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>ڈھلائی</translation>
    </message>
    <message>
        <source>sum of all trips</source>
        <translation>سب پھیروں کا مجموعہ</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>غیر متوقع خرچ</translation>
    </message>
    <message>
        <source>share of all before it</source>
        <translation>اس سے پہلے کے سب کا حصہ</translation>
    </message>
    <message>
        <source>Given by the household or group</source>
        <translation>گھرانے یا گروپ کا مفت حصہ</translation>
    </message>
    <message>
        <source>sum of the shares given</source>
        <translation>مفت حصوں کا مجموعہ</translation>
    </message>
    <message>
        <source>Paid in money</source>
        <translation>نقد ادا</translation>
    </message>
    <message>
        <source>total − given</source>
        <translation>کل − مفت حصہ</translation>
    </message>
    <message>
        <source>Cost for each m³ held</source>
        <translation>گنجائش کے ہر m³ پر خرچ</translation>
    </message>
    <message>
        <source>total ÷ held up to the overflow</source>
        <translation>کل ÷ اوور فلو تک گنجائش</translation>
    </message>
    <message>
        <source>sum of what is drawn in those months</source>
        <translation>ان مہینوں میں نکالے پانی کا مجموعہ</translation>
    </message>
    <message>
        <source>Dry months</source>
        <translation>خشک مہینے</translation>
    </message>
    <message>
        <source>mean rain below half of ET0</source>
        <translation>اوسط بارش ET0 کے آدھے سے کم</translation>
    </message>
    <message>
        <source>Cost a year of the whole tank</source>
        <translation>پوری ٹینکی کا سالانہ خرچ</translation>
    </message>
    <message>
        <source>total × capital recovery factor + upkeep of soil-cement</source>
        <translation>کل × سرمایہ واپسی کا فیکٹر + مٹی سیمنٹ کی دیکھ بھال</translation>
    </message>
    <message>
        <source>Cost a year for each m³ drawn in dry months</source>
        <translation>خشک مہینوں میں نکالے ہر m³ پر سالانہ خرچ</translation>
    </message>
    <message>
        <source>cost a year ÷ drawn in dry months</source>
        <translation>سالانہ خرچ ÷ خشک مہینوں میں نکالا</translation>
    </message>
    <message>
        <source>Quantity of each line</source>
        <translation>ہر سطر کی مقدار</translation>
    </message>
    <message>
        <source>as entered; else: what is to be ordered, person-days of labourers and masons, lengths of pipe and fence</source>
        <translation>جیسی درج ہے؛ ورنہ: جو منگوانا ہے، مزدوروں اور مستریوں کی دیہاڑیاں، پائپ اور باڑ کی لمبائیاں</translation>
    </message>
    <message>
        <source>Price of each line</source>
        <translation>ہر سطر کی قیمت</translation>
    </message>
    <message>
        <source>Amount of each line</source>
        <translation>ہر سطر کی رقم</translation>
    </message>
    <message>
        <source>quantity × price</source>
        <translation>مقدار × قیمت</translation>
    </message>
    <message>
        <source>Given, of each line</source>
        <translation>ہر سطر کا مفت حصہ</translation>
    </message>
    <message>
        <source>amount × share given</source>
        <translation>رقم × مفت دیا حصہ</translation>
    </message>
    <message>
        <source>Paid, of each line</source>
        <translation>ہر سطر کا ادا</translation>
    </message>
    <message>
        <source>amount − given</source>
        <translation>رقم − مفت حصہ</translation>
    </message>
    <message>
        <source>Weight to carry</source>
        <translation>ڈھونے کا وزن</translation>
    </message>
    <message>
        <source>quantity × weight of one, as entered or usual</source>
        <translation>مقدار × ایک کا وزن، جیسا درج ہے یا عام</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>بوجھ</translation>
    </message>
    <message>
        <source>weight ÷ load, rounded up; bags and sacks carried whole</source>
        <translation>وزن ÷ ایک بوجھ، اوپر کے پورے عدد تک؛ بوریاں اور ٹاٹ سالم ڈھوئے جاتے ہیں</translation>
    </message>
    <message>
        <source>Loads for one piece</source>
        <translation>ایک عدد کے بوجھ</translation>
    </message>
    <message>
        <source>weight of one ÷ load, rounded up: heavier pieces are split</source>
        <translation>ایک کا وزن ÷ ایک بوجھ، اوپر کے پورے عدد تک: بھاری عدد حصوں میں کیے جاتے ہیں</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>ایک ڈھونے والے کے دن</translation>
    </message>
    <message>
        <source>loads ÷ trips a day</source>
        <translation>بوجھ ÷ روزانہ پھیرے</translation>
    </message>
    <message>
        <source>Cost of the trips</source>
        <translation>پھیروں کا خرچ</translation>
    </message>
    <message>
        <source>loads × price of a trip</source>
        <translation>بوجھ × ایک پھیرے کی قیمت</translation>
    </message>
    <message>
        <source>Days on which money is needed</source>
        <translation>دن جن پر رقم چاہیے</translation>
    </message>
    <message>
        <source>goods: start of the first task that uses them; wages: days of each task</source>
        <translation>سامان: اسے استعمال کرنے والے پہلے کام کا شروع؛ مزدوری: ہر کام کے دن</translation>
    </message>
    <message>
        <source>Money for goods by day</source>
        <translation>سامان کی رقم، دن وار</translation>
    </message>
    <message>
        <source>cash of goods and their carriage; own items on the first day</source>
        <translation>سامان اور اس کی ڈھلائی کا نقد؛ اپنی مدیں پہلے دن</translation>
    </message>
    <message>
        <source>Money for wages by day</source>
        <translation>مزدوری کی رقم، دن وار</translation>
    </message>
    <message>
        <source>cash of each task&apos;s person-days, spread evenly over its days</source>
        <translation>ہر کام کی دیہاڑیوں کا نقد، اس کے دنوں پر برابر بانٹا ہوا</translation>
    </message>
    <message>
        <source>Money so far</source>
        <translation>اب تک کی رقم</translation>
    </message>
    <message>
        <source>sum up to and with the day, without contingency</source>
        <translation>اس دن تک کا مجموعہ، وہ دن بھی ملا کر، غیر متوقع خرچ کے بغیر</translation>
    </message>
    <message>
        <source>Price of each lining alone</source>
        <translation>ہر لائننگ کی اکیلی قیمت</translation>
    </message>
    <message>
        <source>offer × 1, face or volume held; soil-cement without an offer: its materials, carriage and person-days × (1 + contingency)</source>
        <translation>بتائی گئی قیمت × 1، سطح یا گنجائش؛ مٹی سیمنٹ کی قیمت نہ بتائی گئی ہو تو: اس کا سامان، ڈھلائی اور دیہاڑیاں × (1 + غیر متوقع خرچ)</translation>
    </message>
    <message>
        <source>Digging and platform for it</source>
        <translation>اس کے لیے کھدائی اور پلیٹ فارم</translation>
    </message>
    <message>
        <source>person-days of topsoil, platform, pit, spoil and trimming × price of a labourer × (1 + contingency); none for a moulded tank</source>
        <translation>اوپر کی زرخیز مٹی، پلیٹ فارم، گڑھے، کھدائی کی مٹی اور چھیل کر برابر کرنے کی دیہاڑیاں × مزدور کی قیمت × (1 + غیر متوقع خرچ)؛ پلاسٹک کی تیار ٹینکی پر کچھ نہیں</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>سرمایہ</translation>
    </message>
    <message>
        <source>price + digging and platform</source>
        <translation>قیمت + کھدائی اور پلیٹ فارم</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>عمر</translation>
    </message>
    <message>
        <source>Capital recovery factor</source>
        <translation>سرمایہ واپسی کا فیکٹر</translation>
    </message>
    <message>
        <source>i (1 + i)^n ÷ ((1 + i)^n − 1); 1 ÷ n without interest</source>
        <translation>i (1 + i)^n ÷ ((1 + i)^n − 1)؛ سود نہ ہو تو 1 ÷ n</translation>
    </message>
    <message>
        <source>share of the price</source>
        <translation>قیمت کا حصہ</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>سالانہ خرچ</translation>
    </message>
    <message>
        <source>capital × factor + upkeep</source>
        <translation>سرمایہ × فیکٹر + دیکھ بھال</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>گنجائش کے ہر m³ پر سالانہ خرچ</translation>
    </message>
    <message>
        <source>cost a year ÷ held up to the overflow</source>
        <translation>سالانہ خرچ ÷ اوور فلو تک گنجائش</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>قرعے</translation>
    </message>
    <message>
        <source>With every input as it stands</source>
        <translation>ہر درج چیز جیسی ہے ویسی</translation>
    </message>
    <message>
        <source>as in the plan</source>
        <translation>جیسا منصوبے میں ہے</translation>
    </message>
    <message>
        <source>One draw in ten below (P10)</source>
        <translation>دس میں سے ایک قرعہ اس سے کم (P10)</translation>
    </message>
    <message>
        <source>each input triangular between low, 0 and high about its value; draws sorted, least that a tenth does not exceed</source>
        <translation>ہر درج چیز اپنی قدر کے گرد کم، 0 اور زیادہ کے بیچ تکونی بانٹ سے؛ قرعے ترتیب سے، وہ سب سے کم جس سے دسواں حصہ زیادہ نہ ہو</translation>
    </message>
    <message>
        <source>Middle of the draws (P50)</source>
        <translation>قرعوں کی درمیانی قدر (P50)</translation>
    </message>
    <message>
        <source>draws sorted, least that half does not exceed</source>
        <translation>قرعے ترتیب سے، وہ سب سے کم جس سے آدھے زیادہ نہ ہوں</translation>
    </message>
    <message>
        <source>Nine draws in ten below (P90)</source>
        <translation>دس میں سے نو قرعے اس سے کم (P90)</translation>
    </message>
    <message>
        <source>draws sorted, least that nine tenths do not exceed</source>
        <translation>قرعے ترتیب سے، وہ سب سے کم جس سے دس میں سے نو حصے زیادہ نہ ہوں</translation>
    </message>
    <message>
        <source>Mean of the draws</source>
        <translation>قرعوں کی اوسط</translation>
    </message>
    <message>
        <source>sum ÷ draws</source>
        <translation>مجموعہ ÷ قرعے</translation>
    </message>
    <message>
        <source>Least of the draws</source>
        <translation>قرعوں میں سب سے کم</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>سب سے کم</translation>
    </message>
    <message>
        <source>Most of the draws</source>
        <translation>قرعوں میں سب سے زیادہ</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>سب سے زیادہ</translation>
    </message>
    <message>
        <source>Share of the spread that each input drives</source>
        <translation>فرق کا حصہ جو ہر درج چیز سے آتا ہے</translation>
    </message>
    <message>
        <source>squared correlation ÷ sum of the squares</source>
        <translation>تعلق کا مربع ÷ مربعوں کا مجموعہ</translation>
    </message>
    <message>
        <source>Correlation with each input</source>
        <translation>ہر درج چیز سے تعلق (correlation)</translation>
    </message>
    <message>
        <source>Pearson&apos;s, over all draws</source>
        <translation>Pearson کا، سب قرعوں پر</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>گنجائش، اوور فلو تک بھری</translation>
    </message>
    <message>
        <source>planned like this tank</source>
        <translation>اس ٹینکی کی طرح منصوبہ بنا کر</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>قابلِ استعمال پانی</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>گڑھا جو کھودنا ہے</translation>
    </message>
    <message>
        <source>Clear length at the floor</source>
        <translation>فرش پر اندر کی لمبائی</translation>
    </message>
    <message>
        <source>as the option has it</source>
        <translation>جیسا متبادل میں ہے</translation>
    </message>
    <message>
        <source>Clear width at the floor</source>
        <translation>فرش پر اندر کی چوڑائی</translation>
    </message>
    <message>
        <source>Clear depth</source>
        <translation>اندر کی گہرائی</translation>
    </message>
    <message>
        <source>Sand to order</source>
        <translation>ریت جو منگوانی ہے</translation>
    </message>
    <message>
        <source>Stone to bring</source>
        <translation>پتھر جو لانا ہے</translation>
    </message>
    <message>
        <source>largest need of the coats</source>
        <translation>کوٹوں کی سب سے بڑی ضرورت</translation>
    </message>
    <message>
        <source>earliest start of a task</source>
        <translation>کسی کام کا سب سے جلد شروع</translation>
    </message>
    <message>
        <source>latest end of a task, planting left out</source>
        <translation>کسی کام کا سب سے دیر کا ختم، بوائی چھوڑ کر</translation>
    </message>
    <message>
        <source>planned like this tank; none while prices are missing</source>
        <translation>اس ٹینکی کی طرح منصوبہ بنا کر؛ قیمتیں نہ ہوں تو کچھ نہیں</translation>
    </message>
    <message>
        <source>cost ÷ held up to the overflow</source>
        <translation>خرچ ÷ اوور فلو تک گنجائش</translation>
    </message>
    <message>
        <source>same weather years</source>
        <translation>وہی موسمی سال</translation>
    </message>
    <message>
        <source>Days short of water in a mean year</source>
        <translation>اوسط سال میں کم پانی کے دن</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>گن کر</translation>
    </message>
    <message>
        <source>points of the line, level distance</source>
        <translation>پائپ لائن کے نقطے، ہموار فاصلہ</translation>
    </message>
    <message>
        <source>distances of the way from its first point; field line over the rim: inlet, crest, then the way</source>
        <translation>پائپ کے راستے کے فاصلے اس کے پہلے نقطے سے؛ اوپری کنارے کے اوپر سے جانے والی کھیت کی پائپ لائن: داخلہ، چوٹی، پھر راستہ</translation>
    </message>
    <message>
        <source>points of the line, over the finished floor</source>
        <translation>پائپ لائن کے نقطے، تیار فرش سے اونچائی</translation>
    </message>
    <message>
        <source>rim + height over the rim; inlet 2 cm under the dead level, crest over the rim</source>
        <translation>اوپری کنارہ + اس سے اونچائی؛ داخلہ ڈیڈ لیول سے 2 cm نیچے، چوٹی اوپری کنارے سے اوپر</translation>
    </message>
    <message>
        <source>losses of the fittings, K</source>
        <translation>فٹنگ کے نقصان، K</translation>
    </message>
    <message>
        <source>number × K of one: screen 1 (own figure), sharp entrance 0.5, elbow 0.9, gate valve 0.15</source>
        <translation>تعداد × ایک کا K: جالی 1 (اپنا عدد)، تیز کنارے والا داخلہ 0.5، ایلبو 0.9، گیٹ والو 0.15</translation>
    </message>
    <message>
        <source>where the fittings sit</source>
        <translation>فٹنگ کہاں لگی ہیں</translation>
    </message>
    <message>
        <source>at the inlet; elbows of the field line half at the crest, half at the end</source>
        <translation>داخلے پر؛ کھیت کی پائپ لائن کے آدھے ایلبو چوٹی پر، آدھے سرے پر</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>پائپ کا اندرونی قطر</translation>
    </message>
    <message>
        <source>measured, else outside diameter − 2 × wall</source>
        <translation>ناپا ہوا، ورنہ بیرونی قطر − 2 × دیوار</translation>
    </message>
    <message>
        <source>pressure class that holds</source>
        <translation>پریشر کلاس جو قائم رہے</translation>
    </message>
    <message>
        <source>class × share for warm water</source>
        <translation>کلاس × گرم پانی کا حصہ</translation>
    </message>
    <message>
        <source>share of the class that holds in warm water</source>
        <translation>کلاس کا حصہ جو گرم پانی میں قائم رہے</translation>
    </message>
    <message>
        <source>1 up to 20 °C, 0.87 at 30 °C, 0.74 at 40 °C, straight between</source>
        <translation>20 °C تک 1، 30 °C پر 0.87، 40 °C پر 0.74، بیچ میں سیدھی لکیر</translation>
    </message>
    <message>
        <source>flow wanted</source>
        <translation>مطلوبہ بہاؤ</translation>
    </message>
    <message>
        <source>as entered; field line: outlets × usual flow of one</source>
        <translation>جیسا درج ہے؛ کھیت کی پائپ لائن: نکاس × ایک کا عام بہاؤ</translation>
    </message>
    <message>
        <source>water over the inlet, tank full</source>
        <translation>داخلے پر پانی کا لیول، ٹینکی بھری</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: overflow level</source>
        <translation>ذریعے کی پائپ لائن: داخلہ + اس سے اوپر پانی؛ کھیت کی پائپ لائن: اوور فلو کا لیول</translation>
    </message>
    <message>
        <source>water over the inlet, tank nearly empty</source>
        <translation>داخلے پر پانی کا لیول، ٹینکی تقریباً خالی</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: dead level</source>
        <translation>ذریعے کی پائپ لائن: داخلہ + اس سے اوپر پانی؛ کھیت کی پائپ لائن: ڈیڈ لیول</translation>
    </message>
    <message>
        <source>Field line</source>
        <translation>کھیت کی پائپ لائن</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>بیرونی قطر</translation>
    </message>
    <message>
        <source>size of the table</source>
        <translation>جدول کا سائز</translation>
    </message>
    <message>
        <source>least wall</source>
        <translation>دیوار کی کم سے کم موٹائی</translation>
    </message>
    <message>
        <source>bore with the least wall</source>
        <translation>سب سے پتلی دیوار پر اندرونی قطر</translation>
    </message>
    <message>
        <source>outside diameter − 2 × wall</source>
        <translation>بیرونی قطر − 2 × دیوار</translation>
    </message>
    <message>
        <source>outside diameter over wall</source>
        <translation>بیرونی قطر بٹا دیوار</translation>
    </message>
    <message>
        <source>pressure class</source>
        <translation>پریشر کلاس</translation>
    </message>
    <message>
        <source>size of the table: 20 × strength ÷ (1.25 × (SDR − 1)), rounded to a class</source>
        <translation>جدول کا سائز: 20 × مضبوطی ÷ (1.25 × (SDR − 1))، کلاس تک گول کیا</translation>
    </message>
    <message>
        <source>Field line, pipe</source>
        <translation>کھیت کی پائپ لائن، پائپ</translation>
    </message>
    <message>
        <source>Field line, smallest pipe that would do</source>
        <translation>کھیت کی پائپ لائن، سب سے چھوٹا پائپ جو کافی ہو</translation>
    </message>
    <message>
        <source>its flow</source>
        <translation>اس کا بہاؤ</translation>
    </message>
    <message>
        <source>like the flow of the line, where that is less</source>
        <translation>پائپ لائن کے بہاؤ کی طرح، جب وہ کم ہو</translation>
    </message>
    <message>
        <source>Field line, tank full</source>
        <translation>کھیت کی پائپ لائن، ٹینکی بھری</translation>
    </message>
    <message>
        <source>Field line, tank nearly empty</source>
        <translation>کھیت کی پائپ لائن، ٹینکی تقریباً خالی</translation>
    </message>
    <message>
        <source>air pressure less vapour</source>
        <translation>ہوا کا دباؤ، بھاپ کا دباؤ نکال کر</translation>
    </message>
    <message>
        <source>air pressure at that height − vapour pressure, as water column</source>
        <translation>اس بلندی پر ہوا کا دباؤ − بھاپ کا دباؤ، پانی کی اونچائی میں</translation>
    </message>
    <message>
        <source>most lift</source>
        <translation>زیادہ سے زیادہ چڑھاؤ</translation>
    </message>
    <message>
        <source>air pressure less vapour − reserve of 2 m</source>
        <translation>ہوا کا دباؤ، بھاپ کا دباؤ نکال کر − 2 m ریزرو</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>چڑھاؤ</translation>
    </message>
    <message>
        <source>crest − water</source>
        <translation>چوٹی − پانی</translation>
    </message>
    <message>
        <source>lift left</source>
        <translation>بچا ہوا چڑھاؤ</translation>
    </message>
    <message>
        <source>most lift − lift − loss up to the crest</source>
        <translation>زیادہ سے زیادہ چڑھاؤ − چڑھاؤ − چوٹی تک کا نقصان</translation>
    </message>
    <message>
        <source>draws down to, at a trickle</source>
        <translation>پتلی دھار پر یہاں تک پانی نکالتا ہے</translation>
    </message>
    <message>
        <source>highest of inlet, outlet and crest − most lift</source>
        <translation>ان میں سب سے اونچا: داخلہ، نکاس، اور چوٹی − زیادہ سے زیادہ چڑھاؤ</translation>
    </message>
    <message>
        <source>water that fills the pipe</source>
        <translation>پائپ بھرنے والا پانی</translation>
    </message>
    <message>
        <source>π D² ÷ 4 × length</source>
        <translation>π D² ÷ 4 × لمبائی</translation>
    </message>
    <message>
        <source>flow, valve open</source>
        <translation>بہاؤ، والو کھلا</translation>
    </message>
    <message>
        <source>found so that water − outlet = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>ایسے نکالا کہ پانی − نکاس = (1 + K کا مجموعہ + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>loss up to the crest</source>
        <translation>چوٹی تک کا نقصان</translation>
    </message>
    <message>
        <source>(1 + K up to the crest + f L ÷ D) V² ÷ 2g</source>
        <translation>(1 + چوٹی تک K + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure at the crest</source>
        <translation>چوٹی پر دباؤ</translation>
    </message>
    <message>
        <source>− lift − loss up to the crest</source>
        <translation>− چڑھاؤ − چوٹی تک کا نقصان</translation>
    </message>
    <message>
        <source>speed that carries air down</source>
        <translation>رفتار جو ہوا کو نیچے لے جائے</translation>
    </message>
    <message>
        <source>√(g D) × (0.825 + 0.25 √(sine of the fall))</source>
        <translation>√(g D) × (0.825 + 0.25 √(اترائی کا sin))</translation>
    </message>
    <message>
        <source>most flow that the crest allows</source>
        <translation>زیادہ سے زیادہ بہاؤ جو چوٹی چلنے دے</translation>
    </message>
    <message>
        <source>flow whose loss up to the crest uses up the lift</source>
        <translation>بہاؤ جس کا چوٹی تک کا نقصان سارا چڑھاؤ کھا جائے</translation>
    </message>
    <message>
        <source>Siphon, tank full</source>
        <translation>سائفن، ٹینکی بھری</translation>
    </message>
    <message>
        <source>Siphon, tank nearly empty</source>
        <translation>سائفن، ٹینکی تقریباً خالی</translation>
    </message>
    <message>
        <source>of the even slope as entered, or of the plane laid through the survey under the platform</source>
        <translation>درج ایک جیسی ڈھلان کی، یا پلیٹ فارم کے نیچے سروے سے گزاری گئی سیدھی سطح کی</translation>
    </message>
    <message>
        <source>Downhill, from north by east</source>
        <translation>ڈھلان کا رخ، شمال سے مشرق کو گھوم کر</translation>
    </message>
    <message>
        <source>as entered, or of that plane</source>
        <translation>جیسا درج ہے، یا اس سیدھی سطح کا</translation>
    </message>
    <message>
        <source>outline of the pit at the ground with rim collar and walkway all round</source>
        <translation>زمین پر گڑھے کا خاکہ، کنارے کے کالر اور چاروں طرف چلنے کی پٹی کے ساتھ</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle of the tank</source>
        <translation>ٹینکی کے بیچ میں زمین سے پلیٹ فارم کی اونچائی</translation>
    </message>
    <message>
        <source>as wished: whole pit in natural ground, cut and fill balanced, or as entered</source>
        <translation>خواہش کے مطابق: پورا گڑھا قدرتی زمین میں، کٹائی اور بھرائی برابر، یا جیسا درج ہے</translation>
    </message>
    <message>
        <source>Ground to be brought for the fill</source>
        <translation>بھرائی کے لیے لانے کی مٹی</translation>
    </message>
    <message>
        <source>fill ÷ (rammed volume of 1 m³ dug) − pit − cut, where that is over 0</source>
        <translation>بھرائی ÷ (1 m³ کھودی مٹی کا کوٹا ہوا حجم) − گڑھا − کٹائی، جہاں یہ 0 سے زیادہ ہو</translation>
    </message>
    <message>
        <source>Natural ground over the pit, least</source>
        <translation>گڑھے سے اوپر قدرتی زمین، کم سے کم</translation>
    </message>
    <message>
        <source>natural ground less topsoil − floor or wall of the pit, where that is least; below 0 it stands on fill</source>
        <translation>قدرتی زمین، اوپر کی زرخیز مٹی نکال کر − گڑھے کا تلا یا دیوار، جہاں یہ سب سے کم ہو؛ 0 سے کم ہو تو گڑھا بھرائی پر ہے</translation>
    </message>
    <message>
        <source>Each way to find the level: over the ground at the middle</source>
        <translation>لیول نکالنے کا ہر طریقہ: بیچ میں زمین سے اونچائی</translation>
    </message>
    <message>
        <source>highest with the whole pit in natural ground; (cut × rammed volume of 1 m³) = fill; as entered</source>
        <translation>سب سے اونچا جس پر پورا گڑھا قدرتی زمین میں ہو؛ (کٹائی × 1 m³ کھودی مٹی کا کوٹا ہوا حجم) = بھرائی؛ جیسا درج ہے</translation>
    </message>
    <message>
        <source>Each way: cut</source>
        <translation>ہر طریقہ: کٹائی</translation>
    </message>
    <message>
        <source>like the cut for the platform</source>
        <translation>پلیٹ فارم کی کٹائی کی طرح</translation>
    </message>
    <message>
        <source>Each way: fill</source>
        <translation>ہر طریقہ: بھرائی</translation>
    </message>
    <message>
        <source>like the fill for the platform</source>
        <translation>پلیٹ فارم کی بھرائی کی طرح</translation>
    </message>
    <message>
        <source>Each way: natural ground over the pit, least</source>
        <translation>ہر طریقہ: گڑھے سے اوپر قدرتی زمین، کم سے کم</translation>
    </message>
    <message>
        <source>like the cover of the pit</source>
        <translation>گڑھے سے اوپر زمین کی طرح</translation>
    </message>
    <message>
        <source>Platform pegs: east</source>
        <translation>پلیٹ فارم کی کھونٹیاں: مشرق کو</translation>
    </message>
    <message>
        <source>corner of the platform, or where cut and fill come out of the ground on the line out from it</source>
        <translation>پلیٹ فارم کا کونا، یا جہاں کونے سے باہر جاتی لکیر پر کٹائی اور بھرائی زمین سے نکلتی ہیں</translation>
    </message>
    <message>
        <source>Platform pegs: north</source>
        <translation>پلیٹ فارم کی کھونٹیاں: شمال کو</translation>
    </message>
    <message>
        <source>Platform pegs: level</source>
        <translation>پلیٹ فارم کی کھونٹیاں: لیول</translation>
    </message>
    <message>
        <source>of the platform; out from it of the ground</source>
        <translation>پلیٹ فارم کا؛ اس سے باہر زمین کا</translation>
    </message>
    <message>
        <source>Platform pegs: natural ground</source>
        <translation>پلیٹ فارم کی کھونٹیاں: قدرتی زمین</translation>
    </message>
    <message>
        <source>height of the survey&apos;s triangle, or of the slope, at the peg</source>
        <translation>کھونٹی پر سروے کی تکون، یا ڈھلان، کی اونچائی</translation>
    </message>
    <message>
        <source>Platform pegs: dig, below 0 fill</source>
        <translation>پلیٹ فارم کی کھونٹیاں: کھدائی، 0 سے کم ہو تو بھرائی</translation>
    </message>
    <message>
        <source>ground − finished surface</source>
        <translation>زمین − تیار سطح</translation>
    </message>
    <message>
        <source>Platform pegs: from the corner</source>
        <translation>پلیٹ فارم کی کھونٹیاں: کونے سے</translation>
    </message>
    <message>
        <source>level distance</source>
        <translation>ہموار فاصلہ</translation>
    </message>
    <message>
        <source>Platform pegs: over the platform</source>
        <translation>پلیٹ فارم کی کھونٹیاں: پلیٹ فارم سے اوپر</translation>
    </message>
    <message>
        <source>peg − platform</source>
        <translation>کھونٹی − پلیٹ فارم</translation>
    </message>
    <message>
        <source>Heap of spoil, loose</source>
        <translation>مٹی کا ڈھیر، کھلی مٹی</translation>
    </message>
    <message>
        <source>spoil as it lies × (1 + swell)</source>
        <translation>کھدائی کی مٹی ٹھوس زمین کے ناپ سے × (1 + پھولاؤ)</translation>
    </message>
    <message>
        <source>Height of the heap</source>
        <translation>ڈھیر کی اونچائی</translation>
    </message>
    <message>
        <source>cone with sides at 35°, cut off level at 1.5 m where it would be higher</source>
        <translation>مخروط جس کے پہلو 35° پر ہوں، اس سے اونچا ہو تو 1.5 m پر ہموار کٹا ہوا</translation>
    </message>
    <message>
        <source>Radius of the heap&apos;s foot</source>
        <translation>ڈھیر کی جڑ کا رداس</translation>
    </message>
    <message>
        <source>cone: height ÷ tan 35°; cut off: from the volume</source>
        <translation>مخروط: اونچائی ÷ tan 35°؛ کٹا ہوا: حجم سے</translation>
    </message>
    <message>
        <source>Direction of the heap, from north by east</source>
        <translation>ڈھیر کی سمت، شمال سے مشرق کو گھوم کر</translation>
    </message>
    <message>
        <source>as entered; else across the fall, east on level ground</source>
        <translation>جیسی درج ہے؛ ورنہ ڈھلوان کے آڑے، ہموار زمین پر مشرق</translation>
    </message>
    <message>
        <source>Foot of the heap from the pit edge</source>
        <translation>ڈھیر کی جڑ، گڑھے کے کنارے سے</translation>
    </message>
    <message>
        <source>at least 0.6 m, and clear of platform, cut and fill</source>
        <translation>کم از کم 0.6 m، اور پلیٹ فارم، کٹائی اور بھرائی سے پرے</translation>
    </message>
    <message>
        <source>Middle of the heap, east</source>
        <translation>ڈھیر کا درمیان، مشرق کو</translation>
    </message>
    <message>
        <source>in its direction, as near as its foot may come</source>
        <translation>اپنی سمت میں، جتنا قریب اس کی جڑ آ سکتی ہے</translation>
    </message>
    <message>
        <source>Middle of the heap, north</source>
        <translation>ڈھیر کا درمیان، شمال کو</translation>
    </message>
    <message>
        <source>Face of the pit wall, from the level</source>
        <translation>گڑھے کی دیوار کی سطح، ہموار سے</translation>
    </message>
    <message>
        <source>90° − arctan of the batter</source>
        <translation>90° − سلامی کا arctan</translation>
    </message>
    <message>
        <source>Pit depth</source>
        <translation>گڑھے کی گہرائی</translation>
    </message>
    <message>
        <source>clear depth + all coats + stone bed</source>
        <translation>اندر کی گہرائی + سب کوٹ + پتھر کی سولنگ</translation>
    </message>
    <message>
        <source>Factor wanted for the cut</source>
        <translation>کٹائی کا مطلوبہ فیکٹر</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>مقرر</translation>
    </message>
    <message>
        <source>Factor wanted for the downhill side</source>
        <translation>ڈھلان کی طرف کا مطلوبہ فیکٹر</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>چپکاؤ (cohesion) c</translation>
    </message>
    <message>
        <source>table by kind of soil</source>
        <translation>مٹی کی قسم کے جدول سے</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>رگڑ φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>فی حجم وزن γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut that just stands</source>
        <translation>ساہول میں کٹائی کی اونچائی جو بمشکل کھڑی رہے</translation>
    </message>
    <message>
        <source>4 c ÷ γ × tan(45° + φ ÷ 2)</source>
        <translation>4 c ÷ γ × tan(45° + φ ÷ 2)</translation>
    </message>
    <message>
        <source>Height at which this face just stands</source>
        <translation>اونچائی جس پر یہ سطح بمشکل کھڑی رہے</translation>
    </message>
    <message>
        <source>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</source>
        <translation>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</translation>
    </message>
    <message>
        <source>Height of this face with the factor wanted</source>
        <translation>اس سطح کی اونچائی، مطلوبہ فیکٹر کے ساتھ</translation>
    </message>
    <message>
        <source>the same with c ÷ F and tan φ ÷ F</source>
        <translation>وہی، c ÷ F اور tan φ ÷ F کے ساتھ</translation>
    </message>
    <message>
        <source>Stability number N</source>
        <translation>پائیداری کا نمبر N</translation>
    </message>
    <message>
        <source>table by face and friction, straight between</source>
        <translation>سطح اور رگڑ کے جدول سے، بیچ میں سیدھی لکیر</translation>
    </message>
    <message>
        <source>Height of this face by it</source>
        <translation>اس نمبر سے اس سطح کی اونچائی</translation>
    </message>
    <message>
        <source>c ÷ (γ N)</source>
        <translation>c ÷ (γ N)</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>اس سے اس کٹائی کا فیکٹر</translation>
    </message>
    <message>
        <source>F for which c ÷ F and tan φ ÷ F just hold the pit&apos;s depth</source>
        <translation>وہ F جس پر c ÷ F اور tan φ ÷ F گڑھے کی گہرائی کو بمشکل سنبھالیں</translation>
    </message>
    <message>
        <source>Lowest factor of the downhill side</source>
        <translation>ڈھلان کی طرف کا سب سے کم فیکٹر</translation>
    </message>
    <message>
        <source>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; circle with the lowest of all tried, low strengths</source>
        <translation>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R)، m = cos α + sin α tan φ ÷ F؛ سب آزمائے گئے دائروں میں سب سے کم والا، کم مضبوطی سے</translation>
    </message>
    <message>
        <source>Its circle: middle, downhill from the tank</source>
        <translation>اس کا دائرہ: مرکز، ٹینکی سے ڈھلان کی طرف نیچے</translation>
    </message>
    <message>
        <source>place that the search found</source>
        <translation>جگہ جو تلاش میں ملی</translation>
    </message>
    <message>
        <source>Its circle: middle, over the finished floor</source>
        <translation>اس کا دائرہ: مرکز، تیار فرش سے اونچائی</translation>
    </message>
    <message>
        <source>Its circle: radius</source>
        <translation>اس کا دائرہ: رداس</translation>
    </message>
    <message>
        <source>size that the search found</source>
        <translation>سائز جو تلاش میں ملا</translation>
    </message>
    <message>
        <source>Slip from, downhill from the middle of the tank</source>
        <translation>پھسلن یہاں سے، ٹینکی کے درمیان سے ڈھلان کی طرف نیچے</translation>
    </message>
    <message>
        <source>where the circle meets the ground above</source>
        <translation>جہاں دائرہ اوپر زمین سے ملتا ہے</translation>
    </message>
    <message>
        <source>Slip to, downhill from the middle of the tank</source>
        <translation>پھسلن یہاں تک، ٹینکی کے درمیان سے ڈھلان کی طرف نیچے</translation>
    </message>
    <message>
        <source>where the circle meets the ground below</source>
        <translation>جہاں دائرہ نیچے زمین سے ملتا ہے</translation>
    </message>
    <message>
        <source>Circles tried</source>
        <translation>آزمائے گئے دائرے</translation>
    </message>
    <message>
        <source>a coarse grid of ends and depths, then ever smaller steps from the best</source>
        <translation>سروں اور گہرائیوں کا موٹا جال، پھر سب سے اچھے سے چھوٹے سے چھوٹے قدم</translation>
    </message>
    <message>
        <source>Crack behind the slip</source>
        <translation>پھسلن کے پیچھے دراڑ</translation>
    </message>
    <message>
        <source>as deep as the pit, no deeper than the ground falls away; the lower of the factors with and without counts</source>
        <translation>گڑھے جتنا گہرا، مگر زمین جتنی نیچے اترتی ہے اس سے گہرا نہیں؛ ساتھ والے اور بغیر والے فیکٹروں میں سے کم والا گنا جاتا ہے</translation>
    </message>
    <message>
        <source>Months with readings</source>
        <translation>ریڈنگ والے مہینے</translation>
    </message>
    <message>
        <source>Readings of the month</source>
        <translation>مہینے کی ریڈنگ</translation>
    </message>
    <message>
        <source>Flow, middle of the readings</source>
        <translation>بہاؤ، ریڈنگ کی درمیانی قدر</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60; the middle one, or mean of the two middle ones</source>
        <translation>برتن ÷ سیکنڈ × 60؛ درمیانی، یا دو درمیانیوں کی اوسط</translation>
    </message>
    <message>
        <source>Flow, smallest reading</source>
        <translation>بہاؤ، سب سے کم ریڈنگ</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60</source>
        <translation>برتن ÷ سیکنڈ × 60</translation>
    </message>
    <message>
        <source>Flow, largest reading</source>
        <translation>بہاؤ، سب سے زیادہ ریڈنگ</translation>
    </message>
    <message>
        <source>Spread of the readings</source>
        <translation>ریڈنگ کا فرق</translation>
    </message>
    <message>
        <source>(largest − smallest) ÷ middle, readings far off left out</source>
        <translation>(سب سے زیادہ − سب سے کم) ÷ درمیانی، باقیوں سے بہت الگ ریڈنگ چھوڑ کر</translation>
    </message>
    <message>
        <source>Readings far off, by number</source>
        <translation>باقیوں سے بہت الگ ریڈنگ، نمبر سے</translation>
    </message>
    <message>
        <source>0.6745 × distance from the middle ÷ middle of those distances over 3.5; counted from 0</source>
        <translation>0.6745 × درمیانی سے فاصلہ ÷ ان فاصلوں کی درمیانی قدر، 3.5 سے زیادہ؛ 0 سے گن کر</translation>
    </message>
    <message>
        <source>Readings too quick, by number</source>
        <translation>بہت تیز ریڈنگ، نمبر سے</translation>
    </message>
    <message>
        <source>vessel full in under 3 s; counted from 0</source>
        <translation>برتن 3 s سے کم میں بھرا؛ 0 سے گن کر</translation>
    </message>
    <message>
        <source>Height of the place over the sea</source>
        <translation>جگہ کی سطح سمندر سے بلندی</translation>
    </message>
    <message>
        <source>as entered; 0 when it is not known</source>
        <translation>جیسی درج ہے؛ معلوم نہ ہو تو 0</translation>
    </message>
    <message>
        <source>Rim over the finished floor</source>
        <translation>تیار فرش سے اوپری کنارے کی اونچائی</translation>
    </message>
    <message>
        <source>Overflow over the finished floor</source>
        <translation>تیار فرش سے اوور فلو کی اونچائی</translation>
    </message>
    <message>
        <source>depth − freeboard</source>
        <translation>گہرائی − فری بورڈ</translation>
    </message>
    <message>
        <source>Source line fills the empty tank in</source>
        <translation>ذریعے کی پائپ لائن خالی ٹینکی اتنے وقت میں بھرے</translation>
    </message>
    <message>
        <source>held up to the overflow ÷ flow with the tank full, nothing drawn</source>
        <translation>اوور فلو تک گنجائش ÷ بھری ٹینکی پر بہاؤ، کچھ نکالے بغیر</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank full</source>
        <translation>پانی جس میں نکاس ڈوبا ہے، ٹینکی بھری</translation>
    </message>
    <message>
        <source>overflow level where the end lies below it</source>
        <translation>اوور فلو کا لیول، جہاں سرا اس سے نیچے ہو</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank nearly empty</source>
        <translation>پانی جس میں نکاس ڈوبا ہے، ٹینکی تقریباً خالی</translation>
    </message>
    <message>
        <source>dead level where the end lies below it</source>
        <translation>ڈیڈ لیول، جہاں سرا اس سے نیچے ہو</translation>
    </message>
    <message>
        <source>Source line</source>
        <translation>ذریعے کی پائپ لائن</translation>
    </message>
    <message>
        <source>Source line, pipe</source>
        <translation>ذریعے کی پائپ لائن، پائپ</translation>
    </message>
    <message>
        <source>Source line, smallest pipe that would do</source>
        <translation>ذریعے کی پائپ لائن، سب سے چھوٹا پائپ جو کافی ہو</translation>
    </message>
    <message>
        <source>Source line, tank full</source>
        <translation>ذریعے کی پائپ لائن، ٹینکی بھری</translation>
    </message>
    <message>
        <source>Source line, tank nearly empty</source>
        <translation>ذریعے کی پائپ لائن، ٹینکی تقریباً خالی</translation>
    </message>
    <message>
        <source>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3 less the cove, with h up to the overflow; A floor, P its edge, b batter, C corner coefficient</source>
        <translation>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3، گولا نکال کر، h اوور فلو تک؛ A فرش، P اس کا گھیرا، b سلامی، C کونوں کا فیکٹر</translation>
    </message>
    <message>
        <source>Holds, filled to the rim</source>
        <translation>گنجائش، اوپری کنارے تک بھری</translation>
    </message>
    <message>
        <source>V(h) as above, with h up to the rim</source>
        <translation>V(h) اوپر جیسا، h اوپری کنارے تک</translation>
    </message>
    <message>
        <source>Cannot be drawn</source>
        <translation>جو نکالا نہیں جا سکتا</translation>
    </message>
    <message>
        <source>V(h) as above, with h the dead depth</source>
        <translation>V(h) اوپر جیسا، h ڈیڈ لیول کی گہرائی</translation>
    </message>
    <message>
        <source>held up to the overflow − what cannot be drawn</source>
        <translation>اوور فلو تک گنجائش − جو نکالا نہیں جا سکتا</translation>
    </message>
    <message>
        <source>Water surface when full</source>
        <translation>بھری ہو تو پانی کی اوپری سطح</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × height up to the overflow</source>
        <translation>A + P d + C d²، جہاں d = سلامی × اوور فلو تک اونچائی</translation>
    </message>
    <message>
        <source>Clear floor</source>
        <translation>اندر کا فرش</translation>
    </message>
    <message>
        <source>area of the clear floor, cove left out</source>
        <translation>اندر کے فرش کا رقبہ، گولا چھوڑ کر</translation>
    </message>
    <message>
        <source>Edge of the clear floor</source>
        <translation>اندر کے فرش کا گھیرا</translation>
    </message>
    <message>
        <source>length all round the clear floor</source>
        <translation>اندر کے فرش کے چاروں طرف کی لمبائی</translation>
    </message>
    <message>
        <source>Corner coefficient</source>
        <translation>کونوں کا فیکٹر</translation>
    </message>
    <message>
        <source>C in: an outline moved out by d has the area A + P d + C d²; sum of cot(half the inside angle) of sharp corners; π for round ones</source>
        <translation>اس میں C: d باہر ہٹائے گئے خاکے کا رقبہ A + P d + C d² ہے؛ تیز کونوں پر cot(اندر کے زاویے کا آدھا) کا مجموعہ؛ گول کونوں پر π</translation>
    </message>
    <message>
        <source>Clear wall, along the slope</source>
        <translation>اندر کی دیوار، ڈھلان پر</translation>
    </message>
    <message>
        <source>√(1 + batter²) × depth × half of (edge of the floor + edge at the rim)</source>
        <translation>√(1 + سلامی²) × گہرائی × (فرش کا گھیرا + اوپری کنارے پر گھیرا) کا آدھا</translation>
    </message>
    <message>
        <source>Length round the clear top</source>
        <translation>اندر کے اوپری منہ کا گھیرا</translation>
    </message>
    <message>
        <source>edge of the floor + 2 C × batter × depth</source>
        <translation>فرش کا گھیرا + 2 C × سلامی × گہرائی</translation>
    </message>
    <message>
        <source>Clear opening at the rim</source>
        <translation>اندر کا اوپری منہ</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × depth</source>
        <translation>A + P d + C d²، جہاں d = سلامی × گہرائی</translation>
    </message>
    <message>
        <source>as entered at the floor; entered at the rim: less 2 × batter × depth</source>
        <translation>جیسا فرش پر درج ہے؛ اوپری کنارے پر درج ہو تو: 2 × سلامی × گہرائی نکال کر</translation>
    </message>
    <message>
        <source>Clear length at the rim</source>
        <translation>اوپری کنارے پر اندر کی لمبائی</translation>
    </message>
    <message>
        <source>length at the floor + 2 × batter × depth</source>
        <translation>فرش پر لمبائی + 2 × سلامی × گہرائی</translation>
    </message>
    <message>
        <source>Clear width at the rim</source>
        <translation>اوپری کنارے پر اندر کی چوڑائی</translation>
    </message>
    <message>
        <source>width at the floor + 2 × batter × depth</source>
        <translation>فرش پر چوڑائی + 2 × سلامی × گہرائی</translation>
    </message>
    <message>
        <source>finished floor to rim, as entered</source>
        <translation>تیار فرش سے اوپری کنارے تک، جیسی درج ہے</translation>
    </message>
    <message>
        <source>Overflow over the floor</source>
        <translation>فرش سے اوور فلو کی اونچائی</translation>
    </message>
    <message>
        <source>Marks of the dip-stick</source>
        <translation>پانی کی چھڑ کے نشان</translation>
    </message>
    <message>
        <source>every 5 cm from the finished floor, the overflow and the rim</source>
        <translation>تیار فرش سے ہر 5 cm پر، اوور فلو اور اوپری کنارہ</translation>
    </message>
    <message>
        <source>Held at each mark</source>
        <translation>ہر نشان پر ٹینکی میں پانی</translation>
    </message>
    <message>
        <source>V(h) as above, with h the mark</source>
        <translation>V(h) اوپر جیسا، h نشان کی اونچائی</translation>
    </message>
    <message>
        <source>outline grown by all coats square to their faces, from the pit floor to the ground, same formula as for the tank; with the ledge of the rim collar</source>
        <translation>خاکہ، سب کوٹوں جتنا سطح کی گنیا میں بڑھا کر، گڑھے کے تلے سے زمین تک، وہی فارمولا جو ٹینکی کا ہے؛ کنارے کے کالر کی بیٹھک کے ساتھ</translation>
    </message>
    <message>
        <source>Pit length at the ground</source>
        <translation>زمین پر گڑھے کی لمبائی</translation>
    </message>
    <message>
        <source>clear length at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>اوپری کنارے پر اندر کی لمبائی + 2 × سب کوٹ × √(1 + سلامی²)</translation>
    </message>
    <message>
        <source>Pit width at the ground</source>
        <translation>زمین پر گڑھے کی چوڑائی</translation>
    </message>
    <message>
        <source>clear width at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>اوپری کنارے پر اندر کی چوڑائی + 2 × سب کوٹ × √(1 + سلامی²)</translation>
    </message>
    <message>
        <source>Pit length at its floor</source>
        <translation>تلے پر گڑھے کی لمبائی</translation>
    </message>
    <message>
        <source>length at the ground − 2 × batter × pit depth</source>
        <translation>زمین پر لمبائی − 2 × سلامی × گڑھے کی گہرائی</translation>
    </message>
    <message>
        <source>Pit width at its floor</source>
        <translation>تلے پر گڑھے کی چوڑائی</translation>
    </message>
    <message>
        <source>width at the ground − 2 × batter × pit depth</source>
        <translation>زمین پر چوڑائی − 2 × سلامی × گڑھے کی گہرائی</translation>
    </message>
    <message>
        <source>Cut for the platform, as it lies</source>
        <translation>پلیٹ فارم کی کٹائی، ٹھوس زمین کے ناپ سے</translation>
    </message>
    <message>
        <source>ground above platform and cut faces, every triangle of the survey cut along their edges; even slope in closed form</source>
        <translation>پلیٹ فارم اور کٹائی کی سطحوں سے اوپر زمین، سروے کی ہر تکون ان کے کناروں پر کاٹ کر؛ ایک جیسی ڈھلان سیدھے فارمولے سے</translation>
    </message>
    <message>
        <source>Fill for the platform, as rammed</source>
        <translation>پلیٹ فارم کی بھرائی، کوٹنے کے بعد</translation>
    </message>
    <message>
        <source>room between the ground and platform and fill faces, reckoned like the cut</source>
        <translation>زمین اور پلیٹ فارم اور بھرائی کی سطحوں کے بیچ کی جگہ، حساب کٹائی کی طرح</translation>
    </message>
    <message>
        <source>Topsoil stripped first</source>
        <translation>اوپر کی زرخیز مٹی جو پہلے اتاری جائے</translation>
    </message>
    <message>
        <source>all ground that is disturbed × depth of topsoil, on the cut face no deeper than the face</source>
        <translation>چھیڑی گئی ساری زمین × زرخیز مٹی کی گہرائی، کٹائی کی سطح پر اس سطح سے گہری نہیں</translation>
    </message>
    <message>
        <source>Spoil left over, as it lies</source>
        <translation>بچی ہوئی کھدائی کی مٹی، ٹھوس زمین کے ناپ سے</translation>
    </message>
    <message>
        <source>pit + cut − fill ÷ (rammed volume of 1 m³ dug); not below 0</source>
        <translation>گڑھا + کٹائی − بھرائی ÷ (1 m³ کھودی مٹی کا کوٹا ہوا حجم)؛ 0 سے کم نہیں</translation>
    </message>
    <message>
        <source>Swell of the soil</source>
        <translation>مٹی کا پھولاؤ</translation>
    </message>
    <message>
        <source>by kind of soil: clay and wet ground 40 %, loam and fill 25 %, sand 12 %, rock 65 %</source>
        <translation>مٹی کی قسم سے: چکنی مٹی اور گیلی زمین 40 %، میرا مٹی اور بھرائی 25 %، ریت 12 %، چٹان 65 %</translation>
    </message>
    <message>
        <source>Spoil, loose</source>
        <translation>کھدائی کی مٹی، کھلی</translation>
    </message>
    <message>
        <source>Pegs: along the first side</source>
        <translation>کھونٹیاں: پہلے ضلع کے ساتھ</translation>
    </message>
    <message>
        <source>corners of the pit at the ground and at its floor, offset pegs 1 m clear of edge and rim collar, 3-4-5 marks; from the first corner, or from the centre</source>
        <translation>زمین پر اور تلے پر گڑھے کے کونے، ہٹا کر لگی کھونٹیاں کنارے اور کنارے کے کالر سے 1 m پرے، 3-4-5 کے نشان؛ پہلے کونے سے، یا مرکز سے</translation>
    </message>
    <message>
        <source>Pegs: square to the first side</source>
        <translation>کھونٹیاں: پہلے ضلع کی گنیا میں</translation>
    </message>
    <message>
        <source>as along the first side</source>
        <translation>جیسے پہلے ضلع کے ساتھ</translation>
    </message>
    <message>
        <source>Pegs: over the ground</source>
        <translation>کھونٹیاں: زمین سے اونچائی</translation>
    </message>
    <message>
        <source>0 at the ground, − pit depth at the pit floor</source>
        <translation>زمین پر 0، گڑھے کے تلے پر − گڑھے کی گہرائی</translation>
    </message>
    <message>
        <source>Lengths to check with the tape</source>
        <translation>لمبائیاں جو فیتے سے جانچنی ہیں</translation>
    </message>
    <message>
        <source>level distance between two pegs: √(Δx² + Δy²)</source>
        <translation>دو کھونٹیوں کے بیچ ہموار فاصلہ: √(Δx² + Δy²)</translation>
    </message>
    <message>
        <source>Marks of the depth rod, below the ground</source>
        <translation>گہرائی کی چھڑ کے نشان، زمین سے نیچے</translation>
    </message>
    <message>
        <source>pit depth less the layers up to the mark; the overflow: the freeboard</source>
        <translation>گڑھے کی گہرائی، نشان تک کی تہیں نکال کر؛ اوور فلو: فری بورڈ</translation>
    </message>
    <message>
        <source>Depths at which the pit wall is checked</source>
        <translation>گہرائیاں جن پر گڑھے کی دیوار جانچی جاتی ہے</translation>
    </message>
    <message>
        <source>every 0.5 m, and the pit floor</source>
        <translation>ہر 0.5 m پر، اور گڑھے کا تلا</translation>
    </message>
    <message>
        <source>Pit wall in from its edge there</source>
        <translation>وہاں گڑھے کی دیوار اپنے کنارے سے کتنی اندر</translation>
    </message>
    <message>
        <source>batter × depth below the ground</source>
        <translation>سلامی × زمین سے نیچے گہرائی</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>موسمی سال</translation>
    </message>
    <message>
        <source>made from the monthly means (as many as entered), or the whole years of the daily record</source>
        <translation>ماہانہ اوسط سے بنے (جتنے درج ہیں)، یا روزانہ ریکارڈ کے پورے سال</translation>
    </message>
    <message>
        <source>Years with water all year</source>
        <translation>پورا سال پانی والے سال</translation>
    </message>
    <message>
        <source>years without a day on which less than 99.9 % of the need could be drawn</source>
        <translation>سال جن میں کوئی ایسا دن نہیں جب ضرورت کے 99.9 % سے کم نکالا جا سکے</translation>
    </message>
    <message>
        <source>10 × years with water all year ÷ years</source>
        <translation>10 × پورا سال پانی والے سال ÷ سال</translation>
    </message>
    <message>
        <source>Days on which the need was met</source>
        <translation>دن جن پر ضرورت پوری ہوئی</translation>
    </message>
    <message>
        <source>100 × (1 − days short of water ÷ days with a need)</source>
        <translation>100 × (1 − کم پانی کے دن ÷ ضرورت والے دن)</translation>
    </message>
    <message>
        <source>Share of the need that was met</source>
        <translation>ضرورت کا حصہ جو پورا ہوا</translation>
    </message>
    <message>
        <source>100 × drawn ÷ needed</source>
        <translation>100 × نکالا ÷ ضرورت</translation>
    </message>
    <message>
        <source>sum over the years ÷ years</source>
        <translation>سب سالوں کا مجموعہ ÷ سال</translation>
    </message>
    <message>
        <source>Days short of water in the worst year</source>
        <translation>سب سے برے سال میں کم پانی کے دن</translation>
    </message>
    <message>
        <source>largest of the years</source>
        <translation>سالوں میں سب سے زیادہ</translation>
    </message>
    <message>
        <source>Lacking in a mean year</source>
        <translation>اوسط سال میں کمی</translation>
    </message>
    <message>
        <source>need that could not be drawn, mean of the years</source>
        <translation>ضرورت جو نکالی نہ جا سکی، سالوں کی اوسط</translation>
    </message>
    <message>
        <source>Lacking in the worst year</source>
        <translation>سب سے برے سال میں کمی</translation>
    </message>
    <message>
        <source>Run over in a mean year</source>
        <translation>اوسط سال میں اوپر سے بہا</translation>
    </message>
    <message>
        <source>mean of the years</source>
        <translation>سالوں کی اوسط</translation>
    </message>
    <message>
        <source>Largest need of a day</source>
        <translation>ایک دن کی سب سے بڑی ضرورت</translation>
    </message>
    <message>
        <source>beds + animals + people, largest day of each year, mean of the years</source>
        <translation>کیاریاں + جانور + لوگ، ہر سال کا سب سے بڑا دن، سالوں کی اوسط</translation>
    </message>
    <message>
        <source>Beds together</source>
        <translation>کیاریاں کل</translation>
    </message>
    <message>
        <source>Smallest tank that meets the target</source>
        <translation>ہدف پورا کرنے والی سب سے چھوٹی ٹینکی</translation>
    </message>
    <message>
        <source>plan made larger or smaller at the same depth and batter, every size run through all years; least that meets the target</source>
        <translation>اسی گہرائی اور سلامی پر لمبائی چوڑائی بڑی یا چھوٹی کر کے، ہر سائز سب سالوں سے گزار کر؛ سب سے چھوٹا جو ہدف پورا کرے</translation>
    </message>
    <message>
        <source>Largest tank tried</source>
        <translation>سب سے بڑی ٹینکی جو آزمائی گئی</translation>
    </message>
    <message>
        <source>200 m³, or reach of the curve where that is more</source>
        <translation>200 m³، یا گراف جہاں تک جائے، جب وہ زیادہ ہو</translation>
    </message>
    <message>
        <source>Largest beds that meet the target</source>
        <translation>ہدف پورا کرنے والی سب سے بڑی کیاریاں</translation>
    </message>
    <message>
        <source>all beds grown alike, every area run through all years; largest up to which the target is met</source>
        <translation>سب کیاریاں ایک جیسی بڑھا کر، ہر رقبہ سب سالوں سے گزار کر؛ سب سے بڑا جس تک ہدف پورا ہو</translation>
    </message>
    <message>
        <source>Largest beds tried</source>
        <translation>سب سے بڑی کیاریاں جو آزمائی گئیں</translation>
    </message>
    <message>
        <source>10 × the beds</source>
        <translation>10 × کیاریاں</translation>
    </message>
    <message>
        <source>Error of the water balance</source>
        <translation>پانی کے حساب کی غلطی</translation>
    </message>
    <message>
        <source>(start + supply + rain − evaporation − seepage − drawn − spill − end) ÷ (start + supply + rain)</source>
        <translation>(شروع + آمد + بارش − بخارات − رساؤ − نکالا − اوپر سے بہا − آخر) ÷ (شروع + آمد + بارش)</translation>
    </message>
    <message>
        <source>Weather year begins with month</source>
        <translation>موسمی سال اس مہینے سے شروع</translation>
    </message>
    <message>
        <source>month with most rain, so that no dry season is cut in two</source>
        <translation>سب سے زیادہ بارش والا مہینہ، تاکہ کوئی خشک موسم دو حصوں میں نہ کٹے</translation>
    </message>
    <message>
        <source>Rain in a mean year</source>
        <translation>اوسط سال کی بارش</translation>
    </message>
    <message>
        <source>sum of all days ÷ years</source>
        <translation>سب دنوں کا مجموعہ ÷ سال</translation>
    </message>
    <message>
        <source>Spread of the yearly rain</source>
        <translation>سالانہ بارش کا فرق</translation>
    </message>
    <message>
        <source>standard deviation ÷ mean of the weather years</source>
        <translation>معیاری انحراف ÷ موسمی سالوں کی اوسط</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Penman-Monteith</source>
        <translation>اوسط سال کا ET0، Penman-Monteith</translation>
    </message>
    <message>
        <source>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) each day, eq. 6; what was not measured estimated by eq. 48 and 50, wind 2 m/s</source>
        <translation>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u))، ہر دن، مساوات 6؛ جو ناپا نہیں گیا اس کا اندازہ مساوات 48 اور 50 سے، ہوا 2 m/s</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Hargreaves</source>
        <translation>اوسط سال کا ET0، Hargreaves</translation>
    </message>
    <message>
        <source>0.0023 (T + 17.8) √(Tmax − Tmin) Ra each day, eq. 52, Ra in mm</source>
        <translation>0.0023 (T + 17.8) √(Tmax − Tmin) Ra، ہر دن، مساوات 52، Ra mm میں</translation>
    </message>
    <message>
        <source>Years left out of the record</source>
        <translation>ریکارڈ میں سے چھوڑے گئے سال</translation>
    </message>
    <message>
        <source>years with gaps, when gaps are left out</source>
        <translation>خالی جگہوں والے سال، جب خالی جگہیں چھوڑی جائیں</translation>
    </message>
    <message>
        <source>Values put in for gaps</source>
        <translation>خالی جگہوں پر ڈالی گئی قدریں</translation>
    </message>
    <message>
        <source>taken from the nearest year</source>
        <translation>قریب ترین سال سے لی گئیں</translation>
    </message>
    <message>
        <source>Days outside whole years</source>
        <translation>پورے سالوں سے باہر کے دن</translation>
    </message>
    <message>
        <source>days of the record before the first and after the last whole year</source>
        <translation>ریکارڈ کے وہ دن جو پہلے پورے سال سے پہلے اور آخری پورے سال کے بعد ہیں</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>مہینے</translation>
    </message>
    <message>
        <source>January first</source>
        <translation>جنوری پہلا</translation>
    </message>
    <message>
        <source>A full tank lasts, from the first of the month, days</source>
        <translation>بھری ٹینکی کتنی چلتی ہے، مہینے کی پہلی سے، دن</translation>
    </message>
    <message>
        <source>nothing flows in, no rain on it; days to the first day short of water, middle of all years</source>
        <translation>نہ پانی آئے، نہ اس پر بارش ہو؛ کم پانی کے پہلے دن تک کے دن، سب سالوں کی درمیانی قدر</translation>
    </message>
    <message>
        <source>An empty tank fills, from the first of the month, days</source>
        <translation>خالی ٹینکی کتنے میں بھرتی ہے، مہینے کی پہلی سے، دن</translation>
    </message>
    <message>
        <source>nothing drawn; days until full, middle of all years</source>
        <translation>کچھ نہ نکالا جائے؛ بھرنے تک کے دن، سب سالوں کی درمیانی قدر</translation>
    </message>
    <message>
        <source>Area of each bed</source>
        <translation>ہر کیاری کا رقبہ</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>بوائی</translation>
    </message>
    <message>
        <source>Season ends</source>
        <translation>فصل کا عرصہ ختم</translation>
    </message>
    <message>
        <source>planted + lengths of the four stages − 1 day</source>
        <translation>بوائی + چاروں مرحلوں کی لمبائی − 1 دن</translation>
    </message>
    <message>
        <source>Days of the season</source>
        <translation>فصل کے عرصے کے دن</translation>
    </message>
    <message>
        <source>sum of the four stages of the crop</source>
        <translation>فصل کے چاروں مرحلوں کا مجموعہ</translation>
    </message>
    <message>
        <source>Share that reaches the roots</source>
        <translation>حصہ جو جڑوں تک پہنچتا ہے</translation>
    </message>
    <message>
        <source>as entered, else usual for the method</source>
        <translation>جیسا درج ہے، ورنہ اس طریقے کا عام</translation>
    </message>
    <message>
        <source>Use of the crop in a season</source>
        <translation>فصل کے ایک عرصے کا پانی</translation>
    </message>
    <message>
        <source>sum of Kc × ET0, Kc from stage to stage by eq. 66, adjusted to wind and humidity by eq. 62 and 65; mean of the years</source>
        <translation>Kc × ET0 کا مجموعہ، Kc مرحلے سے مرحلے تک مساوات 66 سے، ہوا اور نمی کے مطابق مساوات 62 اور 65 سے؛ سالوں کی اوسط</translation>
    </message>
    <message>
        <source>What rain does not bring</source>
        <translation>جو بارش سے نہیں ملتا</translation>
    </message>
    <message>
        <source>root zone as a bucket: dried by the use, wetted by rain; brought back each day to what the crop bears: p × soil water × root depth (eq. 82 to 85)</source>
        <translation>جڑوں کا علاقہ ایک بالٹی کی طرح: فصل کے پانی لینے سے سوکھے، بارش سے گیلا ہو؛ ہر دن وہاں تک واپس جتنا فصل سہہ لے: p × مٹی کا پانی × جڑوں کی گہرائی (مساوات 82 تا 85)</translation>
    </message>
    <message>
        <source>To be drawn for each bed in a year</source>
        <translation>سال میں ہر کیاری کے لیے نکالنا ہے</translation>
    </message>
    <message>
        <source>net × area ÷ share that reaches the roots</source>
        <translation>خالص × رقبہ ÷ حصہ جو جڑوں تک پہنچتا ہے</translation>
    </message>
    <message>
        <source>Largest need of a day for each bed</source>
        <translation>ہر کیاری کی ایک دن کی سب سے بڑی ضرورت</translation>
    </message>
    <message>
        <source>largest day of each year, mean of the years</source>
        <translation>ہر سال کا سب سے بڑا دن، سالوں کی اوسط</translation>
    </message>
    <message>
        <source>Days short of water, year by year</source>
        <translation>کم پانی کے دن، سال بہ سال</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn</source>
        <translation>دن جب ضرورت کے 99.9 % سے کم نکالا جا سکا</translation>
    </message>
    <message>
        <source>Lacking, year by year</source>
        <translation>کمی، سال بہ سال</translation>
    </message>
    <message>
        <source>need − drawn</source>
        <translation>ضرورت − نکالا</translation>
    </message>
    <message>
        <source>Run over, year by year</source>
        <translation>اوپر سے بہا، سال بہ سال</translation>
    </message>
    <message>
        <source>what is above full at the end of a day</source>
        <translation>دن کے آخر میں بھری ٹینکی سے جتنا زیادہ ہو</translation>
    </message>
    <message>
        <source>Days of the year</source>
        <translation>سال کے دن</translation>
    </message>
    <message>
        <source>from the first day of the weather year, 29 February left out</source>
        <translation>موسمی سال کے پہلے دن سے، 29 فروری چھوڑ کر</translation>
    </message>
    <message>
        <source>Held by day: least of all years</source>
        <translation>ٹینکی میں پانی، دن وار: سب سالوں میں سب سے کم</translation>
    </message>
    <message>
        <source>daily balance of all years, sorted</source>
        <translation>سب سالوں کا روزانہ حساب، ترتیب سے</translation>
    </message>
    <message>
        <source>Held by day: one year in ten below</source>
        <translation>ٹینکی میں پانی، دن وار: دس میں سے ایک سال اس سے کم</translation>
    </message>
    <message>
        <source>straight between neighbours of the sorted years</source>
        <translation>ترتیب میں پاس کے سالوں کے بیچ سیدھی لکیر</translation>
    </message>
    <message>
        <source>Held by day: middle of all years</source>
        <translation>ٹینکی میں پانی، دن وار: سب سالوں کی درمیانی قدر</translation>
    </message>
    <message>
        <source>Held by day: nine years in ten below</source>
        <translation>ٹینکی میں پانی، دن وار: دس میں سے نو سال اس سے کم</translation>
    </message>
    <message>
        <source>Held by day: most of all years</source>
        <translation>ٹینکی میں پانی، دن وار: سب سالوں میں سب سے زیادہ</translation>
    </message>
    <message>
        <source>Sizes tried</source>
        <translation>آزمائے گئے سائز</translation>
    </message>
    <message>
        <source>even steps at the same depth and batter</source>
        <translation>اسی گہرائی اور سلامی پر برابر فاصلوں سے</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size</source>
        <translation>دس میں سے کتنے سال پورا سال پانی، سائز کے حساب سے</translation>
    </message>
    <message>
        <source>every size run through all years</source>
        <translation>ہر سائز سب سالوں سے گزار کر</translation>
    </message>
    <message>
        <source>Map: sizes</source>
        <translation>گراف: سائز</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times this tank; see the map itself</source>
        <translation>برابر فاصلوں پر، اس ٹینکی کے تقریباً 2.5 گنا تک؛ خود گراف دیکھیں</translation>
    </message>
    <message>
        <source>Map: beds</source>
        <translation>گراف: کیاریاں</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times these beds; see the map itself</source>
        <translation>برابر فاصلوں پر، ان کیاریوں کے تقریباً 2.5 گنا تک؛ خود گراف دیکھیں</translation>
    </message>
    <message>
        <source>Map: years in ten with water all year</source>
        <translation>گراف: دس میں سے کتنے سال پورا سال پانی</translation>
    </message>
    <message>
        <source>each size with each area run through all years; see the map itself</source>
        <translation>ہر سائز ہر رقبے کے ساتھ سب سالوں سے گزار کر؛ خود گراف دیکھیں</translation>
    </message>
    <message>
        <source>tap or spring</source>
        <translation>نلکا یا چشمہ</translation>
    </message>
    <message>
        <source>flow × hours a day × 60</source>
        <translation>بہاؤ × دن میں گھنٹے × 60</translation>
    </message>
    <message>
        <source>runoff of the roof</source>
        <translation>چھت کا بہتا پانی</translation>
    </message>
    <message>
        <source>rain × area × share that runs off, less the first flush of a wet spell</source>
        <translation>بارش × رقبہ × بہنے والا حصہ، بارش کے سلسلے کا پہلا دھوون نکال کر</translation>
    </message>
    <message>
        <source>runoff of the ground</source>
        <translation>زمین کا بہتا پانی</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>ٹینکی پر بارش</translation>
    </message>
    <message>
        <source>rain × opening at the rim</source>
        <translation>بارش × اوپر کا منہ</translation>
    </message>
    <message>
        <source>evaporation</source>
        <translation>بخارات</translation>
    </message>
    <message>
        <source>ET0 × open water × (1 − cover) × water surface of the day</source>
        <translation>ET0 × کھلا پانی × (1 − ڈھکن) × اس دن کی پانی کی اوپری سطح</translation>
    </message>
    <message>
        <source>seepage</source>
        <translation>رساؤ</translation>
    </message>
    <message>
        <source>seepage a day × wet face of the day</source>
        <translation>روزانہ رساؤ × اس دن کی گیلی سطح</translation>
    </message>
    <message>
        <source>run over</source>
        <translation>اوپر سے بہا</translation>
    </message>
    <message>
        <source>need of the beds</source>
        <translation>کیاریوں کی ضرورت</translation>
    </message>
    <message>
        <source>net need × area ÷ share that reaches the roots</source>
        <translation>خالص ضرورت × رقبہ ÷ حصہ جو جڑوں تک پہنچتا ہے</translation>
    </message>
    <message>
        <source>need of the animals</source>
        <translation>جانوروں کی ضرورت</translation>
    </message>
    <message>
        <source>head × litres a day, as entered or usual for the kind</source>
        <translation>جانور × روزانہ لیٹر، جیسے درج ہیں یا اس قسم کے عام</translation>
    </message>
    <message>
        <source>need of people</source>
        <translation>لوگوں کی ضرورت</translation>
    </message>
    <message>
        <source>people × litres a day</source>
        <translation>لوگ × روزانہ لیٹر</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>نکالا</translation>
    </message>
    <message>
        <source>need, no more than what is held over the dead depth</source>
        <translation>ضرورت، مگر ڈیڈ لیول سے اوپر کے پانی سے زیادہ نہیں</translation>
    </message>
    <message>
        <source>lacking</source>
        <translation>کمی</translation>
    </message>
    <message>
        <source>days short of water</source>
        <translation>کم پانی کے دن</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn, mean of the years</source>
        <translation>دن جب ضرورت کے 99.9 % سے کم نکالا جا سکا، سالوں کی اوسط</translation>
    </message>
    <message>
        <source>Mean year</source>
        <translation>اوسط سال</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>مہینہ وار</translation>
    </message>
    <message>
        <source>plain sums and products of numbers of the plan</source>
        <translation>منصوبے کے اعداد کے سیدھے مجموعے اور ضرب</translation>
    </message>
    <message>
        <source>Jars that count, by their rows</source>
        <translation>گنے جانے والے مرتبان، قطار کے لحاظ سے</translation>
    </message>
    <message>
        <source>a jar without layers is left out</source>
        <translation>جس مرتبان میں تہیں نہیں وہ چھوڑا جاتا ہے</translation>
    </message>
    <message>
        <source>Sand in each jar</source>
        <translation>ہر مرتبان میں ریت</translation>
    </message>
    <message>
        <source>layer of sand ÷ all layers: share of the settled volume</source>
        <translation>ریت کی تہ ÷ سب تہیں: بیٹھے ہوئے حجم کا حصہ</translation>
    </message>
    <message>
        <source>Silt in each jar</source>
        <translation>ہر مرتبان میں گاد</translation>
    </message>
    <message>
        <source>layer of silt ÷ all layers</source>
        <translation>گاد کی تہ ÷ سب تہیں</translation>
    </message>
    <message>
        <source>Clay in each jar</source>
        <translation>ہر مرتبان میں چکنی مٹی</translation>
    </message>
    <message>
        <source>layer of clay ÷ all layers; by weight it is less, for clay settles loosely</source>
        <translation>چکنی مٹی کی تہ ÷ سب تہیں؛ وزن میں یہ کم ہے کیونکہ چکنی مٹی ڈھیلی بیٹھتی ہے</translation>
    </message>
    <message>
        <source>Clay in the soil, by the jars</source>
        <translation>مرتبانوں کے حساب سے مٹی میں چکنی مٹی</translation>
    </message>
    <message>
        <source>middle of the jars</source>
        <translation>مرتبانوں کی درمیانی قدر</translation>
    </message>
    <message>
        <source>Balls that count, by their rows</source>
        <translation>گنی جانے والی گولیاں، قطار کے لحاظ سے</translation>
    </message>
    <message>
        <source>a ball that was not tried is left out</source>
        <translation>جو گولی آزمائی نہیں گئی وہ چھوڑی جاتی ہے</translation>
    </message>
    <message>
        <source>Layers of the test pits</source>
        <translation>آزمائشی گڑھوں کی تہیں</translation>
    </message>
    <message>
        <source>those that begin above the floor of the tank&apos;s pit</source>
        <translation>جو ٹینکی کے گڑھے کے تلے سے اوپر شروع ہوتی ہیں</translation>
    </message>
    <message>
        <source>Of them with unknown soil</source>
        <translation>ان میں سے جن کی مٹی معلوم نہیں</translation>
    </message>
    <message>
        <source>Deepest test pit</source>
        <translation>سب سے گہرا آزمائشی گڑھا</translation>
    </message>
    <message>
        <source>deepest end of a layer</source>
        <translation>تہ کا سب سے گہرا سرا</translation>
    </message>
    <message>
        <source>Water met in the test pits at</source>
        <translation>آزمائشی گڑھوں میں پانی ملا</translation>
    </message>
    <message>
        <source>least depth of a layer in which water came</source>
        <translation>جس تہ میں پانی آیا اس کی سب سے کم گہرائی</translation>
    </message>
    <message>
        <source>Settings of the water level that count, by their rows</source>
        <translation>لیول پائپ کی گنی جانے والی پیمائشیں، قطار کے لحاظ سے</translation>
    </message>
    <message>
        <source>a setting without run is left out</source>
        <translation>جس پیمائش میں ہموار فاصلہ نہیں وہ چھوڑی جاتی ہے</translation>
    </message>
    <message>
        <source>Fall of each setting</source>
        <translation>ہر پیمائش کی ڈھلوان</translation>
    </message>
    <message>
        <source>drop ÷ run</source>
        <translation>اترائی ÷ ہموار فاصلہ</translation>
    </message>
    <message>
        <source>Run, all settings</source>
        <translation>ہموار فاصلہ، سب پیمائشیں</translation>
    </message>
    <message>
        <source>sum</source>
        <translation>جمع</translation>
    </message>
    <message>
        <source>Drop, all settings</source>
        <translation>اترائی، سب پیمائشیں</translation>
    </message>
    <message>
        <source>Fall of the ground, by the water level</source>
        <translation>زمین کی ڈھلوان، لیول پائپ سے</translation>
    </message>
    <message>
        <source>all drops ÷ all runs; below 0 where it was walked uphill</source>
        <translation>سب اترائیاں ÷ سب ہموار فاصلے؛ جہاں چڑھائی کی طرف ناپا گیا وہاں 0 سے کم</translation>
    </message>
</context>
</TS>
