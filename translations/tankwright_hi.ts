<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="hi">
<context>
    <name>Drawings</name>
    <message>
        <source>Cove, radius %1</source>
        <translation>गोला, त्रिज्या %1</translation>
    </message>
    <message>
        <source>%1, %2 thick</source>
        <comment>layer and its thickness</comment>
        <translation>%1, मोटाई %2</translation>
    </message>
    <message>
        <source>Undisturbed ground</source>
        <translation>बिना खुदी ज़मीन</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>clear length %1</source>
        <translation>भीतरी लंबाई %1</translation>
    </message>
    <message>
        <source>clear width %1</source>
        <translation>भीतरी चौड़ाई %1</translation>
    </message>
    <message>
        <source>clear diameter %1</source>
        <translation>भीतरी व्यास %1</translation>
    </message>
    <message>
        <source>clear floor length %1</source>
        <translation>भीतरी फ़र्श की लंबाई %1</translation>
    </message>
    <message>
        <source>clear floor width %1</source>
        <translation>भीतरी फ़र्श की चौड़ाई %1</translation>
    </message>
    <message>
        <source>clear floor diameter %1</source>
        <translation>भीतरी फ़र्श का व्यास %1</translation>
    </message>
    <message>
        <source>clear rim length %1</source>
        <translation>मुंडेर पर भीतरी लंबाई %1</translation>
    </message>
    <message>
        <source>clear rim width %1</source>
        <translation>मुंडेर पर भीतरी चौड़ाई %1</translation>
    </message>
    <message>
        <source>clear rim diameter %1</source>
        <translation>मुंडेर पर भीतरी व्यास %1</translation>
    </message>
    <message>
        <source>pit top length %1</source>
        <translation>गड्ढे की ऊपरी लंबाई %1</translation>
    </message>
    <message>
        <source>pit top width %1</source>
        <translation>गड्ढे की ऊपरी चौड़ाई %1</translation>
    </message>
    <message>
        <source>pit top diameter %1</source>
        <translation>गड्ढे का ऊपरी व्यास %1</translation>
    </message>
    <message>
        <source>A</source>
        <comment>letter of the section</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>Scale 1 : %1</source>
        <translation>पैमाना 1 : %1</translation>
    </message>
    <message>
        <source>rim and ground: 0</source>
        <translation>मुंडेर और ज़मीन: 0</translation>
    </message>
    <message>
        <source>overflow: %1 down</source>
        <translation>ओवरफ्लो: %1 नीचे</translation>
    </message>
    <message>
        <source>pit floor: %1 down</source>
        <translation>गड्ढे का तला: %1 नीचे</translation>
    </message>
    <message>
        <source>pit floor diameter %1</source>
        <translation>गड्ढे के तले का व्यास %1</translation>
    </message>
    <message>
        <source>pit floor width %1</source>
        <translation>गड्ढे के तले की चौड़ाई %1</translation>
    </message>
    <message>
        <source>clear depth %1</source>
        <translation>भीतरी गहराई %1</translation>
    </message>
    <message>
        <source>pit depth %1</source>
        <translation>गड्ढे की गहराई %1</translation>
    </message>
    <message>
        <source>corner peg at the pit edge, or centre</source>
        <translation>गड्ढे के किनारे पर कोने की खूँटी, या बीच</translation>
    </message>
    <message>
        <source>%1, at A-A</source>
        <translation>%1, A-A पर</translation>
    </message>
    <message>
        <source>mark on the string for the right angle, 3-4-5</source>
        <translation>डोरी पर गुनिया (समकोण) का निशान, 3-4-5</translation>
    </message>
    <message>
        <source>section</source>
        <translation>काट</translation>
    </message>
    <message>
        <source>offset peg, 1 m clear of the digging; A1 and A2 belong to A</source>
        <translation>बाहरी खूँटी, खुदाई से 1 m हटकर; A1 और A2 खूँटी A की हैं</translation>
    </message>
    <message>
        <source>rim collar length %1</source>
        <translation>मुंडेर की पट्टी की लंबाई %1</translation>
    </message>
    <message>
        <source>rim collar width %1</source>
        <translation>मुंडेर की पट्टी की चौड़ाई %1</translation>
    </message>
    <message>
        <source>rim collar diameter %1</source>
        <translation>मुंडेर की पट्टी का व्यास %1</translation>
    </message>
    <message>
        <source>clear floor: %1 down</source>
        <translation>भीतरी फ़र्श: %1 नीचे</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>quantity (unit)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>source</source>
        <translation>स्रोत</translation>
    </message>
    <message>
        <source>roof</source>
        <translation>छत</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>ज़मीन</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>टंकी पर बारिश</translation>
    </message>
    <message>
        <source>people</source>
        <translation>लोग</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>पशु</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>क्यारियाँ</translation>
    </message>
    <message>
        <source>Left bar, comes in:</source>
        <translation>बाईं पट्टी, आता है:</translation>
    </message>
    <message>
        <source>Right bar, needed:</source>
        <translation>दाईं पट्टी, चाहिए:</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>कमी</translation>
    </message>
    <message>
        <source>in %1, needed %2</source>
        <comment>amounts of water in a month</comment>
        <translation>आया %1, चाहिए %2</translation>
    </message>
    <message>
        <source>missing %1</source>
        <translation>कमी %1</translation>
    </message>
    <message>
        <source>Enter the weather, what brings water and what needs it, to see them month by month.</source>
        <translation>महीने-महीने का पानी देखने के लिए मौसम, पानी कहाँ से आता है और किसे चाहिए, यह भरें।</translation>
    </message>
    <message>
        <source>Water in a month</source>
        <translation>महीने का पानी</translation>
    </message>
    <message>
        <source>8 years in ten</source>
        <translation>दस में से 8 साल</translation>
    </message>
    <message>
        <source>middle year</source>
        <translation>बीच का साल</translation>
    </message>
    <message>
        <source>all years</source>
        <translation>सभी साल</translation>
    </message>
    <message>
        <source>the last %1, not to be taken out</source>
        <translation>आखिरी %1, जो नहीं निकालना है</translation>
    </message>
    <message>
        <source>full: %1</source>
        <translation>पूरी भरी: %1</translation>
    </message>
    <message>
        <source>Enter the weather to see how the water in the tank rises and falls.</source>
        <translation>टंकी का पानी कैसे चढ़ता-उतरता है, यह देखने के लिए मौसम भरें।</translation>
    </message>
    <message>
        <source>Water in the tank</source>
        <translation>टंकी में पानी</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 से कम</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 से %2</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts:</source>
        <translation>दस में से कितने साल पानी पूरा पड़ता है:</translation>
    </message>
    <message>
        <source>target</source>
        <translation>लक्ष्य</translation>
    </message>
    <message>
        <source>this tank and its beds</source>
        <translation>यह टंकी और इसकी क्यारियाँ</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>लक्ष्य %1</translation>
    </message>
    <message>
        <source>Enter the beds to see what size of tank waters how much of them.</source>
        <translation>कितनी बड़ी टंकी से कितनी क्यारियाँ सिंचेंगी, यह देखने के लिए क्यारियाँ भरें।</translation>
    </message>
    <message>
        <source>The map is being worked out.</source>
        <translation>नक्शा तैयार हो रहा है।</translation>
    </message>
    <message>
        <source>Enter the weather and the beds to see what size of tank waters how much of them.</source>
        <translation>कितनी बड़ी टंकी से कितनी क्यारियाँ सिंचेंगी, यह देखने के लिए मौसम और क्यारियाँ भरें।</translation>
    </message>
    <message>
        <source>Area of the beds</source>
        <translation>क्यारियों का क्षेत्रफल</translation>
    </message>
    <message>
        <source>Water when the tank is full</source>
        <translation>टंकी भरी हो तब का पानी</translation>
    </message>
    <message>
        <source>being refined</source>
        <translation>और बारीक हो रहा है</translation>
    </message>
    <message>
        <source>this tank: %1</source>
        <translation>यह टंकी: %1</translation>
    </message>
    <message>
        <source>enough: %1</source>
        <translation>काफ़ी: %1</translation>
    </message>
    <message>
        <source>Enter the weather and what needs water to see how large a tank is enough.</source>
        <translation>कितनी बड़ी टंकी काफ़ी है, यह देखने के लिए मौसम और पानी की ज़रूरतें भरें।</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts</source>
        <translation>दस में से कितने साल पानी पूरा पड़ता है</translation>
    </message>
    <message>
        <source>the water lasts in %1 of %2 years</source>
        <translation>%2 में से %1 साल पानी पूरा पड़ता है</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>part of an amount</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: no water comes in.</source>
        <translation>%1: कोई पानी नहीं आता।</translation>
    </message>
    <message>
        <source>%1: %2 come in (%3).</source>
        <translation>%1: %2 पानी आता है (%3)।</translation>
    </message>
    <message>
        <source>Nothing is needed.</source>
        <translation>कुछ नहीं चाहिए।</translation>
    </message>
    <message>
        <source>%1 are needed (%2).</source>
        <translation>%1 पानी चाहिए (%2)।</translation>
    </message>
    <message>
        <source>%1 of it are missing, on %2.</source>
        <translation>इसमें से %1 की कमी है, %2 में।</translation>
    </message>
    <message>
        <source>%1: half of the years hold %2 or more; one year in ten less than %3</source>
        <translation>%1: आधे सालों में %2 या ज़्यादा रहता है; दस में से एक साल %3 से कम</translation>
    </message>
    <message>
        <source>Tank of %1, beds of %2: %3</source>
        <translation>टंकी %1, क्यारियाँ %2: %3</translation>
    </message>
    <message>
        <source>Tank of %1: %2</source>
        <translation>टंकी %1: %2</translation>
    </message>
    <message>
        <source>Time since it was full</source>
        <translation>टंकी भरी थी, तब से समय</translation>
    </message>
    <message>
        <source>Minutes since it was full</source>
        <translation>टंकी भरी थी, तब से मिनट</translation>
    </message>
    <message>
        <source>%1 min</source>
        <comment>minutes</comment>
        <translation>%1 मिनट</translation>
    </message>
    <message>
        <source>the line draws no lower than %1 over the floor</source>
        <translation>लाइन फ़र्श से %1 ऊपर तक ही पानी खींचती है</translation>
    </message>
    <message>
        <source>drawn down after %1</source>
        <translation>%1 में खाली</translation>
    </message>
    <message>
        <source>The tank is not emptied through this line.</source>
        <translation>टंकी इस लाइन से खाली नहीं की जाती।</translation>
    </message>
    <message>
        <source>How the tank empties is not known: %1.</source>
        <translation>टंकी कैसे खाली होती है, पता नहीं: %1।</translation>
    </message>
    <message>
        <source>Water over the floor</source>
        <translation>फ़र्श से ऊपर पानी</translation>
    </message>
    <message>
        <source>After %1 the water stands %2 over the floor</source>
        <translation>%1 बाद पानी फ़र्श से %2 ऊपर है</translation>
    </message>
    <message>
        <source>pit edge</source>
        <translation>गड्ढे का किनारा</translation>
    </message>
    <message>
        <source>platform edge, level %1</source>
        <translation>समतल जगह का किनारा, स्तर %1</translation>
    </message>
    <message>
        <source>cut face, up to the ground</source>
        <translation>कटान की ढाल, ज़मीन तक ऊपर</translation>
    </message>
    <message>
        <source>fill face, down to the ground</source>
        <translation>भराव की ढाल, ज़मीन तक नीचे</translation>
    </message>
    <message>
        <source>platform edge</source>
        <translation>समतल जगह का किनारा</translation>
    </message>
    <message>
        <source>natural ground, level (%1)</source>
        <translation>मूल ज़मीन, स्तर (%1)</translation>
    </message>
    <message>
        <source>fall %1</source>
        <translation>ढाल %1</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north</comment>
        <translation>उ</translation>
    </message>
    <message>
        <source>spoil heap</source>
        <translation>निकली मिट्टी का ढेर</translation>
    </message>
    <message>
        <source>%1 to the pit</source>
        <translation>गड्ढे तक %1</translation>
    </message>
    <message>
        <source>No flow: %1.</source>
        <translation>बहाव नहीं: %1।</translation>
    </message>
    <message>
        <source>Tank full, no flow: %1.</source>
        <translation>टंकी भरी, बहाव नहीं: %1।</translation>
    </message>
    <message>
        <source>Tank nearly empty, no flow: %1.</source>
        <translation>टंकी लगभग खाली, बहाव नहीं: %1।</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>पाइप</translation>
    </message>
    <message>
        <source>still water</source>
        <translation>ठहरा पानी</translation>
    </message>
    <message>
        <source>head, tank full</source>
        <translation>हेड, टंकी भरी</translation>
    </message>
    <message>
        <source>head</source>
        <translation>हेड</translation>
    </message>
    <message>
        <source>head, nearly empty</source>
        <translation>हेड, लगभग खाली</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>सक्शन</translation>
    </message>
    <message>
        <source>high point</source>
        <translation>ऊँची जगह</translation>
    </message>
    <message>
        <source>Enter the way of the pipe to see the head of the water along it.</source>
        <translation>पाइप के साथ-साथ पानी का हेड देखने के लिए पाइप का रास्ता भरें।</translation>
    </message>
    <message>
        <source>Level from the rim</source>
        <translation>मुंडेर से स्तर</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>लाइन पर दूरी</translation>
    </message>
    <message>
        <source>%1 along: pipe level with the rim</source>
        <translation>%1 दूरी पर: पाइप मुंडेर के बराबर</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 over the rim</source>
        <translation>%1 दूरी पर: पाइप मुंडेर से %2 ऊपर</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 under the rim</source>
        <translation>%1 दूरी पर: पाइप मुंडेर से %2 नीचे</translation>
    </message>
    <message>
        <source>%1, suction %2</source>
        <translation>%1, सक्शन %2</translation>
    </message>
    <message>
        <source>%1, head %2</source>
        <translation>%1, हेड %2</translation>
    </message>
    <message>
        <source>level with the rim</source>
        <translation>मुंडेर के बराबर</translation>
    </message>
    <message>
        <source>%1 over the rim</source>
        <translation>मुंडेर से %1 ऊपर</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 नीचे</translation>
    </message>
    <message>
        <source>rim: 0</source>
        <translation>मुंडेर: 0</translation>
    </message>
    <message>
        <source>sill: %1</source>
        <translation>दहलीज: %1</translation>
    </message>
    <message>
        <source>lip: %1</source>
        <translation>नीची कोर: %1</translation>
    </message>
    <message>
        <source>in a storm: %1</source>
        <translation>मूसलाधार बारिश में: %1</translation>
    </message>
    <message>
        <source>when blocked: %1</source>
        <translation>रुकावट होने पर: %1</translation>
    </message>
    <message>
        <source>The water level in a storm is not known: %1.</source>
        <translation>मूसलाधार बारिश में पानी का स्तर पता नहीं: %1।</translation>
    </message>
    <message>
        <source>The water level when the overflow is blocked is not known: %1.</source>
        <translation>ओवरफ्लो रुक जाए तब पानी का स्तर पता नहीं: %1।</translation>
    </message>
    <message>
        <source>freeboard left %1</source>
        <translation>बचा फ्रीबोर्ड %1</translation>
    </message>
    <message>
        <source>over the rim by %1</source>
        <translation>मुंडेर से %1 ऊपर</translation>
    </message>
    <message>
        <source>There is no room between the overflow and the rim to draw.</source>
        <translation>ओवरफ्लो और मुंडेर के बीच दिखाने लायक जगह नहीं है।</translation>
    </message>
    <message>
        <source>heights to scale, lengths not</source>
        <translation>ऊँचाइयाँ पैमाने पर, लंबाइयाँ नहीं</translation>
    </message>
    <message>
        <source>rim and platform: 0</source>
        <translation>मुंडेर और समतल जगह: 0</translation>
    </message>
    <message>
        <source>natural ground</source>
        <translation>मूल ज़मीन</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>टंकी खाली</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>टंकी भरी और लीक करती हुई</translation>
    </message>
    <message>
        <source>No slip was searched for.</source>
        <translation>खिसकन नहीं खोजी गई।</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall does not make a sound section.</source>
        <translation>खिसकन नहीं मिली: ढलान की ओर की ज़मीन से ठीक काट नहीं बनती।</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall is level.</source>
        <translation>खिसकन नहीं मिली: ढलान की ओर की ज़मीन समतल है।</translation>
    </message>
    <message>
        <source>No slip was found: no circle through this ground has a factor.</source>
        <translation>खिसकन नहीं मिली: इस ज़मीन से गुज़रने वाले किसी घेरे का सुरक्षा गुणांक नहीं निकलता।</translation>
    </message>
    <message>
        <source>The search for a slip was stopped.</source>
        <translation>खिसकन की खोज रोक दी गई।</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>भार %1</translation>
    </message>
    <message>
        <source>factor %1</source>
        <translation>गुणांक %1</translation>
    </message>
    <message>
        <source>radius %1</source>
        <translation>त्रिज्या %1</translation>
    </message>
    <message>
        <source>water in the ground</source>
        <translation>ज़मीन में पानी</translation>
    </message>
    <message>
        <source>P1 stands inward of Q1, P2 of Q2, and so on</source>
        <translation>P1 खूँटी Q1 से अंदर की ओर है, P2 खूँटी Q2 से, और ऐसे ही आगे</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>water in the evening</source>
        <translation>शाम का पानी</translation>
    </message>
    <message>
        <source>wall under wet sacks</source>
        <translation>गीली बोरियों से ढकी दीवार</translation>
    </message>
    <message>
        <source>filling starts</source>
        <translation>भराई शुरू</translation>
    </message>
    <message>
        <source>should start by</source>
        <translation>इस दिन तक शुरू हो</translation>
    </message>
    <message>
        <source>full on %1</source>
        <translation>%1 को पूरी भरी</translation>
    </message>
    <message>
        <source>not full within a year</source>
        <translation>एक साल में पूरी नहीं भरती</translation>
    </message>
    <message>
        <source>Enter what flows into the tank to see how it fills for the first time.</source>
        <translation>टंकी पहली बार कैसे भरती है, यह देखने के लिए टंकी में आने वाला पानी भरें।</translation>
    </message>
    <message>
        <source>Height over the floor</source>
        <translation>फ़र्श से ऊँचाई</translation>
    </message>
    <message>
        <source>this tank</source>
        <translation>यह टंकी</translation>
    </message>
    <message>
        <source>most water</source>
        <translation>सबसे ज़्यादा पानी</translation>
    </message>
    <message>
        <source>cheapest that meets the target</source>
        <translation>लक्ष्य पूरा करने वाली सबसे सस्ती</translation>
    </message>
    <message>
        <source>fewest bags that meet the target</source>
        <translation>लक्ष्य पूरा करने वाली, सबसे कम कट्टों में</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>खर्च</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>सीमेंट के कट्टे</translation>
    </message>
    <message>
        <source>No size is within the limits.</source>
        <translation>सीमाओं के अंदर कोई नाप नहीं है।</translation>
    </message>
    <message>
        <source>Search the sizes to see which are worth their price.</source>
        <translation>कौन से नाप अपने दाम के लायक हैं, यह देखने के लिए नाप खोजें।</translation>
    </message>
    <message>
        <source>building it, spread over its life</source>
        <translation>बनाने का खर्च, पूरी उम्र में बाँटकर</translation>
    </message>
    <message>
        <source>upkeep</source>
        <translation>रखरखाव</translation>
    </message>
    <message>
        <source>Enter the prices of linings to see what each costs a year.</source>
        <translation>हर लाइनिंग का सालाना खर्च देखने के लिए लाइनिंग के दाम भरें।</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>सालाना खर्च</translation>
    </message>
    <message>
        <source>goods and carrying</source>
        <translation>सामान और ढुलाई</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>मज़दूरी</translation>
    </message>
    <message>
        <source>Enter prices and when the works start to see when money is needed.</source>
        <translation>पैसा कब चाहिए, यह देखने के लिए दाम और निर्माण शुरू होने की तारीख भरें।</translation>
    </message>
    <message>
        <source>Money needed up to then</source>
        <translation>तब तक कुल चाहिए पैसा</translation>
    </message>
    <message>
        <source>Money needed on the day</source>
        <translation>उस दिन चाहिए पैसा</translation>
    </message>
    <message>
        <source>when it rises, the outcome rises</source>
        <comment>of an input</comment>
        <translation>यह बढ़े तो नतीजा बढ़ता है</translation>
    </message>
    <message>
        <source>when it rises, the outcome falls</source>
        <comment>of an input</comment>
        <translation>यह बढ़े तो नतीजा घटता है</translation>
    </message>
    <message>
        <source>goods and carrying %1</source>
        <comment>amount of money</comment>
        <translation>सामान और ढुलाई %1</translation>
    </message>
    <message>
        <source>wages %1</source>
        <comment>amount of money</comment>
        <translation>मज़दूरी %1</translation>
    </message>
    <message>
        <source>together up to then %1</source>
        <comment>amount of money</comment>
        <translation>तब तक कुल %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: amounts</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 a year (building it %3, upkeep %4), lasts %5</source>
        <comment>lining: amounts, years</comment>
        <translation>%1: साल का %2 (बनाने का %3, रखरखाव %4), चलती है %5</translation>
    </message>
    <message>
        <source>%1 a year for each %2</source>
        <comment>amount of money, volume</comment>
        <translation>हर %2 पर साल का %1</translation>
    </message>
    <message>
        <source>%1: %2 of the spread</source>
        <comment>input, percentage</comment>
        <translation>%1: फैलाव में हिस्सा %2</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <comment>diameter, depth</comment>
        <translation>व्यास %1, गहराई %2</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <comment>length, width, depth</comment>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>%1 cannot be built.</source>
        <translation>%1 नहीं बन सकती।</translation>
    </message>
    <message>
        <source>Add an option to see the tanks side by side.</source>
        <translation>टंकियों को साथ-साथ देखने के लिए एक विकल्प जोड़ें।</translation>
    </message>
    <message>
        <source>None of the options can be built.</source>
        <translation>कोई भी विकल्प नहीं बन सकता।</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>मज़दूर</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>मिस्त्री</translation>
    </message>
    <message>
        <source>people wetting</source>
        <translation>भिगाई करने वाले</translation>
    </message>
    <message>
        <source>goes on until %1 →</source>
        <translation>%1 तक चलता है →</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see the people of each day.</source>
        <translation>हर दिन के लोग देखने के लिए भरें कि निर्माण कब शुरू होगा और कौन-कौन काम पर होगा।</translation>
    </message>
    <message>
        <source>People on a day</source>
        <translation>दिन के लोग</translation>
    </message>
    <message>
        <source>8 times in ten</source>
        <translation>दस में से 8 बार</translation>
    </message>
    <message>
        <source>half of the times less</source>
        <translation>आधी बार इससे कम</translation>
    </message>
    <message>
        <source>all times</source>
        <translation>हर बार</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>जैसा भरा गया</translation>
    </message>
    <message>
        <source>What the spread comes from:</source>
        <translation>फैलाव किससे आता है:</translation>
    </message>
    <message>
        <source>raises the outcome</source>
        <comment>an input that grows</comment>
        <translation>नतीजा बढ़ाता है</translation>
    </message>
    <message>
        <source>lowers the outcome</source>
        <comment>an input that grows</comment>
        <translation>नतीजा घटाता है</translation>
    </message>
    <message>
        <source>How far the numbers may be off is not worked out yet.</source>
        <translation>आँकड़े कितने इधर-उधर हो सकते हैं, इसका हिसाब अभी नहीं लगा है।</translation>
    </message>
    <message>
        <source>first coat as planned, and best</source>
        <translation>पहला कोट, योजना से और सबसे अच्छा</translation>
    </message>
    <message>
        <source>first coat as planned</source>
        <translation>पहला कोट, योजना से</translation>
    </message>
    <message>
        <source>best week</source>
        <translation>सबसे अच्छा हफ़्ता</translation>
    </message>
    <message>
        <source>Enter the weather to see in which weeks coats are likely to stay undisturbed.</source>
        <translation>किन हफ़्तों में कोट मौसम से बचे रहेंगे, यह देखने के लिए मौसम भरें।</translation>
    </message>
    <message>
        <source>planned, best</source>
        <translation>योजना, सबसे अच्छा</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>योजना</translation>
    </message>
    <message>
        <source>best</source>
        <translation>सबसे अच्छा</translation>
    </message>
    <message>
        <source>Times in ten that coats of this week stay undisturbed</source>
        <translation>इस हफ़्ते के कोट दस में से कितनी बार मौसम से बचे रहते हैं</translation>
    </message>
    <message>
        <source>no work on this day</source>
        <translation>इस दिन काम नहीं</translation>
    </message>
    <message>
        <source>work</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>ढील नहीं</translation>
    </message>
    <message>
        <source>room to slip</source>
        <translation>ढील है</translation>
    </message>
    <message>
        <source>kept wet</source>
        <translation>गीला रखें</translation>
    </message>
    <message>
        <source>filling</source>
        <translation>भराई</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>आखिरी दिन</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>%1 तक</translation>
    </message>
    <message>
        <source>%1: not before %2</source>
        <translation>%1: %2 से पहले नहीं</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see their days.</source>
        <translation>कामों के दिन देखने के लिए भरें कि निर्माण कब शुरू होगा और कौन-कौन काम पर होगा।</translation>
    </message>
    <message>
        <source>%1 labourer</source>
        <translation>%1 मज़दूर</translation>
    </message>
    <message numerus="yes">
        <source>%1 labourers</source>
        <translation>
            <numerusform>%1 मज़दूर</numerusform>
            <numerusform>%1 मज़दूर</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mason</source>
        <translation>%1 मिस्त्री</translation>
    </message>
    <message numerus="yes">
        <source>%1 masons</source>
        <translation>
            <numerusform>%1 मिस्त्री</numerusform>
            <numerusform>%1 मिस्त्री</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 person wetting</source>
        <translation>भिगाई पर %1 आदमी</translation>
    </message>
    <message numerus="yes">
        <source>%1 people wetting</source>
        <translation>
            <numerusform>भिगाई पर %1 आदमी</numerusform>
            <numerusform>भिगाई पर %1 लोग</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>people (so many of them masons)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>room to slip: %1</source>
        <translation>ढील: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>last day of something</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <comment>task: when and who; how far it may slip</comment>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>%1 for wetting</source>
        <comment>litres of water</comment>
        <translation>भिगाई के लिए %1</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>कोई नहीं</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: people</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 flow in</source>
        <comment>litres</comment>
        <translation>%1 आता है</translation>
    </message>
    <message>
        <source>%1 are lost</source>
        <comment>litres</comment>
        <translation>%1 घटता है</translation>
    </message>
    <message>
        <source>%1: %2. In the evening %3 over the floor, %4.</source>
        <comment>date: flows; level, volume</comment>
        <translation>%1: %2। शाम को फ़र्श से %3 ऊपर, %4।</translation>
    </message>
    <message>
        <source>%1 to keep the %2 of wall above the water wet.</source>
        <translation>पानी से ऊपर की %2 दीवार गीली रखने के लिए %1।</translation>
    </message>
    <message>
        <source>Week from %1: undisturbed %2 times of %3; heavy rain %4, frost %5, heat or cold %6</source>
        <translation>%1 से शुरू हफ़्ता: %3 में से %2 बार मौसम से बचे; भारी बारिश %4, पाला %5, गर्मी या ठंड %6</translation>
    </message>
    <message>
        <source>The person is %1 tall.</source>
        <translation>आदमी की ऊँचाई %1 है।</translation>
    </message>
    <message>
        <source>cost not known</source>
        <translation>खर्च पता नहीं</translation>
    </message>
    <message>
        <source>%1: cost not known</source>
        <comment>lining</comment>
        <translation>%1: खर्च पता नहीं</translation>
    </message>
    <message>
        <source>plumb line and bob</source>
        <translation>साहुल की डोरी और लट्टू</translation>
    </message>
    <message>
        <source>level side: spirit level or hose</source>
        <translation>समतल बाजू: स्पिरिट लेवल या पानी की लेवल नली</translation>
    </message>
    <message>
        <source>slanting side lies on the pit wall</source>
        <translation>तिरछी बाजू गड्ढे की दीवार से सटती है</translation>
    </message>
    <message>
        <source>straight staff stands on the pit wall</source>
        <translation>सीधी छड़ गड्ढे की दीवार से सटकर खड़ी</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 ऊपर</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>%1 बाहर</translation>
    </message>
    <message>
        <source>The board gives the lean of the pit wall, as it is dug.</source>
        <translation>यह फर्मा गड्ढे की खुदी दीवार की सलामी बताता है।</translation>
    </message>
    <message>
        <source>The pit wall is dug upright.</source>
        <translation>गड्ढे की दीवार सीधी खड़ी खोदी जाती है।</translation>
    </message>
    <message>
        <source>Plaster follows it: the clear wall leans the same.</source>
        <translation>प्लास्टर उसी के साथ चलता है: भीतरी दीवार की सलामी भी उतनी ही।</translation>
    </message>
    <message>
        <source>%1, level with the string: 0</source>
        <translation>%1, डोरी के बराबर: 0</translation>
    </message>
    <message>
        <source>%1, dig to here: %2 down</source>
        <translation>%1, यहाँ तक खोदें: %2 नीचे</translation>
    </message>
    <message>
        <source>%1, the clear floor: %2 down</source>
        <translation>%1, भीतरी फ़र्श: %2 नीचे</translation>
    </message>
    <message>
        <source>%1: %2 down</source>
        <translation>%1: %2 नीचे</translation>
    </message>
    <message>
        <source>clear face: inside of the finished plaster</source>
        <translation>भीतरी सतह: तैयार प्लास्टर का अंदर का रुख</translation>
    </message>
    <message>
        <source>coats, %1 thick in all, each brought up to the collar</source>
        <translation>कोट, कुल %1 मोटे, हर कोट पट्टी तक लाया हुआ</translation>
    </message>
    <message>
        <source>pit wall, as it is dug; ground behind it</source>
        <translation>गड्ढे की खुदी दीवार; पीछे ज़मीन</translation>
    </message>
    <message>
        <source>pipe, %1 outside</source>
        <translation>पाइप, बाहरी व्यास %1</translation>
    </message>
    <message>
        <source>pipe, %1 outside as an example</source>
        <translation>पाइप, बाहरी व्यास %1 (उदाहरण)</translation>
    </message>
    <message>
        <source>collar of stiff mortar all round the pipe</source>
        <translation>पाइप के चारों ओर सख्त मसाले की पट्टी</translation>
    </message>
    <message>
        <source>outside end: on beyond the pit edge, no joint in the wall</source>
        <translation>बाहरी सिरा: गड्ढे के किनारे से आगे तक, दीवार में कोई जोड़ नहीं</translation>
    </message>
    <message>
        <source>clamp: the pipe cannot pull or shake on the rim</source>
        <translation>क्लैंप: मुंडेर पर पाइप न खिंचे, न हिले</translation>
    </message>
    <message>
        <source>bell mouth, above the dead level</source>
        <translation>घंटी जैसा मुँह, डेड स्तर से ऊपर</translation>
    </message>
    <message>
        <source>dead level: %1 over the clear floor</source>
        <translation>डेड स्तर: भीतरी फ़र्श से %1 ऊपर</translation>
    </message>
    <message>
        <source>Pipe through the wall</source>
        <translation>दीवार के आर-पार पाइप</translation>
    </message>
    <message>
        <source>Pipe over the rim</source>
        <translation>मुंडेर के ऊपर से पाइप</translation>
    </message>
    <message>
        <source>B</source>
        <comment>letter of the section</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>%1, at B-B</source>
        <translation>%1, B-B पर</translation>
    </message>
    <message>
        <source>pit floor length %1</source>
        <translation>गड्ढे के तले की लंबाई %1</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>diameter %1</source>
        <translation>व्यास %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>संदर्भ: %1</translation>
    </message>
    <message>
        <source>%1: net %2, to order %3</source>
        <translation>%1: असल %2, मँगाएँ %3</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>ओवरफ्लो तक भरने पर पानी</translation>
    </message>
    <message>
        <source>%1 to the rim</source>
        <translation>मुंडेर तक %1</translation>
    </message>
    <message>
        <source>Prismoidal formula: depth ÷ 6 × (floor + 4 × middle + surface), all clear inside areas.</source>
        <translation>प्रिज़्मोइडल सूत्र: गहराई ÷ 6 × (फ़र्श + 4 × बीच + पानी की सतह), सभी भीतरी क्षेत्रफल।</translation>
    </message>
    <message>
        <source>Water depth %1, floor %2, water surface %3.</source>
        <translation>पानी की गहराई %1, फ़र्श %2, पानी की सतह %3।</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>काम आने वाला पानी</translation>
    </message>
    <message>
        <source>Held to the overflow less what lies below the dead depth.</source>
        <translation>ओवरफ्लो तक का पानी, डेड गहराई के नीचे का पानी घटाकर।</translation>
    </message>
    <message>
        <source>%1 less %2 below %3.</source>
        <translation>%1 में से %3 के नीचे का %2 घटाकर।</translation>
    </message>
    <message>
        <source>%1: shell %2, to mix %3, cement %4</source>
        <translation>%1: खोल %2, मिलाने को %3, सीमेंट %4</translation>
    </message>
    <message>
        <source>Placed plaster × %1 loose ingredients, shared out by the parts of the mix; cement weighs %2.</source>
        <translation>लगा हुआ प्लास्टर × %1 ढीला सामान, मिश्रण के भागों में बाँटा; सीमेंट का भार %2।</translation>
    </message>
    <message>
        <source>Unevenness %1 on coat 1, waste %2, whole bags.</source>
        <translation>कोट 1 पर ऊबड़-खाबड़ का %1, छीजन %2, पूरे कट्टे।</translation>
    </message>
    <message>
        <source>Cement to order</source>
        <translation>कितना सीमेंट मँगाएँ</translation>
    </message>
    <message>
        <source>of %1 each</source>
        <translation>%1 वाले</translation>
    </message>
    <message>
        <source>From the exact shells and the mixes, with waste, sieving loss and the bulking of damp sand.</source>
        <translation>सटीक खोल और मिश्रण से; छीजन, छनाई का घाटा और नम रेत का फूलना जोड़कर।</translation>
    </message>
    <message>
        <source>Soil, sand and stone to bring</source>
        <translation>मिट्टी, रेत और पत्थर लाने हैं</translation>
    </message>
    <message>
        <source>Soil %1
Sand %2
Stone %3</source>
        <translation>मिट्टी %1
रेत %2
पत्थर %3</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>मेहनत</translation>
    </message>
    <message>
        <source>People and dates are not part of this project.</source>
        <translation>लोग और तारीखें इस प्रोजेक्ट में नहीं हैं।</translation>
    </message>
    <message>
        <source>%1: %2 (%3 to %4)</source>
        <translation>%1: %2 (%3 से %4)</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>भराई इस दिन तक शुरू करें</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 से %3</translation>
    </message>
    <message>
        <source>The clear inside, grown by all coats square to their faces and by the stone bed under the floor.</source>
        <translation>भीतरी नाप, जिसमें सब कोट अपनी सतह से गुनिया में और फ़र्श के नीचे पत्थर की सोलिंग जोड़ी गई है।</translation>
    </message>
    <message>
        <source>Pit floor %1.</source>
        <translation>गड्ढे का तला %1।</translation>
    </message>
    <message>
        <source>Loose spoil %1.</source>
        <translation>निकली मिट्टी, ढीली, %1।</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>खोदने का गड्ढा</translation>
    </message>
    <message>
        <source>pit at ground %1, pit depth %2</source>
        <translation>ज़मीन पर गड्ढा %1, गड्ढे की गहराई %2</translation>
    </message>
    <message>
        <source>Finished clear inside</source>
        <translation>तैयार भीतरी नाप</translation>
    </message>
    <message>
        <source>floor %1
rim %2
clear depth %3</source>
        <translation>फ़र्श %1
मुंडेर %2
भीतरी गहराई %3</translation>
    </message>
    <message>
        <source>What the water touches, after all coats. The walls lean out by batter × height.</source>
        <translation>सब कोट लगने के बाद जहाँ तक पानी छूता है। दीवारें सलामी × ऊँचाई जितनी बाहर को झुकी हैं।</translation>
    </message>
    <message>
        <source>Floor %1, walls along the slope %2, opening at the rim %3.</source>
        <translation>फ़र्श %1, दीवारें तिरछी नाप से %2, मुंडेर पर मुँह %3।</translation>
    </message>
    <message>
        <source>Latitude, weather, source and needs are not known yet: see the tab Water.</source>
        <translation>अक्षांश, मौसम, स्रोत और ज़रूरतें अभी पता नहीं: “पानी” टैब देखें।</translation>
    </message>
    <message>
        <source>Reference evapotranspiration %1 a year, rain %2.</source>
        <translation>संदर्भ वाष्पोत्सर्जन साल का %1, बारिश %2।</translation>
    </message>
    <message>
        <source>Sizes that meet the target</source>
        <translation>लक्ष्य पूरा करने वाले नाप</translation>
    </message>
    <message>
        <source>smallest tank %1</source>
        <translation>सबसे छोटी टंकी %1</translation>
    </message>
    <message>
        <source>no tank up to %1</source>
        <translation>%1 तक की कोई टंकी नहीं</translation>
    </message>
    <message>
        <source>largest beds %1</source>
        <translation>सबसे बड़ी क्यारियाँ %1</translation>
    </message>
    <message>
        <source>no beds, however small</source>
        <translation>कोई क्यारी नहीं, चाहे जितनी छोटी हो</translation>
    </message>
    <message>
        <source>The tank&apos;s plan is made larger or smaller at the same depth and batter; the beds keep their shares. Every size is run through all weather years.</source>
        <translation>गहराई और सलामी वही रखकर टंकी लंबाई-चौड़ाई में छोटी-बड़ी की जाती है; क्यारियों के हिस्से वही रहते हैं। हर नाप को मौसम के सभी सालों पर आज़माया जाता है।</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>दस में से कितने साल, साल भर पानी</translation>
    </message>
    <message>
        <source>Each day: water held + source + runoff + rain − evaporation − seepage − need, kept between empty and full; a day is short of water when less than the need can be drawn.</source>
        <translation>हर दिन: टंकी का पानी + स्रोत + बहकर आया पानी + बारिश − भाप बना − रिसाव − ज़रूरत, खाली और भरी के बीच; जिस दिन ज़रूरत से कम पानी निकल सके, वह कमी का दिन है।</translation>
    </message>
    <message>
        <source>%1 of %2 weather years pass without a day short of water. Days met: %3, water met: %4.</source>
        <translation>मौसम के %2 में से %1 साल बिना किसी कमी के दिन के गुज़रते हैं। दिन जो पूरे पड़े: %3, पानी जो पूरा पड़ा: %4।</translation>
    </message>
    <message>
        <source>days short of water in a mean year %1, in the worst %2</source>
        <translation>कमी के दिन: औसत साल में %1, सबसे खराब साल में %2</translation>
    </message>
    <message>
        <source>almost any tank</source>
        <translation>लगभग कोई भी टंकी</translation>
    </message>
    <message>
        <source>beds of %1 or more</source>
        <translation>%1 या ज़्यादा क्यारियाँ</translation>
    </message>
    <message>
        <source>Target: %1 years in ten with water all year.</source>
        <translation>लक्ष्य: दस में से %1 साल, साल भर पानी।</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>खर्च, कुल</translation>
    </message>
    <message>
        <source>Money is not part of this project: see the tab Money.</source>
        <translation>पैसा इस प्रोजेक्ट में नहीं है: “पैसा” टैब देखें।</translation>
    </message>
    <message>
        <source>Materials %1, labour %2, other %3, carriage %4, contingency %5.</source>
        <translation>सामान %1, मज़दूरी %2, दूसरा खर्च %3, ढुलाई %4, अनदेखे खर्च %5।</translation>
    </message>
    <message>
        <source>Paid %1, given %2.</source>
        <translation>नकद %1, बिना पैसे दिया %2।</translation>
    </message>
    <message>
        <source>%1 for each cubic metre held.</source>
        <translation>हर घन मीटर पानी की जगह पर %1।</translation>
    </message>
    <message>
        <source>Prices that are missing: %1. The sum is too small.</source>
        <translation>जिन चीज़ों के दाम नहीं हैं: %1। जोड़ कम निकला है।</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>%1 से ज़्यादा</translation>
    </message>
    <message>
        <source>paid %1, given %2</source>
        <translation>नकद %1, बिना पैसे दिया %2</translation>
    </message>
    <message>
        <source>%1 after the first day of the works, %2</source>
        <translation>निर्माण के पहले दिन के %1 बाद, %2</translation>
    </message>
</context>
<context>
    <name>Handouts</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 से %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>morning</source>
        <translation>सुबह</translation>
    </message>
    <message>
        <source>noon</source>
        <translation>दोपहर</translation>
    </message>
    <message>
        <source>evening</source>
        <translation>शाम</translation>
    </message>
    <message>
        <source>Start filling no later than %1.</source>
        <translation>भराई %1 तक शुरू कर दें।</translation>
    </message>
    <message>
        <source>Filling begun. Until water covers a wall, its sacks stay on and stay wet.</source>
        <translation>भराई शुरू हुई। जब तक पानी दीवार को ढक न ले, उस पर बोरियाँ लगी और गीली रहें।</translation>
    </message>
    <message>
        <source>Work for each task</source>
        <translation>हर काम की मेहनत</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>कौन</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>मेहनत</translation>
    </message>
    <message>
        <source>Cover the fresh coat with sacks and keep them wet day and night, rest days too. Tick each wetting. Plaster that dries early cracks and leaks.</source>
        <translation>ताज़े कोट को बोरियों से ढकें और दिन-रात गीला रखें, छुट्टी के दिन भी। हर भिगाई पर निशान लगाएँ। जल्दी सूखा प्लास्टर फटता है और लीक करता है।</translation>
    </message>
    <message>
        <source>%1 across</source>
        <translation>व्यास %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>length by width</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Holds when full</source>
        <translation>भरी टंकी में पानी</translation>
    </message>
    <message>
        <source>Can be drawn from it</source>
        <translation>इसमें से निकल सकता है</translation>
    </message>
    <message>
        <source>Clear size at the floor</source>
        <translation>फ़र्श पर भीतरी नाप</translation>
    </message>
    <message>
        <source>Clear size at the rim</source>
        <translation>मुंडेर पर भीतरी नाप</translation>
    </message>
    <message>
        <source>Pit to dig, at the ground</source>
        <translation>खोदने का गड्ढा, ज़मीन पर</translation>
    </message>
    <message>
        <source>Pit depth to dig</source>
        <translation>गड्ढा कितना गहरा खोदें</translation>
    </message>
    <message>
        <source>Clear depth when finished</source>
        <translation>तैयार होने पर भीतरी गहराई</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>so many bags of so many kilograms</comment>
        <translation>%1, हर एक %2</translation>
    </message>
    <message>
        <source>Work, all together</source>
        <translation>मेहनत, कुल</translation>
    </message>
    <message>
        <source>Work starts</source>
        <translation>काम शुरू</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>भराई इस दिन तक शुरू करें</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for each bag.</source>
        <translation>खरीदने का सीमेंट: हर कट्टे का एक चित्र।</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for every %1 bags, the last may be part.</source>
        <translation>खरीदने का सीमेंट: हर %1 कट्टों का एक चित्र, आखिरी अधूरा हो सकता है।</translation>
    </message>
    <message>
        <source>Cement to buy</source>
        <translation>खरीदने का सीमेंट</translation>
    </message>
    <message>
        <source>No crew and dates were given, so these sheets have no work calendar and no wetting calendar.</source>
        <translation>टोली और तारीखें नहीं भरी गईं, इसलिए इन शीटों में काम का कैलेंडर और भिगाई का कैलेंडर नहीं है।</translation>
    </message>
    <message>
        <source>Clear sizes are what the water fills. Pit sizes are what is dug; the lining takes up the rest.</source>
        <translation>भीतरी नाप वह है जिसमें पानी भरता है। गड्ढे का नाप वह है जो खोदा जाता है; बाकी जगह लाइनिंग लेती है।</translation>
    </message>
    <message>
        <source>The construction sheets are marked NOT FOR CONSTRUCTION: see the findings.</source>
        <translation>निर्माण की शीटों पर “निर्माण के लिए नहीं” लिखा है: ध्यान की बातें देखें।</translation>
    </message>
    <message>
        <source>Where the pegs stand</source>
        <translation>खूँटियाँ कहाँ लगती हैं</translation>
    </message>
    <message>
        <source>Measured from the centre O; x toward A, y toward B.</source>
        <translation>बीच O से नापा हुआ; x खूँटी A की ओर, y खूँटी B की ओर।</translation>
    </message>
    <message>
        <source>Measured from peg A; x along side A to B, y square to it, into the pit.</source>
        <translation>खूँटी A से नापा हुआ; x भुजा A से B पर, y उससे गुनिया में, गड्ढे की ओर।</translation>
    </message>
    <message>
        <source>Peg</source>
        <translation>खूँटी</translation>
    </message>
    <message>
        <source>What it marks</source>
        <translation>किसका निशान</translation>
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
        <translation>फीते से जाँचें</translation>
    </message>
    <message>
        <source>From peg to peg</source>
        <translation>खूँटी से खूँटी</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>यह क्या है</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>लंबाई</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>जाँचा</translation>
    </message>
    <message>
        <source>Batter board: how far the pit wall has come in</source>
        <translation>सलामी का फर्मा: गड्ढे की दीवार कितनी अंदर आ गई है</translation>
    </message>
    <message>
        <source>Depth below ground</source>
        <translation>ज़मीन से नीचे गहराई</translation>
    </message>
    <message>
        <source>In from the pit edge</source>
        <translation>गड्ढे के किनारे से अंदर</translation>
    </message>
    <message>
        <source>Depth rod: marks measured down from the string at ground level</source>
        <translation>गहराई की छड़: निशान, ज़मीन के बराबर बँधी डोरी से नीचे नापे हुए</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>स्तर</translation>
    </message>
    <message>
        <source>Below the string</source>
        <translation>डोरी से नीचे</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>निशान लगा</translation>
    </message>
    <message>
        <source>Walls stand upright.</source>
        <translation>दीवारें सीधी खड़ी हैं।</translation>
    </message>
    <message>
        <source>Walls lean outward: %1 out for each %2 up.</source>
        <translation>दीवारें बाहर को झुकी हैं: %2 ऊपर जाने पर %1 बाहर।</translation>
    </message>
    <message>
        <source>Clear sizes are inside the finished plaster. Pit sizes are what is dug, before any lining. </source>
        <translation>भीतरी नाप तैयार प्लास्टर के अंदर का है। गड्ढे का नाप वह है जो लाइनिंग से पहले खोदा जाता है। </translation>
    </message>
    <message>
        <source>Section A-A of the plan. </source>
        <translation>ऊपर के नक्शे की काट A-A। </translation>
    </message>
    <message>
        <source>Foot of the wall, enlarged. Thickness of a coat is measured square to its face.</source>
        <translation>दीवार की जड़, बड़ी करके। कोट की मोटाई उसकी सतह से गुनिया में नापी जाती है।</translation>
    </message>
    <message>
        <source>NOT FOR CONSTRUCTION</source>
        <translation>निर्माण के लिए नहीं</translation>
    </message>
    <message>
        <source>Caution. Pit walls can fall in: never work alone, keep spoil %1 back, keep a ladder in the pit. Cement burns skin and eyes, its dust harms the lungs: gloves, boots, wash at once. Lift bags two together. Fence the pit: people fall in and drown.</source>
        <translation>सावधान। गड्ढे की दीवारें ढह सकती हैं: कभी अकेले काम न करें, निकली मिट्टी %1 दूर रखें, गड्ढे में सीढ़ी रखें। सीमेंट चमड़ी और आँखें जलाता है, इसकी धूल फेफड़े खराब करती है: दस्ताने और जूते पहनें, तुरंत धोएँ। कट्टे दो लोग मिलकर उठाएँ। गड्ढे पर बाड़ लगाएँ: लोग गिरकर डूब जाते हैं।</translation>
    </message>
    <message>
        <source>This bar is 100 mm on a true print.</source>
        <translation>सही छपाई में यह पट्टी 100 mm की है।</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>पन्ना %1 / %2</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first.</source>
        <translation>स्थानीय नियम और लाइसेंसधारी पेशेवर की राय सबसे पहले आती है।</translation>
    </message>
    <message>
        <source>Design mark %1</source>
        <translation>डिज़ाइन का निशान %1</translation>
    </message>
    <message>
        <source>Work %1 to %2</source>
        <translation>काम %1 से %2</translation>
    </message>
    <message>
        <source>Farm water tank</source>
        <translation>खेत की पानी की टंकी</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>जवाब नहीं</translation>
    </message>
    <message>
        <source>How each is reckoned</source>
        <translation>हर एक का हिसाब कैसे लगा</translation>
    </message>
    <message>
        <source>Net: each coat&apos;s exact shell, taken from the geometry, times %1 loose parts for one of placed plaster, shared out by the parts of its mix. Cement weighs %2 loose.</source>
        <translation>असल: हर कोट का सटीक खोल, ज्यामिति से लिया हुआ, गुणा %1 भाग ढीला सामान एक भाग लगे प्लास्टर के लिए, मिश्रण के भागों में बाँटा। ढीले सीमेंट का भार %2।</translation>
    </message>
    <message>
        <source>Order: net with %1 for uneven dug faces (stone bed and coat 1) and %2 waste; soil and sand with %3 sieving loss, damp sand with %4 bulking; loose stone is %5 times the compacted bed; cement in whole bags of %6.</source>
        <translation>मँगाएँ: असल में ऊबड़-खाबड़ खुदी सतह (पत्थर की सोलिंग और कोट 1) का %1 और छीजन %2 जोड़कर; मिट्टी और रेत में छनाई का घाटा %3, नम रेत का फूलना %4; ढीला पत्थर कुटी सोलिंग का %5 गुना; सीमेंट %6 के पूरे कट्टों में।</translation>
    </message>
    <message>
        <source>Water: %1 for mixing, %2 for wetting each coat. Sacks: %3 each, %4 spare.</source>
        <translation>पानी: मिलाने के लिए %1, हर कोट की भिगाई के लिए %2। बोरियाँ: एक पर %3, फालतू %4।</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>परतें</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>परत</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>मोटाई</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>सतह</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>आयतन</translation>
    </message>
    <message>
        <source>Trust two, and the third follows</source>
        <translation>दो पर भरोसा करें, तीसरा उन्हीं से निकलता है</translation>
    </message>
    <message>
        <source>If these are right</source>
        <translation>अगर ये सही हैं</translation>
    </message>
    <message>
        <source>then</source>
        <translation>तो</translation>
    </message>
    <message>
        <source>by exact shells</source>
        <translation>सटीक खोल से</translation>
    </message>
    <message>
        <source>by area × thickness</source>
        <translation>क्षेत्रफल × मोटाई से</translation>
    </message>
    <message>
        <source>thickness and mix</source>
        <translation>मोटाई और मिश्रण</translation>
    </message>
    <message>
        <source>cement is</source>
        <translation>सीमेंट है</translation>
    </message>
    <message>
        <source>cement and mix</source>
        <translation>सीमेंट और मिश्रण</translation>
    </message>
    <message>
        <source>coats are</source>
        <translation>कोट हैं</translation>
    </message>
    <message>
        <source>cement and thickness</source>
        <translation>सीमेंट और मोटाई</translation>
    </message>
    <message>
        <source>mixes are, soil : sand : cement</source>
        <translation>मिश्रण हैं, मिट्टी : रेत : सीमेंट</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>असल</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>मँगाएँ</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>खरीदा</translation>
    </message>
    <message>
        <source>On site</source>
        <translation>मौके पर</translation>
    </message>
    <message>
        <source>The customary bill as it was given stands beside what thicknesses and mixes need. Nothing has been scaled or averaged; all figures are net, without waste. Ratio: computed over customary.</source>
        <translation>चलन की सूची, जैसी दी गई, मोटाई और मिश्रण के हिसाब के साथ-साथ रखी है। कुछ भी बढ़ाया-घटाया या औसत नहीं किया गया; सब आँकड़े असल हैं, छीजन के बिना। अनुपात: हिसाब ÷ चलन।</translation>
    </message>
    <message>
        <source>Customary</source>
        <translation>चलन</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>सटीक खोल</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>अनुपात</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>क्षेत्रफल × मोटाई</translation>
    </message>
    <message>
        <source>Exact shells: the solid between the outer and inner face of each coat. Area × thickness: the clear inside face times the thickness, as reckoned on paper; it leaves out what the corners add.</source>
        <translation>सटीक खोल: हर कोट की बाहरी और भीतरी सतह के बीच का ठोस। क्षेत्रफल × मोटाई: भीतरी सतह गुणा मोटाई, जैसा कागज पर हिसाब लगाते हैं; कोनों में जो बढ़ता है वह इसमें छूट जाता है।</translation>
    </message>
    <message>
        <source>Soil for one part of sand: %1 in the bill, %2 in the mixes.</source>
        <translation>एक भाग रेत पर मिट्टी: सूची में %1, मिश्रणों में %2।</translation>
    </message>
    <message>
        <source>Which two to trust is for the people on site to settle, by measuring a finished coat and counting the bags that went into it.</source>
        <translation>किन दो पर भरोसा करें, यह मौके के लोग तय करें: तैयार कोट नापकर और उसमें लगे कट्टे गिनकर।</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सीमेंट</translation>
    </message>
    <message>
        <source>Makes plaster</source>
        <translation>प्लास्टर बनता है</translation>
    </message>
    <message>
        <source>Covers at this thickness</source>
        <translation>इस मोटाई पर ढकता है</translation>
    </message>
    <message>
        <source>Batches for the whole coat</source>
        <translation>पूरे कोट के घान</translation>
    </message>
    <message>
        <source>Coat %1: %2 thick on %3</source>
        <translation>कोट %1: मोटाई %2, सतह %3</translation>
    </message>
    <message>
        <source>%1 soil : %2 sand : %3 cement, by loose volume</source>
        <translation>%1 मिट्टी : %2 रेत : %3 सीमेंट, ढीले नाप से</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>मिट्टी</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>रेत</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>सीमेंट</translation>
    </message>
    <message>
        <source>For one batch</source>
        <translation>एक घान के लिए</translation>
    </message>
    <message>
        <source>1 bag of cement</source>
        <translation>सीमेंट का 1 कट्टा</translation>
    </message>
    <message>
        <source>half a bag</source>
        <translation>आधा कट्टा</translation>
    </message>
    <message>
        <source>Measure loose, level with the rim. Mix dry until one colour, then add clean water little by little.</source>
        <translation>बिना दबाए, किनारे तक बराबर भरकर नापें। सूखा मिलाएँ जब तक एक रंग न हो जाए, फिर साफ़ पानी थोड़ा-थोड़ा डालें।</translation>
    </message>
    <message>
        <source>Tick a box for each one-bag batch:</source>
        <translation>एक कट्टे वाले हर घान पर एक खाने में निशान लगाएँ:</translation>
    </message>
    <message>
        <source>Tick a box for every %1 one-bag batches:</source>
        <translation>एक कट्टे वाले हर %1 घान पर एक खाने में निशान लगाएँ:</translation>
    </message>
    <message>
        <source>The tank at a glance</source>
        <translation>टंकी एक नज़र में</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one</source>
        <translation>चलन की सूची और हिसाब, साथ-साथ</translation>
    </message>
    <message>
        <source>Mix cards</source>
        <translation>मिश्रण के कार्ड</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>ऊपर से नक्शा</translation>
    </message>
    <message>
        <source>Section A-A</source>
        <translation>काट A-A</translation>
    </message>
    <message>
        <source>Foot of the wall and depth rod</source>
        <translation>दीवार की जड़ और गहराई की छड़</translation>
    </message>
    <message>
        <source>Setting out</source>
        <translation>ले-आउट</translation>
    </message>
    <message>
        <source>Work calendar</source>
        <translation>काम का कैलेंडर</translation>
    </message>
    <message>
        <source>Wetting calendar</source>
        <translation>भिगाई का कैलेंडर</translation>
    </message>
    <message>
        <source>Dip-stick</source>
        <translation>पानी नापने की छड़</translation>
    </message>
    <message>
        <source>Working and living safely</source>
        <translation>सुरक्षित काम और रहन-सहन</translation>
    </message>
    <message>
        <source>Findings and their sources</source>
        <translation>ध्यान की बातें और उनके संदर्भ</translation>
    </message>
    <message>
        <source>Water at</source>
        <translation>पानी इतने पर</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>टंकी में पानी</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>खुदाई</translation>
    </message>
    <message>
        <source>Pit walls fall in without warning. Stop and get out when you see cracks along the edge, bulging, or water in the wall.</source>
        <translation>गड्ढे की दीवारें बिना चेतावनी ढहती हैं। किनारे पर दरार, दीवार का फूलना या दीवार में पानी दिखे तो काम रोकें और बाहर निकलें।</translation>
    </message>
    <message>
        <source>Keep spoil, stones, bags and animals at least %1 back from the edge.</source>
        <translation>निकली मिट्टी, पत्थर, कट्टे और पशु किनारे से कम से कम %1 दूर रखें।</translation>
    </message>
    <message>
        <source>Keep a ladder in the pit at all times. No one digs alone; someone stays at the top.</source>
        <translation>गड्ढे में हर समय सीढ़ी रखें। कोई अकेले न खोदे; एक आदमी ऊपर रहे।</translation>
    </message>
    <message>
        <source>Never dig under a wall, and never stand in a narrow cut deeper than your waist without support.</source>
        <translation>दीवार के नीचे कभी न खोदें, और कमर से गहरी तंग खुदाई में बिना टेक के कभी खड़े न हों।</translation>
    </message>
    <message>
        <source>Bags and stones: two people, backs straight, paths clear and dry.</source>
        <translation>कट्टे और पत्थर: दो लोग उठाएँ, पीठ सीधी रखें, रास्ता साफ़ और सूखा हो।</translation>
    </message>
    <message>
        <source>Wet cement burns skin and eyes. Wear gloves, boots and long sleeves; wash splashes off at once with much clean water.</source>
        <translation>गीला सीमेंट चमड़ी और आँखें जलाता है। दस्ताने, जूते और पूरी बाँह के कपड़े पहनें; छींटे तुरंत खूब साफ़ पानी से धोएँ।</translation>
    </message>
    <message>
        <source>Cement dust harms the lungs. Open bags with the wind behind you, cover nose and mouth.</source>
        <translation>सीमेंट की धूल फेफड़े खराब करती है। हवा को पीठ देकर कट्टे खोलें, नाक और मुँह ढकें।</translation>
    </message>
    <message>
        <source>No bare feet in the mix. Children stay away.</source>
        <translation>मसाले में नंगे पैर न जाएँ। बच्चे दूर रहें।</translation>
    </message>
    <message>
        <source>The finished tank</source>
        <translation>तैयार टंकी</translation>
    </message>
    <message>
        <source>A child can drown in it, and no one can climb out of smooth sloping walls. Fence all four sides, with a gate that shuts.</source>
        <translation>इसमें बच्चा डूब सकता है, और चिकनी ढालू दीवारों से कोई चढ़कर बाहर नहीं निकल सकता। चारों ओर बाड़ लगाएँ, बंद होने वाला फाटक रखें।</translation>
    </message>
    <message>
        <source>Fix a ladder or a knotted rope that reaches the floor, and keep a float beside it.</source>
        <translation>फ़र्श तक पहुँचने वाली सीढ़ी या गाँठों वाली रस्सी पक्की बाँधें, और पास में तैरने वाली चीज़ रखें।</translation>
    </message>
    <message>
        <source>An empty tank is a pit: keep the fence shut while it is dry, and never go in alone.</source>
        <translation>खाली टंकी भी एक गड्ढा है: सूखी हो तब भी बाड़ बंद रखें, और अकेले कभी अंदर न जाएँ।</translation>
    </message>
    <message>
        <source>The water is for fields and animals. It is not drinking water.</source>
        <translation>यह पानी खेतों और पशुओं के लिए है। यह पीने का पानी नहीं है।</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first. On a slope, on filled ground, near a house or a drop, or where ground water is high, ask a licensed engineer before digging.</source>
        <translation>स्थानीय नियम और लाइसेंसधारी पेशेवर की राय सबसे पहले आती है। ढलान पर, भराव की ज़मीन पर, घर या खड़ी ढाल के पास, या जहाँ भूजल ऊँचा हो, वहाँ खोदने से पहले लाइसेंसधारी इंजीनियर से पूछें।</translation>
    </message>
    <message>
        <source>Stand a marked stick upright on the finished floor, read where it is wet, and look up what the tank holds.</source>
        <translation>निशान वाली छड़ तैयार फ़र्श पर सीधी खड़ी करें, जहाँ तक गीली हो वहाँ पढ़ें, और देखें कि टंकी में कितना पानी है।</translation>
    </message>
    <message>
        <source>Full to the overflow at %1: %2.</source>
        <translation>ओवरफ्लो तक भरी, %1 पर: %2।</translation>
    </message>
    <message>
        <source>Below %1 no water can be drawn; %2 stay in the tank.</source>
        <translation>%1 के नीचे का पानी नहीं निकल सकता; %2 टंकी में रह जाता है।</translation>
    </message>
    <message>
        <source>What a practitioner should look at before building. A finding is not a verdict; what is not known never counts as safe.</source>
        <translation>बनाने से पहले जानकार को क्या-क्या देखना चाहिए। ध्यान की बात कोई फ़ैसला नहीं है; जो पता नहीं है उसे कभी सुरक्षित नहीं माना जाता।</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>संदर्भ: %1</translation>
    </message>
    <message>
        <source>How much does the tap or spring give? Catch all of its water in a vessel of known size and take the time until it is full.</source>
        <translation>नल या चश्मा कितना पानी देता है? सारा पानी जाने-पहचाने नाप के बर्तन में लें और देखें कि वह कितने समय में भरता है।</translation>
    </message>
    <message>
        <source>Take a vessel that needs %1 or longer to fill; a larger one where it fills sooner.</source>
        <translation>ऐसा बर्तन लें जिसे भरने में %1 या ज़्यादा लगे; जल्दी भर जाए तो बड़ा बर्तन लें।</translation>
    </message>
    <message>
        <source>Fill it, read the seconds, empty it, and do it again: more than %1 readings each time you come. One line for each reading.</source>
        <translation>भरें, सेकंड पढ़ें, खाली करें, और फिर करें: हर बार आने पर %1 से ज़्यादा नाप लें। हर नाप के लिए एक लाइन।</translation>
    </message>
    <message>
        <source>Where it fills quickly, fill it several times running: a stroke in the tally for each time, and the seconds for all of them together.</source>
        <translation>जहाँ जल्दी भरता हो, लगातार कई बार भरें: हर बार के लिए एक लकीर, और सबके सेकंड मिलाकर।</translation>
    </message>
    <message>
        <source>Come back in every month, above all in the driest. The flow of the dry months decides.</source>
        <translation>हर महीने फिर नापें, सबसे ज़रूरी सबसे सूखे महीने में। सूखे महीनों का बहाव ही तय करता है।</translation>
    </message>
    <message>
        <source>Litres in a minute: litres of the vessel × strokes × %1 ÷ seconds.</source>
        <translation>एक मिनट में लीटर: बर्तन के लीटर × लकीरें × %1 ÷ सेकंड।</translation>
    </message>
    <message>
        <source>Tap or spring:</source>
        <translation>नल या चश्मा:</translation>
    </message>
    <message>
        <source>Measured by:</source>
        <translation>किसने नापा:</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>तारीख</translation>
    </message>
    <message>
        <source>Vessel, litres</source>
        <translation>बर्तन, लीटर</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>सेकंड</translation>
    </message>
    <message>
        <source>Times filled, tally</source>
        <translation>कितनी बार भरा, लकीरें</translation>
    </message>
    <message>
        <source>Remarks: weather, hours it runs</source>
        <translation>बात: मौसम, कितने घंटे चलता है</translation>
    </message>
    <message>
        <source>Water through the year</source>
        <translation>साल भर का पानी</translation>
    </message>
    <message>
        <source>Flow log</source>
        <translation>बहाव का रजिस्टर</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>आमद और ज़रूरत</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>टंकी का नाप और क्यारियाँ</translation>
    </message>
    <message>
        <source>Figures of the water balance</source>
        <translation>पानी के हिसाब के आँकड़े</translation>
    </message>
    <message>
        <source>Flow,
%1</source>
        <translation>बहाव,
%1</translation>
    </message>
    <message>
        <source>Hours a day</source>
        <translation>दिन में घंटे</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>महीना</translation>
    </message>
    <message>
        <source>Tap or spring</source>
        <translation>नल या चश्मा</translation>
    </message>
    <message>
        <source>Readings with bucket and watch:</source>
        <translation>बाल्टी और घड़ी से नाप:</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>बारिश</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>बारिश के दिन</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>सबसे कम</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>सबसे ज़्यादा</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>नमी</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>हवा</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>धूप</translation>
    </message>
    <message>
        <source>Weather, means of many years</source>
        <translation>मौसम, कई सालों का औसत</translation>
    </message>
    <message>
        <source>Left out because of gaps, years that begin in: %1.</source>
        <translation>खाली जगहों के कारण छोड़े गए साल, जो शुरू होते हैं: %1।</translation>
    </message>
    <message>
        <source>Values put in for gaps: %1.</source>
        <translation>खाली जगहों में भरे गए मान: %1।</translation>
    </message>
    <message>
        <source>%1 of daily weather are made from the monthly means, by a chain of wet and dry days with gamma amounts, %2. The draw starts with the number %3: the same number gives the same weather.</source>
        <translation>रोज़ का मौसम, %1 का, महीनों के औसत से बनाया गया है: बारिश और सूखे दिनों की कड़ी, मात्रा गामा वितरण से, %2। ड्रॉ अंक %3 से शुरू होता है: वही अंक दें तो वही मौसम मिलता है।</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>मौसम के साल</translation>
    </message>
    <message>
        <source>Rain in a mean year: %1; spread from year to year (standard deviation over mean): %2.</source>
        <translation>औसत साल की बारिश: %1; साल-दर-साल का फैलाव (मानक विचलन ÷ औसत): %2।</translation>
    </message>
    <message>
        <source>Reference evapotranspiration ET0 in a mean year: Penman-Monteith %1 %2, Hargreaves %3 %4. Reckoned with: %5.</source>
        <translation>औसत साल का संदर्भ वाष्पोत्सर्जन ET0: पेनमैन-मोंटीथ %1 %2, हारग्रीव्स %3 %4। हिसाब इससे लगा: %5।</translation>
    </message>
    <message>
        <source>Water at the end of a day = water at its start + tap or spring + runoff led in + rain on the tank − evaporation − seepage − drawn.</source>
        <translation>दिन के अंत का पानी = दिन के शुरू का पानी + नल या चश्मा + बहकर लाया गया पानी + टंकी पर बारिश − भाप बना − रिसाव − निकाला गया।</translation>
    </message>
    <message>
        <source>It is never less than none and never more than full: what is more runs over. No water is drawn from below the outlet. Evaporation is ET0 × the factor of open water × the water&apos;s surface; seepage goes through the wetted plaster. A bed needs what its crop uses and rain does not bring, over the share that reaches the roots, %1.</source>
        <translation>यह न कभी शून्य से कम होता है, न भरी टंकी से ज़्यादा: जो ज़्यादा है वह ऊपर से बहता है। निकास के नीचे से पानी नहीं निकलता। भाप बनकर उड़ना = ET0 × खुले पानी का गुणक × पानी की सतह; रिसाव गीले प्लास्टर से होता है। क्यारी को उतना चाहिए जितना फसल लेती है और बारिश नहीं देती, भाग वह हिस्सा जो जड़ों तक पहुँचता है, %1।</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>पता नहीं</translation>
    </message>
    <message>
        <source>not known, %1 taken</source>
        <translation>पता नहीं, %1 माना</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>भरा गया</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>आँकड़े कहाँ से आए</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>सं.</translation>
    </message>
    <message>
        <source>Source, and how well it is founded</source>
        <translation>संदर्भ, और वह कितना पक्का है</translation>
    </message>
    <message>
        <source>What was entered</source>
        <translation>क्या भरा गया</translation>
    </message>
    <message>
        <source>What</source>
        <translation>क्या</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>मान</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>संदर्भ</translation>
    </message>
    <message>
        <source>What is usual, to hold the figures against</source>
        <translation>आम तौर पर कितना होता है, मिलाकर देखने के लिए</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>आँकड़ा</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>कम</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>आम</translation>
    </message>
    <message>
        <source>High</source>
        <translation>ज़्यादा</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>क्यारियाँ</translation>
    </message>
    <message>
        <source>Net need: what the crop uses and rain does not bring. Drawn: net need over the share that reaches the roots (%1).</source>
        <translation>असल ज़रूरत: जितना फसल लेती है और बारिश नहीं देती। निकाला: असल ज़रूरत भाग वह हिस्सा जो जड़ों तक पहुँचता है (%1)।</translation>
    </message>
    <message>
        <source>Crop, season</source>
        <translation>फसल, समय</translation>
    </message>
    <message>
        <source>Watered by, reaches the roots</source>
        <translation>सिंचाई का तरीका, जड़ों तक पहुँचता</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>क्षेत्रफल</translation>
    </message>
    <message>
        <source>Crop use, net need</source>
        <translation>फसल लेती है, असल ज़रूरत</translation>
    </message>
    <message>
        <source>Drawn in a year</source>
        <translation>साल में निकाला</translation>
    </message>
    <message>
        <source>Peak in a day</source>
        <translation>दिन में सबसे ज़्यादा</translation>
    </message>
    <message>
        <source>Crops</source>
        <translation>फसलें</translation>
    </message>
    <message>
        <source>Kc: use of the crop over ET0. p: share of the water in the root zone that may be used before the crop suffers. Sources: %1; Kc for this climate, daily use and root zone: %2, eq. 62, 65, 66 and 82 to 85.</source>
        <translation>Kc: ET0 के मुकाबले फसल कितना लेती है। p: जड़ों की मिट्टी के पानी का वह हिस्सा जो फसल को नुकसान होने से पहले लग सकता है। संदर्भ: %1; इस जलवायु का Kc, रोज़ की खपत और जड़ों की मिट्टी: %2, समी. 62, 65, 66 और 82 से 85।</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>फसल</translation>
    </message>
    <message>
        <source>Kc: first, mid, end</source>
        <translation>Kc: शुरुआत, बीच, अंत</translation>
    </message>
    <message>
        <source>Kc for this climate</source>
        <translation>इस जलवायु का Kc</translation>
    </message>
    <message>
        <source>Stages, days</source>
        <translation>अवस्थाएँ, दिन</translation>
    </message>
    <message>
        <source>Height, roots</source>
        <translation>ऊँचाई, जड़ें</translation>
    </message>
    <message>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>पशु</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>पशु</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>कितने</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>हर एक पीता है</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 से कम</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>महीने-महीने</translation>
    </message>
    <message>
        <source>Means of all years reckoned: good years bring more than this, bad years less. Read the stick on the first of each month and write it down; tick the months in which the water lasted.</source>
        <translation>हिसाब के सब सालों का औसत: अच्छे साल इससे ज़्यादा लाते हैं, खराब साल कम। हर महीने की पहली तारीख को छड़ पढ़ें और लिखें; जिस महीने पानी पूरा पड़ा उस पर निशान लगाएँ।</translation>
    </message>
    <message>
        <source>Needed each day</source>
        <translation>रोज़ चाहिए</translation>
    </message>
    <message>
        <source>Read on the stick</source>
        <translation>छड़ पर पढ़ा</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>पूरा पड़ा</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>साल में</translation>
    </message>
    <message>
        <source>Comes in</source>
        <translation>आता है</translation>
    </message>
    <message>
        <source>Runoff of the roof</source>
        <translation>छत से बहकर आया</translation>
    </message>
    <message>
        <source>Runoff of the ground</source>
        <translation>ज़मीन से बहकर आया</translation>
    </message>
    <message>
        <source>Rain on the tank</source>
        <translation>टंकी पर बारिश</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>कुल</translation>
    </message>
    <message>
        <source>Goes out</source>
        <translation>जाता है</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>भाप बना</translation>
    </message>
    <message>
        <source>Seepage</source>
        <translation>रिसाव</translation>
    </message>
    <message>
        <source>Runs over</source>
        <translation>ऊपर से बहा</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>निकाला</translation>
    </message>
    <message>
        <source>Is needed for</source>
        <translation>इनके लिए चाहिए</translation>
    </message>
    <message>
        <source>People</source>
        <translation>लोग</translation>
    </message>
    <message>
        <source>Of this</source>
        <translation>इसमें से</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>कमी</translation>
    </message>
    <message>
        <source>Means of %1. What comes in equals what goes out within %2.</source>
        <translation>%1 का औसत। जितना आता है और जितना जाता है, उनमें अंतर %2 से ज़्यादा नहीं।</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 more than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>%1 का औसत। औसत साल के अंत में टंकी में शुरू से %2 ज़्यादा पानी रहता है; इसे गिनकर, जितना आता है और जितना जाता है, उनमें अंतर %3 से ज़्यादा नहीं।</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 less than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>%1 का औसत। औसत साल के अंत में टंकी में शुरू से %2 कम पानी रहता है; इसे गिनकर, जितना आता है और जितना जाता है, उनमें अंतर %3 से ज़्यादा नहीं।</translation>
    </message>
    <message>
        <source>almost any</source>
        <translation>लगभग कोई भी</translation>
    </message>
    <message>
        <source>none up to %1</source>
        <translation>%1 तक कोई नहीं</translation>
    </message>
    <message>
        <source>none</source>
        <translation>कोई नहीं</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 या ज़्यादा</translation>
    </message>
    <message>
        <source>Years in ten with water all year: wanted</source>
        <translation>दस में से कितने साल, साल भर पानी: चाहिए</translation>
    </message>
    <message>
        <source>Years in ten with water all year: as planned</source>
        <translation>दस में से कितने साल, साल भर पानी: इस योजना में</translation>
    </message>
    <message>
        <source>This tank holds when full</source>
        <translation>भरी हो तो इस टंकी में पानी</translation>
    </message>
    <message>
        <source>Smallest tank for the years wanted, same depth</source>
        <translation>जितने साल चाहिए उनके लिए सबसे छोटी टंकी, गहराई वही</translation>
    </message>
    <message>
        <source>Beds as entered</source>
        <translation>क्यारियाँ, जैसी भरी गईं</translation>
    </message>
    <message>
        <source>Largest beds for the years wanted, this tank</source>
        <translation>जितने साल चाहिए उनके लिए सबसे बड़ी क्यारियाँ, टंकी यही</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>सवाल</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>जवाब</translation>
    </message>
    <message>
        <source>Find the size of a tank at the foot of the first picture and the area of beds at its left: where they meet it says in how many years of ten the water lasts.</source>
        <translation>पहले चित्र में नीचे टंकी का नाप और बाईं ओर क्यारियों का क्षेत्रफल खोजें: जहाँ दोनों मिलें, वहाँ लिखा है कि दस में से कितने साल पानी पूरा पड़ता है।</translation>
    </message>
    <message>
        <source>A finding says stop; overridden by %1, licence %2, on %3: %4.</source>
        <translation>एक ध्यान की बात कहती है: रुकें; %1, लाइसेंस %2, ने %3 को ज़िम्मा लेकर आगे बढ़ाया: %4।</translation>
    </message>
    <message>
        <source>Comes in, in the month</source>
        <translation>महीने में आता है</translation>
    </message>
    <message>
        <source>Days short of water</source>
        <translation>कमी के दिन</translation>
    </message>
    <message>
        <source>%1, class %2</source>
        <translation>%1, क्लास %2</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>टंकी भरी</translation>
    </message>
    <message>
        <source>Nearly empty</source>
        <translation>लगभग खाली</translation>
    </message>
    <message>
        <source>Flow, end wide open</source>
        <translation>बहाव, सिरा पूरा खुला</translation>
    </message>
    <message>
        <source>By Hazen-Williams, to check</source>
        <translation>हेज़न-विलियम्स से, जाँच के लिए</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>गति</translation>
    </message>
    <message>
        <source>Head that drives the flow</source>
        <translation>बहाव चलाने वाला हेड</translation>
    </message>
    <message>
        <source>Lost by friction</source>
        <translation>रगड़ में गया</translation>
    </message>
    <message>
        <source>Lost in bends and valves</source>
        <translation>मोड़ और वाल्व में गया</translation>
    </message>
    <message>
        <source>Leaves as velocity</source>
        <translation>गति बनकर निकला</translation>
    </message>
    <message>
        <source>Water over its end</source>
        <translation>सिरे से ऊपर पानी</translation>
    </message>
    <message>
        <source>Pressure, end shut</source>
        <translation>दबाव, सिरा बंद</translation>
    </message>
    <message>
        <source>Left of the pressure class</source>
        <translation>प्रेशर क्लास में बाकी</translation>
    </message>
    <message>
        <source>bore measured</source>
        <translation>भीतरी व्यास नापा हुआ</translation>
    </message>
    <message>
        <source>at %1, %2 over the way before it</source>
        <translation>%1 पर, पहले के रास्ते से %2 ऊपर</translation>
    </message>
    <message>
        <source>Pipe: %1; bore %2, length %3.</source>
        <translation>पाइप: %1; भीतरी व्यास %2, लंबाई %3।</translation>
    </message>
    <message>
        <source>High points: %1.</source>
        <translation>ऊँची जगहें: %1।</translation>
    </message>
    <message>
        <source>Friction by Darcy-Weisbach and Colebrook-White: %1
Cross-check: %2</source>
        <translation>रगड़ डार्सी-वाइसबाख और कोलब्रुक-व्हाइट से: %1
दूसरी विधि से जाँच: %2</translation>
    </message>
    <message>
        <source>As it flows</source>
        <translation>बहाव कैसा है</translation>
    </message>
    <message>
        <source>From the source to the tank</source>
        <translation>स्रोत से टंकी तक</translation>
    </message>
    <message>
        <source>Top over the water</source>
        <translation>पानी से ऊपर चोटी</translation>
    </message>
    <message>
        <source>Most that it may be, at rest</source>
        <translation>ज़्यादा से ज़्यादा इतनी, पानी ठहरा हो</translation>
    </message>
    <message>
        <source>Left of it with the valve open</source>
        <translation>वाल्व खुला हो तब बाकी</translation>
    </message>
    <message>
        <source>Pressure at the top, as head</source>
        <translation>चोटी पर दबाव, हेड में</translation>
    </message>
    <message>
        <source>Speed that clears air</source>
        <translation>हवा निकालने वाली गति</translation>
    </message>
    <message>
        <source>Most flow the top allows</source>
        <translation>चोटी से ज़्यादा से ज़्यादा बहाव</translation>
    </message>
    <message>
        <source>Water that fills it</source>
        <translation>इसे भरने का पानी</translation>
    </message>
    <message>
        <source>The siphon</source>
        <translation>साइफन</translation>
    </message>
    <message>
        <source>Speed that clears air: %1</source>
        <translation>हवा निकालने वाली गति: %1</translation>
    </message>
    <message>
        <source>Head left at them</source>
        <translation>वहाँ बचा हेड</translation>
    </message>
    <message>
        <source>Head wanted</source>
        <translation>चाहिए हेड</translation>
    </message>
    <message>
        <source>Outlet, %1; open at a time: %2</source>
        <translation>निकास, %1; एक साथ खुले: %2</translation>
    </message>
    <message>
        <source>Drawing the tank down, end wide open</source>
        <translation>टंकी का खाली होना, सिरा पूरा खुला</translation>
    </message>
    <message>
        <source>From the tank to the field</source>
        <translation>टंकी से खेत तक</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>चिपकाव c</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>घर्षण φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>इकाई भार γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut</source>
        <translation>सीधे खड़े कटान की ऊँचाई</translation>
    </message>
    <message>
        <source>This face, Culmann, just stands</source>
        <translation>यह कटान, कलमैन से, बस टिका</translation>
    </message>
    <message>
        <source>This face, Culmann, factor %1</source>
        <translation>यह कटान, कलमैन से, गुणांक %1</translation>
    </message>
    <message>
        <source>Stability number c / (γ H)</source>
        <translation>स्थिरता संख्या c / (γ H)</translation>
    </message>
    <message>
        <source>This face by that number</source>
        <translation>यह कटान उस संख्या से</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>उससे इस कटान का गुणांक</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Vertical cut</source>
        <translation>सीधा खड़ा कटान</translation>
    </message>
    <message>
        <source>Culmann, plane slip through the toe, face β</source>
        <translation>कलमैन, पैर से होकर समतल खिसकन, कटान का कोण β</translation>
    </message>
    <message>
        <source>Stability number, circles through the toe</source>
        <translation>स्थिरता संख्या, पैर से गुज़रते घेरे</translation>
    </message>
    <message>
        <source>A factor F is put on cohesion and friction alike: c / F and tan φ / F. No water in the face, no crack, nothing standing on its edge.</source>
        <translation>गुणांक F चिपकाव और घर्षण दोनों पर बराबर लगाया गया है: c / F और tan φ / F। कटान में पानी नहीं, दरार नहीं, किनारे पर कुछ खड़ा नहीं।</translation>
    </message>
    <message>
        <source>Cut: the wall of the pit</source>
        <translation>कटान: गड्ढे की दीवार</translation>
    </message>
    <message>
        <source>Face at %1 from the level, pit %2 deep, factor wanted %3.</source>
        <translation>कटान समतल से %1 पर, गड्ढा %2 गहरा, चाहिए गुणांक %3।</translation>
    </message>
    <message>
        <source>The soil is not known, so no height is reckoned.</source>
        <translation>मिट्टी पता नहीं है, इसलिए ऊँचाई का हिसाब नहीं लगाया गया।</translation>
    </message>
    <message>
        <source>Strength of the soil %1</source>
        <translation>मिट्टी की मज़बूती %1</translation>
    </message>
    <message>
        <source>–: friction alone holds the face, or it lies outside the table of stability numbers. Judge by the low strengths.</source>
        <translation>–: कटान केवल घर्षण से टिका है, या वह स्थिरता संख्याओं की तालिका से बाहर है। कम मज़बूती से फ़ैसला करें।</translation>
    </message>
    <message>
        <source>Tank empty</source>
        <translation>टंकी खाली</translation>
    </message>
    <message>
        <source>Tank full and leaking</source>
        <translation>टंकी भरी और लीक करती हुई</translation>
    </message>
    <message>
        <source>lower without one</source>
        <translation>बिना दरार के कम</translation>
    </message>
    <message>
        <source>%1 deep, dry</source>
        <translation>%1 गहरी, सूखी</translation>
    </message>
    <message>
        <source>%1 deep, %2 full of water</source>
        <translation>%1 गहरी, %2 पानी से भरी</translation>
    </message>
    <message>
        <source>Lowest factor of safety; wanted</source>
        <translation>सबसे कम सुरक्षा गुणांक; चाहिए</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Centre of the circle x, z</source>
        <translation>घेरे का बीच x, z</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>त्रिज्या</translation>
    </message>
    <message>
        <source>Ends of the slip x, x</source>
        <translation>खिसकन के सिरे x, x</translation>
    </message>
    <message>
        <source>Crack</source>
        <translation>दरार</translation>
    </message>
    <message>
        <source>Circles tried; without a factor</source>
        <translation>आज़माए गए घेरे; बिना गुणांक के</translation>
    </message>
    <message>
        <source>Slices; of them in pull</source>
        <translation>फाँकें; उनमें से खिंचाव में</translation>
    </message>
    <message>
        <source>Slices in pull: the method asks the soil there to pull, which it cannot. Where there are many, look at the circle before trusting its factor.</source>
        <translation>खिंचाव में फाँकें: विधि वहाँ मिट्टी से खिंचाव माँगती है, जो मिट्टी सह नहीं सकती। जहाँ ऐसी फाँकें बहुत हों, गुणांक पर भरोसा करने से पहले घेरे को देखें।</translation>
    </message>
    <message>
        <source>A slip ends at the end of the section: a longer one may have a lower factor.</source>
        <translation>एक खिसकन काट के सिरे पर खत्म होती है: उससे लंबी खिसकन का गुणांक और कम हो सकता है।</translation>
    </message>
    <message>
        <source>Slip circle</source>
        <translation>खिसकन का घेरा</translation>
    </message>
    <message>
        <source>Not reckoned: the soil is not known.</source>
        <translation>हिसाब नहीं लगाया गया: मिट्टी पता नहीं है।</translation>
    </message>
    <message>
        <source>Not reckoned: the ground is level and no terrace edge is entered, so there is nothing to slip.</source>
        <translation>हिसाब नहीं लगाया गया: ज़मीन समतल है और सीढ़ीदार खेत का किनारा नहीं भरा गया, इसलिए खिसकने को कुछ नहीं है।</translation>
    </message>
    <message>
        <source>Downhill side: slip circles</source>
        <translation>ढलान की ओर: खिसकन के घेरे</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall, dropping at the terrace edge.</source>
        <translation>काट: तैयार ज़मीन ढलान की ओर, सीढ़ीदार खेत के किनारे पर नीचे गिरती हुई।</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall.</source>
        <translation>काट: तैयार ज़मीन ढलान की ओर।</translation>
    </message>
    <message>
        <source>Bishop&apos;s simplified method</source>
        <translation>बिशप की सरल विधि</translation>
    </message>
    <message>
        <source>b width, W weight and α base slope of a slice, u water pressure on its base; P thrust of water in a crack, e its depth below the centre, R the radius. x runs downhill from the middle of the tank, z up from its finished floor.</source>
        <translation>फाँक की चौड़ाई b, भार W और तले की ढाल α, उसके तले पर पानी का दबाव u; दरार में पानी का धक्का P, वह बीच से e नीचे, त्रिज्या R। x टंकी के बीच से ढलान की ओर, z उसके तैयार फ़र्श से ऊपर।</translation>
    </message>
    <message>
        <source>The circles were not searched for when this page was made; there is no factor yet.</source>
        <translation>यह पन्ना बनने तक घेरे नहीं खोजे गए थे; अभी कोई गुणांक नहीं है।</translation>
    </message>
    <message>
        <source>What is taken for granted</source>
        <translation>क्या मान लिया गया है</translation>
    </message>
    <message>
        <source>Strengths come from tables by the name of the soil, not from tests %1.</source>
        <translation>मज़बूती मिट्टी के नाम से तालिकाओं से ली गई है, जाँच से नहीं %1।</translation>
    </message>
    <message>
        <source>Low strengths are taken for the slips: cohesion %1, friction %2, unit weight %3.</source>
        <translation>खिसकन के लिए कम मज़बूती ली गई है: चिपकाव %1, घर्षण %2, इकाई भार %3।</translation>
    </message>
    <message>
        <source>Plane strain: the slip is as wide as the slope. No earthquake.</source>
        <translation>समतल विकृति: खिसकन ढलान जितनी चौड़ी है। भूकंप नहीं।</translation>
    </message>
    <message>
        <source>The pit counts as still full of ground, which weighs more than water and lining. Nothing else stands on the ground: no house, wall, heap or animals.</source>
        <translation>गड्ढा अब भी ज़मीन से भरा माना गया है, जो पानी और लाइनिंग से भारी है। ज़मीन पर और कुछ खड़ा नहीं: न घर, न दीवार, न ढेर, न पशु।</translation>
    </message>
    <message>
        <source>The tank&apos;s hole has no strength: each state is searched with and without a crack as deep as the pit (no deeper than the ground falls away), and the lower factor counts. Behind a crack only slips that come out no higher than its foot are counted.</source>
        <translation>टंकी के गड्ढे में कोई मज़बूती नहीं: हर हालत गड्ढे जितनी गहरी दरार के साथ और बिना दरार खोजी जाती है (ज़मीन जितनी नीचे जाती है उससे गहरी नहीं), और कम वाला गुणांक माना जाता है। दरार के पीछे केवल वे खिसकनें गिनी जाती हैं जो उसकी जड़ से ऊँची नहीं निकलतीं।</translation>
    </message>
    <message>
        <source>The terrace edge is taken to run out %1 for each 1 that it falls.</source>
        <translation>माना गया है कि सीढ़ीदार खेत का किनारा हर 1 नीचे जाने पर %1 बाहर जाता है।</translation>
    </message>
    <message>
        <source>Slips shallower than %1, and those that begin more than %2 downhill from the middle of the tank, leave tank and walkway alone and are left out.</source>
        <translation>%1 से उथली खिसकनें, और जो टंकी के बीच से ढलान की ओर %2 से आगे शुरू होती हैं, टंकी और चलने की पट्टी को नहीं छूतीं और छोड़ दी गई हैं।</translation>
    </message>
    <message>
        <source>Checked by a licensed engineer</source>
        <translation>लाइसेंसधारी इंजीनियर की जाँच</translation>
    </message>
    <message>
        <source>Checked by:</source>
        <translation>किसने जाँचा:</translation>
    </message>
    <message>
        <source>Licence:</source>
        <translation>लाइसेंस:</translation>
    </message>
    <message>
        <source>Date:</source>
        <translation>तारीख:</translation>
    </message>
    <message>
        <source>Signature:</source>
        <translation>दस्तखत:</translation>
    </message>
    <message>
        <source>A calculation for a licensed engineer to check. It is not a promise that the ground stands.</source>
        <translation>यह हिसाब लाइसेंसधारी इंजीनियर के जाँचने के लिए है। यह कोई वादा नहीं कि ज़मीन टिकी रहेगी।</translation>
    </message>
    <message>
        <source>level with the platform</source>
        <translation>समतल जगह के बराबर</translation>
    </message>
    <message>
        <source>%1 above the platform</source>
        <translation>समतल जगह से %1 ऊपर</translation>
    </message>
    <message>
        <source>%1 below the platform</source>
        <translation>समतल जगह से %1 नीचे</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>कुछ नहीं</translation>
    </message>
    <message>
        <source>dig down %1</source>
        <translation>%1 नीचे खोदें</translation>
    </message>
    <message>
        <source>fill up %1</source>
        <translation>%1 ऊपर भरें</translation>
    </message>
    <message>
        <source>%1: cut, %2 out</source>
        <translation>%1: कटान, %2 बाहर</translation>
    </message>
    <message>
        <source>%1: fill, %2 out</source>
        <translation>%1: भराव, %2 बाहर</translation>
    </message>
    <message>
        <source>Pegs of the platform</source>
        <translation>समतल जगह की खूँटियाँ</translation>
    </message>
    <message>
        <source>Ground there</source>
        <translation>वहाँ की ज़मीन</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>क्या करना है</translation>
    </message>
    <message>
        <source>Where the face ends</source>
        <translation>ढाल कहाँ खत्म</translation>
    </message>
    <message>
        <source>(chosen)</source>
        <translation>(चुना हुआ)</translation>
    </message>
    <message>
        <source>At which level the platform can lie</source>
        <translation>समतल जगह किस-किस स्तर पर हो सकती है</translation>
    </message>
    <message>
        <source>How the level is found</source>
        <translation>स्तर कैसे निकाला गया</translation>
    </message>
    <message>
        <source>The platform lies</source>
        <translation>समतल जगह का स्तर</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>कटान</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>भराव</translation>
    </message>
    <message>
        <source>Ground over the pit</source>
        <translation>गड्ढे के ऊपर की ज़मीन</translation>
    </message>
    <message>
        <source>Ground over the pit: natural ground over floor and walls of the pit where it is least. Less than nothing means that part of the tank stands on fill.</source>
        <translation>गड्ढे के ऊपर की ज़मीन: गड्ढे के तले और दीवारों के ऊपर की मूल ज़मीन, जहाँ सबसे कम हो। शून्य से कम का मतलब है कि टंकी का वह हिस्सा भराव पर खड़ा है।</translation>
    </message>
    <message>
        <source>Topsoil is kept apart: never under the fill, never in the plaster.</source>
        <translation>ऊपरी मिट्टी अलग रखें: न कभी भराव के नीचे, न कभी प्लास्टर में।</translation>
    </message>
    <message>
        <source>Cut steps into the ground under the fill, so that it cannot slide.</source>
        <translation>भराव के नीचे की ज़मीन में पैड़ियाँ काटें, ताकि भराव खिसक न सके।</translation>
    </message>
    <message>
        <source>Fill in layers of about %1. Break clods, take out roots and straw; the ground should be damp enough to hold together when pressed in the fist.</source>
        <translation>भराव %1 की परतों में डालें। ढेले तोड़ें, जड़ें और पुआल निकालें; मिट्टी इतनी नम हो कि मुट्ठी में दबाने पर बँध जाए।</translation>
    </message>
    <message>
        <source>Ram each layer until the rammer leaves hardly a mark, then bring the next. Begin at the foot and keep each layer level.</source>
        <translation>हर परत को तब तक कूटें जब तक दुरमुट का निशान मुश्किल से पड़े, फिर अगली परत डालें। नीचे से शुरू करें और हर परत समतल रखें।</translation>
    </message>
    <message>
        <source>Never dump fill down the slope from above.</source>
        <translation>भराव कभी ऊपर से ढलान पर न लुढ़काएँ।</translation>
    </message>
    <message>
        <source>Steps, layers and ramming: %1.</source>
        <translation>पैड़ियाँ, परतें और कुटाई: %1।</translation>
    </message>
    <message>
        <source>The toe of every heap stays %1 or more back from the pit edge (29 CFR 1926.651(j)(2)).</source>
        <translation>हर ढेर का पैर गड्ढे के किनारे से %1 या ज़्यादा पीछे रहे (29 CFR 1926.651(j)(2))।</translation>
    </message>
    <message>
        <source>Earth: how to work it</source>
        <translation>मिट्टी: कैसे काम करें</translation>
    </message>
    <message>
        <source>Does the tank lose water through its lining? The sun takes water too. A bucket that floats in the tank shows how much; what the tank loses more has leaked.</source>
        <translation>क्या टंकी की लाइनिंग से पानी जा रहा है? धूप भी पानी उड़ाती है। टंकी में तैरती बाल्टी बताती है कितना; उससे ज़्यादा जितना टंकी में घटे, वह लीक हुआ है।</translation>
    </message>
    <message>
        <source>Fill the tank to the overflow. A new tank stands full for some days first, for dry plaster drinks. Choose days without rain.</source>
        <translation>टंकी ओवरफ्लो तक भरें। नई टंकी पहले कुछ दिन भरी रहे, क्योंकि सूखा प्लास्टर पानी पीता है। बिना बारिश के दिन चुनें।</translation>
    </message>
    <message>
        <source>Shut inlet and outlet. No one draws water until the test is over.</source>
        <translation>आमद का मुँह और निकास बंद करें। जाँच पूरी होने तक कोई पानी न निकाले।</translation>
    </message>
    <message>
        <source>Measure with a ruler, to the millimetre: in the tank from a mark on the rim down to the water, in the bucket from a mark on its edge down to the water.</source>
        <translation>फुटे से मिलीमीटर तक नापें: टंकी में मुंडेर के निशान से पानी तक, बाल्टी में उसके किनारे के निशान से पानी तक।</translation>
    </message>
    <message>
        <source>Measure both again at the same hour on the next day, and on two days more. Rain in between: begin again.</source>
        <translation>दोनों को अगले दिन उसी समय फिर नापें, और उसके बाद दो दिन और। बीच में बारिश हो तो फिर से शुरू करें।</translation>
    </message>
    <message>
        <source>Leak = fall in the tank less fall in the bucket, in millimetres, for one day.</source>
        <translation>लीक = टंकी में घटा − बाल्टी में घटा, मिलीमीटर में, एक दिन का।</translation>
    </message>
    <message>
        <source>In this tank, full, one millimetre is %1.</source>
        <translation>इस भरी टंकी में एक मिलीमीटर %1 पानी है।</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>लीक</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>%1 तक</translation>
    </message>
    <message>
        <source>Tight. Nothing to do; test again each year.</source>
        <translation>टंकी पक्की है। कुछ नहीं करना; हर साल फिर जाँचें।</translation>
    </message>
    <message>
        <source>more, up to %1</source>
        <translation>ज़्यादा, %1 तक</translation>
    </message>
    <message>
        <source>Watch: look for wet ground; test again in some weeks.</source>
        <translation>नज़र रखें: गीली ज़मीन देखें; कुछ हफ़्तों में फिर जाँचें।</translation>
    </message>
    <message>
        <source>Find the cracks and mend them; then test again.</source>
        <translation>दरारें खोजें और मरम्मत करें; फिर दोबारा जाँचें।</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>%1 से ज़्यादा</translation>
    </message>
    <message>
        <source>Let no more water in, empty the tank and mend it.</source>
        <translation>और पानी न आने दें, टंकी खाली करें और मरम्मत करें।</translation>
    </message>
    <message>
        <source>These limits: %1.</source>
        <translation>ये सीमाएँ: %1।</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>समय</translation>
    </message>
    <message>
        <source>Tank, mm</source>
        <translation>टंकी, mm</translation>
    </message>
    <message>
        <source>Bucket, mm</source>
        <translation>बाल्टी, mm</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>दस्तखत</translation>
    </message>
    <message>
        <source>notch, %1 wide</source>
        <translation>खाँचा, %1 चौड़ा</translation>
    </message>
    <message>
        <source>pipe, %1 inside</source>
        <translation>पाइप, अंदर से %1</translation>
    </message>
    <message>
        <source>Roof led in</source>
        <translation>टंकी से जुड़ी छत</translation>
    </message>
    <message>
        <source>Ground led in</source>
        <translation>टंकी से जुड़ी ज़मीन</translation>
    </message>
    <message>
        <source>The tank&apos;s own opening</source>
        <translation>टंकी का अपना मुँह</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>मूसलाधार बारिश</translation>
    </message>
    <message>
        <source>%1, planning value</source>
        <translation>%1, योजना का मान</translation>
    </message>
    <message>
        <source>Rain that runs in</source>
        <translation>अंदर आती बारिश</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>स्रोत से</translation>
    </message>
    <message>
        <source>What runs in</source>
        <translation>कुल अंदर आता है</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>ओवरफ्लो</translation>
    </message>
    <message>
        <source>Water over its sill</source>
        <translation>दहलीज से ऊपर पानी</translation>
    </message>
    <message>
        <source>Freeboard left in the storm</source>
        <translation>मूसलाधार बारिश में बचा फ्रीबोर्ड</translation>
    </message>
    <message>
        <source>Freeboard wanted</source>
        <translation>चाहिए फ्रीबोर्ड</translation>
    </message>
    <message>
        <source>Passes with water at the rim</source>
        <translation>पानी मुंडेर तक हो तब निकलता है</translation>
    </message>
    <message>
        <source>Overflow free</source>
        <translation>ओवरफ्लो खुला</translation>
    </message>
    <message>
        <source>over the low part of the rim</source>
        <translation>मुंडेर के नीचे वाले भाग के ऊपर से</translation>
    </message>
    <message>
        <source>over the rest of the rim</source>
        <translation>बाकी मुंडेर के ऊपर से</translation>
    </message>
    <message>
        <source>Overflow blocked</source>
        <translation>ओवरफ्लो बंद</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>गहराई</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>Bottom width and depth of the channel</source>
        <translation>नाली के तले की चौड़ाई और गहराई</translation>
    </message>
    <message>
        <source>Fall</source>
        <translation>ढाल</translation>
    </message>
    <message>
        <source>Water in it</source>
        <translation>उसमें पानी</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>गति</translation>
    </message>
    <message>
        <source>Spill channel</source>
        <translation>निकास की नाली</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>चौड़ाई</translation>
    </message>
    <message>
        <source>Depth, all together</source>
        <translation>गहराई, कुल</translation>
    </message>
    <message>
        <source>Of it for water that settles</source>
        <translation>इसमें पानी थमने के लिए</translation>
    </message>
    <message>
        <source>Of it for mud</source>
        <translation>इसमें गाद के लिए</translation>
    </message>
    <message>
        <source>The grain sinks</source>
        <translation>कण बैठता है</translation>
    </message>
    <message>
        <source>%1 a second</source>
        <translation>सेकंड में %1</translation>
    </message>
    <message>
        <source>Water may run through at most at</source>
        <translation>पानी ज़्यादा से ज़्यादा इस गति से गुज़रे</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>गाद कुंडी</translation>
    </message>
    <message>
        <source>Smallest grain that must stay behind</source>
        <translation>सबसे छोटा कण जो रुकना चाहिए</translation>
    </message>
    <message>
        <source>%1, source and storm</source>
        <translation>%1, स्रोत और मूसलाधार बारिश</translation>
    </message>
    <message>
        <source>Clean it out every</source>
        <translation>इतने में साफ़ करें</translation>
    </message>
    <message>
        <source>For the grain named</source>
        <translation>बताए गए कण के लिए</translation>
    </message>
    <message>
        <source>Area, speed and mud: %1</source>
        <translation>क्षेत्रफल, गति और गाद: %1</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>पूरा होता है</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>पूरा नहीं होता</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>लीक जाँच</translation>
    </message>
    <message>
        <source>Tank falls</source>
        <translation>टंकी में घटा</translation>
    </message>
    <message>
        <source>Bucket falls: evaporation</source>
        <translation>बाल्टी में घटा: भाप बना</translation>
    </message>
    <message>
        <source>Error of the readings, either way</source>
        <translation>नापने की चूक, इधर या उधर</translation>
    </message>
    <message>
        <source>Water lost</source>
        <translation>गया पानी</translation>
    </message>
    <message>
        <source>Share of the water a day</source>
        <translation>दिन में पानी का कितना हिस्सा</translation>
    </message>
    <message>
        <source>Published marks for concrete tanks</source>
        <translation>कंक्रीट टंकियों के लिए छपे हुए मानक</translation>
    </message>
    <message>
        <source>Allows</source>
        <translation>छूट</translation>
    </message>
    <message>
        <source>This tank</source>
        <translation>यह टंकी</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>ज़मीन और समतल जगह</translation>
    </message>
    <message>
        <source>Pipes and siphon</source>
        <translation>पाइप और साइफन</translation>
    </message>
    <message>
        <source>Overflow, silt trap and leak test</source>
        <translation>ओवरफ्लो, गाद कुंडी और लीक जाँच</translation>
    </message>
    <message>
        <source>Engineer&apos;s calculation: cut and downhill side</source>
        <translation>इंजीनियर का हिसाब: कटान और ढलान की ओर</translation>
    </message>
    <message>
        <source>Thresholds of site and safety</source>
        <translation>जगह और सुरक्षा की सीमाएँ</translation>
    </message>
    <message>
        <source>From these numbers findings about site and safety are raised. A practitioner should question those that no published source stands behind.</source>
        <translation>जगह और सुरक्षा के बारे में ध्यान की बातें इन्हीं अंकों से निकलती हैं। जिनके पीछे कोई छपा संदर्भ नहीं है, उन पर जानकार को सवाल करना चाहिए।</translation>
    </message>
    <message>
        <source>Fill counts as loose fill: cohesion %1, friction %2, unit weight %3.</source>
        <translation>भराव को ढीला भराव माना गया है: चिपकाव %1, घर्षण %2, इकाई भार %3।</translation>
    </message>
    <message>
        <source>With the tank empty the ground is dry down to the ground water entered. With the tank full and leaking, water stands in the ground as drawn: level with the tank&apos;s water to the pit edge, from there straight to where the ground lies as low as the pit floor.</source>
        <translation>टंकी खाली हो तो ज़मीन भरे गए भूजल तक सूखी है। टंकी भरी और लीक करती हो तो ज़मीन में पानी नक्शे जैसा है: गड्ढे के किनारे तक टंकी के पानी के बराबर, वहाँ से सीधे उस जगह तक जहाँ ज़मीन गड्ढे के तले जितनी नीची है।</translation>
    </message>
    <message>
        <source>Set a light bucket afloat, tied so that it stands clear of the walls. Fill it with water until only a hand&apos;s breadth of it stays dry, so that it floats upright and deep.</source>
        <translation>एक हल्की बाल्टी तैराएँ, ऐसे बाँधकर कि दीवारों से दूर रहे। उसमें इतना पानी भरें कि केवल एक हथेली भर सूखी रहे, ताकि वह सीधी और गहरी तैरे।</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains from</source>
        <translation>यह कुंडी इतने बड़े कण से ऊपर रोकती है</translation>
    </message>
    <message>
        <source>Mud is brought by</source>
        <translation>गाद लाता है</translation>
    </message>
    <message>
        <source>the source, and one hour of the storm</source>
        <translation>स्रोत, और एक घंटे की मूसलाधार बारिश</translation>
    </message>
    <message>
        <source>A peg P is a corner of the platform. Heights are told from the finished platform, which the rim of the tank is level with. A peg Q stands straight out from the corner of its number, where the face of the cut or the fill meets the ground.</source>
        <translation>खूँटी P समतल जगह का कोना है। ऊँचाइयाँ तैयार समतल जगह से बताई गई हैं, और टंकी की मुंडेर उसी के बराबर है। खूँटी Q अपने अंक वाले कोने से सीधे बाहर है, जहाँ कटान या भराव की ढाल ज़मीन से मिलती है।</translation>
    </message>
    <message>
        <source>Materials together</source>
        <translation>सामान, कुल</translation>
    </message>
    <message>
        <source>Wages together</source>
        <translation>मज़दूरी, कुल</translation>
    </message>
    <message>
        <source>Other things together</source>
        <translation>दूसरी चीज़ें, कुल</translation>
    </message>
    <message>
        <source>For what</source>
        <translation>किसके लिए</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>कितना</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>एक का दाम</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>रकम</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>बिना पैसे</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>नकद</translation>
    </message>
    <message>
        <source>%1; split each piece into %2</source>
        <translation>%1; हर टुकड़े को %2 में बाँटें</translation>
    </message>
    <message>
        <source>Carrying it to the place</source>
        <translation>जगह तक ढुलाई</translation>
    </message>
    <message>
        <source>By</source>
        <translation>किससे</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>भार</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>बोझ</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>एक ढोने वाले के दिन</translation>
    </message>
    <message>
        <source>Wages</source>
        <translation>मज़दूरी</translation>
    </message>
    <message>
        <source>Other things</source>
        <translation>दूसरी चीज़ें</translation>
    </message>
    <message>
        <source>Carrying</source>
        <translation>ढुलाई</translation>
    </message>
    <message>
        <source>Put aside for what is not foreseen, %1</source>
        <translation>अनदेखे खर्च के लिए अलग रखें, %1</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>कुल</translation>
    </message>
    <message>
        <source>Of it given in work and kind</source>
        <translation>इसमें काम और सामान में, बिना पैसे दिया</translation>
    </message>
    <message>
        <source>Of it in cash</source>
        <translation>इसमें नकद</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>मंज़ूर</translation>
    </message>
    <message>
        <source>For</source>
        <translation>किसकी ओर से</translation>
    </message>
    <message>
        <source>Name and date</source>
        <translation>नाम और तारीख</translation>
    </message>
    <message>
        <source>or thumb</source>
        <translation>या अँगूठा</translation>
    </message>
    <message>
        <source>the household or group</source>
        <translation>परिवार या समूह</translation>
    </message>
    <message>
        <source>masons and labourers</source>
        <translation>मिस्त्री और मज़दूर</translation>
    </message>
    <message>
        <source>who pays a share</source>
        <translation>जो हिस्सा देता है</translation>
    </message>
    <message>
        <source>a witness</source>
        <translation>एक गवाह</translation>
    </message>
    <message>
        <source>%1, after a quarter of the day</source>
        <translation>%1, दिन का चौथाई बीतने पर</translation>
    </message>
    <message>
        <source>%1, for the last quarter of the day</source>
        <translation>%1, दिन के आखिरी चौथाई में</translation>
    </message>
    <message>
        <source>%1, at midday</source>
        <translation>%1, दोपहर को</translation>
    </message>
    <message>
        <source>%1 for wetting</source>
        <translation>भिगाई के लिए %1</translation>
    </message>
    <message>
        <source>%1, masons among them: %2</source>
        <translation>%1, उनमें मिस्त्री: %2</translation>
    </message>
    <message>
        <source>%1, rest days too</source>
        <translation>%1, छुट्टी के दिन भी</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>ढील नहीं</translation>
    </message>
    <message>
        <source>may slip %1</source>
        <translation>ढील %1</translation>
    </message>
    <message>
        <source>Solid bar: work. Hatched bar: keep wet, rest days too. Open bar: the tank fills or is watched. Triangle alone: last day.</source>
        <translation>भरी पट्टी: काम। धारीदार पट्टी: गीला रखें, छुट्टी के दिन भी। खाली पट्टी: टंकी भर रही है या उस पर नज़र है। अकेला तिकोन: आखिरी दिन।</translation>
    </message>
    <message>
        <source>Arrow at the right: later than these bars reach.</source>
        <translation>दाईं ओर तीर: इन पट्टियों की पहुँच से बाद में।</translation>
    </message>
    <message>
        <source>No room to slip: when this is late, the end is late.</source>
        <translation>ढील नहीं: इसमें देर हुई तो अंत में भी देर होगी।</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>दिन में %1</translation>
    </message>
    <message>
        <source>%1, what the source gives</source>
        <translation>%1, जितना स्रोत देता है</translation>
    </message>
    <message>
        <source>%1, as entered</source>
        <translation>%1, जैसा भरा गया</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>भराई शुरू</translation>
    </message>
    <message>
        <source>It must start no later than</source>
        <translation>शुरू होने का आखिरी दिन</translation>
    </message>
    <message>
        <source>The tank is full on</source>
        <translation>टंकी पूरी भरती है</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>एक साल में नहीं</translation>
    </message>
    <message>
        <source>Flows in on the first day</source>
        <translation>पहले दिन आता है</translation>
    </message>
    <message>
        <source>The water may rise in a day by at most</source>
        <translation>पानी एक दिन में ज़्यादा से ज़्यादा चढ़े</translation>
    </message>
    <message>
        <source>Water for sacks after the last curing day</source>
        <translation>तराई के आखिरी दिन के बाद बोरियों के लिए पानी</translation>
    </message>
    <message>
        <source>Water to bring by hand, to cover all walls in time</source>
        <translation>हाथ से लाने का पानी, ताकि सब दीवारें समय पर ढकें</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>भराई</translation>
    </message>
    <message>
        <source>Walls that stay under wet sacks until the water covers them</source>
        <translation>दीवारें जो पानी से ढकने तक गीली बोरियों में रहती हैं</translation>
    </message>
    <message>
        <source>Height above the finished floor</source>
        <translation>तैयार फ़र्श से ऊँचाई</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>दीवार</translation>
    </message>
    <message>
        <source>Keep wet until</source>
        <translation>कब तक गीली रखें</translation>
    </message>
    <message>
        <source>Wet for</source>
        <translation>कितने दिन गीली</translation>
    </message>
    <message>
        <source>The water rises, first by days, then by weeks</source>
        <translation>पानी चढ़ता है, पहले दिन-दिन, फिर हफ़्ते-हफ़्ते</translation>
    </message>
    <message>
        <source>The water rises day by day</source>
        <translation>पानी दिन-दिन चढ़ता है</translation>
    </message>
    <message>
        <source>Level: above the finished floor, in the evening of the day, or of the week&apos;s last day. Write beside it what the rod shows.</source>
        <translation>स्तर: तैयार फ़र्श से ऊपर, उस दिन की शाम को, या हफ़्ते के आखिरी दिन की। छड़ जो बताए वह साथ में लिखें।</translation>
    </message>
    <message>
        <source>Day or week</source>
        <translation>दिन या हफ़्ता</translation>
    </message>
    <message>
        <source>Runs in</source>
        <translation>आता है</translation>
    </message>
    <message>
        <source>To wet sacks</source>
        <translation>बोरियाँ भिगोने में</translation>
    </message>
    <message>
        <source>Level measured</source>
        <translation>नापा हुआ स्तर</translation>
    </message>
    <message>
        <source>No one enters the tank while it fills. The fence stands, ladder and rope hang inside.</source>
        <translation>भराई के समय कोई टंकी में न उतरे। बाड़ लगी रहे, सीढ़ी और रस्सी अंदर लटकी रहें।</translation>
    </message>
    <message>
        <source>Filling begun on:</source>
        <translation>भराई शुरू हुई:</translation>
    </message>
    <message>
        <source>Full on:</source>
        <translation>पूरी भरी:</translation>
    </message>
    <message>
        <source>Hour %1</source>
        <translation>घंटा %1</translation>
    </message>
    <message>
        <source>Place the coat in one go, within %1: %2 people needed, %3 planned; masons among them: %4 needed, %5 planned.</source>
        <translation>कोट एक ही बार में लगाएँ, %1 के अंदर: %2 लोग चाहिए, %3 योजना में; उनमें मिस्त्री: %4 चाहिए, %5 योजना में।</translation>
    </message>
    <message>
        <source>Price of the lining</source>
        <translation>लाइनिंग का दाम</translation>
    </message>
    <message>
        <source>Digging and platform</source>
        <translation>खुदाई और समतल जगह</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>पूँजी</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>उम्र</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>गुणक</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>साल का रखरखाव</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>सालाना खर्च</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>हर m³ पर सालाना खर्च</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>लाइनिंग</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>लाइनिंग, सालाना खर्च से</translation>
    </message>
    <message>
        <source>Cost a year = capital × factor + upkeep; factor = i (1 + i)^n / ((1 + i)^n − 1), with i interest a year (%1 %2) and n life in years %3.</source>
        <translation>सालाना खर्च = पूँजी × गुणक + रखरखाव; गुणक = i (1 + i)^n / ((1 + i)^n − 1), i साल का ब्याज (%1 %2) और n उम्र सालों में %3।</translation>
    </message>
    <message>
        <source>Cost of a cubic metre</source>
        <translation>एक घन मीटर का खर्च</translation>
    </message>
    <message>
        <source>Each m³ held = the whole bill ÷ water when full: %1 ÷ %2 = %3.</source>
        <translation>हर m³ की जगह = पूरा खर्च ÷ भरी टंकी का पानी: %1 ÷ %2 = %3।</translation>
    </message>
    <message>
        <source>Dry months, with rain below half of the reference evapotranspiration %1: %2.</source>
        <translation>सूखे महीने, जिनमें बारिश संदर्भ वाष्पोत्सर्जन के आधे से कम है %1: %2।</translation>
    </message>
    <message>
        <source>What a m³ delivered costs is not reckoned: whether the water lasts is not asked.</source>
        <translation>मिले हुए एक m³ पानी के खर्च का हिसाब नहीं लगाया गया: पानी पूरा पड़ता है या नहीं, यह पूछा नहीं गया।</translation>
    </message>
    <message>
        <source>Cash needed, first by days, then by weeks</source>
        <translation>नकद कब चाहिए, पहले दिन-दिन, फिर हफ़्ते-हफ़्ते</translation>
    </message>
    <message>
        <source>Goods and carrying</source>
        <translation>सामान और ढुलाई</translation>
    </message>
    <message>
        <source>Together so far</source>
        <translation>अब तक कुल</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>काफ़ी</translation>
    </message>
    <message>
        <source>TOO FEW</source>
        <translation>कम हैं</translation>
    </message>
    <message>
        <source>People on the coat</source>
        <translation>कोट पर लोग</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>उनमें मिस्त्री</translation>
    </message>
    <message>
        <source>Batches an hour</source>
        <translation>घंटे में घान</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>मसाला बनाने की जगहें</translation>
    </message>
    <message>
        <source>In one go</source>
        <translation>एक ही बार में</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>चाहिए</translation>
    </message>
    <message>
        <source>There</source>
        <translation>हैं</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>समय पर</translation>
    </message>
    <message>
        <source>TOO LATE</source>
        <translation>बहुत देर</translation>
    </message>
    <message>
        <source>Putting on a batch</source>
        <translation>एक घान लगाने में</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>लगता है</translation>
    </message>
    <message>
        <source>may take</source>
        <translation>लग सकता है</translation>
    </message>
    <message>
        <source>with a whole bag</source>
        <translation>पूरे कट्टे से</translation>
    </message>
    <message>
        <source>with half a bag</source>
        <translation>आधे कट्टे से</translation>
    </message>
    <message>
        <source>Ready beside the pit before the first batch</source>
        <translation>पहले घान से पहले गड्ढे के पास तैयार रखें</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>तैयार</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>सीमेंट के कट्टे</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>मसाला बनाने का पानी</translation>
    </message>
    <message>
        <source>Sacks to cover the coat</source>
        <translation>कोट ढकने की बोरियाँ</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for each; by the end of an hour its row must be full.</source>
        <translation>पूरे कट्टे वाले घान: %1। हर घान पर एक खाने में निशान लगाएँ; घंटा पूरा होने तक उसकी पंक्ति भर जानी चाहिए।</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for every %2; by the end of an hour its row must be full.</source>
        <translation>पूरे कट्टे वाले घान: %1। हर %2 घान पर एक खाने में निशान लगाएँ; घंटा पूरा होने तक उसकी पंक्ति भर जानी चाहिए।</translation>
    </message>
    <message>
        <source>Coat %1, within %2: %3 of work</source>
        <translation>कोट %1, %2 के अंदर: %3 का काम</translation>
    </message>
    <message>
        <source>A coat that is begun is finished the same day: plaster put beside plaster that has set does not hold water.</source>
        <translation>जो कोट शुरू किया, वह उसी दिन पूरा करें: जमे प्लास्टर से सटाकर लगाया प्लास्टर पानी नहीं रोकता।</translation>
    </message>
    <message>
        <source>Option %1 cannot be built: %2</source>
        <translation>विकल्प %1 नहीं बन सकता: %2</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>इससे क्या निकलता है</translation>
    </message>
    <message>
        <source>Lines that are the same in all options are left out.</source>
        <translation>जो पंक्तियाँ सब विकल्पों में एक जैसी हैं, वे छोड़ दी गई हैं।</translation>
    </message>
    <message>
        <source>Each coat in one go</source>
        <translation>हर कोट एक ही बार में</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहली भराई</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>खर्च का हिसाब और हिस्से</translation>
    </message>
    <message>
        <source>Works: tasks, people and weather</source>
        <translation>निर्माण: काम, लोग और मौसम</translation>
    </message>
    <message>
        <source>Money: linings and ranges</source>
        <translation>पैसा: लाइनिंग और दायरे</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>विकल्प साथ-साथ</translation>
    </message>
    <message>
        <source>As entered</source>
        <translation>जैसा भरा</translation>
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
        <translation>आँकड़ा</translation>
    </message>
    <message>
        <source>What drives the spread</source>
        <translation>फैलाव किससे आता है</translation>
    </message>
    <message>
        <source>Low and high: how far an input may lie from what is entered. Then its share of the spread; +: more of the input makes more, −: more of it makes less.</source>
        <translation>कम और ज़्यादा: आँकड़ा भरे हुए मान से कितना दूर हो सकता है। फिर फैलाव में उसका हिस्सा; +: आँकड़ा बढ़े तो नतीजा बढ़ता है, −: बढ़े तो घटता है।</translation>
    </message>
    <message>
        <source>How sure the numbers are</source>
        <translation>अंक कितने पक्के हैं</translation>
    </message>
    <message>
        <source>The ranges were not drawn when this page was made.</source>
        <translation>यह पन्ना बनने तक दायरों के ड्रॉ नहीं निकाले गए थे।</translation>
    </message>
    <message>
        <source>%1 draws; each input triangular between low and high about what is entered. 1 draw in 10 is below P10, half are below P50, 9 in 10 below P90. The draws start with the number %2: the same number gives the same answer.</source>
        <translation>%1 ड्रॉ; हर आँकड़ा भरे हुए मान के आसपास कम और ज़्यादा के बीच तिकोने वितरण से। 10 में से 1 ड्रॉ P10 से नीचे, आधे P50 से नीचे, 10 में से 9 P90 से नीचे। ड्रॉ अंक %2 से शुरू होते हैं: वही अंक दें तो वही जवाब मिलता है।</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>हफ़्ता, शुरू</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>अच्छा</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>पाला</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>गर्मी</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries is not reckoned: humidity or wind is not known.</source>
        <translation>ताज़ा प्लास्टर कितनी जल्दी सूखता है, इसका हिसाब नहीं लगाया गया: नमी या हवा पता नहीं है।</translation>
    </message>
    <message>
        <source>km/h</source>
        <translation>km/h</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries</source>
        <translation>ताज़ा प्लास्टर कितनी जल्दी सूखता है</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>कोट</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>हवा</translation>
    </message>
    <message>
        <source>E water lost in kg for each m² and hour, Tc and Ta plaster and air in °C, r humidity from 0 to 1, V wind in km/h; the mean weather of the week, plaster as warm as the air.</source>
        <translation>E एक घंटे में हर m² से गया पानी kg में, Tc और Ta प्लास्टर और हवा का तापमान °C में, r नमी 0 से 1 तक, V हवा की रफ़्तार km/h में; हफ़्ते का औसत मौसम, प्लास्टर हवा जितना गर्म।</translation>
    </message>
    <message>
        <source>Weather window: how often coats stay undisturbed, week by week</source>
        <translation>अच्छे मौसम के हफ़्ते: कोट कितनी बार मौसम से बचे रहते हैं, हफ़्ते-हफ़्ते</translation>
    </message>
    <message>
        <source>Good: nothing disturbs, of all start days of the week and %1 of weather. Rain: %2 or more on the day of a coat or the day after. Frost: a night at or below 0 °C within 7 days of a coat. Heat: a day of a coat outside 5 to 35 °C. * week of the first coat as planned; + best week.</source>
        <translation>अच्छा: कुछ नहीं बिगाड़ता, हफ़्ते के सब शुरू-दिनों और मौसम के %1 में से। बारिश: कोट के दिन या अगले दिन %2 या ज़्यादा। पाला: कोट के 7 दिन के अंदर कोई रात 0 °C पर या उससे नीचे। गर्मी: कोट का कोई दिन 5 से 35 °C के बाहर। * योजना के पहले कोट का हफ़्ता; + सबसे अच्छा हफ़्ता।</translation>
    </message>
    <message>
        <source>wetted</source>
        <translation>भिगोया</translation>
    </message>
    <message>
        <source>all %1 times</source>
        <translation>सब %1 बार</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>पानी</translation>
    </message>
    <message>
        <source>Water covers it on</source>
        <translation>पानी इसे ढकता है</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>ढकी</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>%1 से ऊपर</translation>
    </message>
    <message>
        <source>Wet the walls</source>
        <translation>दीवारें भिगोएँ</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>हफ़्ता</translation>
    </message>
    <message>
        <source>Water a day, at most</source>
        <translation>दिन का पानी, ज़्यादा से ज़्यादा</translation>
    </message>
    <message>
        <source>Later weeks: a box for each day</source>
        <translation>बाद के हफ़्ते: हर दिन का एक खाना</translation>
    </message>
    <message>
        <source>While the tank fills: walls that the water has not reached</source>
        <translation>टंकी भरते समय: दीवारें जहाँ पानी नहीं पहुँचा</translation>
    </message>
    <message>
        <source>When the water covers the walls is not known, or takes more than a year. Sacks stay wet on every wall up to the overflow until water covers it.</source>
        <translation>पानी दीवारों को कब ढकेगा, पता नहीं है, या एक साल से ज़्यादा लगेगा। जब तक पानी न ढक ले, ओवरफ्लो तक की हर दीवार पर बोरियाँ गीली रहें।</translation>
    </message>
    <message>
        <source>After the curing days</source>
        <translation>तराई के दिनों के बाद</translation>
    </message>
    <message>
        <source>Water: for all wetting on that day.</source>
        <translation>पानी: उस दिन की पूरी भिगाई के लिए।</translation>
    </message>
    <message>
        <source>%1; not before %2, as wished</source>
        <translation>%1; %2 से पहले नहीं, इच्छा के अनुसार</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation>नहीं</translation>
    </message>
    <message>
        <source>All tasks</source>
        <translation>सभी काम</translation>
    </message>
    <message>
        <source>Heavy type and NONE: no room to slip. Curing, filling and watching count all days, other tasks the days that are worked.</source>
        <translation>मोटे अक्षर और “नहीं”: ढील नहीं। तराई, भराई और निगरानी में सब दिन गिने जाते हैं, दूसरे कामों में केवल काम के दिन।</translation>
    </message>
    <message>
        <source>Starts</source>
        <translation>शुरू</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>खत्म</translation>
    </message>
    <message>
        <source>starts after the end of: %1</source>
        <translation>इसके खत्म होने के बाद शुरू: %1</translation>
    </message>
    <message>
        <source>starts after the start of: %1</source>
        <translation>इसके शुरू होने के बाद शुरू: %1</translation>
    </message>
    <message>
        <source>ends after the end of: %1</source>
        <translation>इसके खत्म होने के बाद खत्म: %1</translation>
    </message>
    <message>
        <source>ends after the start of: %1</source>
        <translation>इसके शुरू होने के बाद खत्म: %1</translation>
    </message>
    <message>
        <source>What waits for what</source>
        <translation>कौन किसका इंतज़ार करता है</translation>
    </message>
    <message>
        <source>Its order</source>
        <translation>इसका क्रम</translation>
    </message>
    <message>
        <source>People by day</source>
        <translation>दिन-दिन के लोग</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>मज़दूर</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>मिस्त्री</translation>
    </message>
    <message>
        <source>Wetting</source>
        <translation>भिगाई</translation>
    </message>
    <message>
        <source>Dates: critical path method, forward and backward pass %1. Room: days that a task may slip before the last day moves.</source>
        <translation>तारीखें: क्रिटिकल पाथ विधि, आगे और पीछे की गिनती %1। ढील: आखिरी दिन खिसकने से पहले काम जितने दिन खिसक सकता है।</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>हर काम की दिहाड़ियाँ</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>ली गई</translation>
    </message>
    <message>
        <source>Digging the pit by the published norm: %1; by what is told of earlier tanks: %2.</source>
        <translation>गड्ढे की खुदाई छपी दर से: %1; पहले की टंकियों से सुनी बात से: %2।</translation>
    </message>
    <message>
        <source>Rates in force</source>
        <translation>लागू काम की दरें</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>मौके पर नापा</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>रिकॉर्ड</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>सबसे कम</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>माध्यिका</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>सबसे ज़्यादा</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>भरा गया</translation>
    </message>
    <message>
        <source>Not in these sums, for the price, the weight or how much is needed is not known: %1.</source>
        <translation>इन जोड़ों में नहीं हैं, क्योंकि दाम, भार या मात्रा पता नहीं है: %1।</translation>
    </message>
    <message>
        <source>%1 to watch</source>
        <translation>नज़र रखने में %1</translation>
    </message>
    <message>
        <source>Soil-cement without a price of its own: materials, their carriage and the work of stone bed, coats and curing, with %1 for what is not foreseen, as on digging and platform. Other prices are as entered.</source>
        <translation>मिट्टी-सीमेंट, जिसका अपना दाम नहीं: सामान, उसकी ढुलाई और पत्थर की सोलिंग, कोट और तराई का काम, अनदेखे खर्च के %1 जोड़कर, जैसे खुदाई और समतल जगह पर। दूसरे दाम जैसे भरे गए।</translation>
    </message>
    <message>
        <source>Not reckoned while prices are missing.</source>
        <translation>जब तक दाम नहीं भरे जाते, हिसाब नहीं लगता।</translation>
    </message>
    <message>
        <source>Each m³ delivered = cost of the whole tank a year (the bill × the factor of soil-cement + its upkeep) ÷ water drawn in the dry months of a mean year: %1 ÷ %2 = %3.</source>
        <translation>मिला हुआ हर m³ = पूरी टंकी का सालाना खर्च (कुल खर्च × मिट्टी-सीमेंट का गुणक + उसका रखरखाव) ÷ औसत साल के सूखे महीनों में निकाला पानी: %1 ÷ %2 = %3।</translation>
    </message>
    <message>
        <source>≠ and heavy type: not as in A</source>
        <translation>≠ और मोटे अक्षर: A जैसा नहीं</translation>
    </message>
    <message>
        <source>all of the coat</source>
        <translation>पूरा कोट</translation>
    </message>
    <message>
        <source>Until the next coat goes on</source>
        <translation>अगला कोट लगने तक</translation>
    </message>
    <message>
        <source>Room, days</source>
        <translation>ढील, दिन</translation>
    </message>
    <message>
        <source>starts %2 after the end of: %1</source>
        <translation>इसके खत्म होने के %2 बाद शुरू: %1</translation>
    </message>
    <message>
        <source>starts %2 before the end of: %1</source>
        <translation>इसके खत्म होने से %2 पहले शुरू: %1</translation>
    </message>
    <message>
        <source>starts %2 after the start of: %1</source>
        <translation>इसके शुरू होने के %2 बाद शुरू: %1</translation>
    </message>
    <message>
        <source>starts %2 before the start of: %1</source>
        <translation>इसके शुरू होने से %2 पहले शुरू: %1</translation>
    </message>
    <message>
        <source>ends %2 after the end of: %1</source>
        <translation>इसके खत्म होने के %2 बाद खत्म: %1</translation>
    </message>
    <message>
        <source>ends %2 before the end of: %1</source>
        <translation>इसके खत्म होने से %2 पहले खत्म: %1</translation>
    </message>
    <message>
        <source>ends %2 after the start of: %1</source>
        <translation>इसके शुरू होने के %2 बाद खत्म: %1</translation>
    </message>
    <message>
        <source>ends %2 before the start of: %1</source>
        <translation>इसके शुरू होने से %2 पहले खत्म: %1</translation>
    </message>
    <message>
        <source>%1 (rest days counted)</source>
        <translation>%1 (छुट्टी के दिन गिनकर)</translation>
    </message>
    <message>
        <source>%1. From: %2. %3</source>
        <translation>%1। किनसे: %2। %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Every number of this plan: what it is, how it was reckoned, from which numbers, and where the figures come from. A number that is reckoned from others names them; each stands here in its own place.</source>
        <translation>इस योजना की हर संख्या: वह क्या है, उसका हिसाब कैसे लगा, किन संख्याओं से लगा, और आँकड़े कहाँ से आए। जो संख्या दूसरी संख्याओं से निकली है, वह उनके नाम बताती है; हर एक यहाँ अपनी जगह पर है।</translation>
    </message>
    <message>
        <source>Cleaning, each year before the rains</source>
        <translation>सफ़ाई, हर साल बरसात से पहले</translation>
    </message>
    <message>
        <source>Two people, never one alone in the tank, not even in an empty one. Ladder to the floor; get out when you feel dizzy.</source>
        <translation>दो लोग रहें; टंकी में कभी कोई अकेला न जाए, खाली टंकी में भी नहीं। सीढ़ी फ़र्श तक हो; चक्कर आए तो तुरंत बाहर निकलें।</translation>
    </message>
    <message>
        <source>Choose the weeks when the tank is nearly empty and the rains are near. Draw the last water for the beds.</source>
        <translation>वे हफ़्ते चुनें जब टंकी लगभग खाली हो और बरसात पास हो। आखिरी पानी क्यारियों के लिए निकाल लें।</translation>
    </message>
    <message>
        <source>Loosen the silt with a soft brush and a wooden scoop. No spade, no hoe, no wire brush: they cut the plaster.</source>
        <translation>गाद को नरम ब्रश और लकड़ी के खुरपे से ढीला करें। फावड़ा, कुदाल या तार का ब्रश नहीं: ये प्लास्टर काट देते हैं।</translation>
    </message>
    <message>
        <source>Lift the silt out in buckets, the bucket never over someone&apos;s head. Silt is good soil: spread it on the beds as manure.</source>
        <translation>गाद बाल्टियों में ऊपर खींचें; बाल्टी कभी किसी के सिर के ऊपर न हो। गाद अच्छी मिट्टी है: इसे खाद की तरह क्यारियों में फैलाएँ।</translation>
    </message>
    <message>
        <source>Look for cracks on walls and floor while it is clean. Mark them with charcoal and mend them now.</source>
        <translation>जब तक टंकी साफ़ है, दीवारों और फ़र्श पर दरारें देखें। उन पर कोयले से निशान लगाएँ और अभी भर दें।</translation>
    </message>
    <message>
        <source>Do not let the plaster dry out: it shrinks and cracks. Keep it wet and fill the tank again within days.</source>
        <translation>प्लास्टर को सूखने न दें: वह सिकुड़कर फट जाता है। उसे गीला रखें और कुछ ही दिनों में टंकी फिर भर दें।</translation>
    </message>
    <message>
        <source>Mortar, as for the last coat: %1 soil : %2 sand : %3 cement, by loose volume, mixed stiff.</source>
        <translation>मसाला, जैसा आखिरी कोट का: %1 मिट्टी : %2 रेत : %3 सीमेंट, ढीले नाप से, सख्त मिलाया हुआ।</translation>
    </message>
    <message>
        <source>Mending cracks</source>
        <translation>दरारें भरना</translation>
    </message>
    <message>
        <source>Hairline crack, thinner than a fingernail: brush it clean, wet it, and rub in cement stirred with water to a cream.</source>
        <translation>बाल जैसी दरार, नाखून की मोटाई से पतली: ब्रश से साफ़ करें, गीला करें, और पानी में मलाई जैसा घोला सीमेंट रगड़कर भरें।</translation>
    </message>
    <message>
        <source>Open crack: cut it out to a groove like a V, as deep as it is wide, until sound plaster shows. Brush out all dust and wet the groove well.</source>
        <translation>खुली दरार: उसे V जैसे खाँचे में काटें, जितना चौड़ा उतना गहरा, जब तक पक्का प्लास्टर न दिखे। सारी धूल ब्रश से निकालें और खाँचे को अच्छी तरह गीला करें।</translation>
    </message>
    <message>
        <source>Rub cement cream into the wet groove, then press the mortar in hard, in two layers where it is deep, and float it level with the old face.</source>
        <translation>गीले खाँचे में सीमेंट का घोल रगड़ें, फिर मसाला ज़ोर से दबाकर भरें, गहरा हो तो दो परतों में, और गुरमाले से पुरानी सतह के बराबर कर दें।</translation>
    </message>
    <message>
        <source>Wet sacks over the place for %1. Then fill, and make the leak test (sheet F6).</source>
        <translation>उस जगह पर %1 तक गीली बोरियाँ रखें। फिर टंकी भरें और लीक जाँच करें (शीट F6)।</translation>
    </message>
    <message>
        <source>A wall that bulges, leans or sinks, or a crack that opens again after mending: do not go in, let no more water in, and ask a licensed engineer. Mortar does not hold moving ground.</source>
        <translation>दीवार फूले, झुके या धँसे, या भरी हुई दरार फिर खुल जाए: अंदर न जाएँ, और पानी न आने दें, और लाइसेंसधारी इंजीनियर से पूछें। खिसकती ज़मीन को मसाला नहीं रोक सकता।</translation>
    </message>
    <message>
        <source>Cleaned on</source>
        <translation>सफ़ाई की तारीख</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>किसने की</translation>
    </message>
    <message>
        <source>Silt, buckets</source>
        <translation>गाद, बाल्टियाँ</translation>
    </message>
    <message>
        <source>Filled again on</source>
        <translation>फिर भरी, तारीख</translation>
    </message>
    <message>
        <source>How to clean and mend: %1.</source>
        <translation>सफ़ाई और मरम्मत कैसे करें: %1।</translation>
    </message>
    <message>
        <source>Mended on</source>
        <translation>मरम्मत की तारीख</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>कहाँ</translation>
    </message>
    <message>
        <source>Wet sacks until</source>
        <translation>गीली बोरियाँ कब तक</translation>
    </message>
    <message>
        <source>%1, TOO FEW: %2 needed</source>
        <translation>%1, बहुत कम: %2 चाहिए</translation>
    </message>
    <message>
        <source>People planned on it</source>
        <translation>इस पर रखे गए लोग</translation>
    </message>
    <message>
        <source>Put on within</source>
        <translation>इतने समय में लगा दें</translation>
    </message>
    <message>
        <source>Sacks to cover it</source>
        <translation>ढकने की बोरियाँ</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>पूरे कट्टे वाले घान</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>गीली बोरियों के नीचे दिन</translation>
    </message>
    <message>
        <source>This coat</source>
        <translation>यह कोट</translation>
    </message>
    <message>
        <source>Wet the earth walls and the stone bed until they are dark but no water stands on them. Dry earth drinks the plaster&apos;s water.</source>
        <translation>मिट्टी की दीवारों और पत्थर की सोलिंग को गीला करें, जब तक रंग गहरा न हो जाए पर पानी खड़ा न रहे। सूखी मिट्टी प्लास्टर का पानी पी जाती है।</translation>
    </message>
    <message>
        <source>The coat below is roughened and free of dust. Wet it until it is dark but no water stands on it.</source>
        <translation>नीचे का कोट खुरदरा किया हुआ और धूल से साफ़ हो। उसे गीला करें, जब तक रंग गहरा न हो जाए पर पानी खड़ा न रहे।</translation>
    </message>
    <message>
        <source>Rub it even with the wooden float, then scratch it crosswise so that the next coat holds.</source>
        <translation>लकड़ी के गुरमाले से बराबर करें, फिर आड़ी-तिरछी लकीरें खुरचें ताकि अगला कोट पकड़े।</translation>
    </message>
    <message>
        <source>Rub it smooth and dense with the float while it is still fresh; no cracks, no pits.</source>
        <translation>ताज़ा रहते ही गुरमाले से रगड़कर चिकना और ठोस करें; न दरार रहे, न छेद।</translation>
    </message>
    <message>
        <source>Press walls and floor into one another where they meet: no joint.</source>
        <translation>जहाँ दीवार और फ़र्श मिलते हैं, वहाँ दोनों को आपस में दबाकर मिला दें: कोई जोड़ न रहे।</translation>
    </message>
    <message>
        <source>Round off the corner of wall and floor with a radius of %1: no joint.</source>
        <translation>दीवार और फ़र्श के कोने को %1 त्रिज्या का गोला दें: कोई जोड़ न रहे।</translation>
    </message>
    <message>
        <source>Begin early and finish in one go. Walls first, from the foot upward, all round, pressed on hard, %1 thick by a marked nail; then the floor, backing out to the ladder.</source>
        <translation>सुबह जल्दी शुरू करें और एक ही बार में पूरा करें। पहले दीवारें, नीचे से ऊपर, चारों ओर, ज़ोर से दबाकर, निशान लगी कील से नापकर %1 मोटी; फिर फ़र्श, सीढ़ी की ओर पीछे हटते हुए।</translation>
    </message>
    <message>
        <source>Keep shade over the fresh coat. None is put on in rain, or when frost is to come.</source>
        <translation>ताज़े कोट पर छाया रखें। बारिश में, या पाला पड़ने वाला हो तब, कोई कोट न लगाएँ।</translation>
    </message>
    <message>
        <source>Wet sacks over all of it as soon as it takes no thumb print, within the hour in sun or wind. Keep them wet by the wetting calendar.</source>
        <translation>जैसे ही अँगूठे का निशान न पड़े, पूरे कोट को गीली बोरियों से ढकें; धूप या हवा में एक घंटे के अंदर। भिगाई के कैलेंडर के अनुसार उन्हें गीला रखें।</translation>
    </message>
    <message>
        <source>The plan does not say yet which pipes go through the lining.</source>
        <translation>योजना में अभी नहीं लिखा कि लाइनिंग के आर-पार कौन से पाइप जाते हैं।</translation>
    </message>
    <message>
        <source>Through the lining go the pipe to the field and the overflow pipe.</source>
        <translation>लाइनिंग के आर-पार खेत का पाइप और ओवरफ्लो का पाइप जाते हैं।</translation>
    </message>
    <message>
        <source>Through the lining goes the pipe to the field.</source>
        <translation>लाइनिंग के आर-पार खेत का पाइप जाता है।</translation>
    </message>
    <message>
        <source>Through the lining goes the overflow pipe.</source>
        <translation>लाइनिंग के आर-पार ओवरफ्लो का पाइप जाता है।</translation>
    </message>
    <message>
        <source>By this plan no pipe goes through the lining: pipes lie over the rim.</source>
        <translation>इस योजना में लाइनिंग के आर-पार कोई पाइप नहीं जाता: पाइप मुंडेर के ऊपर से जाते हैं।</translation>
    </message>
    <message>
        <source>Pipes and collars, before coat 1</source>
        <translation>पाइप और उनकी पट्टियाँ, कोट 1 से पहले</translation>
    </message>
    <message>
        <source>Every pipe through the wall is laid before coat 1. Roughen it where the plaster will hold it; smooth plastic lets water along.</source>
        <translation>दीवार के आर-पार जाने वाला हर पाइप कोट 1 से पहले बिछाया जाता है। जहाँ प्लास्टर उसे पकड़ेगा, वहाँ उसे खुरदरा करें; चिकने प्लास्टिक के साथ-साथ पानी निकल जाता है।</translation>
    </message>
    <message>
        <source>Bed it in rammed earth over its whole length, so that it cannot sink and break away.</source>
        <translation>उसे पूरी लंबाई में कुटी मिट्टी पर बिठाएँ, ताकि वह धँसकर टूट न जाए।</translation>
    </message>
    <message>
        <source>Set a collar of stiff plaster around it, a hand&apos;s breadth wide on every side, let into the earth wall. Coat 1 goes on while the collar is still damp.</source>
        <translation>उसके चारों ओर सख्त प्लास्टर की पट्टी लगाएँ, हर तरफ़ एक हथेली चौड़ी, मिट्टी की दीवार में धँसी हुई। पट्टी नम रहते ही कोट 1 लगाएँ।</translation>
    </message>
    <message>
        <source>Where it can be, take the pipe over the rim instead: a hole that is not made cannot leak.</source>
        <translation>जहाँ हो सके, पाइप को मुंडेर के ऊपर से ले जाएँ: जो छेद बना ही नहीं, वह लीक नहीं हो सकता।</translation>
    </message>
    <message>
        <source>Pipes through the wall and over the rim</source>
        <translation>दीवार के आर-पार और मुंडेर के ऊपर से पाइप</translation>
    </message>
    <message>
        <source>The design in short form, to scan or to type into the program:</source>
        <translation>डिज़ाइन छोटे रूप में, स्कैन करने या प्रोग्राम में लिखने के लिए:</translation>
    </message>
    <message>
        <source>From %1 deep on a ladder stands in the pit, close to those who dig, until the last one is out.</source>
        <translation>%1 गहराई से आगे गड्ढे में सीढ़ी खड़ी रहे, खोदने वालों के पास, जब तक आखिरी आदमी बाहर न आ जाए।</translation>
    </message>
    <message>
        <source>Throw the spoil %1 or more back from the edge. No stones, tools, bags or animals nearer than that.</source>
        <translation>निकली मिट्टी किनारे से %1 या ज़्यादा दूर फेंकें। पत्थर, औज़ार, कट्टे या पशु इससे पास न हों।</translation>
    </message>
    <message>
        <source>Fence the pit, by night and on rest days too. Children stay away.</source>
        <translation>गड्ढे के चारों ओर बाड़ लगाएँ, रात को और छुट्टी के दिन भी। बच्चे दूर रहें।</translation>
    </message>
    <message>
        <source>Dig inside the strings. Leave the pegs where they stand: all sizes are measured from them.</source>
        <translation>डोरियों के अंदर खोदें। खूँटियाँ जहाँ हैं वहीं रहने दें: सब नाप उन्हीं से लिए जाते हैं।</translation>
    </message>
    <message>
        <source>Take the whole floor down evenly, no more than %1 at a time. Never dig under a wall.</source>
        <translation>पूरे तले को एक समान नीचे उतारें, एक बार में %1 से ज़्यादा नहीं। दीवार के नीचे कभी न खोदें।</translation>
    </message>
    <message>
        <source>After every such step hold the batter board against the walls and check sides and diagonals (sheet M5). Cut off what stands out; do not fill what was dug too far with loose earth.</source>
        <translation>हर बार इतना उतारने के बाद दीवारों पर सलामी का फर्मा लगाएँ और भुजाएँ व विकर्ण जाँचें (शीट M5)। जो बाहर निकला हो उसे छील दें; जो ज़्यादा खुद गया हो उसे ढीली मिट्टी से न भरें।</translation>
    </message>
    <message>
        <source>Watch walls and edge. Cracks along the edge, bulging, falling crumbs or water in the wall: everybody out at once, and ask before going on.</source>
        <translation>दीवारों और किनारे पर नज़र रखें। किनारे के साथ दरारें, दीवार का फूलना, मिट्टी का झड़ना या दीवार में पानी दिखे: सब तुरंत बाहर निकलें, और आगे बढ़ने से पहले पूछें।</translation>
    </message>
    <message>
        <source>Stop in rain. Lead water away from the edge. Go in again only when the walls have been looked at all round.</source>
        <translation>बारिश में काम रोक दें। पानी को किनारे से दूर मोड़ें। चारों ओर की दीवारें देख लेने के बाद ही फिर अंदर जाएँ।</translation>
    </message>
    <message>
        <source>Dig the last hand&apos;s breadth by scraping, to the rod&apos;s mark for the pit floor; then ram the floor.</source>
        <translation>आखिरी हथेली भर मिट्टी खुरचकर निकालें, छड़ पर गड्ढे के तले के निशान तक; फिर तले को कूटें।</translation>
    </message>
    <message>
        <source>This pit gets deeper than %1. Walls of that height bury people: ask a licensed engineer how far they must lean or be propped, and follow the local code.</source>
        <translation>यह गड्ढा %1 से ज़्यादा गहरा होता है। इतनी ऊँची दीवारें लोगों को दबा देती हैं: लाइसेंसधारी इंजीनियर से पूछें कि दीवारों को कितनी सलामी या टेक चाहिए, और स्थानीय नियम मानें।</translation>
    </message>
    <message>
        <source>Loose spoil left over</source>
        <translation>बची हुई ढीली मिट्टी</translation>
    </message>
    <message>
        <source>Heap of it</source>
        <translation>उसका ढेर</translation>
    </message>
    <message>
        <source>%1 high, %2 across</source>
        <translation>%1 ऊँचा, %2 चौड़ा</translation>
    </message>
    <message>
        <source>Pit at the ground</source>
        <translation>ज़मीन पर गड्ढा</translation>
    </message>
    <message>
        <source>Pit at its floor</source>
        <translation>तले पर गड्ढा</translation>
    </message>
    <message>
        <source>Pit depth, ground to pit floor</source>
        <translation>गड्ढे की गहराई, ज़मीन से तले तक</translation>
    </message>
    <message>
        <source>To dig for the pit, as it lies</source>
        <translation>गड्ढे की खुदाई, बिना खुदी मिट्टी में</translation>
    </message>
    <message>
        <source>What is dug, before any lining</source>
        <translation>जो खोदा जाता है, लाइनिंग से पहले</translation>
    </message>
    <message>
        <source>The pit when it is dug</source>
        <translation>खुदने के बाद गड्ढा</translation>
    </message>
    <message>
        <source>The board for the lean of the dug wall</source>
        <translation>खुदी दीवार की सलामी का फर्मा</translation>
    </message>
    <message>
        <source>Sections: A-A on sheet M3, B-B on sheet M15.</source>
        <translation>काट: A-A शीट M3 पर, B-B शीट M15 पर।</translation>
    </message>
    <message>
        <source>B-B: sheet M15.</source>
        <translation>B-B: शीट M15।</translation>
    </message>
    <message>
        <source>Section B-B of the plan. A-A: sheet M3.</source>
        <translation>ऊपर से नक्शे की काट B-B। A-A: शीट M3।</translation>
    </message>
    <message>
        <source>The rod, standing in the pit</source>
        <translation>छड़, गड्ढे में खड़ी</translation>
    </message>
    <message>
        <source>Take soil from below the roots, dry and crush it, sieve out stones and straw.</source>
        <translation>जड़ों के नीचे से मिट्टी लें, सुखाकर पीसें, और छानकर पत्थर और घास-फूस निकाल दें।</translation>
    </message>
    <message>
        <source>Fill a clear jar with straight sides to a third with the soil. Add a pinch of salt or washing powder, and water until two fingers of air are left.</source>
        <translation>सीधी बाजू वाला साफ़ काँच का जार एक तिहाई मिट्टी से भरें। एक चुटकी नमक या कपड़े धोने का पाउडर डालें, और पानी इतना कि ऊपर दो उँगल हवा बचे।</translation>
    </message>
    <message>
        <source>Shut it, shake it hard for %1 minutes, set it down level and do not move it again.</source>
        <translation>बंद करें, %1 मिनट ज़ोर से हिलाएँ, समतल जगह पर रखें और फिर न हिलाएँ।</translation>
    </message>
    <message>
        <source>After %1 minute mark the top of the sand on the jar, after %2 hours the top of the silt. When the water is clear, after %3 to %4 hours, mark the top of the clay.</source>
        <translation>%1 मिनट बाद जार पर रेत के ऊपर का निशान लगाएँ, %2 घंटे बाद महीन मिट्टी (सिल्ट) के ऊपर का। जब पानी साफ़ हो जाए, %3 से %4 घंटे बाद, चिकनी मिट्टी के ऊपर का निशान लगाएँ।</translation>
    </message>
    <message>
        <source>Fold the sheet along the ruler&apos;s edge, stand it at the jar with its zero at the jar&apos;s floor inside, and read how thick each layer is.</source>
        <translation>शीट को पैमाने के किनारे से मोड़ें, जार से सटाकर खड़ी करें, शून्य जार के भीतरी पेंदे पर, और पढ़ें कि हर परत कितनी मोटी है।</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>जार</translation>
    </message>
    <message>
        <source>Soil from where, how deep</source>
        <translation>मिट्टी कहाँ की, कितनी गहरी</translation>
    </message>
    <message>
        <source>Sand, mm</source>
        <translation>रेत, mm</translation>
    </message>
    <message>
        <source>Silt, mm</source>
        <translation>सिल्ट, mm</translation>
    </message>
    <message>
        <source>Clay, mm</source>
        <translation>चिकनी मिट्टी, mm</translation>
    </message>
    <message>
        <source>All, mm</source>
        <translation>कुल, mm</translation>
    </message>
    <message>
        <source>Clay, %</source>
        <translation>चिकनी मिट्टी, %</translation>
    </message>
    <message>
        <source>How much clay is in the soil? In water sand sinks first, then silt, clay last.</source>
        <translation>मिट्टी में चिकनी मिट्टी कितनी है? पानी में पहले रेत बैठती है, फिर महीन मिट्टी (सिल्ट), सबसे बाद में चिकनी मिट्टी।</translation>
    </message>
    <message>
        <source>Clay in the soil, in percent = clay ÷ all × %1.</source>
        <translation>मिट्टी में चिकनी मिट्टी, प्रतिशत में = चिकनी मिट्टी ÷ कुल × %1।</translation>
    </message>
    <message>
        <source>Read by:</source>
        <translation>किसने पढ़ा:</translation>
    </message>
    <message>
        <source>Type the thickness of each layer in on the tab %1.</source>
        <translation>हर परत की मोटाई “%1” टैब में भरें।</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>नोट</translation>
    </message>
    <message>
        <source>How the jar is done: %1. A laboratory measures it more exactly.</source>
        <translation>जार जाँच कैसे करें: %1। प्रयोगशाला ज़्यादा सही नापती है।</translation>
    </message>
    <message>
        <source>or</source>
        <translation>या</translation>
    </message>
    <message>
        <source>For 1 bag of cement, and below it for half a bag (½): boxes of %1, or pans of %2, or buckets of %3, level with the rim.</source>
        <translation>सीमेंट के 1 कट्टे के लिए, और नीचे आधे कट्टे (½) के लिए: %1 की पेटियाँ, या %2 के तसले, या %3 की बाल्टियाँ, ऊपर तक बराबर भरी।</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>जाँच के गड्ढे</translation>
    </message>
    <message>
        <source>Soil by ball and ribbon</source>
        <translation>गोली और पट्टी से मिट्टी</translation>
    </message>
    <message>
        <source>Jar test</source>
        <translation>जार जाँच</translation>
    </message>
    <message>
        <source>Slope by water level</source>
        <translation>पानी की लेवल नली से ढलान</translation>
    </message>
    <message>
        <source>Section B-B</source>
        <translation>काट B-B</translation>
    </message>
    <message>
        <source>Build stages</source>
        <translation>निर्माण के चरण</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>पत्थर की सोलिंग</translation>
    </message>
    <message>
        <source>Coats and pipes</source>
        <translation>कोट और पाइप</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>महीने का इस्तेमाल</translation>
    </message>
    <message>
        <source>Cleaning and crack repair</source>
        <translation>सफ़ाई और दरारों की मरम्मत</translation>
    </message>
    <message>
        <source>Calculation sheet</source>
        <translation>हिसाब की शीट</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Take a handful of soil without stones. Drip water on and knead it until it is like putty: no dry crumbs, no water running.</source>
        <translation>मुट्ठी भर बिना पत्थर की मिट्टी लें। थोड़ा-थोड़ा पानी टपकाकर गूँधें, जब तक पुट्टी जैसी न हो जाए: न सूखे कण, न बहता पानी।</translation>
    </message>
    <message>
        <source>Squeeze it in the fist. Does a ball hold together?</source>
        <translation>मुट्ठी में दबाएँ। क्या गोली बँधी रहती है?</translation>
    </message>
    <message>
        <source>Push the ball with the thumb over the forefinger to a flat ribbon of even thickness, and let it hang until it breaks. Lay it on the strip below and read its length.</source>
        <translation>अँगूठे से गोली को तर्जनी (पहली उँगली) के ऊपर सरकाकर एक-सी मोटाई की चपटी पट्टी बनाएँ, और उसे टूटने तक लटकने दें। टूटे टुकड़े को नीचे छपे पैमाने पर रखकर लंबाई पढ़ें।</translation>
    </message>
    <message>
        <source>Wet a pinch in the palm very much and rub it with a finger. Is it above all gritty, above all smooth, or neither? Then wash your hands.</source>
        <translation>हथेली पर एक चुटकी मिट्टी खूब गीली करें और उँगली से रगड़ें। सबसे बढ़कर किरकिरी है, सबसे बढ़कर मुलायम, या दोनों नहीं? फिर हाथ धोएँ।</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>दोमट रेत</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>गोली और पट्टी</translation>
    </message>
    <message>
        <source>Gritty</source>
        <translation>किरकिरी</translation>
    </message>
    <message>
        <source>Neither</source>
        <translation>दोनों नहीं</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>मुलायम</translation>
    </message>
    <message>
        <source>no ball holds</source>
        <translation>गोली नहीं बँधती</translation>
    </message>
    <message>
        <source>ball, but no ribbon</source>
        <translation>गोली बनती है, पट्टी नहीं</translation>
    </message>
    <message>
        <source>ribbon shorter than %1</source>
        <translation>पट्टी %1 से छोटी</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>रेतीली दोमट</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>दोमट</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>सिल्ट दोमट</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>रेतीली चिकनी दोमट</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>चिकनी दोमट</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>सिल्ट वाली चिकनी दोमट</translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation>%1 या लंबी</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>रेतीली चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>सिल्ट वाली चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>Soil from where</source>
        <translation>मिट्टी कहाँ की</translation>
    </message>
    <message>
        <source>Ball</source>
        <translation>गोली</translation>
    </message>
    <message>
        <source>Ribbon, mm</source>
        <translation>पट्टी, mm</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>यह है</translation>
    </message>
    <message>
        <source>What soil is it? Hands can tell, with a little water.</source>
        <translation>मिट्टी कौन सी है? थोड़े पानी से हाथ बता देते हैं।</translation>
    </message>
    <message>
        <source>Type the readings in on the tab %1.</source>
        <translation>नाप “%1” टैब में भरें।</translation>
    </message>
    <message>
        <source>Two people who look where they step. Never walk backward toward the edge of a terrace or a pit.</source>
        <translation>दो लोग, जो देखकर पैर रखें। सीढ़ीदार खेत या गड्ढे के किनारे की ओर कभी उल्टे न चलें।</translation>
    </message>
    <message>
        <source>Take a clear hose of %1 to %2 m and two sticks with marks every centimetre. Fill the hose until no bubble is left in it, and tie an end to each stick.</source>
        <translation>%1 से %2 m लंबी पारदर्शी लेवल नली और दो छड़ें लें, जिन पर हर सेंटीमीटर का निशान हो। नली में पानी भरें, जब तक उसमें कोई बुलबुला न रहे, और एक-एक सिरा एक-एक छड़ पर बाँधें।</translation>
    </message>
    <message>
        <source>One stick stands uphill, one straight downhill, both upright on the ground. Both ends of the hose are open.</source>
        <translation>एक छड़ ऊपर खड़ी करें, दूसरी सीधे ढलान की ओर नीचे, दोनों ज़मीन पर सीधी खड़ी। नली के दोनों सिरे खुले रहें।</translation>
    </message>
    <message>
        <source>Wait until the water stands still: it is equally high at both ends. Read it on both sticks, from the ground up.</source>
        <translation>रुकें जब तक पानी ठहर न जाए: दोनों सिरों पर वह बराबर ऊँचा होता है। दोनों छड़ों पर पढ़ें, ज़मीन से ऊपर।</translation>
    </message>
    <message>
        <source>Drop = reading downhill less reading uphill; less than nothing where the ground rises. Run = how far the sticks are apart, with the tape held level. Write both down.</source>
        <translation>उतार = नीचे का नाप घटा ऊपर का नाप; जहाँ ज़मीन चढ़े वहाँ शून्य से कम। दूरी = छड़ें कितनी दूर हैं, फ़ीता समतल पकड़कर। दोनों लिखें।</translation>
    </message>
    <message>
        <source>The uphill stick goes where the downhill one stood, and so on over the whole place of the tank and some metres beyond.</source>
        <translation>ऊपर वाली छड़ वहाँ जाए जहाँ नीचे वाली खड़ी थी, और इसी तरह टंकी की पूरी जगह पर और कुछ मीटर आगे तक।</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>जोड़</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>पड़ाव</translation>
    </message>
    <message>
        <source>Uphill, m</source>
        <translation>ऊपर, m</translation>
    </message>
    <message>
        <source>Downhill, m</source>
        <translation>नीचे, m</translation>
    </message>
    <message>
        <source>Drop, m</source>
        <translation>उतार, m</translation>
    </message>
    <message>
        <source>Run, m</source>
        <translation>दूरी, m</translation>
    </message>
    <message>
        <source>How steep is the ground? Water in a hose stands equally high at both ends.</source>
        <translation>ज़मीन कितनी ढालू है? नली का पानी दोनों सिरों पर बराबर ऊँचा रहता है।</translation>
    </message>
    <message>
        <source>Fall in percent = sum of the drops ÷ sum of the runs × %1.</source>
        <translation>ढाल, प्रतिशत में = उतारों का जोड़ ÷ दूरियों का जोड़ × %1।</translation>
    </message>
    <message>
        <source>Fall, %:</source>
        <translation>ढाल, %:</translation>
    </message>
    <message>
        <source>Downhill toward, by compass:</source>
        <translation>ढलान किस ओर, कंपास से:</translation>
    </message>
    <message>
        <source>Type runs and drops in on the tab %1.</source>
        <translation>दूरियाँ और उतार “%1” टैब में भरें।</translation>
    </message>
    <message>
        <source>How the hose is used: %1.</source>
        <translation>लेवल नली कैसे काम में लें: %1।</translation>
    </message>
    <message>
        <source>first on %1</source>
        <translation>पहली बार %1 को</translation>
    </message>
    <message>
        <source>How the tank grows, with the first day on which it stands so.</source>
        <translation>टंकी कैसे बनती है, और किस दिन पहली बार ऐसी खड़ी होती है।</translation>
    </message>
    <message>
        <source>How the tank grows, cut upright at A-A.</source>
        <translation>टंकी कैसे बनती है, A-A पर सीधी खड़ी काट।</translation>
    </message>
    <message>
        <source>Wet cement burns, its dust harms the lungs. Wear all of these; wash splashes off at once with much clean water.</source>
        <translation>गीला सीमेंट जलाता है, उसकी धूल फेफड़ों को नुकसान करती है। ये सब पहनें; छींटे तुरंत बहुत सारे साफ़ पानी से धो डालें।</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone: one works, one stays at the top, watches the walls and can fetch help.</source>
        <translation>गड्ढे में कोई अकेला न जाए: एक काम करे, एक ऊपर रहे, दीवारों पर नज़र रखे और मदद बुला सके।</translation>
    </message>
    <message>
        <source>Thickness, rammed</source>
        <translation>मोटाई, कुटी हुई</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>लाने का पत्थर, ढीला</translation>
    </message>
    <message>
        <source>Top of the bed below the string at ground level</source>
        <translation>सोलिंग का ऊपर, ज़मीन के स्तर की डोरी से नीचे</translation>
    </message>
    <message>
        <source>Stone bed under the floor</source>
        <translation>फ़र्श के नीचे पत्थर की सोलिंग</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone. Heavy stones: two people. Hand them or let them down; never throw stones into a pit where somebody stands.</source>
        <translation>गड्ढे में कोई अकेला न जाए। भारी पत्थर: दो लोग उठाएँ। हाथों-हाथ दें या नीचे उतारें; जिस गड्ढे में कोई खड़ा हो उसमें कभी पत्थर न फेंकें।</translation>
    </message>
    <message>
        <source>Take hard, clean stones, about %1 high when they stand on edge. No soft or rotten ones.</source>
        <translation>सख्त, साफ़ पत्थर लें, जो खड़े रखने पर करीब %1 ऊँचे हों। नरम या गले हुए नहीं।</translation>
    </message>
    <message>
        <source>Set them on edge on the rammed floor, close together, from the far side toward the ladder.</source>
        <translation>उन्हें कुटे हुए तले पर खड़ा, पास-पास जमाएँ, दूर के सिरे से सीढ़ी की ओर।</translation>
    </message>
    <message>
        <source>Ram them until none moves under the foot. Fill all gaps with gravel and small stones, and ram again.</source>
        <translation>इतना कूटें कि पैर के नीचे कोई न हिले। सब खाली जगहें बजरी और छोटे पत्थरों से भरें, और फिर कूटें।</translation>
    </message>
    <message>
        <source>Check with string and rod in the middle and along all sides: the top lies %1 below the string everywhere.</source>
        <translation>डोरी और छड़ से बीच में और सब किनारों पर जाँचें: ऊपरी सतह हर जगह डोरी से %1 नीचे हो।</translation>
    </message>
    <message>
        <source>Wash dust off and keep the bed moist until the first coat goes on.</source>
        <translation>धूल धो दें और पहला कोट लगने तक सोलिंग नम रखें।</translation>
    </message>
    <message>
        <source>Pit:</source>
        <translation>गड्ढा:</translation>
    </message>
    <message>
        <source>A narrow pit caves in on whoever stands in it. Nobody climbs into one deeper than the waist: look from above, lift soil out with the spade. Deeper than %1 only with an auger or a wide, leaning pit.</source>
        <translation>तंग गड्ढा उस पर ढह जाता है जो उसमें खड़ा हो। कमर से गहरे गड्ढे में कोई न उतरे: ऊपर से देखें, मिट्टी फावड़े से निकालें। %1 से गहरा केवल बरमे से, या चौड़े, सलामी वाले गड्ढे में।</translation>
    </message>
    <message>
        <source>Two people at each pit. Fence or cover it while it is open, and fill it when it has been logged: people and animals fall in.</source>
        <translation>हर गड्ढे पर दो लोग। खुला रहे तब तक बाड़ लगाएँ या ढकें, और लिख लेने के बाद भर दें: लोग और पशु गिर जाते हैं।</translation>
    </message>
    <message>
        <source>Dig or bore two or three, at the tank&apos;s place and beside it. The tank&apos;s pit will be %1 deep (dashed line): go deeper.</source>
        <translation>दो-तीन खोदें या बरमे से बनाएँ, टंकी की जगह पर और उसके पास। टंकी का गड्ढा %1 गहरा होगा (टूटी रेखा): इससे गहरा जाएँ।</translation>
    </message>
    <message>
        <source>Draw a line in the strip wherever the soil changes, and write one row of the log for each layer. Soil is one of: %1.</source>
        <translation>जहाँ भी मिट्टी बदले, वहाँ खड़े खाने में लकीर खींचें, और हर परत के लिए रजिस्टर की एक पंक्ति लिखें। मिट्टी इनमें से एक: %1।</translation>
    </message>
    <message>
        <source>Write how deep water comes in. Look again the next day, and in the wet months.</source>
        <translation>लिखें कि पानी कितनी गहराई पर आता है। अगले दिन फिर देखें, और बरसात के महीनों में भी।</translation>
    </message>
    <message>
        <source>Hard: a pick is needed. Firm: the spade goes in under the foot. Soft: the thumb goes in.</source>
        <translation>सख्त: गैंती चाहिए। ठोस: पैर के दबाव से फावड़ा धँसता है। नरम: अँगूठा धँस जाता है।</translation>
    </message>
    <message>
        <source>Type the layers in on the tab %1.</source>
        <translation>परतें “%1” टैब में भरें।</translation>
    </message>
    <message>
        <source>Pit</source>
        <translation>गड्ढा</translation>
    </message>
    <message>
        <source>From, m</source>
        <translation>कहाँ से, m</translation>
    </message>
    <message>
        <source>To, m</source>
        <translation>कहाँ तक, m</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>मिट्टी</translation>
    </message>
    <message>
        <source>Hard, firm or soft</source>
        <translation>सख्त, ठोस या नरम</translation>
    </message>
    <message>
        <source>Water at, m</source>
        <translation>पानी कहाँ, m</translation>
    </message>
    <message>
        <source>Logged by:</source>
        <translation>किसने लिखा:</translation>
    </message>
    <message>
        <source>Wanted in the month</source>
        <translation>महीने में चाहिए</translation>
    </message>
    <message>
        <source>There to use in the month</source>
        <translation>महीने में मिलेगा</translation>
    </message>
    <message>
        <source>There to use each day</source>
        <translation>रोज़ मिलेगा</translation>
    </message>
    <message>
        <source>Stick, usual year</source>
        <translation>छड़, आम साल</translation>
    </message>
    <message>
        <source>Stick, bad year</source>
        <translation>छड़, खराब साल</translation>
    </message>
    <message>
        <source>Used each day</source>
        <translation>रोज़ का इस्तेमाल</translation>
    </message>
    <message>
        <source>On the first of each month read the dip-stick and look at the row.</source>
        <translation>हर महीने की पहली तारीख को पानी नापने की छड़ पढ़ें और वह पंक्ति देखें।</translation>
    </message>
    <message>
        <source>As much as in a usual year, or more: use what the row says for each day. Less than in a bad year: use less from this day on, and water the beds that matter most. Between: use with care.</source>
        <translation>आम साल जितना या ज़्यादा: पंक्ति में लिखा रोज़ का पानी इस्तेमाल करें। खराब साल से कम: आज से कम इस्तेमाल करें, और सबसे ज़रूरी क्यारियों को पानी दें। बीच में: सँभलकर इस्तेमाल करें।</translation>
    </message>
    <message>
        <source>A bucket of the mix cards holds %1. Count the buckets of one day and write down what was used.</source>
        <translation>मिश्रण कार्डों की एक बाल्टी में %1 आता है। एक दिन की बाल्टियाँ गिनें और लिखें कि कितना इस्तेमाल हुआ।</translation>
    </message>
    <message>
        <source>Wanted and there to use: means of all years reckoned. Usual year: half of the years had more in the tank on that day. Bad year: one year in ten had less.</source>
        <translation>चाहिए और मिलेगा: हिसाब में लिए सब सालों का औसत। आम साल: आधे सालों में उस दिन टंकी में इससे ज़्यादा था। खराब साल: दस में से एक साल में इससे कम था।</translation>
    </message>
</context>
<context>
    <name>Summary</name>
    <message>
        <source>Farm water tank</source>
        <translation>खेत की पानी की टंकी</translation>
    </message>
    <message>
        <source>to the rim</source>
        <translation>मुंडेर तक</translation>
    </message>
    <message>
        <source>to the overflow level</source>
        <translation>ओवरफ्लो के स्तर तक</translation>
    </message>
    <message>
        <source>usable above the dead depth</source>
        <translation>डेड गहराई से ऊपर, काम आने वाला</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>टंकी में पानी</translation>
    </message>
    <message>
        <source>clear, at the finished floor</source>
        <translation>भीतरी, तैयार फ़र्श पर</translation>
    </message>
    <message>
        <source>clear, at the rim</source>
        <translation>भीतरी, मुंडेर पर</translation>
    </message>
    <message>
        <source>clear depth, floor to rim</source>
        <translation>भीतरी गहराई, फ़र्श से मुंडेर तक</translation>
    </message>
    <message>
        <source>pit, at the ground</source>
        <translation>गड्ढा, ज़मीन पर</translation>
    </message>
    <message>
        <source>pit, at its floor</source>
        <translation>गड्ढा, तले पर</translation>
    </message>
    <message>
        <source>pit depth below the ground</source>
        <translation>ज़मीन से नीचे गड्ढे की गहराई</translation>
    </message>
    <message>
        <source>earth dug, as it lies</source>
        <translation>खोदी मिट्टी, बिना खुदी के नाप से</translation>
    </message>
    <message>
        <source>spoil, loose</source>
        <translation>निकली मिट्टी, ढीली</translation>
    </message>
    <message>
        <source>Sizes (diameters)</source>
        <translation>नाप (व्यास)</translation>
    </message>
    <message>
        <source>Sizes (length x width)</source>
        <translation>नाप (लंबाई x चौड़ाई)</translation>
    </message>
    <message>
        <source>Layers (thickness, volume, face)</source>
        <translation>परतें (मोटाई, आयतन, सतह)</translation>
    </message>
    <message>
        <source>Materials (net, order)</source>
        <translation>सामान (असल, मँगाएँ)</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one (customary; exact shells; area times thickness)</source>
        <translation>चलन की सूची और हिसाब, साथ-साथ (चलन; सटीक खोल; क्षेत्रफल गुणा मोटाई)</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>जवाब नहीं</translation>
    </message>
    <message>
        <source>trust thickness and mix: cement</source>
        <translation>मोटाई और मिश्रण पर भरोसा करें: सीमेंट</translation>
    </message>
    <message>
        <source>trust cement and mix: thickness of the coats</source>
        <translation>सीमेंट और मिश्रण पर भरोसा करें: कोट की मोटाई</translation>
    </message>
    <message>
        <source>trust cement and thickness: soil:sand:cement</source>
        <translation>सीमेंट और मोटाई पर भरोसा करें: मिट्टी:रेत:सीमेंट</translation>
    </message>
    <message>
        <source>Which to trust (exact shells; area times thickness)</source>
        <translation>किस पर भरोसा करें (सटीक खोल; क्षेत्रफल गुणा मोटाई)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 से %2</translation>
    </message>
    <message>
        <source>Labour (at the rate used, range, who)</source>
        <translation>मज़दूरी के दिन (लागू दर से, दायरा, कौन)</translation>
    </message>
    <message>
        <source>Order of work (first day, last day, crew)</source>
        <translation>काम का क्रम (पहला दिन, आखिरी दिन, टोली)</translation>
    </message>
    <message>
        <source>What to know</source>
        <translation>जानने की बातें</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>क्या पानी पूरा पड़ेगा</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>तारीखें</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>कोट एक ही बार में</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहली भराई</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>दाम नहीं</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>खर्च का हिसाब</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>पैसा</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>लाइनिंग, सालाना खर्च से</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>विकल्प साथ-साथ</translation>
    </message>
    <message>
        <source>How sure is it</source>
        <translation>यह कितना पक्का है</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>ढुलाई, कुल</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>अनदेखे खर्च के लिए</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>कुल</translation>
    </message>
</context>
<context>
    <name>app</name>
    <message>
        <source>problem</source>
        <translation>समस्या</translation>
    </message>
    <message>
        <source>note</source>
        <translation>सूचना</translation>
    </message>
    <message>
        <source>There is no translation for %1 yet; texts are in English.</source>
        <translation>%1 का अनुवाद अभी नहीं है; पाठ अंग्रेज़ी में हैं।</translation>
    </message>
    <message>
        <source>%1: no problems found.</source>
        <translation>%1: कोई समस्या नहीं मिली।</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 पढ़ी नहीं जा सकती: %2</translation>
    </message>
    <message>
        <source>This project has no sheet %1.</source>
        <translation>इस प्रोजेक्ट में शीट %1 नहीं है।</translation>
    </message>
</context>
<context>
    <name>ui::Actions</name>
    <message>
        <source>&amp;File</source>
        <translation>फ़ाइल (&amp;F)</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>नया (&amp;N)</translation>
    </message>
    <message>
        <source>Open the e&amp;xample</source>
        <translation>उदाहरण खोलें (&amp;X)</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>खोलें (&amp;O)…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>हाल के खोलें (&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>सहेजें (&amp;S)</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>नए नाम से सहेजें (&amp;A)…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>निर्यात करें (&amp;E)…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>छापें (&amp;P)…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>बाहर निकलें (&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>बदलें (&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>वापस लें (&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>फिर करें (&amp;R)</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>देखें (&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Pit</source>
        <translation>गड्ढा (&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Drawings</source>
        <translation>नक्शे (&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Sheets</source>
        <translation>शीटें (&amp;S)</translation>
    </message>
    <message>
        <source>Look from &amp;above and aside</source>
        <translation>ऊपर और बगल से देखें (&amp;A)</translation>
    </message>
    <message>
        <source>Look straight d&amp;own</source>
        <translation>सीधे ऊपर से देखें (&amp;O)</translation>
    </message>
    <message>
        <source>Look at the &amp;cut</source>
        <translation>काट देखें (&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>इकाइयाँ (&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Metres</source>
        <translation>मीटर (&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Feet and inches</source>
        <translation>फुट और इंच (&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>रंग (&amp;C)</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>डेस्कटॉप जैसे (&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>हल्के (&amp;L)</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>गहरे (&amp;A)</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>डेस्कटॉप जैसे</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>मदद (&amp;H)</translation>
    </message>
    <message>
        <source>&amp;About Tankwright</source>
        <translation>Tankwright के बारे में (&amp;A)</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>औज़ार</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>पानी (&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation>ज़मीन (&amp;G)</translation>
    </message>
    <message>
        <source>P&amp;ipes</source>
        <translation>पाइप (&amp;I)</translation>
    </message>
    <message>
        <source>Wor&amp;ks</source>
        <translation>निर्माण (&amp;K)</translation>
    </message>
    <message>
        <source>&amp;Money</source>
        <translation>पैसा (&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Options</source>
        <translation>विकल्प (&amp;O)</translation>
    </message>
    <message>
        <source>Open from s&amp;hort form…</source>
        <translation>छोटे रूप से खोलें (&amp;H)…</translation>
    </message>
    <message>
        <source>&amp;Copy the design in short form</source>
        <translation>डिज़ाइन छोटे रूप में कॉपी करें (&amp;C)</translation>
    </message>
    <message>
        <source>Group &amp;view, whole screen</source>
        <translation>समूह को दिखाएँ, पूरी स्क्रीन (&amp;V)</translation>
    </message>
    <message>
        <source>No&amp;tes</source>
        <translation>नोट (&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>भाषा (&amp;L)</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>भाषा जैसे</translation>
    </message>
    <message>
        <source>&amp;Numbers and dates</source>
        <translation>अंक और तारीखें (&amp;N)</translation>
    </message>
</context>
<context>
    <name>ui::BillPanel</name>
    <message>
        <source> then </source>
        <translation> तो </translation>
    </message>
    <message>
        <source>Use this thickness</source>
        <translation>यह मोटाई लें</translation>
    </message>
    <message>
        <source>Use this mix</source>
        <translation>यह मिश्रण लें</translation>
    </message>
    <message>
        <source>Enter the bill people reckon with today (at the left) to see it beside this one.</source>
        <translation>लोग आज जिस चलन की सूची से हिसाब लगाते हैं, उसे (बाईं ओर) भरें, ताकि वह इसके साथ-साथ दिखे।</translation>
    </message>
    <message>
        <source>bill</source>
        <translation>सूची</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>हिसाब</translation>
    </message>
    <message>
        <source>  area × thickness</source>
        <translation>  क्षेत्रफल × मोटाई</translation>
    </message>
    <message>
        <source>Trust thickness and mix: cement %1 (area × thickness: %2).</source>
        <translation>मोटाई और मिश्रण पर भरोसा करें: सीमेंट %1 (क्षेत्रफल × मोटाई: %2)।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: coats of %1 (area × thickness: %2).</source>
        <translation>सूची के सीमेंट और मिश्रण पर भरोसा करें: कोट %1 (क्षेत्रफल × मोटाई: %2)।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: no thickness answers to them.</source>
        <translation>सूची के सीमेंट और मिश्रण पर भरोसा करें: इनसे कोई मोटाई नहीं बैठती।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: mix %1, soil : sand : cement (area × thickness: %2).</source>
        <translation>सूची के सीमेंट और मोटाई पर भरोसा करें: मिश्रण %1, मिट्टी : रेत : सीमेंट (क्षेत्रफल × मोटाई: %2)।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: no mix answers to them.</source>
        <translation>सूची के सीमेंट और मोटाई पर भरोसा करें: इनसे कोई मिश्रण नहीं बैठता।</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>अनुपात</translation>
    </message>
</context>
<context>
    <name>ui::BillTable</name>
    <message>
        <source>The bill</source>
        <translation>खर्च का हिसाब</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>मद</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>मात्रा</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>दाम</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>रकम</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>बिना पैसे</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>नकद</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>बोझ</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>ढुलाई</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>ढुलाई, कुल</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>अनदेखे खर्च के लिए</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>कुल</translation>
    </message>
</context>
<context>
    <name>ui::ChartView</name>
    <message>
        <source>Point at the chart, or walk through it with the arrow keys.</source>
        <translation>चार्ट पर माउस ले जाएँ, या तीर वाले बटनों से उसमें चलें।</translation>
    </message>
</context>
<context>
    <name>ui::ChoiceRow</name>
    <message>
        <source>not known</source>
        <translation>पता नहीं</translation>
    </message>
</context>
<context>
    <name>ui::CoatsPanel</name>
    <message>
        <source>Add a coat</source>
        <translation>कोट जोड़ें</translation>
    </message>
    <message>
        <source>Adds a coat on the water side, like the last one</source>
        <translation>पानी की ओर एक कोट जोड़ता है, पिछले कोट जैसा</translation>
    </message>
    <message>
        <source>%1, against the earth</source>
        <translation>%1, मिट्टी से लगा</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>%1 हटाएँ</translation>
    </message>
    <message>
        <source>Take out a coat</source>
        <translation>एक कोट हटाएँ</translation>
    </message>
</context>
<context>
    <name>ui::CutControls</name>
    <message>
        <source>&amp;Cut open</source>
        <translation>काटकर देखें (&amp;C)</translation>
    </message>
    <message>
        <source>along</source>
        <translation>लंबाई में</translation>
    </message>
    <message>
        <source>across</source>
        <translation>चौड़ाई में</translation>
    </message>
    <message>
        <source>Direction of the cut: along the length or across it</source>
        <translation>काट की दिशा: लंबाई में या चौड़ाई में</translation>
    </message>
    <message>
        <source>Direction of the cut</source>
        <translation>काट की दिशा</translation>
    </message>
    <message>
        <source>Place of the cut; the middle of the slider is the middle of the tank</source>
        <translation>काट की जगह; सरकने वाले बटन का बीच टंकी का बीच है</translation>
    </message>
    <message>
        <source>Place of the cut</source>
        <translation>काट की जगह</translation>
    </message>
</context>
<context>
    <name>ui::DeliveryPanel</name>
    <message>
        <source>Plan pipes and overflow</source>
        <translation>पाइप और ओवरफ्लो की योजना बनाएँ</translation>
    </message>
    <message>
        <source>How does the water come, and where does too much of it go?</source>
        <translation>पानी कैसे आता है, और ज़्यादा हो तो कहाँ जाता है?</translation>
    </message>
    <message>
        <source>Heads along the line</source>
        <translation>लाइन के साथ हेड</translation>
    </message>
    <message>
        <source>Water level while the line runs wide open</source>
        <translation>लाइन पूरी खुली हो तब पानी का स्तर</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>स्रोत से</translation>
    </message>
    <message>
        <source>The way of the pipe, from its inlet at the source to its end at the tank</source>
        <translation>पाइप का रास्ता, स्रोत पर उसके मुँह से टंकी पर उसके सिरे तक</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>खेत तक</translation>
    </message>
    <message>
        <source>The way of the pipe, from the rim of the tank to the outlets</source>
        <translation>पाइप का रास्ता, टंकी की मुंडेर से निकासों तक</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>ओवरफ्लो</translation>
    </message>
    <message>
        <source>Water at the rim in a storm</source>
        <translation>मूसलाधार बारिश में मुंडेर पर पानी</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>गाद कुंडी</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>लीक जाँच</translation>
    </message>
</context>
<context>
    <name>ui::DrawingsPanel</name>
    <message>
        <source>Drawing of the tank</source>
        <translation>टंकी का नक्शा</translation>
    </message>
    <message>
        <source>Plan and section</source>
        <translation>ऊपर से नक्शा और काट</translation>
    </message>
    <message>
        <source>Setting-out</source>
        <translation>ले-आउट</translation>
    </message>
    <message>
        <source>Foot of the wall</source>
        <translation>दीवार की जड़</translation>
    </message>
    <message>
        <source>Sections A-A and B-B</source>
        <translation>काट A-A और B-B</translation>
    </message>
</context>
<context>
    <name>ui::EditorPanel</name>
    <message>
        <source>Plan people and dates</source>
        <translation>लोगों और तारीखों की योजना बनाएँ</translation>
    </message>
    <message>
        <source>Place and soil</source>
        <translation>जगह और मिट्टी</translation>
    </message>
    <message>
        <source>Tank, finished inside</source>
        <translation>टंकी, तैयार अंदर से</translation>
    </message>
    <message>
        <source>Stone bed and coats</source>
        <translation>पत्थर की सोलिंग और कोट</translation>
    </message>
    <message>
        <source>Materials and measures</source>
        <translation>सामान और नाप</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>चलन की सूची</translation>
    </message>
    <message>
        <source>People and dates</source>
        <translation>लोग और तारीखें</translation>
    </message>
    <message>
        <source>Smallest tank recommended</source>
        <translation>सबसे छोटी टंकी, जो सुझाई जाती है</translation>
    </message>
    <message>
        <source>Roof, ground and losses</source>
        <translation>छत, ज़मीन और घाटा</translation>
    </message>
    <message>
        <source>Needs and target</source>
        <translation>ज़रूरतें और लक्ष्य</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>Override by a licensed engineer</source>
        <translation>लाइसेंसधारी इंजीनियर ज़िम्मा लेकर आगे बढ़ाए</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>ज़मीन और समतल जगह</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>स्रोत का पाइप</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>खेत का पाइप</translation>
    </message>
    <message>
        <source>Overflow and spill path</source>
        <translation>ओवरफ्लो और निकास की नाली</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>गाद कुंडी</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>लीक जाँच</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहली भराई</translation>
    </message>
    <message>
        <source>Loads and money</source>
        <translation>बोझ और पैसा</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>खोज की सीमाएँ</translation>
    </message>
</context>
<context>
    <name>ui::Explained</name>
    <message>
        <source>From: %1</source>
        <translation>किनसे: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>संदर्भ: %1</translation>
    </message>
    <message>
        <source>How is this reckoned?</source>
        <translation>इसका हिसाब कैसे लगा?</translation>
    </message>
    <message>
        <source>How is this reckoned? %1</source>
        <translation>इसका हिसाब कैसे लगा? %1</translation>
    </message>
    <message>
        <source>Unfolded; press to fold</source>
        <translation>खुला है; समेटने के लिए दबाएँ</translation>
    </message>
    <message>
        <source>Folded; press to unfold</source>
        <translation>सिमटा है; खोलने के लिए दबाएँ</translation>
    </message>
    <message>
        <source>There is no number to reckon yet.</source>
        <translation>अभी हिसाब लगाने को कोई संख्या नहीं है।</translation>
    </message>
</context>
<context>
    <name>ui::Export</name>
    <message>
        <source>The ending of “%1” is not one of %2.</source>
        <translation>“%1” के नाम का अंत इनमें से नहीं है: %2।</translation>
    </message>
    <message>
        <source>Keep the bare walls wet</source>
        <translation>खुली दीवारें गीली रखें</translation>
    </message>
</context>
<context>
    <name>ui::FieldRow</name>
    <message>
        <source>This would do now: press Enter to use it, Escape to leave it.</source>
        <translation>अभी यह चल जाएगा: लेने के लिए Enter दबाएँ, छोड़ने के लिए Escape।</translation>
    </message>
</context>
<context>
    <name>ui::FiguresPanel</name>
    <message>
        <source>To look out for</source>
        <translation>ध्यान रखें</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>चलन की सूची</translation>
    </message>
</context>
<context>
    <name>ui::FindingsList</name>
    <message>
        <source>show</source>
        <translation>दिखाएँ</translation>
    </message>
</context>
<context>
    <name>ui::FlagRow</name>
    <message>
        <source>not known</source>
        <translation>पता नहीं</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>हाँ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>नहीं</translation>
    </message>
</context>
<context>
    <name>ui::GroundPanel</name>
    <message>
        <source>The ground seen from above</source>
        <translation>ऊपर से दिखती ज़मीन</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>ऊपर से</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>ऊँचाई के बिंदु</translation>
    </message>
    <message>
        <source>Platform &amp;level</source>
        <translation>समतल जगह का स्तर (&amp;L)</translation>
    </message>
    <message>
        <source>Level of the platform over the ground at the middle of the tank</source>
        <translation>टंकी के बीच की ज़मीन से समतल जगह का स्तर</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>समतल जगह का स्तर</translation>
    </message>
    <message>
        <source>Cut %1, fill %2</source>
        <translation>कटान %1, भराव %2</translation>
    </message>
    <message>
        <source>Not possible on this ground</source>
        <translation>इस ज़मीन पर नहीं हो सकता</translation>
    </message>
    <message>
        <source>no platform</source>
        <translation>समतल जगह नहीं</translation>
    </message>
</context>
<context>
    <name>ui::MainWindow</name>
    <message>
        <source>Pit</source>
        <translation>गड्ढा</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>नक्शे</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>शीटें</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>अभी सहेजा नहीं</translation>
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
        <translation>Tankwright के बारे में</translation>
    </message>
    <message>
        <source>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;Plans small hand-dug farm water tanks lined with soil-cement plaster.&lt;/p&gt;&lt;p&gt;Digging, cement, lifting and open water can hurt and kill. Local codes and licensed practice come first; this program does not replace them.&lt;/p&gt;</source>
        <translation>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;हाथ से खोदी, मिट्टी-सीमेंट प्लास्टर की लाइनिंग वाली खेत की छोटी पानी की टंकियों की योजना बनाता है।&lt;/p&gt;&lt;p&gt;खुदाई, सीमेंट, भार उठाना और खुला पानी चोट पहुँचा सकते हैं और जान ले सकते हैं। स्थानीय नियम और लाइसेंसधारी पेशेवर की राय सबसे पहले आती है; यह प्रोग्राम उनकी जगह नहीं लेता।&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>बिना सहेजा काम</translation>
    </message>
    <message>
        <source>This project has changes that are not saved.</source>
        <translation>इस प्रोजेक्ट में ऐसे बदलाव हैं जो सहेजे नहीं गए।</translation>
    </message>
    <message>
        <source>%1 was not opened.</source>
        <translation>%1 नहीं खुली।</translation>
    </message>
    <message>
        <source>%1 is open.</source>
        <translation>%1 खुली है।</translation>
    </message>
    <message>
        <source>Not saved; your changes are still here.</source>
        <translation>सहेजा नहीं गया; आपके बदलाव अब भी यहाँ हैं।</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>%1 नाम से सहेजा गया।</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>और %1 और</translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation>प्रोजेक्ट खोलें</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright);;All files (*)</source>
        <translation>Tankwright प्रोजेक्ट (*.tankwright);;सभी फ़ाइलें (*)</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>टंकी</translation>
    </message>
    <message>
        <source>Save the project</source>
        <translation>प्रोजेक्ट सहेजें</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright)</source>
        <translation>Tankwright प्रोजेक्ट (*.tankwright)</translation>
    </message>
    <message>
        <source>Sheets as PDF (*.pdf)</source>
        <translation>शीटें, PDF में (*.pdf)</translation>
    </message>
    <message>
        <source>Tables as CSV (*.csv)</source>
        <translation>तालिकाएँ, CSV में (*.csv)</translation>
    </message>
    <message>
        <source>Solids as STL (*.stl)</source>
        <translation>ठोस आकृतियाँ, STL में (*.stl)</translation>
    </message>
    <message>
        <source>Solids as glTF (*.glb)</source>
        <translation>ठोस आकृतियाँ, glTF में (*.glb)</translation>
    </message>
    <message>
        <source>Plan and section (*.svg)</source>
        <translation>ऊपर से नक्शा और काट (*.svg)</translation>
    </message>
    <message>
        <source>Picture of the pit (*.png)</source>
        <translation>गड्ढे का चित्र (*.png)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>निर्यात</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>%1 लिखी जा रही है…</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>लिखी गई: %1।</translation>
    </message>
    <message>
        <source>%1 was not written. %2</source>
        <translation>%1 नहीं लिखी गई। %2</translation>
    </message>
    <message>
        <source>a project without a name</source>
        <translation>बिना नाम का प्रोजेक्ट</translation>
    </message>
    <message>
        <source>The program stopped before %1 was saved. What you had at %2 is kept.</source>
        <translation>%1 सहेजे जाने से पहले प्रोग्राम रुक गया। %2 तक का आपका काम रखा हुआ है।</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>वहीं से आगे बढ़ें</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>फेंक दें</translation>
    </message>
    <message>
        <source>The kept work cannot be used.</source>
        <translation>रखा हुआ काम इस्तेमाल नहीं हो सकता।</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>पानी</translation>
    </message>
    <message>
        <source>Read a daily record</source>
        <translation>रोज़ का रिकॉर्ड पढ़ें</translation>
    </message>
    <message>
        <source>Tables with date, rain_mm, t_min_c, t_max_c (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>date, rain_mm, t_min_c, t_max_c वाली तालिकाएँ (*.csv *.txt *.tsv);;सभी फ़ाइलें (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 पढ़ी नहीं जा सकती: %2</translation>
    </message>
    <message>
        <source>%1 was not taken; nothing has changed.</source>
        <translation>%1 नहीं ली गई; कुछ नहीं बदला।</translation>
    </message>
    <message>
        <source>%1: %2 taken.</source>
        <translation>%1: %2 लिए गए।</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>ज़मीन</translation>
    </message>
    <message>
        <source>Pipes</source>
        <translation>पाइप</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 पढ़ी जा रही है</translation>
    </message>
    <message>
        <source>Read spot heights</source>
        <translation>ऊँचाई के बिंदु पढ़ें</translation>
    </message>
    <message>
        <source>Joining %1 spot heights to triangles</source>
        <translation>ऊँचाई के %1 बिंदु तिकोनों में जोड़े जा रहे हैं</translation>
    </message>
    <message>
        <source>Tables with east, north, height in metres (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>पूरब, उत्तर, ऊँचाई मीटर में, वाली तालिकाएँ (*.csv *.txt *.tsv);;सभी फ़ाइलें (*)</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>निर्माण</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>पैसा</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>विकल्प</translation>
    </message>
    <message>
        <source>Read a district file</source>
        <translation>ज़िले की फ़ाइल पढ़ें</translation>
    </message>
    <message>
        <source>District files (*.district);;All files (*)</source>
        <translation>ज़िले की फ़ाइलें (*.district);;सभी फ़ाइलें (*)</translation>
    </message>
    <message>
        <source>Write a district file</source>
        <translation>ज़िले की फ़ाइल लिखें</translation>
    </message>
    <message>
        <source>District files (*.district)</source>
        <translation>ज़िले की फ़ाइलें (*.district)</translation>
    </message>
    <message>
        <source>%1: prices, records and rates taken.</source>
        <translation>%1: दाम, रिकॉर्ड और काम की दरें ली गईं।</translation>
    </message>
    <message>
        <source>%1 was not written.</source>
        <translation>%1 नहीं लिखी गई।</translation>
    </message>
    <message>
        <source>Dates for a calendar (*.ics)</source>
        <translation>कैलेंडर के लिए तारीखें (*.ics)</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>नोट</translation>
    </message>
    <message>
        <source>The short form was not taken.</source>
        <translation>छोटा रूप नहीं लिया गया।</translation>
    </message>
    <message>
        <source>The design is there. What a short form does not hold is as in a new project.</source>
        <translation>डिज़ाइन आ गया है। जो बातें छोटे रूप में नहीं होतीं, वे नए प्रोजेक्ट जैसी हैं।</translation>
    </message>
    <message>
        <source>Open from short form</source>
        <translation>छोटे रूप से खोलें</translation>
    </message>
    <message>
        <source>Type, paste or scan the line from the cover sheet:</source>
        <translation>पहली शीट की वह लाइन लिखें, चिपकाएँ या स्कैन करें:</translation>
    </message>
    <message>
        <source>The short form can be pasted into a message.</source>
        <translation>छोटा रूप किसी संदेश में चिपकाया जा सकता है।</translation>
    </message>
</context>
<context>
    <name>ui::MessageBar</name>
    <message>
        <source>Close this message</source>
        <translation>यह संदेश बंद करें</translation>
    </message>
</context>
<context>
    <name>ui::MoneyPanel</name>
    <message>
        <source>What does it cost, and who gives what?</source>
        <translation>कितना खर्च होगा, और कौन क्या देगा?</translation>
    </message>
    <message>
        <source>Plan the money</source>
        <translation>पैसे की योजना बनाएँ</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>खर्च का हिसाब</translation>
    </message>
    <message>
        <source>Prices. A quantity that is left empty comes from the plan.</source>
        <translation>दाम। जो मात्रा खाली छोड़ी जाए, वह योजना से आती है।</translation>
    </message>
    <message>
        <source>Read a district file…</source>
        <translation>ज़िले की फ़ाइल पढ़ें…</translation>
    </message>
    <message>
        <source>Write a district file…</source>
        <translation>ज़िले की फ़ाइल लिखें…</translation>
    </message>
    <message>
        <source>Money by day</source>
        <translation>दिन-दिन का पैसा</translation>
    </message>
    <message>
        <source>Money needed on each day</source>
        <translation>हर दिन चाहिए पैसा</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>लाइनिंग</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>लाइनिंग, सालाना खर्च से</translation>
    </message>
    <message>
        <source>How sure is it?</source>
        <translation>यह कितना पक्का है?</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>हिसाब लग रहा है…</translation>
    </message>
    <message>
        <source>What the chart is about</source>
        <translation>चार्ट किस बारे में है</translation>
    </message>
    <message>
        <source>Spread of one outcome and what drives it</source>
        <translation>एक नतीजे का फैलाव और वह किससे आता है</translation>
    </message>
    <message>
        <source>How far each may lie from the value in force</source>
        <translation>हर एक लागू मान से कितना दूर हो सकता है</translation>
    </message>
    <message>
        <source>Price of the lining alone, digging left out. For soil-cement an empty price is reckoned from the bill and the works.</source>
        <translation>केवल लाइनिंग का दाम, खुदाई के बिना। मिट्टी-सीमेंट का दाम खाली हो तो खर्च के हिसाब और निर्माण से निकाला जाता है।</translation>
    </message>
</context>
<context>
    <name>ui::NotesPanel</name>
    <message>
        <source>In short</source>
        <translation>थोड़े में</translation>
    </message>
    <message>
        <source>Put these in place of what was entered</source>
        <translation>जो भरा था उसकी जगह ये रखें</translation>
    </message>
    <message>
        <source>Put the notes in place</source>
        <translation>नोट भर दें</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>Ask in the tab Water whether the water lasts.</source>
        <translation>“पानी” टैब में पूछें कि पानी पूरा पड़ता है या नहीं।</translation>
    </message>
    <message>
        <source>No flow measured yet.</source>
        <translation>अभी कोई बहाव नहीं नापा।</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>बाल्टी और घड़ी: बर्तन भरने का समय नापें, तीन से ज़्यादा बार</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>जार</translation>
    </message>
    <message>
        <source>Layers of soil settled in a jar, read with a ruler</source>
        <translation>जार में बैठी मिट्टी की परतें, स्केल से नापी</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>गोली और पट्टी</translation>
    </message>
    <message>
        <source>Moist soil squeezed to a ball and pushed to a ribbon</source>
        <translation>नम मिट्टी, दबाकर गोली और सरकाकर पट्टी बनाई</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>जाँच के गड्ढे</translation>
    </message>
    <message>
        <source>Layers of the test pits, from the ground down</source>
        <translation>जाँच के गड्ढों की परतें, ज़मीन से नीचे</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>ढलान</translation>
    </message>
    <message>
        <source>Settings of the hose level, one after the other down the fall</source>
        <translation>लेवल नली के पड़ाव, एक के बाद एक, ढलान की ओर नीचे</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>लीक</translation>
    </message>
    <message>
        <source>Plan pipes and overflow in the tab Pipes first.</source>
        <translation>पहले “पाइप” टैब में पाइप और ओवरफ्लो की योजना बनाएँ।</translation>
    </message>
</context>
<context>
    <name>ui::NumberRow</name>
    <message>
        <source>by soil</source>
        <translation>मिट्टी से</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>पता नहीं</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ui::OptionsPanel</name>
    <message>
        <source>Side by side</source>
        <translation>साथ-साथ</translation>
    </message>
    <message>
        <source>The options side by side at one scale</source>
        <translation>विकल्प साथ-साथ, एक ही पैमाने पर</translation>
    </message>
    <message>
        <source>Find a size</source>
        <translation>नाप खोजें</translation>
    </message>
    <message>
        <source>Try all sizes</source>
        <translation>सब नाप आज़माएँ</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>रोकें</translation>
    </message>
    <message>
        <source>Share of the sizes tried</source>
        <translation>आज़माए गए नापों का हिस्सा</translation>
    </message>
    <message>
        <source>Money against years without a dry day</source>
        <translation>पैसा और बिना कमी के दिन वाले साल</translation>
    </message>
    <message>
        <source>%1. Click, or press Enter, to take this size.</source>
        <translation>%1। यह नाप लेने के लिए क्लिक करें या Enter दबाएँ।</translation>
    </message>
    <message>
        <source>Take the cheapest that meets the target</source>
        <translation>लक्ष्य पूरा करने वाली सबसे सस्ती लें</translation>
    </message>
    <message>
        <source>Take the largest within the limits</source>
        <translation>सीमाओं के अंदर सबसे बड़ी लें</translation>
    </message>
    <message>
        <source>Sizes within the limits of footprint and depth: %1.</source>
        <translation>घेरी जगह और गहराई की सीमाओं के अंदर नाप: %1।</translation>
    </message>
    <message>
        <source>The limits stand at the left under “Limits of the search”: with ten bags as the limit, this answers what ten bags can build.</source>
        <translation>सीमाएँ बाईं ओर “खोज की सीमाएँ” के नीचे हैं: सीमा दस कट्टे रखें, तो यहाँ जवाब मिलता है कि दस कट्टों में क्या बन सकता है।</translation>
    </message>
    <message>
        <source>The project has changed since: try again.</source>
        <translation>तब से प्रोजेक्ट बदल गया है: फिर आज़माएँ।</translation>
    </message>
    <message>
        <source>Take a size</source>
        <translation>नाप लें</translation>
    </message>
    <message>
        <source>The limit on people is not used: people and dates are not part of this project.</source>
        <translation>लोगों की सीमा नहीं लगी: लोग और तारीखें इस प्रोजेक्ट में नहीं हैं।</translation>
    </message>
    <message>
        <source>The limit on money is not used: prices are missing.</source>
        <translation>पैसे की सीमा नहीं लगी: दाम नहीं भरे हैं।</translation>
    </message>
</context>
<context>
    <name>ui::OptionsTable</name>
    <message>
        <source>Options side by side</source>
        <translation>विकल्प साथ-साथ</translation>
    </message>
    <message>
        <source>Add an option</source>
        <translation>विकल्प जोड़ें</translation>
    </message>
    <message>
        <source>Take out the option</source>
        <translation>विकल्प हटाएँ</translation>
    </message>
    <message>
        <source>Build this one</source>
        <translation>यही बनाएँ</translation>
    </message>
    <message>
        <source>Field in which the options differ</source>
        <translation>आँकड़ा, जिसमें विकल्प अलग हैं</translation>
    </message>
    <message>
        <source>Differ also in…</source>
        <translation>इसमें भी अलग…</translation>
    </message>
    <message>
        <source>Build another option</source>
        <translation>दूसरा विकल्प बनाएँ</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>पहले जैसा</translation>
    </message>
    <message>
        <source>Field in which options differ</source>
        <translation>आँकड़ा, जिसमें विकल्प अलग हैं</translation>
    </message>
    <message>
        <source>A, as it stands</source>
        <translation>A, जैसा अभी है</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>नाम</translation>
    </message>
    <message>
        <source>As A. Type a value to change it.</source>
        <translation>A जैसा। बदलने के लिए मान लिखें।</translation>
    </message>
    <message>
        <source>Name of an option</source>
        <translation>विकल्प का नाम</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>हिसाब लग रहा है…</translation>
    </message>
</context>
<context>
    <name>ui::PitPanel</name>
    <message>
        <source>&amp;Dimensions</source>
        <translation>नाप दिखाएँ (&amp;D)</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>गड्ढा तीन आयामों में</translation>
    </message>
    <message>
        <source>Oblique</source>
        <translation>तिरछा</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>ऊपर से नक्शा</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>काट</translation>
    </message>
    <message>
        <source>View: %1</source>
        <translation>दृश्य: %1</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>परतें</translation>
    </message>
    <message>
        <source>Show and hide the ground, each layer, the water and the person</source>
        <translation>ज़मीन, हर परत, पानी और आदमी को दिखाएँ या छिपाएँ</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>पानी (&amp;W)</translation>
    </message>
    <message>
        <source>Water level above the finished floor</source>
        <translation>तैयार फ़र्श से ऊपर पानी का स्तर</translation>
    </message>
    <message>
        <source>To the overflow</source>
        <translation>ओवरफ्लो तक</translation>
    </message>
    <message>
        <source>%1 deep: %2</source>
        <translation>गहराई %1: %2</translation>
    </message>
    <message>
        <source>What the water level follows</source>
        <translation>पानी का स्तर किसके अनुसार</translation>
    </message>
    <message>
        <source>level set by hand</source>
        <translation>स्तर हाथ से</translation>
    </message>
    <message>
        <source>day of a middle year</source>
        <translation>बीच के साल का दिन</translation>
    </message>
    <message>
        <source>day of a dry year</source>
        <translation>सूखे साल का दिन</translation>
    </message>
    <message>
        <source>In a dry year the tank holds less than in nine of ten years on each day; the tab Water has the weather</source>
        <translation>सूखे साल में टंकी में हर दिन दस में से नौ सालों से कम पानी रहता है; मौसम “पानी” टैब में है</translation>
    </message>
    <message>
        <source>%1: %2 deep, %3</source>
        <translation>%1: गहराई %2, %3</translation>
    </message>
</context>
<context>
    <name>ui::PointTable</name>
    <message>
        <source>Clear outline</source>
        <translation>भीतरी रूपरेखा</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>बिंदु जोड़ें</translation>
    </message>
    <message>
        <source>Remove the point</source>
        <translation>बिंदु हटाएँ</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>चिपकाएँ</translation>
    </message>
</context>
<context>
    <name>ui::RowTable</name>
    <message>
        <source>Add a row</source>
        <translation>पंक्ति जोड़ें</translation>
    </message>
    <message>
        <source>Take out the row</source>
        <translation>पंक्ति हटाएँ</translation>
    </message>
    <message>
        <source>Paste cells</source>
        <translation>खाने चिपकाएँ</translation>
    </message>
    <message>
        <source>Take out a row</source>
        <translation>एक पंक्ति हटाएँ</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>कुछ नहीं चिपकाया गया।</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>हाँ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>नहीं</translation>
    </message>
</context>
<context>
    <name>ui::SheetsPanel</name>
    <message>
        <source>Page before</source>
        <translation>पिछला पन्ना</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>अगला पन्ना</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>पन्ना</translation>
    </message>
    <message>
        <source>Size of the page on the screen</source>
        <translation>स्क्रीन पर पन्ने का नाप</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>पूरा पन्ना</translation>
    </message>
    <message>
        <source>Export PDF…</source>
        <translation>PDF निर्यात करें…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>छापें…</translation>
    </message>
    <message>
        <source>Sheets to print</source>
        <translation>छापने की शीटें</translation>
    </message>
    <message>
        <source>Tick what is to be printed</source>
        <translation>जो छापना है उस पर निशान लगाएँ</translation>
    </message>
    <message>
        <source>Language of the sheets</source>
        <translation>शीटों की भाषा</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>कागज</translation>
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
        <translation>सब</translation>
    </message>
    <message>
        <source>Farmers</source>
        <translation>किसान</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>मिस्त्री</translation>
    </message>
</context>
<context>
    <name>ui::StageBar</name>
    <message>
        <source>To the stage before</source>
        <translation>पिछले चरण पर</translation>
    </message>
    <message>
        <source>To the next stage</source>
        <translation>अगले चरण पर</translation>
    </message>
    <message>
        <source>Day of the works</source>
        <translation>निर्माण का दिन</translation>
    </message>
    <message>
        <source>Shows the pit as it stands on that day; at the far end the tank is finished</source>
        <translation>उस दिन गड्ढा कैसा होगा, यह दिखाता है; आखिरी सिरे पर टंकी तैयार है</translation>
    </message>
    <message>
        <source>&amp;Building</source>
        <translation>टंकी बनना (&amp;B)</translation>
    </message>
    <message>
        <source>finished tank</source>
        <translation>तैयार टंकी</translation>
    </message>
</context>
<context>
    <name>ui::SurveyTable</name>
    <message>
        <source>East</source>
        <translation>पूरब</translation>
    </message>
    <message>
        <source>North</source>
        <translation>उत्तर</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>ऊँचाई</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>और %1 और</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>ऊँचाई के बिंदु</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>बिंदु जोड़ें</translation>
    </message>
    <message>
        <source>Remove points</source>
        <translation>बिंदु हटाएँ</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>चिपकाएँ</translation>
    </message>
    <message>
        <source>Read a table…</source>
        <translation>तालिका पढ़ें…</translation>
    </message>
    <message>
        <source>Reading the table</source>
        <translation>तालिका पढ़ी जा रही है</translation>
    </message>
    <message>
        <source>Nothing has changed.</source>
        <translation>कुछ नहीं बदला।</translation>
    </message>
    <message>
        <source>Taken off every point: %1 east, %2 north.</source>
        <translation>हर बिंदु से घटाया गया: %1 पूरब, %2 उत्तर।</translation>
    </message>
    <message>
        <source>Paste spot heights</source>
        <translation>ऊँचाई के बिंदु चिपकाएँ</translation>
    </message>
    <message>
        <source>Doubtful spot heights</source>
        <translation>शक वाले ऊँचाई के बिंदु</translation>
    </message>
    <message>
        <source>Puts the copied rows in place of all points: east, north, height, in metres</source>
        <translation>कॉपी की गई पंक्तियाँ सब बिंदुओं की जगह रखता है: पूरब, उत्तर, ऊँचाई, मीटर में</translation>
    </message>
    <message>
        <source>The tank stood outside the survey and was moved to its middle: %1 east, %2 north.</source>
        <translation>टंकी सर्वे से बाहर थी, उसे सर्वे के बीच में लाया गया: %1 पूरब, %2 उत्तर।</translation>
    </message>
    <message>
        <source>The numbers were taken as metres.</source>
        <translation>अंकों को मीटर माना गया।</translation>
    </message>
</context>
<context>
    <name>ui::TaskControls</name>
    <message>
        <source>As usual</source>
        <translation>जैसा आम तौर पर</translation>
    </message>
    <message>
        <source>The task starts on this day or later</source>
        <translation>काम इस दिन या इसके बाद शुरू होता है</translation>
    </message>
    <message>
        <source>People on the task</source>
        <translation>काम पर लोग</translation>
    </message>
    <message>
        <source>Forget what was wished for this task</source>
        <translation>इस काम की इच्छा हटाएँ</translation>
    </message>
    <message>
        <source>not before</source>
        <translation>इससे पहले नहीं</translation>
    </message>
    <message>
        <source>people</source>
        <translation>लोग</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>इससे पहले नहीं</translation>
    </message>
    <message>
        <source>People on a task</source>
        <translation>एक काम पर लोग</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 खिसकाएँ</translation>
    </message>
    <message>
        <source>Task as usual</source>
        <translation>काम, जैसा आम तौर पर</translation>
    </message>
    <message>
        <source>Choose a bar to move it or to give it more people.</source>
        <translation>किसी पट्टी को खिसकाने या उस पर ज़्यादा लोग लगाने के लिए उसे चुनें।</translation>
    </message>
</context>
<context>
    <name>ui::TextRow</name>
    <message>
        <source>year-month-day</source>
        <translation>साल-महीना-दिन</translation>
    </message>
</context>
<context>
    <name>ui::Waiting</name>
    <message>
        <source>Give up</source>
        <translation>छोड़ दें</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>रुक रहा है…</translation>
    </message>
</context>
<context>
    <name>ui::WaterChartsView</name>
    <message>
        <source>Level through the year</source>
        <translation>साल भर का स्तर</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>आमद और ज़रूरत</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>टंकी का नाप और क्यारियाँ</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>कितनी बड़ी टंकी</translation>
    </message>
    <message>
        <source>Water in the tank through the year</source>
        <translation>साल भर टंकी में पानी</translation>
    </message>
    <message>
        <source>Supply and need by month</source>
        <translation>महीने-महीने की आमद और ज़रूरत</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank and area of the beds</source>
        <translation>दस में से कितने साल साल भर पानी, टंकी के नाप और क्यारियों के क्षेत्रफल से</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank</source>
        <translation>दस में से कितने साल साल भर पानी, टंकी के नाप से</translation>
    </message>
</context>
<context>
    <name>ui::WaterPanel</name>
    <message>
        <source>Crop %1</source>
        <translation>फसल %1</translation>
    </message>
    <message>
        <source>Ask whether the water lasts</source>
        <translation>पूछें कि पानी पूरा पड़ेगा या नहीं</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>चार्ट</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>स्रोत</translation>
    </message>
    <message>
        <source>Beds and animals</source>
        <translation>क्यारियाँ और पशु</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>What the tap or spring gives, month by month</source>
        <translation>नल या चश्मा हर महीने कितना देता है</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>बाल्टी और घड़ी: बर्तन भरने का समय नापें, तीन से ज़्यादा बार</translation>
    </message>
    <message>
        <source>Use the medians as flows</source>
        <translation>बीच के मान को बहाव मानें</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>क्यारियाँ</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>पशु</translation>
    </message>
    <message>
        <source>Crops of your own, beside the table of crops</source>
        <translation>आपकी अपनी फसलें, फसलों की तालिका के साथ</translation>
    </message>
    <message>
        <source>Means of many years, month by month</source>
        <translation>कई सालों के औसत, महीने-महीने</translation>
    </message>
    <message>
        <source>Read a daily record…</source>
        <translation>रोज़ का रिकॉर्ड पढ़ें…</translation>
    </message>
    <message>
        <source>Take the record out</source>
        <translation>रिकॉर्ड हटाएँ</translation>
    </message>
    <message>
        <source>Enter the latitude and the weather, and the answer stands here.</source>
        <translation>अक्षांश और मौसम भरें, तो जवाब यहाँ आएगा।</translation>
    </message>
    <message>
        <source>Will the water last the dry season?</source>
        <translation>क्या सूखे मौसम में पानी पूरा पड़ेगा?</translation>
    </message>
    <message>
        <source>Enter the weather, and the answer stands here.</source>
        <translation>मौसम भरें, तो जवाब यहाँ आएगा।</translation>
    </message>
    <message>
        <source>Enter the latitude, and the answer stands here.</source>
        <translation>अक्षांश भरें, तो जवाब यहाँ आएगा।</translation>
    </message>
</context>
<context>
    <name>ui::WorksPanel</name>
    <message>
        <source>Who does what, when, and can each coat be finished in a day?</source>
        <translation>कौन क्या करता है, कब, और क्या हर कोट एक दिन में पूरा हो सकता है?</translation>
    </message>
    <message>
        <source>Plan labour and dates</source>
        <translation>मेहनत और तारीखों की योजना बनाएँ</translation>
    </message>
    <message>
        <source>Bars of all tasks over the days</source>
        <translation>दिनों पर सब कामों की पट्टियाँ</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>तारीखें</translation>
    </message>
    <message>
        <source>People</source>
        <translation>लोग</translation>
    </message>
    <message>
        <source>People on each day</source>
        <translation>हर दिन के लोग</translation>
    </message>
    <message>
        <source>Days on which nobody works, besides the rest day of the week</source>
        <translation>बंद दिन, जब कोई काम नहीं करता; हफ़्ते की छुट्टी के अलावा</translation>
    </message>
    <message>
        <source>Wishes for single tasks: dragging a bar makes one</source>
        <translation>अलग-अलग कामों की इच्छाएँ: पट्टी खींचने से एक इच्छा बनती है</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>कोट एक ही बार में</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहली भराई</translation>
    </message>
    <message>
        <source>There is no coat to fill after.</source>
        <translation>कोई कोट नहीं है जिसके बाद भराई हो।</translation>
    </message>
    <message>
        <source>Water level and wet walls, day by day</source>
        <translation>पानी का स्तर और गीली दीवारें, दिन-दिन</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>Enter the weather in the tab Water, and the weeks stand here.</source>
        <translation>“पानी” टैब में मौसम भरें, तो हफ़्ते यहाँ आएँगे।</translation>
    </message>
    <message>
        <source>Chance of undisturbed coats in each week of the year</source>
        <translation>साल के हर हफ़्ते में कोट के मौसम से बचे रहने की संभावना</translation>
    </message>
    <message>
        <source>Start so that the coats fall in the best week</source>
        <translation>ऐसे शुरू करें कि कोट सबसे अच्छे हफ़्ते में पड़ें</translation>
    </message>
    <message>
        <source>Best start</source>
        <translation>सबसे अच्छी शुरुआत</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>मौके पर नापा</translation>
    </message>
    <message>
        <source>Trial batches: mix one, put it on, measure what it covers</source>
        <translation>जाँच घान: एक बनाएँ, लगाएँ, नापें कि कितना ढका</translation>
    </message>
    <message>
        <source>Work done and the person-days it took</source>
        <translation>किया हुआ काम और उसमें लगी दिहाड़ियाँ</translation>
    </message>
    <message>
        <source>The district&apos;s own rates, person-days for each unit of work</source>
        <translation>ज़िले की अपनी काम की दरें, काम की हर इकाई पर दिहाड़ियाँ</translation>
    </message>
    <message>
        <source>Change between the records and what is entered</source>
        <translation>रिकॉर्ड और भरे गए मान के बीच बदलें</translation>
    </message>
    <message>
        <source>Records in force</source>
        <translation>रिकॉर्ड लागू</translation>
    </message>
</context>
<context>
    <name>ui::group::GroupView</name>
    <message>
        <source>Blank</source>
        <translation>खाली स्क्रीन</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>गड्ढा तीन आयामों में</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>टंकी में पानी</translation>
    </message>
    <message>
        <source>Water all year</source>
        <translation>साल भर पानी</translation>
    </message>
    <message>
        <source>Usable</source>
        <translation>काम आने वाला</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सीमेंट</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>खर्च</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>मेहनत</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>चलाएँ</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>1 Size</source>
        <translation>1 नाप</translation>
    </message>
    <message>
        <source>2 Options</source>
        <translation>2 विकल्प</translation>
    </message>
    <message>
        <source>3 Building</source>
        <translation>3 टंकी बनना</translation>
    </message>
    <message>
        <source>4 Water</source>
        <translation>4 पानी</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>बाहर आएँ</translation>
    </message>
    <message>
        <source>Group view – Tankwright</source>
        <translation>समूह को दिखाएँ – Tankwright</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <comment>years</comment>
        <translation>10 में से %1</translation>
    </message>
    <message>
        <source>%1, in a dry year: %2 in the tank</source>
        <translation>%1, सूखे साल में: टंकी में %2</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>रोकें</translation>
    </message>
</context>
<context>
    <name>ui::group::OptionsStrip</name>
    <message>
        <source>There are no options yet: the tab Options adds them.</source>
        <translation>अभी कोई विकल्प नहीं है: “विकल्प” टैब में जोड़ें।</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>टंकी में पानी</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सीमेंट</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>खर्च</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>मेहनत</translation>
    </message>
</context>
<context>
    <name>ui::words</name>
    <message>
        <source>level</source>
        <translation>समतल</translation>
    </message>
    <message>
        <source>even slope</source>
        <translation>एक-सी ढलान</translation>
    </message>
    <message>
        <source>surveyed spot heights</source>
        <translation>सर्वे किए ऊँचाई के बिंदु</translation>
    </message>
    <message>
        <source>stiff clay</source>
        <translation>कड़ी चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>firm loam</source>
        <translation>ठोस दोमट</translation>
    </message>
    <message>
        <source>sandy</source>
        <translation>रेतीली</translation>
    </message>
    <message>
        <source>loose fill</source>
        <translation>ढीला भराव</translation>
    </message>
    <message>
        <source>soft and wet</source>
        <translation>नरम और गीली</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>चट्टान</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>आयत</translation>
    </message>
    <message>
        <source>round</source>
        <translation>गोल</translation>
    </message>
    <message>
        <source>polygon</source>
        <translation>बहुभुज</translation>
    </message>
    <message>
        <source>finished floor</source>
        <translation>तैयार फ़र्श</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>मुंडेर</translation>
    </message>
    <message>
        <source>none</source>
        <translation>कोई नहीं</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>सोमवार</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>मंगलवार</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>बुधवार</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>गुरुवार</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>शुक्रवार</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>शनिवार</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>रविवार</translation>
    </message>
    <message>
        <source>Name of the tank as it shall stand on every sheet.</source>
        <translation>टंकी का नाम, जो हर शीट पर लिखा जाएगा।</translation>
    </message>
    <message>
        <source>Village and field where the tank is dug.</source>
        <translation>गाँव और खेत, जहाँ टंकी खोदी जाती है।</translation>
    </message>
    <message>
        <source>Who made this plan and answers questions about it.</source>
        <translation>किसने यह योजना बनाई और कौन इसके सवालों का जवाब देगा।</translation>
    </message>
    <message>
        <source>Short name of the money used, for example Rs.</source>
        <translation>चलने वाले पैसे का छोटा नाम, जैसे Rs.</translation>
    </message>
    <message>
        <source>Degrees north of the equator; south is negative. Leave empty if not known.</source>
        <translation>भूमध्य रेखा से उत्तर में अंश; दक्षिण हो तो ऋण। पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>From a map or a phone, at the tank. Leave empty if not known.</source>
        <translation>नक्शे या फ़ोन से, टंकी की जगह पर। पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>How the natural ground lies where the tank is dug, before any levelling.</source>
        <translation>टंकी की जगह पर मूल ज़मीन कैसी है, समतल करने से पहले।</translation>
    </message>
    <message>
        <source>Drop of the natural ground straight downhill over 100 of level distance.</source>
        <translation>मूल ज़मीन सीधे ढलान की ओर 100 समतल दूरी पर कितनी नीचे जाती है।</translation>
    </message>
    <message>
        <source>Compass direction in which water would run off: north 0, east 90, south 180.</source>
        <translation>पानी किस दिशा में बहेगा: उत्तर 0, पूरब 90, दक्षिण 180।</translation>
    </message>
    <message>
        <source>The weakest soil found in the trial pit down to the pit floor; choose “not known” rather than guess.</source>
        <translation>जाँच के गड्ढे में गड्ढे के तले तक मिली सबसे कमज़ोर मिट्टी; अंदाज़े की जगह “पता नहीं” चुनें।</translation>
    </message>
    <message>
        <source>Clay in the soil used for plaster, from a jar test. Leave empty if not known.</source>
        <translation>प्लास्टर की मिट्टी में चिकनी मिट्टी, जार जाँच से। पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>From the ground down to ground water at its highest in the year. Leave empty if not known.</source>
        <translation>ज़मीन से भूजल तक, जब साल में वह सबसे ऊँचा हो। पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Level distance from the pit edge to the nearest terrace edge or bank downhill.</source>
        <translation>गड्ढे के किनारे से ढलान की ओर सबसे पास के सीढ़ीदार खेत के किनारे या पुश्ते तक समतल दूरी।</translation>
    </message>
    <message>
        <source>Drop of that terrace edge or bank.</source>
        <translation>सीढ़ीदार खेत का वह किनारा या पुश्ता कितना नीचे गिरता है।</translation>
    </message>
    <message>
        <source>Whether the pit floor, or part of it, lies on rock.</source>
        <translation>क्या गड्ढे का तला, या उसका कुछ हिस्सा, चट्टान पर है।</translation>
    </message>
    <message>
        <source>Level distance to the nearest house, path or shed that escaping water would reach.</source>
        <translation>उस सबसे पास के घर, रास्ते या छप्पर तक समतल दूरी जहाँ निकला हुआ पानी पहुँचेगा।</translation>
    </message>
    <message>
        <source>Whether children who cannot yet swim or climb out live or play within 20 m.</source>
        <translation>क्या ऐसे बच्चे, जो अभी तैर या चढ़कर निकल नहीं सकते, 20 m के अंदर रहते या खेलते हैं।</translation>
    </message>
    <message>
        <source>Clear length of the smallest tank that builders here recommend.</source>
        <translation>यहाँ के बनाने वाले जो सबसे छोटी टंकी सुझाते हैं, उसकी भीतरी लंबाई।</translation>
    </message>
    <message>
        <source>Clear width of the smallest tank that builders here recommend.</source>
        <translation>यहाँ के बनाने वाले जो सबसे छोटी टंकी सुझाते हैं, उसकी भीतरी चौड़ाई।</translation>
    </message>
    <message>
        <source>Clear depth of the smallest tank that builders here recommend.</source>
        <translation>यहाँ के बनाने वाले जो सबसे छोटी टंकी सुझाते हैं, उसकी भीतरी गहराई।</translation>
    </message>
    <message>
        <source>Shape of the finished floor seen from above.</source>
        <translation>ऊपर से देखने पर तैयार फ़र्श का आकार।</translation>
    </message>
    <message>
        <source>Whether the clear sizes below are those of the finished floor or of the opening at the rim.</source>
        <translation>नीचे के भीतरी नाप तैयार फ़र्श के हैं या मुंडेर पर मुँह के।</translation>
    </message>
    <message>
        <source>Finished inside length that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>अंदर की तैयार लंबाई, जिसे पानी छूता है, प्लास्टर से प्लास्टर तक; गड्ढा इससे बड़ा खोदा जाता है।</translation>
    </message>
    <message>
        <source>Finished inside width that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>अंदर की तैयार चौड़ाई, जिसे पानी छूता है, प्लास्टर से प्लास्टर तक; गड्ढा इससे बड़ा खोदा जाता है।</translation>
    </message>
    <message>
        <source>Finished inside diameter that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>अंदर का तैयार व्यास, जिसे पानी छूता है, प्लास्टर से प्लास्टर तक; गड्ढा इससे बड़ा खोदा जाता है।</translation>
    </message>
    <message>
        <source>Corners of the finished inside in plan, anticlockwise, with no corner bent inward.</source>
        <translation>ऊपर से देखने पर तैयार अंदर के कोने, घड़ी की उलटी दिशा में, कोई कोना अंदर को मुड़ा न हो।</translation>
    </message>
    <message>
        <source>Finished floor straight up to the rim; the pit is deeper by the coats and the stone bed.</source>
        <translation>तैयार फ़र्श से सीधे ऊपर मुंडेर तक; गड्ढा कोटों और पत्थर की सोलिंग जितना और गहरा होता है।</translation>
    </message>
    <message>
        <source>How far the wall leans outward for each unit of height: 0 is upright, 0.10 is 1 in 10.</source>
        <translation>हर इकाई ऊँचाई पर दीवार कितनी बाहर झुकती है: 0 सीधी खड़ी, 0.10 यानी 10 में 1।</translation>
    </message>
    <message>
        <source>Rounding of the corners of the clear floor in plan; 0 leaves them sharp.</source>
        <translation>ऊपर से देखने पर भीतरी फ़र्श के कोनों की गोलाई; 0 हो तो कोने तीखे रहते हैं।</translation>
    </message>
    <message>
        <source>Height from the overflow level, where water runs out, up to the rim.</source>
        <translation>ओवरफ्लो के स्तर से, जहाँ पानी बाहर जाता है, मुंडेर तक ऊँचाई।</translation>
    </message>
    <message>
        <source>Water left above the finished floor that the outlet cannot draw.</source>
        <translation>तैयार फ़र्श के ऊपर बचा पानी, जो निकास से नहीं निकल सकता।</translation>
    </message>
    <message>
        <source>Thickness of the compacted stone under the floor; there is none behind the walls.</source>
        <translation>फ़र्श के नीचे कुटे पत्थर की मोटाई; दीवारों के पीछे पत्थर नहीं होता।</translation>
    </message>
    <message>
        <source>Volume of loose soil, sand and cement that makes one volume of plaster on the wall.</source>
        <translation>दीवार पर एक आयतन प्लास्टर बनाने के लिए ढीली मिट्टी, रेत और सीमेंट का आयतन।</translation>
    </message>
    <message>
        <source>Extra plaster for what falls, sticks to tools or sets before it is placed.</source>
        <translation>फालतू प्लास्टर, उसके लिए जो गिरता है, औज़ारों पर चिपकता है या लगने से पहले जम जाता है।</translation>
    </message>
    <message>
        <source>Extra for hollows in the dug faces, on the stone bed and on coat 1 alone.</source>
        <translation>खुदी सतहों के गड्ढों के लिए फालतू; केवल पत्थर की सोलिंग और कोट 1 पर।</translation>
    </message>
    <message>
        <source>Weight printed on the cement bag sold nearby.</source>
        <translation>पास में बिकने वाले सीमेंट के कट्टे पर छपा वज़न।</translation>
    </message>
    <message>
        <source>Weight of cement poured loose into a gauge box.</source>
        <translation>नाप की पेटी में बिना दबाए डाले सीमेंट का वज़न।</translation>
    </message>
    <message>
        <source>Finished thickness of the coat, measured square to the face.</source>
        <translation>कोट की तैयार मोटाई, सतह से गुनिया में नापी हुई।</translation>
    </message>
    <message>
        <source>Parts of sieved soil in the mix, by loose volume.</source>
        <translation>मिश्रण में छनी मिट्टी के भाग, ढीले नाप से।</translation>
    </message>
    <message>
        <source>Parts of sand in the mix, by loose volume.</source>
        <translation>मिश्रण में रेत के भाग, ढीले नाप से।</translation>
    </message>
    <message>
        <source>Parts of cement in the mix, by loose volume.</source>
        <translation>मिश्रण में सीमेंट के भाग, ढीले नाप से।</translation>
    </message>
    <message>
        <source>Days for which the coat is kept under wet sacks, rest days too.</source>
        <translation>कोट कितने दिन गीली बोरियों से ढका रखा जाता है, छुट्टी के दिन भी।</translation>
    </message>
    <message>
        <source>Rounded fillet between clear floor and wall; 0 leaves a sharp corner.</source>
        <translation>भीतरी फ़र्श और दीवार के बीच का गोला; 0 हो तो कोना तीखा रहता है।</translation>
    </message>
    <message>
        <source>Width of the plaster collar let into the ground around the top, outward of the coats; 0 for none.</source>
        <translation>टंकी के मुँह के चारों ओर ज़मीन में धँसी प्लास्टर की पट्टी की चौड़ाई, कोटों से बाहर; 0 हो तो पट्टी नहीं।</translation>
    </message>
    <message>
        <source>Thickness of that collar; 0 for none.</source>
        <translation>उस पट्टी की मोटाई; 0 हो तो पट्टी नहीं।</translation>
    </message>
    <message>
        <source>Share of soil and sand that stays on the sieve and cannot be used.</source>
        <translation>मिट्टी और रेत का वह हिस्सा जो छलनी पर रह जाता है और काम नहीं आता।</translation>
    </message>
    <message>
        <source>How much more room damp sand takes than dry sand.</source>
        <translation>नम रेत सूखी रेत से कितनी ज़्यादा जगह लेती है।</translation>
    </message>
    <message>
        <source>Volume of loose stone to buy for one volume of compacted bed.</source>
        <translation>एक आयतन कुटी सोलिंग के लिए कितना ढीला पत्थर खरीदना है।</translation>
    </message>
    <message>
        <source>Water to mix one volume of mortar.</source>
        <translation>एक आयतन मसाला मिलाने का पानी।</translation>
    </message>
    <message>
        <source>Water to keep one unit of plastered face wet for a day.</source>
        <translation>प्लास्टर की हर इकाई सतह को एक दिन गीला रखने का पानी।</translation>
    </message>
    <message>
        <source>Face that one sack covers once laps are taken off.</source>
        <translation>एक बोरी कितनी सतह ढकती है, ऊपर-नीचे चढ़ा हिस्सा घटाकर।</translation>
    </message>
    <message>
        <source>Sacks beyond those that just cover the face.</source>
        <translation>जितनी बोरियाँ सतह ढकने को चाहिए, उनसे फालतू बोरियाँ।</translation>
    </message>
    <message>
        <source>Measure it: fill the box with water from a bottle of known size.</source>
        <translation>नाप लें: जाने-पहचाने नाप की बोतल से पेटी में पानी भरें।</translation>
    </message>
    <message>
        <source>Measure it: fill the pan level with water from a bottle of known size.</source>
        <translation>नाप लें: जाने-पहचाने नाप की बोतल से तसले को बराबर तक पानी से भरें।</translation>
    </message>
    <message>
        <source>Measure it: fill the bucket with water from a bottle of known size.</source>
        <translation>नाप लें: जाने-पहचाने नाप की बोतल से बाल्टी में पानी भरें।</translation>
    </message>
    <message>
        <source>Soil for such a tank as people reckon it today; shown beside the computed soil, never mixed with it.</source>
        <translation>ऐसी टंकी के लिए मिट्टी, जैसा लोग आज हिसाब लगाते हैं; हिसाब की मिट्टी के साथ दिखती है, उसमें मिलाई कभी नहीं जाती।</translation>
    </message>
    <message>
        <source>Sand for such a tank as people reckon it today; shown beside the computed sand, never mixed with it.</source>
        <translation>ऐसी टंकी के लिए रेत, जैसा लोग आज हिसाब लगाते हैं; हिसाब की रेत के साथ दिखती है, उसमें मिलाई कभी नहीं जाती।</translation>
    </message>
    <message>
        <source>Stone for such a tank as people reckon it today; shown beside the computed stone, never mixed with it.</source>
        <translation>ऐसी टंकी के लिए पत्थर, जैसा लोग आज हिसाब लगाते हैं; हिसाब के पत्थर के साथ दिखता है, उसमें मिलाया कभी नहीं जाता।</translation>
    </message>
    <message>
        <source>Cement for such a tank as people reckon it today; shown beside the computed cement, never mixed with it.</source>
        <translation>ऐसी टंकी के लिए सीमेंट, जैसा लोग आज हिसाब लगाते हैं; हिसाब के सीमेंट के साथ दिखता है, उसमें मिलाया कभी नहीं जाता।</translation>
    </message>
    <message>
        <source>Masons, mixers and carriers together on a coat; a coat is placed in one go, within the day.</source>
        <translation>एक कोट पर मिस्त्री, मसाला बनाने वाले और ढोने वाले, कुल; कोट एक ही बार में, उसी दिन लगाया जाता है।</translation>
    </message>
    <message>
        <source>Nobody digs or plasters on this day; wetting goes on.</source>
        <translation>इस दिन कोई खुदाई या प्लास्टर नहीं करता; भिगाई चलती रहती है।</translation>
    </message>
    <message>
        <source>Latest start of the first filling, counted in days after the last coat.</source>
        <translation>पहली भराई शुरू करने का आखिरी दिन, आखिरी कोट के बाद के दिनों में।</translation>
    </message>
    <message>
        <source>One person&apos;s days to dig and throw out ground as it lies; leave empty to take it from the soil.</source>
        <translation>बिना खुदी ज़मीन को खोदकर बाहर फेंकने में एक आदमी के दिन; मिट्टी के अनुसार लेने के लिए खाली छोड़ें।</translation>
    </message>
    <message>
        <source>One person&apos;s days to lay and compact the stone bed.</source>
        <translation>पत्थर की सोलिंग बिछाने और कूटने में एक आदमी के दिन।</translation>
    </message>
    <message>
        <source>One person&apos;s days to plaster one coat, helpers counted.</source>
        <translation>एक कोट प्लास्टर करने में एक आदमी के दिन, हेल्पर गिनकर।</translation>
    </message>
    <message>
        <source>One person&apos;s days to mix mortar by hand.</source>
        <translation>हाथ से मसाला मिलाने में एक आदमी के दिन।</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>नाम</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>जगह</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>किसने बनाया</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>मुद्रा</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>अक्षांश</translation>
    </message>
    <message>
        <source>Height above sea level</source>
        <translation>समुद्र तल से ऊँचाई</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>ज़मीन</translation>
    </message>
    <message>
        <source>Fall of the ground</source>
        <translation>ज़मीन की ढाल</translation>
    </message>
    <message>
        <source>Downhill direction</source>
        <translation>ढलान की दिशा</translation>
    </message>
    <message>
        <source>Soil of the pit</source>
        <translation>गड्ढे की मिट्टी</translation>
    </message>
    <message>
        <source>Clay in the soil</source>
        <translation>मिट्टी में चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>Depth to ground water</source>
        <translation>भूजल की गहराई</translation>
    </message>
    <message>
        <source>Distance to the terrace edge</source>
        <translation>सीढ़ीदार खेत के किनारे तक दूरी</translation>
    </message>
    <message>
        <source>Height of the terrace edge</source>
        <translation>सीढ़ीदार खेत के किनारे की ऊँचाई</translation>
    </message>
    <message>
        <source>Rock in the pit floor</source>
        <translation>गड्ढे के तले में चट्टान</translation>
    </message>
    <message>
        <source>Distance to the nearest house downhill</source>
        <translation>ढलान की ओर सबसे पास के घर तक दूरी</translation>
    </message>
    <message>
        <source>Small children live within 20 m</source>
        <translation>20 m के अंदर छोटे बच्चे रहते हैं</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>आकार</translation>
    </message>
    <message>
        <source>Clear size measured at</source>
        <translation>भीतरी नाप कहाँ का</translation>
    </message>
    <message>
        <source>Clear length</source>
        <translation>भीतरी लंबाई</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation>भीतरी चौड़ाई</translation>
    </message>
    <message>
        <source>Clear diameter</source>
        <translation>भीतरी व्यास</translation>
    </message>
    <message>
        <source>Clear outline</source>
        <translation>भीतरी रूपरेखा</translation>
    </message>
    <message>
        <source>Clear depth, floor to rim</source>
        <translation>भीतरी गहराई, फ़र्श से मुंडेर तक</translation>
    </message>
    <message>
        <source>Batter of the walls</source>
        <translation>दीवारों की सलामी</translation>
    </message>
    <message>
        <source>Corner radius, clear floor</source>
        <translation>कोने की त्रिज्या, भीतरी फ़र्श</translation>
    </message>
    <message>
        <source>Freeboard</source>
        <translation>फ्रीबोर्ड</translation>
    </message>
    <message>
        <source>Dead depth</source>
        <translation>डेड गहराई</translation>
    </message>
    <message>
        <source>Stone bed, compacted</source>
        <translation>पत्थर की सोलिंग, कुटी हुई</translation>
    </message>
    <message>
        <source>Loose ingredients per placed plaster</source>
        <translation>लगे प्लास्टर पर ढीला सामान</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>छीजन</translation>
    </message>
    <message>
        <source>Unevenness of dug faces</source>
        <translation>खुदी सतह ऊबड़-खाबड़</translation>
    </message>
    <message>
        <source>Cement in a bag</source>
        <translation>कट्टे में सीमेंट</translation>
    </message>
    <message>
        <source>Loose weight of cement</source>
        <translation>सीमेंट का ढीला भार</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>मोटाई</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>मिट्टी</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>रेत</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सीमेंट</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>गीली बोरियों के नीचे दिन</translation>
    </message>
    <message>
        <source>Cove radius, floor to wall</source>
        <translation>गोले की त्रिज्या, फ़र्श से दीवार</translation>
    </message>
    <message>
        <source>Rim collar, width</source>
        <translation>मुंडेर की पट्टी, चौड़ाई</translation>
    </message>
    <message>
        <source>Rim collar, thickness</source>
        <translation>मुंडेर की पट्टी, मोटाई</translation>
    </message>
    <message>
        <source>Loss in sieving</source>
        <translation>छनाई का घाटा</translation>
    </message>
    <message>
        <source>Bulking of damp sand</source>
        <translation>नम रेत का फूलना</translation>
    </message>
    <message>
        <source>Loose stone per compacted bed</source>
        <translation>कुटी सोलिंग में लगा ढीला पत्थर</translation>
    </message>
    <message>
        <source>Mixing water</source>
        <translation>मसाले का पानी</translation>
    </message>
    <message>
        <source>Curing water</source>
        <translation>तराई का पानी</translation>
    </message>
    <message>
        <source>Face covered by one sack</source>
        <translation>एक बोरी से ढकी सतह</translation>
    </message>
    <message>
        <source>Spare sacks</source>
        <translation>फालतू बोरियाँ</translation>
    </message>
    <message>
        <source>Gauge box holds</source>
        <translation>नाप की पेटी में आता है</translation>
    </message>
    <message>
        <source>Pan holds</source>
        <translation>तसले में आता है</translation>
    </message>
    <message>
        <source>Bucket holds</source>
        <translation>बाल्टी में आता है</translation>
    </message>
    <message>
        <source>Customary bill: soil</source>
        <translation>चलन की सूची: मिट्टी</translation>
    </message>
    <message>
        <source>Customary bill: sand</source>
        <translation>चलन की सूची: रेत</translation>
    </message>
    <message>
        <source>Customary bill: stone</source>
        <translation>चलन की सूची: पत्थर</translation>
    </message>
    <message>
        <source>Customary bill: cement</source>
        <translation>चलन की सूची: सीमेंट</translation>
    </message>
    <message>
        <source>Smallest recommended clear length</source>
        <translation>सुझाई गई सबसे कम भीतरी लंबाई</translation>
    </message>
    <message>
        <source>Smallest recommended clear width</source>
        <translation>सुझाई गई सबसे कम भीतरी चौड़ाई</translation>
    </message>
    <message>
        <source>Smallest recommended clear depth</source>
        <translation>सुझाई गई सबसे कम भीतरी गहराई</translation>
    </message>
    <message>
        <source>Diggers</source>
        <translation>खोदने वाले</translation>
    </message>
    <message>
        <source>People on a coat</source>
        <translation>एक कोट पर लोग</translation>
    </message>
    <message>
        <source>Weekly rest day</source>
        <translation>हफ़्ते की छुट्टी का दिन</translation>
    </message>
    <message>
        <source>Start filling within</source>
        <translation>इतने समय में भराई शुरू</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>खुदाई</translation>
    </message>
    <message>
        <source>Laying the stone bed</source>
        <translation>सोलिंग बिछाना</translation>
    </message>
    <message>
        <source>Plastering a coat</source>
        <translation>एक कोट प्लास्टर लगाना</translation>
    </message>
    <message>
        <source>Mixing mortar</source>
        <translation>मसाला बनाना</translation>
    </message>
    <message>
        <source>The tank is smaller than the smallest one that builders recommend: %1 long, %2 wide and %3 deep (clear), which is %4 to the rim.</source>
        <translation>बनाने वाले जो सबसे छोटी टंकी सुझाते हैं, यह टंकी उससे भी छोटी है: %1 लंबी, %2 चौड़ी और %3 गहरी (भीतरी नाप), यानी मुंडेर तक %4।</translation>
    </message>
    <message>
        <source>%1 parts of sand to 1 part of soil would reach it.</source>
        <translation>1 भाग मिट्टी में %1 भाग रेत से यह पूरा हो जाएगा।</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together; %3 to %4 is wanted, or the plaster crumbles.</source>
        <translation>%1: मिट्टी और रेत दोनों मिलाकर चिकनी मिट्टी सिर्फ़ %2 है; %3 से %4 चाहिए, नहीं तो प्लास्टर झड़ता है।</translation>
    </message>
    <message>
        <source>%1: clay is %2 of its soil and sand together; %3 to %4 is wanted, or the plaster shrinks and cracks.</source>
        <translation>%1: मिट्टी और रेत दोनों मिलाकर चिकनी मिट्टी %2 है; %3 से %4 चाहिए, नहीं तो प्लास्टर सिकुड़कर फटता है।</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together, and even the soil alone has less than the %3 wanted. Look for a soil with more clay.</source>
        <translation>%1: मिट्टी और रेत दोनों मिलाकर चिकनी मिट्टी सिर्फ़ %2 है, और अकेली मिट्टी में भी वह चाहे गए %3 से कम है। ऐसी मिट्टी ढूँढें जिसमें चिकनी मिट्टी ज़्यादा हो।</translation>
    </message>
    <message>
        <source>The clay in the soil is not known, so the mix cannot be judged. Do a jar test and enter its result.</source>
        <translation>मिट्टी में चिकनी मिट्टी कितनी है, पता नहीं, इसलिए मिश्रण परखा नहीं जा सकता। जार जाँच करें और उसका नतीजा भरें।</translation>
    </message>
    <message>
        <source>The soil of the pit is not known. Digging is reckoned as for firm loam, and the walls cannot be called safe.</source>
        <translation>गड्ढे की मिट्टी पता नहीं। खुदाई का हिसाब ठोस दोमट मानकर लगाया गया है, और दीवारों को सुरक्षित नहीं कहा जा सकता।</translation>
    </message>
    <message>
        <source>%1 is kept wet for %2. Ordinary cement practice is at least %3; shorter curing is reported from tanks of this kind, and leaves the plaster weaker.</source>
        <translation>%1 को %2 गीला रखा जाता है। सीमेंट के काम में आम तौर पर कम से कम %3 रखते हैं; ऐसी टंकियों में इससे कम तराई की बात भी सुनी गई है, पर उससे प्लास्टर कमज़ोर रहता है।</translation>
    </message>
    <message>
        <source>The last coat is kept wet for %1, but filling shall start within %2 of placing it. Keep the walls above the water under wet sacks after filling has begun.</source>
        <translation>आखिरी कोट %1 गीला रखा जाता है, पर भराई उसे लगाने के %2 में शुरू होनी है। भराई शुरू होने के बाद भी पानी से ऊपर की दीवारें गीली बोरियों के नीचे रखें।</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on a ladder must stand in it while anyone works there. Local codes and licensed practice come first.</source>
        <translation>गड्ढा %1 गहरा है। %2 या उससे ज़्यादा गहरे गड्ढे में, जब तक कोई अंदर काम कर रहा हो, सीढ़ी लगी होनी ही चाहिए। स्थानीय नियम और लाइसेंसधारी पेशेवर की राय सबसे पहले आती है।</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on its walls must be held against cave-in: slope or step them back, or shore them, and let a competent person look at them each day. Local codes and licensed practice come first.</source>
        <translation>गड्ढा %1 गहरा है। %2 या उससे ज़्यादा गहरे गड्ढे की दीवारों को ढहने से रोकना ही होगा: उन्हें ढलवाँ या पैड़ीदार काटें, या टेक लगाएँ, और रोज़ किसी जानकार से दिखवाएँ। स्थानीय नियम और लाइसेंसधारी पेशेवर की राय सबसे पहले आती है।</translation>
    </message>
    <message>
        <source>The pit is %1 deep, more than the %2 that this program allows to be dug by hand. Have an engineer design it, or make the tank shallower and wider.</source>
        <translation>गड्ढा %1 गहरा है, यानी उस %2 से ज़्यादा जितना यह प्रोग्राम हाथ से खोदने देता है। इंजीनियर से नक्शा बनवाएँ, या टंकी कम गहरी और ज़्यादा चौड़ी रखें।</translation>
    </message>
    <message>
        <source>The mixes and thicknesses entered need %1 times the cement of the customary bill by exact shells, %2 times by area times thickness. Decide which to trust, thickness, mix or cement; the others follow from your choice.</source>
        <translation>भरे गए मिश्रण और मोटाई में चलन की सूची का सटीक खोल से %1 गुना और क्षेत्रफल × मोटाई से %2 गुना सीमेंट लगता है। तय करें कि मोटाई, मिश्रण या सीमेंट में से किस पर भरोसा करना है; बाकी दोनों उसी से निकलेंगे।</translation>
    </message>
    <message>
        <source>The customary bill has %1 parts of soil to 1 part of sand; the mixes entered need %2. Both cannot be right.</source>
        <translation>चलन की सूची में 1 भाग रेत पर %1 भाग मिट्टी है; भरे गए मिश्रण में %2 लगती है। दोनों सही नहीं हो सकते।</translation>
    </message>
    <message>
        <source>Digging takes %1 by published rate norms and %2 by local practice. Check which fits your diggers before you promise dates.</source>
        <translation>खुदाई का काम छपी दरों से %1 है और यहाँ के चलन से %2। तारीख का वादा करने से पहले देख लें कि आपके खोदने वालों पर कौन-सी दर ठीक बैठती है।</translation>
    </message>
    <message>
        <source>The file&apos;s entry “%1” is not known to this version. It is kept and not used.</source>
        <translation>फ़ाइल की एंट्री “%1” को यह वर्शन नहीं पहचानता। उसे रख लिया गया है, पर काम में नहीं लिया गया।</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>पत्थर की सोलिंग</translation>
    </message>
    <message>
        <source>Cove</source>
        <translation>गोला</translation>
    </message>
    <message>
        <source>Rim collar</source>
        <translation>मुंडेर की पट्टी</translation>
    </message>
    <message>
        <source>Dug pit</source>
        <translation>खुदा गड्ढा</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>पानी</translation>
    </message>
    <message>
        <source>Person for scale</source>
        <translation>नाप के अंदाज़े के लिए आदमी</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>सीमेंट के कट्टे</translation>
    </message>
    <message>
        <source>Soil, sieved</source>
        <translation>मिट्टी, छनी हुई</translation>
    </message>
    <message>
        <source>Stone, loose</source>
        <translation>पत्थर, ढीला</translation>
    </message>
    <message>
        <source>Water, all together</source>
        <translation>पानी, कुल</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>मसाला बनाने का पानी</translation>
    </message>
    <message>
        <source>Water for wetting</source>
        <translation>भिगाई का पानी</translation>
    </message>
    <message>
        <source>Sacks to keep wet</source>
        <translation>गीली रखने की बोरियाँ</translation>
    </message>
    <message>
        <source>Dig the pit</source>
        <translation>गड्ढा खोदें</translation>
    </message>
    <message>
        <source>Lay and compact the stone bed</source>
        <translation>पत्थर की सोलिंग बिछाएँ और कूटें</translation>
    </message>
    <message>
        <source>Keep the coats wet</source>
        <translation>कोट गीले रखें</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>भराई इस दिन तक शुरू करें</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>मज़दूर</translation>
    </message>
    <message>
        <source>masons and helpers</source>
        <translation>मिस्त्री और हेल्पर</translation>
    </message>
    <message>
        <source>clear length</source>
        <translation>भीतरी लंबाई</translation>
    </message>
    <message>
        <source>clear width</source>
        <translation>भीतरी चौड़ाई</translation>
    </message>
    <message>
        <source>clear diameter</source>
        <translation>भीतरी व्यास</translation>
    </message>
    <message>
        <source>clear depth</source>
        <translation>भीतरी गहराई</translation>
    </message>
    <message>
        <source>pit length</source>
        <translation>गड्ढे की लंबाई</translation>
    </message>
    <message>
        <source>pit width</source>
        <translation>गड्ढे की चौड़ाई</translation>
    </message>
    <message>
        <source>pit diameter</source>
        <translation>गड्ढे का व्यास</translation>
    </message>
    <message>
        <source>pit depth</source>
        <translation>गड्ढे की गहराई</translation>
    </message>
    <message>
        <source>Pit floor</source>
        <translation>गड्ढे का तला</translation>
    </message>
    <message>
        <source>Top of stone bed</source>
        <translation>सोलिंग की ऊपरी सतह</translation>
    </message>
    <message>
        <source>Overflow level</source>
        <translation>ओवरफ्लो का स्तर</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>मुंडेर</translation>
    </message>
    <message>
        <source>pit corner at ground</source>
        <translation>ज़मीन पर गड्ढे का कोना</translation>
    </message>
    <message>
        <source>offset peg, clear of the pit</source>
        <translation>बाहरी खूँटी, गड्ढे से हटकर</translation>
    </message>
    <message>
        <source>pit corner at floor</source>
        <translation>तले पर गड्ढे का कोना</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>बीच</translation>
    </message>
    <message>
        <source>centre of the rounded corner</source>
        <translation>गोल कोने का केंद्र</translation>
    </message>
    <message>
        <source>mark for the right angle</source>
        <translation>गुनिया (समकोण) का निशान</translation>
    </message>
    <message>
        <source>side</source>
        <translation>भुजा</translation>
    </message>
    <message>
        <source>diagonal</source>
        <translation>कर्ण</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>त्रिज्या</translation>
    </message>
    <message>
        <source>3-4-5 triangle</source>
        <translation>3-4-5 का तिकोन</translation>
    </message>
    <message>
        <source>site</source>
        <translation>जगह</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>टंकी</translation>
    </message>
    <message>
        <source>lining</source>
        <translation>लाइनिंग</translation>
    </message>
    <message>
        <source>water balance</source>
        <translation>पानी का हिसाब</translation>
    </message>
    <message>
        <source>labour and dates</source>
        <translation>मेहनत और तारीखें</translation>
    </message>
    <message>
        <source>prices and cost</source>
        <translation>दाम और खर्च</translation>
    </message>
    <message>
        <source>options side by side</source>
        <translation>विकल्प साथ-साथ</translation>
    </message>
    <message>
        <source>%1 bag</source>
        <translation>%1 कट्टा</translation>
    </message>
    <message>
        <source>Coat %1</source>
        <translation>कोट %1</translation>
    </message>
    <message>
        <source>Place coat %1</source>
        <translation>कोट %1 लगाएँ</translation>
    </message>
    <message>
        <source>Keep coat %1 wet</source>
        <translation>कोट %1 गीला रखें</translation>
    </message>
    <message>
        <source>Top of coat %1</source>
        <translation>कोट %1 की ऊपरी सतह</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>पढ़ी नहीं जा सकती</translation>
    </message>
    <message>
        <source>cannot be written; what was there before is untouched</source>
        <translation>लिखी नहीं जा सकती; पहले जो था वह वैसा ही है</translation>
    </message>
    <message>
        <source>is too large, in bytes</source>
        <translation>बहुत बड़ी है (बाइट में)</translation>
    </message>
    <message>
        <source>is not JSON from this line and column on</source>
        <translation>इस पंक्ति और कॉलम से आगे JSON नहीं है</translation>
    </message>
    <message>
        <source>has too many levels of brackets</source>
        <translation>एक के अंदर एक बहुत ज़्यादा ब्रैकेट हैं</translation>
    </message>
    <message>
        <source>is not UTF-8 text from this line and column on</source>
        <translation>इस पंक्ति और कॉलम से आगे UTF-8 टेक्स्ट नहीं है</translation>
    </message>
    <message>
        <source>is not a Tankwright project</source>
        <translation>Tankwright का प्रोजेक्ट नहीं है</translation>
    </message>
    <message>
        <source>is of a version that this program does not know</source>
        <translation>ऐसे वर्शन की है जिसे यह प्रोग्राम नहीं पहचानता</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>नहीं है</translation>
    </message>
    <message>
        <source>is of the wrong kind</source>
        <translation>गलत किस्म का आँकड़ा है</translation>
    </message>
    <message>
        <source>is not a finite number</source>
        <translation>सीमित संख्या नहीं है</translation>
    </message>
    <message>
        <source>is outside the allowed range</source>
        <translation>मान्य दायरे से बाहर है</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>दिए गए विकल्पों में से नहीं है</translation>
    </message>
    <message>
        <source>is too long, in bytes of UTF-8</source>
        <translation>बहुत लंबा है (UTF-8 के बाइट में)</translation>
    </message>
    <message>
        <source>is not a calendar date written year-month-day</source>
        <translation>साल-महीना-दिन के रूप में लिखी तारीख नहीं है</translation>
    </message>
    <message>
        <source>is given twice</source>
        <translation>दो बार दिया गया है</translation>
    </message>
    <message>
        <source>has too few entries</source>
        <translation>इसमें एंट्री कम हैं</translation>
    </message>
    <message>
        <source>has too many entries</source>
        <translation>इसमें एंट्री ज़्यादा हैं</translation>
    </message>
    <message>
        <source>runs clockwise; list the corners anticlockwise</source>
        <translation>घड़ी की दिशा में है; कोने घड़ी की उलटी दिशा में लिखें</translation>
    </message>
    <message>
        <source>touches or crosses itself</source>
        <translation>अपने आप को छूती या काटती है</translation>
    </message>
    <message>
        <source>is bent inward at this corner; every corner must point outward</source>
        <translation>इस कोने पर अंदर की ओर मुड़ी है; हर कोना बाहर की ओर होना चाहिए</translation>
    </message>
    <message>
        <source>puts the overflow level at or below the clear floor; it must be less than the clear depth</source>
        <translation>ओवरफ्लो के स्तर को भीतरी फ़र्श पर या उससे नीचे ले जाता है; यह भीतरी गहराई से कम होना चाहिए</translation>
    </message>
    <message>
        <source>reaches the overflow level; it must be less than the clear depth without the freeboard</source>
        <translation>ओवरफ्लो के स्तर तक पहुँच जाती है; फ्रीबोर्ड घटाकर बची भीतरी गहराई से कम होनी चाहिए</translation>
    </message>
    <message>
        <source>make a lining thicker than the clear inside of the tank</source>
        <translation>लाइनिंग को टंकी की भीतरी जगह से भी मोटा कर देते हैं</translation>
    </message>
    <message>
        <source>leaves no clear floor: the size at the rim is too small for this depth and batter</source>
        <translation>भीतरी फ़र्श नहीं बचता: इस गहराई और सलामी के लिए मुंडेर पर नाप बहुत छोटा है</translation>
    </message>
    <message>
        <source>does not fit into the corners of the clear floor</source>
        <translation>भीतरी फ़र्श के कोनों में नहीं बैठता</translation>
    </message>
    <message>
        <source>is too small: with this batter the corners would vanish at the floor</source>
        <translation>बहुत छोटा है: इस सलामी में फ़र्श तक पहुँचते-पहुँचते कोने मिट जाएँगे</translation>
    </message>
    <message>
        <source>does not fit between the clear floor and the rim</source>
        <translation>भीतरी फ़र्श और मुंडेर के बीच नहीं बैठता</translation>
    </message>
    <message>
        <source>has neither soil nor sand; give at least one of them some parts</source>
        <translation>इसमें न मिट्टी है न रेत; कम से कम एक के कुछ भाग भरें</translation>
    </message>
    <message>
        <source>leaves no pit floor to stand on</source>
        <translation>खड़े होने के लिए गड्ढे का तला नहीं बचता</translation>
    </message>
    <message>
        <source>is not known to this version; it is kept and not used</source>
        <translation>इस वर्शन को पता नहीं; रख लिया गया है, पर काम में नहीं लिया गया</translation>
    </message>
    <message>
        <source>The project file</source>
        <translation>प्रोजेक्ट की फ़ाइल</translation>
    </message>
    <message>
        <source>Format mark</source>
        <translation>फ़ॉर्मेट का निशान</translation>
    </message>
    <message>
        <source>Version of the format</source>
        <translation>फ़ॉर्मेट का वर्शन</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>जगह</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>ऊँचाई के बिंदु</translation>
    </message>
    <message>
        <source>Terrace edge</source>
        <translation>सीढ़ीदार खेत का किनारा</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>टंकी</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>लाइनिंग</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>कोट</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>चलन की सूची</translation>
    </message>
    <message>
        <source>Recommended by builders</source>
        <translation>बनाने वालों की सुझाई</translation>
    </message>
    <message>
        <source>Labour and dates</source>
        <translation>मेहनत और तारीखें</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>संख्या</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>पूरी संख्या</translation>
    </message>
    <message>
        <source>text</source>
        <translation>टेक्स्ट</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>सूची</translation>
    </message>
    <message>
        <source>a group in braces</source>
        <translation>ब्रैकेट {} में समूह</translation>
    </message>
    <message>
        <source>all corners pointing outward</source>
        <translation>सभी कोने बाहर की ओर</translation>
    </message>
    <message>
        <source>corners listed anticlockwise</source>
        <translation>कोने घड़ी की उलटी दिशा में</translation>
    </message>
    <message>
        <source>no corner given twice, no sides crossing</source>
        <translation>कोई कोना दो बार नहीं, कोई भुजा दूसरी को न काटे</translation>
    </message>
    <message>
        <source>%1, entry %2</source>
        <translation>%1, एंट्री %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 से %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 in the file, %2</source>
        <translation>%1 (फ़ाइल में), %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <translation>%1 – %2।</translation>
    </message>
    <message>
        <source>%1 %2: found %3.</source>
        <translation>%1 – %2: मिला %3।</translation>
    </message>
    <message>
        <source>%1 %2: allowed %3.</source>
        <translation>%1 – %2: मान्य %3।</translation>
    </message>
    <message>
        <source>%1 %2: found %3; allowed %4.</source>
        <translation>%1 – %2: मिला %3; मान्य %4।</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 या ज़्यादा</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>%1 तक</translation>
    </message>
    <message>
        <source>published</source>
        <translation>छपा हुआ</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>आम चलन, कोई संदर्भ नहीं</translation>
    </message>
    <message>
        <source>from memory, to be verified</source>
        <translation>याद से, जाँचना बाकी</translation>
    </message>
    <message>
        <source>this program&apos;s proposal, to be changed where practice differs</source>
        <translation>इस प्रोग्राम का सुझाव, जहाँ चलन अलग हो वहाँ बदलें</translation>
    </message>
    <message>
        <source>entered or fixed by the design</source>
        <translation>भरा गया या नक्शे से तय</translation>
    </message>
    <message>
        <source>measured or chosen on site</source>
        <translation>मौके पर नापा या चुना गया</translation>
    </message>
    <message>
        <source>plane and solid geometry; the prismoidal formula is exact for a straight batter</source>
        <translation>समतल और ठोस ज्यामिति; सीधी सलामी में प्रिज़्मोइडल सूत्र बिल्कुल सही है</translation>
    </message>
    <message>
        <source>this program&apos;s proposal; change it to suit the district</source>
        <translation>इस प्रोग्राम का सुझाव; अपने ज़िले के हिसाब से बदलें</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>सूचना</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>सावधान</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>रुकें</translation>
    </message>
    <message>
        <source>Allowed: %1.</source>
        <translation>मान्य: %1।</translation>
    </message>
    <message>
        <source>Source of the default: %1.</source>
        <translation>पहले से भरे आँकड़े का संदर्भ: %1।</translation>
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
        <translation>L/ft² प्रतिदिन</translation>
    </message>
    <message>
        <source>person-days per 100 ft³</source>
        <translation>दिहाड़ी प्रति 100 ft³</translation>
    </message>
    <message>
        <source>person-days per 100 ft²</source>
        <translation>दिहाड़ी प्रति 100 ft²</translation>
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
        <translation>दिन</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>घंटे</translation>
    </message>
    <message>
        <source>people</source>
        <translation>लोग</translation>
    </message>
    <message>
        <source>person-days</source>
        <translation>दिहाड़ी</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>भाग</translation>
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
        <translation>L/m² प्रतिदिन</translation>
    </message>
    <message>
        <source>person-days per m³</source>
        <translation>दिहाड़ी प्रति m³</translation>
    </message>
    <message>
        <source>person-days per m²</source>
        <translation>दिहाड़ी प्रति m²</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 दिन</translation>
    </message>
    <message>
        <source>%1 hour</source>
        <translation>%1 घंटा</translation>
    </message>
    <message>
        <source>%1 person</source>
        <translation>%1 व्यक्ति</translation>
    </message>
    <message>
        <source>%1 person-day</source>
        <translation>%1 दिहाड़ी</translation>
    </message>
    <message>
        <source>%1 part</source>
        <translation>%1 भाग</translation>
    </message>
    <message numerus="yes">
        <source>%1 days</source>
        <translation>
            <numerusform>%1 दिन</numerusform>
            <numerusform>%1 दिन</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 hours</source>
        <translation>
            <numerusform>%1 घंटा</numerusform>
            <numerusform>%1 घंटे</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 people</source>
        <translation>
            <numerusform>%1 व्यक्ति</numerusform>
            <numerusform>%1 लोग</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 person-days</source>
        <translation>
            <numerusform>%1 दिहाड़ी</numerusform>
            <numerusform>%1 दिहाड़ी</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 parts</source>
        <translation>
            <numerusform>%1 भाग</numerusform>
            <numerusform>%1 भाग</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 या %2</translation>
    </message>
    <message>
        <source>Not in the project, so not in the plan: %1.</source>
        <translation>प्रोजेक्ट में नहीं है, इसलिए योजना में भी नहीं: %1।</translation>
    </message>
    <message>
        <source>%1 must be placed in one go, within the day. People entered for it: %2; needed: %3.</source>
        <translation>%1 एक ही बार में, उसी दिन के भीतर लगना चाहिए। इसके लिए भरे गए लोग: %2; चाहिए: %3।</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1 – %2: %3।</translation>
    </message>
    <message numerus="yes">
        <source>%1 bags</source>
        <translation>
            <numerusform>%1 कट्टा</numerusform>
            <numerusform>%1 कट्टे</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <translation>%1 (कच्चा मसौदा)</translation>
    </message>
    <message>
        <source>end of the rounded corner&apos;s arc</source>
        <translation>गोल कोने की गोलाई का सिरा</translation>
    </message>
    <message>
        <source>watering can or bucket</source>
        <translation>हज़ारा या बाल्टी</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>पाइप (रबर)</translation>
    </message>
    <message>
        <source>furrows</source>
        <translation>नालियाँ</translation>
    </message>
    <message>
        <source>sprinkler</source>
        <translation>फव्वारा</translation>
    </message>
    <message>
        <source>drip lines</source>
        <translation>ड्रिप</translation>
    </message>
    <message>
        <source>cattle</source>
        <translation>गाय-बैल</translation>
    </message>
    <message>
        <source>cow in milk</source>
        <translation>दुधारू गाय</translation>
    </message>
    <message>
        <source>buffalo</source>
        <translation>भैंस</translation>
    </message>
    <message>
        <source>horse or mule</source>
        <translation>घोड़ा या खच्चर</translation>
    </message>
    <message>
        <source>donkey</source>
        <translation>गधा</translation>
    </message>
    <message>
        <source>goat or sheep</source>
        <translation>बकरी या भेड़</translation>
    </message>
    <message>
        <source>pig</source>
        <translation>सूअर</translation>
    </message>
    <message>
        <source>hen or other poultry</source>
        <translation>मुर्गी या दूसरे पक्षी</translation>
    </message>
    <message>
        <source>monthly means</source>
        <translation>महीनों के औसत</translation>
    </message>
    <message>
        <source>daily record</source>
        <translation>रोज़ का रिकॉर्ड</translation>
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
        <translation>वह साल छोड़ दें</translation>
    </message>
    <message>
        <source>fill in from the nearest year</source>
        <translation>सबसे पास के साल से भरें</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>स्रोत</translation>
    </message>
    <message>
        <source>Months of the source</source>
        <translation>स्रोत के महीने</translation>
    </message>
    <message>
        <source>Readings of the source</source>
        <translation>स्रोत के नाप</translation>
    </message>
    <message>
        <source>Roof</source>
        <translation>छत</translation>
    </message>
    <message>
        <source>Ground led to the tank</source>
        <translation>टंकी की ओर बहती ज़मीन</translation>
    </message>
    <message>
        <source>Losses</source>
        <translation>पानी का घाटा</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>क्यारियाँ</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>पशु</translation>
    </message>
    <message>
        <source>Own crops</source>
        <translation>अपनी फसलें</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>जलवायु</translation>
    </message>
    <message>
        <source>Months of the climate</source>
        <translation>जलवायु के महीने</translation>
    </message>
    <message>
        <source>Daily record</source>
        <translation>रोज़ का रिकॉर्ड</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>नाप %1</translation>
    </message>
    <message>
        <source>Bed %1</source>
        <translation>क्यारी %1</translation>
    </message>
    <message>
        <source>Animals %1</source>
        <translation>पशु %1</translation>
    </message>
    <message>
        <source>Own crop %1</source>
        <translation>अपनी फसल %1</translation>
    </message>
    <message>
        <source>Source in %1</source>
        <translation>%1 में स्रोत</translation>
    </message>
    <message>
        <source>Climate of %1</source>
        <translation>%1 की जलवायु</translation>
    </message>
    <message>
        <source>date</source>
        <translation>तारीख</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>बारिश</translation>
    </message>
    <message>
        <source>lowest temperature</source>
        <translation>सबसे कम तापमान</translation>
    </message>
    <message>
        <source>highest temperature</source>
        <translation>सबसे ज़्यादा तापमान</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>हवा</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>नमी</translation>
    </message>
    <message>
        <source>sunshine</source>
        <translation>धूप</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Line %1 of the table</source>
        <translation>तालिका की पंक्ति %1</translation>
    </message>
    <message>
        <source>is neither in the table of crops nor one of your own; choose one, or enter it among your own crops</source>
        <translation>न फसलों की तालिका में है, न आपकी अपनी फसलों में; कोई एक चुनें, या उसे अपनी फसलों में भरें</translation>
    </message>
    <message>
        <source>is a day that this month does not have; choose an earlier one</source>
        <translation>ऐसा दिन है जो इस महीने में नहीं होता; इससे पहले का दिन चुनें</translation>
    </message>
    <message>
        <source>makes the whole season too long; shorten the stages</source>
        <translation>पूरा मौसम बहुत लंबा हो जाता है; चरण छोटे करें</translation>
    </message>
    <message>
        <source>leaves a month with rain without a wet day; enter on how many days it rains</source>
        <translation>बारिश वाला एक महीना बिना बारिश के दिन के रह जाता है; कितने दिन बारिश होती है, भरें</translation>
    </message>
    <message>
        <source>is more than the days of this month; enter fewer</source>
        <translation>इस महीने के दिनों से ज़्यादा है; कम भरें</translation>
    </message>
    <message>
        <source>is too little for the wet days of this month: each has 0.1 mm at least</source>
        <translation>इस महीने के बारिश के दिनों के लिए बहुत कम है: हर दिन में कम से कम 0.1 mm होती है</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same month; check both</source>
        <translation>उसी महीने के सबसे कम तापमान से नीचे है; दोनों जाँचें</translation>
    </message>
    <message>
        <source>is not later than the day before it; put the days in order</source>
        <translation>अपने से पहले के दिन के बाद का नहीं है; दिनों को क्रम में लगाएँ</translation>
    </message>
    <message>
        <source>does not name the columns; begin the table with a line such as date,rain_mm,t_min_c,t_max_c</source>
        <translation>इसमें कॉलम के नाम नहीं हैं; तालिका इस तरह की पंक्ति से शुरू करें: date,rain_mm,t_min_c,t_max_c</translation>
    </message>
    <message>
        <source>is not among the columns; add it to the table and to its first line</source>
        <translation>कॉलमों में नहीं है; उसे तालिका में और उसकी पहली पंक्ति में जोड़ें</translation>
    </message>
    <message>
        <source>does not have as many cells as the first line; look for a mark too many or too few between them</source>
        <translation>इसमें पहली पंक्ति जितने खाने नहीं हैं; देखें कि बीच में कोई चिह्न ज़्यादा या कम तो नहीं</translation>
    </message>
    <message>
        <source>stands in the table already; keep one line for each day</source>
        <translation>तालिका में पहले से है; हर दिन की एक ही पंक्ति रखें</translation>
    </message>
    <message>
        <source>is earlier than the date above it; sort the lines by date</source>
        <translation>ऊपर वाली तारीख से पहले की है; पंक्तियाँ तारीख के क्रम में लगाएँ</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same day; check both</source>
        <translation>उसी दिन के सबसे कम तापमान से नीचे है; दोनों जाँचें</translation>
    </message>
    <message>
        <source>comes after days that are left out, which count as gaps of the record</source>
        <translation>छूटे हुए दिनों के बाद आती है, जो रिकॉर्ड की खाली जगह गिने जाते हैं</translation>
    </message>
    <message>
        <source>names a column that is not used</source>
        <translation>ऐसे कॉलम का नाम है जो काम में नहीं आता</translation>
    </message>
    <message>
        <source>The weather table</source>
        <translation>मौसम की तालिका</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>mm per day</source>
        <translation>mm प्रतिदिन</translation>
    </message>
    <message>
        <source>mm per m</source>
        <translation>mm प्रति m</translation>
    </message>
    <message>
        <source>L/min</source>
        <translation>L/min</translation>
    </message>
    <message>
        <source>L per day</source>
        <translation>L प्रतिदिन</translation>
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
        <translation>साल</translation>
    </message>
    <message>
        <source>%1 year</source>
        <translation>%1 साल</translation>
    </message>
    <message numerus="yes">
        <source>%1 years</source>
        <translation>
            <numerusform>%1 साल</numerusform>
            <numerusform>%1 साल</numerusform>
        </translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1.</source>
        <translation>पानी की कमी जब भी होती है, इन महीनों में होती है: %1।</translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1; most often in %2.</source>
        <translation>पानी की कमी जब भी होती है, इन महीनों में होती है: %1; सबसे ज़्यादा बार %2 में।</translation>
    </message>
    <message>
        <source>Full at the start of %1 and with nothing more flowing in, the tank lasts a year or longer.</source>
        <translation>%1 की शुरुआत में भरी हो और फिर कुछ पानी न आए, तो भी टंकी एक साल या ज़्यादा चलती है।</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank does not fill within a year.</source>
        <translation>कुछ भी न निकालें, तो भी खाली टंकी एक साल में नहीं भरती।</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills in %1.</source>
        <translation>कुछ भी न निकालें, तो खाली टंकी %1 में भरती है।</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills quickest from the start of %1 on: in %2.</source>
        <translation>कुछ भी न निकालें, तो खाली टंकी %1 की शुरुआत से सबसे जल्दी भरती है: %2 में।</translation>
    </message>
    <message>
        <source>Almost any tank gives as many good years as are wanted.</source>
        <translation>लगभग किसी भी टंकी से उतने अच्छे साल मिल जाते हैं जितने चाहिए।</translation>
    </message>
    <message>
        <source>A tank that holds about %1 already gives as many good years as are wanted.</source>
        <translation>करीब %1 पानी वाली टंकी से भी उतने अच्छे साल मिल जाते हैं जितने चाहिए।</translation>
    </message>
    <message>
        <source>With this tank, beds of no size have as many good years as are wanted.</source>
        <translation>इस टंकी से किसी भी नाप की क्यारियों को उतने अच्छे साल नहीं मिलते जितने चाहिए।</translation>
    </message>
    <message>
        <source>With this tank, even beds of %1 have as many good years as are wanted.</source>
        <translation>इस टंकी से %1 क्यारियों को भी उतने अच्छे साल मिल जाते हैं जितने चाहिए।</translation>
    </message>
    <message>
        <source>With this tank, beds of up to about %1 have as many good years as are wanted; entered: %2.</source>
        <translation>इस टंकी से करीब %1 तक की क्यारियों को उतने अच्छे साल मिलते हैं जितने चाहिए; भरी गईं: %2।</translation>
    </message>
    <message>
        <source>In a mean year about %1 run over unused.</source>
        <translation>औसत साल में करीब %1 पानी बिना काम आए ऊपर से बह जाता है।</translation>
    </message>
    <message>
        <source>The latitude of the site is not known, so whether the water lasts cannot be answered. Read it from a map or a phone.</source>
        <translation>जगह का अक्षांश पता नहीं, इसलिए यह नहीं बताया जा सकता कि पानी पूरा पड़ेगा या नहीं। इसे नक्शे या फ़ोन से पढ़ें।</translation>
    </message>
    <message>
        <source>The climate is not known, so whether the water lasts cannot be answered. Enter rain, wet days, lowest and highest temperature of all twelve months, or take in a daily record.</source>
        <translation>जलवायु पता नहीं, इसलिए यह नहीं बताया जा सकता कि पानी पूरा पड़ेगा या नहीं। सभी बारह महीनों की बारिश, बारिश के दिन, सबसे कम और सबसे ज़्यादा तापमान भरें, या रोज़ का रिकॉर्ड लें।</translation>
    </message>
    <message>
        <source>The height above sea level is not known; evaporation is reckoned as at sea level. Read it from a map or a phone.</source>
        <translation>समुद्र तल से ऊँचाई पता नहीं; भाप बनकर उड़ने का हिसाब समुद्र तल का मानकर लगाया गया है। इसे नक्शे या फ़ोन से पढ़ें।</translation>
    </message>
    <message>
        <source>Only rain on the tank itself brings water. Enter what the source gives in each month, or a roof or ground that is led to the tank.</source>
        <translation>पानी सिर्फ़ टंकी पर गिरी बारिश से आता है। भरें कि स्रोत हर महीने कितना देता है, या ऐसी छत या ज़मीन जिसका पानी टंकी में लाया जाता है।</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank. Enter beds, animals or people who use its water.</source>
        <translation>टंकी से कुछ नहीं निकाला जाता। इसका पानी काम में लेने वाली क्यारियाँ, पशु या लोग भरें।</translation>
    </message>
    <message>
        <source>Water from an open tank is not safe to drink as it is. Use it for washing and the house, and treat what is drunk. People counted: %1.</source>
        <translation>खुली टंकी का पानी ऐसे ही पीना सुरक्षित नहीं है। इसे धोने और घर के काम में लें, और पीने का पानी शुद्ध करके ही पिएँ। गिने गए लोग: %1।</translation>
    </message>
    <message>
        <source>The water lasts in %1 of 10 years; %2 of 10 are wanted.</source>
        <translation>पानी 10 में से %1 साल पूरा पड़ता है; चाहिए 10 में से %2।</translation>
    </message>
    <message>
        <source>A tank that holds about %1 would reach it.</source>
        <translation>करीब %1 पानी वाली टंकी से यह पूरा हो जाएगा।</translation>
    </message>
    <message>
        <source>Beds of about %1 in all would reach it.</source>
        <translation>कुल करीब %1 क्यारियों से यह पूरा हो जाएगा।</translation>
    </message>
    <message>
        <source>The tank does not fill in any year: it holds %1, and the most that is ever in it is about %2. Lead in more water, or build it smaller.</source>
        <translation>टंकी किसी भी साल नहीं भरती: इसमें %1 आता है, और इसमें कभी भी ज़्यादा से ज़्यादा करीब %2 ही रहता है। और पानी लाएँ, या टंकी छोटी बनाएँ।</translation>
    </message>
    <message>
        <source>How much the rain differs from year to year is not known. The years made from monthly means differ by %1, real ones mostly by more. Ask the weather station for the spread of yearly rain.</source>
        <translation>बारिश साल-दर-साल कितनी बदलती है, पता नहीं। महीनों के औसत से बने सालों में फ़र्क %1 है, असली सालों में ज़्यादातर इससे ज़्यादा होता है। मौसम केंद्र से सालाना बारिश का फैलाव पूछें।</translation>
    </message>
    <message>
        <source>The record has whole years: %1. At least %2 are wanted to see how often the water runs short.</source>
        <translation>रिकॉर्ड में पूरे साल: %1। पानी कितनी बार कम पड़ता है, यह देखने के लिए कम से कम %2 चाहिए।</translation>
    </message>
    <message>
        <source>Years of the record left out for their gaps: %1, the first one beginning in %2. Add what is missing, or have gaps filled in from the nearest year.</source>
        <translation>खाली जगहों के कारण रिकॉर्ड के छोड़े गए साल: %1, पहला %2 में शुरू होता है। जो कमी है उसे जोड़ें, या खाली जगहें सबसे पास के साल से भरवाएँ।</translation>
    </message>
    <message>
        <source>Missing values of the record filled in from the nearest year: %1.</source>
        <translation>रिकॉर्ड के छूटे आँकड़े, जो सबसे पास के साल से भरे गए: %1।</translation>
    </message>
    <message>
        <source>Readings of the source in %1: %2. Take more than three, so that a wrong one shows.</source>
        <translation>%1 में स्रोत के नाप: %2। तीन से ज़्यादा नाप लें, ताकि गलत नाप पकड़ में आए।</translation>
    </message>
    <message>
        <source>Reading %1 gives %2, far from the middle of its month, %3. Measure once more, and take the reading out if something went wrong.</source>
        <translation>नाप %1 से %2 आता है, जो अपने महीने के बीच के मान %3 से बहुत दूर है। एक बार फिर नापें, और कुछ गड़बड़ हुई हो तो यह नाप हटा दें।</translation>
    </message>
    <message>
        <source>Reading %1: the vessel was full after %2. Below 3 seconds a watch is too coarse; take a larger vessel.</source>
        <translation>नाप %1: बर्तन %2 में भर गया। 3 सेकंड से कम के लिए घड़ी बहुत मोटी पड़ती है; बड़ा बर्तन लें।</translation>
    </message>
    <message>
        <source>For %1 a flow of %2 is entered; the middle of the readings is %3. Enter the one you trust.</source>
        <translation>%1 के लिए बहाव %2 भरा गया है; नापों का बीच का मान %3 है। जिस पर भरोसा हो, वही भरें।</translation>
    </message>
    <message>
        <source>Rain alone waters the beds; nothing has to be drawn from the tank.</source>
        <translation>क्यारियों के लिए बारिश ही काफ़ी है; टंकी से कुछ नहीं निकालना पड़ता।</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank yet. Enter beds, animals or people who use its water.</source>
        <translation>टंकी से अभी कुछ नहीं निकाला जाता। इसका पानी काम में लेने वाली क्यारियाँ, पशु या लोग भरें।</translation>
    </message>
    <message>
        <source>the beds</source>
        <translation>क्यारियों</translation>
    </message>
    <message>
        <source>the animals</source>
        <translation>पशुओं</translation>
    </message>
    <message>
        <source>the people</source>
        <translation>लोगों</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) the beds stay watered.</source>
        <translation>हिसाब के हर साल (%1) क्यारियों को बराबर पानी मिलता है।</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) there is water for %2.</source>
        <translation>हिसाब के हर साल (%1) %2 के लिए पानी रहता है।</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) do the beds stay watered all year.</source>
        <translation>हिसाब के किसी भी साल (%1) क्यारियों को साल भर पानी नहीं मिलता।</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) is there water all year for %2.</source>
        <translation>हिसाब के किसी भी साल (%1) %2 के लिए साल भर पानी नहीं रहता।</translation>
    </message>
    <message>
        <source>In %1 of %2 years the beds stay watered all year.</source>
        <translation>%2 में से %1 साल क्यारियों को साल भर पानी मिलता है।</translation>
    </message>
    <message>
        <source>In %1 of %2 years there is water all year for %3.</source>
        <translation>%2 में से %1 साल %3 के लिए साल भर पानी रहता है।</translation>
    </message>
    <message>
        <source>Water is missing on %1, about %2 in all.</source>
        <translation>पानी की कमी %1 रहती है, कुल करीब %2।</translation>
    </message>
    <message>
        <source>In the worst of %1 water is missing on %2, about %3 in all.</source>
        <translation>%1 में सबसे बुरे साल में पानी की कमी %2 रहती है, कुल करीब %3।</translation>
    </message>
    <message>
        <source>In a middling year it is missing on %1.</source>
        <translation>बीच के साल में कमी %1 रहती है।</translation>
    </message>
    <message>
        <source>What the tap or spring gives while it runs; time how long a vessel of known size takes to fill.</source>
        <translation>नल या चश्मा चलते समय कितना देता है; देखें कि जाने-पहचाने नाप का बर्तन कितनी देर में भरता है।</translation>
    </message>
    <message>
        <source>How long in a day the water runs into the tank; a spring led in day and night runs 24 hours.</source>
        <translation>पानी दिन में कितनी देर टंकी में आता है; जो चश्मा दिन-रात आता है वह 24 घंटे चलता है।</translation>
    </message>
    <message>
        <source>Month in which this reading was taken.</source>
        <translation>यह नाप किस महीने लिया गया।</translation>
    </message>
    <message>
        <source>What the vessel holds up to the mark to which it was filled; take one that fills in 3 seconds or more.</source>
        <translation>जिस निशान तक भरा, वहाँ तक बर्तन में कितना आता है; ऐसा बर्तन लें जो 3 सेकंड या ज़्यादा में भरे।</translation>
    </message>
    <message>
        <source>Time from putting the empty vessel under the flow until it is full, by watch.</source>
        <translation>खाली बर्तन धार के नीचे रखने से भर जाने तक का समय, घड़ी से।</translation>
    </message>
    <message>
        <source>Roof whose gutters lead to the tank, as seen from above: length times width of its level shadow.</source>
        <translation>वह छत जिसकी नालियाँ टंकी में आती हैं, ऊपर से देखी हुई: उसकी समतल परछाईं की लंबाई × चौड़ाई।</translation>
    </message>
    <message>
        <source>Part of the rain on the roof that reaches the tank: 0.80 is 80 litres of 100.</source>
        <translation>छत की बारिश का जितना हिस्सा टंकी तक पहुँचता है: 0.80 यानी 100 में से 80 लीटर।</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that is let run off to wash the roof; 0 when nothing is turned away.</source>
        <translation>बारिश का दौर शुरू होने पर जितनी बारिश छत धोने के लिए बह जाने दी जाती है; कुछ न छोड़ें तो 0।</translation>
    </message>
    <message>
        <source>Ground uphill whose runoff a ditch leads to the tank; pace its length and width along the level.</source>
        <translation>ऊपर की ज़मीन जिसका बहकर आया पानी नाली से टंकी में लाया जाता है; उसकी लंबाई और चौड़ाई समतल में कदमों से नापें।</translation>
    </message>
    <message>
        <source>Part of the rain on this ground that reaches the tank; bare and steep ground sheds more than grass.</source>
        <translation>इस ज़मीन की बारिश का जितना हिस्सा टंकी तक पहुँचता है; खाली और खड़ी ज़मीन से घास वाली के मुकाबले ज़्यादा बहता है।</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that only wets the ground or is let run past with its mud.</source>
        <translation>बारिश का दौर शुरू होने पर जितनी बारिश सिर्फ़ ज़मीन को भिगोती है या गाद समेत बह जाने दी जाती है।</translation>
    </message>
    <message>
        <source>Evaporation of open water for each unit of reference evapotranspiration; 1.05 for shallow water.</source>
        <translation>संदर्भ वाष्पोत्सर्जन की हर इकाई पर खुले पानी से कितना भाप बनता है; उथले पानी के लिए 1.05।</translation>
    </message>
    <message>
        <source>Share of the evaporation that a roof, a shade cloth or a floating cover keeps back; 0 for open water.</source>
        <translation>छत, शेड नेट या तैरता ढक्कन भाप बनने का जितना हिस्सा रोकता है; खुले पानी के लिए 0।</translation>
    </message>
    <message>
        <source>Depth of water lost through the wetted plaster in a day; measure on a covered tank how far the level falls over several days without inflow or drawing.</source>
        <translation>भीगे प्लास्टर से एक दिन में रिसे पानी की गहराई; ढकी टंकी में नापें कि कई दिन तक बिना आमद और बिना निकाले स्तर कितना उतरता है।</translation>
    </message>
    <message>
        <source>Crop of this bed, from the table or one of your own.</source>
        <translation>इस क्यारी की फसल, तालिका से या आपकी अपनी।</translation>
    </message>
    <message>
        <source>Planted area that is watered from the tank, paths left out.</source>
        <translation>टंकी से सींची जाने वाली बोई हुई ज़मीन, रास्ते छोड़कर।</translation>
    </message>
    <message>
        <source>Month in which the crop is sown or planted out each year.</source>
        <translation>फसल हर साल किस महीने बोई या रोपी जाती है।</translation>
    </message>
    <message>
        <source>Day of that month; the first or the middle is near enough.</source>
        <translation>उस महीने का दिन; पहला या बीच का दिन काफ़ी है।</translation>
    </message>
    <message>
        <source>How the water is given to the bed.</source>
        <translation>क्यारी को पानी कैसे दिया जाता है।</translation>
    </message>
    <message>
        <source>Share of the water drawn that stays where the roots can use it; leave empty to take it from the way of watering.</source>
        <translation>निकाले गए पानी का जितना हिस्सा वहाँ रहता है जहाँ जड़ें उसे ले सकें; सिंचाई के तरीके से लेना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Animals that drink from the tank.</source>
        <translation>टंकी से पानी पीने वाले पशु।</translation>
    </message>
    <message>
        <source>Number of these animals, on average.</source>
        <translation>इन पशुओं की गिनती, औसत।</translation>
    </message>
    <message>
        <source>Water one animal drinks in a day; count the buckets, or leave empty to take the usual for its kind.</source>
        <translation>एक पशु दिन में जितना पानी पीता है; बाल्टियाँ गिनें, या उस किस्म का आम आँकड़ा लेने के लिए खाली छोड़ें।</translation>
    </message>
    <message>
        <source>People whose water for washing and the house comes from the tank.</source>
        <translation>वे लोग जिनका धोने और घर का पानी टंकी से आता है।</translation>
    </message>
    <message>
        <source>Water one person takes from the tank in a day; count the vessels carried home.</source>
        <translation>एक व्यक्ति दिन में टंकी से जितना पानी लेता है; घर ले जाए गए बर्तन गिनें।</translation>
    </message>
    <message>
        <source>Name by which the beds call this crop; each one only once.</source>
        <translation>वह नाम जिससे क्यारियों में यह फसल चुनी जाती है; हर नाम एक ही बार।</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration from planting until a tenth of the ground is covered.</source>
        <translation>बुआई से दसवाँ हिस्सा ज़मीन ढकने तक, संदर्भ वाष्पोत्सर्जन के मुकाबले पानी की खपत।</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration while the crop covers the ground fully.</source>
        <translation>फसल जब ज़मीन पूरी ढक ले, तब संदर्भ वाष्पोत्सर्जन के मुकाबले पानी की खपत।</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration on the day of harvest or when the leaves die.</source>
        <translation>कटाई के दिन या पत्ते सूखने पर, संदर्भ वाष्पोत्सर्जन के मुकाबले पानी की खपत।</translation>
    </message>
    <message>
        <source>Height of the full-grown crop, or to the top of its stakes.</source>
        <translation>पूरी बढ़ी फसल की ऊँचाई, या उसके टेकों के सिरे तक।</translation>
    </message>
    <message>
        <source>Days from planting until a tenth of the ground is covered.</source>
        <translation>बुआई से दसवाँ हिस्सा ज़मीन ढकने तक के दिन।</translation>
    </message>
    <message>
        <source>Days from then until the leaves cover the ground.</source>
        <translation>तब से पत्तों के ज़मीन ढक लेने तक के दिन।</translation>
    </message>
    <message>
        <source>Days from full cover until the leaves begin to yellow or fruit ripens.</source>
        <translation>ज़मीन पूरी ढकने से पत्ते पीले पड़ने या फल पकने लगने तक के दिन।</translation>
    </message>
    <message>
        <source>Days from then until harvest or until watering stops.</source>
        <translation>तब से कटाई तक या पानी देना बंद होने तक के दिन।</translation>
    </message>
    <message>
        <source>Depth from which most roots draw; dig beside a grown plant and look.</source>
        <translation>जितनी गहराई तक ज़्यादातर जड़ें पानी लेती हैं; बढ़े पौधे के पास खोदकर देखें।</translation>
    </message>
    <message>
        <source>Part of the water held by the soil that the crop may use up before it suffers: 0.40 is 40 litres of 100.</source>
        <translation>मिट्टी में रुके पानी का जितना हिस्सा फसल बिना नुकसान के ले सकती है: 0.40 यानी 100 में से 40 लीटर।</translation>
    </message>
    <message>
        <source>Water the soil keeps for roots after it has drained, down to wilting: sand little, loam and clay much.</source>
        <translation>पानी रिस जाने के बाद से मुरझाने तक मिट्टी जड़ों के लिए जितना पानी रखती है: रेत कम, दोमट और चिकनी मिट्टी ज़्यादा।</translation>
    </message>
    <message>
        <source>Whether twelve monthly means or a table of single days from a weather station is at hand.</source>
        <translation>आपके पास बारह महीनों के औसत हैं, या मौसम केंद्र की एक-एक दिन की तालिका।</translation>
    </message>
    <message>
        <source>Rain of this month, mean of many years, from the nearest weather station.</source>
        <translation>इस महीने की बारिश, कई सालों का औसत, सबसे पास के मौसम केंद्र से।</translation>
    </message>
    <message>
        <source>Days of this month on which it rains 0.1 mm or more, mean of many years.</source>
        <translation>इस महीने के वे दिन जिनमें 0.1 mm या ज़्यादा बारिश होती है, कई सालों का औसत।</translation>
    </message>
    <message>
        <source>Mean of the lowest temperatures of each day, in the shade.</source>
        <translation>हर दिन के सबसे कम तापमान का औसत, छाया में।</translation>
    </message>
    <message>
        <source>Mean of the highest temperatures of each day, in the shade.</source>
        <translation>हर दिन के सबसे ज़्यादा तापमान का औसत, छाया में।</translation>
    </message>
    <message>
        <source>Mean relative humidity of the air; leave empty when not known, then it is estimated from the temperature.</source>
        <translation>हवा की औसत सापेक्ष नमी; पता न हो तो खाली छोड़ें, तब तापमान से अंदाज़ा लगाया जाता है।</translation>
    </message>
    <message>
        <source>Mean wind 2 m above the ground; leave empty when not known, then a light wind is reckoned with.</source>
        <translation>ज़मीन से 2 m ऊपर औसत हवा; पता न हो तो खाली छोड़ें, तब हल्की हवा मानकर हिसाब लगता है।</translation>
    </message>
    <message>
        <source>Mean hours of bright sunshine a day; leave empty when not known, then it is estimated from the temperatures.</source>
        <translation>दिन में तेज़ धूप के औसत घंटे; पता न हो तो खाली छोड़ें, तब तापमान से अंदाज़ा लगाया जाता है।</translation>
    </message>
    <message>
        <source>Standard deviation of the yearly rain over its mean, from the weather station. Leave empty if not known.</source>
        <translation>सालाना बारिश का मानक विचलन (standard deviation) ÷ उसका औसत, मौसम केंद्र से। पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>How many years of daily weather are made from the monthly means; more years show rare droughts better and take longer.</source>
        <translation>महीनों के औसत से रोज़ के मौसम के कितने साल बनाए जाएँ; ज़्यादा सालों में कभी-कभार का सूखा बेहतर दिखता है और समय ज़्यादा लगता है।</translation>
    </message>
    <message>
        <source>The same number gives the same years; another one shows how much the answer depends on chance.</source>
        <translation>एक ही संख्या से वही साल बनते हैं; दूसरी संख्या दिखाती है कि जवाब संयोग पर कितना टिका है।</translation>
    </message>
    <message>
        <source>Penman-Monteith is the standard and estimates what was not measured; Hargreaves uses temperatures alone.</source>
        <translation>Penman-Monteith मानक है और जो नापा नहीं गया उसका अंदाज़ा लगाता है; Hargreaves सिर्फ़ तापमान लेता है।</translation>
    </message>
    <message>
        <source>Turns the day&apos;s range of temperature into sunshine where none was measured: 0.16 inland, 0.19 at a coast.</source>
        <translation>जहाँ धूप नापी नहीं गई, वहाँ दिन के तापमान के फ़र्क से धूप का अंदाज़ा: अंदर के इलाकों में 0.16, समुद्र किनारे 0.19।</translation>
    </message>
    <message>
        <source>What to do with years in which days or values of the record are missing.</source>
        <translation>जिन सालों के रिकॉर्ड में दिन या आँकड़े छूटे हैं, उनका क्या करें।</translation>
    </message>
    <message>
        <source>In how many of ten years there shall be water on every day; ask those who live from the beds.</source>
        <translation>दस में से कितने साल हर दिन पानी होना चाहिए; उनसे पूछें जिनका गुज़ारा क्यारियों से चलता है।</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>Runs each day</source>
        <translation>रोज़ चलता है</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>महीना</translation>
    </message>
    <message>
        <source>Vessel holds</source>
        <translation>बर्तन में आता है</translation>
    </message>
    <message>
        <source>Time to fill</source>
        <translation>भरने का समय</translation>
    </message>
    <message>
        <source>Roof area</source>
        <translation>छत का क्षेत्रफल</translation>
    </message>
    <message>
        <source>Share of rain off the roof</source>
        <translation>छत की बारिश का हिस्सा</translation>
    </message>
    <message>
        <source>First flush off the roof</source>
        <translation>छत का पहला धोवन</translation>
    </message>
    <message>
        <source>Ground area</source>
        <translation>ज़मीन का क्षेत्रफल</translation>
    </message>
    <message>
        <source>Share of rain off the ground</source>
        <translation>ज़मीन की बारिश का हिस्सा</translation>
    </message>
    <message>
        <source>First flush off the ground</source>
        <translation>ज़मीन का पहला धोवन</translation>
    </message>
    <message>
        <source>Evaporation factor of open water</source>
        <translation>खुले पानी का भाप बनने का गुणांक</translation>
    </message>
    <message>
        <source>Evaporation stopped by a cover</source>
        <translation>ढक्कन से रुकी भाप</translation>
    </message>
    <message>
        <source>Seepage through the plaster</source>
        <translation>प्लास्टर से रिसाव</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>फसल</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>क्षेत्रफल</translation>
    </message>
    <message>
        <source>Planted, month</source>
        <translation>बुआई, महीना</translation>
    </message>
    <message>
        <source>Planted, day</source>
        <translation>बुआई, दिन</translation>
    </message>
    <message>
        <source>Watered by</source>
        <translation>सिंचाई का तरीका</translation>
    </message>
    <message>
        <source>Reaches the roots</source>
        <translation>जड़ों तक पहुँचता</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>पशु</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>कितने</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>हर एक पीता है</translation>
    </message>
    <message>
        <source>People who use the water</source>
        <translation>पानी लेने वाले लोग</translation>
    </message>
    <message>
        <source>Water for each person</source>
        <translation>हर व्यक्ति का पानी</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>नाम</translation>
    </message>
    <message>
        <source>Kc, first stage</source>
        <translation>Kc, शुरुआत</translation>
    </message>
    <message>
        <source>Kc, mid season</source>
        <translation>Kc, बीच</translation>
    </message>
    <message>
        <source>Kc, last day</source>
        <translation>Kc, आखिरी दिन</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>ऊँचाई</translation>
    </message>
    <message>
        <source>First stage</source>
        <translation>शुरुआत</translation>
    </message>
    <message>
        <source>Growing stage</source>
        <translation>बढ़वार</translation>
    </message>
    <message>
        <source>Mid season</source>
        <translation>बीच</translation>
    </message>
    <message>
        <source>Late season</source>
        <translation>आखिर</translation>
    </message>
    <message>
        <source>Root depth</source>
        <translation>जड़ों की गहराई</translation>
    </message>
    <message>
        <source>Share used before stress</source>
        <translation>तंगी से पहले लिया हिस्सा</translation>
    </message>
    <message>
        <source>Water the soil of the beds holds</source>
        <translation>क्यारी की मिट्टी में रुकता पानी</translation>
    </message>
    <message>
        <source>Weather known as</source>
        <translation>मौसम की जानकारी</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>बारिश</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>बारिश के दिन</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>नमी</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>हवा</translation>
    </message>
    <message>
        <source>Sunshine</source>
        <translation>धूप</translation>
    </message>
    <message>
        <source>Spread of yearly rain</source>
        <translation>सालाना बारिश का फैलाव</translation>
    </message>
    <message>
        <source>Weather years to make</source>
        <translation>कितने मौसम के साल बनाएँ</translation>
    </message>
    <message>
        <source>Number that starts the draw</source>
        <translation>ड्रॉ की शुरुआती संख्या</translation>
    </message>
    <message>
        <source>Reference evapotranspiration by</source>
        <translation>संदर्भ वाष्पोत्सर्जन किससे</translation>
    </message>
    <message>
        <source>Radiation factor kRs</source>
        <translation>विकिरण गुणांक kRs</translation>
    </message>
    <message>
        <source>Gaps in the record</source>
        <translation>रिकॉर्ड में खाली जगहें</translation>
    </message>
    <message>
        <source>Good years wanted in ten</source>
        <translation>दस में चाहे गए अच्छे साल</translation>
    </message>
    <message>
        <source>Tomato</source>
        <translation>टमाटर</translation>
    </message>
    <message>
        <source>Sweet pepper</source>
        <translation>शिमला मिर्च</translation>
    </message>
    <message>
        <source>Aubergine (eggplant)</source>
        <translation>बैंगन</translation>
    </message>
    <message>
        <source>Potato</source>
        <translation>आलू</translation>
    </message>
    <message>
        <source>Onion, for bulbs</source>
        <translation>प्याज़ (गाँठ)</translation>
    </message>
    <message>
        <source>Onion, green</source>
        <translation>हरी प्याज़</translation>
    </message>
    <message>
        <source>Garlic</source>
        <translation>लहसुन</translation>
    </message>
    <message>
        <source>Cabbage</source>
        <translation>बंदगोभी</translation>
    </message>
    <message>
        <source>Cauliflower</source>
        <translation>फूलगोभी</translation>
    </message>
    <message>
        <source>Broccoli</source>
        <translation>ब्रोकली</translation>
    </message>
    <message>
        <source>Carrot</source>
        <translation>गाजर</translation>
    </message>
    <message>
        <source>Lettuce</source>
        <translation>सलाद पत्ता</translation>
    </message>
    <message>
        <source>Spinach</source>
        <translation>पालक</translation>
    </message>
    <message>
        <source>Radish</source>
        <translation>मूली</translation>
    </message>
    <message>
        <source>Cucumber</source>
        <translation>खीरा</translation>
    </message>
    <message>
        <source>Beans, green</source>
        <translation>हरी फलियाँ (फ्रासबीन)</translation>
    </message>
    <message>
        <source>Beans, dry</source>
        <translation>सूखी फलियाँ (राजमा)</translation>
    </message>
    <message>
        <source>Peas</source>
        <translation>मटर</translation>
    </message>
    <message>
        <source>Lentils</source>
        <translation>मसूर</translation>
    </message>
    <message>
        <source>Maize, for grain</source>
        <translation>मक्का (दाना)</translation>
    </message>
    <message>
        <source>Maize, sweet</source>
        <translation>स्वीट कॉर्न</translation>
    </message>
    <message>
        <source>Winter wheat</source>
        <translation>जाड़े का गेहूँ</translation>
    </message>
    <message>
        <source>Barley</source>
        <translation>जौ</translation>
    </message>
    <message>
        <source>Millet</source>
        <translation>मंडुआ-बाजरा</translation>
    </message>
    <message>
        <source>Citrus trees</source>
        <translation>नींबू-संतरे के पेड़</translation>
    </message>
    <message>
        <source>Fruit trees that shed their leaves</source>
        <translation>पत्ते झाड़ने वाले फलदार पेड़</translation>
    </message>
    <message>
        <source>metal sheet roof</source>
        <translation>टिन की छत</translation>
    </message>
    <message>
        <source>tiled or slate roof</source>
        <translation>खपरैल या स्लेट की छत</translation>
    </message>
    <message>
        <source>thatched roof</source>
        <translation>फूस की छत</translation>
    </message>
    <message>
        <source>bare ground</source>
        <translation>खाली ज़मीन</translation>
    </message>
    <message>
        <source>pasture</source>
        <translation>चरागाह</translation>
    </message>
    <message>
        <source>tilled ground</source>
        <translation>जुता खेत</translation>
    </message>
    <message>
        <source>first flush off a roof</source>
        <translation>छत का पहला धोवन</translation>
    </message>
    <message>
        <source>first flush off ground</source>
        <translation>ज़मीन का पहला धोवन</translation>
    </message>
    <message>
        <source>open water</source>
        <translation>खुला पानी</translation>
    </message>
    <message>
        <source>shade cloth, one layer</source>
        <translation>शेड नेट, एक परत</translation>
    </message>
    <message>
        <source>shade cloth, two layers</source>
        <translation>शेड नेट, दो परत</translation>
    </message>
    <message>
        <source>seepage through the plaster</source>
        <translation>प्लास्टर से रिसाव</translation>
    </message>
    <message>
        <source>one person</source>
        <translation>एक व्यक्ति</translation>
    </message>
    <message>
        <source>%1: median %2 of %3, from %4 to %5.</source>
        <translation>%1: %3 में बीच का मान %2, %4 से %5 तक।</translation>
    </message>
    <message>
        <source>Apart from the others: row %1.</source>
        <translation>बाकी से अलग: पंक्ति %1।</translation>
    </message>
    <message>
        <source>%1 reading</source>
        <translation>%1 नाप</translation>
    </message>
    <message numerus="yes">
        <source>%1 readings</source>
        <translation>
            <numerusform>%1 नाप</numerusform>
            <numerusform>%1 नाप</numerusform>
        </translation>
    </message>
    <message>
        <source>A daily record is a table with the columns date (year-month-day), rain_mm, t_min_c, t_max_c and, where measured, wind_m_s, humidity_percent, sun_hours. Gaps are reported and never filled silently.</source>
        <translation>रोज़ का रिकॉर्ड एक तालिका है जिसमें ये कॉलम होते हैं: date (साल-महीना-दिन), rain_mm, t_min_c, t_max_c और जहाँ नापा गया हो wind_m_s, humidity_percent, sun_hours। खाली जगहें बताई जाती हैं, चुपचाप कभी नहीं भरी जातीं।</translation>
    </message>
    <message>
        <source>The project holds a daily record from %1 to %2, %3.</source>
        <translation>प्रोजेक्ट में %1 से %2 तक का रोज़ का रिकॉर्ड है, %3।</translation>
    </message>
    <message>
        <source>It is not used now: the weather comes from monthly means.</source>
        <translation>अभी यह काम में नहीं लिया जा रहा: मौसम महीनों के औसत से आता है।</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 और %2</translation>
    </message>
    <message>
        <source>Whether a fence on all four sides, a gate that shuts itself and a ladder or rope to climb out are part of the work.</source>
        <translation>चारों ओर बाड़, अपने आप बंद होने वाला गेट और बाहर निकलने की सीढ़ी या रस्सी इस निर्माण में शामिल हैं या नहीं।</translation>
    </message>
    <message>
        <source>Whether runoff from roof or ground passes a silt trap before it enters the tank.</source>
        <translation>छत या ज़मीन से बहकर आया पानी टंकी में जाने से पहले गाद कुंडी से होकर जाता है या नहीं।</translation>
    </message>
    <message>
        <source>Name of the licensed engineer who answers for building although a finding says stop. Counts only with licence, reason and date, and is printed on the sheets.</source>
        <translation>उस लाइसेंसधारी इंजीनियर का नाम जो &quot;रुकें&quot; की बात होने पर भी बनाने का ज़िम्मा लेता है। लाइसेंस, कारण और तारीख के साथ ही माना जाता है, और शीटों पर छपता है।</translation>
    </message>
    <message>
        <source>Number or register of the engineer&apos;s licence.</source>
        <translation>इंजीनियर के लाइसेंस का नंबर या रजिस्टर।</translation>
    </message>
    <message>
        <source>What the engineer found and asks for, so that it may be built.</source>
        <translation>इंजीनियर ने क्या पाया और क्या करने को कहा, ताकि इसे बनाया जा सके।</translation>
    </message>
    <message>
        <source>Day on which the engineer decided.</source>
        <translation>जिस दिन इंजीनियर ने फ़ैसला किया।</translation>
    </message>
    <message>
        <source>Fence, gate and ladder planned</source>
        <translation>बाड़, गेट और सीढ़ी योजना में</translation>
    </message>
    <message>
        <source>Silt trap planned</source>
        <translation>गाद कुंडी योजना में</translation>
    </message>
    <message>
        <source>Override: engineer</source>
        <translation>ज़िम्मा: इंजीनियर</translation>
    </message>
    <message>
        <source>Override: licence</source>
        <translation>ज़िम्मा: लाइसेंस</translation>
    </message>
    <message>
        <source>Override: reason</source>
        <translation>ज़िम्मा: कारण</translation>
    </message>
    <message>
        <source>Override: date</source>
        <translation>ज़िम्मा: तारीख</translation>
    </message>
    <message>
        <source>holds fewer different points than a surface needs</source>
        <translation>ज़मीन की सतह बनाने जितने अलग-अलग बिंदु नहीं हैं</translation>
    </message>
    <message>
        <source>holds points that all lie on one line; survey some beside it</source>
        <translation>सारे बिंदु एक ही रेखा पर हैं; कुछ बगल में भी सर्वे करें</translation>
    </message>
    <message>
        <source>repeats an earlier point and is left out</source>
        <translation>पहले का बिंदु दोहराता है, इसलिए छोड़ दिया गया</translation>
    </message>
    <message>
        <source>stands far above or below the points around it; check its height</source>
        <translation>आसपास के बिंदुओं से बहुत ऊपर या नीचे है; इसकी ऊँचाई जाँचें</translation>
    </message>
    <message>
        <source>lies far from all other points; check its place</source>
        <translation>बाकी सब बिंदुओं से बहुत दूर है; इसकी जगह जाँचें</translation>
    </message>
    <message>
        <source>The soil is loose fill. Fill settles unevenly and cracks the lining: no floor or wall may stand on it. Choose a place in natural ground, or let a licensed engineer decide.</source>
        <translation>मिट्टी ढीला भराव है। भराव बराबर नहीं बैठता और लाइनिंग फाड़ देता है: इस पर न फ़र्श टिके, न दीवार। मूल ज़मीन में जगह चुनें, या लाइसेंसधारी इंजीनियर से फ़ैसला कराएँ।</translation>
    </message>
    <message>
        <source>The soil is soft and wet. It does not carry the lining and its cut does not stand. Choose a drier place, or let a licensed engineer decide.</source>
        <translation>मिट्टी नरम और गीली है। यह लाइनिंग का बोझ नहीं उठाती और इसका कटान खड़ा नहीं रहता। सूखी जगह चुनें, या लाइसेंसधारी इंजीनियर से फ़ैसला कराएँ।</translation>
    </message>
    <message>
        <source>Part of the floor is rock. The lining cracks where rock and earth meet: bed it evenly on stones all over, and break no rock without someone trained for it.</source>
        <translation>तले का एक हिस्सा चट्टान है। जहाँ चट्टान और मिट्टी मिलती हैं, वहाँ लाइनिंग फटती है: पूरे तले पर पत्थर बराबर बिछाएँ, और जिसने यह काम सीखा हो उसके बिना चट्टान न तोड़ें।</translation>
    </message>
    <message>
        <source>The soil holds %1 clay. From about %2 on, clay may swell when wet and crack the lining. Test it: dry a clod and see how far it shrinks.</source>
        <translation>मिट्टी में %1 चिकनी मिट्टी है। करीब %2 या उससे ज़्यादा हो तो वह भीगने पर फूलकर लाइनिंग फाड़ सकती है। जाँचें: एक ढेला सुखाकर देखें कि कितना सिकुड़ता है।</translation>
    </message>
    <message>
        <source>The pit is %1 deep and its walls lean back %2 for each unit of height; the published table asks for %3 in this soil. Slope the open cut back further, step it, or shore it. Local codes and licensed practice come first.</source>
        <translation>गड्ढा %1 गहरा है और इसकी दीवारें हर इकाई ऊँचाई पर %2 पीछे झुकी हैं; छपी तालिका इस मिट्टी में %3 माँगती है। खुले कटान को और पीछे ढलवाँ काटें, पैड़ीदार बनाएँ, या टेक लगाएँ। स्थानीय नियम और लाइसेंसधारी पेशेवर की राय सबसे पहले आती है।</translation>
    </message>
    <message>
        <source>The pit is %1 deep. In the weakest soil of this kind a cut with this batter is reckoned to stand to %2 only, with a safety of %3. Dig less deep, lean the walls back, shore them, or let a licensed engineer test the soil.</source>
        <translation>गड्ढा %1 गहरा है। हिसाब से, इस तरह की सबसे कमज़ोर मिट्टी में इस सलामी का कटान सिर्फ़ %2 गहराई तक खड़ा रहता है, सुरक्षा गुणांक %3 के साथ। कम गहरा खोदें, दीवारों को पीछे झुकाएँ, टेक लगाएँ, या लाइसेंसधारी इंजीनियर से मिट्टी की जाँच कराएँ।</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on look for cracks, springs, leaning trees and old slips before you choose the place.</source>
        <translation>ज़मीन की ढाल %1 है। %2 या उससे ज़्यादा ढाल पर, जगह चुनने से पहले दरारें, चश्मे, झुके पेड़ और पुरानी खिसकन देखें।</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on no tank is built without a licensed engineer: a leak can bring the slope down.</source>
        <translation>ज़मीन की ढाल %1 है। %2 या उससे ज़्यादा ढाल पर लाइसेंसधारी इंजीनियर के बिना कोई टंकी नहीं बनाई जाती: एक लीक पूरी ढलान को नीचे ला सकता है।</translation>
    </message>
    <message>
        <source>Distance and drop of the nearest edge downhill are not known, and not known is not safe. Measure both.</source>
        <translation>ढलान की ओर सबसे पास के किनारे की दूरी और उतार पता नहीं, और पता न होना सुरक्षित होना नहीं है। दोनों नापें।</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away. One rule (drop plus pit depth) asks for %2, another (a third of the drop, as for footings) for %3; they disagree here. Move the tank back if you can.</source>
        <translation>ढलान की ओर का किनारा %1 दूर है। एक नियम (उतार और गड्ढे की गहराई का जोड़) %2 माँगता है, दूसरा (उतार का तिहाई, जैसे नींव के लिए) %3; यहाँ दोनों मेल नहीं खाते। हो सके तो टंकी पीछे हटाएँ।</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away, nearer than both rules allow: %2 (drop plus pit depth) and %3 (a third of the drop, as for footings). Move the tank back, or let a licensed engineer decide.</source>
        <translation>ढलान की ओर का किनारा %1 दूर है, दोनों नियमों की छूट से भी पास: %2 (उतार और गड्ढे की गहराई का जोड़) और %3 (उतार का तिहाई, जैसे नींव के लिए)। टंकी पीछे हटाएँ, या लाइसेंसधारी इंजीनियर से फ़ैसला कराएँ।</translation>
    </message>
    <message>
        <source>The depth of ground water is not known, and not known is not safe: it can lift an empty tank. Ask how high wells and springs stand in the rains.</source>
        <translation>भूजल की गहराई पता नहीं, और पता न होना सुरक्षित होना नहीं है: भूजल खाली टंकी को उठा सकता है। पूछें कि बरसात में कुएँ और चश्मे कितने ऊपर रहते हैं।</translation>
    </message>
    <message>
        <source>Never let the water sink below %1 above the floor then.</source>
        <translation>तब टंकी में पानी फ़र्श से %1 ऊँचाई से कम कभी न होने दें।</translation>
    </message>
    <message>
        <source>Not even a full tank would hold it down.</source>
        <translation>पूरी भरी टंकी भी उसे दबाकर नहीं रख पाएगी।</translation>
    </message>
    <message>
        <source>Ground water stands %1 over the underside of the floor and lifts the empty tank: its weight is %2 of the lift, %3 is wanted.</source>
        <translation>भूजल फ़र्श की निचली सतह से %1 ऊपर है और खाली टंकी को उठाता है: टंकी का वज़न उठान का %2 है, चाहिए %3।</translation>
    </message>
    <message>
        <source>Whether a house lies downhill is not known, and not known is not safe. Walk the way that escaping water would take.</source>
        <translation>ढलान की ओर नीचे कोई घर है या नहीं, पता नहीं, और पता न होना सुरक्षित होना नहीं है। जिस रास्ते से छूटा पानी जाएगा, उस पर चलकर देखें।</translation>
    </message>
    <message>
        <source>A house lies %1 downhill, within %2. Lead the overflow, and the way of the water if the tank breaks, past it, or choose another place.</source>
        <translation>ढलान की ओर %1 नीचे एक घर है, जो %2 के भीतर है। ओवरफ्लो का पानी और टंकी टूटने पर पानी का रास्ता उससे बचाकर ले जाएँ, या दूसरी जगह चुनें।</translation>
    </message>
    <message>
        <source>Small children live near and no fence is planned. A child drowns in silence and cannot climb a smooth wall: plan a fence on all four sides with a gate that shuts itself, and a ladder or rope to climb out.</source>
        <translation>पास में छोटे बच्चे रहते हैं और बाड़ योजना में नहीं है। बच्चा चुपचाप डूब जाता है और चिकनी दीवार पर चढ़ नहीं सकता: चारों ओर बाड़, अपने आप बंद होने वाला गेट, और बाहर निकलने की सीढ़ी या रस्सी योजना में रखें।</translation>
    </message>
    <message>
        <source>Whether small children live within 20 m is not known, and not known is not safe. Plan the fence, or ask.</source>
        <translation>20 m के भीतर छोटे बच्चे रहते हैं या नहीं, पता नहीं, और पता न होना सुरक्षित होना नहीं है। बाड़ योजना में रखें, या पूछ लें।</translation>
    </message>
    <message>
        <source>Runoff is led in and no silt trap is planned. Silt fills the tank and wears the lining: plan a trap and a way to let the first rain go.</source>
        <translation>बहकर आया पानी टंकी में लाया जाता है और गाद कुंडी योजना में नहीं है। गाद टंकी को भर देती है और लाइनिंग घिसती है: गाद कुंडी और पहली बारिश को बाहर छोड़ने का रास्ता योजना में रखें।</translation>
    </message>
    <message>
        <source>In %1 the mean lowest temperature is %2. Do not plaster or cure in frost, and ask locally whether ice has broken linings.</source>
        <translation>%1 में सबसे कम तापमान का औसत %2 है। पाले में न प्लास्टर करें, न तराई, और आसपास पूछें कि बर्फ़ से लाइनिंग फटी है या नहीं।</translation>
    </message>
    <message>
        <source>Water is missing all year round; most often in %1.</source>
        <translation>पानी की कमी साल भर होती है; सबसे ज़्यादा बार %1 में।</translation>
    </message>
    <message>
        <source>Full at the start of %1, when it is used up fastest, and with nothing more flowing in, the tank lasts %2.</source>
        <translation>%1 की शुरुआत में, जब पानी सबसे जल्दी खत्म होता है, टंकी भरी हो और फिर कुछ न आए, तो टंकी %2 चलती है।</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, gives as many good years as are wanted.</source>
        <translation>इस गहराई और सलामी की, %1 तक की, किसी टंकी से उतने अच्छे साल नहीं मिलते जितने चाहिए।</translation>
    </message>
    <message>
        <source>To give as many good years as are wanted, a tank of this depth has to hold about %1.</source>
        <translation>जितने अच्छे साल चाहिए उतने पाने के लिए, इस गहराई की टंकी में करीब %1 पानी आना चाहिए।</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, would reach it: lead in more water, or need less.</source>
        <translation>इस गहराई और सलामी की, %1 तक की, किसी टंकी से यह पूरा नहीं होगा: और पानी लाएँ, या ज़रूरत घटाएँ।</translation>
    </message>
    <message>
        <source>The yearly rain of the weather years made differs by %1; a spread of %2 is entered. Check the spread and the wet days, or have more years made.</source>
        <translation>बनाए गए मौसम के सालों में सालाना बारिश का फ़र्क %1 है; भरा गया फैलाव %2 है। फैलाव और बारिश के दिन जाँचें, या और साल बनवाएँ।</translation>
    </message>
    <message>
        <source>Weather years made from the monthly means: %1. Have at least %2 made to see how often the water runs short.</source>
        <translation>महीनों के औसत से बने मौसम के साल: %1। पानी कितनी बार कम पड़ता है, यह देखने के लिए कम से कम %2 बनवाएँ।</translation>
    </message>
    <message>
        <source>Reference evapotranspiration of a mean year is %1 by Penman-Monteith and %2 by Hargreaves. Enter or check humidity, wind and sunshine, which only the first one uses.</source>
        <translation>औसत साल का संदर्भ वाष्पोत्सर्जन Penman-Monteith से %1 और Hargreaves से %2 है। नमी, हवा और धूप भरें या जाँचें, जिन्हें सिर्फ़ पहला काम में लेता है।</translation>
    </message>
    <message>
        <source>Mean daily lowest</source>
        <translation>रोज़ के सबसे कम का औसत</translation>
    </message>
    <message>
        <source>Mean daily highest</source>
        <translation>रोज़ के सबसे ज़्यादा का औसत</translation>
    </message>
    <message>
        <source>The record holds no whole year without gaps, counted from its wettest month. Add days, or have gaps filled in.</source>
        <translation>सबसे ज़्यादा बारिश वाले महीने से गिनें, तो रिकॉर्ड में बिना खाली जगह का एक भी पूरा साल नहीं है। दिन जोड़ें, या खाली जगहें भरवाएँ।</translation>
    </message>
    <message>
        <source>Reckoned with: %1.</source>
        <translation>हिसाब में लिया: %1।</translation>
    </message>
    <message>
        <source>tank in natural ground</source>
        <translation>टंकी मूल ज़मीन में</translation>
    </message>
    <message>
        <source>cut and fill balanced</source>
        <translation>कटान और भराव बराबर</translation>
    </message>
    <message>
        <source>open end of the pipe</source>
        <translation>पाइप का खुला सिरा</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>नल</translation>
    </message>
    <message>
        <source>low-head drip kit</source>
        <translation>कम हेड वाली ड्रिप किट</translation>
    </message>
    <message>
        <source>drip lines at full pressure</source>
        <translation>पूरे दबाव की ड्रिप</translation>
    </message>
    <message>
        <source>micro-sprinkler</source>
        <translation>छोटा फव्वारा (माइक्रो)</translation>
    </message>
    <message>
        <source>notch in the rim</source>
        <translation>मुंडेर में खाँचा</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>पाइप</translation>
    </message>
    <message>
        <source>bare soil</source>
        <translation>खाली मिट्टी</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>घास</translation>
    </message>
    <message>
        <source>stone pitching</source>
        <translation>पत्थर की पिचिंग</translation>
    </message>
    <message>
        <source>plaster</source>
        <translation>प्लास्टर</translation>
    </message>
    <message>
        <source>the line from the source</source>
        <translation>स्रोत से आती लाइन</translation>
    </message>
    <message>
        <source>the line to the field</source>
        <translation>खेत को जाती लाइन</translation>
    </message>
    <message>
        <source>Water does not flow as it should through %1: %2.</source>
        <translation>%1 – पानी वैसे नहीं बहता जैसे बहना चाहिए: %2।</translation>
    </message>
    <message>
        <source>With the outlet shut, the water in %1 presses with %2; the pipe bears %3. Take a stronger class, or let the water fall into an open tank on the way, which breaks the pressure.</source>
        <translation>%1 – निकास बंद हो तो पानी का दबाव %2 है; पाइप %3 सहता है। ज़्यादा मज़बूत प्रेशर क्लास लें, या पानी को रास्ते में एक खुली टंकी में गिराएँ, जिससे दबाव टूट जाए।</translation>
    </message>
    <message>
        <source>In %1, at %2 along it, the pressure head would sink to %3; under %4 the column of water parts and the flow reckoned does not come about. Lay the pipe lower there, or throttle it at its end.</source>
        <translation>%1 – %2 दूरी पर दबाव का हेड गिरकर %3 रह जाएगा; %4 से नीचे पानी का खंभा टूट जाता है और हिसाब वाला बहाव नहीं बनता। पाइप को वहाँ नीचे बिछाएँ, या आखिरी सिरे पर वाल्व से बहाव घटाएँ।</translation>
    </message>
    <message>
        <source>From %2 to %3 along %1 the pipe lies above the line of heads and sucks, down to %4 of pressure head: air gathers, and a leak draws in dirt. Lay it lower there, or throttle the line at its end.</source>
        <translation>%1 – %2 से %3 तक पाइप हेड की रेखा से ऊपर है और सक्शन में है, दबाव का हेड %4 तक गिरता है: हवा जमा होती है, और लीक से गंदगी अंदर खिंचती है। पाइप को वहाँ नीचे बिछाएँ, या लाइन के आखिरी सिरे पर वाल्व से बहाव घटाएँ।</translation>
    </message>
    <message>
        <source>Air behind the high points of %1, the first at %2 along it, can hold back %3 of head; there are only %4 to drive the water, so it may not start to flow. Lay the pipe with a steady fall, or put an air valve on each high point.</source>
        <translation>%1 – ऊँची जगहों के पीछे की हवा, पहली %2 दूरी पर, %3 हेड रोक सकती है; पानी चलाने के लिए सिर्फ़ %4 है, इसलिए हो सकता है पानी चले ही नहीं। पाइप को बराबर ढाल में बिछाएँ, या हर ऊँची जगह पर एयर वाल्व लगाएँ।</translation>
    </message>
    <message>
        <source>No pipe of the table brings that much and bears the pressure: find more fall, or break the pressure on the way.</source>
        <translation>तालिका का कोई पाइप इतना पानी लाकर दबाव नहीं सहता: ज़्यादा ढाल ढूँढें, या रास्ते में दबाव तोड़ें।</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter would bring it.</source>
        <translation>%1 बाहरी व्यास के पाइप से यह आ जाएगा।</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter, class %2, would bring it.</source>
        <translation>%1 बाहरी व्यास, प्रेशर क्लास %2 के पाइप से यह आ जाएगा।</translation>
    </message>
    <message>
        <source>Only %2 come through %1; %3 are wanted.</source>
        <translation>%1 – सिर्फ़ %2 आता है; चाहिए %3।</translation>
    </message>
    <message>
        <source>The pipe to the field goes through the lining. A tank of plaster leaks first where a pipe passes it, and the leak soaks the ground below. A siphon over the rim needs no hole.</source>
        <translation>खेत का पाइप लाइनिंग में से निकलता है। प्लास्टर की टंकी सबसे पहले वहीं लीक करती है जहाँ पाइप निकलता है, और लीक नीचे की ज़मीन को भिगो देता है। मुंडेर के ऊपर से साइफन में छेद नहीं करना पड़ता।</translation>
    </message>
    <message>
        <source>The top of the siphon lies %1 above the water; at this height above the sea it can be %2 at most. Lay the top nearer to the rim, or let the water sink less deep.</source>
        <translation>साइफन का सबसे ऊँचा हिस्सा पानी से %1 ऊपर है; समुद्र तल से इस ऊँचाई पर ज़्यादा से ज़्यादा %2 हो सकता है। उसे मुंडेर के और पास रखें, या पानी कम उतरने दें।</translation>
    </message>
    <message>
        <source>The siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Lay the top lower.</source>
        <translation>साइफन टूट जाता है: उसका सबसे ऊँचा हिस्सा पानी से %1 ऊपर है, और पाइप में वहाँ सक्शन बहुत ज़्यादा है। उसे नीचे रखें।</translation>
    </message>
    <message>
        <source>Wide open, the siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Put a valve at its lower end and open it to %2 at most, or lay the top lower.</source>
        <translation>पूरा खुला हो तो साइफन टूट जाता है: उसका सबसे ऊँचा हिस्सा पानी से %1 ऊपर है, और पाइप में वहाँ सक्शन बहुत ज़्यादा है। निचले सिरे पर वाल्व लगाएँ और उसे ज़्यादा से ज़्यादा %2 तक खोलें, या ऊँचा हिस्सा नीचे रखें।</translation>
    </message>
    <message>
        <source>Water runs through the siphon at %1; under %2 it does not carry air down, which gathers at the top and stops it in time. Take a narrower pipe, or put a plug at the top to fill it anew.</source>
        <translation>साइफन में पानी %1 की गति से बहता है; %2 से कम पर वह हवा को नीचे नहीं ले जाता, जो ऊपर जमा होकर धीरे-धीरे साइफन रोक देती है। पतला पाइप लें, या फिर से भरने के लिए सबसे ऊँचे हिस्से पर डाट लगाएँ।</translation>
    </message>
    <message>
        <source>The outlet chosen (%1) wants a head of %2. Left are %3 with the tank full and %4 when it is nearly empty: %5. Lay the end of the line lower, take a wider pipe, or choose an outlet that needs less.</source>
        <translation>चुने गए निकास (%1) को %2 हेड चाहिए। टंकी भरी हो तो %3 बचता है और लगभग खाली हो तो %4: %5। लाइन का सिरा नीचे रखें, मोटा पाइप लें, या ऐसा निकास चुनें जिसे कम हेड चाहिए।</translation>
    </message>
    <message>
        <source>How hard it rains here at worst is not known; the overflow is reckoned for %1. Ask the weather station for the heaviest rain of ten minutes or a quarter of an hour.</source>
        <translation>यहाँ सबसे तेज़ बारिश कितनी होती है, पता नहीं; ओवरफ्लो का हिसाब %1 मानकर लगाया गया है। मौसम केंद्र से दस मिनट या पाव घंटे की सबसे भारी बारिश पूछें।</translation>
    </message>
    <message>
        <source>A notch %1 wide would leave it.</source>
        <translation>%1 चौड़े खाँचे से यह बचा रहेगा।</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would leave it.</source>
        <translation>%1 भीतरी व्यास के ओवरफ्लो पाइप से यह बचा रहेगा।</translation>
    </message>
    <message>
        <source>Give more freeboard, or lead less water in during a storm.</source>
        <translation>फ्रीबोर्ड बढ़ाएँ, या मूसलाधार बारिश में कम पानी आने दें।</translation>
    </message>
    <message>
        <source>If leaves block the overflow, water runs over the rim anywhere, up to %1 deep, and nobody knows where it goes. Lay a part of the rim lower, on the side where it does no harm.</source>
        <translation>पत्तों से ओवरफ्लो रुक जाए तो पानी मुंडेर के ऊपर से कहीं से भी बहता है, %1 तक गहरा, और कोई नहीं जानता कि वह कहाँ जाएगा। मुंडेर का एक हिस्सा नीचा रखें, उस ओर जहाँ पानी नुकसान न करे।</translation>
    </message>
    <message>
        <source>In a storm the water in the spill path would stand %1 deep; the channel is %2 deep. Dig it deeper or wider.</source>
        <translation>मूसलाधार बारिश में निकास की नाली में पानी %1 गहरा होगा; नाली %2 गहरी है। उसे और गहरी या चौड़ी खोदें।</translation>
    </message>
    <message>
        <source>In a storm the water runs down the spill path at %1 and may dig itself in: %2 bears about %3. Make the path wider or flatter, or pave it with stones.</source>
        <translation>मूसलाधार बारिश में पानी निकास की नाली में %1 की गति से उतरता है और उसे काट सकता है: नाली की सतह (%2) करीब %3 सहती है। नाली चौड़ी या कम ढाल की बनाएँ, या उसमें पत्थर बिछाएँ।</translation>
    </message>
    <message>
        <source>Make it deeper, longer or wider, or lead less water through it.</source>
        <translation>इसे गहरी, लंबी या चौड़ी बनाएँ, या इसमें से कम पानी ले जाएँ।</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside would hold them.</source>
        <translation>भीतर से %1 लंबी और %2 चौड़ी गाद कुंडी उन्हें रोक लेगी।</translation>
    </message>
    <message>
        <source>The silt trap holds grains down to %1 back; it should hold those of %2 too.</source>
        <translation>गाद कुंडी %1 तक के कण रोकती है; उसे %2 के कण भी रोकने चाहिए।</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2. Look for cracks and for wet ground below it, and test again in some weeks.</source>
        <translation>टंकी %1 लीक करती है, करीब %2। दरारें और उसके नीचे गीली ज़मीन देखें, और कुछ हफ़्ते बाद फिर जाँचें।</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2.</source>
        <translation>टंकी %1 लीक करती है, करीब %2।</translation>
    </message>
    <message>
        <source>That can soften the ground below it: let no more water in, empty it and mend it.</source>
        <translation>इससे नीचे की ज़मीन नरम पड़ सकती है: और पानी न आने दें, टंकी खाली करें और मरम्मत करें।</translation>
    </message>
    <message>
        <source>Let the water sink until it stops: the leak is at that height. Mend the cracks there.</source>
        <translation>पानी को उतरने दें जब तक वह अपने आप रुक न जाए: लीक उसी ऊँचाई पर है। वहाँ की दरारें भरें।</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained %1, more than the readings&apos; error of %2: water ran in, or a reading is wrong. Shut all inlets and test again in dry weather.</source>
        <translation>बाल्टी के मुकाबले टंकी में %1 बढ़ा, जो नाप की चूक %2 से ज़्यादा है: पानी अंदर आया, या कोई नाप गलत है। आमद के सब मुँह बंद करें और सूखे मौसम में फिर जाँचें।</translation>
    </message>
    <message>
        <source>The leak test shows %1, no more than the readings&apos; error of %2, so it tells nothing. Let it run longer.</source>
        <translation>लीक जाँच में %1 आया, जो नाप की चूक %2 से ज़्यादा नहीं है, इसलिए इससे कुछ पता नहीं चलता। जाँच को और देर चलने दें।</translation>
    </message>
    <message>
        <source>Of the water in the line, by thermometer; cold water flows a little slower, and over 20 °C plastic pipe bears less.</source>
        <translation>लाइन के पानी का, थर्मामीटर से; ठंडा पानी थोड़ा धीमा बहता है, और 20 °C से ऊपर प्लास्टिक पाइप कम दबाव सहता है।</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from its inlet at the source to this point; measure with a tape held level.</source>
        <translation>स्रोत पर आमद के मुँह से इस बिंदु तक पाइप के रास्ते पर समतल दूरी; फीता समतल पकड़कर नापें।</translation>
    </message>
    <message>
        <source>Height of the pipe at this point over the rim of the tank, by water level tube; a point lower than the rim is negative.</source>
        <translation>इस बिंदु पर पाइप टंकी की मुंडेर से कितना ऊपर है, पानी की लेवल नली से; मुंडेर से नीचे का बिंदु ऋण (−) में।</translation>
    </message>
    <message>
        <source>Depth of water over the middle of the pipe&apos;s inlet at the source when it is lowest.</source>
        <translation>पानी सबसे कम हो तब स्रोत पर पाइप के मुँह के बीच से ऊपर पानी की गहराई।</translation>
    </message>
    <message>
        <source>What the line shall bring, at most what the source gives. Leave empty if anything will do.</source>
        <translation>लाइन को जितना लाना है, ज़्यादा से ज़्यादा उतना जितना स्रोत देता है। जितना भी आए चलेगा, तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe from the source.</source>
        <translation>पॉलीथीन की मज़बूती, स्रोत के पाइप पर लिखी होती है।</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe from the source; it is printed along it.</source>
        <translation>दुकान वाला स्रोत के पाइप का जो नाप बताता है; पाइप पर लिखा होता है।</translation>
    </message>
    <message>
        <source>Pressure that the pipe from the source is made for, printed on it as PN.</source>
        <translation>स्रोत का पाइप जितने दबाव के लिए बना है, उस पर PN के रूप में लिखा होता है।</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe from the source, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>स्रोत के पाइप का भीतरी व्यास, साफ़ कटे सिरे पर नापा हुआ। पाइपों की तालिका से लेना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between source and tank; the pipe&apos;s own wide curves do not count.</source>
        <translation>स्रोत और टंकी के बीच फिटिंग वाले तीखे मोड़; पाइप के अपने चौड़े मोड़ नहीं गिने जाते।</translation>
    </message>
    <message>
        <source>Valves between source and tank, reckoned wide open.</source>
        <translation>स्रोत और टंकी के बीच के वाल्व, हिसाब में पूरे खुले।</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from where it leaves the tank to this point; measure with a tape held level.</source>
        <translation>जहाँ पाइप टंकी से निकलता है वहाँ से इस बिंदु तक पाइप के रास्ते पर समतल दूरी; फीता समतल पकड़कर नापें।</translation>
    </message>
    <message>
        <source>Height of the field pipe at this point over the rim of the tank, by water level tube; most points lie lower and are negative.</source>
        <translation>इस बिंदु पर खेत का पाइप टंकी की मुंडेर से कितना ऊपर है, पानी की लेवल नली से; ज़्यादातर बिंदु नीचे होते हैं और ऋण (−) में।</translation>
    </message>
    <message>
        <source>Whether the pipe climbs over the rim and works as a siphon; else it goes through the lining, where tanks leak first.</source>
        <translation>पाइप मुंडेर के ऊपर चढ़कर साइफन का काम करता है या नहीं; नहीं तो वह लाइनिंग में से निकलता है, जहाँ टंकियाँ सबसे पहले लीक करती हैं।</translation>
    </message>
    <message>
        <source>Height of the middle of the pipe over the rim where it is highest; the lower, the better it runs.</source>
        <translation>पाइप जहाँ सबसे ऊँचा है, वहाँ मुंडेर से पाइप के बीच की ऊँचाई; जितनी कम, उतना अच्छा चलता है।</translation>
    </message>
    <message>
        <source>What stands at the end of the line; each kind needs its own head of water.</source>
        <translation>लाइन के सिरे पर क्या लगा है; हर किस्म को पानी का अपना हेड चाहिए।</translation>
    </message>
    <message>
        <source>How many of them run at the same time.</source>
        <translation>एक साथ कितने चलते हैं।</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe to the field.</source>
        <translation>पॉलीथीन की मज़बूती, खेत के पाइप पर लिखी होती है।</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe to the field; it is printed along it.</source>
        <translation>दुकान वाला खेत के पाइप का जो नाप बताता है; पाइप पर लिखा होता है।</translation>
    </message>
    <message>
        <source>Pressure that the pipe to the field is made for, printed on it as PN.</source>
        <translation>खेत का पाइप जितने दबाव के लिए बना है, उस पर PN के रूप में लिखा होता है।</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe to the field, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>खेत के पाइप का भीतरी व्यास, साफ़ कटे सिरे पर नापा हुआ। पाइपों की तालिका से लेना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between tank and field, those at the rim counted; the pipe&apos;s own wide curves do not count.</source>
        <translation>टंकी और खेत के बीच फिटिंग वाले तीखे मोड़, मुंडेर वाले भी गिनकर; पाइप के अपने चौड़े मोड़ नहीं गिने जाते।</translation>
    </message>
    <message>
        <source>Valves between tank and field, reckoned wide open.</source>
        <translation>टंकी और खेत के बीच के वाल्व, हिसाब में पूरे खुले।</translation>
    </message>
    <message>
        <source>Where spare water leaves: a notch in the rim, or a pipe below it.</source>
        <translation>फालतू पानी कहाँ से निकलता है: मुंडेर के खाँचे से, या उसके नीचे लगे पाइप से।</translation>
    </message>
    <message>
        <source>Clear width of the notch along the rim; its sill lies at the overflow level.</source>
        <translation>मुंडेर पर खाँचे की भीतरी चौड़ाई; उसकी दहलीज ओवरफ्लो के स्तर पर होती है।</translation>
    </message>
    <message>
        <source>Inside diameter of the overflow pipe; its inside bottom lies at the overflow level.</source>
        <translation>ओवरफ्लो पाइप का भीतरी व्यास; उसकी अंदर की निचली सतह ओवरफ्लो के स्तर पर होती है।</translation>
    </message>
    <message>
        <source>From its inlet in the tank to where it ends over the spill path.</source>
        <translation>टंकी में उसके मुँह से लेकर निकास की नाली के ऊपर उसके सिरे तक।</translation>
    </message>
    <message>
        <source>How much lower the end of the overflow pipe lies than its inlet.</source>
        <translation>ओवरफ्लो पाइप का सिरा उसके मुँह से कितना नीचे है।</translation>
    </message>
    <message>
        <source>Heaviest rain that falls here in some minutes, counted for an hour; ask the weather station. Leave empty if not known.</source>
        <translation>यहाँ कुछ मिनटों में जो सबसे भारी बारिश होती है, एक घंटे के हिसाब से; मौसम केंद्र से पूछें। पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Length of rim laid a little lower, so that water leaves there and nowhere else when the overflow is blocked; 0 for none.</source>
        <translation>मुंडेर का जितना हिस्सा थोड़ा नीचा रखा है, ताकि ओवरफ्लो रुक जाए तो पानी वहीं से निकले और कहीं से नहीं; न हो तो 0।</translation>
    </message>
    <message>
        <source>How much lower this part of the rim is laid; check it with water in a clear tube.</source>
        <translation>मुंडेर का यह हिस्सा कितना नीचा रखा है; पारदर्शी नली में पानी भरकर जाँचें।</translation>
    </message>
    <message>
        <source>Width of the bed of the channel that leads spare water away from the tank.</source>
        <translation>टंकी से फालतू पानी दूर ले जाने वाली नाली की पेंदी की चौड़ाई।</translation>
    </message>
    <message>
        <source>Depth of this channel from its edge down to its bed.</source>
        <translation>इस नाली की गहराई, किनारे से पेंदी तक।</translation>
    </message>
    <message>
        <source>How far each side of the channel leans outward for each unit of height; 0 is upright.</source>
        <translation>हर इकाई ऊँचाई पर नाली का हर किनारा कितना बाहर झुकता है; 0 यानी सीधा खड़ा।</translation>
    </message>
    <message>
        <source>Drop of the bed over 100 of length where it is steepest; measure it with a water level tube.</source>
        <translation>जहाँ नाली सबसे खड़ी है, वहाँ 100 लंबाई पर पेंदी का उतार; पानी की लेवल नली से नापें।</translation>
    </message>
    <message>
        <source>What the water of the spill path runs over.</source>
        <translation>निकास की नाली में पानी किस चीज़ पर बहता है।</translation>
    </message>
    <message>
        <source>The trap is made long enough for this grain to sink; 0.1 mm is fine sand that can just be felt between the fingers.</source>
        <translation>गाद कुंडी इतनी लंबी बनती है कि यह कण बैठ जाए; 0.1 mm यानी महीन रेत, जो उँगलियों में बस महसूस होती है।</translation>
    </message>
    <message>
        <source>Most water that passes the trap at a time. Leave empty to take what source line and storm bring.</source>
        <translation>गाद कुंडी से एक समय में ज़्यादा से ज़्यादा जितना पानी गुज़रता है। स्रोत की लाइन और मूसलाधार बारिश से जितना आए वही लेना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Dry weight of what settles overnight from muddy water as it comes in; let a full bucket stand, dry the mud and weigh it.</source>
        <translation>आते हुए मटमैले पानी से रात भर में जो गाद बैठती है, उसका सूखा वज़न; भरी बाल्टी रख दें, गाद सुखाएँ और तौलें।</translation>
    </message>
    <message>
        <source>Time in the wet season after which someone empties the trap.</source>
        <translation>बरसात में कितने समय बाद कोई गाद कुंडी खाली करता है।</translation>
    </message>
    <message>
        <source>Inside length, along the water, of a trap that stands or is planned by eye. Leave empty if there is none.</source>
        <translation>जो गाद कुंडी बनी है या अंदाज़े से सोची है, उसकी भीतरी लंबाई, पानी की दिशा में। न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Inside width, across the water, of that trap. Leave empty if there is none.</source>
        <translation>उस गाद कुंडी की भीतरी चौड़ाई, पानी के आड़े। न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Water over the mud in that trap just before it is cleaned. Leave empty if there is none.</source>
        <translation>उस गाद कुंडी में सफ़ाई से ठीक पहले गाद के ऊपर का पानी। न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Water over the finished floor while the test runs. Leave empty if the tank is full.</source>
        <translation>जाँच के समय तैयार फ़र्श से ऊपर का पानी। टंकी भरी हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>How far the water in the tank sank between the two readings, on a scale fixed to the wall; nothing may flow in or out.</source>
        <translation>दोनों नापों के बीच टंकी का पानी कितना उतरा, दीवार पर लगे पैमाने पर; न कुछ अंदर आए, न बाहर जाए।</translation>
    </message>
    <message>
        <source>From the first reading to the second; a day or longer, without rain.</source>
        <translation>पहले नाप से दूसरे तक; एक दिन या ज़्यादा, बिना बारिश के।</translation>
    </message>
    <message>
        <source>How far one reading of the scale may be wrong; read it twice and see.</source>
        <translation>पैमाने का एक नाप कितना गलत हो सकता है; दो बार पढ़कर देखें।</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>पानी का तापमान</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>लाइन पर दूरी</translation>
    </message>
    <message>
        <source>Height over the rim</source>
        <translation>मुंडेर से ऊँचाई</translation>
    </message>
    <message>
        <source>Water over the inlet</source>
        <translation>आमद के मुँह से ऊपर पानी</translation>
    </message>
    <message>
        <source>Flow wanted from the source</source>
        <translation>स्रोत से चाहा गया बहाव</translation>
    </message>
    <message>
        <source>Source pipe: grade</source>
        <translation>स्रोत का पाइप: ग्रेड</translation>
    </message>
    <message>
        <source>Source pipe: outside diameter</source>
        <translation>स्रोत का पाइप: बाहरी व्यास</translation>
    </message>
    <message>
        <source>Source pipe: pressure class</source>
        <translation>स्रोत का पाइप: प्रेशर क्लास</translation>
    </message>
    <message>
        <source>Source pipe: bore, measured</source>
        <translation>स्रोत का पाइप: नापा भीतरी व्यास</translation>
    </message>
    <message>
        <source>Source pipe: elbows</source>
        <translation>स्रोत का पाइप: एल्बो</translation>
    </message>
    <message>
        <source>Source pipe: valves</source>
        <translation>स्रोत का पाइप: वाल्व</translation>
    </message>
    <message>
        <source>Siphon over the rim</source>
        <translation>मुंडेर के ऊपर से साइफन</translation>
    </message>
    <message>
        <source>Top of the siphon over the rim</source>
        <translation>मुंडेर से साइफन की ऊँचाई</translation>
    </message>
    <message>
        <source>Water let out through</source>
        <translation>पानी किससे निकलता है</translation>
    </message>
    <message>
        <source>Open at a time</source>
        <translation>एक साथ खुले</translation>
    </message>
    <message>
        <source>Field pipe: grade</source>
        <translation>खेत का पाइप: ग्रेड</translation>
    </message>
    <message>
        <source>Field pipe: outside diameter</source>
        <translation>खेत का पाइप: बाहरी व्यास</translation>
    </message>
    <message>
        <source>Field pipe: pressure class</source>
        <translation>खेत का पाइप: प्रेशर क्लास</translation>
    </message>
    <message>
        <source>Field pipe: bore, measured</source>
        <translation>खेत का पाइप: नापा भीतरी व्यास</translation>
    </message>
    <message>
        <source>Field pipe: elbows</source>
        <translation>खेत का पाइप: एल्बो</translation>
    </message>
    <message>
        <source>Field pipe: valves</source>
        <translation>खेत का पाइप: वाल्व</translation>
    </message>
    <message>
        <source>Overflow through</source>
        <translation>ओवरफ्लो किससे</translation>
    </message>
    <message>
        <source>Width of the notch</source>
        <translation>खाँचे की चौड़ाई</translation>
    </message>
    <message>
        <source>Overflow pipe: inside diameter</source>
        <translation>ओवरफ्लो पाइप: भीतरी व्यास</translation>
    </message>
    <message>
        <source>Overflow pipe: length</source>
        <translation>ओवरफ्लो पाइप: लंबाई</translation>
    </message>
    <message>
        <source>Overflow pipe: fall</source>
        <translation>ओवरफ्लो पाइप: उतार</translation>
    </message>
    <message>
        <source>Heaviest short rain</source>
        <translation>थोड़ी देर की सबसे भारी बारिश</translation>
    </message>
    <message>
        <source>Low part of the rim: length</source>
        <translation>मुंडेर की नीची कोर: लंबाई</translation>
    </message>
    <message>
        <source>Low part of the rim: lower by</source>
        <translation>मुंडेर की नीची कोर: कितनी नीची</translation>
    </message>
    <message>
        <source>Spill path: bottom width</source>
        <translation>निकास की नाली: पेंदी की चौड़ाई</translation>
    </message>
    <message>
        <source>Spill path: depth</source>
        <translation>निकास की नाली: गहराई</translation>
    </message>
    <message>
        <source>Spill path: side slope</source>
        <translation>निकास की नाली: किनारों की ढाल</translation>
    </message>
    <message>
        <source>Spill path: fall</source>
        <translation>निकास की नाली: ढाल</translation>
    </message>
    <message>
        <source>Spill path: bed</source>
        <translation>निकास की नाली: पेंदी</translation>
    </message>
    <message>
        <source>Smallest grain to keep back</source>
        <translation>रोका जाने वाला सबसे छोटा कण</translation>
    </message>
    <message>
        <source>Flow through the silt trap</source>
        <translation>गाद कुंडी में बहाव</translation>
    </message>
    <message>
        <source>Silt in the water</source>
        <translation>पानी में गाद</translation>
    </message>
    <message>
        <source>Silt trap cleaned every</source>
        <translation>गाद कुंडी की सफ़ाई हर</translation>
    </message>
    <message>
        <source>Silt trap as it is: length</source>
        <translation>बनी हुई गाद कुंडी: लंबाई</translation>
    </message>
    <message>
        <source>Silt trap as it is: width</source>
        <translation>बनी हुई गाद कुंडी: चौड़ाई</translation>
    </message>
    <message>
        <source>Silt trap as it is: water depth</source>
        <translation>बनी हुई गाद कुंडी: पानी की गहराई</translation>
    </message>
    <message>
        <source>Water in the tank during the test</source>
        <translation>जाँच के समय टंकी में पानी</translation>
    </message>
    <message>
        <source>Drop in the tank</source>
        <translation>टंकी में पानी उतरा</translation>
    </message>
    <message>
        <source>Drop in the bucket</source>
        <translation>बाल्टी में पानी उतरा</translation>
    </message>
    <message>
        <source>Time between the readings</source>
        <translation>दोनों नापों के बीच समय</translation>
    </message>
    <message>
        <source>Error of one reading</source>
        <translation>एक नाप की चूक</translation>
    </message>
    <message>
        <source>north</source>
        <translation>उत्तर</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>उत्तर-पूरब</translation>
    </message>
    <message>
        <source>east</source>
        <translation>पूरब</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>दक्षिण-पूरब</translation>
    </message>
    <message>
        <source>south</source>
        <translation>दक्षिण</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>दक्षिण-पश्चिम</translation>
    </message>
    <message>
        <source>west</source>
        <translation>पश्चिम</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>उत्तर-पश्चिम</translation>
    </message>
    <message>
        <source>The ground is level.</source>
        <translation>ज़मीन समतल है।</translation>
    </message>
    <message>
        <source>The ground falls %1 towards the %2.</source>
        <translation>ज़मीन की ढाल %1 है, %2 की ओर।</translation>
    </message>
    <message>
        <source>The platform lies %1; the rim is level with it.</source>
        <translation>समतल जगह %1 है; मुंडेर उसी के बराबर है।</translation>
    </message>
    <message>
        <source>To make it, %1 are cut and %2 filled in, rammed in layers.</source>
        <translation>इसे बनाने में %1 कटान और %2 भराव है, जो परतों में कूटा जाता है।</translation>
    </message>
    <message>
        <source>First strip %1 of topsoil and keep it apart: it belongs on the beds.</source>
        <translation>पहले %1 ऊपरी मिट्टी छीलकर अलग रखें: उसकी जगह क्यारियों में है।</translation>
    </message>
    <message>
        <source>The whole tank just stands in natural ground: the platform may be no higher.</source>
        <translation>पूरी टंकी मूल ज़मीन में बस आ जाती है: समतल जगह इससे ज़रा भी ऊँची नहीं हो सकती।</translation>
    </message>
    <message>
        <source>The whole tank stands in natural ground; where it is least, %1 of it lie over the pit.</source>
        <translation>पूरी टंकी मूल ज़मीन में है; जहाँ सबसे कम है, वहाँ भी गड्ढे के ऊपर %1 मूल ज़मीन है।</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: natural ground ends %1 short of the pit.</source>
        <translation>टंकी का एक हिस्सा भराव पर होगा: मूल ज़मीन गड्ढे से %1 पहले खत्म हो जाती है।</translation>
    </message>
    <message>
        <source>It would not with the platform %1, or lower.</source>
        <translation>समतल जगह %1 या और नीचे हो, तो ऐसा नहीं होगा।</translation>
    </message>
    <message>
        <source>The fill takes all that is dug; no spoil is left over.</source>
        <translation>जितनी मिट्टी खुदती है वह सब भराव में लग जाती है; निकली मिट्टी नहीं बचती।</translation>
    </message>
    <message>
        <source>As it lies, %1 of ground are left over; how large the heap gets depends on the soil, which is not known.</source>
        <translation>बिना खुदी नाप से %1 मिट्टी बचती है; ढेर कितना बड़ा होगा, यह मिट्टी की किस्म पर है, जो पता नहीं।</translation>
    </message>
    <message>
        <source>Left over are %1 of loose ground: a heap %2 high and %3 across.</source>
        <translation>%1 ढीली मिट्टी बचती है: %2 ऊँचा और %3 चौड़ा ढेर।</translation>
    </message>
    <message>
        <source>Heap it to the %1 of the tank, its toe %2 back from the pit edge; never nearer than %3.</source>
        <translation>इसका ढेर टंकी के %1 में लगाएँ, निचला किनारा गड्ढे के किनारे से %2 दूर; %3 से पास कभी नहीं।</translation>
    </message>
    <message>
        <source>Later spread it thin on beds below, or raise the lips of terraces well away with it.</source>
        <translation>बाद में इसे नीचे की क्यारियों पर पतला फैलाएँ, या इससे काफ़ी दूर के सीढ़ीदार खेतों की मेंड़ें ऊँची करें।</translation>
    </message>
    <message>
        <source>Never heap it uphill of the pit, where rain washes it in, nor on the downhill edge, which its weight can bring down.</source>
        <translation>इसे गड्ढे से ऊपर चढ़ाई की ओर कभी न लगाएँ, जहाँ से बारिश इसे बहाकर गड्ढे में लाती है, और न ढलान की ओर के किनारे पर, जो इसके बोझ से ढह सकता है।</translation>
    </message>
    <message>
        <source>Never heap it beside the pit edge or on the edge of a terrace, which its weight can bring down.</source>
        <translation>इसे गड्ढे के किनारे के पास या सीढ़ीदार खेत के किनारे पर कभी न लगाएँ, जो इसके बोझ से ढह सकता है।</translation>
    </message>
    <message>
        <source>Middle of the tank, east</source>
        <translation>टंकी का बीच, पूरब</translation>
    </message>
    <message>
        <source>Middle of the tank, north</source>
        <translation>टंकी का बीच, उत्तर</translation>
    </message>
    <message>
        <source>Tank turned by</source>
        <translation>टंकी का घुमाव</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>समतल जगह का स्तर</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle</source>
        <translation>बीच में ज़मीन से समतल जगह की ऊँचाई</translation>
    </message>
    <message>
        <source>Walkway round the rim</source>
        <translation>मुंडेर के चारों ओर चलने की पट्टी</translation>
    </message>
    <message>
        <source>Batter of the cut face</source>
        <translation>कटान की ढाल की सलामी</translation>
    </message>
    <message>
        <source>Batter of the fill face</source>
        <translation>भराव की ढाल की सलामी</translation>
    </message>
    <message>
        <source>Topsoil stripped</source>
        <translation>छीली गई ऊपरी मिट्टी</translation>
    </message>
    <message>
        <source>Compacted fill per ground dug</source>
        <translation>खुदी ज़मीन से बना कुटा भराव</translation>
    </message>
    <message>
        <source>Direction of the spoil heap</source>
        <translation>निकली मिट्टी के ढेर की दिशा</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies east of the zero of the spot heights; west of it is negative.</source>
        <translation>ऊँचाई के बिंदुओं के शून्य से टंकी का बीच कितना पूरब में है; उससे पश्चिम में हो तो ऋण (−)।</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies north of the zero of the spot heights; south of it is negative.</source>
        <translation>ऊँचाई के बिंदुओं के शून्य से टंकी का बीच कितना उत्तर में है; उससे दक्षिण में हो तो ऋण (−)।</translation>
    </message>
    <message>
        <source>How high the level place round the tank lies: so low that the whole tank stands in natural ground, so that cut and fill balance, or as you give it.</source>
        <translation>टंकी के चारों ओर की समतल जगह कितनी ऊँची हो: इतनी नीची कि पूरी टंकी मूल ज़मीन में रहे, इतनी कि कटान और भराव बराबर हों, या जितनी आप भरें।</translation>
    </message>
    <message>
        <source>Height of the platform, which the rim is level with, over the natural ground at the middle of the tank; below that ground it is negative.</source>
        <translation>समतल जगह, जिसके बराबर मुंडेर है, टंकी के बीच की मूल ज़मीन से कितनी ऊपर है; ज़मीन से नीचे हो तो ऋण (−)।</translation>
    </message>
    <message>
        <source>Level ground left all round outside the rim collar, to walk and carry on.</source>
        <translation>मुंडेर की पट्टी के बाहर चारों ओर छोड़ी समतल ज़मीन, चलने और सामान ढोने के लिए।</translation>
    </message>
    <message>
        <source>How far the face cut into the hill leans back for each unit of height; look at old cuts in the same soil that still stand.</source>
        <translation>पहाड़ में कटी ढाल हर इकाई ऊँचाई पर कितनी पीछे झुकती है; उसी मिट्टी के पुराने कटान देखें जो अब भी खड़े हैं।</translation>
    </message>
    <message>
        <source>Depth of the dark soil with roots in the trial pit, which is taken off first and kept for beds.</source>
        <translation>जाँच के गड्ढे में जड़ों वाली काली मिट्टी की गहराई, जो पहले हटाई जाती है और क्यारियों के लिए रखी जाती है।</translation>
    </message>
    <message>
        <source>Volume that ground fills once it is placed in layers and rammed, for each unit dug: 0.90 when it packs closer than it lay.</source>
        <translation>ज़मीन को परतों में डालकर कूटने पर वह कितनी जगह भरती है, खुदी हर इकाई पर: पहले से ज़्यादा ठस जाए तो 0.90।</translation>
    </message>
    <message>
        <source>Compass direction from the tank to the heap: north 0, east 90, south 180. Leave empty to have it put across the fall.</source>
        <translation>टंकी से ढेर की दिशा: उत्तर 0, पूरब 90, दक्षिण 180। ढाल के आड़े रखना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: a surface needs three at different places. Survey more, all round the tank.</source>
        <translation>ऊँचाई के बिंदुओं से ज़मीन नहीं बन पाती: सतह के लिए अलग-अलग जगह के तीन बिंदु चाहिए। टंकी के चारों ओर और सर्वे करें।</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they all lie on one line. Survey some to the side of it.</source>
        <translation>ऊँचाई के बिंदुओं से ज़मीन नहीं बन पाती: सब एक ही रेखा पर हैं। कुछ बगल में भी सर्वे करें।</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they could not be joined to triangles. Look for points that stand nearly at the same place, and take them out.</source>
        <translation>ऊँचाई के बिंदुओं से ज़मीन नहीं बन पाती: उन्हें तिकोनों में नहीं जोड़ा जा सका। ऐसे बिंदु देखें जो लगभग एक ही जगह पर हैं, और उन्हें हटाएँ।</translation>
    </message>
    <message>
        <source>The platform does not lie wholly inside the survey. Move the tank, or survey more ground around it.</source>
        <translation>समतल जगह पूरी तरह सर्वे के अंदर नहीं है। टंकी खिसकाएँ, या उसके चारों ओर और ज़मीन का सर्वे करें।</translation>
    </message>
    <message>
        <source>The ground is as steep as a face of cut or fill, which so never meets it. Choose flatter ground, or a steeper batter if the soil bears it.</source>
        <translation>ज़मीन कटान या भराव की ढाल जितनी ही खड़ी है, इसलिए दोनों कभी नहीं मिलते। कम ढाल वाली ज़मीन चुनें, या मिट्टी सह सके तो ज़्यादा खड़ी सलामी।</translation>
    </message>
    <message>
        <source>At no level do cut and fill balance here. Give the level of the platform, or have the tank stand in natural ground.</source>
        <translation>यहाँ किसी भी स्तर पर कटान और भराव बराबर नहीं होते। समतल जगह का स्तर भरें, या टंकी मूल ज़मीन में रखें।</translation>
    </message>
    <message>
        <source>Spot heights that look doubtful: %1, the first in row %2. Each stands far above, below or away from the others, or repeats one. Look at the place and mend or delete the row.</source>
        <translation>ऊँचाई के बिंदु जिन पर शक है: %1, पहला पंक्ति %2 में। हर एक बाकी से बहुत ऊपर, नीचे या दूर है, या किसी को दोहराता है। जगह देखें और पंक्ति सुधारें या हटाएँ।</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: where it is worst, natural ground ends %1 short of floor or wall. Fill settles and cracks the lining. The platform lies %2; lay it %3, or lower.</source>
        <translation>टंकी का एक हिस्सा भराव पर होगा: जहाँ सबसे बुरा है, वहाँ मूल ज़मीन फ़र्श या दीवार से %1 पहले खत्म हो जाती है। भराव बैठता है और लाइनिंग फाड़ देता है। समतल जगह %2 है; उसे %3 या और नीचे रखें।</translation>
    </message>
    <message>
        <source>as high as the natural ground at the middle of the tank</source>
        <translation>टंकी के बीच की मूल ज़मीन के बराबर</translation>
    </message>
    <message>
        <source>%1 over the natural ground at the middle of the tank</source>
        <translation>टंकी के बीच की मूल ज़मीन से %1 ऊपर</translation>
    </message>
    <message>
        <source>%1 below the natural ground at the middle of the tank</source>
        <translation>टंकी के बीच की मूल ज़मीन से %1 नीचे</translation>
    </message>
    <message>
        <source>roughness, plastic pipe</source>
        <translation>खुरदरापन, प्लास्टिक पाइप</translation>
    </message>
    <message>
        <source>roughness, steel pipe</source>
        <translation>खुरदरापन, स्टील पाइप</translation>
    </message>
    <message>
        <source>roughness, galvanised pipe</source>
        <translation>खुरदरापन, जीआई पाइप</translation>
    </message>
    <message>
        <source>roughness, cast iron pipe</source>
        <translation>खुरदरापन, ढलवाँ लोहे का पाइप</translation>
    </message>
    <message>
        <source>roughness, concrete pipe</source>
        <translation>खुरदरापन, कंक्रीट पाइप</translation>
    </message>
    <message>
        <source>Hazen-Williams C, plastic pipe</source>
        <translation>Hazen-Williams C, प्लास्टिक पाइप</translation>
    </message>
    <message>
        <source>Hazen-Williams C, galvanised pipe</source>
        <translation>Hazen-Williams C, जीआई पाइप</translation>
    </message>
    <message>
        <source>loss, sharp entrance</source>
        <translation>हेड का घाटा, तीखे किनारे का मुँह</translation>
    </message>
    <message>
        <source>loss, entrance that juts out</source>
        <translation>हेड का घाटा, बाहर निकला मुँह</translation>
    </message>
    <message>
        <source>loss, rounded entrance</source>
        <translation>हेड का घाटा, गोल किनारे का मुँह</translation>
    </message>
    <message>
        <source>loss, foot valve</source>
        <translation>हेड का घाटा, फुट वाल्व</translation>
    </message>
    <message>
        <source>loss, 90° elbow</source>
        <translation>हेड का घाटा, 90° एल्बो</translation>
    </message>
    <message>
        <source>loss, wide 90° elbow</source>
        <translation>हेड का घाटा, चौड़ा 90° एल्बो</translation>
    </message>
    <message>
        <source>loss, 45° elbow</source>
        <translation>हेड का घाटा, 45° एल्बो</translation>
    </message>
    <message>
        <source>loss, tee, straight on</source>
        <translation>हेड का घाटा, टी, सीधे</translation>
    </message>
    <message>
        <source>loss, tee, into the branch</source>
        <translation>हेड का घाटा, टी, शाखा में</translation>
    </message>
    <message>
        <source>loss, gate valve, open</source>
        <translation>हेड का घाटा, गेट वाल्व, खुला</translation>
    </message>
    <message>
        <source>loss, gate valve, half closed</source>
        <translation>हेड का घाटा, गेट वाल्व, आधा बंद</translation>
    </message>
    <message>
        <source>loss, globe valve, open</source>
        <translation>हेड का घाटा, ग्लोब वाल्व, खुला</translation>
    </message>
    <message>
        <source>loss, ball valve, open</source>
        <translation>हेड का घाटा, बॉल वाल्व, खुला</translation>
    </message>
    <message>
        <source>loss, check valve</source>
        <translation>हेड का घाटा, चेक वाल्व</translation>
    </message>
    <message>
        <source>loss, water meter</source>
        <translation>हेड का घाटा, पानी का मीटर</translation>
    </message>
    <message>
        <source>loss, screen</source>
        <translation>हेड का घाटा, जाली</translation>
    </message>
    <message>
        <source>head kept over vapour in a pipe</source>
        <translation>पाइप में भाप के दबाव से ऊपर रखा हेड</translation>
    </message>
    <message>
        <source>head kept over vapour at the top of a siphon</source>
        <translation>साइफन के सबसे ऊँचे हिस्से में भाप के दबाव से ऊपर रखा हेड</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plastic pipe</source>
        <translation>Manning का n, प्लास्टिक पाइप</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plaster</source>
        <translation>Manning का n, प्लास्टर</translation>
    </message>
    <message>
        <source>Manning&apos;s n, bare earth</source>
        <translation>Manning का n, खाली मिट्टी</translation>
    </message>
    <message>
        <source>Manning&apos;s n, short grass</source>
        <translation>Manning का n, छोटी घास</translation>
    </message>
    <message>
        <source>Manning&apos;s n, stone pitching</source>
        <translation>Manning का n, पत्थर की पिचिंग</translation>
    </message>
    <message>
        <source>broad sill, flow in theory</source>
        <translation>चौड़ी दहलीज, सिद्धांत से बहाव</translation>
    </message>
    <message>
        <source>broad sill, share of the flow in theory</source>
        <translation>चौड़ी दहलीज, सिद्धांत के बहाव का हिस्सा</translation>
    </message>
    <message>
        <source>opening with a sharp edge</source>
        <translation>तीखे किनारे वाला मुँह</translation>
    </message>
    <message>
        <source>storm runoff, roof</source>
        <translation>मूसलाधार बारिश में बहकर आया, छत</translation>
    </message>
    <message>
        <source>storm runoff, woodland</source>
        <translation>मूसलाधार बारिश में बहकर आया, जंगल</translation>
    </message>
    <message>
        <source>storm runoff, pasture</source>
        <translation>मूसलाधार बारिश में बहकर आया, चरागाह</translation>
    </message>
    <message>
        <source>storm runoff, tilled ground</source>
        <translation>मूसलाधार बारिश में बहकर आया, जुता खेत</translation>
    </message>
    <message>
        <source>storm runoff, bare packed ground</source>
        <translation>मूसलाधार बारिश में बहकर आया, खाली दबी ज़मीन</translation>
    </message>
    <message>
        <source>storm runoff, the tank itself</source>
        <translation>मूसलाधार बारिश में बहकर आया, टंकी खुद</translation>
    </message>
    <message>
        <source>silt trap, area over the least in theory</source>
        <translation>गाद कुंडी, सिद्धांत से कम से कम के मुकाबले क्षेत्रफल</translation>
    </message>
    <message>
        <source>silt trap, speed factor</source>
        <translation>गाद कुंडी, गति का गुणांक</translation>
    </message>
    <message>
        <source>silt, weight of the sinking grain</source>
        <translation>गाद, बैठते कण का वज़न</translation>
    </message>
    <message>
        <source>silt, weight of settled grains</source>
        <translation>गाद, बैठे कणों का वज़न</translation>
    </message>
    <message>
        <source>silt, share of grain in the mud</source>
        <translation>गाद में कण का हिस्सा</translation>
    </message>
    <message>
        <source>silt trap, length over width</source>
        <translation>गाद कुंडी, लंबाई ÷ चौड़ाई</translation>
    </message>
    <message>
        <source>leak up to which a tank is tight</source>
        <translation>इतने लीक तक टंकी पक्की मानें</translation>
    </message>
    <message>
        <source>leak up to which a tank is watched</source>
        <translation>इतने लीक तक टंकी पर नज़र रखें</translation>
    </message>
    <message>
        <source>leak up to which a tank is mended in use</source>
        <translation>इतने लीक तक टंकी चलते-चलते सुधारें</translation>
    </message>
    <message>
        <source>leak of concrete tanks, drop allowed</source>
        <translation>कंक्रीट की टंकी का लीक, मान्य उतार</translation>
    </message>
    <message>
        <source>leak of concrete tanks, within</source>
        <translation>कंक्रीट की टंकी का लीक, इतने समय में</translation>
    </message>
    <message>
        <source>leak of concrete tanks, share of the volume a day</source>
        <translation>कंक्रीट की टंकी का लीक, रोज़ आयतन का हिस्सा</translation>
    </message>
    <message>
        <source>head wanted, %1</source>
        <translation>चाहा गया हेड, %1</translation>
    </message>
    <message>
        <source>usual flow, %1</source>
        <translation>आम बहाव, %1</translation>
    </message>
    <message>
        <source>speed that scours, %1</source>
        <translation>कटाव करने वाली गति, %1</translation>
    </message>
    <message>
        <source>its way needs two points at least</source>
        <translation>उसके रास्ते में कम से कम दो बिंदु चाहिए</translation>
    </message>
    <message>
        <source>the points of its way do not follow one another</source>
        <translation>उसके रास्ते के बिंदु एक के बाद एक नहीं आते</translation>
    </message>
    <message>
        <source>a fitting lies outside its way</source>
        <translation>कोई फिटिंग उसके रास्ते से बाहर है</translation>
    </message>
    <message>
        <source>its inlet does not lie under water; lay it lower</source>
        <translation>उसका आमद का मुँह पानी के नीचे नहीं है; उसे नीचे रखें</translation>
    </message>
    <message>
        <source>there is no fall from the water at its inlet to its outlet; lay the outlet lower</source>
        <translation>आमद के मुँह के पानी से निकास तक कोई उतार नहीं है; निकास नीचे रखें</translation>
    </message>
    <message>
        <source>no pipe of the table bears the pressure; break it on the way</source>
        <translation>तालिका का कोई पाइप दबाव नहीं सहता; रास्ते में दबाव तोड़ें</translation>
    </message>
    <message>
        <source>no pipe of the table is wide enough; find more fall</source>
        <translation>तालिका का कोई पाइप इतना मोटा नहीं; ज़्यादा ढाल ढूँढें</translation>
    </message>
    <message>
        <source>its top lies below its outlet, so it is no siphon</source>
        <translation>उसका सबसे ऊँचा हिस्सा उसके निकास से नीचे है, इसलिए वह साइफन नहीं है</translation>
    </message>
    <message>
        <source>the outflow stops before the water is that low</source>
        <translation>पानी उतना नीचे पहुँचने से पहले ही निकलना रुक जाता है</translation>
    </message>
    <message>
        <source>the outflow dies away, so that the end is never reached</source>
        <translation>निकलना धीरे-धीरे खत्म हो जाता है, इसलिए अंत तक कभी नहीं पहुँचता</translation>
    </message>
    <message>
        <source>the overflow pipe has no fall</source>
        <translation>ओवरफ्लो पाइप में ढाल नहीं है</translation>
    </message>
    <message>
        <source>there is no rim to run over</source>
        <translation>पानी के ऊपर से बहने के लिए मुंडेर नहीं है</translation>
    </message>
    <message>
        <source>the grain is too large for the law by which it sinks</source>
        <translation>कण उस नियम के लिए बहुत बड़ा है जिससे वह बैठता है</translation>
    </message>
    <message>
        <source>water rose in the bucket: it rained; test again in dry weather</source>
        <translation>बाल्टी में पानी बढ़ा: बारिश हुई; सूखे मौसम में फिर जाँचें</translation>
    </message>
    <message>
        <source>a figure is not in the table</source>
        <translation>कोई आँकड़ा तालिका में नहीं है</translation>
    </message>
    <message>
        <source>the temperature of the water is out of range</source>
        <translation>पानी का तापमान दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the height above sea level is out of range</source>
        <translation>समुद्र तल से ऊँचाई दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the water flows too slowly or too fast to be reckoned</source>
        <translation>पानी इतना धीमा या तेज़ बहता है कि हिसाब नहीं लग सकता</translation>
    </message>
    <message>
        <source>the roughness of the pipe is out of range</source>
        <translation>पाइप का खुरदरापन दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the inside diameter of the pipe is out of range</source>
        <translation>पाइप का भीतरी व्यास दायरे से बाहर है</translation>
    </message>
    <message>
        <source>a length is out of range</source>
        <translation>कोई लंबाई दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the flow is out of range</source>
        <translation>बहाव दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the head is out of range</source>
        <translation>हेड दायरे से बाहर है</translation>
    </message>
    <message>
        <source>a coefficient is out of range</source>
        <translation>कोई गुणांक दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the loss of a fitting is out of range</source>
        <translation>किसी फिटिंग में हेड का घाटा दायरे से बाहर है</translation>
    </message>
    <message>
        <source>a slope is out of range</source>
        <translation>कोई ढाल दायरे से बाहर है</translation>
    </message>
    <message>
        <source>a width is out of range</source>
        <translation>कोई चौड़ाई दायरे से बाहर है</translation>
    </message>
    <message>
        <source>a depth is out of range</source>
        <translation>कोई गहराई दायरे से बाहर है</translation>
    </message>
    <message>
        <source>an area is out of range</source>
        <translation>कोई क्षेत्रफल दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the size of the grain is out of range</source>
        <translation>कण का नाप दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the weight of the grain is out of range</source>
        <translation>कण का वज़न दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the silt in the water is out of range</source>
        <translation>पानी में गाद दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the time is out of range</source>
        <translation>समय दायरे से बाहर है</translation>
    </message>
    <message>
        <source>a level is out of range</source>
        <translation>कोई स्तर दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the pressure is out of range</source>
        <translation>दबाव दायरे से बाहर है</translation>
    </message>
    <message>
        <source>a reading is out of range</source>
        <translation>कोई नाप दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the reserve is out of range</source>
        <translation>बचाकर रखा हेड दायरे से बाहर है</translation>
    </message>
    <message>
        <source>the rain of the storm is out of range</source>
        <translation>मूसलाधार बारिश दायरे से बाहर है</translation>
    </message>
    <message>
        <source>it works</source>
        <translation>यह चलता है</translation>
    </message>
    <message>
        <source>it works, but weakly</source>
        <translation>यह चलता है, पर कमज़ोर</translation>
    </message>
    <message>
        <source>it works only while the tank is rather full</source>
        <translation>यह तभी चलता है जब टंकी काफ़ी भरी हो</translation>
    </message>
    <message>
        <source>it does not work</source>
        <translation>यह नहीं चलता</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 मिनट</translation>
    </message>
    <message>
        <source>Nothing flows: %1.</source>
        <translation>कुछ नहीं बहता: %1।</translation>
    </message>
    <message>
        <source>The line brings %1 when the tank is nearly empty; when it is full, %2.</source>
        <translation>टंकी लगभग खाली हो तो लाइन %1 लाती है; भरी हो तो %2।</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full; when it is nearly empty, %2.</source>
        <translation>टंकी भरी हो तो लाइन %1 लाती है; लगभग खाली हो तो %2।</translation>
    </message>
    <message>
        <source>The line brings %1.</source>
        <translation>लाइन %1 लाती है।</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full and %2 when it is nearly empty.</source>
        <translation>टंकी भरी हो तो लाइन %1 लाती है और लगभग खाली हो तो %2।</translation>
    </message>
    <message>
        <source>Wide open it will not bring that much: the pipe sucks so hard at its high parts that the column of water parts.</source>
        <translation>पूरी खुली हो तो इतना नहीं लाएगी: पाइप के ऊँचे हिस्सों में सक्शन इतना है कि पानी का खंभा टूट जाता है।</translation>
    </message>
    <message>
        <source>Wanted are %1.</source>
        <translation>चाहिए %1।</translation>
    </message>
    <message>
        <source>Wanted are %1, but %2.</source>
        <translation>चाहिए %1, पर %2।</translation>
    </message>
    <message>
        <source>The smallest pipe that brings the %1 wanted has %2 outside diameter, class %3.</source>
        <translation>चाहा गया %1 लाने वाले सबसे छोटे पाइप का बाहरी व्यास %2 है, प्रेशर क्लास %3।</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1.</source>
        <translation>सिरा बंद हो तो पाइप की सबसे नीची जगह को %1 सहना पड़ता है।</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1; it is good for %2.</source>
        <translation>सिरा बंद हो तो पाइप की सबसे नीची जगह को %1 सहना पड़ता है; वह %2 के लिए बना है।</translation>
    </message>
    <message>
        <source>High points on the way, where air gathers: %1, the first at %2.</source>
        <translation>रास्ते की ऊँची जगहें, जहाँ हवा जमा होती है: %1, पहली %2 पर।</translation>
    </message>
    <message>
        <source>The siphon cannot be started with the tank nearly empty: its top lies %1 over the water, and %2 is the most.</source>
        <translation>टंकी लगभग खाली हो तो साइफन चालू नहीं हो सकता: उसका सबसे ऊँचा हिस्सा पानी से %1 ऊपर है, और ज़्यादा से ज़्यादा %2 हो सकता है।</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks; let no more than %1 through its valve.</source>
        <translation>पूरा खुला हो तो साइफन टूट जाता है; उसके वाल्व से %1 से ज़्यादा न जाने दें।</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its end does not lie below the water.</source>
        <translation>टंकी लगभग खाली होने से पहले ही साइफन रुक जाता है: उसका सिरा पानी से नीचे नहीं है।</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its inlet falls dry.</source>
        <translation>टंकी लगभग खाली होने से पहले ही साइफन रुक जाता है: उसका आमद का मुँह पानी से बाहर आ जाता है।</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks.</source>
        <translation>पूरा खुला हो तो साइफन टूट जाता है।</translation>
    </message>
    <message>
        <source>The siphon cannot be reckoned: %1.</source>
        <translation>साइफन का हिसाब नहीं लग सकता: %1।</translation>
    </message>
    <message>
        <source>To start the siphon, fill it with %1 of water.</source>
        <translation>साइफन चालू करने के लिए उसमें %1 पानी भरें।</translation>
    </message>
    <message>
        <source>What head is left at the outlet cannot be told: %1.</source>
        <translation>निकास पर कितना हेड बचता है, बताया नहीं जा सकता: %1।</translation>
    </message>
    <message>
        <source>Outlet, %1: a head of %2 is left with the tank full and %3 when it is nearly empty, %4 is wanted; %5.</source>
        <translation>निकास, %1: टंकी भरी हो तो %2 हेड बचता है और लगभग खाली हो तो %3, चाहिए %4; %5।</translation>
    </message>
    <message>
        <source>How long it takes to draw the tank down to %1 over the floor cannot be told: %2.</source>
        <translation>फ़र्श से %1 ऊपर तक टंकी खाली होने में कितना समय लगता है, बताया नहीं जा सकता: %2।</translation>
    </message>
    <message>
        <source>Wide open, it draws the full tank down to %1 over the floor in %2.</source>
        <translation>पूरी खुली हो तो भरी टंकी %2 में फ़र्श से %1 ऊपर तक खाली होती है।</translation>
    </message>
    <message>
        <source>No way is entered for the line from the source. Give two points at least: the pipe&apos;s inlet and its end over the tank.</source>
        <translation>स्रोत की लाइन का रास्ता नहीं भरा है। कम से कम दो बिंदु भरें: पाइप का आमद का मुँह और टंकी के ऊपर उसका सिरा।</translation>
    </message>
    <message>
        <source>No way is entered for the line to the field. Give two points at least: where the pipe leaves the tank and where it ends.</source>
        <translation>खेत की लाइन का रास्ता नहीं भरा है। कम से कम दो बिंदु भरें: जहाँ पाइप टंकी से निकलता है और जहाँ खत्म होता है।</translation>
    </message>
    <message>
        <source>Ground cut down</source>
        <translation>कटी ज़मीन</translation>
    </message>
    <message>
        <source>Ground filled up</source>
        <translation>भरी ज़मीन</translation>
    </message>
    <message>
        <source>Spoil heap</source>
        <translation>निकली मिट्टी का ढेर</translation>
    </message>
    <message>
        <source>Arrow down the fall</source>
        <translation>ढलान की ओर का तीर</translation>
    </message>
    <message>
        <source>Marked place</source>
        <translation>निशान लगी जगह</translation>
    </message>
    <message>
        <source>Pattern of the cut</source>
        <translation>कटान का पैटर्न</translation>
    </message>
    <message>
        <source>Pattern of the fill</source>
        <translation>भराव का पैटर्न</translation>
    </message>
    <message>
        <source>platform corner</source>
        <translation>समतल जगह का कोना</translation>
    </message>
    <message>
        <source>top of the cut, where it meets the ground</source>
        <translation>कटान का ऊपरी सिरा, जहाँ ज़मीन से मिलता है</translation>
    </message>
    <message>
        <source>toe of the fill, where it meets the ground</source>
        <translation>भराव का निचला किनारा, जहाँ ज़मीन से मिलता है</translation>
    </message>
    <message>
        <source>pipes, overflow and silt trap</source>
        <translation>पाइप, ओवरफ्लो और गाद कुंडी</translation>
    </message>
    <message>
        <source>Taken is a storm of %1, for the heaviest rain here is not known: %2 run in.</source>
        <translation>यहाँ की सबसे भारी बारिश पता नहीं, इसलिए %1 की मूसलाधार बारिश मानी है: %2 पानी आता है।</translation>
    </message>
    <message>
        <source>In a storm of %1, %2 run into the tank.</source>
        <translation>%1 की मूसलाधार बारिश में टंकी में %2 पानी आता है।</translation>
    </message>
    <message>
        <source>Of these, %1 are rain and %2 come from the source.</source>
        <translation>इसमें %1 बारिश का है और %2 स्रोत से आता है।</translation>
    </message>
    <message>
        <source>How high the water then stands cannot be told: %1.</source>
        <translation>तब पानी कितना ऊपर रहता है, बताया नहीं जा सकता: %1।</translation>
    </message>
    <message>
        <source>The overflow passes %1 at most, so water runs over the rim.</source>
        <translation>ओवरफ्लो से ज़्यादा से ज़्यादा %1 निकलता है, इसलिए पानी मुंडेर के ऊपर से बहता है।</translation>
    </message>
    <message>
        <source>A notch %1 wide would be enough.</source>
        <translation>%1 चौड़ा खाँचा काफ़ी होगा।</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would be enough.</source>
        <translation>%1 भीतरी व्यास का ओवरफ्लो पाइप काफ़ी होगा।</translation>
    </message>
    <message>
        <source>Where the water goes if the overflow is blocked cannot be told: %1.</source>
        <translation>ओवरफ्लो रुक जाए तो पानी कहाँ जाता है, बताया नहीं जा सकता: %1।</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water runs over the rim anywhere, %1 deep.</source>
        <translation>ओवरफ्लो रुक जाए तो पानी मुंडेर के ऊपर से कहीं से भी बहता है, %1 गहरा।</translation>
    </message>
    <message>
        <source>If the overflow is blocked, all of the water leaves over the low part of the rim, %1 deep.</source>
        <translation>ओवरफ्लो रुक जाए तो सारा पानी मुंडेर की नीची कोर से निकलता है, %1 गहरा।</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water leaves over the low part of the rim, %1 deep, and over the rest of it too: make the low part longer or lower.</source>
        <translation>ओवरफ्लो रुक जाए तो पानी मुंडेर की नीची कोर से निकलता है, %1 गहरा, और बाकी मुंडेर से भी: नीची कोर और लंबी या और नीची करें।</translation>
    </message>
    <message>
        <source>How the spill path carries the water cannot be told: %1.</source>
        <translation>निकास की नाली पानी कैसे ले जाती है, बताया नहीं जा सकता: %1।</translation>
    </message>
    <message>
        <source>In the spill path, %1 deep, the water runs %2 deep at %3.</source>
        <translation>%1 गहरी निकास की नाली में पानी %2 गहरा, %3 की गति से बहता है।</translation>
    </message>
    <message>
        <source>Its bed bears that speed (%1).</source>
        <translation>उसकी पेंदी यह गति सहती है (%1)।</translation>
    </message>
    <message>
        <source>Its bed may not bear that speed (%1).</source>
        <translation>हो सकता है उसकी पेंदी यह गति न सहे (%1)।</translation>
    </message>
    <message>
        <source>Its bed is washed out at that speed (%1).</source>
        <translation>इस गति से उसकी पेंदी कट जाती है (%1)।</translation>
    </message>
    <message>
        <source>A trap for grains of %1 and a flow of %2 cannot be reckoned: %3.</source>
        <translation>%1 के कण और %2 बहाव के लिए गाद कुंडी का हिसाब नहीं लग सकता: %3।</translation>
    </message>
    <message>
        <source>To hold back grains of %1 at a flow of %2, the trap is made %3 long, %4 wide and %5 deep inside.</source>
        <translation>%2 बहाव में %1 के कण रोकने के लिए गाद कुंडी भीतर से %3 लंबी, %4 चौड़ी और %5 गहरी बनती है।</translation>
    </message>
    <message>
        <source>Between two cleanings about %1 of mud settle in it, %2 deep.</source>
        <translation>दो सफ़ाइयों के बीच उसमें करीब %1 गाद बैठती है, %2 गहरी।</translation>
    </message>
    <message>
        <source>What the trap as it is holds back cannot be told: %1.</source>
        <translation>बनी हुई गाद कुंडी क्या रोकती है, बताया नहीं जा सकता: %1।</translation>
    </message>
    <message>
        <source>The trap as it is has room for grains of %1 to sink, but water runs so fast through it that it carries them on: make it deeper or wider.</source>
        <translation>बनी हुई गाद कुंडी में %1 के कण बैठने की जगह है, पर पानी उसमें इतना तेज़ बहता है कि उन्हें साथ ले जाता है: उसे गहरी या चौड़ी बनाएँ।</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains of %1 and larger.</source>
        <translation>बनी हुई गाद कुंडी %1 और उससे बड़े कण रोकती है।</translation>
    </message>
    <message>
        <source>The tank loses %1 through its lining, about %2.</source>
        <translation>टंकी की लाइनिंग से %1 पानी जाता है, करीब %2।</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained water: some ran in, or a reading is wrong. Test again.</source>
        <translation>बाल्टी के मुकाबले टंकी में पानी बढ़ा: कुछ अंदर आया, या कोई नाप गलत है। फिर जाँचें।</translation>
    </message>
    <message>
        <source>The difference is no more than the readings&apos; error of %1, so it tells nothing. Let the test run longer.</source>
        <translation>फ़र्क नाप की चूक %1 से ज़्यादा नहीं है, इसलिए इससे कुछ पता नहीं चलता। जाँच को और देर चलने दें।</translation>
    </message>
    <message>
        <source>For a tank of plaster that is tight.</source>
        <translation>प्लास्टर की टंकी के लिए यह पक्की मानी जाती है।</translation>
    </message>
    <message>
        <source>Watch it: test again in some weeks.</source>
        <translation>नज़र रखें: कुछ हफ़्ते बाद फिर जाँचें।</translation>
    </message>
    <message>
        <source>Find the cracks and mend them.</source>
        <translation>दरारें ढूँढें और भरें।</translation>
    </message>
    <message>
        <source>Let no more water in, empty it and mend it.</source>
        <translation>और पानी न आने दें, टंकी खाली करें और मरम्मत करें।</translation>
    </message>
    <message>
        <source>It keeps to a mark for concrete tanks, %1: %2.</source>
        <translation>यह कंक्रीट की टंकियों की सीमा के अंदर है, %1: %2।</translation>
    </message>
    <message>
        <source>It does not keep to a mark for concrete tanks, %1: %2.</source>
        <translation>यह कंक्रीट की टंकियों की सीमा के अंदर नहीं है, %1: %2।</translation>
    </message>
    <message>
        <source>What the tank loses more than the bucket goes through the lining.</source>
        <translation>टंकी में बाल्टी से जितना ज़्यादा पानी घटता है, वह लाइनिंग से जाता है।</translation>
    </message>
    <message>
        <source>The leak test tells nothing: %1.</source>
        <translation>लीक जाँच से कुछ पता नहीं चलता: %1।</translation>
    </message>
    <message>
        <source>Place of the tank</source>
        <translation>टंकी की जगह</translation>
    </message>
    <message>
        <source>Platform</source>
        <translation>समतल जगह</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>पानी लाना-ले जाना</translation>
    </message>
    <message>
        <source>Line from the source</source>
        <translation>स्रोत की लाइन</translation>
    </message>
    <message>
        <source>Points of the source line</source>
        <translation>स्रोत की लाइन के बिंदु</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>स्रोत का पाइप</translation>
    </message>
    <message>
        <source>Line to the field</source>
        <translation>खेत की लाइन</translation>
    </message>
    <message>
        <source>Points of the field line</source>
        <translation>खेत की लाइन के बिंदु</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>खेत का पाइप</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>ओवरफ्लो</translation>
    </message>
    <message>
        <source>Spill path</source>
        <translation>निकास की नाली</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>गाद कुंडी</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>लीक जाँच</translation>
    </message>
    <message>
        <source>Spot height, row %1</source>
        <translation>ऊँचाई का बिंदु, पंक्ति %1</translation>
    </message>
    <message>
        <source>Source line, point %1</source>
        <translation>स्रोत की लाइन, बिंदु %1</translation>
    </message>
    <message>
        <source>Field line, point %1</source>
        <translation>खेत की लाइन, बिंदु %1</translation>
    </message>
    <message>
        <source>is not further along the line than the point before it; list the points in the order in which the water meets them</source>
        <translation>लाइन पर अपने से पहले के बिंदु से आगे नहीं है; बिंदु उसी क्रम में लिखें जिसमें पानी उनसे गुज़रता है</translation>
    </message>
    <message>
        <source>is not in the table of pipes of this grade; choose one that is, or enter the bore as measured</source>
        <translation>इस ग्रेड के पाइपों की तालिका में नहीं है; उसमें से चुनें, या नापा हुआ भीतरी व्यास भरें</translation>
    </message>
    <message>
        <source>could not be joined to a surface, for the work was broken off; try again and let it finish</source>
        <translation>सतह में नहीं जोड़े जा सके, क्योंकि काम बीच में रोक दिया गया; फिर से चलाएँ और पूरा होने दें</translation>
    </message>
    <message>
        <source>pit depth from which a ladder stands in it</source>
        <translation>गड्ढे की गहराई, जिससे आगे अंदर सीढ़ी रहे</translation>
    </message>
    <message>
        <source>pit depth from which walls are held against cave-in</source>
        <translation>गड्ढे की गहराई, जिससे आगे दीवारें ढहने से रोकी जाएँ</translation>
    </message>
    <message>
        <source>deepest pit dug by hand</source>
        <translation>हाथ से खुदा सबसे गहरा गड्ढा</translation>
    </message>
    <message>
        <source>pit depth to which the table of batters goes</source>
        <translation>गड्ढे की गहराई, जहाँ तक सलामी की तालिका है</translation>
    </message>
    <message>
        <source>depth of an open cut in the firmest soil that stands a day</source>
        <translation>सबसे ठोस मिट्टी में एक दिन खड़े रहने वाले खुले कटान की गहराई</translation>
    </message>
    <message>
        <source>furthest way to the ladder</source>
        <translation>सीढ़ी तक ज़्यादा से ज़्यादा दूरी</translation>
    </message>
    <message>
        <source>toe of the heap back from the pit edge</source>
        <translation>ढेर का निचला किनारा, गड्ढे के किनारे से दूर</translation>
    </message>
    <message>
        <source>height of the heap at most</source>
        <translation>ढेर की ज़्यादा से ज़्यादा ऊँचाई</translation>
    </message>
    <message>
        <source>steepest side of loose ground</source>
        <translation>ढीली मिट्टी की सबसे खड़ी ढाल</translation>
    </message>
    <message>
        <source>slope from which old slips are looked for</source>
        <translation>ढाल, जिससे आगे पुरानी खिसकन देखी जाए</translation>
    </message>
    <message>
        <source>slope from which an engineer decides</source>
        <translation>ढाल, जिससे आगे इंजीनियर फ़ैसला करे</translation>
    </message>
    <message>
        <source>factor of safety wanted of a slope</source>
        <translation>ढलान का चाहा गया सुरक्षा गुणांक</translation>
    </message>
    <message>
        <source>factor of safety wanted of a cut</source>
        <translation>कटान का चाहा गया सुरक्षा गुणांक</translation>
    </message>
    <message>
        <source>walkway round the rim</source>
        <translation>मुंडेर के चारों ओर चलने की पट्टी</translation>
    </message>
    <message>
        <source>batter of the cut face</source>
        <translation>कटान की ढाल की सलामी</translation>
    </message>
    <message>
        <source>batter of the fill face</source>
        <translation>भराव की ढाल की सलामी</translation>
    </message>
    <message>
        <source>topsoil stripped</source>
        <translation>छीली गई ऊपरी मिट्टी</translation>
    </message>
    <message>
        <source>compacted fill per ground dug</source>
        <translation>खुदी ज़मीन से बना कुटा भराव</translation>
    </message>
    <message>
        <source>natural ground wanted over floor and walls</source>
        <translation>फ़र्श और दीवारों के ऊपर चाही गई मूल ज़मीन</translation>
    </message>
    <message>
        <source>distance to the edge, share of its drop, as for footings</source>
        <translation>किनारे से दूरी, उतार का हिस्सा, जैसे नींव के लिए</translation>
    </message>
    <message>
        <source>distance to the edge at most, as for footings</source>
        <translation>किनारे से ज़्यादा से ज़्यादा दूरी, जैसे नींव के लिए</translation>
    </message>
    <message>
        <source>house downhill within</source>
        <translation>ढलान की ओर घर, इतने के भीतर</translation>
    </message>
    <message>
        <source>weight over uplift wanted</source>
        <translation>उठान के मुकाबले चाहा गया वज़न</translation>
    </message>
    <message>
        <source>ground water that feeds frost, within</source>
        <translation>पाले को पानी देने वाला भूजल, इतने के भीतर</translation>
    </message>
    <message>
        <source>shrinkage of moderate swelling</source>
        <translation>मध्यम फूलने वाली मिट्टी का सिकुड़ना</translation>
    </message>
    <message>
        <source>shrinkage of high swelling</source>
        <translation>ज़्यादा फूलने वाली मिट्टी का सिकुड़ना</translation>
    </message>
    <message>
        <source>shrinkage of very high swelling</source>
        <translation>बहुत ज़्यादा फूलने वाली मिट्टी का सिकुड़ना</translation>
    </message>
    <message>
        <source>clay from which soil may swell</source>
        <translation>इतनी चिकनी मिट्टी से आगे मिट्टी फूल सकती है</translation>
    </message>
    <message>
        <source>low</source>
        <translation>कम</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>आम</translation>
    </message>
    <message>
        <source>high</source>
        <translation>ज़्यादा</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>mm per hour</source>
        <translation>mm प्रति घंटा</translation>
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
        <translation>स्तर हाथ से</translation>
    </message>
    <message>
        <source>A freeboard of %1 would leave it.</source>
        <translation>%1 फ्रीबोर्ड से यह बचा रहेगा।</translation>
    </message>
    <message>
        <source>As low as it is now, it has to be %1 long.</source>
        <translation>अभी जितना नीचा है, उतने में इसे %1 लंबा होना होगा।</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside, with %3 of water and mud, would hold them.</source>
        <translation>भीतर से %1 लंबी और %2 चौड़ी गाद कुंडी, जिसमें %3 पानी और गाद हो, उन्हें रोक लेगी।</translation>
    </message>
    <message>
        <source>The overflow</source>
        <translation>ओवरफ्लो</translation>
    </message>
    <message>
        <source>The blocked overflow</source>
        <translation>रुका हुआ ओवरफ्लो</translation>
    </message>
    <message>
        <source>The silt trap</source>
        <translation>गाद कुंडी</translation>
    </message>
    <message>
        <source>The leak test</source>
        <translation>लीक जाँच</translation>
    </message>
    <message>
        <source>%1 could not be reckoned, so nothing is known of it: %2.</source>
        <translation>%1 – हिसाब नहीं लग सका, इसलिए इसके बारे में कुछ पता नहीं: %2।</translation>
    </message>
    <message>
        <source>How far the water sank in a light bucket that floats deep in the tank, only a hand&apos;s breadth of it dry: this much evaporated.</source>
        <translation>टंकी में गहरी तैरती हल्की बाल्टी में पानी कितना उतरा, जिसका सिर्फ़ एक हथेली भर हिस्सा सूखा हो: इतना पानी भाप बना।</translation>
    </message>
    <message>
        <source>To make it, %1 are cut; next to nothing is filled in.</source>
        <translation>इसे बनाने में %1 कटान है; भराव न के बराबर है।</translation>
    </message>
    <message>
        <source>Anticlockwise seen from above; at 0 the length runs east. A tank whose length lies across the fall, on one level, needs the least digging.</source>
        <translation>ऊपर से देखने पर घड़ी की उलटी दिशा में; 0 पर लंबाई पूरब की ओर है। जिस टंकी की लंबाई ढाल के आड़े, एक ही स्तर पर हो, उसमें सबसे कम खुदाई लगती है।</translation>
    </message>
    <message>
        <source>How far the filled face runs out for each unit of height; 1.5 is usual for ground that is well rammed.</source>
        <translation>भराव की ढाल हर इकाई ऊँचाई पर कितनी बाहर फैलती है; अच्छी कुटी ज़मीन के लिए 1.5 आम है।</translation>
    </message>
    <message>
        <source>Cut or fill runs out of the survey before it meets the ground. Survey further out or move the tank; steeper cut faces help too, if the soil bears them.</source>
        <translation>कटान या भराव ज़मीन से मिलने से पहले ही सर्वे से बाहर निकल जाता है। और बाहर तक सर्वे करें या टंकी खिसकाएँ; मिट्टी सह सके तो कटान की ज़्यादा खड़ी ढाल से भी काम बनता है।</translation>
    </message>
    <message>
        <source>The ground below the tank may slip even with the tank empty, while it is dug.</source>
        <translation>टंकी के नीचे की ज़मीन खाली टंकी में भी, खुदाई के समय ही, खिसक सकती है।</translation>
    </message>
    <message>
        <source>The ground below the tank may slip when the tank leaks.</source>
        <translation>टंकी लीक करे तो उसके नीचे की ज़मीन खिसक सकती है।</translation>
    </message>
    <message>
        <source>A licensed engineer must look at it before anyone digs (calculation sheet E1). A place further from the edge, or on flatter ground, would help.</source>
        <translation>किसी के भी खोदने से पहले लाइसेंसधारी इंजीनियर को इसे देखना ही होगा (हिसाब की शीट E1)। किनारे से और दूर या कम ढाल वाली ज़मीन पर जगह लेने से मदद मिलेगी।</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie downhill of the tank, where its weight loads the ground that carries it. Heap it across the fall, to the %1 of the tank.</source>
        <translation>निकली मिट्टी का ढेर टंकी से ढलान की ओर रखा गया है, जहाँ उसका बोझ उस ज़मीन पर पड़ता है जो टंकी को थामे है। ढेर ढाल के आड़े, टंकी के %1 में लगाएँ।</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie uphill of the tank, where rain washes it in. Heap it across the fall, to the %1 of the tank.</source>
        <translation>निकली मिट्टी का ढेर टंकी से चढ़ाई की ओर रखा गया है, जहाँ से बारिश उसे बहाकर टंकी में लाती है। ढेर ढाल के आड़े, टंकी के %1 में लगाएँ।</translation>
    </message>
    <message>
        <source>The cut face of the platform stands up to %1 high and leans back %2 for each unit of height; the published table asks for %3 in this soil. Lean it back, or widen the walkway where it stands close over the pit.</source>
        <translation>समतल जगह के कटान की ढाल %1 तक ऊँची है और हर इकाई ऊँचाई पर %2 पीछे झुकती है; छपी तालिका इस मिट्टी में %3 माँगती है। उसे और पीछे झुकाएँ, या जहाँ वह गड्ढे के बहुत पास खड़ी है वहाँ चलने की पट्टी चौड़ी करें।</translation>
    </message>
    <message>
        <source>The fill face of the platform runs out %1 for each unit of height; loose ground comes to rest at %2. Make it %2 or flatter.</source>
        <translation>समतल जगह के भराव की ढाल हर इकाई ऊँचाई पर %1 बाहर फैलती है; ढीली मिट्टी %2 पर टिकती है। उसे %2 या उससे कम खड़ी बनाएँ।</translation>
    </message>
    <message>
        <source>the siphon does not run with its end wide open</source>
        <translation>सिरा पूरा खुला हो तो साइफन नहीं चलता</translation>
    </message>
    <message>
        <source>It fills the empty tank in %1 when nothing is drawn.</source>
        <translation>कुछ न निकालें, तो यह खाली टंकी को %1 में भर देती है।</translation>
    </message>
    <message>
        <source>The siphon cannot be started, not even with the tank full: its top lies %1 over the water, and %2 is the most.</source>
        <translation>साइफन चालू नहीं हो सकता, टंकी भरी हो तब भी नहीं: उसका सबसे ऊँचा हिस्सा पानी से %1 ऊपर है, और ज़्यादा से ज़्यादा %2 हो सकता है।</translation>
    </message>
    <message>
        <source>has another height than an earlier point at the same place</source>
        <translation>उसी जगह के पहले वाले बिंदु से अलग ऊँचाई का है</translation>
    </message>
    <message>
        <source>%1 %2, %4: found %3.</source>
        <translation>%1 – %2, %4: मिला %3।</translation>
    </message>
    <message>
        <source>The table of spot heights</source>
        <translation>ऊँचाई के बिंदुओं की तालिका</translation>
    </message>
    <message>
        <source>spoil heap off the line of the fall, least</source>
        <translation>निकली मिट्टी का ढेर, ढाल की सीध से कम से कम इतना हटकर</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1; the water then stands only %2 below the lowest part of the rim, and %3 is wanted.</source>
        <translation>मूसलाधार बारिश में ओवरफ्लो को %1 निकालना है; तब पानी मुंडेर की सबसे नीची जगह से सिर्फ़ %2 नीचे रहता है, और चाहिए %3।</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1 and cannot: the water runs over the rim and washes out the ground behind the lining. It should stay %2 below the lowest part of it.</source>
        <translation>मूसलाधार बारिश में ओवरफ्लो को %1 निकालना है और वह निकाल नहीं पाता: पानी मुंडेर के ऊपर से बहता है और लाइनिंग के पीछे की ज़मीन काट देता है। पानी को मुंडेर की सबसे नीची जगह से %2 नीचे रहना चाहिए।</translation>
    </message>
    <message>
        <source>The overflow passes it: the water stays %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>ओवरफ्लो उसे निकाल देता है: पानी मुंडेर की सबसे नीची जगह से %1 नीचे रहता है, चाहिए %2।</translation>
    </message>
    <message>
        <source>The overflow just passes it: the water stays only %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>ओवरफ्लो उसे बस निकाल पाता है: पानी मुंडेर की सबसे नीची जगह से सिर्फ़ %1 नीचे रहता है, चाहिए %2।</translation>
    </message>
    <message>
        <source>No leak test is entered. Let a light bucket float deep in the tank, only a hand&apos;s breadth of it dry; read both, and read them again after a dry day.</source>
        <translation>लीक जाँच नहीं भरी है। टंकी में एक हल्की बाल्टी गहरी तैराएँ, जिसका सिर्फ़ एक हथेली भर हिस्सा सूखा हो; दोनों में पानी का नाप पढ़ें, और एक सूखे दिन के बाद फिर पढ़ें।</translation>
    </message>
    <message>
        <source>The fill takes all that is dug, and %1 more that would have to be brought.</source>
        <translation>जितनी मिट्टी खुदती है वह सब भराव में लग जाती है, और %1 और बाहर से लानी होगी।</translation>
    </message>
    <message>
        <source>The fill takes more than all that is dug: %1 of ground would have to be brought. Lay the platform lower.</source>
        <translation>भराव में खुदी मिट्टी से ज़्यादा लगती है: %1 मिट्टी बाहर से लानी होगी। समतल जगह नीचे रखें।</translation>
    </message>
    <message>
        <source>By the levels of its ends alone the line would bring %1.</source>
        <translation>सिर्फ़ दोनों सिरों के स्तर से देखें तो लाइन %1 लाती।</translation>
    </message>
    <message>
        <source>The tank costs about %1.</source>
        <translation>टंकी का खर्च करीब %1 है।</translation>
    </message>
    <message>
        <source>The tank costs about %1: %2 in money, %3 given by the household in goods and work.</source>
        <translation>टंकी का खर्च करीब %1 है: %2 नकद, %3 परिवार की ओर से सामान और काम में बिना पैसे दिया।</translation>
    </message>
    <message>
        <source>%1 for materials</source>
        <translation>सामान के लिए %1</translation>
    </message>
    <message>
        <source>%1 for work</source>
        <translation>काम के लिए %1</translation>
    </message>
    <message>
        <source>%1 for carrying</source>
        <translation>ढुलाई के लिए %1</translation>
    </message>
    <message>
        <source>%1 for other things</source>
        <translation>दूसरी चीज़ों के लिए %1</translation>
    </message>
    <message>
        <source>%1 kept for what nobody foresees</source>
        <translation>अनदेखे खर्च के लिए %1</translation>
    </message>
    <message>
        <source>Of that, %1.</source>
        <translation>इसमें से %1।</translation>
    </message>
    <message>
        <source>For each m³ (%1) that the full tank stores, building costs %2.</source>
        <translation>भरी टंकी में रुके हर m³ (%1) पानी के लिए बनाने का खर्च %2 है।</translation>
    </message>
    <message>
        <source>all months</source>
        <translation>सभी महीने</translation>
    </message>
    <message>
        <source>What the water of the dry months costs cannot be told before the water balance is there.</source>
        <translation>पानी का हिसाब हुए बिना यह नहीं बताया जा सकता कि सूखे महीनों का पानी कितने का पड़ता है।</translation>
    </message>
    <message>
        <source>No month counts as dry, so the cost of water in the dry months cannot be told.</source>
        <translation>कोई महीना सूखा नहीं गिना जाता, इसलिए सूखे महीनों के पानी का खर्च नहीं बताया जा सकता।</translation>
    </message>
    <message>
        <source>In the dry months (%1) of a mean year %2 are drawn from the tank; what they cost cannot be told.</source>
        <translation>औसत साल के सूखे महीनों (%1) में टंकी से %2 निकाला जाता है; वह कितने का पड़ता है, बताया नहीं जा सकता।</translation>
    </message>
    <message>
        <source>For each m³ (%1) that it delivers in the dry months (%2), the tank costs %3 over its life, interest and upkeep counted; in a mean year it delivers %4 then.</source>
        <translation>सूखे महीनों (%2) में टंकी जो पानी देती है, उसके हर m³ (%1) का खर्च पूरी उम्र में %3 है, ब्याज और रखरखाव मिलाकर; औसत साल में तब वह %4 देती है।</translation>
    </message>
    <message>
        <source>%1: %2 (%3 for a single one)</source>
        <translation>%1: %2 (एक का %3)</translation>
    </message>
    <message>
        <source>Loads to carry: %1.</source>
        <translation>ढोने के बोझ: %1।</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1 (into %2)</source>
        <translation>%1 (%2 में)</translation>
    </message>
    <message>
        <source>Too heavy for one load and split even: %1.</source>
        <translation>एक बोझ के लिए बहुत भारी, बराबर हिस्सों में बाँटा: %1।</translation>
    </message>
    <message>
        <source>Money is needed first on %1; most on one day is %2, on %3.</source>
        <translation>पैसे की ज़रूरत सबसे पहले %1 को पड़ती है; एक दिन में सबसे ज़्यादा %2, %3 को।</translation>
    </message>
    <message>
        <source>No price is entered yet, so nothing is known of the money. Ask the shop and the people who work, and enter what one unit costs.</source>
        <translation>अभी कोई दाम नहीं भरा, इसलिए पैसे के बारे में कुछ पता नहीं। दुकान वाले से और काम करने वालों से पूछें, और एक इकाई का दाम भरें।</translation>
    </message>
    <message>
        <source>digging</source>
        <translation>खुदाई</translation>
    </message>
    <message>
        <source>ramming fill</source>
        <translation>भराव कूटना</translation>
    </message>
    <message>
        <source>laying the stone bed</source>
        <translation>सोलिंग बिछाना</translation>
    </message>
    <message>
        <source>spreading plaster</source>
        <translation>प्लास्टर फैलाना</translation>
    </message>
    <message>
        <source>mixing mortar</source>
        <translation>मसाला बनाना</translation>
    </message>
    <message>
        <source>not carried</source>
        <translation>ढुलाई नहीं</translation>
    </message>
    <message>
        <source>porter</source>
        <translation>बोझा ढोने वाला</translation>
    </message>
    <message>
        <source>mule</source>
        <translation>खच्चर</translation>
    </message>
    <message>
        <source>trolley</source>
        <translation>ट्रॉली</translation>
    </message>
    <message>
        <source>soil-cement plaster</source>
        <translation>मिट्टी-सीमेंट प्लास्टर</translation>
    </message>
    <message>
        <source>plastic sheet</source>
        <translation>प्लास्टिक शीट</translation>
    </message>
    <message>
        <source>ferrocement</source>
        <translation>फेरोसीमेंट</translation>
    </message>
    <message>
        <source>stone masonry</source>
        <translation>पत्थर की चिनाई</translation>
    </message>
    <message>
        <source>moulded plastic tank</source>
        <translation>बनी-बनाई प्लास्टिक टंकी</translation>
    </message>
    <message>
        <source>the whole job</source>
        <translation>पूरा काम</translation>
    </message>
    <message>
        <source>one m² of face</source>
        <translation>सतह का एक m²</translation>
    </message>
    <message>
        <source>one m³ held</source>
        <translation>समाई का एक m³</translation>
    </message>
    <message>
        <source>thickness of the coats</source>
        <translation>कोटों की मोटाई</translation>
    </message>
    <message>
        <source>unevenness of dug faces</source>
        <translation>खुदी सतहों का ऊबड़-खाबड़पन</translation>
    </message>
    <message>
        <source>loose ingredients per placed plaster</source>
        <translation>लगे प्लास्टर पर ढीला सामान</translation>
    </message>
    <message>
        <source>loose weight of cement</source>
        <translation>सीमेंट का ढीला वज़न</translation>
    </message>
    <message>
        <source>time for digging</source>
        <translation>खुदाई का समय</translation>
    </message>
    <message>
        <source>time for plastering</source>
        <translation>प्लास्टर का समय</translation>
    </message>
    <message>
        <source>prices of goods</source>
        <translation>सामान के दाम</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>मज़दूरी</translation>
    </message>
    <message>
        <source>flow of the source</source>
        <translation>स्रोत का बहाव</translation>
    </message>
    <message>
        <source>Filling starts on %1, later than %2, by which it should: plaster that falls dry cracks.</source>
        <translation>भराई %1 को शुरू होती है, %2 के बाद, जब तक शुरू हो जानी चाहिए थी: सूखा रह गया प्लास्टर फटता है।</translation>
    </message>
    <message>
        <source>Filling starts on %1; it should start by %2 at the latest.</source>
        <translation>भराई %1 को शुरू होती है; ज़्यादा से ज़्यादा %2 तक शुरू हो जानी चाहिए।</translation>
    </message>
    <message>
        <source>with %1 a day let in, as entered</source>
        <translation>रोज़ %1 पानी डालकर, जैसा भरा गया है</translation>
    </message>
    <message>
        <source>with %1 a day from the source at first</source>
        <translation>शुरू में स्रोत से रोज़ %1 पानी लेकर</translation>
    </message>
    <message>
        <source>What flows in is not known, so nobody can say when the tank is full. Enter the water let in each day, or the flow of the source.</source>
        <translation>कितना पानी आता है, पता नहीं, इसलिए कोई नहीं बता सकता कि टंकी कब भरेगी। रोज़ डाला जाने वाला पानी भरें, या स्रोत का बहाव।</translation>
    </message>
    <message>
        <source>The tank is full on %1, %2.</source>
        <translation>टंकी %1 को भर जाती है, %2।</translation>
    </message>
    <message>
        <source>The tank does not fill within a year, %1: the water comes to %2 over the floor.</source>
        <translation>टंकी एक साल में नहीं भरती, %1: पानी फ़र्श से %2 ऊपर तक आता है।</translation>
    </message>
    <message>
        <source>On some days less is let in than could be, so that the water does not rise too fast for the young plaster.</source>
        <translation>कुछ दिन जितना आ सकता है उससे कम पानी डाला जाता है, ताकि नए प्लास्टर के लिए पानी बहुत तेज़ न चढ़े।</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor: wet sacks until %3.</source>
        <translation>फ़र्श से %1 से %2 ऊपर की दीवार: %3 तक गीली बोरियाँ।</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor, which the water does not cover: wet sacks until %3.</source>
        <translation>फ़र्श से %1 से %2 ऊपर की दीवार, जिसे पानी नहीं ढकता: %3 तक गीली बोरियाँ।</translation>
    </message>
    <message>
        <source>Sacks on bare wall take about %1 of water after the last coat has cured.</source>
        <translation>आखिरी कोट की तराई के बाद खुली दीवार की बोरियों में करीब %1 पानी लगता है।</translation>
    </message>
    <message>
        <source>For the water to cover all walls by the time their curing ends, about %1 would have to be brought by hand.</source>
        <translation>तराई पूरी होने तक पानी सब दीवारें ढक ले, इसके लिए करीब %1 पानी हाथ से लाना पड़ेगा।</translation>
    </message>
    <message>
        <source>There is no coat yet after which the tank could be filled.</source>
        <translation>अभी कोई कोट नहीं है जिसके बाद टंकी भरी जा सके।</translation>
    </message>
    <message>
        <source>Over the years %1 costs least: %2 a year, interest and upkeep counted.</source>
        <translation>सालों के हिसाब से %1 सबसे सस्ता है: साल में %2, ब्याज और रखरखाव मिलाकर।</translation>
    </message>
    <message>
        <source>That is %1 a year for each m³ (%2) stored.</source>
        <translation>यानी रुके हर m³ (%2) पानी के लिए साल में %1।</translation>
    </message>
    <message>
        <source>%1: %2 a year; %3 to build with its digging, lasts about %4, upkeep %5 a year.</source>
        <translation>%1: साल में %2; खुदाई समेत बनाने में %3, करीब %4 चलता है, रखरखाव साल में %5।</translation>
    </message>
    <message>
        <source>Life and upkeep are proposals to begin with: ask people who have such a lining, and change them.</source>
        <translation>उम्र और रखरखाव सिर्फ़ शुरुआती सुझाव हैं: जिनके यहाँ ऐसी लाइनिंग है उनसे पूछें, और बदलें।</translation>
    </message>
    <message>
        <source>The bill comes out too low, for a price is missing: %1.</source>
        <translation>खर्च का हिसाब कम निकल रहा है, क्योंकि एक दाम नहीं भरा है: %1।</translation>
    </message>
    <message>
        <source>The bill comes out too low, for prices are missing: %1. The first of them: %2.</source>
        <translation>खर्च का हिसाब कम निकल रहा है, क्योंकि दाम नहीं भरे हैं: %1। पहला: %2।</translation>
    </message>
    <message>
        <source>A bag of cement weighs %1, more than the %2 of one load (%3). Split each bag into dry, closed sacks of the same weight.</source>
        <translation>सीमेंट का एक कट्टा %1 का है, एक बोझ के %2 से ज़्यादा (%3)। हर कट्टे को बराबर वज़न की सूखी, बंद बोरियों में बाँटें।</translation>
    </message>
    <message>
        <source>Option %1 cannot be built as entered, so nothing is reckoned for it. The table of options says why.</source>
        <translation>विकल्प %1 जैसा भरा है वैसा बन नहीं सकता, इसलिए उसका हिसाब नहीं लगाया गया। कारण विकल्पों की तालिका में है।</translation>
    </message>
    <message>
        <source>What is bought or paid: an item of the plan, or one of your own such as a gate or a meal.</source>
        <translation>क्या खरीदा या चुकाया जाता है: योजना की कोई मद, या आपकी अपनी, जैसे गेट या खाना।</translation>
    </message>
    <message>
        <source>What one unit costs where it is bought, without carrying; leave empty if not known.</source>
        <translation>जहाँ से खरीदते हैं वहाँ एक इकाई का दाम, ढुलाई के बिना; पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>How many units; leave empty to take it from the plan. An item of your own needs it.</source>
        <translation>कितनी इकाइयाँ; योजना से लेना हो तो खाली छोड़ें। अपनी मद में यह भरना ज़रूरी है।</translation>
    </message>
    <message>
        <source>Share that the household or the group gives itself, in goods or in work; no money is paid for it.</source>
        <translation>जितना हिस्सा परिवार या समूह खुद देता है, सामान या काम में; इसका पैसा नहीं दिया जाता।</translation>
    </message>
    <message>
        <source>Who carries it from the road to the tank.</source>
        <translation>सड़क से टंकी तक इसे कौन ढोता है।</translation>
    </message>
    <message>
        <source>Weigh one unit; leave empty to take it from the table of weights.</source>
        <translation>एक इकाई तौलें; वज़न की तालिका से लेना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>What one person carries on this path and comes back for again, all day; ask the porters.</source>
        <translation>एक व्यक्ति इस रास्ते पर जितना उठाकर दिन भर बार-बार ला सकता है; ढोने वालों से पूछें।</translation>
    </message>
    <message>
        <source>How often a porter walks from road to tank and back in a day.</source>
        <translation>बोझा ढोने वाला दिन में कितनी बार सड़क से टंकी तक जाकर लौटता है।</translation>
    </message>
    <message>
        <source>What a porter is paid for one load from road to tank; leave empty if not known.</source>
        <translation>सड़क से टंकी तक एक बोझ का ढोने वाले को जितना मिलता है; पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>What one mule carries on this path; about a fifth of its own weight.</source>
        <translation>एक खच्चर इस रास्ते पर जितना ढोता है; अपने वज़न का करीब पाँचवाँ हिस्सा।</translation>
    </message>
    <message>
        <source>How often a mule goes from road to tank and back in a day.</source>
        <translation>खच्चर दिन में कितनी बार सड़क से टंकी तक जाकर लौटता है।</translation>
    </message>
    <message>
        <source>What is paid for one mule load from road to tank, its driver counted; leave empty if not known.</source>
        <translation>सड़क से टंकी तक खच्चर के एक बोझ का जितना देते हैं, खच्चर वाले को मिलाकर; पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>What one trolley or small tractor takes over this road.</source>
        <translation>एक ट्रॉली या छोटा ट्रैक्टर इस सड़क पर जितना ले जाता है।</translation>
    </message>
    <message>
        <source>How often a trolley drives to the tank and back in a day.</source>
        <translation>ट्रॉली दिन में कितनी बार टंकी तक जाकर लौटती है।</translation>
    </message>
    <message>
        <source>What is paid for one trolley load, its driver counted; leave empty if not known.</source>
        <translation>ट्रॉली के एक फेरे के बोझ का जितना देते हैं, चालक को मिलाकर; पता न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Share of the bill that is kept in reserve for breakage, rain and forgotten things.</source>
        <translation>खर्च का जितना हिस्सा टूट-फूट, बारिश और भूली चीज़ों के लिए अलग रखा जाता है।</translation>
    </message>
    <message>
        <source>What money costs or would earn in a year beyond the rise of prices; it makes linings that last long and short comparable.</source>
        <translation>महँगाई से ऊपर, पैसा साल में कितने का पड़ता है या कितना कमाता; इससे ज़्यादा और कम चलने वाली लाइनिंग की तुलना हो पाती है।</translation>
    </message>
    <message>
        <source>One way to line the tank, to set beside the others.</source>
        <translation>टंकी की लाइनिंग का एक तरीका, बाकी के साथ रखकर देखने के लिए।</translation>
    </message>
    <message>
        <source>What the lining costs, put in place; leave empty if not known. For soil-cement plaster the bill of this plan is taken then.</source>
        <translation>लगाई हुई लाइनिंग का खर्च; पता न हो तो खाली छोड़ें। मिट्टी-सीमेंट प्लास्टर के लिए तब इस योजना का खर्च लिया जाता है।</translation>
    </message>
    <message>
        <source>Whether the price is for the whole job, for a face of one m², or for one m³ that the tank holds.</source>
        <translation>दाम पूरे काम का है, सतह के एक m² का, या टंकी की समाई के एक m³ का।</translation>
    </message>
    <message>
        <source>Years until the lining has to be made anew; ask people who have one.</source>
        <translation>कितने साल बाद लाइनिंग नई बनानी पड़ती है; जिनके यहाँ है उनसे पूछें।</translation>
    </message>
    <message>
        <source>What mending and cleaning cost in a year, as a share of the price.</source>
        <translation>मरम्मत और सफ़ाई का सालाना खर्च, दाम के हिस्से के रूप में।</translation>
    </message>
    <message>
        <source>A figure of the plan that nobody knows exactly beforehand.</source>
        <translation>योजना का ऐसा आँकड़ा जिसे पहले से कोई ठीक-ठीक नहीं जानता।</translation>
    </message>
    <message>
        <source>How far it may fall below the figure entered, at worst; 0 if it cannot.</source>
        <translation>भरे गए आँकड़े से ज़्यादा से ज़्यादा कितना नीचे जा सकता है; न जा सके तो 0।</translation>
    </message>
    <message>
        <source>How far it may rise over the figure entered, at worst; 0 if it cannot.</source>
        <translation>भरे गए आँकड़े से ज़्यादा से ज़्यादा कितना ऊपर जा सकता है; न जा सके तो 0।</translation>
    </message>
    <message>
        <source>How many times the plan is reckoned with figures drawn by lot; more draws take longer and shake less.</source>
        <translation>पर्ची डालकर चुने आँकड़ों से योजना का हिसाब कितनी बार लगाया जाए; ज़्यादा ड्रॉ में समय ज़्यादा लगता है और नतीजा कम डोलता है।</translation>
    </message>
    <message>
        <source>Start of the lot; the same seed gives the same draws again.</source>
        <translation>ड्रॉ की शुरुआत; वही संख्या फिर वही ड्रॉ देती है।</translation>
    </message>
    <message>
        <source>Shortest length that is tried; of a round tank the smallest diameter. It is measured as the clear length of the tank is.</source>
        <translation>सबसे कम लंबाई जो आज़माई जाए; गोल टंकी का सबसे छोटा व्यास। यह टंकी की भीतरी लंबाई की तरह नापी जाती है।</translation>
    </message>
    <message>
        <source>Longest length that is tried; of a round tank the largest diameter. Measure what fits on the platform.</source>
        <translation>सबसे ज़्यादा लंबाई जो आज़माई जाए; गोल टंकी का सबसे बड़ा व्यास। नापें कि समतल जगह पर कितना आता है।</translation>
    </message>
    <message>
        <source>Smallest clear width that is tried.</source>
        <translation>सबसे कम भीतरी चौड़ाई जो आज़माई जाए।</translation>
    </message>
    <message>
        <source>Largest clear width that is tried; measure what fits on the platform.</source>
        <translation>सबसे ज़्यादा भीतरी चौड़ाई जो आज़माई जाए; नापें कि समतल जगह पर कितना आता है।</translation>
    </message>
    <message>
        <source>Smallest clear depth that is tried.</source>
        <translation>सबसे कम भीतरी गहराई जो आज़माई जाए।</translation>
    </message>
    <message>
        <source>Largest clear depth that is tried; pits deeper than hand digging allows are left out all the same.</source>
        <translation>सबसे ज़्यादा भीतरी गहराई जो आज़माई जाए; हाथ से खोदने की सीमा से गहरे गड्ढे फिर भी छोड़ दिए जाते हैं।</translation>
    </message>
    <message>
        <source>Sizes are tried this far apart; half the step means up to eight times as many sizes.</source>
        <translation>नाप इतने-इतने फ़र्क पर आज़माए जाते हैं; आधा फ़र्क यानी आठ गुना तक नाप।</translation>
    </message>
    <message>
        <source>What the bill may come to; leave empty if money sets no limit.</source>
        <translation>खर्च ज़्यादा से ज़्यादा कितना हो; पैसे की कोई सीमा न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Bags of cement that can be had; leave empty if cement sets no limit.</source>
        <translation>सीमेंट के जितने कट्टे मिल सकते हैं; सीमेंट की कोई सीमा न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>People who can come for one coat on one day; leave empty if they set no limit.</source>
        <translation>एक दिन एक कोट के लिए जितने लोग आ सकते हैं; लोगों की कोई सीमा न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>मद</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>एक का दाम</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>मात्रा</translation>
    </message>
    <message>
        <source>Given by the household</source>
        <translation>परिवार से बिना पैसे दिया</translation>
    </message>
    <message>
        <source>Carried by</source>
        <translation>कौन ढोता है</translation>
    </message>
    <message>
        <source>Weight of one</source>
        <translation>एक का वज़न</translation>
    </message>
    <message>
        <source>Porter: load at most</source>
        <translation>ढोने वाला: ज़्यादा से ज़्यादा बोझ</translation>
    </message>
    <message>
        <source>Porter: trips a day</source>
        <translation>ढोने वाला: दिन में फेरे</translation>
    </message>
    <message>
        <source>Porter: price of a trip</source>
        <translation>ढोने वाला: एक फेरे का दाम</translation>
    </message>
    <message>
        <source>Mule: load at most</source>
        <translation>खच्चर: ज़्यादा से ज़्यादा बोझ</translation>
    </message>
    <message>
        <source>Mule: trips a day</source>
        <translation>खच्चर: दिन में फेरे</translation>
    </message>
    <message>
        <source>Mule: price of a trip</source>
        <translation>खच्चर: एक फेरे का दाम</translation>
    </message>
    <message>
        <source>Trolley: load at most</source>
        <translation>ट्रॉली: ज़्यादा से ज़्यादा बोझ</translation>
    </message>
    <message>
        <source>Trolley: trips a day</source>
        <translation>ट्रॉली: दिन में फेरे</translation>
    </message>
    <message>
        <source>Trolley: price of a trip</source>
        <translation>ट्रॉली: एक फेरे का दाम</translation>
    </message>
    <message>
        <source>Kept for what nobody foresees</source>
        <translation>अनदेखे खर्च के लिए</translation>
    </message>
    <message>
        <source>Interest a year</source>
        <translation>सालाना ब्याज</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>दाम</translation>
    </message>
    <message>
        <source>Price is for</source>
        <translation>दाम किसका</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>चलता है</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>साल का रखरखाव</translation>
    </message>
    <message>
        <source>What is uncertain</source>
        <translation>क्या पक्का नहीं</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>सबसे कम</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>सबसे ज़्यादा</translation>
    </message>
    <message>
        <source>Number of draws</source>
        <translation>कितने ड्रॉ</translation>
    </message>
    <message>
        <source>Seed of the draws</source>
        <translation>ड्रॉ की शुरुआती संख्या</translation>
    </message>
    <message>
        <source>Length from</source>
        <translation>लंबाई कितने से</translation>
    </message>
    <message>
        <source>Length to</source>
        <translation>लंबाई कितने तक</translation>
    </message>
    <message>
        <source>Width from</source>
        <translation>चौड़ाई कितने से</translation>
    </message>
    <message>
        <source>Width to</source>
        <translation>चौड़ाई कितने तक</translation>
    </message>
    <message>
        <source>Depth from</source>
        <translation>गहराई कितने से</translation>
    </message>
    <message>
        <source>Depth to</source>
        <translation>गहराई कितने तक</translation>
    </message>
    <message>
        <source>In steps of</source>
        <translation>कितने फ़र्क पर</translation>
    </message>
    <message>
        <source>Money at most</source>
        <translation>ज़्यादा से ज़्यादा पैसा</translation>
    </message>
    <message>
        <source>Bags of cement at most</source>
        <translation>ज़्यादा से ज़्यादा सीमेंट के कट्टे</translation>
    </message>
    <message>
        <source>People on a coat at most</source>
        <translation>एक कोट पर ज़्यादा से ज़्यादा लोग</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>पत्थर</translation>
    </message>
    <message>
        <source>Sacks</source>
        <translation>बोरियाँ</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>मज़दूर</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>मिस्त्री</translation>
    </message>
    <message>
        <source>Fence</source>
        <translation>बाड़</translation>
    </message>
    <message>
        <source>Porters</source>
        <translation>बोझा ढोने वाले</translation>
    </message>
    <message>
        <source>Mules</source>
        <translation>खच्चर</translation>
    </message>
    <message>
        <source>Trolley</source>
        <translation>ट्रॉली</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>कट्टा</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>person-day</source>
        <translation>दिहाड़ी</translation>
    </message>
    <message>
        <source>job</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Person-days of work</source>
        <translation>काम की दिहाड़ी</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>पैसा</translation>
    </message>
    <message>
        <source>Days to fill the tank</source>
        <translation>टंकी भरने के दिन</translation>
    </message>
    <message>
        <source>weight of loose soil</source>
        <translation>ढीली मिट्टी का वज़न</translation>
    </message>
    <message>
        <source>weight of loose sand</source>
        <translation>ढीली रेत का वज़न</translation>
    </message>
    <message>
        <source>weight of loose stone</source>
        <translation>ढीले पत्थर का वज़न</translation>
    </message>
    <message>
        <source>weight of water</source>
        <translation>पानी का वज़न</translation>
    </message>
    <message>
        <source>weight of an empty sack</source>
        <translation>खाली बोरी का वज़न</translation>
    </message>
    <message>
        <source>weight of pipe</source>
        <translation>पाइप का वज़न</translation>
    </message>
    <message>
        <source>weight of fence</source>
        <translation>बाड़ का वज़न</translation>
    </message>
    <message>
        <source>Clear the ground</source>
        <translation>ज़मीन साफ़ करें</translation>
    </message>
    <message>
        <source>Set out with pegs and string</source>
        <translation>खूँटी और डोरी से ले-आउट करें</translation>
    </message>
    <message>
        <source>Strip the topsoil</source>
        <translation>ऊपरी मिट्टी छीलें</translation>
    </message>
    <message>
        <source>Cut the platform</source>
        <translation>समतल जगह काटें</translation>
    </message>
    <message>
        <source>Fill and ram the platform</source>
        <translation>समतल जगह भरें और कूटें</translation>
    </message>
    <message>
        <source>Dig the low part of the pit</source>
        <translation>गड्ढे का निचला हिस्सा खोदें</translation>
    </message>
    <message>
        <source>Carry the spoil to its heap</source>
        <translation>निकली मिट्टी ढेर तक ले जाएँ</translation>
    </message>
    <message>
        <source>Trim walls and floor</source>
        <translation>दीवारें और तला छीलकर बराबर करें</translation>
    </message>
    <message>
        <source>Lay pipes and their collars</source>
        <translation>पाइप और उनके कॉलर लगाएँ</translation>
    </message>
    <message>
        <source>Fill for the first time</source>
        <translation>पहली भराई करें</translation>
    </message>
    <message>
        <source>Watch the first filling</source>
        <translation>पहली भराई पर नज़र रखें</translation>
    </message>
    <message>
        <source>Test for leaks</source>
        <translation>लीक जाँच करें</translation>
    </message>
    <message>
        <source>Build the silt trap</source>
        <translation>गाद कुंडी बनाएँ</translation>
    </message>
    <message>
        <source>Build overflow and spill path</source>
        <translation>ओवरफ्लो और निकास की नाली बनाएँ</translation>
    </message>
    <message>
        <source>Build fence, gate and ladder</source>
        <translation>बाड़, गेट और सीढ़ी बनाएँ</translation>
    </message>
    <message>
        <source>Plant the beds</source>
        <translation>क्यारियों में बुआई करें</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>मिस्त्री</translation>
    </message>
    <message>
        <source>people who wet</source>
        <translation>भिगाने वाले लोग</translation>
    </message>
    <message>
        <source>records of work and batches</source>
        <translation>काम और घान के रिकॉर्ड</translation>
    </message>
    <message>
        <source>ranges of uncertain figures</source>
        <translation>अनिश्चित आँकड़ों के दायरे</translation>
    </message>
    <message>
        <source>limits of the search</source>
        <translation>खोज की सीमाएँ</translation>
    </message>
    <message>
        <source>%1 can be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 एक ही बार में लग सकता है: %2 के भीतर इसमें %3 चाहिए (%4), और हैं %5 (%6)।</translation>
    </message>
    <message>
        <source>%1 cannot be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 एक ही बार में नहीं लग सकता: %2 के भीतर इसमें %3 चाहिए (%4), और हैं %5 (%6)।</translation>
    </message>
    <message>
        <source>No smaller tank of this depth is found that these people could plaster in one go: ask for more people.</source>
        <translation>इस गहराई की ऐसी कोई छोटी टंकी नहीं मिली जिस पर ये लोग एक ही बार में प्लास्टर कर सकें: और लोग बुलाएँ।</translation>
    </message>
    <message>
        <source>%1: batches with a whole bag each: %2, which is %3 an hour; the mixing places bring %4 an hour.</source>
        <translation>%1: एक-एक कट्टे के घान: %2, यानी घंटे में %3; मसाला बनाने की जगहें घंटे में %4 देती हैं।</translation>
    </message>
    <message>
        <source>That is too slow; mixing places needed: %1.</source>
        <translation>यह बहुत धीमा है; मसाला बनाने की जगहें चाहिए: %1।</translation>
    </message>
    <message>
        <source>%1: a batch is on the wall in %2; it may take %3 before it stiffens.</source>
        <translation>%1: एक घान %2 में दीवार पर लग जाता है; सख्त होने लगने में %3 हैं।</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3. Mix half a bag at a time, which is on the wall in %4.</source>
        <translation>%1: एक घान फैलाने में %2 लगते हैं और वह %3 बाद सख्त होने लगता है। एक बार में आधा कट्टा ही बनाएँ, जो %4 में दीवार पर लग जाता है।</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3; even half a bag takes %4. More people have to spread.</source>
        <translation>%1: एक घान फैलाने में %2 लगते हैं और वह %3 बाद सख्त होने लगता है; आधे कट्टे में भी %4 लगते हैं। फैलाने वाले लोग और चाहिए।</translation>
    </message>
    <message>
        <source>%1: have ready %2 of cement, %3 of water for mixing and %4 sacks to cover it.</source>
        <translation>%1: तैयार रखें: सीमेंट %2, मसाले का पानी %3 और ढकने के लिए बोरियाँ %4।</translation>
    </message>
    <message>
        <source>one of them a mason</source>
        <translation>इनमें एक मिस्त्री</translation>
    </message>
    <message>
        <source>none of them a mason</source>
        <translation>इनमें कोई मिस्त्री नहीं</translation>
    </message>
    <message numerus="yes">
        <source>%1 of them masons</source>
        <translation>
            <numerusform>इनमें %1 मिस्त्री</numerusform>
            <numerusform>इनमें %1 मिस्त्री</numerusform>
        </translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 across and holds about %2.</source>
        <translation>ये लोग इसी गहराई की ऐसी टंकी पर प्लास्टर कर सकते हैं जो %1 चौड़ी (गोल) हो और जिसमें करीब %2 आए।</translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 long and %2 wide and holds about %3.</source>
        <translation>ये लोग इसी गहराई की ऐसी टंकी पर प्लास्टर कर सकते हैं जो %1 लंबी और %2 चौड़ी हो और जिसमें करीब %3 आए।</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>हाँ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>नहीं</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>नहीं भरा</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>Cannot be built</source>
        <translation>नहीं बन सकती</translation>
    </message>
    <message>
        <source>Clear floor and depth</source>
        <translation>भीतरी फ़र्श और गहराई</translation>
    </message>
    <message>
        <source>Holds when full</source>
        <translation>भरी टंकी में पानी</translation>
    </message>
    <message>
        <source>Can be drawn</source>
        <translation>निकाला जा सकता</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>दस में से कितने साल, साल भर पानी</translation>
    </message>
    <message>
        <source>Days without water in a mean year</source>
        <translation>औसत साल में बिना पानी के दिन</translation>
    </message>
    <message>
        <source>Drawn in the dry months of a mean year</source>
        <translation>औसत साल के सूखे महीनों में निकाला</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>खर्च</translation>
    </message>
    <message>
        <source>Of it in money</source>
        <translation>उसमें नकद</translation>
    </message>
    <message>
        <source>Cost for each m³ stored</source>
        <translation>रुके हर m³ का खर्च</translation>
    </message>
    <message>
        <source>Ground to dig for the pit</source>
        <translation>गड्ढे के लिए खोदनी ज़मीन</translation>
    </message>
    <message>
        <source>People on a coat, at most</source>
        <translation>एक कोट पर लोग, ज़्यादा से ज़्यादा</translation>
    </message>
    <message>
        <source>Works begin</source>
        <translation>निर्माण शुरू</translation>
    </message>
    <message>
        <source>Works end</source>
        <translation>निर्माण खत्म</translation>
    </message>
    <message>
        <source>Findings that say stop</source>
        <translation>&quot;रुकें&quot; वाली ध्यान की बातें</translation>
    </message>
    <message>
        <source>Findings that ask for caution</source>
        <translation>&quot;सावधान&quot; वाली ध्यान की बातें</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Closed days</source>
        <translation>बंद दिन</translation>
    </message>
    <message>
        <source>Wishes for tasks</source>
        <translation>कामों की इच्छाएँ</translation>
    </message>
    <message>
        <source>Own rates</source>
        <translation>अपनी दरें</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>रिकॉर्ड</translation>
    </message>
    <message>
        <source>Trial batches</source>
        <translation>जाँच घान</translation>
    </message>
    <message>
        <source>Work measured</source>
        <translation>नापा गया काम</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>दाम</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>दाम की सूची</translation>
    </message>
    <message>
        <source>Porter</source>
        <translation>बोझा ढोने वाला</translation>
    </message>
    <message>
        <source>Mule</source>
        <translation>खच्चर</translation>
    </message>
    <message>
        <source>Linings compared</source>
        <translation>लाइनिंग की तुलना</translation>
    </message>
    <message>
        <source>Ranges</source>
        <translation>दायरे</translation>
    </message>
    <message>
        <source>Uncertain figures</source>
        <translation>अनिश्चित आँकड़े</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>खोज की सीमाएँ</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>विकल्प</translation>
    </message>
    <message>
        <source>Closed days %1</source>
        <translation>बंद दिन %1</translation>
    </message>
    <message>
        <source>Wish %1</source>
        <translation>इच्छा %1</translation>
    </message>
    <message>
        <source>Own rate %1</source>
        <translation>अपनी दर %1</translation>
    </message>
    <message>
        <source>Trial batch %1</source>
        <translation>जाँच घान %1</translation>
    </message>
    <message>
        <source>Work measured %1</source>
        <translation>नापा गया काम %1</translation>
    </message>
    <message>
        <source>Price list, line %1</source>
        <translation>दाम की सूची, पंक्ति %1</translation>
    </message>
    <message>
        <source>Lining %1</source>
        <translation>लाइनिंग %1</translation>
    </message>
    <message>
        <source>Uncertain figure %1</source>
        <translation>अनिश्चित आँकड़ा %1</translation>
    </message>
    <message>
        <source>Option %1</source>
        <translation>विकल्प %1</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>बदलाव</translation>
    </message>
    <message>
        <source>stands there already; give each line its own</source>
        <translation>वहाँ पहले से है; हर पंक्ति को अलग रखें</translation>
    </message>
    <message>
        <source>leaves no day to work on; give fewer closed days, or another rest day</source>
        <translation>काम का कोई दिन नहीं बचता; बंद दिन कम भरें, या छुट्टी का दूसरा दिन रखें</translation>
    </message>
    <message>
        <source>does not lie in order: low must not be over typical, nor typical over high</source>
        <translation>क्रम में नहीं है: कम वाला आम से ज़्यादा न हो, और आम वाला ज़्यादा से</translation>
    </message>
    <message>
        <source>is no entry that an option can change; take the change out of the option</source>
        <translation>ऐसी एंट्री नहीं जिसे विकल्प बदल सके; विकल्प से यह बदलाव हटाएँ</translation>
    </message>
    <message>
        <source>is not in the table of rates; choose one that is</source>
        <translation>दरों की तालिका में नहीं है; उसमें से कोई चुनें</translation>
    </message>
    <message>
        <source>%1: %2, hardly more or less.</source>
        <translation>%1: %2, न ज़्यादा न कम।</translation>
    </message>
    <message>
        <source>%1: %2 in the middle; in one of ten cases more than %3, in one of ten less than %4.</source>
        <translation>%1: बीच में %2; दस में से एक बार %3 से ज़्यादा, दस में से एक बार %4 से कम।</translation>
    </message>
    <message>
        <source>With the figures as entered it is %1.</source>
        <translation>जैसे आँकड़े भरे हैं उनसे %1 आता है।</translation>
    </message>
    <message>
        <source>What moves it most: %1.</source>
        <translation>सबसे ज़्यादा असर किसका: %1।</translation>
    </message>
    <message>
        <source>Nothing has been drawn yet, so no range can be told.</source>
        <translation>अभी कोई ड्रॉ नहीं हुआ, इसलिए दायरा नहीं बताया जा सकता।</translation>
    </message>
    <message>
        <source>From %1 draws between the lowest and highest values entered. A range is no promise: it is as good as these values.</source>
        <translation>भरे गए सबसे कम और सबसे ज़्यादा मानों के बीच %1 ड्रॉ से। दायरा कोई वादा नहीं है: वह उतना ही सही है जितने ये मान।</translation>
    </message>
    <message numerus="yes">
        <source>%1 records</source>
        <translation>
            <numerusform>%1 रिकॉर्ड</numerusform>
            <numerusform>%1 रिकॉर्ड</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: one record, %2; entered is %3.</source>
        <translation>%1: एक रिकॉर्ड, %2; भरा गया %3।</translation>
    </message>
    <message>
        <source>%1: %2, the middle one %3, from %4 to %5; entered is %6.</source>
        <translation>%1: %2, बीच का %3, %4 से %5 तक; भरा गया %6।</translation>
    </message>
    <message>
        <source>The plan is reckoned with the middle values of the records, not with the figures entered.</source>
        <translation>योजना का हिसाब रिकॉर्डों के बीच के मान से लगा है, भरे गए आँकड़ों से नहीं।</translation>
    </message>
    <message>
        <source>The plan is reckoned with the figures entered; the records stand beside them.</source>
        <translation>योजना का हिसाब भरे गए आँकड़ों से लगा है; रिकॉर्ड साथ में दिखते हैं।</translation>
    </message>
    <message>
        <source>No records yet. Mix one batch and measure the face that it covers, or write down how many people took how many days for a piece of work: the order of cement and the dates then follow your own sand, soil and people.</source>
        <translation>अभी कोई रिकॉर्ड नहीं। एक घान बनाकर नापें कि वह कितनी सतह ढकता है, या लिखें कि किसी काम में कितने लोगों को कितने दिन लगे: तब सीमेंट की मात्रा और तारीखें आपकी अपनी रेत, मिट्टी और लोगों के हिसाब से निकलेंगी।</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <translation>व्यास %1, गहराई %2</translation>
    </message>
    <message>
        <source>%1 of %2 years</source>
        <translation>%2 में से %1 साल</translation>
    </message>
    <message>
        <source>The cheapest size with water all year in %1: %2.</source>
        <translation>सबसे सस्ता नाप, जिसमें %1, साल भर पानी रहे: %2।</translation>
    </message>
    <message>
        <source>The size with least cement and with water all year in %1: %2.</source>
        <translation>सबसे कम सीमेंट वाला नाप, जिसमें %1, साल भर पानी रहे: %2।</translation>
    </message>
    <message>
        <source>No size within the limits gives water all year in %1. Widen the limits, find more water, or water smaller beds.</source>
        <translation>सीमाओं के अंदर कोई नाप ऐसा नहीं जिसमें %1, साल भर पानी रहे। सीमाएँ बढ़ाएँ, और पानी ढूँढें, या छोटी क्यारियाँ सींचें।</translation>
    </message>
    <message>
        <source>Whether the water lasts is not known, so sizes are told apart by what they hold.</source>
        <translation>पानी पूरा पड़ेगा या नहीं, पता नहीं, इसलिए नापों की तुलना इससे की गई है कि टंकी में कितना आता है।</translation>
    </message>
    <message>
        <source>The size that holds most within the limits: %1.</source>
        <translation>सीमाओं के अंदर सबसे ज़्यादा पानी वाला नाप: %1।</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all cheaper ones: %1. Of the others there is always one that gives as much for less money.</source>
        <translation>देखने लायक नाप, हर एक अपने से सस्ते सभी नापों से बेहतर: %1। बाकी के बदले हमेशा कोई ऐसा है जो कम पैसे में उतना ही देता है।</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all that take less cement: %1. Of the others there is always one that gives as much for less cement.</source>
        <translation>देखने लायक नाप, हर एक अपने से कम सीमेंट वाले सभी नापों से बेहतर: %1। बाकी के बदले हमेशा कोई ऐसा है जो कम सीमेंट में उतना ही देता है।</translation>
    </message>
    <message>
        <source>the lining does not fit into them (%1)</source>
        <translation>उनमें लाइनिंग नहीं समाती (%1)</translation>
    </message>
    <message>
        <source>the pit is too deep to dig by hand (%1)</source>
        <translation>गड्ढा हाथ से खोदने के लिए बहुत गहरा है (%1)</translation>
    </message>
    <message>
        <source>the cut is higher than this soil bears (%1)</source>
        <translation>कटान उतने से ऊँचा है जितना यह मिट्टी सहती है (%1)</translation>
    </message>
    <message>
        <source>no platform can be made for them (%1)</source>
        <translation>उनके लिए समतल जगह नहीं बन सकती (%1)</translation>
    </message>
    <message>
        <source>a coat takes more people than can come (%1)</source>
        <translation>एक कोट में उससे ज़्यादा लोग लगते हैं जितने आ सकते हैं (%1)</translation>
    </message>
    <message>
        <source>they take more cement than can be had (%1)</source>
        <translation>उनमें उससे ज़्यादा सीमेंट लगता है जितना मिल सकता है (%1)</translation>
    </message>
    <message>
        <source>they cost more than is there (%1)</source>
        <translation>उनका खर्च उससे ज़्यादा है जितना पैसा है (%1)</translation>
    </message>
    <message>
        <source>Sizes tried: %1; within all limits: %2.</source>
        <translation>आज़माए गए नाप: %1; सब सीमाओं के अंदर: %2।</translation>
    </message>
    <message>
        <source>Sizes are left out because %1.</source>
        <translation>कुछ नाप छोड़े गए, क्योंकि %1।</translation>
    </message>
    <message>
        <source>No size was tried: the limits leave none, or the search was broken off.</source>
        <translation>कोई नाप नहीं आज़माया गया: सीमाओं में कोई बचता नहीं, या खोज बीच में रोक दी गई।</translation>
    </message>
    <message>
        <source>No size keeps to all limits; widen them.</source>
        <translation>कोई नाप सब सीमाओं के अंदर नहीं है; सीमाएँ बढ़ाएँ।</translation>
    </message>
    <message>
        <source>kg/ft² per hour</source>
        <translation>kg/ft² प्रति घंटा</translation>
    </message>
    <message>
        <source>min</source>
        <translation>मिनट</translation>
    </message>
    <message>
        <source>kg/m² per hour</source>
        <translation>kg/m² प्रति घंटा</translation>
    </message>
    <message>
        <source>With the first coat in the week from %1, as planned, the coats stay undisturbed %2, by %3 of weather.</source>
        <translation>पहला कोट %1 से शुरू हफ़्ते में हो, जैसी योजना है, तो %3 के मौसम के हिसाब से कोट मौसम से बचे रहते हैं: %2।</translation>
    </message>
    <message>
        <source>%1 or more of rain on the day of a coat or the day after (%2)</source>
        <translation>कोट के दिन या अगले दिन %1 या ज़्यादा बारिश (%2)</translation>
    </message>
    <message>
        <source>a night of frost in the week after a coat (%1)</source>
        <translation>कोट के बाद के हफ़्ते में पाले की रात (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold for plaster (%1)</source>
        <translation>प्लास्टर के लिए बहुत गर्म या बहुत ठंडा दिन (%1)</translation>
    </message>
    <message>
        <source>What disturbs them: %1.</source>
        <translation>कोट किससे बिगड़ते हैं: %1।</translation>
    </message>
    <message>
        <source>No other week of the year is better.</source>
        <translation>साल का कोई और हफ़्ता इससे अच्छा नहीं।</translation>
    </message>
    <message>
        <source>The best week for the first coat begins on %1: undisturbed %2. For that the works start on %3.</source>
        <translation>पहले कोट का सबसे अच्छा हफ़्ता %1 से शुरू होता है: कोट मौसम से बचे %2। इसके लिए निर्माण %3 को शुरू होता है।</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water.</source>
        <translation>%1: उस दिन के औसत मौसम में ताज़ा प्लास्टर से %2 पानी उड़ता है।</translation>
    </message>
    <message>
        <source>This is a chance, not a forecast: look at the sky and hear the forecast before you call people together.</source>
        <translation>यह संभावना है, मौसम की भविष्यवाणी नहीं: लोगों को बुलाने से पहले आसमान देखें और मौसम की खबर सुनें।</translation>
    </message>
    <message>
        <source>The weather of the place is not known, so nobody can say how often rain or frost disturbs the coats. Enter the climate with the water, by monthly means or a daily record.</source>
        <translation>जगह का मौसम पता नहीं, इसलिए कोई नहीं बता सकता कि बारिश या पाला कितनी बार कोट बिगाड़ता है। पानी वाले हिस्से में जलवायु भरें, महीनों के औसत या रोज़ के रिकॉर्ड से।</translation>
    </message>
    <message>
        <source>There is nothing to do yet.</source>
        <translation>अभी करने को कुछ नहीं है।</translation>
    </message>
    <message>
        <source>The works begin on %1 and end on %2: %3 in all, days of rest and of wetting counted.</source>
        <translation>निर्माण %1 को शुरू और %2 को खत्म होता है: कुल %3, छुट्टी और भिगाई के दिन मिलाकर।</translation>
    </message>
    <message>
        <source>The beds are planted from %1 on.</source>
        <translation>क्यारियों में बुआई %1 से शुरू होती है।</translation>
    </message>
    <message>
        <source>coat %1 on %2</source>
        <translation>कोट %1, %2 को</translation>
    </message>
    <message>
        <source>Call people together for %1.</source>
        <translation>इनके लिए लोगों को बुलाएँ: %1।</translation>
    </message>
    <message>
        <source>Water must be let in by %1.</source>
        <translation>%1 तक पानी डालना शुरू हो जाना चाहिए।</translation>
    </message>
    <message>
        <source>A day lost on one of these moves the end, for they leave no room: %1.</source>
        <translation>इनमें से किसी में भी एक दिन गया तो काम खत्म होने की तारीख खिसकेगी, क्योंकि इनमें ढील नहीं है: %1।</translation>
    </message>
    <message>
        <source>Most people are needed on %1: %2, %3.</source>
        <translation>सबसे ज़्यादा लोग %1 को चाहिए: %2, %3।</translation>
    </message>
    <message>
        <source>All tasks together take %1; %2 of it is masons&apos; work.</source>
        <translation>सब कामों में कुल %1 लगती हैं; उनमें %2 मिस्त्री का काम है।</translation>
    </message>
    <message>
        <source>For digging two rules of thumb are at hand: a published norm makes it %1, reports from practice, without a source, %2. Ask people who have dug in this soil.</source>
        <translation>खुदाई के दो मोटे हिसाब हैं: छपे मानक से %1, और काम करने वालों की बताई बात से, बिना संदर्भ के, %2। जिन्होंने इस मिट्टी में खुदाई की है उनसे पूछें।</translation>
    </message>
    <message>
        <source>Sacks have to be wetted on days of rest too: %1. Agree beforehand who comes.</source>
        <translation>बोरियाँ छुट्टी के दिन भी भिगोनी हैं: %1। पहले से तय कर लें कि कौन आएगा।</translation>
    </message>
    <message>
        <source>Wetting takes most water on %1: %2.</source>
        <translation>भिगाई में सबसे ज़्यादा पानी %1 को लगता है: %2।</translation>
    </message>
    <message>
        <source>%1 needs more hands that lay plaster with skill. Masons entered: %2; needed to put it on in one go: %3.</source>
        <translation>%1 में प्लास्टर लगाना जानने वाले और हाथ चाहिए। भरे गए मिस्त्री: %2; एक ही बार में लगाने के लिए चाहिए: %3।</translation>
    </message>
    <message>
        <source>%1 takes %2 batches an hour to be on in time; the mixing places that there are bring %3. Mixing places needed: %4.</source>
        <translation>%1 समय पर लगाने के लिए घंटे में %2 घान चाहिए; मसाला बनाने की जितनी जगहें हैं वे %3 देती हैं। मसाला बनाने की जगहें चाहिए: %4।</translation>
    </message>
    <message>
        <source>%1: the people there take %2 to spread a batch with a whole bag of cement; after %3 it stiffens.</source>
        <translation>%1: जो लोग हैं उन्हें पूरे कट्टे का घान फैलाने में %2 लगते हैं; %3 बाद वह सख्त होने लगता है।</translation>
    </message>
    <message>
        <source>Mix half a bag at a time: that is on the wall in %1.</source>
        <translation>एक बार में आधा कट्टा ही बनाएँ: वह %1 में दीवार पर लग जाता है।</translation>
    </message>
    <message>
        <source>Half a bag at a time takes %1 and stiffens too: put more people on the coat, or mix still less at a time.</source>
        <translation>एक बार में आधे कट्टे में भी %1 लगते हैं और वह भी सख्त होने लगता है: कोट पर और लोग लगाएँ, या एक बार में और कम बनाएँ।</translation>
    </message>
    <message>
        <source>On %1 more people are needed than there are: %2 needed, %3 there. Tasks lie on top of each other; move one of them, or ask for more people.</source>
        <translation>%1 को जितने लोग हैं उससे ज़्यादा चाहिए: चाहिए %2, हैं %3। काम एक-दूसरे के ऊपर पड़ रहे हैं; किसी एक को खिसकाएँ, या और लोग बुलाएँ।</translation>
    </message>
    <message>
        <source>A wish is entered for a task that this plan does not have: %1. It is kept and not used.</source>
        <translation>ऐसे काम के लिए इच्छा भरी है जो इस योजना में नहीं है: %1। उसे रख लिया गया है, पर काम में नहीं लिया गया।</translation>
    </message>
    <message>
        <source>What flows into the new tank is not known, so nobody can say when the water covers the walls. Enter the water let in each day, or the flow of the source.</source>
        <translation>नई टंकी में कितना पानी आता है, पता नहीं, इसलिए कोई नहीं बता सकता कि पानी दीवारें कब ढकेगा। रोज़ डाला जाने वाला पानी भरें, या स्रोत का बहाव।</translation>
    </message>
    <message>
        <source>Filling is planned to start on %1, but should start by %2: plaster that falls dry cracks. Start earlier, or keep all walls under wet sacks until then.</source>
        <translation>भराई %1 को शुरू करने की योजना है, पर %2 तक शुरू हो जानी चाहिए: सूखा रह गया प्लास्टर फटता है। पहले शुरू करें, या तब तक सब दीवारें गीली बोरियों के नीचे रखें।</translation>
    </message>
    <message>
        <source>The first filling does not reach the overflow level of %1 within a year: the water stands at %2 then. Find more water, or make the tank smaller.</source>
        <translation>पहली भराई एक साल में ओवरफ्लो के स्तर %1 तक नहीं पहुँचती: तब पानी %2 पर होता है। और पानी ढूँढें, या टंकी छोटी बनाएँ।</translation>
    </message>
    <message>
        <source>The water rises slowly: after the last coat has cured, bare wall must stay under wet sacks for %1 more, until %2. That takes up to %3.</source>
        <translation>पानी धीरे चढ़ता है: आखिरी कोट की तराई के बाद खुली दीवार को %1 और, %2 तक, गीली बोरियों के नीचे रहना ही होगा। इसमें %3 तक पानी लगता है।</translation>
    </message>
    <message>
        <source>Or bring about %1 of water by hand, so that it covers the walls in time.</source>
        <translation>या करीब %1 पानी हाथ से लाएँ, ताकि वह समय पर दीवारें ढक ले।</translation>
    </message>
    <message>
        <source>heavy rain (%1)</source>
        <translation>भारी बारिश (%1)</translation>
    </message>
    <message>
        <source>frost (%1)</source>
        <translation>पाला (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold (%1)</source>
        <translation>बहुत गर्म या बहुत ठंडा दिन (%1)</translation>
    </message>
    <message>
        <source>By the weather of the years reckoned, coats put on as planned stay undisturbed %1.</source>
        <translation>हिसाब के सालों के मौसम से, योजना के अनुसार लगे कोट मौसम से बचे रहते हैं: %1।</translation>
    </message>
    <message>
        <source>With the works begun on %1 the first coat falls into the best week of the year, and they stay undisturbed %2.</source>
        <translation>निर्माण %1 को शुरू हो तो पहला कोट साल के सबसे अच्छे हफ़्ते में पड़ता है, और कोट मौसम से बचे रहते हैं: %2।</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water; from %3 on it may crack while it is soft. Begin at dawn, keep sun and wind off it, and lay wet sacks on as soon as it bears them.</source>
        <translation>%1: उस दिन के औसत मौसम में ताज़ा प्लास्टर से %2 पानी उड़ता है; %3 या उससे ज़्यादा पर वह नरम रहते ही फट सकता है। भोर में शुरू करें, धूप और हवा से बचाएँ, और जैसे ही प्लास्टर सह ले, गीली बोरियाँ डालें।</translation>
    </message>
    <message>
        <source>The plan is reckoned with few records. %1: %2 so far; from %3 on their middle value says more.</source>
        <translation>योजना का हिसाब थोड़े रिकॉर्डों से लगा है। %1: अब तक %2; %3 या ज़्यादा हों तो बीच का मान ज़्यादा भरोसे का होता है।</translation>
    </message>
    <message>
        <source>%1: the records say %2, and the plan is reckoned with the %3 entered. Find out why, or let the records stand in its place.</source>
        <translation>%1: रिकॉर्ड %2 बताते हैं, और योजना का हिसाब भरे गए %3 से लगा है। पता करें क्यों, या रिकॉर्डों को उसकी जगह लेने दें।</translation>
    </message>
    <message>
        <source>Day on which the first task may begin; nothing begins before it.</source>
        <translation>जिस दिन पहला काम शुरू हो सकता है; उससे पहले कुछ शुरू नहीं होता।</translation>
    </message>
    <message>
        <source>People who dig, carry spoil and lay the stone bed each working day.</source>
        <translation>काम के हर दिन खोदने, निकली मिट्टी ढोने और सोलिंग बिछाने वाले लोग।</translation>
    </message>
    <message>
        <source>How many of the people on a coat lay plaster with skill; the others mix, carry and hand up.</source>
        <translation>कोट पर लगे लोगों में कितने प्लास्टर लगाना जानते हैं; बाकी मसाला बनाते, ढोते और पकड़ाते हैं।</translation>
    </message>
    <message>
        <source>First day on which nobody works: a feast, a market, a funeral, a day kept for sowing.</source>
        <translation>पहला दिन जब कोई काम नहीं करता: त्योहार, मेला-बाज़ार, मौत-मातम, बुआई के लिए रखा दिन।</translation>
    </message>
    <message>
        <source>How many days nobody works, the first one counted; wetting goes on.</source>
        <translation>कितने दिन कोई काम नहीं करता, पहला दिन मिलाकर; भिगाई चलती रहती है।</translation>
    </message>
    <message>
        <source>What the days are kept for, in a word; it is printed in the calendar.</source>
        <translation>ये दिन किसलिए रखे हैं, एक शब्द में; यह कैलेंडर में छपता है।</translation>
    </message>
    <message>
        <source>Hours of work behind one person-day, breaks not counted.</source>
        <translation>एक दिहाड़ी में काम के घंटे, आराम का समय छोड़कर।</translation>
    </message>
    <message>
        <source>Hours of daylight and cool weather in which a coat is begun and finished, without a stop over night.</source>
        <translation>दिन के उजाले और ठंडे मौसम के वे घंटे जिनमें एक कोट शुरू होकर पूरा हो जाता है, बीच में रात नहीं पड़ती।</translation>
    </message>
    <message>
        <source>Boards or floors on which mortar is mixed at the same time, each with its own mixers.</source>
        <translation>कितने तख्तों या फ़र्शों पर एक साथ मसाला बनता है, हर एक पर अपने बनाने वाले।</translation>
    </message>
    <message>
        <source>Time it with a watch: from filling the gauge boxes until the batch at one place is ready to carry.</source>
        <translation>घड़ी से देखें: नाप की पेटियाँ भरने से लेकर एक जगह का घान ले जाने को तैयार होने तक।</translation>
    </message>
    <message>
        <source>Time from wetting the cement until the mortar stiffens; what is older is thrown away, not wetted again. Try it on a hot day.</source>
        <translation>सीमेंट भिगोने से मसाला सख्त होने लगने तक का समय; उससे पुराना मसाला फेंक दिया जाता है, दोबारा पानी नहीं मिलाया जाता। गर्म दिन में आज़माकर देखें।</translation>
    </message>
    <message>
        <source>People who pour water over the sacks on each day of curing, rest days too; they are not counted among the diggers.</source>
        <translation>तराई के हर दिन, छुट्टी के दिन भी, बोरियों पर पानी डालने वाले लोग; इन्हें खोदने वालों में नहीं गिना जाता।</translation>
    </message>
    <message>
        <source>How often the sacks are wetted on a day of curing; in dry wind more often.</source>
        <translation>तराई के एक दिन में बोरियाँ कितनी बार भिगोई जाती हैं; सूखी हवा में ज़्यादा बार।</translation>
    </message>
    <message>
        <source>Measure it: level distance from the middle of the pit to the middle of the heap.</source>
        <translation>नापें: गड्ढे के बीच से ढेर के बीच तक समतल दूरी।</translation>
    </message>
    <message>
        <source>How many times as long the low part of a deep pit takes, where ground is thrown up twice; 1 is the same.</source>
        <translation>गहरे गड्ढे के निचले हिस्से में, जहाँ मिट्टी दो बार फेंकनी पड़ती है, कितने गुना समय लगता है; 1 यानी उतना ही।</translation>
    </message>
    <message>
        <source>Water that runs or is carried into the new tank each day; leave empty to take what the source gives in that month.</source>
        <translation>नई टंकी में रोज़ आने वाला या ढोकर लाया जाने वाला पानी; उस महीने में स्रोत जितना देता है वही लेना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>The inflow is held back to this rise, so that young plaster is loaded slowly.</source>
        <translation>आमद को इतने चढ़ाव तक रोका जाता है, ताकि नए प्लास्टर पर बोझ धीरे-धीरे पड़े।</translation>
    </message>
    <message>
        <source>The walls are told in bands of this height: until when the sacks of each must stay wet.</source>
        <translation>दीवारें इतनी ऊँचाई के घेरों में बताई जाती हैं: हर घेरे की बोरियाँ कब तक गीली रखनी हैं।</translation>
    </message>
    <message>
        <source>Rain of one day from which on a fresh coat is washed or pitted; a rain gauge shows it.</source>
        <translation>एक दिन की बारिश, जिससे आगे ताज़ा कोट धुल जाता है या उसमें गड्ढे पड़ते हैं; वर्षामापी से पता चलता है।</translation>
    </message>
    <message>
        <source>The task for which a day or a number of people is wished.</source>
        <translation>जिस काम के लिए कोई दिन या लोगों की गिनती चाही गई है।</translation>
    </message>
    <message>
        <source>The task begins on this day or later; leave empty if it may begin as soon as it can.</source>
        <translation>काम इस दिन या बाद में शुरू होता है; जितनी जल्दी हो सके शुरू करना हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>People on this task; leave empty for as many as usual.</source>
        <translation>इस काम पर लोग; आम जितने रखने हों तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>The work for which the district has a rate of its own.</source>
        <translation>जिस काम के लिए ज़िले की अपनी दर है।</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when all goes well.</source>
        <translation>सब ठीक चले तो इस काम की एक इकाई की दिहाड़ी।</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work on a usual day; the plan is reckoned with it.</source>
        <translation>आम दिन में इस काम की एक इकाई की दिहाड़ी; योजना का हिसाब इसी से लगता है।</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when it goes badly.</source>
        <translation>काम खराब चले तो इस काम की एक इकाई की दिहाड़ी।</translation>
    </message>
    <message>
        <source>Whether the middle values of what was measured stand in place of the figures entered.</source>
        <translation>जो नापा गया उसके बीच के मान भरे गए आँकड़ों की जगह लें या नहीं।</translation>
    </message>
    <message>
        <source>The coat whose mix the trial batch had, counted from the dug face.</source>
        <translation>जाँच घान में किस कोट का मिश्रण था, खुदी सतह से गिनकर।</translation>
    </message>
    <message>
        <source>Cement in the trial batch, in bags and parts of a bag.</source>
        <translation>जाँच घान में सीमेंट, कट्टों और कट्टे के हिस्सों में।</translation>
    </message>
    <message>
        <source>Face that the trial batch covered: measure length and height of the patch.</source>
        <translation>जाँच घान से ढकी सतह: उस टुकड़े की लंबाई और ऊँचाई नापें।</translation>
    </message>
    <message>
        <source>Thickness of the patch, square to the face: push a nail in at several places and take the middle.</source>
        <translation>टुकड़े की मोटाई, सतह से गुनिया में: कई जगह कील घुसाकर देखें और बीच का मान लें।</translation>
    </message>
    <message>
        <source>What was done and measured, here or on an earlier tank of the district.</source>
        <translation>क्या किया और नापा गया, यहाँ या ज़िले की किसी पुरानी टंकी पर।</translation>
    </message>
    <message>
        <source>How much of it: ground dug as it lay, fill as rammed, stone bed and mortar as placed in m³; spreading in m².</source>
        <translation>कितना काम: बिना खुदी नाप से ज़मीन, कुटा भराव, लगी सोलिंग और मसाला m³ में; फैलाना m² में।</translation>
    </message>
    <message>
        <source>People times days that it took, helpers counted; half a day of four people is 2.</source>
        <translation>लोग × दिन, जितने लगे, हेल्पर मिलाकर; चार लोगों का आधा दिन यानी 2।</translation>
    </message>
    <message>
        <source>First day of the works</source>
        <translation>निर्माण का पहला दिन</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>उनमें मिस्त्री</translation>
    </message>
    <message>
        <source>Closed from</source>
        <translation>बंद कब से</translation>
    </message>
    <message>
        <source>Closed for</source>
        <translation>बंद कितने दिन</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>क्यों</translation>
    </message>
    <message>
        <source>Hours of a person-day</source>
        <translation>एक दिहाड़ी के घंटे</translation>
    </message>
    <message>
        <source>Hours to put on a coat</source>
        <translation>एक कोट लगाने के घंटे</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>मसाला बनाने की जगहें</translation>
    </message>
    <message>
        <source>Mixing one batch takes</source>
        <translation>एक घान बनाने का समय</translation>
    </message>
    <message>
        <source>A batch must be on the wall within</source>
        <translation>घान दीवार पर लगे, इतने समय में</translation>
    </message>
    <message>
        <source>People who keep the sacks wet</source>
        <translation>बोरियाँ गीली रखने वाले लोग</translation>
    </message>
    <message>
        <source>Wettings a day</source>
        <translation>दिन में कितनी बार भिगोना</translation>
    </message>
    <message>
        <source>Way to the spoil heap</source>
        <translation>निकली मिट्टी के ढेर तक दूरी</translation>
    </message>
    <message>
        <source>Digging low in the pit takes, times</source>
        <translation>गड्ढे में नीचे खुदाई, कितने गुना</translation>
    </message>
    <message>
        <source>Water let in for the first filling</source>
        <translation>पहली भराई के लिए डाला पानी</translation>
    </message>
    <message>
        <source>Water may rise in a day by</source>
        <translation>पानी दिन में कितना चढ़े</translation>
    </message>
    <message>
        <source>Height of a band of wall</source>
        <translation>दीवार के घेरे की ऊँचाई</translation>
    </message>
    <message>
        <source>Heavy rain, in a day</source>
        <translation>भारी बारिश, एक दिन में</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>इससे पहले नहीं</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>लोग चाहिए</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>कम</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>आम</translation>
    </message>
    <message>
        <source>High</source>
        <translation>ज़्यादा</translation>
    </message>
    <message>
        <source>Reckon with the records</source>
        <translation>रिकॉर्डों से हिसाब लगाएँ</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>कोट</translation>
    </message>
    <message>
        <source>Face covered</source>
        <translation>ढकी सतह</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>किया गया काम</translation>
    </message>
    <message>
        <source>It took</source>
        <translation>कितना लगा</translation>
    </message>
    <message>
        <source>digging, as reported from practice</source>
        <translation>खुदाई, काम करने वालों की बताई दर से</translation>
    </message>
    <message>
        <source>digging, by the district&apos;s norm</source>
        <translation>खुदाई, ज़िले की दर से</translation>
    </message>
    <message>
        <source>clearing the ground</source>
        <translation>ज़मीन साफ़ करना</translation>
    </message>
    <message>
        <source>setting out</source>
        <translation>ले-आउट</translation>
    </message>
    <message>
        <source>stripping topsoil</source>
        <translation>ऊपरी मिट्टी छीलना</translation>
    </message>
    <message>
        <source>filling and ramming</source>
        <translation>भरना और कूटना</translation>
    </message>
    <message>
        <source>carrying spoil up to 10 m</source>
        <translation>निकली मिट्टी 10 m तक ढोना</translation>
    </message>
    <message>
        <source>carrying spoil up to 20 m</source>
        <translation>निकली मिट्टी 20 m तक ढोना</translation>
    </message>
    <message>
        <source>carrying spoil up to 50 m</source>
        <translation>निकली मिट्टी 50 m तक ढोना</translation>
    </message>
    <message>
        <source>trimming walls and floor</source>
        <translation>दीवारें और तला छीलकर बराबर करना</translation>
    </message>
    <message>
        <source>laying pipe</source>
        <translation>पाइप बिछाना</translation>
    </message>
    <message>
        <source>plastering one coat</source>
        <translation>एक कोट प्लास्टर लगाना</translation>
    </message>
    <message>
        <source>keeping sacks wet</source>
        <translation>बोरियाँ गीली रखना</translation>
    </message>
    <message>
        <source>watching the first filling</source>
        <translation>पहली भराई पर नज़र रखना</translation>
    </message>
    <message>
        <source>testing for leaks</source>
        <translation>लीक जाँच करना</translation>
    </message>
    <message>
        <source>building the fence</source>
        <translation>बाड़ बनाना</translation>
    </message>
    <message>
        <source>building the silt trap</source>
        <translation>गाद कुंडी बनाना</translation>
    </message>
    <message>
        <source>building the overflow</source>
        <translation>ओवरफ्लो बनाना</translation>
    </message>
    <message>
        <source>planting the beds</source>
        <translation>क्यारियों में बुआई</translation>
    </message>
    <message>
        <source>Ramming fill</source>
        <translation>भराव कूटना</translation>
    </message>
    <message>
        <source>Spreading plaster</source>
        <translation>प्लास्टर फैलाना</translation>
    </message>
    <message>
        <source>%1 job</source>
        <translation>%1 काम</translation>
    </message>
    <message numerus="yes">
        <source>%1 jobs</source>
        <translation>
            <numerusform>%1 काम</numerusform>
            <numerusform>%1 काम</numerusform>
        </translation>
    </message>
    <message>
        <source>a quarter of a day</source>
        <translation>चौथाई दिन</translation>
    </message>
    <message>
        <source>half a day</source>
        <translation>आधा दिन</translation>
    </message>
    <message>
        <source>three quarters of a day</source>
        <translation>पौन दिन</translation>
    </message>
    <message>
        <source>digging, %1</source>
        <translation>खुदाई, %1</translation>
    </message>
    <message>
        <source>every time</source>
        <translation>हर बार</translation>
    </message>
    <message numerus="yes">
        <source>%1 times in %2</source>
        <translation>
            <numerusform>%2 में से %1 बार</numerusform>
            <numerusform>%2 में से %1 बार</numerusform>
        </translation>
    </message>
    <message>
        <source>once in %1 times</source>
        <translation>%1 में से एक बार</translation>
    </message>
    <message>
        <source>less than once in %1 times</source>
        <translation>%1 में से एक बार से भी कम</translation>
    </message>
    <message>
        <source>never</source>
        <translation>कभी नहीं</translation>
    </message>
    <message>
        <source>Not counted, for what they cost or how much of them is needed is not known: %1. What is free stands in the price list with a price of 0.</source>
        <translation>नहीं गिने, क्योंकि इनका दाम या मात्रा पता नहीं: %1। जो मुफ़्त है उसे दाम की सूची में 0 दाम पर रखें।</translation>
    </message>
    <message>
        <source>Not compared, for their price or their digging is not known: %1.</source>
        <translation>तुलना नहीं की, क्योंकि इनका दाम या इनकी खुदाई पता नहीं: %1।</translation>
    </message>
    <message>
        <source>No lining can be compared yet: enter what one costs, how long it lasts and what its upkeep takes. All but the moulded tank need the works, too, and what a labourer costs, for their digging.</source>
        <translation>अभी किसी लाइनिंग की तुलना नहीं हो सकती: भरें कि किसका खर्च कितना है, कितने साल चलती है और रखरखाव में क्या लगता है। बनी-बनाई टंकी को छोड़कर बाकी सबकी खुदाई के लिए निर्माण वाला हिस्सा और मज़दूर का दाम भी चाहिए।</translation>
    </message>
    <message>
        <source>Only one lining can be reckoned; enter what the others cost to compare them.</source>
        <translation>सिर्फ़ एक लाइनिंग का हिसाब लग सकता है; तुलना के लिए बाकी का खर्च भरें।</translation>
    </message>
    <message>
        <source>Compared is the lining with the digging that it needs. What every tank needs, whatever its lining, is left out of all of them: pipes, fence, silt trap, overflow, clearing, filling and other things of your own.</source>
        <translation>लाइनिंग की तुलना उसकी ज़रूरत भर की खुदाई समेत की गई है। जो हर टंकी को चाहिए, लाइनिंग कोई भी हो, वह सबमें से छोड़ दिया गया है: पाइप, बाड़, गाद कुंडी, ओवरफ्लो, ज़मीन की सफ़ाई, भराई और आपकी अपनी दूसरी चीज़ें।</translation>
    </message>
    <message>
        <source>is not part of this project; its rates were left out</source>
        <translation>इस प्रोजेक्ट का हिस्सा नहीं है; इसकी दरें छोड़ दी गईं</translation>
    </message>
    <message>
        <source>%1 waits %2 for the next coat after its curing. Keep it under wet sacks all that time: the next coat does not hold on dry plaster.</source>
        <translation>%1 – तराई के बाद अगले कोट के लिए %2 रुकना पड़ता है। पूरे समय इसे गीली बोरियों के नीचे रखें: सूखे प्लास्टर पर अगला कोट नहीं पकड़ता।</translation>
    </message>
    <message>
        <source>Nobody is entered who keeps the sacks wet. Plaster that dries early cracks and leaks: agree who comes, rest days too.</source>
        <translation>बोरियाँ गीली रखने के लिए कोई नहीं भरा है। जल्दी सूखा प्लास्टर फटता है और लीक करता है: तय करें कि कौन आएगा, छुट्टी के दिन भी।</translation>
    </message>
    <message>
        <source>%1: the middle of the records is %2, outside of what can be (%3 to %4). It is not used; look at the records again.</source>
        <translation>%1: रिकॉर्डों का बीच का मान %2 है, जो संभव दायरे (%3 से %4) से बाहर है। वह काम में नहीं लिया जाता; रिकॉर्ड फिर देखें।</translation>
    </message>
    <message>
        <source>Only digging in the soil of this site counts. Left empty: it was such soil. Record the first 1.5 m of depth; what lies deeper is reckoned slower.</source>
        <translation>सिर्फ़ इस जगह की मिट्टी में की गई खुदाई गिनी जाती है। खाली छोड़ें तो: ऐसी ही मिट्टी थी। पहली 1.5 m गहराई का रिकॉर्ड रखें; उससे गहरी खुदाई का हिसाब धीमा लगाया जाता है।</translation>
    </message>
    <message>
        <source>Soil dug</source>
        <translation>खोदी गई मिट्टी</translation>
    </message>
    <message>
        <source>Draft translation, to be checked by a speaker.</source>
        <translation>अनुवाद का कच्चा मसौदा, भाषा बोलने वाले से जँचवाना बाकी है।</translation>
    </message>
    <message>
        <source>Pegs and strings</source>
        <translation>खूँटियाँ और डोरियाँ</translation>
    </message>
    <message>
        <source>Wet sacks</source>
        <translation>गीली बोरियाँ</translation>
    </message>
    <message>
        <source>ground as it lies</source>
        <translation>बिना खुदी ज़मीन</translation>
    </message>
    <message>
        <source>pegs and strings</source>
        <translation>खूँटियाँ और डोरियाँ</translation>
    </message>
    <message>
        <source>making the platform</source>
        <translation>समतल जगह बनाना</translation>
    </message>
    <message>
        <source>pit dug and trimmed</source>
        <translation>गड्ढा खुदा और छीलकर बराबर किया</translation>
    </message>
    <message>
        <source>stone bed</source>
        <translation>पत्थर की सोलिंग</translation>
    </message>
    <message>
        <source>first filling</source>
        <translation>पहली भराई</translation>
    </message>
    <message>
        <source>full tank</source>
        <translation>भरी टंकी</translation>
    </message>
    <message>
        <source>field notes</source>
        <translation>मौके के नोट</translation>
    </message>
    <message>
        <source>coat %1 put on</source>
        <translation>कोट %1 लगा</translation>
    </message>
    <message>
        <source>coat %1 under wet sacks</source>
        <translation>कोट %1 गीली बोरियों के नीचे</translation>
    </message>
    <message>
        <source>%1: %2 sand, %3 silt, %4 clay; texture: %5.</source>
        <translation>%1: %2 रेत, %3 सिल्ट, %4 चिकनी मिट्टी; बनावट: %5।</translation>
    </message>
    <message>
        <source>Jar %1</source>
        <translation>जार %1</translation>
    </message>
    <message>
        <source>The jar shows %1 clay.</source>
        <translation>जार में चिकनी मिट्टी %1 है।</translation>
    </message>
    <message>
        <source>The jars show %1 clay in the middle of %2.</source>
        <translation>%2 के बीच के मान से जारों में चिकनी मिट्टी %1 है।</translation>
    </message>
    <message>
        <source>%1: %2 by ball and ribbon.</source>
        <translation>%1: गोली और पट्टी से %2।</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>नमूना %1</translation>
    </message>
    <message>
        <source>For digging this program takes such soil as: %1.</source>
        <translation>खुदाई के लिए यह प्रोग्राम ऐसी मिट्टी को मानता है: %1।</translation>
    </message>
    <message>
        <source>There is clay or clay loam. The hand does not tell whether it is stiff: dig a test pit, press a thumb into its wall, and write down what the layer is.</source>
        <translation>चिकनी मिट्टी या चिकनी दोमट है। हाथ नहीं बताता कि वह कड़ी है या नहीं: जाँच का गड्ढा खोदें, उसकी दीवार में अँगूठा दबाएँ, और लिखें कि परत क्या है।</translation>
    </message>
    <message>
        <source>No layer down to the floor of the pit (%1) has its soil written down.</source>
        <translation>गड्ढे के तले (%1) तक किसी परत की मिट्टी नहीं लिखी है।</translation>
    </message>
    <message>
        <source>The weakest soil down to the floor of the pit (%1) is: %2.</source>
        <translation>गड्ढे के तले (%1) तक की सबसे कमज़ोर मिट्टी: %2।</translation>
    </message>
    <message>
        <source>No water came in down to %1. Look again after the rains, or ask how high the nearest well stands then.</source>
        <translation>%1 तक पानी नहीं आया। बरसात के बाद फिर देखें, या पूछें कि तब सबसे पास के कुएँ में पानी कितना ऊँचा रहता है।</translation>
    </message>
    <message>
        <source>Water came in at %1 below the ground, and it may stand higher after the rains.</source>
        <translation>पानी ज़मीन से %1 नीचे आया, और बरसात के बाद इससे ऊपर हो सकता है।</translation>
    </message>
    <message>
        <source>The ground has no fall over %1.</source>
        <translation>%1 में ज़मीन की कोई ढाल नहीं।</translation>
    </message>
    <message>
        <source>The ground rises %1 over %2: the line was walked uphill. Walk it straight down the fall, or turn the signs of the drops.</source>
        <translation>%2 में ज़मीन %1 चढ़ती है: लाइन चढ़ाई की ओर चली गई। इसे सीधे ढलान की ओर नीचे चलें, या उतारों के चिह्न उलट दें।</translation>
    </message>
    <message>
        <source>The slope falls %1 over %2.</source>
        <translation>%2 में ढलान %1 उतरती है।</translation>
    </message>
    <message>
        <source>No jar read yet. Fill a straight jar a third with soil, the rest with water and a pinch of salt, shake it long, put it down, and measure the layers when they have settled.</source>
        <translation>अभी कोई जार नहीं पढ़ा। सीधे जार में एक तिहाई मिट्टी, बाकी पानी और एक चुटकी नमक भरें, देर तक हिलाएँ, रख दें, और परतें बैठ जाने पर नापें।</translation>
    </message>
    <message>
        <source>These are shares of the height, not of the weight: clay settles loosely, so by weight there is less of it.</source>
        <translation>ये ऊँचाई के हिस्से हैं, वज़न के नहीं: चिकनी मिट्टी ढीली बैठती है, इसलिए वज़न से वह कम होती है।</translation>
    </message>
    <message>
        <source>No soil felt yet. Knead a moist handful, squeeze it to a ball, push it to a ribbon, and write down what happens.</source>
        <translation>अभी कोई मिट्टी हाथ से नहीं परखी। मुट्ठी भर नम मिट्टी गूँधें, दबाकर गोली बनाएँ, सरकाकर पट्टी बनाएँ, और जो हो वह लिखें।</translation>
    </message>
    <message>
        <source>No test pit yet. Dig one beside the tank as deep as its pit (%1), and write down each layer and where water comes in. A pit can cave in: step its sides back, and never work in it alone.</source>
        <translation>अभी कोई जाँच का गड्ढा नहीं। टंकी के पास एक खोदें, टंकी के गड्ढे जितना गहरा (%1), और हर परत लिखें और यह भी कि पानी कहाँ आता है। गड्ढा ढह सकता है: उसकी बाजुएँ पैड़ियों में पीछे काटें, और उसमें कभी अकेले काम न करें।</translation>
    </message>
    <message>
        <source>Layers without a soil: %1. Until they are known the pits do not count for the soil of the site.</source>
        <translation>बिना मिट्टी लिखी परतें: %1। जब तक वे पता न हों, जगह की मिट्टी के लिए ये गड्ढे नहीं गिने जाते।</translation>
    </message>
    <message>
        <source>The deepest test pit ends at %1, above the floor of the tank&apos;s pit: what lies below is not known.</source>
        <translation>सबसे गहरा जाँच का गड्ढा %1 पर खत्म होता है, टंकी के गड्ढे के तले से ऊपर: नीचे क्या है पता नहीं।</translation>
    </message>
    <message>
        <source>No slope taken yet. Hold a hose full of water along the fall, measure the level distance and both water marks, and go on from the lower staff.</source>
        <translation>अभी कोई ढाल नहीं नापी। पानी भरी नली ढलान के साथ पकड़ें, समतल दूरी और पानी के दोनों निशान नापें, और नीचे वाली छड़ से आगे बढ़ें।</translation>
    </message>
    <message>
        <source>Setting %1: %2.</source>
        <translation>पड़ाव %1: %2।</translation>
    </message>
    <message>
        <source>The ground was surveyed; its spot heights stay in place of this fall.</source>
        <translation>ज़मीन का सर्वे हो चुका है; इस ढाल की जगह उसके ऊँचाई के बिंदु रहते हैं।</translation>
    </message>
    <message>
        <source>A test pit shows a weaker soil (%1) above the floor of the pit than the one entered (%2). The weakest layer decides how steep a cut may stand: enter that one.</source>
        <translation>जाँच के गड्ढे में, टंकी के गड्ढे के तले से ऊपर, ऐसी मिट्टी (%1) मिली है जो भरी गई मिट्टी (%2) से कमज़ोर है। कटान कितना खड़ा रह सकता है, यह सबसे कमज़ोर परत तय करती है: वही मिट्टी भरें।</translation>
    </message>
    <message>
        <source>Water came into a test pit %1 below the ground; entered is %2. Enter the highest level that was seen, for it is the one that lifts the floor.</source>
        <translation>जाँच के गड्ढे में पानी ज़मीन से %1 नीचे आया; भरा गया है %2। सबसे ऊँचा देखा गया स्तर भरें, क्योंकि वही फ़र्श को उठाता है।</translation>
    </message>
    <message>
        <source>Where the soil in the jar was taken, and how deep; take it from where the soil for the mix will be dug.</source>
        <translation>जार की मिट्टी कहाँ से और कितनी गहराई से ली; वहाँ से लें जहाँ से मिश्रण की मिट्टी खोदी जाएगी।</translation>
    </message>
    <message>
        <source>Height of the lowest layer, marked one minute after the jar was put down: grains that the eye can see.</source>
        <translation>सबसे निचली परत की ऊँचाई, जार रखने के एक मिनट बाद निशान लगाई: आँख से दिखने वाले कण।</translation>
    </message>
    <message>
        <source>Height of the layer over the sand alone, marked after two hours; not from the bottom of the jar.</source>
        <translation>केवल रेत के ऊपर की परत की ऊँचाई, दो घंटे बाद निशान लगाई; जार के पेंदे से नहीं।</translation>
    </message>
    <message>
        <source>Height of the top layer alone, when the water over it is clear; that may take a day or more.</source>
        <translation>केवल सबसे ऊपर की परत की ऊँचाई, जब उसके ऊपर का पानी साफ़ हो; एक दिन या ज़्यादा लग सकता है।</translation>
    </message>
    <message>
        <source>Where the soil in the hand was taken, and how deep.</source>
        <translation>हाथ की मिट्टी कहाँ से और कितनी गहराई से ली।</translation>
    </message>
    <message>
        <source>Moisten a handful, knead it like dough, squeeze it and open the hand. Left empty: not tried yet.</source>
        <translation>मुट्ठी भर नम करें, आटे की तरह गूँधें, दबाएँ और हाथ खोलें। खाली छोड़ा: अभी नहीं परखा।</translation>
    </message>
    <message>
        <source>Push the ball out between thumb and finger to a flat ribbon and measure it when it breaks by its own weight; 0 when none forms.</source>
        <translation>गोली को अँगूठे और उँगली के बीच सरकाकर चपटी पट्टी बनाएँ, और जब वह अपने वज़न से टूटे तो नापें; न बने तो 0।</translation>
    </message>
    <message>
        <source>Rub a pinch with much water in the palm: grit like sugar, smooth like flour, or neither.</source>
        <translation>हथेली में एक चुटकी मिट्टी खूब पानी से रगड़ें: चीनी जैसी किरकिरी, आटे जैसी मुलायम, या दोनों नहीं।</translation>
    </message>
    <message>
        <source>Name of the test pit, the same in each of its layers. Nobody climbs into a pit deeper than the waist that is not stepped back or shored.</source>
        <translation>जाँच के गड्ढे का नाम, उसकी हर परत में एक ही। कमर से गहरे गड्ढे में कोई न उतरे, जब तक बाजुएँ पैड़ियों में पीछे न कटी हों या टेक न लगी हो।</translation>
    </message>
    <message>
        <source>Depth of the top of the layer below the ground; 0 for the first.</source>
        <translation>परत का ऊपर ज़मीन से कितना नीचे; पहली परत के लिए 0।</translation>
    </message>
    <message>
        <source>Depth of the bottom of the layer below the ground; of the last layer, of the test pit.</source>
        <translation>परत का नीचे का सिरा ज़मीन से कितना नीचे; आखिरी परत का, जाँच के गड्ढे का।</translation>
    </message>
    <message>
        <source>What the layer is. Clay is stiff when the thumb dents it but goes in only with great effort; leave the soil empty when nobody tried.</source>
        <translation>परत क्या है। चिकनी मिट्टी तब कड़ी है जब अँगूठे से दब जाए पर बहुत ज़ोर लगाने पर ही धँसे; जब किसी ने न परखा हो, मिट्टी खाली छोड़ें।</translation>
    </message>
    <message>
        <source>Whether water stood or seeped in there; look again on the next day. It stands highest after the rains.</source>
        <translation>वहाँ पानी खड़ा था या रिसा, यह; अगले दिन फिर देखें। बरसात के बाद वह सबसे ऊँचा होता है।</translation>
    </message>
    <message>
        <source>Distance of one setting of the hose, held level, straight down the fall; 0: not measured yet.</source>
        <translation>लेवल नली के एक पड़ाव की दूरी, समतल नापी, सीधे ढलान की ओर; 0: अभी नहीं नापा।</translation>
    </message>
    <message>
        <source>Water mark on the lower staff less that on the upper one; less than 0 where the ground rises.</source>
        <translation>नीचे की छड़ का पानी का निशान घटा ऊपर वाली का; जहाँ ज़मीन चढ़े वहाँ 0 से कम।</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>कहाँ से ली</translation>
    </message>
    <message>
        <source>Silt</source>
        <translation>सिल्ट</translation>
    </message>
    <message>
        <source>Clay</source>
        <translation>चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>The ball</source>
        <translation>गोली</translation>
    </message>
    <message>
        <source>The ribbon breaks at</source>
        <translation>पट्टी कितने पर टूटी</translation>
    </message>
    <message>
        <source>Rubbed wet it is</source>
        <translation>गीली रगड़ने पर</translation>
    </message>
    <message>
        <source>Test pit</source>
        <translation>जाँच का गड्ढा</translation>
    </message>
    <message>
        <source>From</source>
        <translation>कहाँ से</translation>
    </message>
    <message>
        <source>To</source>
        <translation>कहाँ तक</translation>
    </message>
    <message>
        <source>Water came in</source>
        <translation>पानी आया</translation>
    </message>
    <message>
        <source>Level distance</source>
        <translation>समतल दूरी</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>उतार</translation>
    </message>
    <message>
        <source>falls apart</source>
        <translation>बिखर जाती है</translation>
    </message>
    <message>
        <source>holds together</source>
        <translation>बँधी रहती है</translation>
    </message>
    <message>
        <source>gritty</source>
        <translation>किरकिरी</translation>
    </message>
    <message>
        <source>neither gritty nor smooth</source>
        <translation>न किरकिरी, न मुलायम</translation>
    </message>
    <message>
        <source>smooth like flour</source>
        <translation>आटे जैसी मुलायम</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>रेत</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>दोमट रेत</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>रेतीली दोमट</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>दोमट</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>सिल्ट दोमट</translation>
    </message>
    <message>
        <source>silt</source>
        <translation>सिल्ट</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>रेतीली चिकनी दोमट</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>चिकनी दोमट</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>सिल्ट वाली चिकनी दोमट</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>रेतीली चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>सिल्ट वाली चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>%1: %2 in place of %3.</source>
        <translation>%1: %3 की जगह %2।</translation>
    </message>
    <message>
        <source>Nothing noted yet. Type in what stands on the paper forms, page by page; what follows from it is shown at once and changes nothing until you put it in place.</source>
        <translation>अभी कुछ नोट नहीं किया। जो कागज के फ़ॉर्मों पर लिखा है, उसे पन्ना-पन्ना भरें; उससे जो निकलता है वह तुरंत दिखता है, और जब तक आप उसे भर न दें, कुछ नहीं बदलता।</translation>
    </message>
    <message>
        <source>The notes change nothing of what is entered for the site.</source>
        <translation>जगह के लिए जो भरा है, नोट उसमें कुछ नहीं बदलते।</translation>
    </message>
    <message>
        <source>Putting the notes in place would change:</source>
        <translation>नोट भर देने से यह बदलेगा:</translation>
    </message>
    <message>
        <source>Field notes</source>
        <translation>मौके के नोट</translation>
    </message>
    <message>
        <source>Jars of soil</source>
        <translation>मिट्टी के जार</translation>
    </message>
    <message>
        <source>Balls and ribbons</source>
        <translation>गोलियाँ और पट्टियाँ</translation>
    </message>
    <message>
        <source>Layers of test pits</source>
        <translation>जाँच के गड्ढों की परतें</translation>
    </message>
    <message>
        <source>Settings of the hose level</source>
        <translation>लेवल नली के पड़ाव</translation>
    </message>
    <message>
        <source>Ball and ribbon %1</source>
        <translation>गोली और पट्टी %1</translation>
    </message>
    <message>
        <source>Layer %1</source>
        <translation>परत %1</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>पड़ाव %1</translation>
    </message>
    <message>
        <source>is not deeper than the top of the layer; measure both down from the ground</source>
        <translation>परत के ऊपर से गहरा नहीं है; दोनों ज़मीन से नीचे नापें</translation>
    </message>
    <message>
        <source>does not begin with a mark that this program knows</source>
        <translation>ऐसे निशान से शुरू नहीं होता जिसे यह प्रोग्राम पहचाने</translation>
    </message>
    <message>
        <source>was not copied as it stands, for its last four signs do not fit the rest; compare it sign by sign</source>
        <translation>जैसा था वैसा कॉपी नहीं हुआ, क्योंकि उसके आखिरी चार अक्षर बाकी से मेल नहीं खाते; एक-एक अक्षर मिलाएँ</translation>
    </message>
    <message>
        <source>holds a part that this program does not know; compare it sign by sign</source>
        <translation>इसमें ऐसा हिस्सा है जिसे यह प्रोग्राम नहीं पहचानता; एक-एक अक्षर मिलाएँ</translation>
    </message>
    <message>
        <source>The design on one line</source>
        <translation>डिज़ाइन एक लाइन में</translation>
    </message>
    <message>
        <source>%1 values, %2 to %3</source>
        <translation>%1 मान, %2 से %3</translation>
    </message>
    <message>
        <source>%1; all others 0</source>
        <translation>%1; बाकी सब 0</translation>
    </message>
    <message>
        <source>on the map</source>
        <translation>नक्शे पर</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>जैसा भरा गया</translation>
    </message>
    <message>
        <source>%1: as it stands there</source>
        <translation>%1: जैसा वहाँ है</translation>
    </message>
    <message>
        <source>%1: as entered</source>
        <translation>%1: जैसा भरा गया</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>टंकी खाली</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>टंकी भरी और लीक करती हुई</translation>
    </message>
    <message>
        <source>The tank</source>
        <translation>टंकी</translation>
    </message>
    <message>
        <source>Pit, platform and setting out</source>
        <translation>गड्ढा, समतल जगह और ले-आउट</translation>
    </message>
    <message>
        <source>Coats, materials and batches</source>
        <translation>कोट, सामान और घान</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>मज़दूरी</translation>
    </message>
    <message>
        <source>Dates and people by day</source>
        <translation>तारीखें और दिन-दिन के लोग</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>मौके पर नापा</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>कोट एक ही बार में</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहली भराई</translation>
    </message>
    <message>
        <source>Weather window</source>
        <translation>अच्छे मौसम के हफ़्ते</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>क्या पानी पूरा पड़ेगा</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>स्रोत से</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>खेत तक</translation>
    </message>
    <message>
        <source>Emptying</source>
        <translation>खाली होना</translation>
    </message>
    <message>
        <source>Ground, platform and spoil</source>
        <translation>ज़मीन, समतल जगह और निकली मिट्टी</translation>
    </message>
    <message>
        <source>Stability</source>
        <translation>स्थिरता</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>खर्च का हिसाब और हिस्से</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>लाइनिंग</translation>
    </message>
    <message>
        <source>Coats in order</source>
        <translation>कोट, क्रम से</translation>
    </message>
    <message>
        <source>from the earth inward</source>
        <translation>मिट्टी की ओर से अंदर की तरफ़</translation>
    </message>
    <message>
        <source>Work of each coat</source>
        <translation>हर कोट की मेहनत</translation>
    </message>
    <message>
        <source>face × spreading + plaster × mixing</source>
        <translation>सतह × फैलाना + प्लास्टर × मसाला बनाना</translation>
    </message>
    <message>
        <source>In which a coat must be on</source>
        <translation>इतने समय में कोट लग जाना चाहिए</translation>
    </message>
    <message>
        <source>People on each coat</source>
        <translation>हर कोट पर लोग</translation>
    </message>
    <message>
        <source>as entered, or as wished for the coat</source>
        <translation>जैसा भरा गया, या उस कोट के लिए जो इच्छा भरी गई</translation>
    </message>
    <message>
        <source>People needed</source>
        <translation>कितने लोग चाहिए</translation>
    </message>
    <message>
        <source>work × hours of a person-day ÷ hours for the coat, rounded up</source>
        <translation>मेहनत × एक दिहाड़ी के घंटे ÷ कोट के लिए घंटे, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Masons on each coat</source>
        <translation>हर कोट पर मिस्त्री</translation>
    </message>
    <message>
        <source>as entered, no more than people on the coat</source>
        <translation>जैसा भरा गया, पर कोट पर लगे लोगों से ज़्यादा नहीं</translation>
    </message>
    <message>
        <source>Masons needed</source>
        <translation>कितने मिस्त्री चाहिए</translation>
    </message>
    <message>
        <source>people needed × 0.074 ÷ 0.260, rounded up</source>
        <translation>चाहिए लोग × 0.074 ÷ 0.260, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>पूरे कट्टे वाले घान</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield of a batch, rounded up</source>
        <translation>मिलाने का प्लास्टर ÷ एक घान से निकला प्लास्टर, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Batches an hour needed</source>
        <translation>घंटे में घान, चाहिए</translation>
    </message>
    <message>
        <source>batches ÷ hours for the coat</source>
        <translation>घान ÷ कोट के लिए घंटे</translation>
    </message>
    <message>
        <source>Batches an hour possible</source>
        <translation>घंटे में घान, हो सकते हैं</translation>
    </message>
    <message>
        <source>mixing places × 60 ÷ minutes for a batch</source>
        <translation>मसाला बनाने की जगहें × 60 ÷ एक घान के मिनट</translation>
    </message>
    <message>
        <source>Mixing places needed</source>
        <translation>मसाला बनाने की जगहें चाहिए</translation>
    </message>
    <message>
        <source>batches an hour × minutes for a batch ÷ 60, rounded up</source>
        <translation>घंटे में घान × एक घान के मिनट ÷ 60, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Minutes to put a batch on</source>
        <translation>एक घान लगाने के मिनट</translation>
    </message>
    <message>
        <source>face that it covers × spreading × hours of a person-day × 60 ÷ people who spread: their share of the work</source>
        <translation>घान से ढकी सतह × फैलाना × एक दिहाड़ी के घंटे × 60 ÷ फैलाने वाले लोग: मेहनत में उनका हिस्सा</translation>
    </message>
    <message>
        <source>Minutes for a batch with half a bag</source>
        <translation>आधे कट्टे वाले घान के मिनट</translation>
    </message>
    <message>
        <source>as for a whole bag</source>
        <translation>पूरे कट्टे की तरह</translation>
    </message>
    <message>
        <source>In which a batch must be on the wall</source>
        <translation>घान इतने समय में दीवार पर लग जाना चाहिए</translation>
    </message>
    <message>
        <source>Bags of cement for each coat</source>
        <translation>हर कोट के सीमेंट के कट्टे</translation>
    </message>
    <message>
        <source>cement to mix ÷ weight of a bag, not rounded</source>
        <translation>मिलाने का सीमेंट ÷ एक कट्टे का वज़न, पूरा किए बिना</translation>
    </message>
    <message>
        <source>Mixing water for each coat</source>
        <translation>हर कोट के मसाले का पानी</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³</source>
        <translation>मिलाने का प्लास्टर × हर m³ पर लीटर</translation>
    </message>
    <message>
        <source>Sacks to cover each coat</source>
        <translation>हर कोट ढकने की बोरियाँ</translation>
    </message>
    <message>
        <source>face ÷ what a sack covers × (1 + spare), rounded up</source>
        <translation>सतह ÷ एक बोरी से ढकी सतह × (1 + फालतू), ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Length and width times this, this crew could plaster</source>
        <translation>लंबाई और चौड़ाई × इतना, यह टोली प्लास्टर कर सकती है</translation>
    </message>
    <message>
        <source>found by halving: largest plan, same depth, batter and lining, whose coat the crew can put on</source>
        <translation>आधा-आधा करके खोजा: उसी गहराई, सलामी और लाइनिंग में सबसे बड़ी रूपरेखा, जिसका कोट टोली लगा सके</translation>
    </message>
    <message>
        <source>Clear length of that tank</source>
        <translation>उस टंकी की भीतरी लंबाई</translation>
    </message>
    <message>
        <source>length × factor</source>
        <translation>लंबाई × गुणक</translation>
    </message>
    <message>
        <source>Clear width of that tank</source>
        <translation>उस टंकी की भीतरी चौड़ाई</translation>
    </message>
    <message>
        <source>width × factor</source>
        <translation>चौड़ाई × गुणक</translation>
    </message>
    <message>
        <source>Held by that tank, filled to the overflow</source>
        <translation>उस टंकी में पानी, ओवरफ्लो तक भरी</translation>
    </message>
    <message>
        <source>V(h) with its own floor</source>
        <translation>V(h), उसके अपने फ़र्श से</translation>
    </message>
    <message>
        <source>Inflow on the first day</source>
        <translation>पहले दिन की आमद</translation>
    </message>
    <message>
        <source>as entered, else flow × hours of the source in that month</source>
        <translation>जैसा भरा गया, नहीं तो बहाव × उस महीने में स्रोत के घंटे</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>भराई शुरू</translation>
    </message>
    <message>
        <source>as in the dates: last day of curing or of the days within which it must start, whichever comes first</source>
        <translation>जैसा तारीखों में है: तराई का आखिरी दिन, या जितने दिनों में भराई शुरू होनी ही है उनका आखिरी दिन, जो पहले आए</translation>
    </message>
    <message>
        <source>Latest start of filling</source>
        <translation>भराई की सबसे देर की शुरुआत</translation>
    </message>
    <message>
        <source>last coat + days within which filling must start</source>
        <translation>आखिरी कोट + जितने दिनों में भराई शुरू होनी ही है</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>टंकी भरी</translation>
    </message>
    <message>
        <source>first day on which it holds what it can up to the overflow</source>
        <translation>पहला दिन जब टंकी में ओवरफ्लो तक का पूरा पानी हो</translation>
    </message>
    <message>
        <source>Water for sacks after curing</source>
        <translation>तराई के बाद बोरियों का पानी</translation>
    </message>
    <message>
        <source>sum over the days of wall still to be wet × litres a day for each m²</source>
        <translation>दिनों का जोड़: जो दीवार अभी गीली रखनी है × हर m² पर दिन में लीटर</translation>
    </message>
    <message>
        <source>Water to bring by hand</source>
        <translation>हाथ से लाने का पानी</translation>
    </message>
    <message>
        <source>held if the water covered the walls by the latest start + curing, as far as the limit on the rise lets it − held then</source>
        <translation>सबसे देर की शुरुआत + तराई तक पानी सब दीवारें ढक ले तो टंकी का पानी, जहाँ तक चढ़ाव की सीमा होने दे − उस समय टंकी में पानी</translation>
    </message>
    <message>
        <source>Bands of the wall: lower edge</source>
        <translation>दीवार के घेरे: निचला किनारा</translation>
    </message>
    <message>
        <source>even steps up from the floor</source>
        <translation>फ़र्श से ऊपर बराबर कदमों में</translation>
    </message>
    <message>
        <source>Bands of the wall: upper edge</source>
        <translation>दीवार के घेरे: ऊपरी किनारा</translation>
    </message>
    <message>
        <source>even steps up to the overflow, then the rim</source>
        <translation>ओवरफ्लो तक बराबर कदमों में, फिर मुंडेर</translation>
    </message>
    <message>
        <source>Bands of the wall: area</source>
        <translation>दीवार के घेरे: क्षेत्रफल</translation>
    </message>
    <message>
        <source>wet face up to the upper edge − up to the lower; wet face = floor + √(1 + batter²) × h × mean edge</source>
        <translation>ऊपरी किनारे तक गीली सतह − निचले किनारे तक; गीली सतह = फ़र्श + √(1 + सलामी²) × h × किनारे की औसत लंबाई</translation>
    </message>
    <message>
        <source>Bands: sacks wet from</source>
        <translation>घेरे: बोरियाँ इस दिन से गीली</translation>
    </message>
    <message>
        <source>day after the last coat</source>
        <translation>आखिरी कोट के बाद का दिन</translation>
    </message>
    <message>
        <source>Bands: covered by water on</source>
        <translation>घेरे: पानी इस दिन ढकता है</translation>
    </message>
    <message>
        <source>first day at whose end the level is at the upper edge</source>
        <translation>पहला दिन जिसके अंत में पानी ऊपरी किनारे पर हो</translation>
    </message>
    <message>
        <source>Bands: sacks wet until</source>
        <translation>घेरे: बोरियाँ इस दिन तक गीली</translation>
    </message>
    <message>
        <source>day before it is covered, not before the end of curing</source>
        <translation>पानी के ढकने से एक दिन पहले, पर तराई पूरी होने से पहले नहीं</translation>
    </message>
    <message>
        <source>Bands: days of wetting</source>
        <translation>घेरे: भिगाई के दिन</translation>
    </message>
    <message>
        <source>from the first to the last, both counted</source>
        <translation>पहले से आखिरी तक, दोनों गिनकर</translation>
    </message>
    <message>
        <source>Days of filling</source>
        <translation>भराई के दिन</translation>
    </message>
    <message>
        <source>from the start until full, 366 at most</source>
        <translation>शुरू से भरने तक, ज़्यादा से ज़्यादा 366</translation>
    </message>
    <message>
        <source>Let in each day</source>
        <translation>हर दिन आने दिया पानी</translation>
    </message>
    <message>
        <source>inflow, held to what raises the level by no more than the limit</source>
        <translation>आमद, पर इतनी ही कि पानी सीमा से ज़्यादा न चढ़े</translation>
    </message>
    <message>
        <source>Lost each day</source>
        <translation>हर दिन का घाटा</translation>
    </message>
    <message>
        <source>ET0 of the month × open water × (1 − cover) × surface + seepage × wet face, no more than there is</source>
        <translation>महीने का ET0 × खुला पानी × (1 − ढक्कन) × पानी की सतह + रिसाव × गीली सतह, जितना पानी है उससे ज़्यादा नहीं</translation>
    </message>
    <message>
        <source>Held at the end of each day</source>
        <translation>हर दिन के अंत में टंकी में पानी</translation>
    </message>
    <message>
        <source>held before + let in − lost</source>
        <translation>पहले का पानी + आने दिया − घाटा</translation>
    </message>
    <message>
        <source>Level at the end of each day</source>
        <translation>हर दिन के अंत में पानी का स्तर</translation>
    </message>
    <message>
        <source>h at which V(h) is what is held</source>
        <translation>वह h जिस पर V(h) = टंकी का पानी</translation>
    </message>
    <message>
        <source>Wall above the water each day</source>
        <translation>हर दिन पानी से ऊपर की दीवार</translation>
    </message>
    <message>
        <source>floor + wall − wet face up to the level</source>
        <translation>फ़र्श + दीवार − स्तर तक गीली सतह</translation>
    </message>
    <message>
        <source>Water for sacks each day</source>
        <translation>हर दिन बोरियों का पानी</translation>
    </message>
    <message>
        <source>wall above the water still to be wet × litres a day for each m²</source>
        <translation>पानी से ऊपर की दीवार जो अभी गीली रखनी है × हर m² पर दिन में लीटर</translation>
    </message>
    <message>
        <source>Weather years looked at</source>
        <translation>मौसम के साल, जो देखे गए</translation>
    </message>
    <message>
        <source>all that there are</source>
        <translation>जितने भी हैं</translation>
    </message>
    <message>
        <source>Rain in a day that spoils a fresh coat</source>
        <translation>एक दिन की बारिश जो ताज़ा कोट बिगाड़े</translation>
    </message>
    <message>
        <source>Week of the first coat, as planned</source>
        <translation>पहले कोट का हफ़्ता, योजना से</translation>
    </message>
    <message>
        <source>week of its day; weeks count from 1 January</source>
        <translation>उसके दिन का हफ़्ता; हफ़्ते 1 जनवरी से गिने जाते हैं</translation>
    </message>
    <message>
        <source>Week with the best chance</source>
        <translation>सबसे अच्छी संभावना वाला हफ़्ता</translation>
    </message>
    <message>
        <source>largest share of undisturbed starts; of equal ones the planned one, else the next after it</source>
        <translation>जिसमें मौसम से बची शुरुआतों का हिस्सा सबसे बड़ा हो; बराबर हों तो योजना वाला, नहीं तो उसके बाद का अगला</translation>
    </message>
    <message>
        <source>First coat in that week</source>
        <translation>उस हफ़्ते में पहला कोट</translation>
    </message>
    <message>
        <source>works begun so that it falls there, with rest days and closed days</source>
        <translation>निर्माण ऐसे शुरू कि कोट उसी हफ़्ते में पड़े, छुट्टी के दिन और बंद दिन गिनकर</translation>
    </message>
    <message>
        <source>Start of the works for it</source>
        <translation>उसके लिए निर्माण की शुरुआत</translation>
    </message>
    <message>
        <source>planned start moved by as many days as the first coat, then until the coat falls in the week</source>
        <translation>योजना की शुरुआत उतने दिन खिसकाई जितने पहला कोट खिसका, फिर तब तक जब तक कोट उस हफ़्ते में न पड़े</translation>
    </message>
    <message>
        <source>Weeks of the year</source>
        <translation>साल के हफ़्ते</translation>
    </message>
    <message>
        <source>first day of each</source>
        <translation>हर हफ़्ते का पहला दिन</translation>
    </message>
    <message>
        <source>Share undisturbed, by week</source>
        <translation>मौसम से बचा हिस्सा, हफ़्ते-हफ़्ते</translation>
    </message>
    <message>
        <source>start days of the week in all years on which none of the three below happens ÷ all</source>
        <translation>सब सालों में उस हफ़्ते के शुरुआती दिन जिन पर नीचे की तीनों बातों में से कोई न हो ÷ सब</translation>
    </message>
    <message>
        <source>Share with heavy rain, by week</source>
        <translation>भारी बारिश का हिस्सा, हफ़्ते-हफ़्ते</translation>
    </message>
    <message>
        <source>heavy rain on a coat&apos;s day or the day after ÷ all</source>
        <translation>कोट के दिन या अगले दिन भारी बारिश ÷ सब</translation>
    </message>
    <message>
        <source>Share with frost, by week</source>
        <translation>पाले का हिस्सा, हफ़्ते-हफ़्ते</translation>
    </message>
    <message>
        <source>night at or below 0 °C before a coat or in the 7 days after ÷ all</source>
        <translation>कोट से पहले की रात या बाद के 7 दिनों में 0 °C या नीचे ÷ सब</translation>
    </message>
    <message>
        <source>Share too cold or too hot, by week</source>
        <translation>ज़्यादा ठंड या गर्मी का हिस्सा, हफ़्ते-हफ़्ते</translation>
    </message>
    <message>
        <source>mean below 5 °C or maximum above 35 °C on a coat&apos;s day ÷ all</source>
        <translation>कोट के दिन औसत 5 °C से नीचे या अधिकतम 35 °C से ऊपर ÷ सब</translation>
    </message>
    <message>
        <source>Coats whose drying is reckoned</source>
        <translation>कोट जिनके सूखने का हिसाब लगा</translation>
    </message>
    <message>
        <source>those in whose month wind was measured</source>
        <translation>जिनके महीने में हवा नापी गई थी</translation>
    </message>
    <message>
        <source>Air in the warmest hours</source>
        <translation>सबसे गर्म घंटों की हवा का तापमान</translation>
    </message>
    <message>
        <source>mean maximum of the days on which the coat falls</source>
        <translation>जिन दिनों में कोट पड़ता है उनके अधिकतम का औसत</translation>
    </message>
    <message>
        <source>Humidity in the warmest hours</source>
        <translation>सबसे गर्म घंटों में नमी</translation>
    </message>
    <message>
        <source>vapour pressure of the day ÷ saturation pressure at the maximum, eq. 11 and 19</source>
        <translation>दिन का वाष्प दबाव ÷ अधिकतम तापमान पर संतृप्त दबाव, समी. 11 और 19</translation>
    </message>
    <message>
        <source>Wind, km an hour</source>
        <translation>हवा की गति, km प्रति घंटा</translation>
    </message>
    <message>
        <source>mean wind × 3.6</source>
        <translation>औसत हवा × 3.6</translation>
    </message>
    <message>
        <source>Water lost by the fresh plaster</source>
        <translation>ताज़ा प्लास्टर से उड़ा पानी</translation>
    </message>
    <message>
        <source>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T air and plaster in °C, r humidity from 0 to 1, V wind in km an hour</source>
        <translation>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T हवा और प्लास्टर का तापमान °C में, r नमी 0 से 1, V हवा की गति km प्रति घंटा</translation>
    </message>
    <message>
        <source>Reckoned with exact shells, net</source>
        <translation>हिसाब, सटीक खोल से, असल</translation>
    </message>
    <message>
        <source>sums of the net mixes; stone: the bed</source>
        <translation>असल मिश्रणों का जोड़; पत्थर: सोलिंग</translation>
    </message>
    <message>
        <source>Reckoned by area × thickness, net</source>
        <translation>हिसाब, क्षेत्रफल × मोटाई से, असल</translation>
    </message>
    <message>
        <source>sums of the mixes by area × thickness; stone: floor × bed</source>
        <translation>क्षेत्रफल × मोटाई से मिश्रणों का जोड़; पत्थर: फ़र्श × सोलिंग</translation>
    </message>
    <message>
        <source>Exact shells over the bill</source>
        <translation>सटीक खोल ÷ चलन की सूची</translation>
    </message>
    <message>
        <source>reckoned ÷ customary</source>
        <translation>हिसाब ÷ चलन</translation>
    </message>
    <message>
        <source>Area × thickness over the bill</source>
        <translation>क्षेत्रफल × मोटाई ÷ चलन की सूची</translation>
    </message>
    <message>
        <source>Soil for each sand in the bill</source>
        <translation>सूची में हर भाग रेत पर मिट्टी</translation>
    </message>
    <message>
        <source>soil ÷ sand</source>
        <translation>मिट्टी ÷ रेत</translation>
    </message>
    <message>
        <source>Soil for each sand in the mixes</source>
        <translation>मिश्रणों में हर भाग रेत पर मिट्टी</translation>
    </message>
    <message>
        <source>net soil ÷ net sand</source>
        <translation>असल मिट्टी ÷ असल रेत</translation>
    </message>
    <message>
        <source>Cement that thickness and mix need</source>
        <translation>मोटाई और मिश्रण से जितना सीमेंट चाहिए</translation>
    </message>
    <message>
        <source>sum of the net mixes, exact shells</source>
        <translation>असल मिश्रणों का जोड़, सटीक खोल से</translation>
    </message>
    <message>
        <source>The same by area × thickness</source>
        <translation>वही, क्षेत्रफल × मोटाई से</translation>
    </message>
    <message>
        <source>sum of the mixes by area × thickness</source>
        <translation>मिश्रणों का जोड़, क्षेत्रफल × मोटाई से</translation>
    </message>
    <message>
        <source>All coats times this would use the bill&apos;s cement</source>
        <translation>सब कोट × इतना, तो सूची का सीमेंट लगे</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with all coats × factor = cement of the bill</source>
        <translation>आधा-आधा करके खोजा: सब कोट × गुणक पर सटीक खोल का सीमेंट = सूची का सीमेंट</translation>
    </message>
    <message>
        <source>cement of the bill ÷ cement by area × thickness</source>
        <translation>सूची का सीमेंट ÷ क्षेत्रफल × मोटाई से सीमेंट</translation>
    </message>
    <message>
        <source>Coats as thick as that</source>
        <translation>उतने मोटे कोट</translation>
    </message>
    <message>
        <source>thickness × factor</source>
        <translation>मोटाई × गुणक</translation>
    </message>
    <message>
        <source>Coats as thick as that, by area</source>
        <translation>उतने मोटे कोट, क्षेत्रफल से</translation>
    </message>
    <message>
        <source>Soil and sand times this would use the bill&apos;s cement</source>
        <translation>मिट्टी और रेत × इतना, तो सूची का सीमेंट लगे</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with soil and sand parts × factor = cement of the bill</source>
        <translation>आधा-आधा करके खोजा: मिट्टी और रेत के भाग × गुणक पर सटीक खोल का सीमेंट = सूची का सीमेंट</translation>
    </message>
    <message>
        <source>found by halving, volumes by area × thickness</source>
        <translation>आधा-आधा करके खोजा, आयतन क्षेत्रफल × मोटाई से</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>मिट्टी</translation>
    </message>
    <message>
        <source>soil parts × factor</source>
        <translation>मिट्टी के भाग × गुणक</translation>
    </message>
    <message>
        <source>sand parts × factor</source>
        <translation>रेत के भाग × गुणक</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>सीमेंट</translation>
    </message>
    <message>
        <source>cement parts, as entered</source>
        <translation>सीमेंट के भाग, जैसा भरा गया</translation>
    </message>
    <message>
        <source>Mix that would use the bill&apos;s cement</source>
        <translation>मिश्रण जिसमें सूची का सीमेंट लगे</translation>
    </message>
    <message>
        <source>Each task starts</source>
        <translation>हर काम की शुरुआत</translation>
    </message>
    <message>
        <source>latest of: start of the works, the day wished, what each arrow to it asks for; forward pass on days that are worked; last day to start filling: last coat + days within which filling must start</source>
        <translation>इनमें सबसे बाद का: निर्माण की शुरुआत, चाहा गया दिन, उस तक आने वाला हर तीर जो माँगे; काम के दिनों पर आगे की गिनती; भरना शुरू करने का आखिरी दिन: आखिरी कोट + जितने दिनों में भराई शुरू होनी ही है</translation>
    </message>
    <message>
        <source>Each task ends</source>
        <translation>हर काम का अंत</translation>
    </message>
    <message>
        <source>start + duration on its clock, last day on which anything is done</source>
        <translation>शुरुआत + उसकी अपनी घड़ी से समय, आखिरी दिन जब कुछ भी होता है</translation>
    </message>
    <message>
        <source>Duration of each task</source>
        <translation>हर काम का समय</translation>
    </message>
    <message>
        <source>person-days ÷ people, up to the next quarter of a day, at least one; a coat one day; curing, filling and leak test their days</source>
        <translation>दिहाड़ियाँ ÷ लोग, अगले चौथाई दिन तक ऊपर पूरा करके, कम से कम एक चौथाई; कोट एक दिन; तराई, भराई और लीक जाँच अपने-अपने दिन</translation>
    </message>
    <message>
        <source>Days with work on them</source>
        <translation>दिन जिन पर काम होता है</translation>
    </message>
    <message>
        <source>days from start to end that are worked; all days for curing and filling</source>
        <translation>शुरू से अंत तक के दिन जिन पर काम होता है; तराई और भराई के सब दिन</translation>
    </message>
    <message>
        <source>People on each task</source>
        <translation>हर काम पर लोग</translation>
    </message>
    <message>
        <source>labourers + masons</source>
        <translation>मज़दूर + मिस्त्री</translation>
    </message>
    <message>
        <source>Labourers on each task</source>
        <translation>हर काम पर मज़दूर</translation>
    </message>
    <message>
        <source>diggers, or people on a coat, or as wished; less the masons; spoil: as few as carry it while the pit is dug</source>
        <translation>खोदने वाले, या कोट पर लोग, या जैसी इच्छा; मिस्त्री घटाकर; निकली मिट्टी: कम से कम जितने लोग खुदाई के दौरान उसे ढो लें</translation>
    </message>
    <message>
        <source>Masons on each task</source>
        <translation>हर काम पर मिस्त्री</translation>
    </message>
    <message>
        <source>all there are for a coat, else people × skilled share, rounded up</source>
        <translation>कोट पर जितने हैं सब, नहीं तो लोग × मिस्त्री का हिस्सा, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>People wetting on each task</source>
        <translation>हर काम पर भिगोने वाले</translation>
    </message>
    <message>
        <source>as entered, on curing, filling and leak test</source>
        <translation>जैसा भरा गया; तराई, भराई और लीक जाँच पर</translation>
    </message>
    <message>
        <source>Share of the first day gone at the start</source>
        <translation>शुरुआत तक पहले दिन का बीता हिस्सा</translation>
    </message>
    <message>
        <source>quarters of a day from the start of the day</source>
        <translation>दिन के शुरू से चौथाई दिन</translation>
    </message>
    <message>
        <source>Room of each task</source>
        <translation>हर काम की ढील</translation>
    </message>
    <message>
        <source>late start − early start on its clock; backward pass from the last end; curing has none of its own</source>
        <translation>देर की शुरुआत − जल्दी की शुरुआत, उसकी अपनी घड़ी से; आखिरी अंत से पीछे की गिनती; तराई की अपनी ढील नहीं</translation>
    </message>
    <message>
        <source>Room that moves no other task</source>
        <translation>ढील जिससे कोई और काम न खिसके</translation>
    </message>
    <message>
        <source>earliest that the next task asks for − early end</source>
        <translation>अगला काम जो सबसे पहले माँगे − जल्दी का अंत</translation>
    </message>
    <message>
        <source>Earliest start wished</source>
        <translation>इच्छा: इससे पहले शुरू नहीं</translation>
    </message>
    <message>
        <source>Days between two tasks</source>
        <translation>दो कामों के बीच के दिन</translation>
    </message>
    <message>
        <source>0, one after the other; spoil a quarter of a day after the pit; filling: smaller of last curing and days within which it must start, less one</source>
        <translation>0, एक के बाद एक; निकली मिट्टी गड्ढे के चौथाई दिन बाद; भराई: आखिरी तराई और जितने दिनों में भराई शुरू होनी ही है, इनमें से छोटा, एक घटाकर</translation>
    </message>
    <message>
        <source>Days of the works</source>
        <translation>निर्माण के दिन</translation>
    </message>
    <message>
        <source>each day from the first start to the last end</source>
        <translation>पहली शुरुआत से आखिरी अंत तक हर दिन</translation>
    </message>
    <message>
        <source>Labourers by day</source>
        <translation>मज़दूर, दिन-दिन</translation>
    </message>
    <message>
        <source>most who are there at one quarter of the day</source>
        <translation>दिन के किसी चौथाई में ज़्यादा से ज़्यादा जितने हों</translation>
    </message>
    <message>
        <source>Masons by day</source>
        <translation>मिस्त्री, दिन-दिन</translation>
    </message>
    <message>
        <source>Wetters by day</source>
        <translation>भिगोने वाले, दिन-दिन</translation>
    </message>
    <message>
        <source>those who see to all sacks</source>
        <translation>जो सब बोरियाँ देखते हैं</translation>
    </message>
    <message>
        <source>Water for sacks by day</source>
        <translation>बोरियों का पानी, दिन-दिन</translation>
    </message>
    <message>
        <source>face of each coat that cures or waits for the next × litres a day for each m²; once filling has begun the bands of wall still to be wet</source>
        <translation>जिस कोट की तराई चल रही है या जो अगले कोट की राह देख रहा है उसकी सतह × हर m² पर दिन में लीटर; भराई शुरू होने पर दीवार के वे घेरे जो अभी गीले रखने हैं</translation>
    </message>
    <message>
        <source>batches that count</source>
        <translation>गिने जाने वाले घान</translation>
    </message>
    <message>
        <source>trial batches of a coat of this lining</source>
        <translation>इस लाइनिंग के किसी कोट के जाँच घान</translation>
    </message>
    <message>
        <source>middle of the batches</source>
        <translation>घानों का बीच का मान</translation>
    </message>
    <message>
        <source>loose soil, sand and cement ÷ (area × thickness); the middle one, or mean of the two middle ones</source>
        <translation>ढीली मिट्टी, रेत और सीमेंट ÷ (क्षेत्रफल × मोटाई); बीच का मान, या बीच के दो का औसत</translation>
    </message>
    <message>
        <source>smallest of the batches</source>
        <translation>घानों में सबसे कम</translation>
    </message>
    <message>
        <source>as the middle</source>
        <translation>बीच के मान की तरह</translation>
    </message>
    <message>
        <source>largest of the batches</source>
        <translation>घानों में सबसे ज़्यादा</translation>
    </message>
    <message>
        <source>what stands in the project without them</source>
        <translation>रिकॉर्ड न हों तो प्रोजेक्ट में क्या है</translation>
    </message>
    <message>
        <source>Dry to wet, from trial batches</source>
        <translation>सूखे से गीला, जाँच घानों से</translation>
    </message>
    <message>
        <source>records that count</source>
        <translation>रिकॉर्ड जो गिने जाते हैं</translation>
    </message>
    <message>
        <source>digging in this soil; other work all</source>
        <translation>इस मिट्टी में खुदाई; बाकी काम सब</translation>
    </message>
    <message>
        <source>middle of the records</source>
        <translation>रिकॉर्डों का बीच का मान</translation>
    </message>
    <message>
        <source>person-days ÷ quantity; the middle one, or mean of the two middle ones</source>
        <translation>दिहाड़ियाँ ÷ मात्रा; बीच का मान, या बीच के दो का औसत</translation>
    </message>
    <message>
        <source>smallest of the records</source>
        <translation>रिकॉर्डों में सबसे छोटा</translation>
    </message>
    <message>
        <source>largest of the records</source>
        <translation>रिकॉर्डों में सबसे बड़ा</translation>
    </message>
    <message>
        <source>as entered, else from the table of rates or the district&apos;s own</source>
        <translation>जैसा भरा गया, नहीं तो दरों की तालिका से या ज़िले की अपनी दरों से</translation>
    </message>
    <message>
        <source>Ramming</source>
        <translation>कुटाई</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>फैलाना</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>मसाला बनाना</translation>
    </message>
    <message>
        <source>Outlets open at a time</source>
        <translation>एक साथ खुले निकास</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank full</source>
        <translation>निकासों पर बचा हेड, टंकी भरी</translation>
    </message>
    <message>
        <source>overflow level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>ओवरफ्लो का स्तर − लाइन का सिरा − निकासों के आम बहाव पर हेड का घाटा</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank nearly empty</source>
        <translation>निकासों पर बचा हेड, टंकी लगभग खाली</translation>
    </message>
    <message>
        <source>dead level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>डेड स्तर − लाइन का सिरा − निकासों के आम बहाव पर हेड का घाटा</translation>
    </message>
    <message>
        <source>Head that the outlet usually needs</source>
        <translation>निकास को आम तौर पर चाहिए हेड</translation>
    </message>
    <message>
        <source>by kind of outlet</source>
        <translation>निकास की किस्म से</translation>
    </message>
    <message>
        <source>Head over that, tank full</source>
        <translation>उससे ऊपर हेड, टंकी भरी</translation>
    </message>
    <message>
        <source>head left − head needed</source>
        <translation>बचा हेड − चाहिए हेड</translation>
    </message>
    <message>
        <source>Head over that, tank nearly empty</source>
        <translation>उससे ऊपर हेड, टंकी लगभग खाली</translation>
    </message>
    <message>
        <source>The line draws down to</source>
        <translation>लाइन यहाँ तक खाली करती है</translation>
    </message>
    <message>
        <source>highest of dead level, end of the line + 2 cm, crest − (air pressure less vapour − reserve)</source>
        <translation>इनमें सबसे ऊँचा: डेड स्तर, लाइन का सिरा + 2 cm, चोटी − (हवा का दबाव, वाष्प घटाकर − गुंजाइश)</translation>
    </message>
    <message>
        <source>Emptied in, end wide open</source>
        <translation>खाली होने का समय, सिरा पूरा खुला</translation>
    </message>
    <message>
        <source>integral of surface(z) ÷ outflow(z) over the level z, Gauss-Kronrod with 15 points</source>
        <translation>स्तर z पर सतह(z) ÷ निकलता बहाव(z) का समाकलन, 15 बिंदुओं वाला गाउस-क्रोनरॉड</translation>
    </message>
    <message>
        <source>Error of that time at most</source>
        <translation>उस समय में ज़्यादा से ज़्यादा चूक</translation>
    </message>
    <message>
        <source>sum of the differences of the rules</source>
        <translation>दोनों नियमों के अंतरों का जोड़</translation>
    </message>
    <message>
        <source>Levels while it empties</source>
        <translation>खाली होते समय के स्तर</translation>
    </message>
    <message>
        <source>even steps from the overflow down</source>
        <translation>ओवरफ्लो से नीचे बराबर कदमों में</translation>
    </message>
    <message>
        <source>Time at each level</source>
        <translation>हर स्तर का समय</translation>
    </message>
    <message>
        <source>integral from the overflow level down to it</source>
        <translation>ओवरफ्लो के स्तर से उस स्तर तक का समाकलन</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>मूसलाधार बारिश</translation>
    </message>
    <message>
        <source>as entered; 100 mm an hour when it is not known</source>
        <translation>जैसा भरा गया; पता न हो तो 100 mm प्रति घंटा</translation>
    </message>
    <message>
        <source>Water of the storm</source>
        <translation>मूसलाधार बारिश का पानी</translation>
    </message>
    <message>
        <source>rain × sum of (runoff × area): roof at least 0.9, ground at least 0.5, opening of the tank 1</source>
        <translation>बारिश × Σ(बहकर आया हिस्सा × क्षेत्रफल): छत कम से कम 0.9, ज़मीन कम से कम 0.5, टंकी का मुँह 1</translation>
    </message>
    <message>
        <source>Water of the source</source>
        <translation>स्रोत का पानी</translation>
    </message>
    <message>
        <source>flow of its line to the full tank; without a line the largest of a month</source>
        <translation>भरी टंकी तक उसकी लाइन का बहाव; लाइन न हो तो महीनों में सबसे बड़ा</translation>
    </message>
    <message>
        <source>Both together</source>
        <translation>दोनों मिलाकर</translation>
    </message>
    <message>
        <source>storm + source</source>
        <translation>मूसलाधार बारिश + स्रोत</translation>
    </message>
    <message>
        <source>Sill over the finished floor</source>
        <translation>दहलीज, तैयार फ़र्श से ऊपर</translation>
    </message>
    <message>
        <source>overflow level</source>
        <translation>ओवरफ्लो का स्तर</translation>
    </message>
    <message>
        <source>Water over the sill in the storm</source>
        <translation>मूसलाधार बारिश में दहलीज से ऊपर पानी</translation>
    </message>
    <message>
        <source>notch: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; pipe: largest head of inlet, orifice, even flow and full pipe</source>
        <translation>खाँचा: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; पाइप: मुँह, छेद, एक-से बहाव और भरे पाइप के हेड में सबसे बड़ा</translation>
    </message>
    <message>
        <source>Water level in the storm</source>
        <translation>मूसलाधार बारिश में पानी का स्तर</translation>
    </message>
    <message>
        <source>sill + water over it</source>
        <translation>दहलीज + उससे ऊपर पानी</translation>
    </message>
    <message>
        <source>Freeboard left</source>
        <translation>बचा फ्रीबोर्ड</translation>
    </message>
    <message>
        <source>lowest part of the rim − water level</source>
        <translation>मुंडेर का सबसे नीचा हिस्सा − पानी का स्तर</translation>
    </message>
    <message>
        <source>Carries with water at the rim</source>
        <translation>पानी मुंडेर पर हो तब निकालता है</translation>
    </message>
    <message>
        <source>same formula with the head up to the lowest part of the rim</source>
        <translation>वही सूत्र, हेड मुंडेर के सबसे नीचे हिस्से तक</translation>
    </message>
    <message>
        <source>Freeboard that should be left</source>
        <translation>जितना फ्रीबोर्ड बचना चाहिए</translation>
    </message>
    <message>
        <source>5 cm</source>
        <translation>5 cm</translation>
    </message>
    <message>
        <source>Notch that would leave it</source>
        <translation>खाँचा जिससे उतना बचे</translation>
    </message>
    <message>
        <source>flow ÷ flow over 1 m of sill at that head</source>
        <translation>बहाव ÷ उस हेड पर 1 m दहलीज का बहाव</translation>
    </message>
    <message>
        <source>Pipe that would leave it, bore</source>
        <translation>पाइप जिससे उतना बचे, भीतरी व्यास</translation>
    </message>
    <message>
        <source>smallest from 20 mm in steps of 5 mm whose head is small enough</source>
        <translation>20 mm से, 5 mm के कदमों में, सबसे छोटा जिसका हेड काफ़ी कम हो</translation>
    </message>
    <message>
        <source>Water level, overflow blocked</source>
        <translation>पानी का स्तर, ओवरफ्लो बंद</translation>
    </message>
    <message>
        <source>all of the flow over the rim, lowest parts first, each by the formula of the notch</source>
        <translation>सारा बहाव मुंडेर के ऊपर से, सबसे नीचे हिस्से पहले, हर हिस्सा खाँचे के सूत्र से</translation>
    </message>
    <message>
        <source>Water over the lowest part then</source>
        <translation>तब सबसे नीचे हिस्से से ऊपर पानी</translation>
    </message>
    <message>
        <source>water level − lowest part</source>
        <translation>पानी का स्तर − सबसे नीचा हिस्सा</translation>
    </message>
    <message>
        <source>Water over each part then</source>
        <translation>तब हर हिस्से से ऊपर पानी</translation>
    </message>
    <message>
        <source>water level − level of the part, 0 where dry</source>
        <translation>पानी का स्तर − उस हिस्से का स्तर, सूखा हो तो 0</translation>
    </message>
    <message>
        <source>Flow over each part then</source>
        <translation>तब हर हिस्से के ऊपर से बहाव</translation>
    </message>
    <message>
        <source>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</source>
        <translation>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</translation>
    </message>
    <message>
        <source>Spill channel, deep</source>
        <translation>निकास की नाली, गहराई</translation>
    </message>
    <message>
        <source>Spill channel, Manning&apos;s n</source>
        <translation>निकास की नाली, Manning का n</translation>
    </message>
    <message>
        <source>by what it is dug in or covered with</source>
        <translation>किसमें खुदी है या किससे ढकी है, उससे</translation>
    </message>
    <message>
        <source>Water in the spill channel</source>
        <translation>निकास की नाली में पानी</translation>
    </message>
    <message>
        <source>depth of even flow: Q = A R^(2÷3) √S ÷ n</source>
        <translation>एक-से बहाव की गहराई: Q = A R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Speed in the spill channel</source>
        <translation>निकास की नाली में गति</translation>
    </message>
    <message>
        <source>R^(2÷3) √S ÷ n</source>
        <translation>R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Width of the water there</source>
        <translation>वहाँ पानी की चौड़ाई</translation>
    </message>
    <message>
        <source>bottom width + 2 × side slope × depth</source>
        <translation>पेंदी की चौड़ाई + 2 × किनारों की ढाल × गहराई</translation>
    </message>
    <message>
        <source>Froude number there</source>
        <translation>वहाँ फ्राउड संख्या</translation>
    </message>
    <message>
        <source>V ÷ √(g A ÷ top width)</source>
        <translation>V ÷ √(g A ÷ ऊपर की चौड़ाई)</translation>
    </message>
    <message>
        <source>Speed that is safe</source>
        <translation>सुरक्षित गति</translation>
    </message>
    <message>
        <source>by soil or cover, low figure</source>
        <translation>मिट्टी या ढकाव से, कम वाला आँकड़ा</translation>
    </message>
    <message>
        <source>Speed that scours</source>
        <translation>कटाव करने वाली गति</translation>
    </message>
    <message>
        <source>by soil or cover, high figure</source>
        <translation>मिट्टी या ढकाव से, ज़्यादा वाला आँकड़ा</translation>
    </message>
    <message>
        <source>Flow through the trap</source>
        <translation>कुंडी से गुज़रता बहाव</translation>
    </message>
    <message>
        <source>as entered, else source + storm led in from roof and ground</source>
        <translation>जैसा भरा गया, नहीं तो स्रोत + छत और ज़मीन से आती मूसलाधार बारिश</translation>
    </message>
    <message>
        <source>Smallest grain that must stay</source>
        <translation>सबसे छोटा कण जो रुकना चाहिए</translation>
    </message>
    <message>
        <source>Speed at which that grain falls</source>
        <translation>वह कण जिस गति से बैठता है</translation>
    </message>
    <message>
        <source>R g d² ÷ (18 ν + √(0.75 R g d³)), R = density over water − 1, 2650 kg/m³</source>
        <translation>R g d² ÷ (18 ν + √(0.75 R g d³)), R = पानी की तुलना में घनत्व − 1, 2650 kg/m³</translation>
    </message>
    <message>
        <source>Least area</source>
        <translation>कम से कम क्षेत्रफल</translation>
    </message>
    <message>
        <source>flow ÷ settling speed</source>
        <translation>बहाव ÷ बैठने की गति</translation>
    </message>
    <message>
        <source>Area with reserve</source>
        <translation>क्षेत्रफल, गुंजाइश के साथ</translation>
    </message>
    <message>
        <source>2 × least area</source>
        <translation>2 × कम से कम क्षेत्रफल</translation>
    </message>
    <message>
        <source>Length of the trap</source>
        <translation>कुंडी की लंबाई</translation>
    </message>
    <message>
        <source>area ÷ width</source>
        <translation>क्षेत्रफल ÷ चौड़ाई</translation>
    </message>
    <message>
        <source>Width of the trap</source>
        <translation>कुंडी की चौड़ाई</translation>
    </message>
    <message>
        <source>√(area ÷ 6): six times as long as wide</source>
        <translation>√(क्षेत्रफल ÷ 6): लंबाई चौड़ाई की छह गुनी</translation>
    </message>
    <message>
        <source>Depth of the trap</source>
        <translation>कुंडी की गहराई</translation>
    </message>
    <message>
        <source>10 cm freeboard + settling depth + depth of mud</source>
        <translation>10 cm फ्रीबोर्ड + पानी थमने की गहराई + गाद की गहराई</translation>
    </message>
    <message>
        <source>Greatest forward speed</source>
        <translation>आगे बहने की सबसे ज़्यादा गति</translation>
    </message>
    <message>
        <source>0.44 × √(grain in mm)</source>
        <translation>0.44 × √(कण mm में)</translation>
    </message>
    <message>
        <source>Flow over area, a day</source>
        <translation>क्षेत्रफल पर बहाव, एक दिन में</translation>
    </message>
    <message>
        <source>flow ÷ area × 86 400 s</source>
        <translation>बहाव ÷ क्षेत्रफल × 86 400 s</translation>
    </message>
    <message>
        <source>Settling depth</source>
        <translation>पानी थमने की गहराई</translation>
    </message>
    <message>
        <source>flow ÷ (width × greatest forward speed)</source>
        <translation>बहाव ÷ (चौड़ाई × आगे बहने की सबसे ज़्यादा गति)</translation>
    </message>
    <message>
        <source>Mud between two cleanings</source>
        <translation>दो सफ़ाइयों के बीच गाद</translation>
    </message>
    <message>
        <source>flow × silt in it × days; the storm counts for one hour</source>
        <translation>बहाव × उसमें गाद × दिन; मूसलाधार बारिश एक घंटे गिनी जाती है</translation>
    </message>
    <message>
        <source>Room for it</source>
        <translation>उसके लिए जगह</translation>
    </message>
    <message>
        <source>mud ÷ (2600 kg/m³ × 0.5)</source>
        <translation>गाद ÷ (2600 kg/m³ × 0.5)</translation>
    </message>
    <message>
        <source>Depth of mud</source>
        <translation>गाद की गहराई</translation>
    </message>
    <message>
        <source>room ÷ area</source>
        <translation>जगह ÷ क्षेत्रफल</translation>
    </message>
    <message>
        <source>Time in the trap</source>
        <translation>कुंडी में समय</translation>
    </message>
    <message>
        <source>area × settling depth ÷ flow</source>
        <translation>क्षेत्रफल × पानी थमने की गहराई ÷ बहाव</translation>
    </message>
    <message>
        <source>Smallest grain that the entered trap keeps</source>
        <translation>भरी गई कुंडी जो सबसे छोटा कण रोकती है</translation>
    </message>
    <message>
        <source>grain that falls at 2 × flow ÷ (length × width)</source>
        <translation>कण जो 2 × बहाव ÷ (लंबाई × चौड़ाई) की गति से बैठता है</translation>
    </message>
    <message>
        <source>Forward speed in it</source>
        <translation>उसमें आगे बहने की गति</translation>
    </message>
    <message>
        <source>flow ÷ (width × depth)</source>
        <translation>बहाव ÷ (चौड़ाई × गहराई)</translation>
    </message>
    <message>
        <source>Greatest forward speed for that grain</source>
        <translation>उस कण के लिए आगे बहने की सबसे ज़्यादा गति</translation>
    </message>
    <message>
        <source>Tank drops</source>
        <translation>टंकी में पानी उतरा</translation>
    </message>
    <message>
        <source>drop ÷ hours × 24</source>
        <translation>उतार ÷ घंटे × 24</translation>
    </message>
    <message>
        <source>Evaporates</source>
        <translation>भाप बना</translation>
    </message>
    <message>
        <source>drop of the bucket ÷ hours × 24</source>
        <translation>बाल्टी का उतार ÷ घंटे × 24</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>लीक</translation>
    </message>
    <message>
        <source>tank − bucket</source>
        <translation>टंकी − बाल्टी</translation>
    </message>
    <message>
        <source>Error of the leak</source>
        <translation>लीक में चूक</translation>
    </message>
    <message>
        <source>√2 × error of a reading ÷ hours × 24</source>
        <translation>√2 × नाप की चूक ÷ घंटे × 24</translation>
    </message>
    <message>
        <source>Leaks, litres</source>
        <translation>लीक, लीटर</translation>
    </message>
    <message>
        <source>leak × water surface at that level: 1 mm on 1 m² is 1 litre</source>
        <translation>लीक × उस स्तर पर पानी की सतह: 1 m² पर 1 mm = 1 लीटर</translation>
    </message>
    <message>
        <source>Leaks, share of what is held</source>
        <translation>लीक, टंकी के पानी का हिस्सा</translation>
    </message>
    <message>
        <source>leak ÷ volume at that level</source>
        <translation>लीक ÷ उस स्तर पर आयतन</translation>
    </message>
    <message>
        <source>Level in the test</source>
        <translation>जाँच में पानी का स्तर</translation>
    </message>
    <message>
        <source>as entered; else overflow − half of the drop</source>
        <translation>जैसा भरा गया; नहीं तो ओवरफ्लो − उतार का आधा</translation>
    </message>
    <message>
        <source>Allowed by drop</source>
        <translation>मान्य, उतार से</translation>
    </message>
    <message>
        <source>10 mm in 7 days</source>
        <translation>7 दिन में 10 mm</translation>
    </message>
    <message>
        <source>Allowed by volume</source>
        <translation>मान्य, आयतन से</translation>
    </message>
    <message>
        <source>0.1 % of the volume a day ÷ water surface</source>
        <translation>दिन में आयतन का 0.1 % ÷ पानी की सतह</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>found so that the head = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>ऐसे खोजा कि हेड = (1 + ΣK + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>flow by Hazen-Williams, to check</source>
        <translation>हेज़न-विलियम्स से बहाव, जाँच के लिए</translation>
    </message>
    <message>
        <source>same heads and fittings, wall by 10.67 L Q^1.852 ÷ (C^1.852 D^4.87), C 140</source>
        <translation>वही हेड और फिटिंग, दीवार की रगड़ 10.67 L Q^1.852 ÷ (C^1.852 D^4.87) से, C 140</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>गति</translation>
    </message>
    <message>
        <source>flow ÷ (π D² ÷ 4)</source>
        <translation>बहाव ÷ (π D² ÷ 4)</translation>
    </message>
    <message>
        <source>Reynolds number</source>
        <translation>रेनॉल्ड्स संख्या</translation>
    </message>
    <message>
        <source>V D ÷ kinematic viscosity of the water</source>
        <translation>V D ÷ पानी की गतिज श्यानता</translation>
    </message>
    <message>
        <source>friction factor</source>
        <translation>रगड़ गुणांक</translation>
    </message>
    <message>
        <source>Re under 2 000: 64 ÷ Re; over 4 000: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; straight between</source>
        <translation>Re 2 000 से नीचे: 64 ÷ Re; 4 000 से ऊपर: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; बीच में सीधी रेखा से</translation>
    </message>
    <message>
        <source>head that drives the flow</source>
        <translation>बहाव चलाने वाला हेड</translation>
    </message>
    <message>
        <source>water over the inlet − end of the line, or the water it dips into − head wanted there</source>
        <translation>पाइप के मुँह से ऊपर का पानी − लाइन का सिरा, या जिस पानी में वह डूबा है − वहाँ चाहिए हेड</translation>
    </message>
    <message>
        <source>length along the pipe</source>
        <translation>पाइप के साथ-साथ लंबाई</translation>
    </message>
    <message>
        <source>sum over the pieces of √(level² + rise²)</source>
        <translation>टुकड़ों का जोड़ Σ√(समतल दूरी² + चढ़ाव²)</translation>
    </message>
    <message>
        <source>head lost to the wall</source>
        <translation>दीवार की रगड़ में हेड का घाटा</translation>
    </message>
    <message>
        <source>f L ÷ D × V² ÷ 2g</source>
        <translation>f L ÷ D × V² ÷ 2g</translation>
    </message>
    <message>
        <source>head lost in fittings</source>
        <translation>फिटिंग में हेड का घाटा</translation>
    </message>
    <message>
        <source>sum of K × V² ÷ 2g</source>
        <translation>ΣK × V² ÷ 2g</translation>
    </message>
    <message>
        <source>velocity head</source>
        <translation>गति का हेड</translation>
    </message>
    <message>
        <source>V² ÷ 2g</source>
        <translation>V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure head at the outlet</source>
        <translation>निकास पर दबाव का हेड</translation>
    </message>
    <message>
        <source>head wanted there, or the depth that it dips in</source>
        <translation>वहाँ चाहिए हेड, या जितना गहरा वह डूबा है</translation>
    </message>
    <message>
        <source>head at the lowest point, outlet shut</source>
        <translation>सबसे नीचे बिंदु पर हेड, निकास बंद</translation>
    </message>
    <message>
        <source>water over the inlet − lowest point of the pipe</source>
        <translation>पाइप के मुँह से ऊपर का पानी − पाइप का सबसे नीचा बिंदु</translation>
    </message>
    <message>
        <source>pressure at the lowest point, outlet shut</source>
        <translation>सबसे नीचे बिंदु पर दबाव, निकास बंद</translation>
    </message>
    <message>
        <source>density × g × head</source>
        <translation>घनत्व × g × हेड</translation>
    </message>
    <message>
        <source>pressure class left</source>
        <translation>प्रेशर क्लास में बाकी</translation>
    </message>
    <message>
        <source>class that holds − pressure with the outlet shut</source>
        <translation>जितना क्लास सहे − निकास बंद पर दबाव</translation>
    </message>
    <message>
        <source>lowest pressure head allowed</source>
        <translation>दबाव का सबसे कम मान्य हेड</translation>
    </message>
    <message>
        <source>vapour pressure + reserve of 2 m − air pressure of the place, as water column</source>
        <translation>वाष्प दबाव + 2 m की गुंजाइश − उस जगह की हवा का दबाव, पानी की ऊँचाई में</translation>
    </message>
    <message>
        <source>head that air can hold back at worst</source>
        <translation>बुरे से बुरे में हवा जितना हेड रोक सके</translation>
    </message>
    <message>
        <source>sum of the falls after all humps</source>
        <translation>सब ऊँची जगहों के बाद के उतारों का जोड़</translation>
    </message>
    <message>
        <source>heads along the line: place</source>
        <translation>लाइन पर हेड: जगह</translation>
    </message>
    <message>
        <source>where the line bends and where fittings sit</source>
        <translation>जहाँ लाइन मुड़ती है और जहाँ फिटिंग लगी हैं</translation>
    </message>
    <message>
        <source>heads along the line: pipe</source>
        <translation>लाइन पर हेड: पाइप</translation>
    </message>
    <message>
        <source>straight between the points of the line</source>
        <translation>लाइन के बिंदुओं के बीच सीधी रेखा से</translation>
    </message>
    <message>
        <source>heads along the line: length so far</source>
        <translation>लाइन पर हेड: अब तक की लंबाई</translation>
    </message>
    <message>
        <source>along the pipe</source>
        <translation>पाइप के साथ-साथ</translation>
    </message>
    <message>
        <source>heads along the line: energy</source>
        <translation>लाइन पर हेड: ऊर्जा</translation>
    </message>
    <message>
        <source>water over the inlet − lost to the wall so far − fittings so far</source>
        <translation>पाइप के मुँह से ऊपर का पानी − अब तक दीवार की रगड़ का घाटा − अब तक फिटिंग का घाटा</translation>
    </message>
    <message>
        <source>heads along the line: head line</source>
        <translation>लाइन पर हेड: हेड की रेखा</translation>
    </message>
    <message>
        <source>energy − velocity head</source>
        <translation>ऊर्जा − गति का हेड</translation>
    </message>
    <message>
        <source>heads along the line: pressure</source>
        <translation>लाइन पर हेड: दबाव</translation>
    </message>
    <message>
        <source>head line − pipe</source>
        <translation>हेड की रेखा − पाइप</translation>
    </message>
    <message>
        <source>heads along the line: pressure with the outlet shut</source>
        <translation>लाइन पर हेड: निकास बंद पर दबाव</translation>
    </message>
    <message>
        <source>water over the inlet − pipe</source>
        <translation>पाइप के मुँह से ऊपर का पानी − पाइप</translation>
    </message>
    <message>
        <source>sucking stretch: from</source>
        <translation>सक्शन वाला हिस्सा: यहाँ से</translation>
    </message>
    <message>
        <source>where the pressure passes 0</source>
        <translation>जहाँ दबाव 0 से गुज़रता है</translation>
    </message>
    <message>
        <source>sucking stretch: to</source>
        <translation>सक्शन वाला हिस्सा: यहाँ तक</translation>
    </message>
    <message>
        <source>sucking stretch: lowest pressure</source>
        <translation>सक्शन वाला हिस्सा: सबसे कम दबाव</translation>
    </message>
    <message>
        <source>lowest of its points</source>
        <translation>उसके बिंदुओं में सबसे कम</translation>
    </message>
    <message>
        <source>sucking stretch: where it is lowest</source>
        <translation>सक्शन वाला हिस्सा: सबसे कम कहाँ</translation>
    </message>
    <message>
        <source>place of that point</source>
        <translation>उस बिंदु की जगह</translation>
    </message>
    <message>
        <source>stretch near boiling: from</source>
        <translation>पानी उबलने के करीब वाला हिस्सा: यहाँ से</translation>
    </message>
    <message>
        <source>where the pressure passes the lowest allowed</source>
        <translation>जहाँ दबाव सबसे कम मान्य से गुज़रता है</translation>
    </message>
    <message>
        <source>stretch near boiling: to</source>
        <translation>पानी उबलने के करीब वाला हिस्सा: यहाँ तक</translation>
    </message>
    <message>
        <source>stretch near boiling: lowest pressure</source>
        <translation>पानी उबलने के करीब वाला हिस्सा: सबसे कम दबाव</translation>
    </message>
    <message>
        <source>stretch near boiling: where it is lowest</source>
        <translation>पानी उबलने के करीब वाला हिस्सा: सबसे कम कहाँ</translation>
    </message>
    <message>
        <source>humps: place</source>
        <translation>ऊँची जगहें: जगह</translation>
    </message>
    <message>
        <source>high points between inlet and outlet</source>
        <translation>पाइप के मुँह और निकास के बीच के ऊँचे बिंदु</translation>
    </message>
    <message>
        <source>humps: over the finished floor</source>
        <translation>ऊँची जगहें: तैयार फ़र्श से ऊपर</translation>
    </message>
    <message>
        <source>level of the pipe there</source>
        <translation>वहाँ पाइप का स्तर</translation>
    </message>
    <message>
        <source>humps: rise</source>
        <translation>ऊँची जगहें: चढ़ाव</translation>
    </message>
    <message>
        <source>over the lowest point since the inlet or the hump before</source>
        <translation>पाइप के मुँह या पिछली ऊँची जगह के बाद के सबसे नीचे बिंदु से</translation>
    </message>
    <message>
        <source>humps: fall</source>
        <translation>ऊँची जगहें: उतार</translation>
    </message>
    <message>
        <source>to the lowest point before the next hump or the outlet</source>
        <translation>अगली ऊँची जगह या निकास से पहले के सबसे नीचे बिंदु तक</translation>
    </message>
    <message>
        <source>humps: over the straight line</source>
        <translation>ऊँची जगहें: सीधी रेखा से ऊपर</translation>
    </message>
    <message>
        <source>over the line from inlet to outlet</source>
        <translation>पाइप के मुँह से निकास तक की रेखा से ऊपर</translation>
    </message>
    <message>
        <source>humps: pressure</source>
        <translation>ऊँची जगहें: दबाव</translation>
    </message>
    <message>
        <source>head line − pipe at the flow found</source>
        <translation>हेड की रेखा − पाइप, निकले बहाव पर</translation>
    </message>
    <message>
        <source>Work, all tasks together</source>
        <translation>मेहनत, सब काम मिलाकर</translation>
    </message>
    <message>
        <source>sum of the person-days</source>
        <translation>दिहाड़ियों का जोड़</translation>
    </message>
    <message>
        <source>Skilled person-days among them</source>
        <translation>उनमें मिस्त्री की दिहाड़ियाँ</translation>
    </message>
    <message>
        <source>sum of the masons&apos; share</source>
        <translation>मिस्त्री के हिस्सों का जोड़</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>हर काम की दिहाड़ियाँ</translation>
    </message>
    <message>
        <source>quantity × rate</source>
        <translation>मात्रा × काम की दर</translation>
    </message>
    <message>
        <source>Person-days at the low rate</source>
        <translation>दिहाड़ियाँ, कम दर से</translation>
    </message>
    <message>
        <source>quantity × low rate of the table, or of the district</source>
        <translation>मात्रा × तालिका की, या ज़िले की, कम दर</translation>
    </message>
    <message>
        <source>Person-days at the high rate</source>
        <translation>दिहाड़ियाँ, ज़्यादा दर से</translation>
    </message>
    <message>
        <source>quantity × high rate of the table, or of the district</source>
        <translation>मात्रा × तालिका की, या ज़िले की, ज़्यादा दर</translation>
    </message>
    <message>
        <source>Skilled share of each task</source>
        <translation>हर काम में मिस्त्री का हिस्सा</translation>
    </message>
    <message>
        <source>person-days × 0.074 ÷ 0.260 for coats, × 1 ÷ 4.5 for stone bed, trap and overflow</source>
        <translation>कोट के लिए दिहाड़ियाँ × 0.074 ÷ 0.260; पत्थर की सोलिंग, कुंडी और ओवरफ्लो के लिए × 1 ÷ 4.5</translation>
    </message>
    <message>
        <source>Person-days for each unit of work</source>
        <translation>काम की हर इकाई पर दिहाड़ियाँ</translation>
    </message>
    <message>
        <source>table of rates, the district&apos;s own rate or the rate entered; below 1.5 m × the factor for deep digging; a coat: spreading + mixing × plaster ÷ face; carrying: less what the digging rate includes; wetting: × rounds a day ÷ 3 × people</source>
        <translation>दरों की तालिका, ज़िले की अपनी दर या भरी गई दर; 1.5 m से नीचे × गहरी खुदाई का गुणक; कोट: फैलाना + मसाला बनाना × प्लास्टर ÷ सतह; ढुलाई: जितनी खुदाई की दर में आ चुकी है वह घटाकर; भिगाई: × दिन में कितनी बार ÷ 3 × लोग</translation>
    </message>
    <message>
        <source>Digging by the district norm</source>
        <translation>खुदाई, ज़िले की दर से</translation>
    </message>
    <message>
        <source>pit × 0.8 person-days for each m³</source>
        <translation>गड्ढा × हर m³ पर 0.8 दिहाड़ी</translation>
    </message>
    <message>
        <source>Digging by what people report</source>
        <translation>खुदाई, काम करने वालों की बताई दर से</translation>
    </message>
    <message>
        <source>pit × 0.62 person-days for each m³</source>
        <translation>गड्ढा × हर m³ पर 0.62 दिहाड़ी</translation>
    </message>
    <message>
        <source>ground to clear</source>
        <translation>साफ़ करने की ज़मीन</translation>
    </message>
    <message>
        <source>outline of the pit at the ground, walkway and 1 m more all round</source>
        <translation>ज़मीन पर गड्ढे की रूपरेखा, चलने की पट्टी और चारों ओर 1 m और</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>पूरा काम</translation>
    </message>
    <message>
        <source>topsoil to strip</source>
        <translation>छीलने की ऊपरी मिट्टी</translation>
    </message>
    <message>
        <source>topsoil stripped first</source>
        <translation>पहले छीली गई ऊपरी मिट्टी</translation>
    </message>
    <message>
        <source>platform to cut</source>
        <translation>काटने की समतल जगह</translation>
    </message>
    <message>
        <source>cut for the platform</source>
        <translation>समतल जगह का कटान</translation>
    </message>
    <message>
        <source>platform to ram</source>
        <translation>कूटने की समतल जगह</translation>
    </message>
    <message>
        <source>fill for the platform</source>
        <translation>समतल जगह का भराव</translation>
    </message>
    <message>
        <source>digging to 1.5 m</source>
        <translation>1.5 m तक खुदाई</translation>
    </message>
    <message>
        <source>pit less what lies deeper than 1.5 m</source>
        <translation>गड्ढा, 1.5 m से गहरा हिस्सा घटाकर</translation>
    </message>
    <message>
        <source>digging below 1.5 m</source>
        <translation>1.5 m से नीचे खुदाई</translation>
    </message>
    <message>
        <source>pit below 1.5 m under the ground, same formula as for the pit</source>
        <translation>ज़मीन से 1.5 m से नीचे का गड्ढा, सूत्र वही जो गड्ढे का</translation>
    </message>
    <message>
        <source>spoil to carry</source>
        <translation>ढोने की निकली मिट्टी</translation>
    </message>
    <message>
        <source>spoil left over, as it lies</source>
        <translation>बची निकली मिट्टी, बिना खुदी के नाप से</translation>
    </message>
    <message>
        <source>pit faces to trim</source>
        <translation>छीलने की गड्ढे की सतहें</translation>
    </message>
    <message>
        <source>pit floor + edge half way down × pit depth × √(1 + batter²)</source>
        <translation>गड्ढे का तला + आधी गहराई पर किनारे की लंबाई × गड्ढे की गहराई × √(1 + सलामी²)</translation>
    </message>
    <message>
        <source>pipes to lay</source>
        <translation>बिछाने के पाइप</translation>
    </message>
    <message>
        <source>level length of both ways</source>
        <translation>दोनों रास्तों की समतल लंबाई</translation>
    </message>
    <message>
        <source>volume of the bed, net</source>
        <translation>सोलिंग का आयतन, असल</translation>
    </message>
    <message>
        <source>wetting, days</source>
        <translation>भिगाई, दिन</translation>
    </message>
    <message>
        <source>days under wet sacks of all coats, and days that sacks stay wet outside of them</source>
        <translation>सब कोट के गीली बोरियों के नीचे के दिन, और उनके अलावा जितने दिन बोरियाँ गीली रहती हैं</translation>
    </message>
    <message>
        <source>silt trap</source>
        <translation>गाद कुंडी</translation>
    </message>
    <message>
        <source>overflow</source>
        <translation>ओवरफ्लो</translation>
    </message>
    <message>
        <source>fence</source>
        <translation>बाड़</translation>
    </message>
    <message>
        <source>all round, 1 m outside the clear opening</source>
        <translation>चारों ओर, भीतरी मुँह से 1 m बाहर</translation>
    </message>
    <message>
        <source>filling, days</source>
        <translation>भराई, दिन</translation>
    </message>
    <message>
        <source>days of the first filling</source>
        <translation>पहली भराई के दिन</translation>
    </message>
    <message>
        <source>leak test</source>
        <translation>लीक जाँच</translation>
    </message>
    <message>
        <source>beds to plant</source>
        <translation>बुआई की क्यारियाँ</translation>
    </message>
    <message>
        <source>sum of the beds</source>
        <translation>क्यारियों का जोड़</translation>
    </message>
    <message>
        <source>faces of the coats</source>
        <translation>कोट की सतहें</translation>
    </message>
    <message>
        <source>face of the coat</source>
        <translation>कोट की सतह</translation>
    </message>
    <message>
        <source>Quantity of work</source>
        <translation>काम की मात्रा</translation>
    </message>
    <message>
        <source>Thickness of each layer</source>
        <translation>हर परत की मोटाई</translation>
    </message>
    <message>
        <source>square to the face, as entered; of the cove its radius</source>
        <translation>सतह से गुनिया में, जैसी भरी गई; गोले की उसकी त्रिज्या</translation>
    </message>
    <message>
        <source>Volume of each layer, finished</source>
        <translation>हर परत का आयतन, तैयार</translation>
    </message>
    <message>
        <source>exact shell between its two faces, floor and wall together</source>
        <translation>उसकी दो सतहों के बीच का सटीक खोल, फ़र्श और दीवार मिलाकर</translation>
    </message>
    <message>
        <source>Face of each layer that is worked</source>
        <translation>हर परत की सतह जिस पर काम होता है</translation>
    </message>
    <message>
        <source>for a coat its inner face: floor + √(1 + batter²) × height × mean edge; for bed and rim the top</source>
        <translation>कोट की भीतरी सतह: फ़र्श + √(1 + सलामी²) × ऊँचाई × किनारे की औसत लंबाई; सोलिंग और मुंडेर की ऊपरी सतह</translation>
    </message>
    <message>
        <source>Thickness of each coat</source>
        <translation>हर कोट की मोटाई</translation>
    </message>
    <message>
        <source>square to the face, as entered</source>
        <translation>सतह से गुनिया में, जैसी भरी गई</translation>
    </message>
    <message>
        <source>Face of each coat</source>
        <translation>हर कोट की सतह</translation>
    </message>
    <message>
        <source>finished inner face, floor and wall</source>
        <translation>तैयार भीतरी सतह, फ़र्श और दीवार</translation>
    </message>
    <message>
        <source>Plaster of each coat, exact shell</source>
        <translation>हर कोट का प्लास्टर, सटीक खोल</translation>
    </message>
    <message>
        <source>volume of the layer; the last coat also holds cove and rim</source>
        <translation>परत का आयतन; आखिरी कोट में गोला और मुंडेर भी</translation>
    </message>
    <message>
        <source>Plaster by area × thickness</source>
        <translation>प्लास्टर, क्षेत्रफल × मोटाई से</translation>
    </message>
    <message>
        <source>(clear floor + clear wall) × thickness: the rule on paper, to stand beside the exact shell</source>
        <translation>(भीतरी फ़र्श + भीतरी दीवार) × मोटाई: कागज वाला नियम, सटीक खोल के साथ रखने के लिए</translation>
    </message>
    <message>
        <source>Plaster to mix for each coat</source>
        <translation>हर कोट के लिए मिलाने का प्लास्टर</translation>
    </message>
    <message>
        <source>shell × (1 + waste); coat 1 also × (1 + unevenness)</source>
        <translation>खोल × (1 + छीजन); कोट 1 में × (1 + ऊबड़-खाबड़पन) भी</translation>
    </message>
    <message>
        <source>Clay in soil and sand together</source>
        <translation>मिट्टी और रेत मिलाकर उनमें चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>clay of the soil × soil parts ÷ (soil + sand parts)</source>
        <translation>मिट्टी में चिकनी मिट्टी × मिट्टी के भाग ÷ (मिट्टी + रेत के भाग)</translation>
    </message>
    <message>
        <source>Cement: net weight</source>
        <translation>सीमेंट: असल वज़न</translation>
    </message>
    <message>
        <source>sum over all coats of the net mix</source>
        <translation>असल मिश्रण का सब कोट पर जोड़</translation>
    </message>
    <message>
        <source>Cement: to order</source>
        <translation>सीमेंट: मँगाएँ</translation>
    </message>
    <message>
        <source>whole bags × weight of a bag</source>
        <translation>पूरे कट्टे × एक कट्टे का वज़न</translation>
    </message>
    <message>
        <source>Cement bags, net</source>
        <translation>सीमेंट के कट्टे, असल</translation>
    </message>
    <message>
        <source>net cement ÷ weight of a bag</source>
        <translation>असल सीमेंट ÷ एक कट्टे का वज़न</translation>
    </message>
    <message>
        <source>Cement bags to order</source>
        <translation>सीमेंट के कट्टे, मँगाएँ</translation>
    </message>
    <message>
        <source>cement of the plaster to mix ÷ weight of a bag, rounded up to whole bags</source>
        <translation>मिलाने के प्लास्टर का सीमेंट ÷ एक कट्टे का वज़न, ऊपर पूरे कट्टों तक</translation>
    </message>
    <message>
        <source>Soil, net</source>
        <translation>मिट्टी, असल</translation>
    </message>
    <message>
        <source>Soil to dig and sieve</source>
        <translation>खोदने और छानने की मिट्टी</translation>
    </message>
    <message>
        <source>soil of the plaster to mix ÷ (1 − lost in sieving), rounded up to 0.1 m³</source>
        <translation>मिलाने के प्लास्टर की मिट्टी ÷ (1 − छनाई का घाटा), ऊपर 0.1 m³ तक पूरा करके</translation>
    </message>
    <message>
        <source>Sand, net</source>
        <translation>रेत, असल</translation>
    </message>
    <message>
        <source>Sand to order, damp</source>
        <translation>रेत मँगाएँ, नम</translation>
    </message>
    <message>
        <source>sand of the plaster to mix ÷ (1 − lost in sieving) × (1 + bulking), rounded up to 0.1 m³</source>
        <translation>मिलाने के प्लास्टर की रेत ÷ (1 − छनाई का घाटा) × (1 + नम रेत का फूलना), ऊपर 0.1 m³ तक पूरा करके</translation>
    </message>
    <message>
        <source>Stone of the bed, net</source>
        <translation>सोलिंग का पत्थर, असल</translation>
    </message>
    <message>
        <source>volume of the stone bed</source>
        <translation>पत्थर की सोलिंग का आयतन</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>लाने का पत्थर, ढीला</translation>
    </message>
    <message>
        <source>bed × (1 + unevenness) × (1 + waste) × loose stone for each m³ of bed, rounded up to 0.1 m³</source>
        <translation>सोलिंग × (1 + ऊबड़-खाबड़पन) × (1 + छीजन) × सोलिंग के हर m³ में ढीला पत्थर, ऊपर 0.1 m³ तक पूरा करके</translation>
    </message>
    <message>
        <source>Water, net</source>
        <translation>पानी, असल</translation>
    </message>
    <message>
        <source>mixing water + curing water</source>
        <translation>मसाले का पानी + तराई का पानी</translation>
    </message>
    <message>
        <source>Water to bring</source>
        <translation>लाने का पानी</translation>
    </message>
    <message>
        <source>mixing water + curing water, rounded up</source>
        <translation>मसाले का पानी + तराई का पानी, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Mixing water, net</source>
        <translation>मसाले का पानी, असल</translation>
    </message>
    <message>
        <source>plaster, exact shells × litres for each m³</source>
        <translation>प्लास्टर, सटीक खोल × हर m³ पर लीटर</translation>
    </message>
    <message>
        <source>Mixing water to bring</source>
        <translation>मसाले का पानी, लाने का</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³, rounded up</source>
        <translation>मिलाने का प्लास्टर × हर m³ पर लीटर, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Curing water, net</source>
        <translation>तराई का पानी, असल</translation>
    </message>
    <message>
        <source>face of each coat × litres a day for each m² × its days under wet sacks</source>
        <translation>हर कोट की सतह × हर m² पर दिन में लीटर × उसके गीली बोरियों के नीचे के दिन</translation>
    </message>
    <message>
        <source>Curing water to bring</source>
        <translation>तराई का पानी, लाने का</translation>
    </message>
    <message>
        <source>as net, rounded up</source>
        <translation>असल जैसा, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>Wet sacks, net</source>
        <translation>गीली बोरियाँ, असल</translation>
    </message>
    <message>
        <source>largest face of a coat ÷ what a sack covers; one set is used again for each coat</source>
        <translation>सबसे बड़े कोट की सतह ÷ एक बोरी से ढकी सतह; वही बोरियाँ हर कोट पर फिर काम आती हैं</translation>
    </message>
    <message>
        <source>Wet sacks to bring</source>
        <translation>गीली बोरियाँ, लाने की</translation>
    </message>
    <message>
        <source>net × (1 + spare), rounded up</source>
        <translation>असल × (1 + फालतू), ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>soil for each coat</source>
        <translation>हर कोट की मिट्टी</translation>
    </message>
    <message>
        <source>plaster × dry to wet × soil parts ÷ all parts</source>
        <translation>प्लास्टर × सूखे से गीला × मिट्टी के भाग ÷ सब भाग</translation>
    </message>
    <message>
        <source>sand for each coat</source>
        <translation>हर कोट की रेत</translation>
    </message>
    <message>
        <source>plaster × dry to wet × sand parts ÷ all parts</source>
        <translation>प्लास्टर × सूखे से गीला × रेत के भाग ÷ सब भाग</translation>
    </message>
    <message>
        <source>cement for each coat, loose</source>
        <translation>हर कोट का सीमेंट, ढीला</translation>
    </message>
    <message>
        <source>plaster × dry to wet × cement parts ÷ all parts</source>
        <translation>प्लास्टर × सूखे से गीला × सीमेंट के भाग ÷ सब भाग</translation>
    </message>
    <message>
        <source>cement for each coat</source>
        <translation>हर कोट का सीमेंट</translation>
    </message>
    <message>
        <source>loose cement × its loose weight</source>
        <translation>ढीला सीमेंट × उसका ढीला वज़न</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>सटीक खोल</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>क्षेत्रफल × मोटाई</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>मिलाने का</translation>
    </message>
    <message>
        <source>for coat number</source>
        <translation>कोट नंबर</translation>
    </message>
    <message>
        <source>the coats in order, from the earth</source>
        <translation>कोट क्रम से, मिट्टी की ओर से</translation>
    </message>
    <message>
        <source>bags of cement</source>
        <translation>सीमेंट के कट्टे</translation>
    </message>
    <message>
        <source>one bag, or half of one</source>
        <translation>एक कट्टा, या आधा</translation>
    </message>
    <message>
        <source>soil parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>मिट्टी के भाग × सीमेंट ÷ उसका ढीला वज़न ÷ सीमेंट के भाग</translation>
    </message>
    <message>
        <source>sand parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>रेत के भाग × सीमेंट ÷ उसका ढीला वज़न ÷ सीमेंट के भाग</translation>
    </message>
    <message>
        <source>bags × weight of a bag</source>
        <translation>कट्टे × एक कट्टे का वज़न</translation>
    </message>
    <message>
        <source>plaster that it yields</source>
        <translation>इससे निकला प्लास्टर</translation>
    </message>
    <message>
        <source>soil, sand and cement, loose ÷ dry to wet</source>
        <translation>मिट्टी, रेत और सीमेंट, ढीले ÷ सूखे से गीला</translation>
    </message>
    <message>
        <source>face that it covers</source>
        <translation>इससे ढकी सतह</translation>
    </message>
    <message>
        <source>yield ÷ thickness of the coat</source>
        <translation>निकला प्लास्टर ÷ कोट की मोटाई</translation>
    </message>
    <message>
        <source>batches for the coat</source>
        <translation>कोट के घान</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield, rounded up</source>
        <translation>मिलाने का प्लास्टर ÷ एक घान से निकला, ऊपर पूरा करके</translation>
    </message>
    <message>
        <source>gauge boxes of soil</source>
        <translation>मिट्टी की नाप की पेटियाँ</translation>
    </message>
    <message>
        <source>soil ÷ what the box holds</source>
        <translation>मिट्टी ÷ पेटी में जितना आता है</translation>
    </message>
    <message>
        <source>gauge boxes of sand</source>
        <translation>रेत की नाप की पेटियाँ</translation>
    </message>
    <message>
        <source>sand ÷ what the box holds</source>
        <translation>रेत ÷ पेटी में जितना आता है</translation>
    </message>
    <message>
        <source>pans of soil</source>
        <translation>मिट्टी के तसले</translation>
    </message>
    <message>
        <source>soil ÷ what the pan holds</source>
        <translation>मिट्टी ÷ तसले में जितना आता है</translation>
    </message>
    <message>
        <source>pans of sand</source>
        <translation>रेत के तसले</translation>
    </message>
    <message>
        <source>sand ÷ what the pan holds</source>
        <translation>रेत ÷ तसले में जितना आता है</translation>
    </message>
    <message>
        <source>buckets of soil</source>
        <translation>मिट्टी की बाल्टियाँ</translation>
    </message>
    <message>
        <source>soil ÷ what the bucket holds</source>
        <translation>मिट्टी ÷ बाल्टी में जितना आता है</translation>
    </message>
    <message>
        <source>buckets of sand</source>
        <translation>रेत की बाल्टियाँ</translation>
    </message>
    <message>
        <source>sand ÷ what the bucket holds</source>
        <translation>रेत ÷ बाल्टी में जितना आता है</translation>
    </message>
    <message>
        <source>Batch with a whole bag</source>
        <translation>पूरे कट्टे का घान</translation>
    </message>
    <message>
        <source>Batch with half a bag</source>
        <translation>आधे कट्टे का घान</translation>
    </message>
    <message>
        <source>Numbers of the coats</source>
        <translation>कोट के नंबर</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>खर्च, कुल</translation>
    </message>
    <message>
        <source>materials + labour + other + carriage + contingency</source>
        <translation>सामान + मज़दूरी + दूसरा खर्च + ढुलाई + अनदेखे खर्च</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>sum of their amounts</source>
        <translation>उनकी रकमों का जोड़</translation>
    </message>
    <message>
        <source>sum of the amounts of labourers and masons</source>
        <translation>मज़दूरों और मिस्त्रियों की रकमों का जोड़</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>दूसरा खर्च</translation>
    </message>
    <message>
        <source>sum of the amounts of own items</source>
        <translation>अपनी मदों की रकमों का जोड़</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>ढुलाई</translation>
    </message>
    <message>
        <source>sum of all trips</source>
        <translation>सब फेरों का जोड़</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>अनदेखे खर्च</translation>
    </message>
    <message>
        <source>share of all before it</source>
        <translation>इससे पहले के सबका हिस्सा</translation>
    </message>
    <message>
        <source>Given by the household or group</source>
        <translation>परिवार या समूह ने बिना पैसे दिया</translation>
    </message>
    <message>
        <source>sum of the shares given</source>
        <translation>बिना पैसे दिए हिस्सों का जोड़</translation>
    </message>
    <message>
        <source>Paid in money</source>
        <translation>पैसे में दिया</translation>
    </message>
    <message>
        <source>total − given</source>
        <translation>कुल − बिना पैसे दिया</translation>
    </message>
    <message>
        <source>Cost for each m³ held</source>
        <translation>टंकी के हर m³ पानी का खर्च</translation>
    </message>
    <message>
        <source>total ÷ held up to the overflow</source>
        <translation>कुल ÷ ओवरफ्लो तक टंकी का पानी</translation>
    </message>
    <message>
        <source>sum of what is drawn in those months</source>
        <translation>उन महीनों में निकाले गए पानी का जोड़</translation>
    </message>
    <message>
        <source>Dry months</source>
        <translation>सूखे महीने</translation>
    </message>
    <message>
        <source>mean rain below half of ET0</source>
        <translation>औसत बारिश ET0 के आधे से कम</translation>
    </message>
    <message>
        <source>Cost a year of the whole tank</source>
        <translation>पूरी टंकी का सालाना खर्च</translation>
    </message>
    <message>
        <source>total × capital recovery factor + upkeep of soil-cement</source>
        <translation>कुल × पूँजी वसूली गुणक + मिट्टी-सीमेंट का रखरखाव</translation>
    </message>
    <message>
        <source>Cost a year for each m³ drawn in dry months</source>
        <translation>सूखे महीनों में निकाले हर m³ पर सालाना खर्च</translation>
    </message>
    <message>
        <source>cost a year ÷ drawn in dry months</source>
        <translation>सालाना खर्च ÷ सूखे महीनों में निकाला</translation>
    </message>
    <message>
        <source>Quantity of each line</source>
        <translation>हर मद की मात्रा</translation>
    </message>
    <message>
        <source>as entered; else: what is to be ordered, person-days of labourers and masons, lengths of pipe and fence</source>
        <translation>जैसा भरा गया; नहीं तो: जितना मँगाना है, मज़दूरों और मिस्त्रियों की दिहाड़ियाँ, पाइप और बाड़ की लंबाई</translation>
    </message>
    <message>
        <source>Price of each line</source>
        <translation>हर मद का दाम</translation>
    </message>
    <message>
        <source>Amount of each line</source>
        <translation>हर मद की रकम</translation>
    </message>
    <message>
        <source>quantity × price</source>
        <translation>मात्रा × दाम</translation>
    </message>
    <message>
        <source>Given, of each line</source>
        <translation>हर मद में बिना पैसे दिया</translation>
    </message>
    <message>
        <source>amount × share given</source>
        <translation>रकम × बिना पैसे दिया हिस्सा</translation>
    </message>
    <message>
        <source>Paid, of each line</source>
        <translation>हर मद में पैसे से दिया</translation>
    </message>
    <message>
        <source>amount − given</source>
        <translation>रकम − बिना पैसे दिया</translation>
    </message>
    <message>
        <source>Weight to carry</source>
        <translation>ढोने का वज़न</translation>
    </message>
    <message>
        <source>quantity × weight of one, as entered or usual</source>
        <translation>मात्रा × एक का वज़न, जैसा भरा गया या आम</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>बोझ</translation>
    </message>
    <message>
        <source>weight ÷ load, rounded up; bags and sacks carried whole</source>
        <translation>वज़न ÷ एक बोझ, ऊपर पूरा करके; कट्टे और बोरियाँ पूरी-पूरी ढोई जाती हैं</translation>
    </message>
    <message>
        <source>Loads for one piece</source>
        <translation>एक नग के बोझ</translation>
    </message>
    <message>
        <source>weight of one ÷ load, rounded up: heavier pieces are split</source>
        <translation>एक का वज़न ÷ एक बोझ, ऊपर पूरा करके: भारी नग बाँट दिए जाते हैं</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>एक ढोने वाले के दिन</translation>
    </message>
    <message>
        <source>loads ÷ trips a day</source>
        <translation>बोझ ÷ दिन में फेरे</translation>
    </message>
    <message>
        <source>Cost of the trips</source>
        <translation>फेरों का खर्च</translation>
    </message>
    <message>
        <source>loads × price of a trip</source>
        <translation>बोझ × एक फेरे का दाम</translation>
    </message>
    <message>
        <source>Days on which money is needed</source>
        <translation>दिन जब पैसा चाहिए</translation>
    </message>
    <message>
        <source>goods: start of the first task that uses them; wages: days of each task</source>
        <translation>सामान: जिस काम में पहले लगे उसकी शुरुआत; मज़दूरी: हर काम के दिन</translation>
    </message>
    <message>
        <source>Money for goods by day</source>
        <translation>सामान का पैसा, दिन-दिन</translation>
    </message>
    <message>
        <source>cash of goods and their carriage; own items on the first day</source>
        <translation>सामान और उसकी ढुलाई का नकद; अपनी मदें पहले दिन</translation>
    </message>
    <message>
        <source>Money for wages by day</source>
        <translation>मज़दूरी का पैसा, दिन-दिन</translation>
    </message>
    <message>
        <source>cash of each task&apos;s person-days, spread evenly over its days</source>
        <translation>हर काम की दिहाड़ियों का नकद, उसके दिनों में बराबर बाँटकर</translation>
    </message>
    <message>
        <source>Money so far</source>
        <translation>अब तक का पैसा</translation>
    </message>
    <message>
        <source>sum up to and with the day, without contingency</source>
        <translation>उस दिन समेत अब तक का जोड़, अनदेखे खर्च के बिना</translation>
    </message>
    <message>
        <source>Price of each lining alone</source>
        <translation>हर लाइनिंग का दाम, अकेली</translation>
    </message>
    <message>
        <source>offer × 1, face or volume held; soil-cement without an offer: its materials, carriage and person-days × (1 + contingency)</source>
        <translation>बताया गया दाम × 1, सतह या टंकी का पानी; मिट्टी-सीमेंट का दाम न बताया हो तो: उसका सामान, ढुलाई और दिहाड़ियाँ × (1 + अनदेखे खर्च)</translation>
    </message>
    <message>
        <source>Digging and platform for it</source>
        <translation>उसकी खुदाई और समतल जगह</translation>
    </message>
    <message>
        <source>person-days of topsoil, platform, pit, spoil and trimming × price of a labourer × (1 + contingency); none for a moulded tank</source>
        <translation>ऊपरी मिट्टी, समतल जगह, गड्ढे, निकली मिट्टी और छीलने की दिहाड़ियाँ × मज़दूर का दाम × (1 + अनदेखे खर्च); बनी-बनाई टंकी में कुछ नहीं</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>पूँजी</translation>
    </message>
    <message>
        <source>price + digging and platform</source>
        <translation>दाम + खुदाई और समतल जगह</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>उम्र</translation>
    </message>
    <message>
        <source>Capital recovery factor</source>
        <translation>पूँजी वसूली गुणक</translation>
    </message>
    <message>
        <source>i (1 + i)^n ÷ ((1 + i)^n − 1); 1 ÷ n without interest</source>
        <translation>i (1 + i)^n ÷ ((1 + i)^n − 1); ब्याज न हो तो 1 ÷ n</translation>
    </message>
    <message>
        <source>share of the price</source>
        <translation>दाम का हिस्सा</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>सालाना खर्च</translation>
    </message>
    <message>
        <source>capital × factor + upkeep</source>
        <translation>पूँजी × गुणक + रखरखाव</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>हर m³ पर सालाना खर्च</translation>
    </message>
    <message>
        <source>cost a year ÷ held up to the overflow</source>
        <translation>सालाना खर्च ÷ ओवरफ्लो तक टंकी का पानी</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>ड्रॉ</translation>
    </message>
    <message>
        <source>With every input as it stands</source>
        <translation>हर आँकड़ा जैसा है वैसा</translation>
    </message>
    <message>
        <source>as in the plan</source>
        <translation>जैसा योजना में</translation>
    </message>
    <message>
        <source>One draw in ten below (P10)</source>
        <translation>दस में से एक ड्रॉ इससे नीचे (P10)</translation>
    </message>
    <message>
        <source>each input triangular between low, 0 and high about its value; draws sorted, least that a tenth does not exceed</source>
        <translation>हर आँकड़ा अपने मान के आसपास कम, 0 और ज़्यादा के बीच तिकोने वितरण में; ड्रॉ क्रम में, सबसे छोटा जिससे दसवाँ हिस्सा ऊपर न जाए</translation>
    </message>
    <message>
        <source>Middle of the draws (P50)</source>
        <translation>ड्रॉ का बीच (P50)</translation>
    </message>
    <message>
        <source>draws sorted, least that half does not exceed</source>
        <translation>ड्रॉ क्रम में, सबसे छोटा जिससे आधे ऊपर न जाएँ</translation>
    </message>
    <message>
        <source>Nine draws in ten below (P90)</source>
        <translation>दस में से नौ ड्रॉ इससे नीचे (P90)</translation>
    </message>
    <message>
        <source>draws sorted, least that nine tenths do not exceed</source>
        <translation>ड्रॉ क्रम में, सबसे छोटा जिससे दस में से नौ हिस्से ऊपर न जाएँ</translation>
    </message>
    <message>
        <source>Mean of the draws</source>
        <translation>ड्रॉ का औसत</translation>
    </message>
    <message>
        <source>sum ÷ draws</source>
        <translation>जोड़ ÷ ड्रॉ</translation>
    </message>
    <message>
        <source>Least of the draws</source>
        <translation>सबसे कम ड्रॉ</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>सबसे छोटा</translation>
    </message>
    <message>
        <source>Most of the draws</source>
        <translation>सबसे ज़्यादा ड्रॉ</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>सबसे बड़ा</translation>
    </message>
    <message>
        <source>Share of the spread that each input drives</source>
        <translation>फैलाव का हिस्सा, हर आँकड़े के कारण</translation>
    </message>
    <message>
        <source>squared correlation ÷ sum of the squares</source>
        <translation>सहसंबंध का वर्ग ÷ वर्गों का जोड़</translation>
    </message>
    <message>
        <source>Correlation with each input</source>
        <translation>हर आँकड़े से सहसंबंध</translation>
    </message>
    <message>
        <source>Pearson&apos;s, over all draws</source>
        <translation>पियर्सन का, सब ड्रॉ पर</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>ओवरफ्लो तक भरने पर पानी</translation>
    </message>
    <message>
        <source>planned like this tank</source>
        <translation>इसी टंकी की तरह योजना बनाकर</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>काम आने वाला पानी</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>खोदने का गड्ढा</translation>
    </message>
    <message>
        <source>Clear length at the floor</source>
        <translation>फ़र्श पर भीतरी लंबाई</translation>
    </message>
    <message>
        <source>as the option has it</source>
        <translation>जैसा विकल्प में है</translation>
    </message>
    <message>
        <source>Clear width at the floor</source>
        <translation>फ़र्श पर भीतरी चौड़ाई</translation>
    </message>
    <message>
        <source>Clear depth</source>
        <translation>भीतरी गहराई</translation>
    </message>
    <message>
        <source>Sand to order</source>
        <translation>रेत मँगाएँ</translation>
    </message>
    <message>
        <source>Stone to bring</source>
        <translation>लाने का पत्थर</translation>
    </message>
    <message>
        <source>largest need of the coats</source>
        <translation>कोट में सबसे बड़ी ज़रूरत</translation>
    </message>
    <message>
        <source>earliest start of a task</source>
        <translation>सबसे पहले काम की शुरुआत</translation>
    </message>
    <message>
        <source>latest end of a task, planting left out</source>
        <translation>सबसे बाद के काम का अंत, बुआई छोड़कर</translation>
    </message>
    <message>
        <source>planned like this tank; none while prices are missing</source>
        <translation>इसी टंकी की तरह योजना बनाकर; दाम न हों तो कुछ नहीं</translation>
    </message>
    <message>
        <source>cost ÷ held up to the overflow</source>
        <translation>खर्च ÷ ओवरफ्लो तक टंकी का पानी</translation>
    </message>
    <message>
        <source>same weather years</source>
        <translation>मौसम के वही साल</translation>
    </message>
    <message>
        <source>Days short of water in a mean year</source>
        <translation>औसत साल में कमी के दिन</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>गिने हुए</translation>
    </message>
    <message>
        <source>points of the line, level distance</source>
        <translation>लाइन के बिंदु, समतल दूरी</translation>
    </message>
    <message>
        <source>distances of the way from its first point; field line over the rim: inlet, crest, then the way</source>
        <translation>रास्ते के पहले बिंदु से दूरियाँ; मुंडेर के ऊपर से खेत की लाइन: पाइप का मुँह, चोटी, फिर रास्ता</translation>
    </message>
    <message>
        <source>points of the line, over the finished floor</source>
        <translation>लाइन के बिंदु, तैयार फ़र्श से ऊपर</translation>
    </message>
    <message>
        <source>rim + height over the rim; inlet 2 cm under the dead level, crest over the rim</source>
        <translation>मुंडेर + मुंडेर से ऊँचाई; पाइप का मुँह डेड स्तर से 2 cm नीचे, चोटी मुंडेर से ऊपर</translation>
    </message>
    <message>
        <source>losses of the fittings, K</source>
        <translation>फिटिंग का घाटा, K</translation>
    </message>
    <message>
        <source>number × K of one: screen 1 (own figure), sharp entrance 0.5, elbow 0.9, gate valve 0.15</source>
        <translation>संख्या × एक का K: जाली 1 (अपना आँकड़ा), तीखे किनारे का मुँह 0.5, एल्बो 0.9, गेट वाल्व 0.15</translation>
    </message>
    <message>
        <source>where the fittings sit</source>
        <translation>फिटिंग कहाँ लगी हैं</translation>
    </message>
    <message>
        <source>at the inlet; elbows of the field line half at the crest, half at the end</source>
        <translation>पाइप के मुँह पर; खेत की लाइन के आधे एल्बो चोटी पर, आधे सिरे पर</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>भीतरी व्यास</translation>
    </message>
    <message>
        <source>measured, else outside diameter − 2 × wall</source>
        <translation>नापा हुआ, नहीं तो बाहरी व्यास − 2 × दीवार</translation>
    </message>
    <message>
        <source>pressure class that holds</source>
        <translation>जितना प्रेशर क्लास सहे</translation>
    </message>
    <message>
        <source>class × share for warm water</source>
        <translation>क्लास × गरम पानी के लिए हिस्सा</translation>
    </message>
    <message>
        <source>share of the class that holds in warm water</source>
        <translation>गरम पानी में क्लास का जितना हिस्सा सहे</translation>
    </message>
    <message>
        <source>1 up to 20 °C, 0.87 at 30 °C, 0.74 at 40 °C, straight between</source>
        <translation>20 °C तक 1, 30 °C पर 0.87, 40 °C पर 0.74, बीच में सीधी रेखा से</translation>
    </message>
    <message>
        <source>flow wanted</source>
        <translation>चाहा गया बहाव</translation>
    </message>
    <message>
        <source>as entered; field line: outlets × usual flow of one</source>
        <translation>जैसा भरा गया; खेत की लाइन: निकास × एक का आम बहाव</translation>
    </message>
    <message>
        <source>water over the inlet, tank full</source>
        <translation>पाइप के मुँह से ऊपर का पानी, टंकी भरी</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: overflow level</source>
        <translation>स्रोत की लाइन: पाइप का मुँह + उससे ऊपर का पानी; खेत की लाइन: ओवरफ्लो का स्तर</translation>
    </message>
    <message>
        <source>water over the inlet, tank nearly empty</source>
        <translation>पाइप के मुँह से ऊपर का पानी, टंकी लगभग खाली</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: dead level</source>
        <translation>स्रोत की लाइन: पाइप का मुँह + उससे ऊपर का पानी; खेत की लाइन: डेड स्तर</translation>
    </message>
    <message>
        <source>Field line</source>
        <translation>खेत की लाइन</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>बाहरी व्यास</translation>
    </message>
    <message>
        <source>size of the table</source>
        <translation>तालिका का नाप</translation>
    </message>
    <message>
        <source>least wall</source>
        <translation>सबसे पतली दीवार</translation>
    </message>
    <message>
        <source>bore with the least wall</source>
        <translation>सबसे पतली दीवार पर भीतरी व्यास</translation>
    </message>
    <message>
        <source>outside diameter − 2 × wall</source>
        <translation>बाहरी व्यास − 2 × दीवार</translation>
    </message>
    <message>
        <source>outside diameter over wall</source>
        <translation>बाहरी व्यास ÷ दीवार</translation>
    </message>
    <message>
        <source>pressure class</source>
        <translation>प्रेशर क्लास</translation>
    </message>
    <message>
        <source>size of the table: 20 × strength ÷ (1.25 × (SDR − 1)), rounded to a class</source>
        <translation>तालिका का नाप: 20 × मज़बूती ÷ (1.25 × (SDR − 1)), किसी क्लास तक पूरा करके</translation>
    </message>
    <message>
        <source>Field line, pipe</source>
        <translation>खेत की लाइन, पाइप</translation>
    </message>
    <message>
        <source>Field line, smallest pipe that would do</source>
        <translation>खेत की लाइन, सबसे छोटा पाइप जो चल जाए</translation>
    </message>
    <message>
        <source>its flow</source>
        <translation>उसका बहाव</translation>
    </message>
    <message>
        <source>like the flow of the line, where that is less</source>
        <translation>लाइन के बहाव की तरह, जहाँ वह कम हो</translation>
    </message>
    <message>
        <source>Field line, tank full</source>
        <translation>खेत की लाइन, टंकी भरी</translation>
    </message>
    <message>
        <source>Field line, tank nearly empty</source>
        <translation>खेत की लाइन, टंकी लगभग खाली</translation>
    </message>
    <message>
        <source>air pressure less vapour</source>
        <translation>हवा का दबाव, वाष्प घटाकर</translation>
    </message>
    <message>
        <source>air pressure at that height − vapour pressure, as water column</source>
        <translation>उस ऊँचाई पर हवा का दबाव − वाष्प दबाव, पानी की ऊँचाई में</translation>
    </message>
    <message>
        <source>most lift</source>
        <translation>ज़्यादा से ज़्यादा चढ़ाव</translation>
    </message>
    <message>
        <source>air pressure less vapour − reserve of 2 m</source>
        <translation>हवा का दबाव, वाष्प घटाकर − 2 m की गुंजाइश</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>चढ़ाव</translation>
    </message>
    <message>
        <source>crest − water</source>
        <translation>चोटी − पानी</translation>
    </message>
    <message>
        <source>lift left</source>
        <translation>बचा चढ़ाव</translation>
    </message>
    <message>
        <source>most lift − lift − loss up to the crest</source>
        <translation>ज़्यादा से ज़्यादा चढ़ाव − चढ़ाव − चोटी तक हेड का घाटा</translation>
    </message>
    <message>
        <source>draws down to, at a trickle</source>
        <translation>यहाँ तक खाली करता है, पतली धार में</translation>
    </message>
    <message>
        <source>highest of inlet, outlet and crest − most lift</source>
        <translation>पाइप के मुँह, निकास और चोटी में सबसे ऊँचा − ज़्यादा से ज़्यादा चढ़ाव</translation>
    </message>
    <message>
        <source>water that fills the pipe</source>
        <translation>पाइप भरने का पानी</translation>
    </message>
    <message>
        <source>π D² ÷ 4 × length</source>
        <translation>π D² ÷ 4 × लंबाई</translation>
    </message>
    <message>
        <source>flow, valve open</source>
        <translation>बहाव, वाल्व खुला</translation>
    </message>
    <message>
        <source>found so that water − outlet = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>ऐसे खोजा कि पानी − निकास = (1 + ΣK + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>loss up to the crest</source>
        <translation>चोटी तक हेड का घाटा</translation>
    </message>
    <message>
        <source>(1 + K up to the crest + f L ÷ D) V² ÷ 2g</source>
        <translation>(1 + चोटी तक K + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure at the crest</source>
        <translation>चोटी पर दबाव</translation>
    </message>
    <message>
        <source>− lift − loss up to the crest</source>
        <translation>− चढ़ाव − चोटी तक हेड का घाटा</translation>
    </message>
    <message>
        <source>speed that carries air down</source>
        <translation>गति जो हवा को नीचे बहा ले जाए</translation>
    </message>
    <message>
        <source>√(g D) × (0.825 + 0.25 √(sine of the fall))</source>
        <translation>√(g D) × (0.825 + 0.25 √(ढाल की ज्या, sin))</translation>
    </message>
    <message>
        <source>most flow that the crest allows</source>
        <translation>चोटी जितना बहाव होने दे</translation>
    </message>
    <message>
        <source>flow whose loss up to the crest uses up the lift</source>
        <translation>बहाव जिसमें चोटी तक का घाटा पूरा चढ़ाव खा जाए</translation>
    </message>
    <message>
        <source>Siphon, tank full</source>
        <translation>साइफन, टंकी भरी</translation>
    </message>
    <message>
        <source>Siphon, tank nearly empty</source>
        <translation>साइफन, टंकी लगभग खाली</translation>
    </message>
    <message>
        <source>of the even slope as entered, or of the plane laid through the survey under the platform</source>
        <translation>भरी गई एक-सी ढलान का, या समतल जगह के नीचे के सर्वे पर बिठाए समतल का</translation>
    </message>
    <message>
        <source>Downhill, from north by east</source>
        <translation>ढलान की दिशा, उत्तर से पूरब की ओर</translation>
    </message>
    <message>
        <source>as entered, or of that plane</source>
        <translation>जैसी भरी गई, या उस समतल की</translation>
    </message>
    <message>
        <source>outline of the pit at the ground with rim collar and walkway all round</source>
        <translation>ज़मीन पर गड्ढे की रूपरेखा, मुंडेर की पट्टी और चारों ओर चलने की पट्टी समेत</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle of the tank</source>
        <translation>टंकी के बीच में ज़मीन से समतल जगह की ऊँचाई</translation>
    </message>
    <message>
        <source>as wished: whole pit in natural ground, cut and fill balanced, or as entered</source>
        <translation>जैसी चाही गई: पूरा गड्ढा मूल ज़मीन में, कटान और भराव बराबर, या जैसा भरा गया</translation>
    </message>
    <message>
        <source>Ground to be brought for the fill</source>
        <translation>भराव के लिए बाहर से लाने की मिट्टी</translation>
    </message>
    <message>
        <source>fill ÷ (rammed volume of 1 m³ dug) − pit − cut, where that is over 0</source>
        <translation>भराव ÷ (1 m³ खुदी मिट्टी का कुटा आयतन) − गड्ढा − कटान, जहाँ यह 0 से ऊपर हो</translation>
    </message>
    <message>
        <source>Natural ground over the pit, least</source>
        <translation>गड्ढे से ऊपर मूल ज़मीन, कम से कम</translation>
    </message>
    <message>
        <source>natural ground less topsoil − floor or wall of the pit, where that is least; below 0 it stands on fill</source>
        <translation>मूल ज़मीन, ऊपरी मिट्टी घटाकर − गड्ढे का तला या दीवार, जहाँ यह सबसे कम हो; 0 से नीचे हो तो भराव पर है</translation>
    </message>
    <message>
        <source>Each way to find the level: over the ground at the middle</source>
        <translation>स्तर खोजने का हर तरीका: बीच में ज़मीन से ऊपर</translation>
    </message>
    <message>
        <source>highest with the whole pit in natural ground; (cut × rammed volume of 1 m³) = fill; as entered</source>
        <translation>सबसे ऊँचा जिसमें पूरा गड्ढा मूल ज़मीन में हो; (कटान × 1 m³ का कुटा आयतन) = भराव; जैसा भरा गया</translation>
    </message>
    <message>
        <source>Each way: cut</source>
        <translation>हर तरीका: कटान</translation>
    </message>
    <message>
        <source>like the cut for the platform</source>
        <translation>समतल जगह के कटान की तरह</translation>
    </message>
    <message>
        <source>Each way: fill</source>
        <translation>हर तरीका: भराव</translation>
    </message>
    <message>
        <source>like the fill for the platform</source>
        <translation>समतल जगह के भराव की तरह</translation>
    </message>
    <message>
        <source>Each way: natural ground over the pit, least</source>
        <translation>हर तरीका: गड्ढे से ऊपर मूल ज़मीन, कम से कम</translation>
    </message>
    <message>
        <source>like the cover of the pit</source>
        <translation>गड्ढे से ऊपर की मूल ज़मीन की तरह</translation>
    </message>
    <message>
        <source>Platform pegs: east</source>
        <translation>समतल जगह की खूँटियाँ: पूरब</translation>
    </message>
    <message>
        <source>corner of the platform, or where cut and fill come out of the ground on the line out from it</source>
        <translation>समतल जगह का कोना, या उससे बाहर जाती रेखा पर जहाँ कटान और भराव ज़मीन से मिलते हैं</translation>
    </message>
    <message>
        <source>Platform pegs: north</source>
        <translation>समतल जगह की खूँटियाँ: उत्तर</translation>
    </message>
    <message>
        <source>Platform pegs: level</source>
        <translation>समतल जगह की खूँटियाँ: स्तर</translation>
    </message>
    <message>
        <source>of the platform; out from it of the ground</source>
        <translation>समतल जगह का; उससे बाहर ज़मीन का</translation>
    </message>
    <message>
        <source>Platform pegs: natural ground</source>
        <translation>समतल जगह की खूँटियाँ: मूल ज़मीन</translation>
    </message>
    <message>
        <source>height of the survey&apos;s triangle, or of the slope, at the peg</source>
        <translation>खूँटी पर सर्वे के तिकोन की, या ढलान की, ऊँचाई</translation>
    </message>
    <message>
        <source>Platform pegs: dig, below 0 fill</source>
        <translation>समतल जगह की खूँटियाँ: खोदें, 0 से नीचे हो तो भरें</translation>
    </message>
    <message>
        <source>ground − finished surface</source>
        <translation>ज़मीन − तैयार सतह</translation>
    </message>
    <message>
        <source>Platform pegs: from the corner</source>
        <translation>समतल जगह की खूँटियाँ: कोने से</translation>
    </message>
    <message>
        <source>level distance</source>
        <translation>समतल दूरी</translation>
    </message>
    <message>
        <source>Platform pegs: over the platform</source>
        <translation>समतल जगह की खूँटियाँ: समतल जगह से ऊपर</translation>
    </message>
    <message>
        <source>peg − platform</source>
        <translation>खूँटी − समतल जगह</translation>
    </message>
    <message>
        <source>Heap of spoil, loose</source>
        <translation>निकली मिट्टी का ढेर, ढीला</translation>
    </message>
    <message>
        <source>spoil as it lies × (1 + swell)</source>
        <translation>बिना खुदी के नाप से निकली मिट्टी × (1 + फूलना)</translation>
    </message>
    <message>
        <source>Height of the heap</source>
        <translation>ढेर की ऊँचाई</translation>
    </message>
    <message>
        <source>cone with sides at 35°, cut off level at 1.5 m where it would be higher</source>
        <translation>35° ढाल का शंकु, 1.5 m से ऊँचा हो तो वहीं ऊपर से समतल</translation>
    </message>
    <message>
        <source>Radius of the heap&apos;s foot</source>
        <translation>ढेर के निचले किनारे की त्रिज्या</translation>
    </message>
    <message>
        <source>cone: height ÷ tan 35°; cut off: from the volume</source>
        <translation>शंकु: ऊँचाई ÷ tan 35°; ऊपर से समतल: आयतन से</translation>
    </message>
    <message>
        <source>Direction of the heap, from north by east</source>
        <translation>ढेर की दिशा, उत्तर से पूरब की ओर</translation>
    </message>
    <message>
        <source>as entered; else across the fall, east on level ground</source>
        <translation>जैसी भरी गई; नहीं तो ढलान के आड़े, समतल ज़मीन पर पूरब</translation>
    </message>
    <message>
        <source>Foot of the heap from the pit edge</source>
        <translation>ढेर का निचला किनारा, गड्ढे के किनारे से दूर</translation>
    </message>
    <message>
        <source>at least 0.6 m, and clear of platform, cut and fill</source>
        <translation>कम से कम 0.6 m, और समतल जगह, कटान और भराव से हटकर</translation>
    </message>
    <message>
        <source>Middle of the heap, east</source>
        <translation>ढेर का बीच, पूरब</translation>
    </message>
    <message>
        <source>in its direction, as near as its foot may come</source>
        <translation>अपनी दिशा में, जितना पास उसका निचला किनारा आ सके</translation>
    </message>
    <message>
        <source>Middle of the heap, north</source>
        <translation>ढेर का बीच, उत्तर</translation>
    </message>
    <message>
        <source>Face of the pit wall, from the level</source>
        <translation>गड्ढे की दीवार का झुकाव, समतल से</translation>
    </message>
    <message>
        <source>90° − arctan of the batter</source>
        <translation>90° − arctan(सलामी)</translation>
    </message>
    <message>
        <source>Pit depth</source>
        <translation>गड्ढे की गहराई</translation>
    </message>
    <message>
        <source>clear depth + all coats + stone bed</source>
        <translation>भीतरी गहराई + सब कोट + पत्थर की सोलिंग</translation>
    </message>
    <message>
        <source>Factor wanted for the cut</source>
        <translation>कटान का चाहा गया गुणांक</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>तय</translation>
    </message>
    <message>
        <source>Factor wanted for the downhill side</source>
        <translation>ढलान की ओर का चाहा गया गुणांक</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>चिपकाव c</translation>
    </message>
    <message>
        <source>table by kind of soil</source>
        <translation>मिट्टी की किस्म की तालिका</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>घर्षण φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>इकाई भार γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut that just stands</source>
        <translation>सीधे खड़े कटान की ऊँचाई जो बस टिके</translation>
    </message>
    <message>
        <source>4 c ÷ γ × tan(45° + φ ÷ 2)</source>
        <translation>4 c ÷ γ × tan(45° + φ ÷ 2)</translation>
    </message>
    <message>
        <source>Height at which this face just stands</source>
        <translation>इस कटान की ऊँचाई जो बस टिके</translation>
    </message>
    <message>
        <source>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</source>
        <translation>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</translation>
    </message>
    <message>
        <source>Height of this face with the factor wanted</source>
        <translation>चाहे गए गुणांक पर इस कटान की ऊँचाई</translation>
    </message>
    <message>
        <source>the same with c ÷ F and tan φ ÷ F</source>
        <translation>वही, c ÷ F और tan φ ÷ F से</translation>
    </message>
    <message>
        <source>Stability number N</source>
        <translation>स्थिरता संख्या N</translation>
    </message>
    <message>
        <source>table by face and friction, straight between</source>
        <translation>झुकाव और घर्षण की तालिका, बीच में सीधी रेखा से</translation>
    </message>
    <message>
        <source>Height of this face by it</source>
        <translation>उससे इस कटान की ऊँचाई</translation>
    </message>
    <message>
        <source>c ÷ (γ N)</source>
        <translation>c ÷ (γ N)</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>उससे इस कटान का गुणांक</translation>
    </message>
    <message>
        <source>F for which c ÷ F and tan φ ÷ F just hold the pit&apos;s depth</source>
        <translation>F जिस पर c ÷ F और tan φ ÷ F गड्ढे की गहराई को बस टिकाएँ</translation>
    </message>
    <message>
        <source>Lowest factor of the downhill side</source>
        <translation>ढलान की ओर का सबसे कम गुणांक</translation>
    </message>
    <message>
        <source>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; circle with the lowest of all tried, low strengths</source>
        <translation>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; आज़माए गए सब घेरों में सबसे कम वाला, कम मज़बूती से</translation>
    </message>
    <message>
        <source>Its circle: middle, downhill from the tank</source>
        <translation>उसका घेरा: बीच, टंकी से ढलान की ओर</translation>
    </message>
    <message>
        <source>place that the search found</source>
        <translation>जगह, जो खोज में मिली</translation>
    </message>
    <message>
        <source>Its circle: middle, over the finished floor</source>
        <translation>उसका घेरा: बीच, तैयार फ़र्श से ऊपर</translation>
    </message>
    <message>
        <source>Its circle: radius</source>
        <translation>उसका घेरा: त्रिज्या</translation>
    </message>
    <message>
        <source>size that the search found</source>
        <translation>नाप, जो खोज में मिला</translation>
    </message>
    <message>
        <source>Slip from, downhill from the middle of the tank</source>
        <translation>खिसकन यहाँ से, टंकी के बीच से ढलान की ओर</translation>
    </message>
    <message>
        <source>where the circle meets the ground above</source>
        <translation>जहाँ घेरा ऊपर की ओर ज़मीन से मिलता है</translation>
    </message>
    <message>
        <source>Slip to, downhill from the middle of the tank</source>
        <translation>खिसकन यहाँ तक, टंकी के बीच से ढलान की ओर</translation>
    </message>
    <message>
        <source>where the circle meets the ground below</source>
        <translation>जहाँ घेरा नीचे की ओर ज़मीन से मिलता है</translation>
    </message>
    <message>
        <source>Circles tried</source>
        <translation>आज़माए गए घेरे</translation>
    </message>
    <message>
        <source>a coarse grid of ends and depths, then ever smaller steps from the best</source>
        <translation>सिरों और गहराइयों की मोटी जाली, फिर सबसे अच्छे से छोटे-छोटे कदम</translation>
    </message>
    <message>
        <source>Crack behind the slip</source>
        <translation>खिसकन के पीछे दरार</translation>
    </message>
    <message>
        <source>as deep as the pit, no deeper than the ground falls away; the lower of the factors with and without counts</source>
        <translation>गड्ढे जितना गहरा, ज़मीन के उतरने से ज़्यादा गहरा नहीं; इसके साथ और बिना, दोनों में से कम गुणांक गिना जाता है</translation>
    </message>
    <message>
        <source>Months with readings</source>
        <translation>महीने जिनके नाप हैं</translation>
    </message>
    <message>
        <source>Readings of the month</source>
        <translation>महीने के नाप</translation>
    </message>
    <message>
        <source>Flow, middle of the readings</source>
        <translation>बहाव, नापों का बीच का मान</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60; the middle one, or mean of the two middle ones</source>
        <translation>बर्तन ÷ सेकंड × 60; बीच का, या बीच के दो का औसत</translation>
    </message>
    <message>
        <source>Flow, smallest reading</source>
        <translation>बहाव, सबसे छोटा नाप</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60</source>
        <translation>बर्तन ÷ सेकंड × 60</translation>
    </message>
    <message>
        <source>Flow, largest reading</source>
        <translation>बहाव, सबसे बड़ा नाप</translation>
    </message>
    <message>
        <source>Spread of the readings</source>
        <translation>नापों का फैलाव</translation>
    </message>
    <message>
        <source>(largest − smallest) ÷ middle, readings far off left out</source>
        <translation>(सबसे बड़ा − सबसे छोटा) ÷ बीच का मान, बहुत अलग नाप छोड़कर</translation>
    </message>
    <message>
        <source>Readings far off, by number</source>
        <translation>बहुत अलग नाप, नंबर से</translation>
    </message>
    <message>
        <source>0.6745 × distance from the middle ÷ middle of those distances over 3.5; counted from 0</source>
        <translation>0.6745 × बीच के मान से दूरी ÷ उन दूरियों का बीच का मान, 3.5 से ऊपर; 0 से गिनकर</translation>
    </message>
    <message>
        <source>Readings too quick, by number</source>
        <translation>बहुत जल्दी भरे नाप, नंबर से</translation>
    </message>
    <message>
        <source>vessel full in under 3 s; counted from 0</source>
        <translation>बर्तन 3 s से कम में भरा; 0 से गिनकर</translation>
    </message>
    <message>
        <source>Height of the place over the sea</source>
        <translation>समुद्र तल से जगह की ऊँचाई</translation>
    </message>
    <message>
        <source>as entered; 0 when it is not known</source>
        <translation>जैसी भरी गई; पता न हो तो 0</translation>
    </message>
    <message>
        <source>Rim over the finished floor</source>
        <translation>मुंडेर, तैयार फ़र्श से ऊपर</translation>
    </message>
    <message>
        <source>Overflow over the finished floor</source>
        <translation>ओवरफ्लो, तैयार फ़र्श से ऊपर</translation>
    </message>
    <message>
        <source>depth − freeboard</source>
        <translation>गहराई − फ्रीबोर्ड</translation>
    </message>
    <message>
        <source>Source line fills the empty tank in</source>
        <translation>स्रोत की लाइन खाली टंकी भरती है, इतने समय में</translation>
    </message>
    <message>
        <source>held up to the overflow ÷ flow with the tank full, nothing drawn</source>
        <translation>ओवरफ्लो तक टंकी का पानी ÷ टंकी भरी होने पर बहाव, कुछ निकाला नहीं</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank full</source>
        <translation>पानी जिसमें निकास डूबा है, टंकी भरी</translation>
    </message>
    <message>
        <source>overflow level where the end lies below it</source>
        <translation>ओवरफ्लो का स्तर, जहाँ सिरा उससे नीचे हो</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank nearly empty</source>
        <translation>पानी जिसमें निकास डूबा है, टंकी लगभग खाली</translation>
    </message>
    <message>
        <source>dead level where the end lies below it</source>
        <translation>डेड स्तर, जहाँ सिरा उससे नीचे हो</translation>
    </message>
    <message>
        <source>Source line</source>
        <translation>स्रोत की लाइन</translation>
    </message>
    <message>
        <source>Source line, pipe</source>
        <translation>स्रोत की लाइन, पाइप</translation>
    </message>
    <message>
        <source>Source line, smallest pipe that would do</source>
        <translation>स्रोत की लाइन, सबसे छोटा पाइप जो चल जाए</translation>
    </message>
    <message>
        <source>Source line, tank full</source>
        <translation>स्रोत की लाइन, टंकी भरी</translation>
    </message>
    <message>
        <source>Source line, tank nearly empty</source>
        <translation>स्रोत की लाइन, टंकी लगभग खाली</translation>
    </message>
    <message>
        <source>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3 less the cove, with h up to the overflow; A floor, P its edge, b batter, C corner coefficient</source>
        <translation>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3, गोला घटाकर, h ओवरफ्लो तक; A फ़र्श, P उसके किनारे की लंबाई, b सलामी, C कोनों का गुणांक</translation>
    </message>
    <message>
        <source>Holds, filled to the rim</source>
        <translation>मुंडेर तक भरने पर पानी</translation>
    </message>
    <message>
        <source>V(h) as above, with h up to the rim</source>
        <translation>ऊपर वाला V(h), h मुंडेर तक</translation>
    </message>
    <message>
        <source>Cannot be drawn</source>
        <translation>निकाला नहीं जा सकता</translation>
    </message>
    <message>
        <source>V(h) as above, with h the dead depth</source>
        <translation>ऊपर वाला V(h), h डेड गहराई</translation>
    </message>
    <message>
        <source>held up to the overflow − what cannot be drawn</source>
        <translation>ओवरफ्लो तक टंकी का पानी − जो निकाला नहीं जा सकता</translation>
    </message>
    <message>
        <source>Water surface when full</source>
        <translation>भरी टंकी में पानी की सतह</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × height up to the overflow</source>
        <translation>A + P d + C d², d = सलामी × ओवरफ्लो तक की ऊँचाई</translation>
    </message>
    <message>
        <source>Clear floor</source>
        <translation>भीतरी फ़र्श</translation>
    </message>
    <message>
        <source>area of the clear floor, cove left out</source>
        <translation>भीतरी फ़र्श का क्षेत्रफल, गोला छोड़कर</translation>
    </message>
    <message>
        <source>Edge of the clear floor</source>
        <translation>भीतरी फ़र्श के किनारे की लंबाई</translation>
    </message>
    <message>
        <source>length all round the clear floor</source>
        <translation>भीतरी फ़र्श के चारों ओर की लंबाई</translation>
    </message>
    <message>
        <source>Corner coefficient</source>
        <translation>कोनों का गुणांक</translation>
    </message>
    <message>
        <source>C in: an outline moved out by d has the area A + P d + C d²; sum of cot(half the inside angle) of sharp corners; π for round ones</source>
        <translation>C यहाँ: d बाहर खिसकाई रूपरेखा का क्षेत्रफल A + P d + C d² होता है; तीखे कोनों का Σ cot(भीतरी कोण का आधा); गोल कोनों के लिए π</translation>
    </message>
    <message>
        <source>Clear wall, along the slope</source>
        <translation>भीतरी दीवार, झुकाव के साथ</translation>
    </message>
    <message>
        <source>√(1 + batter²) × depth × half of (edge of the floor + edge at the rim)</source>
        <translation>√(1 + सलामी²) × गहराई × (फ़र्श के किनारे की लंबाई + मुंडेर पर किनारे की लंबाई) का आधा</translation>
    </message>
    <message>
        <source>Length round the clear top</source>
        <translation>भीतरी मुंडेर के चारों ओर की लंबाई</translation>
    </message>
    <message>
        <source>edge of the floor + 2 C × batter × depth</source>
        <translation>फ़र्श के किनारे की लंबाई + 2 C × सलामी × गहराई</translation>
    </message>
    <message>
        <source>Clear opening at the rim</source>
        <translation>मुंडेर पर भीतरी मुँह</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × depth</source>
        <translation>A + P d + C d², d = सलामी × गहराई</translation>
    </message>
    <message>
        <source>as entered at the floor; entered at the rim: less 2 × batter × depth</source>
        <translation>फ़र्श पर भरा हो तो वही; मुंडेर पर भरा हो तो: − 2 × सलामी × गहराई</translation>
    </message>
    <message>
        <source>Clear length at the rim</source>
        <translation>मुंडेर पर भीतरी लंबाई</translation>
    </message>
    <message>
        <source>length at the floor + 2 × batter × depth</source>
        <translation>फ़र्श पर लंबाई + 2 × सलामी × गहराई</translation>
    </message>
    <message>
        <source>Clear width at the rim</source>
        <translation>मुंडेर पर भीतरी चौड़ाई</translation>
    </message>
    <message>
        <source>width at the floor + 2 × batter × depth</source>
        <translation>फ़र्श पर चौड़ाई + 2 × सलामी × गहराई</translation>
    </message>
    <message>
        <source>finished floor to rim, as entered</source>
        <translation>तैयार फ़र्श से मुंडेर तक, जैसा भरा गया</translation>
    </message>
    <message>
        <source>Overflow over the floor</source>
        <translation>ओवरफ्लो, फ़र्श से ऊपर</translation>
    </message>
    <message>
        <source>Marks of the dip-stick</source>
        <translation>पानी नापने की छड़ के निशान</translation>
    </message>
    <message>
        <source>every 5 cm from the finished floor, the overflow and the rim</source>
        <translation>तैयार फ़र्श से हर 5 cm पर, ओवरफ्लो और मुंडेर</translation>
    </message>
    <message>
        <source>Held at each mark</source>
        <translation>हर निशान पर टंकी का पानी</translation>
    </message>
    <message>
        <source>V(h) as above, with h the mark</source>
        <translation>ऊपर वाला V(h), h वह निशान</translation>
    </message>
    <message>
        <source>outline grown by all coats square to their faces, from the pit floor to the ground, same formula as for the tank; with the ledge of the rim collar</source>
        <translation>रूपरेखा, सब कोट जितनी उनकी सतह से गुनिया में बढ़ाई हुई, गड्ढे के तले से ज़मीन तक, सूत्र वही जो टंकी का; मुंडेर की पट्टी के खाँचे समेत</translation>
    </message>
    <message>
        <source>Pit length at the ground</source>
        <translation>ज़मीन पर गड्ढे की लंबाई</translation>
    </message>
    <message>
        <source>clear length at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>मुंडेर पर भीतरी लंबाई + 2 × सब कोट × √(1 + सलामी²)</translation>
    </message>
    <message>
        <source>Pit width at the ground</source>
        <translation>ज़मीन पर गड्ढे की चौड़ाई</translation>
    </message>
    <message>
        <source>clear width at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>मुंडेर पर भीतरी चौड़ाई + 2 × सब कोट × √(1 + सलामी²)</translation>
    </message>
    <message>
        <source>Pit length at its floor</source>
        <translation>तले पर गड्ढे की लंबाई</translation>
    </message>
    <message>
        <source>length at the ground − 2 × batter × pit depth</source>
        <translation>ज़मीन पर लंबाई − 2 × सलामी × गड्ढे की गहराई</translation>
    </message>
    <message>
        <source>Pit width at its floor</source>
        <translation>तले पर गड्ढे की चौड़ाई</translation>
    </message>
    <message>
        <source>width at the ground − 2 × batter × pit depth</source>
        <translation>ज़मीन पर चौड़ाई − 2 × सलामी × गड्ढे की गहराई</translation>
    </message>
    <message>
        <source>Cut for the platform, as it lies</source>
        <translation>समतल जगह का कटान, बिना खुदी के नाप से</translation>
    </message>
    <message>
        <source>ground above platform and cut faces, every triangle of the survey cut along their edges; even slope in closed form</source>
        <translation>समतल जगह और कटान की ढाल से ऊपर की ज़मीन, सर्वे का हर तिकोन उनके किनारों पर काटकर; एक-सी ढलान हो तो सीधे सूत्र से</translation>
    </message>
    <message>
        <source>Fill for the platform, as rammed</source>
        <translation>समतल जगह का भराव, कुटा हुआ</translation>
    </message>
    <message>
        <source>room between the ground and platform and fill faces, reckoned like the cut</source>
        <translation>ज़मीन और समतल जगह व भराव की ढाल के बीच की जगह, हिसाब कटान की तरह</translation>
    </message>
    <message>
        <source>Topsoil stripped first</source>
        <translation>पहले छीली गई ऊपरी मिट्टी</translation>
    </message>
    <message>
        <source>all ground that is disturbed × depth of topsoil, on the cut face no deeper than the face</source>
        <translation>जितनी ज़मीन छेड़ी गई × ऊपरी मिट्टी की गहराई, कटान की ढाल पर ढाल से गहरी नहीं</translation>
    </message>
    <message>
        <source>Spoil left over, as it lies</source>
        <translation>बची निकली मिट्टी, बिना खुदी के नाप से</translation>
    </message>
    <message>
        <source>pit + cut − fill ÷ (rammed volume of 1 m³ dug); not below 0</source>
        <translation>गड्ढा + कटान − भराव ÷ (1 m³ खुदी मिट्टी का कुटा आयतन); 0 से नीचे नहीं</translation>
    </message>
    <message>
        <source>Swell of the soil</source>
        <translation>खुदी मिट्टी का फूलना</translation>
    </message>
    <message>
        <source>by kind of soil: clay and wet ground 40 %, loam and fill 25 %, sand 12 %, rock 65 %</source>
        <translation>मिट्टी की किस्म से: चिकनी मिट्टी और गीली ज़मीन 40 %, दोमट और भराव 25 %, रेत 12 %, चट्टान 65 %</translation>
    </message>
    <message>
        <source>Spoil, loose</source>
        <translation>निकली मिट्टी, ढीली</translation>
    </message>
    <message>
        <source>Pegs: along the first side</source>
        <translation>खूँटियाँ: पहली भुजा के साथ</translation>
    </message>
    <message>
        <source>corners of the pit at the ground and at its floor, offset pegs 1 m clear of edge and rim collar, 3-4-5 marks; from the first corner, or from the centre</source>
        <translation>ज़मीन पर और तले पर गड्ढे के कोने, बाहरी खूँटियाँ किनारे और मुंडेर की पट्टी से 1 m हटकर, 3-4-5 के निशान; पहले कोने से, या केंद्र से</translation>
    </message>
    <message>
        <source>Pegs: square to the first side</source>
        <translation>खूँटियाँ: पहली भुजा से गुनिया में</translation>
    </message>
    <message>
        <source>as along the first side</source>
        <translation>पहली भुजा के साथ की तरह</translation>
    </message>
    <message>
        <source>Pegs: over the ground</source>
        <translation>खूँटियाँ: ज़मीन से ऊपर</translation>
    </message>
    <message>
        <source>0 at the ground, − pit depth at the pit floor</source>
        <translation>ज़मीन पर 0, गड्ढे के तले पर − गड्ढे की गहराई</translation>
    </message>
    <message>
        <source>Lengths to check with the tape</source>
        <translation>फीते से जाँचने की लंबाइयाँ</translation>
    </message>
    <message>
        <source>level distance between two pegs: √(Δx² + Δy²)</source>
        <translation>दो खूँटियों के बीच समतल दूरी: √(Δx² + Δy²)</translation>
    </message>
    <message>
        <source>Marks of the depth rod, below the ground</source>
        <translation>गहराई की छड़ के निशान, ज़मीन से नीचे</translation>
    </message>
    <message>
        <source>pit depth less the layers up to the mark; the overflow: the freeboard</source>
        <translation>गड्ढे की गहराई − उस निशान तक की परतें; ओवरफ्लो: फ्रीबोर्ड</translation>
    </message>
    <message>
        <source>Depths at which the pit wall is checked</source>
        <translation>गहराइयाँ जिन पर गड्ढे की दीवार जाँची जाती है</translation>
    </message>
    <message>
        <source>every 0.5 m, and the pit floor</source>
        <translation>हर 0.5 m पर, और गड्ढे का तला</translation>
    </message>
    <message>
        <source>Pit wall in from its edge there</source>
        <translation>वहाँ गड्ढे की दीवार, किनारे से अंदर</translation>
    </message>
    <message>
        <source>batter × depth below the ground</source>
        <translation>सलामी × ज़मीन से नीचे गहराई</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>मौसम के साल</translation>
    </message>
    <message>
        <source>made from the monthly means (as many as entered), or the whole years of the daily record</source>
        <translation>महीनों के औसत से बनाए गए (जितने भरे गए), या रोज़ के रिकॉर्ड के पूरे साल</translation>
    </message>
    <message>
        <source>Years with water all year</source>
        <translation>साल भर पानी वाले साल</translation>
    </message>
    <message>
        <source>years without a day on which less than 99.9 % of the need could be drawn</source>
        <translation>साल जिनमें ऐसा एक भी दिन नहीं जब ज़रूरत का 99.9 % से कम निकल सका</translation>
    </message>
    <message>
        <source>10 × years with water all year ÷ years</source>
        <translation>10 × साल भर पानी वाले साल ÷ साल</translation>
    </message>
    <message>
        <source>Days on which the need was met</source>
        <translation>दिन जो पूरे पड़े</translation>
    </message>
    <message>
        <source>100 × (1 − days short of water ÷ days with a need)</source>
        <translation>100 × (1 − कमी के दिन ÷ ज़रूरत वाले दिन)</translation>
    </message>
    <message>
        <source>Share of the need that was met</source>
        <translation>ज़रूरत का हिस्सा जो पूरा पड़ा</translation>
    </message>
    <message>
        <source>100 × drawn ÷ needed</source>
        <translation>100 × निकाला ÷ ज़रूरत</translation>
    </message>
    <message>
        <source>sum over the years ÷ years</source>
        <translation>सालों का जोड़ ÷ साल</translation>
    </message>
    <message>
        <source>Days short of water in the worst year</source>
        <translation>सबसे खराब साल में कमी के दिन</translation>
    </message>
    <message>
        <source>largest of the years</source>
        <translation>सालों में सबसे बड़ा</translation>
    </message>
    <message>
        <source>Lacking in a mean year</source>
        <translation>औसत साल में कमी</translation>
    </message>
    <message>
        <source>need that could not be drawn, mean of the years</source>
        <translation>ज़रूरत जो निकाली न जा सकी, सालों का औसत</translation>
    </message>
    <message>
        <source>Lacking in the worst year</source>
        <translation>सबसे खराब साल में कमी</translation>
    </message>
    <message>
        <source>Run over in a mean year</source>
        <translation>औसत साल में ऊपर से बहा</translation>
    </message>
    <message>
        <source>mean of the years</source>
        <translation>सालों का औसत</translation>
    </message>
    <message>
        <source>Largest need of a day</source>
        <translation>एक दिन की सबसे बड़ी ज़रूरत</translation>
    </message>
    <message>
        <source>beds + animals + people, largest day of each year, mean of the years</source>
        <translation>क्यारियाँ + पशु + लोग, हर साल का सबसे बड़ा दिन, सालों का औसत</translation>
    </message>
    <message>
        <source>Beds together</source>
        <translation>क्यारियाँ, कुल</translation>
    </message>
    <message>
        <source>Smallest tank that meets the target</source>
        <translation>लक्ष्य पूरा करने वाली सबसे छोटी टंकी</translation>
    </message>
    <message>
        <source>plan made larger or smaller at the same depth and batter, every size run through all years; least that meets the target</source>
        <translation>उसी गहराई और सलामी पर रूपरेखा बड़ी या छोटी की, हर नाप सब सालों पर चलाया; सबसे छोटा जो लक्ष्य पूरा करे</translation>
    </message>
    <message>
        <source>Largest tank tried</source>
        <translation>आज़माई गई सबसे बड़ी टंकी</translation>
    </message>
    <message>
        <source>200 m³, or reach of the curve where that is more</source>
        <translation>200 m³, या जहाँ तक रेखा जाती है, अगर वह ज़्यादा हो</translation>
    </message>
    <message>
        <source>Largest beds that meet the target</source>
        <translation>लक्ष्य पूरा करने वाली सबसे बड़ी क्यारियाँ</translation>
    </message>
    <message>
        <source>all beds grown alike, every area run through all years; largest up to which the target is met</source>
        <translation>सब क्यारियाँ बराबर अनुपात में बढ़ाईं, हर क्षेत्रफल सब सालों पर चलाया; सबसे बड़ा जहाँ तक लक्ष्य पूरा हो</translation>
    </message>
    <message>
        <source>Largest beds tried</source>
        <translation>आज़माई गई सबसे बड़ी क्यारियाँ</translation>
    </message>
    <message>
        <source>10 × the beds</source>
        <translation>10 × क्यारियाँ</translation>
    </message>
    <message>
        <source>Error of the water balance</source>
        <translation>पानी के हिसाब की चूक</translation>
    </message>
    <message>
        <source>(start + supply + rain − evaporation − seepage − drawn − spill − end) ÷ (start + supply + rain)</source>
        <translation>(शुरू + आमद + बारिश − भाप बना − रिसाव − निकाला − ऊपर से बहा − अंत) ÷ (शुरू + आमद + बारिश)</translation>
    </message>
    <message>
        <source>Weather year begins with month</source>
        <translation>मौसम का साल इस महीने से शुरू</translation>
    </message>
    <message>
        <source>month with most rain, so that no dry season is cut in two</source>
        <translation>सबसे ज़्यादा बारिश वाला महीना, ताकि कोई सूखा मौसम दो हिस्सों में न कटे</translation>
    </message>
    <message>
        <source>Rain in a mean year</source>
        <translation>औसत साल की बारिश</translation>
    </message>
    <message>
        <source>sum of all days ÷ years</source>
        <translation>सब दिनों का जोड़ ÷ साल</translation>
    </message>
    <message>
        <source>Spread of the yearly rain</source>
        <translation>सालाना बारिश का फैलाव</translation>
    </message>
    <message>
        <source>standard deviation ÷ mean of the weather years</source>
        <translation>मौसम के सालों का मानक विचलन ÷ औसत</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Penman-Monteith</source>
        <translation>औसत साल का ET0, पेनमैन-मोंटीथ</translation>
    </message>
    <message>
        <source>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) each day, eq. 6; what was not measured estimated by eq. 48 and 50, wind 2 m/s</source>
        <translation>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) हर दिन, समी. 6; जो नापा नहीं गया उसका अंदाज़ा समी. 48 और 50 से, हवा 2 m/s</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Hargreaves</source>
        <translation>औसत साल का ET0, हारग्रीव्स</translation>
    </message>
    <message>
        <source>0.0023 (T + 17.8) √(Tmax − Tmin) Ra each day, eq. 52, Ra in mm</source>
        <translation>0.0023 (T + 17.8) √(Tmax − Tmin) Ra हर दिन, समी. 52, Ra mm में</translation>
    </message>
    <message>
        <source>Years left out of the record</source>
        <translation>रिकॉर्ड के छोड़े गए साल</translation>
    </message>
    <message>
        <source>years with gaps, when gaps are left out</source>
        <translation>खाली जगह वाले साल, जब खाली जगहें छोड़ी जाती हैं</translation>
    </message>
    <message>
        <source>Values put in for gaps</source>
        <translation>खाली जगहों में भरे गए मान</translation>
    </message>
    <message>
        <source>taken from the nearest year</source>
        <translation>सबसे पास के साल से लिए</translation>
    </message>
    <message>
        <source>Days outside whole years</source>
        <translation>पूरे सालों से बाहर के दिन</translation>
    </message>
    <message>
        <source>days of the record before the first and after the last whole year</source>
        <translation>रिकॉर्ड के पहले पूरे साल से पहले और आखिरी पूरे साल के बाद के दिन</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>महीने</translation>
    </message>
    <message>
        <source>January first</source>
        <translation>जनवरी पहले</translation>
    </message>
    <message>
        <source>A full tank lasts, from the first of the month, days</source>
        <translation>भरी टंकी चलती है, महीने की पहली तारीख से, दिन</translation>
    </message>
    <message>
        <source>nothing flows in, no rain on it; days to the first day short of water, middle of all years</source>
        <translation>कुछ नहीं आता, टंकी पर बारिश नहीं; कमी के पहले दिन तक के दिन, सब सालों का बीच</translation>
    </message>
    <message>
        <source>An empty tank fills, from the first of the month, days</source>
        <translation>खाली टंकी भरती है, महीने की पहली तारीख से, दिन</translation>
    </message>
    <message>
        <source>nothing drawn; days until full, middle of all years</source>
        <translation>कुछ निकाला नहीं; भरने तक के दिन, सब सालों का बीच</translation>
    </message>
    <message>
        <source>Area of each bed</source>
        <translation>हर क्यारी का क्षेत्रफल</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>बुआई</translation>
    </message>
    <message>
        <source>Season ends</source>
        <translation>मौसम का अंत</translation>
    </message>
    <message>
        <source>planted + lengths of the four stages − 1 day</source>
        <translation>बुआई + चारों चरणों के दिन − 1 दिन</translation>
    </message>
    <message>
        <source>Days of the season</source>
        <translation>मौसम के दिन</translation>
    </message>
    <message>
        <source>sum of the four stages of the crop</source>
        <translation>फसल के चारों चरणों का जोड़</translation>
    </message>
    <message>
        <source>Share that reaches the roots</source>
        <translation>जड़ों तक पहुँचता हिस्सा</translation>
    </message>
    <message>
        <source>as entered, else usual for the method</source>
        <translation>जैसा भरा गया, नहीं तो उस तरीके का आम</translation>
    </message>
    <message>
        <source>Use of the crop in a season</source>
        <translation>एक मौसम में फसल जितना पानी लेती है</translation>
    </message>
    <message>
        <source>sum of Kc × ET0, Kc from stage to stage by eq. 66, adjusted to wind and humidity by eq. 62 and 65; mean of the years</source>
        <translation>Σ Kc × ET0, Kc एक चरण से दूसरे तक समी. 66 से, हवा और नमी के लिए समी. 62 और 65 से ठीक किया; सालों का औसत</translation>
    </message>
    <message>
        <source>What rain does not bring</source>
        <translation>जो बारिश से नहीं मिलता</translation>
    </message>
    <message>
        <source>root zone as a bucket: dried by the use, wetted by rain; brought back each day to what the crop bears: p × soil water × root depth (eq. 82 to 85)</source>
        <translation>जड़ों की मिट्टी एक बाल्टी जैसी: फसल के लेने से सूखती, बारिश से भीगती; हर दिन उतने तक लौटाई जितना फसल सहे: p × मिट्टी का पानी × जड़ों की गहराई (समी. 82 से 85)</translation>
    </message>
    <message>
        <source>To be drawn for each bed in a year</source>
        <translation>साल में हर क्यारी के लिए निकालना है</translation>
    </message>
    <message>
        <source>net × area ÷ share that reaches the roots</source>
        <translation>असल × क्षेत्रफल ÷ जड़ों तक पहुँचता हिस्सा</translation>
    </message>
    <message>
        <source>Largest need of a day for each bed</source>
        <translation>हर क्यारी की एक दिन की सबसे बड़ी ज़रूरत</translation>
    </message>
    <message>
        <source>largest day of each year, mean of the years</source>
        <translation>हर साल का सबसे बड़ा दिन, सालों का औसत</translation>
    </message>
    <message>
        <source>Days short of water, year by year</source>
        <translation>कमी के दिन, साल-दर-साल</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn</source>
        <translation>दिन जब ज़रूरत का 99.9 % से कम निकल सका</translation>
    </message>
    <message>
        <source>Lacking, year by year</source>
        <translation>कमी, साल-दर-साल</translation>
    </message>
    <message>
        <source>need − drawn</source>
        <translation>ज़रूरत − निकाला</translation>
    </message>
    <message>
        <source>Run over, year by year</source>
        <translation>ऊपर से बहा, साल-दर-साल</translation>
    </message>
    <message>
        <source>what is above full at the end of a day</source>
        <translation>दिन के अंत में भरी टंकी से जितना ज़्यादा हो</translation>
    </message>
    <message>
        <source>Days of the year</source>
        <translation>साल के दिन</translation>
    </message>
    <message>
        <source>from the first day of the weather year, 29 February left out</source>
        <translation>मौसम के साल के पहले दिन से, 29 फ़रवरी छोड़कर</translation>
    </message>
    <message>
        <source>Held by day: least of all years</source>
        <translation>दिन-दिन टंकी में पानी: सब सालों में सबसे कम</translation>
    </message>
    <message>
        <source>daily balance of all years, sorted</source>
        <translation>सब सालों का रोज़ का हिसाब, क्रम में</translation>
    </message>
    <message>
        <source>Held by day: one year in ten below</source>
        <translation>दिन-दिन टंकी में पानी: दस में से एक साल इससे नीचे</translation>
    </message>
    <message>
        <source>straight between neighbours of the sorted years</source>
        <translation>क्रम में लगे पास-पास के सालों के बीच सीधी रेखा से</translation>
    </message>
    <message>
        <source>Held by day: middle of all years</source>
        <translation>दिन-दिन टंकी में पानी: सब सालों का बीच</translation>
    </message>
    <message>
        <source>Held by day: nine years in ten below</source>
        <translation>दिन-दिन टंकी में पानी: दस में से नौ साल इससे नीचे</translation>
    </message>
    <message>
        <source>Held by day: most of all years</source>
        <translation>दिन-दिन टंकी में पानी: सब सालों में सबसे ज़्यादा</translation>
    </message>
    <message>
        <source>Sizes tried</source>
        <translation>आज़माए गए नाप</translation>
    </message>
    <message>
        <source>even steps at the same depth and batter</source>
        <translation>उसी गहराई और सलामी पर बराबर कदमों में</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size</source>
        <translation>दस में से कितने साल साल भर पानी, नाप से</translation>
    </message>
    <message>
        <source>every size run through all years</source>
        <translation>हर नाप सब सालों पर चलाया</translation>
    </message>
    <message>
        <source>Map: sizes</source>
        <translation>नक्शा: नाप</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times this tank; see the map itself</source>
        <translation>बराबर कदमों में, इस टंकी के करीब 2.5 गुने तक; नक्शा ही देखें</translation>
    </message>
    <message>
        <source>Map: beds</source>
        <translation>नक्शा: क्यारियाँ</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times these beds; see the map itself</source>
        <translation>बराबर कदमों में, इन क्यारियों के करीब 2.5 गुने तक; नक्शा ही देखें</translation>
    </message>
    <message>
        <source>Map: years in ten with water all year</source>
        <translation>नक्शा: दस में से कितने साल, साल भर पानी</translation>
    </message>
    <message>
        <source>each size with each area run through all years; see the map itself</source>
        <translation>हर नाप हर क्षेत्रफल के साथ सब सालों पर चलाया; नक्शा ही देखें</translation>
    </message>
    <message>
        <source>tap or spring</source>
        <translation>नल या चश्मा</translation>
    </message>
    <message>
        <source>flow × hours a day × 60</source>
        <translation>बहाव × दिन में घंटे × 60</translation>
    </message>
    <message>
        <source>runoff of the roof</source>
        <translation>छत से बहकर आया पानी</translation>
    </message>
    <message>
        <source>rain × area × share that runs off, less the first flush of a wet spell</source>
        <translation>बारिश × क्षेत्रफल × बहकर आने वाला हिस्सा, बारिश के दौर का पहला धोवन घटाकर</translation>
    </message>
    <message>
        <source>runoff of the ground</source>
        <translation>ज़मीन से बहकर आया पानी</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>टंकी पर बारिश</translation>
    </message>
    <message>
        <source>rain × opening at the rim</source>
        <translation>बारिश × मुंडेर पर मुँह</translation>
    </message>
    <message>
        <source>evaporation</source>
        <translation>भाप बना</translation>
    </message>
    <message>
        <source>ET0 × open water × (1 − cover) × water surface of the day</source>
        <translation>ET0 × खुला पानी × (1 − ढक्कन) × उस दिन पानी की सतह</translation>
    </message>
    <message>
        <source>seepage</source>
        <translation>रिसाव</translation>
    </message>
    <message>
        <source>seepage a day × wet face of the day</source>
        <translation>दिन का रिसाव × उस दिन की गीली सतह</translation>
    </message>
    <message>
        <source>run over</source>
        <translation>ऊपर से बहा</translation>
    </message>
    <message>
        <source>need of the beds</source>
        <translation>क्यारियों की ज़रूरत</translation>
    </message>
    <message>
        <source>net need × area ÷ share that reaches the roots</source>
        <translation>असल ज़रूरत × क्षेत्रफल ÷ जड़ों तक पहुँचता हिस्सा</translation>
    </message>
    <message>
        <source>need of the animals</source>
        <translation>पशुओं की ज़रूरत</translation>
    </message>
    <message>
        <source>head × litres a day, as entered or usual for the kind</source>
        <translation>पशुओं की गिनती × दिन में लीटर, जैसा भरा गया या उस किस्म का आम</translation>
    </message>
    <message>
        <source>need of people</source>
        <translation>लोगों की ज़रूरत</translation>
    </message>
    <message>
        <source>people × litres a day</source>
        <translation>लोग × दिन में लीटर</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>निकाला</translation>
    </message>
    <message>
        <source>need, no more than what is held over the dead depth</source>
        <translation>ज़रूरत, पर डेड गहराई से ऊपर के पानी से ज़्यादा नहीं</translation>
    </message>
    <message>
        <source>lacking</source>
        <translation>कमी</translation>
    </message>
    <message>
        <source>days short of water</source>
        <translation>कमी के दिन</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn, mean of the years</source>
        <translation>दिन जब ज़रूरत का 99.9 % से कम निकल सका, सालों का औसत</translation>
    </message>
    <message>
        <source>Mean year</source>
        <translation>औसत साल</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>महीने से</translation>
    </message>
    <message>
        <source>plain sums and products of numbers of the plan</source>
        <translation>योजना के अंकों के सीधे जोड़ और गुणा</translation>
    </message>
    <message>
        <source>Jars that count, by their rows</source>
        <translation>गिने जाने वाले जार, पंक्ति से</translation>
    </message>
    <message>
        <source>a jar without layers is left out</source>
        <translation>बिना परतों वाला जार छोड़ा जाता है</translation>
    </message>
    <message>
        <source>Sand in each jar</source>
        <translation>हर जार में रेत</translation>
    </message>
    <message>
        <source>layer of sand ÷ all layers: share of the settled volume</source>
        <translation>रेत की परत ÷ सब परतें: बैठे हुए आयतन का हिस्सा</translation>
    </message>
    <message>
        <source>Silt in each jar</source>
        <translation>हर जार में सिल्ट</translation>
    </message>
    <message>
        <source>layer of silt ÷ all layers</source>
        <translation>सिल्ट की परत ÷ सब परतें</translation>
    </message>
    <message>
        <source>Clay in each jar</source>
        <translation>हर जार में चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>layer of clay ÷ all layers; by weight it is less, for clay settles loosely</source>
        <translation>चिकनी मिट्टी की परत ÷ सब परतें; तौल में यह कम होती है, क्योंकि चिकनी मिट्टी ढीली बैठती है</translation>
    </message>
    <message>
        <source>Clay in the soil, by the jars</source>
        <translation>जारों के हिसाब से मिट्टी में चिकनी मिट्टी</translation>
    </message>
    <message>
        <source>middle of the jars</source>
        <translation>जारों का बीच वाला मान</translation>
    </message>
    <message>
        <source>Balls that count, by their rows</source>
        <translation>गिनी जाने वाली गोलियाँ, पंक्ति से</translation>
    </message>
    <message>
        <source>a ball that was not tried is left out</source>
        <translation>जो गोली जाँची नहीं गई वह छोड़ी जाती है</translation>
    </message>
    <message>
        <source>Layers of the test pits</source>
        <translation>जाँच के गड्ढों की परतें</translation>
    </message>
    <message>
        <source>those that begin above the floor of the tank&apos;s pit</source>
        <translation>जो टंकी के गड्ढे के तल से ऊपर शुरू होती हैं</translation>
    </message>
    <message>
        <source>Of them with unknown soil</source>
        <translation>उनमें से जिनकी मिट्टी पता नहीं</translation>
    </message>
    <message>
        <source>Deepest test pit</source>
        <translation>सबसे गहरा जाँच का गड्ढा</translation>
    </message>
    <message>
        <source>deepest end of a layer</source>
        <translation>परत का सबसे गहरा सिरा</translation>
    </message>
    <message>
        <source>Water met in the test pits at</source>
        <translation>जाँच के गड्ढों में पानी मिला</translation>
    </message>
    <message>
        <source>least depth of a layer in which water came</source>
        <translation>जिस परत में पानी आया उसकी सबसे कम गहराई</translation>
    </message>
    <message>
        <source>Settings of the water level that count, by their rows</source>
        <translation>लेवल नली के गिने जाने वाले पड़ाव, पंक्ति से</translation>
    </message>
    <message>
        <source>a setting without run is left out</source>
        <translation>बिना दूरी वाला पड़ाव छोड़ा जाता है</translation>
    </message>
    <message>
        <source>Fall of each setting</source>
        <translation>हर पड़ाव की ढाल</translation>
    </message>
    <message>
        <source>drop ÷ run</source>
        <translation>उतार ÷ दूरी</translation>
    </message>
    <message>
        <source>Run, all settings</source>
        <translation>दूरी, सब पड़ाव</translation>
    </message>
    <message>
        <source>sum</source>
        <translation>जोड़</translation>
    </message>
    <message>
        <source>Drop, all settings</source>
        <translation>उतार, सब पड़ाव</translation>
    </message>
    <message>
        <source>Fall of the ground, by the water level</source>
        <translation>ज़मीन की ढाल, लेवल नली से</translation>
    </message>
    <message>
        <source>all drops ÷ all runs; below 0 where it was walked uphill</source>
        <translation>सब उतार ÷ सब दूरियाँ; जहाँ चढ़ाई की ओर नापा गया वहाँ 0 से कम</translation>
    </message>
</context>
</TS>
