<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ne">
<context>
    <name>Drawings</name>
    <message>
        <source>Cove, radius %1</source>
        <translation>फेदको गोलाइ, अर्धव्यास %1</translation>
    </message>
    <message>
        <source>%1, %2 thick</source>
        <comment>layer and its thickness</comment>
        <translation>%1, %2 मोटो</translation>
    </message>
    <message>
        <source>Undisturbed ground</source>
        <translation>नखनेको जमिन</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>clear length %1</source>
        <translation>भित्री लम्बाइ %1</translation>
    </message>
    <message>
        <source>clear width %1</source>
        <translation>भित्री चौडाइ %1</translation>
    </message>
    <message>
        <source>clear diameter %1</source>
        <translation>भित्री व्यास %1</translation>
    </message>
    <message>
        <source>clear floor length %1</source>
        <translation>भित्री भुइँको लम्बाइ %1</translation>
    </message>
    <message>
        <source>clear floor width %1</source>
        <translation>भित्री भुइँको चौडाइ %1</translation>
    </message>
    <message>
        <source>clear floor diameter %1</source>
        <translation>भित्री भुइँको व्यास %1</translation>
    </message>
    <message>
        <source>clear rim length %1</source>
        <translation>बिटको भित्री लम्बाइ %1</translation>
    </message>
    <message>
        <source>clear rim width %1</source>
        <translation>बिटको भित्री चौडाइ %1</translation>
    </message>
    <message>
        <source>clear rim diameter %1</source>
        <translation>बिटको भित्री व्यास %1</translation>
    </message>
    <message>
        <source>pit top length %1</source>
        <translation>खाडलको माथिको लम्बाइ %1</translation>
    </message>
    <message>
        <source>pit top width %1</source>
        <translation>खाडलको माथिको चौडाइ %1</translation>
    </message>
    <message>
        <source>pit top diameter %1</source>
        <translation>खाडलको माथिको व्यास %1</translation>
    </message>
    <message>
        <source>A</source>
        <comment>letter of the section</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>Scale 1 : %1</source>
        <translation>स्केल १ : %1</translation>
    </message>
    <message>
        <source>rim and ground: 0</source>
        <translation>बिट र जमिन: ०</translation>
    </message>
    <message>
        <source>overflow: %1 down</source>
        <translation>ओभरफ्लो: %1 तल</translation>
    </message>
    <message>
        <source>pit floor: %1 down</source>
        <translation>खाडलको पिँध: %1 तल</translation>
    </message>
    <message>
        <source>pit floor diameter %1</source>
        <translation>खाडलको पिँधको व्यास %1</translation>
    </message>
    <message>
        <source>pit floor width %1</source>
        <translation>खाडलको पिँधको चौडाइ %1</translation>
    </message>
    <message>
        <source>clear depth %1</source>
        <translation>भित्री गहिराइ %1</translation>
    </message>
    <message>
        <source>pit depth %1</source>
        <translation>खाडलको गहिराइ %1</translation>
    </message>
    <message>
        <source>corner peg at the pit edge, or centre</source>
        <translation>खाडलको डिलमा कुनाको किला, वा केन्द्र</translation>
    </message>
    <message>
        <source>%1, at A-A</source>
        <translation>%1, A-A मा</translation>
    </message>
    <message>
        <source>mark on the string for the right angle, 3-4-5</source>
        <translation>डोरीमा गुनियाको चिनो, 3-4-5</translation>
    </message>
    <message>
        <source>section</source>
        <translation>सेक्सन</translation>
    </message>
    <message>
        <source>offset peg, 1 m clear of the digging; A1 and A2 belong to A</source>
        <translation>बाहिरी किला, खन्ने ठाउँबाट १ m पर; A1 र A2 किला A का हुन्</translation>
    </message>
    <message>
        <source>rim collar length %1</source>
        <translation>बिटको घेराको लम्बाइ %1</translation>
    </message>
    <message>
        <source>rim collar width %1</source>
        <translation>बिटको घेराको चौडाइ %1</translation>
    </message>
    <message>
        <source>rim collar diameter %1</source>
        <translation>बिटको घेराको व्यास %1</translation>
    </message>
    <message>
        <source>clear floor: %1 down</source>
        <translation>भित्री भुइँ: %1 तल</translation>
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
        <translation>छाना</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>जमिन</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>ट्याङ्कीमै परेको वर्षा</translation>
    </message>
    <message>
        <source>people</source>
        <translation>मान्छे</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>गाईवस्तु</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>ड्याङ</translation>
    </message>
    <message>
        <source>Left bar, comes in:</source>
        <translation>बायाँ पट्टी, आउने पानी:</translation>
    </message>
    <message>
        <source>Right bar, needed:</source>
        <translation>दायाँ पट्टी, चाहिने पानी:</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>अपुग</translation>
    </message>
    <message>
        <source>in %1, needed %2</source>
        <comment>amounts of water in a month</comment>
        <translation>आउने %1, चाहिने %2</translation>
    </message>
    <message>
        <source>missing %1</source>
        <translation>अपुग %1</translation>
    </message>
    <message>
        <source>Enter the weather, what brings water and what needs it, to see them month by month.</source>
        <translation>महिना-महिनाको पानी हेर्न मौसम, पानी ल्याउने र पानी चाहिने कुराहरू राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Water in a month</source>
        <translation>एक महिनाको पानी</translation>
    </message>
    <message>
        <source>8 years in ten</source>
        <translation>१० मध्ये ८ वर्ष</translation>
    </message>
    <message>
        <source>middle year</source>
        <translation>मझौला वर्ष</translation>
    </message>
    <message>
        <source>all years</source>
        <translation>सबै वर्ष</translation>
    </message>
    <message>
        <source>the last %1, not to be taken out</source>
        <translation>अन्तिम %1, झिक्न हुँदैन</translation>
    </message>
    <message>
        <source>full: %1</source>
        <translation>भरिएको: %1</translation>
    </message>
    <message>
        <source>Enter the weather to see how the water in the tank rises and falls.</source>
        <translation>ट्याङ्कीमा पानी कसरी घटबढ हुन्छ हेर्न मौसम राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Water in the tank</source>
        <translation>ट्याङ्कीको पानी</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 भन्दा कम</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 देखि %2</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts:</source>
        <translation>१० मध्ये पानी पुग्ने वर्ष:</translation>
    </message>
    <message>
        <source>target</source>
        <translation>लक्ष्य</translation>
    </message>
    <message>
        <source>this tank and its beds</source>
        <translation>यो ट्याङ्की र यसका ड्याङ</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>लक्ष्य %1</translation>
    </message>
    <message>
        <source>Enter the beds to see what size of tank waters how much of them.</source>
        <translation>कति ठूलो ट्याङ्कीले कति ड्याङ भिजाउँछ हेर्न ड्याङ राख्नुहोस्।</translation>
    </message>
    <message>
        <source>The map is being worked out.</source>
        <translation>चित्र तयार हुँदै छ।</translation>
    </message>
    <message>
        <source>Enter the weather and the beds to see what size of tank waters how much of them.</source>
        <translation>कति ठूलो ट्याङ्कीले कति ड्याङ भिजाउँछ हेर्न मौसम र ड्याङ राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Area of the beds</source>
        <translation>ड्याङको क्षेत्रफल</translation>
    </message>
    <message>
        <source>Water when the tank is full</source>
        <translation>ट्याङ्की भरिँदाको पानी</translation>
    </message>
    <message>
        <source>being refined</source>
        <translation>अझ मिलाइँदै छ</translation>
    </message>
    <message>
        <source>this tank: %1</source>
        <translation>यो ट्याङ्की: %1</translation>
    </message>
    <message>
        <source>enough: %1</source>
        <translation>पुग्ने: %1</translation>
    </message>
    <message>
        <source>Enter the weather and what needs water to see how large a tank is enough.</source>
        <translation>कति ठूलो ट्याङ्की पुग्छ हेर्न मौसम र पानी चाहिने कुराहरू राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts</source>
        <translation>१० मध्ये पानी पुग्ने वर्ष</translation>
    </message>
    <message>
        <source>the water lasts in %1 of %2 years</source>
        <translation>%2 वर्षमध्ये %1 वर्ष पानी पुग्छ</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>part of an amount</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: no water comes in.</source>
        <translation>%1: पानी आउँदैन।</translation>
    </message>
    <message>
        <source>%1: %2 come in (%3).</source>
        <translation>%1: %2 आउँछ (%3)।</translation>
    </message>
    <message>
        <source>Nothing is needed.</source>
        <translation>पानी चाहिँदैन।</translation>
    </message>
    <message>
        <source>%1 are needed (%2).</source>
        <translation>%1 चाहिन्छ (%2)।</translation>
    </message>
    <message>
        <source>%1 of it are missing, on %2.</source>
        <translation>त्यसमध्ये %1 अपुग हुन्छ, %2मा।</translation>
    </message>
    <message>
        <source>%1: half of the years hold %2 or more; one year in ten less than %3</source>
        <translation>%1: आधा वर्षहरूमा %2 वा बढी पानी हुन्छ; १० मध्ये एक वर्षमा %3 भन्दा कम</translation>
    </message>
    <message>
        <source>Tank of %1, beds of %2: %3</source>
        <translation>%1को ट्याङ्की, %2को ड्याङ: %3</translation>
    </message>
    <message>
        <source>Tank of %1: %2</source>
        <translation>%1को ट्याङ्की: %2</translation>
    </message>
    <message>
        <source>Time since it was full</source>
        <translation>भरिएदेखि बितेको समय</translation>
    </message>
    <message>
        <source>Minutes since it was full</source>
        <translation>भरिएदेखि बितेका मिनेट</translation>
    </message>
    <message>
        <source>%1 min</source>
        <comment>minutes</comment>
        <translation>%1 मिनेट</translation>
    </message>
    <message>
        <source>the line draws no lower than %1 over the floor</source>
        <translation>पाइपलाइनले भुइँभन्दा %1 माथिसम्म मात्र पानी झिक्छ</translation>
    </message>
    <message>
        <source>drawn down after %1</source>
        <translation>%1 पछि पानी घटिसक्छ</translation>
    </message>
    <message>
        <source>The tank is not emptied through this line.</source>
        <translation>यो पाइपलाइनबाट ट्याङ्की खाली हुँदैन।</translation>
    </message>
    <message>
        <source>How the tank empties is not known: %1.</source>
        <translation>ट्याङ्की कसरी खाली हुन्छ थाहा छैन: %1।</translation>
    </message>
    <message>
        <source>Water over the floor</source>
        <translation>भुइँमाथिको पानी</translation>
    </message>
    <message>
        <source>After %1 the water stands %2 over the floor</source>
        <translation>%1 पछि पानी भुइँभन्दा %2 माथि रहन्छ</translation>
    </message>
    <message>
        <source>pit edge</source>
        <translation>खाडलको डिल</translation>
    </message>
    <message>
        <source>platform edge, level %1</source>
        <translation>सम्याएको ठाउँको छेउ, उचाइ %1</translation>
    </message>
    <message>
        <source>cut face, up to the ground</source>
        <translation>कटानको सतह, जमिनसम्म माथि</translation>
    </message>
    <message>
        <source>fill face, down to the ground</source>
        <translation>पुराइको सतह, जमिनसम्म तल</translation>
    </message>
    <message>
        <source>platform edge</source>
        <translation>सम्याएको ठाउँको छेउ</translation>
    </message>
    <message>
        <source>natural ground, level (%1)</source>
        <translation>सक्कली जमिन, उचाइ (%1)</translation>
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
        <translation>माटोको थुप्रो</translation>
    </message>
    <message>
        <source>%1 to the pit</source>
        <translation>खाडलसम्म %1</translation>
    </message>
    <message>
        <source>No flow: %1.</source>
        <translation>पानी बग्दैन: %1।</translation>
    </message>
    <message>
        <source>Tank full, no flow: %1.</source>
        <translation>ट्याङ्की भरिँदा पानी बग्दैन: %1।</translation>
    </message>
    <message>
        <source>Tank nearly empty, no flow: %1.</source>
        <translation>ट्याङ्की लगभग रित्तिँदा पानी बग्दैन: %1।</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>पाइप</translation>
    </message>
    <message>
        <source>still water</source>
        <translation>नबगेको पानी</translation>
    </message>
    <message>
        <source>head, tank full</source>
        <translation>हेड, ट्याङ्की भरिँदा</translation>
    </message>
    <message>
        <source>head</source>
        <translation>हेड</translation>
    </message>
    <message>
        <source>head, nearly empty</source>
        <translation>हेड, लगभग रित्तिँदा</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>सोसाइ</translation>
    </message>
    <message>
        <source>high point</source>
        <translation>अग्लो ठाउँ</translation>
    </message>
    <message>
        <source>Enter the way of the pipe to see the head of the water along it.</source>
        <translation>पाइपमा पानीको हेड हेर्न पाइप जाने बाटो राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Level from the rim</source>
        <translation>बिटबाट उचाइ</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>पाइपलाइनको दूरी</translation>
    </message>
    <message>
        <source>%1 along: pipe level with the rim</source>
        <translation>%1मा: पाइप बिटको सतहमा</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 over the rim</source>
        <translation>%1मा: पाइप बिटभन्दा %2 माथि</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 under the rim</source>
        <translation>%1मा: पाइप बिटभन्दा %2 तल</translation>
    </message>
    <message>
        <source>%1, suction %2</source>
        <translation>%1, सोसाइ %2</translation>
    </message>
    <message>
        <source>%1, head %2</source>
        <translation>%1, हेड %2</translation>
    </message>
    <message>
        <source>level with the rim</source>
        <translation>बिटको सतहमा</translation>
    </message>
    <message>
        <source>%1 over the rim</source>
        <translation>बिटभन्दा %1 माथि</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 तल</translation>
    </message>
    <message>
        <source>rim: 0</source>
        <translation>बिट: ०</translation>
    </message>
    <message>
        <source>sill: %1</source>
        <translation>सँघार: %1</translation>
    </message>
    <message>
        <source>lip: %1</source>
        <translation>होचो बिट: %1</translation>
    </message>
    <message>
        <source>in a storm: %1</source>
        <translation>मुसलधारे वर्षामा: %1</translation>
    </message>
    <message>
        <source>when blocked: %1</source>
        <translation>टालिँदा: %1</translation>
    </message>
    <message>
        <source>The water level in a storm is not known: %1.</source>
        <translation>मुसलधारे वर्षामा पानीको सतह थाहा छैन: %1।</translation>
    </message>
    <message>
        <source>The water level when the overflow is blocked is not known: %1.</source>
        <translation>ओभरफ्लो टालिँदा पानीको सतह थाहा छैन: %1।</translation>
    </message>
    <message>
        <source>freeboard left %1</source>
        <translation>बाँकी फ्रिबोर्ड %1</translation>
    </message>
    <message>
        <source>over the rim by %1</source>
        <translation>बिटभन्दा %1 माथि</translation>
    </message>
    <message>
        <source>There is no room between the overflow and the rim to draw.</source>
        <translation>ओभरफ्लो र बिटबीच नक्सा कोर्ने ठाउँ छैन।</translation>
    </message>
    <message>
        <source>heights to scale, lengths not</source>
        <translation>उचाइ स्केलमा छ, लम्बाइ छैन</translation>
    </message>
    <message>
        <source>rim and platform: 0</source>
        <translation>बिट र सम्याएको ठाउँ: ०</translation>
    </message>
    <message>
        <source>natural ground</source>
        <translation>सक्कली जमिन</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>ट्याङ्की खाली</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>ट्याङ्की भरि र चुहिँदो</translation>
    </message>
    <message>
        <source>No slip was searched for.</source>
        <translation>पहिरो खोजिएको छैन।</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall does not make a sound section.</source>
        <translation>पहिरो भेटिएन: ढालतिरको जमिनको सेक्सन मिलेन।</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall is level.</source>
        <translation>पहिरो भेटिएन: ढालतिरको जमिन समथर छ।</translation>
    </message>
    <message>
        <source>No slip was found: no circle through this ground has a factor.</source>
        <translation>पहिरो भेटिएन: यो जमिनमा कुनै पनि वृत्तको गुणक निस्किएन।</translation>
    </message>
    <message>
        <source>The search for a slip was stopped.</source>
        <translation>पहिरो खोज्ने काम रोकियो।</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>भार %1</translation>
    </message>
    <message>
        <source>factor %1</source>
        <translation>गुणक %1</translation>
    </message>
    <message>
        <source>radius %1</source>
        <translation>अर्धव्यास %1</translation>
    </message>
    <message>
        <source>water in the ground</source>
        <translation>जमिनभित्रको पानी</translation>
    </message>
    <message>
        <source>P1 stands inward of Q1, P2 of Q2, and so on</source>
        <translation>P1 किला Q1 को भित्रपट्टि, P2 किला Q2 को भित्रपट्टि हुन्छ, र यसरी नै अरू</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>water in the evening</source>
        <translation>बेलुकाको पानी</translation>
    </message>
    <message>
        <source>wall under wet sacks</source>
        <translation>भिजेको जुटले ढाकिएको भित्ता</translation>
    </message>
    <message>
        <source>filling starts</source>
        <translation>पानी भर्न सुरु</translation>
    </message>
    <message>
        <source>should start by</source>
        <translation>योभन्दा ढिलो नगर्ने</translation>
    </message>
    <message>
        <source>full on %1</source>
        <translation>%1मा भरिन्छ</translation>
    </message>
    <message>
        <source>not full within a year</source>
        <translation>एक वर्षभित्र भरिँदैन</translation>
    </message>
    <message>
        <source>Enter what flows into the tank to see how it fills for the first time.</source>
        <translation>ट्याङ्की पहिलो पटक कसरी भरिन्छ हेर्न कति पानी आउँछ राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Height over the floor</source>
        <translation>भुइँमाथिको उचाइ</translation>
    </message>
    <message>
        <source>this tank</source>
        <translation>यो ट्याङ्की</translation>
    </message>
    <message>
        <source>most water</source>
        <translation>सबैभन्दा धेरै पानी</translation>
    </message>
    <message>
        <source>cheapest that meets the target</source>
        <translation>लक्ष्य पुग्ने सबैभन्दा सस्तो</translation>
    </message>
    <message>
        <source>fewest bags that meet the target</source>
        <translation>लक्ष्य पुग्ने सबैभन्दा थोरै बोरा</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>लागत</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>सिमेन्टका बोरा</translation>
    </message>
    <message>
        <source>No size is within the limits.</source>
        <translation>कुनै पनि साइज सीमाभित्र पर्दैन।</translation>
    </message>
    <message>
        <source>Search the sizes to see which are worth their price.</source>
        <translation>कुन साइज पैसा हाल्न लायक छ हेर्न साइजहरू खोज्नुहोस्।</translation>
    </message>
    <message>
        <source>building it, spread over its life</source>
        <translation>बनाउने खर्च, आयुभर बाँडेर</translation>
    </message>
    <message>
        <source>upkeep</source>
        <translation>मर्मत-सम्भार</translation>
    </message>
    <message>
        <source>Enter the prices of linings to see what each costs a year.</source>
        <translation>हरेक अस्तरको वार्षिक लागत हेर्न अस्तरका मूल्य राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>वार्षिक लागत</translation>
    </message>
    <message>
        <source>goods and carrying</source>
        <translation>सामान र ढुवानी</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>ज्याला</translation>
    </message>
    <message>
        <source>Enter prices and when the works start to see when money is needed.</source>
        <translation>कहिले पैसा चाहिन्छ हेर्न मूल्य र निर्माण सुरु हुने दिन राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Money needed up to then</source>
        <translation>त्यो दिनसम्म चाहिने पैसा</translation>
    </message>
    <message>
        <source>Money needed on the day</source>
        <translation>त्यो दिन चाहिने पैसा</translation>
    </message>
    <message>
        <source>when it rises, the outcome rises</source>
        <comment>of an input</comment>
        <translation>यो बढ्दा नतिजा बढ्छ</translation>
    </message>
    <message>
        <source>when it rises, the outcome falls</source>
        <comment>of an input</comment>
        <translation>यो बढ्दा नतिजा घट्छ</translation>
    </message>
    <message>
        <source>goods and carrying %1</source>
        <comment>amount of money</comment>
        <translation>सामान र ढुवानी %1</translation>
    </message>
    <message>
        <source>wages %1</source>
        <comment>amount of money</comment>
        <translation>ज्याला %1</translation>
    </message>
    <message>
        <source>together up to then %1</source>
        <comment>amount of money</comment>
        <translation>त्यो दिनसम्म जम्मा %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: amounts</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 a year (building it %3, upkeep %4), lasts %5</source>
        <comment>lining: amounts, years</comment>
        <translation>%1: वर्षको %2 (बनाउन %3, मर्मत-सम्भार %4), %5 टिक्छ</translation>
    </message>
    <message>
        <source>%1 a year for each %2</source>
        <comment>amount of money, volume</comment>
        <translation>हरेक %2को वर्षको %1</translation>
    </message>
    <message>
        <source>%1: %2 of the spread</source>
        <comment>input, percentage</comment>
        <translation>%1: घटबढको %2</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <comment>diameter, depth</comment>
        <translation>व्यास %1, गहिराइ %2</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <comment>length, width, depth</comment>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>%1 cannot be built.</source>
        <translation>%1 बनाउन सकिँदैन।</translation>
    </message>
    <message>
        <source>Add an option to see the tanks side by side.</source>
        <translation>ट्याङ्कीहरू सँगसँगै हेर्न एउटा विकल्प थप्नुहोस्।</translation>
    </message>
    <message>
        <source>None of the options can be built.</source>
        <translation>कुनै पनि विकल्प बनाउन सकिँदैन।</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>ज्यामी</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>डकर्मी</translation>
    </message>
    <message>
        <source>people wetting</source>
        <translation>भिजाउने मान्छे</translation>
    </message>
    <message>
        <source>goes on until %1 →</source>
        <translation>%1सम्म चल्छ →</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see the people of each day.</source>
        <translation>हरेक दिनका मान्छे हेर्न निर्माण कहिले सुरु हुन्छ र को-को छन् राख्नुहोस्।</translation>
    </message>
    <message>
        <source>People on a day</source>
        <translation>एक दिनका मान्छे</translation>
    </message>
    <message>
        <source>8 times in ten</source>
        <translation>१० मध्ये ८ पटक</translation>
    </message>
    <message>
        <source>half of the times less</source>
        <translation>आधा पटक योभन्दा कम</translation>
    </message>
    <message>
        <source>all times</source>
        <translation>सबै पटक</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>राखिएअनुसार</translation>
    </message>
    <message>
        <source>What the spread comes from:</source>
        <translation>घटबढ केबाट आउँछ:</translation>
    </message>
    <message>
        <source>raises the outcome</source>
        <comment>an input that grows</comment>
        <translation>नतिजा बढाउँछ</translation>
    </message>
    <message>
        <source>lowers the outcome</source>
        <comment>an input that grows</comment>
        <translation>नतिजा घटाउँछ</translation>
    </message>
    <message>
        <source>How far the numbers may be off is not worked out yet.</source>
        <translation>अङ्कहरू कति फरक पर्न सक्छन्, अझै हिसाब गरिएको छैन।</translation>
    </message>
    <message>
        <source>first coat as planned, and best</source>
        <translation>पहिलो पत्र योजनाअनुसार, र सबैभन्दा राम्रो</translation>
    </message>
    <message>
        <source>first coat as planned</source>
        <translation>पहिलो पत्र योजनाअनुसार</translation>
    </message>
    <message>
        <source>best week</source>
        <translation>सबैभन्दा राम्रो हप्ता</translation>
    </message>
    <message>
        <source>Enter the weather to see in which weeks coats are likely to stay undisturbed.</source>
        <translation>कुन हप्तामा पत्रमा बाधा नपर्ने सम्भावना छ हेर्न मौसम राख्नुहोस्।</translation>
    </message>
    <message>
        <source>planned, best</source>
        <translation>योजना, सबैभन्दा राम्रो</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>योजना</translation>
    </message>
    <message>
        <source>best</source>
        <translation>सबैभन्दा राम्रो</translation>
    </message>
    <message>
        <source>Times in ten that coats of this week stay undisturbed</source>
        <translation>१० मध्ये कति पटक यो हप्ताका पत्रमा बाधा पर्दैन</translation>
    </message>
    <message>
        <source>no work on this day</source>
        <translation>यो दिन काम छैन</translation>
    </message>
    <message>
        <source>work</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>ढिलो गर्न नमिल्ने</translation>
    </message>
    <message>
        <source>room to slip</source>
        <translation>ढिलो गर्न मिल्ने</translation>
    </message>
    <message>
        <source>kept wet</source>
        <translation>भिजाइराख्ने</translation>
    </message>
    <message>
        <source>filling</source>
        <translation>पानी भर्ने</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>अन्तिम दिन</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>%1सम्म</translation>
    </message>
    <message>
        <source>%1: not before %2</source>
        <translation>%1: %2 भन्दा अघि होइन</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see their days.</source>
        <translation>कामका दिन हेर्न निर्माण कहिले सुरु हुन्छ र को-को छन् राख्नुहोस्।</translation>
    </message>
    <message>
        <source>%1 labourer</source>
        <translation>%1 ज्यामी</translation>
    </message>
    <message numerus="yes">
        <source>%1 labourers</source>
        <translation>
            <numerusform>%1 ज्यामी</numerusform>
            <numerusform>%1 ज्यामी</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mason</source>
        <translation>%1 डकर्मी</translation>
    </message>
    <message numerus="yes">
        <source>%1 masons</source>
        <translation>
            <numerusform>%1 डकर्मी</numerusform>
            <numerusform>%1 डकर्मी</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 person wetting</source>
        <translation>भिजाउने %1 जना</translation>
    </message>
    <message numerus="yes">
        <source>%1 people wetting</source>
        <translation>
            <numerusform>भिजाउने %1 जना</numerusform>
            <numerusform>भिजाउने %1 जना</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>people (so many of them masons)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>room to slip: %1</source>
        <translation>ढिलो गर्न मिल्ने: %1</translation>
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
        <translation>भिजाउन %1</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>कोही छैन</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: people</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 flow in</source>
        <comment>litres</comment>
        <translation>%1 आउँछ</translation>
    </message>
    <message>
        <source>%1 are lost</source>
        <comment>litres</comment>
        <translation>%1 खेर जान्छ</translation>
    </message>
    <message>
        <source>%1: %2. In the evening %3 over the floor, %4.</source>
        <comment>date: flows; level, volume</comment>
        <translation>%1: %2। बेलुका भुइँभन्दा %3 माथि, %4।</translation>
    </message>
    <message>
        <source>%1 to keep the %2 of wall above the water wet.</source>
        <translation>पानीमाथिको %2 भित्ता भिजाइराख्न %1।</translation>
    </message>
    <message>
        <source>Week from %1: undisturbed %2 times of %3; heavy rain %4, frost %5, heat or cold %6</source>
        <translation>%1 देखिको हप्ता: %3 मध्ये %2 पटक बाधा छैन; ठूलो पानी %4, तुसारो %5, गर्मी वा जाडो %6</translation>
    </message>
    <message>
        <source>The person is %1 tall.</source>
        <translation>मान्छे %1 अग्लो छ।</translation>
    </message>
    <message>
        <source>cost not known</source>
        <translation>लागत थाहा छैन</translation>
    </message>
    <message>
        <source>%1: cost not known</source>
        <comment>lining</comment>
        <translation>%1: लागत थाहा छैन</translation>
    </message>
    <message>
        <source>plumb line and bob</source>
        <translation>साहुल र डोरी</translation>
    </message>
    <message>
        <source>level side: spirit level or hose</source>
        <translation>समथर पाखो: स्पिरिट लेभल वा लेभल पाइप</translation>
    </message>
    <message>
        <source>slanting side lies on the pit wall</source>
        <translation>ढल्केको पाखो खाडलको भित्तामा टाँसिन्छ</translation>
    </message>
    <message>
        <source>straight staff stands on the pit wall</source>
        <translation>सोझो लट्ठी खाडलको भित्तामा ठड्याउने</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>माथि %1</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>बाहिर %1</translation>
    </message>
    <message>
        <source>The board gives the lean of the pit wall, as it is dug.</source>
        <translation>फल्याकले खनेको खाडलको भित्ताको ढल्काइ देखाउँछ।</translation>
    </message>
    <message>
        <source>The pit wall is dug upright.</source>
        <translation>खाडलको भित्ता ठाडो खनिन्छ।</translation>
    </message>
    <message>
        <source>Plaster follows it: the clear wall leans the same.</source>
        <translation>प्लास्टर त्यसैअनुसार लाग्छ: भित्री भित्ता पनि उत्तिकै ढल्किन्छ।</translation>
    </message>
    <message>
        <source>%1, level with the string: 0</source>
        <translation>%1, डोरीकै सतहमा: ०</translation>
    </message>
    <message>
        <source>%1, dig to here: %2 down</source>
        <translation>%1, यहाँसम्म खन्ने: %2 तल</translation>
    </message>
    <message>
        <source>%1, the clear floor: %2 down</source>
        <translation>%1, भित्री भुइँ: %2 तल</translation>
    </message>
    <message>
        <source>%1: %2 down</source>
        <translation>%1: %2 तल</translation>
    </message>
    <message>
        <source>clear face: inside of the finished plaster</source>
        <translation>भित्री सतह: तयारी प्लास्टरको भित्रपट्टि</translation>
    </message>
    <message>
        <source>coats, %1 thick in all, each brought up to the collar</source>
        <translation>पत्रहरू, जम्मा मोटाइ %1, हरेक घेरासम्म ल्याइएको</translation>
    </message>
    <message>
        <source>pit wall, as it is dug; ground behind it</source>
        <translation>खनेको खाडलको भित्ता; पछाडि जमिन</translation>
    </message>
    <message>
        <source>pipe, %1 outside</source>
        <translation>पाइप, बाहिरी व्यास %1</translation>
    </message>
    <message>
        <source>pipe, %1 outside as an example</source>
        <translation>पाइप, उदाहरणका लागि बाहिरी व्यास %1</translation>
    </message>
    <message>
        <source>collar of stiff mortar all round the pipe</source>
        <translation>पाइपको चारैतिर गाढा मसलाको घेरा</translation>
    </message>
    <message>
        <source>outside end: on beyond the pit edge, no joint in the wall</source>
        <translation>बाहिरी छेउ: खाडलको डिलभन्दा परसम्म, भित्ताभित्र जोर्नी छैन</translation>
    </message>
    <message>
        <source>clamp: the pipe cannot pull or shake on the rim</source>
        <translation>क्ल्याम्प: बिटमा पाइप तानिन वा हल्लिन पाउँदैन</translation>
    </message>
    <message>
        <source>bell mouth, above the dead level</source>
        <translation>फैलिएको मुख, निकासमुनिको पानीको सतहभन्दा माथि</translation>
    </message>
    <message>
        <source>dead level: %1 over the clear floor</source>
        <translation>निकासमुनिको पानीको सतह: भित्री भुइँभन्दा %1 माथि</translation>
    </message>
    <message>
        <source>Pipe through the wall</source>
        <translation>भित्ता छेडेर जाने पाइप</translation>
    </message>
    <message>
        <source>Pipe over the rim</source>
        <translation>बिटमाथिबाट जाने पाइप</translation>
    </message>
    <message>
        <source>B</source>
        <comment>letter of the section</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>%1, at B-B</source>
        <translation>%1, B-B मा</translation>
    </message>
    <message>
        <source>pit floor length %1</source>
        <translation>खाडलको पिँधको लम्बाइ %1</translation>
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
        <translation>आधार: %1</translation>
    </message>
    <message>
        <source>%1: net %2, to order %3</source>
        <translation>%1: खुद %2, मगाउने %3</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>ओभरफ्लोसम्म भर्दा अट्ने</translation>
    </message>
    <message>
        <source>%1 to the rim</source>
        <translation>बिटसम्म %1</translation>
    </message>
    <message>
        <source>Prismoidal formula: depth ÷ 6 × (floor + 4 × middle + surface), all clear inside areas.</source>
        <translation>प्रिज्मोइडल सूत्र: गहिराइ ÷ 6 × (भुइँ + 4 × बीच + पानीको माथिल्लो सतह), सबै भित्री क्षेत्रफल।</translation>
    </message>
    <message>
        <source>Water depth %1, floor %2, water surface %3.</source>
        <translation>पानीको गहिराइ %1, भुइँ %2, पानीको माथिल्लो सतह %3।</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>काम लाग्ने पानी</translation>
    </message>
    <message>
        <source>Held to the overflow less what lies below the dead depth.</source>
        <translation>ओभरफ्लोसम्म अट्ने पानीबाट निकासमुनिको गहिराइको पानी घटाएर।</translation>
    </message>
    <message>
        <source>%1 less %2 below %3.</source>
        <translation>%1 बाट %3 मुनिको %2 घटाएर।</translation>
    </message>
    <message>
        <source>%1: shell %2, to mix %3, cement %4</source>
        <translation>%1: सही आयतन %2, मुछ्ने %3, सिमेन्ट %4</translation>
    </message>
    <message>
        <source>Placed plaster × %1 loose ingredients, shared out by the parts of the mix; cement weighs %2.</source>
        <translation>लगाएको प्लास्टर × %1 खुकुलो सामान, मिसावटका भागअनुसार बाँडेर; सिमेन्टको तौल %2।</translation>
    </message>
    <message>
        <source>Unevenness %1 on coat 1, waste %2, whole bags.</source>
        <translation>पत्र १मा असमानता %1, खेर जाने %2, पूरा बोरा।</translation>
    </message>
    <message>
        <source>Cement to order</source>
        <translation>मगाउने सिमेन्ट</translation>
    </message>
    <message>
        <source>of %1 each</source>
        <translation>एक-एक %1को</translation>
    </message>
    <message>
        <source>From the exact shells and the mixes, with waste, sieving loss and the bulking of damp sand.</source>
        <translation>सही आयतन र मिसावटबाट; खेर जाने, चाल्दा घट्ने र ओसिलो बालुवाको फुलाइ जोडेर।</translation>
    </message>
    <message>
        <source>Soil, sand and stone to bring</source>
        <translation>ल्याउने माटो, बालुवा र ढुङ्गा</translation>
    </message>
    <message>
        <source>Soil %1
Sand %2
Stone %3</source>
        <translation>माटो %1
बालुवा %2
ढुङ्गा %3</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>People and dates are not part of this project.</source>
        <translation>मान्छे र मिति यो परियोजनामा छैनन्।</translation>
    </message>
    <message>
        <source>%1: %2 (%3 to %4)</source>
        <translation>%1: %2 (%3 देखि %4)</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>पानी भर्न थाल्ने अन्तिम दिन</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 देखि %3</translation>
    </message>
    <message>
        <source>The clear inside, grown by all coats square to their faces and by the stone bed under the floor.</source>
        <translation>भित्री नापमा सबै पत्र सतहसँग गुनियामा र भुइँमुनि ढुङ्गाको सोलिङ जोडेर।</translation>
    </message>
    <message>
        <source>Pit floor %1.</source>
        <translation>खाडलको पिँध %1।</translation>
    </message>
    <message>
        <source>Loose spoil %1.</source>
        <translation>खनेको खुकुलो माटो %1।</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>खन्ने खाडल</translation>
    </message>
    <message>
        <source>pit at ground %1, pit depth %2</source>
        <translation>जमिनमा खाडल %1, खाडलको गहिराइ %2</translation>
    </message>
    <message>
        <source>Finished clear inside</source>
        <translation>तयारी भित्री नाप</translation>
    </message>
    <message>
        <source>floor %1
rim %2
clear depth %3</source>
        <translation>भुइँ %1
बिट %2
भित्री गहिराइ %3</translation>
    </message>
    <message>
        <source>What the water touches, after all coats. The walls lean out by batter × height.</source>
        <translation>सबै पत्र लगाएपछि पानीले छुने नाप। भित्ता बाहिरतिर ढल्काइ × उचाइ जति ढल्किन्छ।</translation>
    </message>
    <message>
        <source>Floor %1, walls along the slope %2, opening at the rim %3.</source>
        <translation>भुइँ %1, ढल्केको भित्ता %2, बिटको मुख %3।</translation>
    </message>
    <message>
        <source>Latitude, weather, source and needs are not known yet: see the tab Water.</source>
        <translation>अक्षांश, मौसम, स्रोत र चाहिने पानी अझै थाहा छैन: “पानी” ट्याब हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Reference evapotranspiration %1 a year, rain %2.</source>
        <translation>सन्दर्भ वाष्पोत्सर्जन वर्षको %1, वर्षा %2।</translation>
    </message>
    <message>
        <source>Sizes that meet the target</source>
        <translation>लक्ष्य पुग्ने साइज</translation>
    </message>
    <message>
        <source>smallest tank %1</source>
        <translation>सबैभन्दा सानो ट्याङ्की %1</translation>
    </message>
    <message>
        <source>no tank up to %1</source>
        <translation>%1सम्मको कुनै ट्याङ्कीले पुग्दैन</translation>
    </message>
    <message>
        <source>largest beds %1</source>
        <translation>सबैभन्दा ठूला ड्याङ %1</translation>
    </message>
    <message>
        <source>no beds, however small</source>
        <translation>जति सानो ड्याङलाई पनि पुग्दैन</translation>
    </message>
    <message>
        <source>The tank&apos;s plan is made larger or smaller at the same depth and batter; the beds keep their shares. Every size is run through all weather years.</source>
        <translation>उही गहिराइ र ढल्काइमा ट्याङ्कीको प्लान ठूलो वा सानो पारिन्छ; ड्याङको आपसी भाग उही रहन्छ। हरेक साइज सबै मौसम वर्षमा चलाएर हेरिन्छ।</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>१० मध्ये कति वर्ष वर्षभरि पानी</translation>
    </message>
    <message>
        <source>Each day: water held + source + runoff + rain − evaporation − seepage − need, kept between empty and full; a day is short of water when less than the need can be drawn.</source>
        <translation>हरेक दिन: भएको पानी + स्रोत + बगेको पानी + वर्षा − वाष्पीकरण − रसाउने पानी − चाहिने पानी, खालीदेखि भरिसम्मको सीमामा; चाहिनेभन्दा कम मात्र झिक्न सकिए त्यो पानी नपुगेको दिन हो।</translation>
    </message>
    <message>
        <source>%1 of %2 weather years pass without a day short of water. Days met: %3, water met: %4.</source>
        <translation>%2 मौसम वर्षमध्ये %1 वर्षमा पानी नपुगेको दिन एउटै हुँदैन। पुगेका दिन: %3, पुगेको पानी: %4।</translation>
    </message>
    <message>
        <source>days short of water in a mean year %1, in the worst %2</source>
        <translation>पानी नपुगेका दिन: औसत वर्षमा %1, सबैभन्दा खराब वर्षमा %2</translation>
    </message>
    <message>
        <source>almost any tank</source>
        <translation>लगभग जुनसुकै ट्याङ्की</translation>
    </message>
    <message>
        <source>beds of %1 or more</source>
        <translation>%1 वा बढी ड्याङ</translation>
    </message>
    <message>
        <source>Target: %1 years in ten with water all year.</source>
        <translation>लक्ष्य: १० मध्ये %1 वर्ष वर्षभरि पानी।</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>लागत, जम्मा</translation>
    </message>
    <message>
        <source>Money is not part of this project: see the tab Money.</source>
        <translation>पैसा यो परियोजनामा छैन: “पैसा” ट्याब हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Materials %1, labour %2, other %3, carriage %4, contingency %5.</source>
        <translation>सामग्री %1, कामदार %2, अन्य %3, ढुवानी %4, भैपरी %5।</translation>
    </message>
    <message>
        <source>Paid %1, given %2.</source>
        <translation>तिर्ने %1, योगदान %2।</translation>
    </message>
    <message>
        <source>%1 for each cubic metre held.</source>
        <translation>अट्ने पानीको हरेक घनमिटरको %1।</translation>
    </message>
    <message>
        <source>Prices that are missing: %1. The sum is too small.</source>
        <translation>मूल्य नभएका: %1। जम्मा रकम कम देखिएको छ।</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>%1 भन्दा बढी</translation>
    </message>
    <message>
        <source>paid %1, given %2</source>
        <translation>तिर्ने %1, योगदान %2</translation>
    </message>
    <message>
        <source>%1 after the first day of the works, %2</source>
        <translation>निर्माणको पहिलो दिनको %1 पछि, %2</translation>
    </message>
</context>
<context>
    <name>Handouts</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 देखि %2</translation>
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
        <translation>बिहान</translation>
    </message>
    <message>
        <source>noon</source>
        <translation>दिउँसो</translation>
    </message>
    <message>
        <source>evening</source>
        <translation>बेलुका</translation>
    </message>
    <message>
        <source>Start filling no later than %1.</source>
        <translation>%1 भन्दा ढिलो नगरी पानी भर्न थाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Filling begun. Until water covers a wall, its sacks stay on and stay wet.</source>
        <translation>पानी भर्न थालियो। पानीले भित्ता नछोपेसम्म जुट नहटाउनुहोस् र भिजाइराख्नुहोस्।</translation>
    </message>
    <message>
        <source>Work for each task</source>
        <translation>हरेक कामलाई लाग्ने जनदिन</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>को</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Cover the fresh coat with sacks and keep them wet day and night, rest days too. Tick each wetting. Plaster that dries early cracks and leaks.</source>
        <translation>ताजा पत्रलाई जुटले छोपेर दिनरात भिजाइराख्नुहोस्, बिदाको दिन पनि। भिजाएपिच्छे चिनो लगाउनुहोस्। चाँडै सुकेको प्लास्टर चर्किन्छ र चुहिन्छ।</translation>
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
        <translation>भरिँदा अट्ने</translation>
    </message>
    <message>
        <source>Can be drawn from it</source>
        <translation>झिक्न मिल्ने</translation>
    </message>
    <message>
        <source>Clear size at the floor</source>
        <translation>भुइँमा भित्री नाप</translation>
    </message>
    <message>
        <source>Clear size at the rim</source>
        <translation>बिटमा भित्री नाप</translation>
    </message>
    <message>
        <source>Pit to dig, at the ground</source>
        <translation>खन्ने खाडल, जमिनमा</translation>
    </message>
    <message>
        <source>Pit depth to dig</source>
        <translation>खन्ने खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>Clear depth when finished</source>
        <translation>तयार हुँदा भित्री गहिराइ</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>so many bags of so many kilograms</comment>
        <translation>%2का %1</translation>
    </message>
    <message>
        <source>Work, all together</source>
        <translation>काम, जम्मा</translation>
    </message>
    <message>
        <source>Work starts</source>
        <translation>काम सुरु</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>पानी भर्न थाल्ने अन्तिम दिन</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for each bag.</source>
        <translation>किन्ने सिमेन्ट: हरेक बोराको एउटा चित्र।</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for every %1 bags, the last may be part.</source>
        <translation>किन्ने सिमेन्ट: हरेक %1 बोराको एउटा चित्र, अन्तिम आधा-अधुरो हुन सक्छ।</translation>
    </message>
    <message>
        <source>Cement to buy</source>
        <translation>किन्ने सिमेन्ट</translation>
    </message>
    <message>
        <source>No crew and dates were given, so these sheets have no work calendar and no wetting calendar.</source>
        <translation>टोली र मिति दिइएको छैन, त्यसैले यी पानामा काम र भिजाउने पात्रो छैनन्।</translation>
    </message>
    <message>
        <source>Clear sizes are what the water fills. Pit sizes are what is dug; the lining takes up the rest.</source>
        <translation>भित्री नाप भनेको पानी भरिने नाप हो। खाडलको नाप भनेको खन्ने नाप हो; बाँकी ठाउँ अस्तरले लिन्छ।</translation>
    </message>
    <message>
        <source>The construction sheets are marked NOT FOR CONSTRUCTION: see the findings.</source>
        <translation>निर्माणका पानामा “निर्माणका लागि होइन” लेखिएको छ: ध्यान दिने कुरा हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Where the pegs stand</source>
        <translation>किला कहाँ-कहाँ</translation>
    </message>
    <message>
        <source>Measured from the centre O; x toward A, y toward B.</source>
        <translation>केन्द्र O बाट नापेको; x A तिर, y B तिर।</translation>
    </message>
    <message>
        <source>Measured from peg A; x along side A to B, y square to it, into the pit.</source>
        <translation>किला A बाट नापेको; x छेउ A बाट B तिर, y त्यससँग गुनियामा, खाडलभित्रतिर।</translation>
    </message>
    <message>
        <source>Peg</source>
        <translation>किला</translation>
    </message>
    <message>
        <source>What it marks</source>
        <translation>के देखाउँछ</translation>
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
        <translation>फित्ताले जाँच्ने</translation>
    </message>
    <message>
        <source>From peg to peg</source>
        <translation>किलादेखि किला</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>के हो</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>लम्बाइ</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>जाँचियो</translation>
    </message>
    <message>
        <source>Batter board: how far the pit wall has come in</source>
        <translation>ढल्काइ फल्याक: खाडलको भित्ता कति भित्र आएको हुन्छ</translation>
    </message>
    <message>
        <source>Depth below ground</source>
        <translation>जमिनबाट गहिराइ</translation>
    </message>
    <message>
        <source>In from the pit edge</source>
        <translation>खाडलको डिलबाट भित्र</translation>
    </message>
    <message>
        <source>Depth rod: marks measured down from the string at ground level</source>
        <translation>गहिराइ लट्ठी: जमिनको सतहमा तानेको डोरीबाट तल नापेका चिनो</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>सतह</translation>
    </message>
    <message>
        <source>Below the string</source>
        <translation>डोरीबाट तल</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>चिनो लगाइयो</translation>
    </message>
    <message>
        <source>Walls stand upright.</source>
        <translation>भित्ता ठाडा हुन्छन्।</translation>
    </message>
    <message>
        <source>Walls lean outward: %1 out for each %2 up.</source>
        <translation>भित्ता बाहिरतिर ढल्किन्छन्: हरेक %2 माथि जाँदा %1 बाहिर।</translation>
    </message>
    <message>
        <source>Clear sizes are inside the finished plaster. Pit sizes are what is dug, before any lining. </source>
        <translation>भित्री नाप भनेको तयारी प्लास्टरको भित्रको नाप हो। खाडलको नाप भनेको अस्तर लगाउनुअघि खन्ने नाप हो। </translation>
    </message>
    <message>
        <source>Section A-A of the plan. </source>
        <translation>प्लानको सेक्सन A-A। </translation>
    </message>
    <message>
        <source>Foot of the wall, enlarged. Thickness of a coat is measured square to its face.</source>
        <translation>भित्ताको फेद, ठूलो पारेर। पत्रको मोटाइ त्यसको सतहसँग गुनियामा नापिन्छ।</translation>
    </message>
    <message>
        <source>NOT FOR CONSTRUCTION</source>
        <translation>निर्माणका लागि होइन</translation>
    </message>
    <message>
        <source>Caution. Pit walls can fall in: never work alone, keep spoil %1 back, keep a ladder in the pit. Cement burns skin and eyes, its dust harms the lungs: gloves, boots, wash at once. Lift bags two together. Fence the pit: people fall in and drown.</source>
        <translation>सावधान। खाडलको भित्ता भत्किन सक्छ: कहिल्यै एक्लै काम नगर्नुहोस्, खनेको माटो %1 पर राख्नुहोस्, खाडलमा भर्‍याङ राखिराख्नुहोस्। सिमेन्टले छाला र आँखा पोल्छ, यसको धुलोले फोक्सो बिगार्छ: पन्जा र बुट लगाउनुहोस्, लागेमा तुरुन्तै धुनुहोस्। बोरा दुई जना मिलेर उठाउनुहोस्। खाडल वरिपरि बार लगाउनुहोस्: मान्छे खसेर डुब्छन्।</translation>
    </message>
    <message>
        <source>This bar is 100 mm on a true print.</source>
        <translation>ठीक नापमा छापिएको छ भने यो धर्को १०० mm हुन्छ।</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>पृष्ठ %2 को %1</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first.</source>
        <translation>स्थानीय नियम-मापदण्ड र इजाजतप्राप्त प्राविधिकको काम पहिला आउँछ।</translation>
    </message>
    <message>
        <source>Design mark %1</source>
        <translation>डिजाइन चिनो %1</translation>
    </message>
    <message>
        <source>Work %1 to %2</source>
        <translation>काम %1 देखि %2</translation>
    </message>
    <message>
        <source>Farm water tank</source>
        <translation>बारीको पानी ट्याङ्की</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>उत्तर छैन</translation>
    </message>
    <message>
        <source>How each is reckoned</source>
        <translation>हरेकको हिसाब कसरी गरिएको हो</translation>
    </message>
    <message>
        <source>Net: each coat&apos;s exact shell, taken from the geometry, times %1 loose parts for one of placed plaster, shared out by the parts of its mix. Cement weighs %2 loose.</source>
        <translation>खुद: हरेक पत्रको ज्यामितिबाट निकालेको सही आयतन, एक भाग लगाएको प्लास्टरमा %1 भाग खुकुलो सामान, मिसावटका भागअनुसार बाँडेर। खुकुलो सिमेन्टको तौल %2।</translation>
    </message>
    <message>
        <source>Order: net with %1 for uneven dug faces (stone bed and coat 1) and %2 waste; soil and sand with %3 sieving loss, damp sand with %4 bulking; loose stone is %5 times the compacted bed; cement in whole bags of %6.</source>
        <translation>मगाउने: खुदमा असमान खनेको सतहको (ढुङ्गाको सोलिङ र पत्र १) %1 र खेर जाने %2 थपेर; माटो र बालुवामा चाल्दा घट्ने %3, ओसिलो बालुवामा फुलाइ %4; खुकुलो ढुङ्गा खाँदेको सोलिङको %5 गुणा; सिमेन्ट %6का पूरा बोरा।</translation>
    </message>
    <message>
        <source>Water: %1 for mixing, %2 for wetting each coat. Sacks: %3 each, %4 spare.</source>
        <translation>पानी: मुछ्न %1, हरेक पत्र भिजाउन %2। जुट: एउटाले %3, जगेडा %4।</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>तह</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>तह</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>मोटाइ</translation>
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
        <translation>दुईटा पत्याउनुहोस्, तेस्रो आफैं निस्किन्छ</translation>
    </message>
    <message>
        <source>If these are right</source>
        <translation>यी ठीक भए</translation>
    </message>
    <message>
        <source>then</source>
        <translation>भने</translation>
    </message>
    <message>
        <source>by exact shells</source>
        <translation>सही आयतनले</translation>
    </message>
    <message>
        <source>by area × thickness</source>
        <translation>क्षेत्रफल × मोटाइले</translation>
    </message>
    <message>
        <source>thickness and mix</source>
        <translation>मोटाइ र मिसावट</translation>
    </message>
    <message>
        <source>cement is</source>
        <translation>सिमेन्ट</translation>
    </message>
    <message>
        <source>cement and mix</source>
        <translation>सिमेन्ट र मिसावट</translation>
    </message>
    <message>
        <source>coats are</source>
        <translation>पत्र</translation>
    </message>
    <message>
        <source>cement and thickness</source>
        <translation>सिमेन्ट र मोटाइ</translation>
    </message>
    <message>
        <source>mixes are, soil : sand : cement</source>
        <translation>मिसावट, माटो : बालुवा : सिमेन्ट</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>सामग्री</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>खुद</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>मगाउने</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>किनियो</translation>
    </message>
    <message>
        <source>On site</source>
        <translation>ठाउँमा छ</translation>
    </message>
    <message>
        <source>The customary bill as it was given stands beside what thicknesses and mixes need. Nothing has been scaled or averaged; all figures are net, without waste. Ratio: computed over customary.</source>
        <translation>दिइएको चलनको हिसाब, मोटाइ र मिसावटलाई चाहिने सामानको छेउमा राखिएको छ। केही पनि घटाइ-बढाइ वा औसत गरिएको छैन; सबै अङ्क खुद हुन्, खेर जाने नजोडी। अनुपात: हिसाबले निकालेको ÷ चलनको।</translation>
    </message>
    <message>
        <source>Customary</source>
        <translation>चलनको</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>सही आयतन</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>अनुपात</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>क्षेत्रफल × मोटाइ</translation>
    </message>
    <message>
        <source>Exact shells: the solid between the outer and inner face of each coat. Area × thickness: the clear inside face times the thickness, as reckoned on paper; it leaves out what the corners add.</source>
        <translation>सही आयतन: हरेक पत्रको बाहिरी र भित्री सतहबीचको ठोस भाग। क्षेत्रफल × मोटाइ: भित्री सतह गुणा मोटाइ, कागजमा गरिने हिसाबजस्तै; यसमा कुनाले थप्ने भाग छुट्छ।</translation>
    </message>
    <message>
        <source>Soil for one part of sand: %1 in the bill, %2 in the mixes.</source>
        <translation>एक भाग बालुवामा माटो: हिसाबमा %1, मिसावटमा %2।</translation>
    </message>
    <message>
        <source>Which two to trust is for the people on site to settle, by measuring a finished coat and counting the bags that went into it.</source>
        <translation>कुन दुईटा पत्याउने, ठाउँमा भएका मान्छेले नै टुङ्गो लगाउने हो: तयार भएको पत्र नापेर र त्यसमा लागेका बोरा गनेर।</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सिमेन्ट</translation>
    </message>
    <message>
        <source>Makes plaster</source>
        <translation>बन्ने प्लास्टर</translation>
    </message>
    <message>
        <source>Covers at this thickness</source>
        <translation>यो मोटाइमा ढाक्ने</translation>
    </message>
    <message>
        <source>Batches for the whole coat</source>
        <translation>पूरा पत्रका घान</translation>
    </message>
    <message>
        <source>Coat %1: %2 thick on %3</source>
        <translation>पत्र %1: %3मा %2 मोटो</translation>
    </message>
    <message>
        <source>%1 soil : %2 sand : %3 cement, by loose volume</source>
        <translation>%1 माटो : %2 बालुवा : %3 सिमेन्ट, खुकुलो नापले</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>माटो</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>बालुवा</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>सिमेन्ट</translation>
    </message>
    <message>
        <source>For one batch</source>
        <translation>एक घानलाई</translation>
    </message>
    <message>
        <source>1 bag of cement</source>
        <translation>१ बोरा सिमेन्ट</translation>
    </message>
    <message>
        <source>half a bag</source>
        <translation>आधा बोरा</translation>
    </message>
    <message>
        <source>Measure loose, level with the rim. Mix dry until one colour, then add clean water little by little.</source>
        <translation>नखाँदी, बाकसको मुखसम्म सम्म पारेर नाप्नुहोस्। एउटै रङ नहुन्जेल सुक्खै मुछ्नुहोस्, अनि सफा पानी अलि-अलि गर्दै हाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Tick a box for each one-bag batch:</source>
        <translation>एक बोराको हरेक घानमा एउटा कोठामा चिनो लगाउनुहोस्:</translation>
    </message>
    <message>
        <source>Tick a box for every %1 one-bag batches:</source>
        <translation>एक बोराका हरेक %1 घानमा एउटा कोठामा चिनो लगाउनुहोस्:</translation>
    </message>
    <message>
        <source>The tank at a glance</source>
        <translation>ट्याङ्की एकै नजरमा</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>सामग्री</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one</source>
        <translation>चलनको हिसाब र हिसाबले निकालेको, सँगसँगै</translation>
    </message>
    <message>
        <source>Mix cards</source>
        <translation>मिसावटका कार्ड</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>प्लान</translation>
    </message>
    <message>
        <source>Section A-A</source>
        <translation>सेक्सन A-A</translation>
    </message>
    <message>
        <source>Foot of the wall and depth rod</source>
        <translation>भित्ताको फेद र गहिराइ लट्ठी</translation>
    </message>
    <message>
        <source>Setting out</source>
        <translation>लेआउट</translation>
    </message>
    <message>
        <source>Work calendar</source>
        <translation>कामको पात्रो</translation>
    </message>
    <message>
        <source>Wetting calendar</source>
        <translation>भिजाउने पात्रो</translation>
    </message>
    <message>
        <source>Dip-stick</source>
        <translation>पानी नाप्ने लट्ठी</translation>
    </message>
    <message>
        <source>Working and living safely</source>
        <translation>सुरक्षित काम, सुरक्षित जीवन</translation>
    </message>
    <message>
        <source>Findings and their sources</source>
        <translation>ध्यान दिने कुरा र तिनका आधार</translation>
    </message>
    <message>
        <source>Water at</source>
        <translation>पानीको उचाइ</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>अट्ने</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>खन्ने काम</translation>
    </message>
    <message>
        <source>Pit walls fall in without warning. Stop and get out when you see cracks along the edge, bulging, or water in the wall.</source>
        <translation>खाडलको भित्ता कुनै सङ्केत नदिई भत्किन्छ। डिलमा चिरा, भित्ता फुलेको वा भित्तामा पानी देखे काम रोकेर बाहिर निस्किहाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Keep spoil, stones, bags and animals at least %1 back from the edge.</source>
        <translation>खनेको माटो, ढुङ्गा, बोरा र गाईवस्तु डिलबाट कम्तीमा %1 पर राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Keep a ladder in the pit at all times. No one digs alone; someone stays at the top.</source>
        <translation>खाडलमा जहिले पनि भर्‍याङ राख्नुहोस्। कोही पनि एक्लै नखन्ने; एक जना माथि बसिरहने।</translation>
    </message>
    <message>
        <source>Never dig under a wall, and never stand in a narrow cut deeper than your waist without support.</source>
        <translation>भित्ताको मुनि कहिल्यै नखन्नुहोस्, र टेको नभएको, कम्मरभन्दा गहिरो साँघुरो कटानमा कहिल्यै नउभिनुहोस्।</translation>
    </message>
    <message>
        <source>Bags and stones: two people, backs straight, paths clear and dry.</source>
        <translation>बोरा र ढुङ्गा: दुई जनाले, ढाड सीधा राखेर, बाटो सफा र सुक्खा राखेर।</translation>
    </message>
    <message>
        <source>Wet cement burns skin and eyes. Wear gloves, boots and long sleeves; wash splashes off at once with much clean water.</source>
        <translation>भिजेको सिमेन्टले छाला र आँखा पोल्छ। पन्जा, बुट र लामो बाहुलाको लुगा लगाउनुहोस्; छिटा पर्नेबित्तिकै धेरै सफा पानीले धुनुहोस्।</translation>
    </message>
    <message>
        <source>Cement dust harms the lungs. Open bags with the wind behind you, cover nose and mouth.</source>
        <translation>सिमेन्टको धुलोले फोक्सो बिगार्छ। हावा पछाडिबाट आउने गरी उभिएर बोरा खोल्नुहोस्, नाक र मुख छोप्नुहोस्।</translation>
    </message>
    <message>
        <source>No bare feet in the mix. Children stay away.</source>
        <translation>मसलामा खाली खुट्टा नपस्ने। बच्चालाई टाढै राख्ने।</translation>
    </message>
    <message>
        <source>The finished tank</source>
        <translation>तयार भएको ट्याङ्की</translation>
    </message>
    <message>
        <source>A child can drown in it, and no one can climb out of smooth sloping walls. Fence all four sides, with a gate that shuts.</source>
        <translation>यसमा बच्चा डुब्न सक्छ, र चिप्लो ढल्केको भित्ताबाट कोही उक्लिन सक्दैन। चारैतिर बार लगाउनुहोस्, बन्द हुने गेटसहित।</translation>
    </message>
    <message>
        <source>Fix a ladder or a knotted rope that reaches the floor, and keep a float beside it.</source>
        <translation>भुइँसम्म पुग्ने भर्‍याङ वा गाँठा पारेको डोरी बाँध्नुहोस्, र छेउमै तैरिने चिज राख्नुहोस्।</translation>
    </message>
    <message>
        <source>An empty tank is a pit: keep the fence shut while it is dry, and never go in alone.</source>
        <translation>खाली ट्याङ्की पनि खाडलै हो: सुक्खा हुँदा पनि बार बन्द राख्नुहोस्, र कहिल्यै एक्लै भित्र नपस्नुहोस्।</translation>
    </message>
    <message>
        <source>The water is for fields and animals. It is not drinking water.</source>
        <translation>यो पानी खेतबारी र गाईवस्तुका लागि हो। यो खाने पानी होइन।</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first. On a slope, on filled ground, near a house or a drop, or where ground water is high, ask a licensed engineer before digging.</source>
        <translation>स्थानीय नियम-मापदण्ड र इजाजतप्राप्त प्राविधिकको काम पहिला आउँछ। भिरालोमा, पुरेको जमिनमा, घर वा भीरको नजिक, वा जमिनमुनिको पानी माथि भएको ठाउँमा, खन्नुअघि इजाजतप्राप्त इन्जिनियरलाई सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Stand a marked stick upright on the finished floor, read where it is wet, and look up what the tank holds.</source>
        <translation>चिनो लगाएको लट्ठी तयारी भुइँमा ठाडो उभ्याउनुहोस्, कहाँसम्म भिज्यो हेर्नुहोस्, र ट्याङ्कीमा कति छ तालिकामा हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Full to the overflow at %1: %2.</source>
        <translation>%1मा ओभरफ्लोसम्म भरिन्छ: %2।</translation>
    </message>
    <message>
        <source>Below %1 no water can be drawn; %2 stay in the tank.</source>
        <translation>%1 भन्दा तलको पानी झिक्न सकिँदैन; %2 ट्याङ्कीमै रहन्छ।</translation>
    </message>
    <message>
        <source>What a practitioner should look at before building. A finding is not a verdict; what is not known never counts as safe.</source>
        <translation>बनाउनुअघि जानकार प्राविधिकले हेर्नुपर्ने कुरा। ध्यान दिने कुरा फैसला होइन; थाहा नभएको कुरालाई कहिल्यै सुरक्षित मानिँदैन।</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>आधार: %1</translation>
    </message>
    <message>
        <source>How much does the tap or spring give? Catch all of its water in a vessel of known size and take the time until it is full.</source>
        <translation>धारा वा मूलले कति पानी दिन्छ? त्यसको सबै पानी नाप थाहा भएको भाँडोमा थाप्नुहोस् र भरिन कति समय लाग्छ हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Take a vessel that needs %1 or longer to fill; a larger one where it fills sooner.</source>
        <translation>भरिन %1 वा बढी लाग्ने भाँडो लिनुहोस्; त्योभन्दा चाँडो भरिए ठूलो भाँडो लिनुहोस्।</translation>
    </message>
    <message>
        <source>Fill it, read the seconds, empty it, and do it again: more than %1 readings each time you come. One line for each reading.</source>
        <translation>भर्नुहोस्, सेकेन्ड हेर्नुहोस्, खन्याउनुहोस् र फेरि गर्नुहोस्: आउँदापिच्छे %1 भन्दा बढी नाप लिनुहोस्। हरेक नापको एउटा लाइन।</translation>
    </message>
    <message>
        <source>Where it fills quickly, fill it several times running: a stroke in the tally for each time, and the seconds for all of them together.</source>
        <translation>चाँडो भर्ने ठाउँमा लगातार धेरै पटक भर्नुहोस्: हरेक पटक एउटा धर्का, र सबैको जम्मा सेकेन्ड।</translation>
    </message>
    <message>
        <source>Come back in every month, above all in the driest. The flow of the dry months decides.</source>
        <translation>हरेक महिना आउनुहोस्, सबैभन्दा सुक्खा महिनामा त झनै। सुक्खा महिनाको बहावले नै फैसला गर्छ।</translation>
    </message>
    <message>
        <source>Litres in a minute: litres of the vessel × strokes × %1 ÷ seconds.</source>
        <translation>एक मिनेटको लिटर: भाँडोको लिटर × धर्का × %1 ÷ सेकेन्ड।</translation>
    </message>
    <message>
        <source>Tap or spring:</source>
        <translation>धारा वा मूल:</translation>
    </message>
    <message>
        <source>Measured by:</source>
        <translation>नाप्ने मान्छे:</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>मिति</translation>
    </message>
    <message>
        <source>Vessel, litres</source>
        <translation>भाँडो, लिटर</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>सेकेन्ड</translation>
    </message>
    <message>
        <source>Times filled, tally</source>
        <translation>कति पटक भरियो, धर्का</translation>
    </message>
    <message>
        <source>Remarks: weather, hours it runs</source>
        <translation>कैफियत: मौसम, बग्ने घण्टा</translation>
    </message>
    <message>
        <source>Water through the year</source>
        <translation>वर्षभरिको पानी</translation>
    </message>
    <message>
        <source>Flow log</source>
        <translation>बहावको खाता</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>आउने र चाहिने पानी</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>ट्याङ्कीको साइज र ड्याङ</translation>
    </message>
    <message>
        <source>Figures of the water balance</source>
        <translation>पानीको हिसाबका अङ्क</translation>
    </message>
    <message>
        <source>Flow,
%1</source>
        <translation>बहाव,
%1</translation>
    </message>
    <message>
        <source>Hours a day</source>
        <translation>दिनको घण्टा</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>महिना</translation>
    </message>
    <message>
        <source>Tap or spring</source>
        <translation>धारा वा मूल</translation>
    </message>
    <message>
        <source>Readings with bucket and watch:</source>
        <translation>बाल्टी र घडीले लिएका नाप:</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>वर्षा</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>पानी परेका दिन</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>न्यूनतम</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>अधिकतम</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>आर्द्रता</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>हावा</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>घाम</translation>
    </message>
    <message>
        <source>Weather, means of many years</source>
        <translation>मौसम, धेरै वर्षको औसत</translation>
    </message>
    <message>
        <source>Left out because of gaps, years that begin in: %1.</source>
        <translation>दिन छुटेकाले छोडिएका, यी महिनाबाट सुरु हुने वर्ष: %1।</translation>
    </message>
    <message>
        <source>Values put in for gaps: %1.</source>
        <translation>छुटेको ठाउँमा भरिएका मान: %1।</translation>
    </message>
    <message>
        <source>%1 of daily weather are made from the monthly means, by a chain of wet and dry days with gamma amounts, %2. The draw starts with the number %3: the same number gives the same weather.</source>
        <translation>दैनिक मौसमका %1 मासिक औसतबाट बनाइएका हुन्, पानी पर्ने र नपर्ने दिनको क्रम र गामा वितरणका परिमाणले, %2। गोला %3 अङ्कबाट सुरु हुन्छ: उही अङ्कले उही मौसम दिन्छ।</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>मौसम वर्ष</translation>
    </message>
    <message>
        <source>Rain in a mean year: %1; spread from year to year (standard deviation over mean): %2.</source>
        <translation>औसत वर्षको वर्षा: %1; वर्षैपिच्छेको घटबढ (स्तरीय भिन्नता ÷ औसत): %2।</translation>
    </message>
    <message>
        <source>Reference evapotranspiration ET0 in a mean year: Penman-Monteith %1 %2, Hargreaves %3 %4. Reckoned with: %5.</source>
        <translation>औसत वर्षको सन्दर्भ वाष्पोत्सर्जन ET0: Penman-Monteith %1 %2, Hargreaves %3 %4। यसले हिसाब गरिएको: %5।</translation>
    </message>
    <message>
        <source>Water at the end of a day = water at its start + tap or spring + runoff led in + rain on the tank − evaporation − seepage − drawn.</source>
        <translation>दिनको अन्त्यको पानी = सुरुको पानी + धारा वा मूल + ल्याइएको बगेको पानी + ट्याङ्कीमै परेको वर्षा − वाष्पीकरण − रसाउने पानी − झिकिएको पानी।</translation>
    </message>
    <message>
        <source>It is never less than none and never more than full: what is more runs over. No water is drawn from below the outlet. Evaporation is ET0 × the factor of open water × the water&apos;s surface; seepage goes through the wetted plaster. A bed needs what its crop uses and rain does not bring, over the share that reaches the roots, %1.</source>
        <translation>यो शून्यभन्दा कम र भरिनेभन्दा बढी कहिल्यै हुँदैन: बढी भएको पोखिन्छ। निकासभन्दा तलबाट पानी झिकिँदैन। वाष्पीकरण भनेको ET0 × खुला पानीको गुणक × पानीको माथिल्लो सतह हो; रसाउने पानी भिजेको प्लास्टरबाट जान्छ। ड्याङलाई चाहिने पानी भनेको बालीले खाने तर वर्षाले नल्याएको पानी ÷ जरामा पुग्ने भाग हो, %1।</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>थाहा छैन</translation>
    </message>
    <message>
        <source>not known, %1 taken</source>
        <translation>थाहा छैन, %1 मानियो</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>राखिएको</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>अङ्कहरू कहाँबाट आएका हुन्</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>नं.</translation>
    </message>
    <message>
        <source>Source, and how well it is founded</source>
        <translation>आधार, र त्यो कति भरपर्दो छ</translation>
    </message>
    <message>
        <source>What was entered</source>
        <translation>के राखियो</translation>
    </message>
    <message>
        <source>What</source>
        <translation>के</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>मान</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>आधार</translation>
    </message>
    <message>
        <source>What is usual, to hold the figures against</source>
        <translation>अङ्कहरू दाँज्न, साधारण हुने मान</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>अङ्क</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>कम</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>साधारण</translation>
    </message>
    <message>
        <source>High</source>
        <translation>बढी</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>ड्याङ</translation>
    </message>
    <message>
        <source>Net need: what the crop uses and rain does not bring. Drawn: net need over the share that reaches the roots (%1).</source>
        <translation>खुद चाहिने पानी: बालीले खाने तर वर्षाले नल्याएको। झिकिने: खुद चाहिने पानी ÷ जरामा पुग्ने भाग (%1)।</translation>
    </message>
    <message>
        <source>Crop, season</source>
        <translation>बाली, समय</translation>
    </message>
    <message>
        <source>Watered by, reaches the roots</source>
        <translation>सिँचाइको तरिका, जरामा पुग्ने</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>क्षेत्रफल</translation>
    </message>
    <message>
        <source>Crop use, net need</source>
        <translation>बालीले खाने, खुद चाहिने पानी</translation>
    </message>
    <message>
        <source>Drawn in a year</source>
        <translation>वर्षमा झिकिने</translation>
    </message>
    <message>
        <source>Peak in a day</source>
        <translation>एक दिनको सबैभन्दा बढी</translation>
    </message>
    <message>
        <source>Crops</source>
        <translation>बाली</translation>
    </message>
    <message>
        <source>Kc: use of the crop over ET0. p: share of the water in the root zone that may be used before the crop suffers. Sources: %1; Kc for this climate, daily use and root zone: %2, eq. 62, 65, 66 and 82 to 85.</source>
        <translation>Kc: बालीले खाने पानी ÷ ET0। p: जराको क्षेत्रको पानीमध्ये बालीलाई मर्का नपरी खर्च गर्न मिल्ने भाग। आधार: %1; यो हावापानीको Kc, दैनिक खपत र जराको क्षेत्र: %2, समीकरण 62, 65, 66 र 82 देखि 85।</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>बाली</translation>
    </message>
    <message>
        <source>Kc: first, mid, end</source>
        <translation>Kc: सुरु, मध्य, अन्तिम</translation>
    </message>
    <message>
        <source>Kc for this climate</source>
        <translation>यो हावापानीको Kc</translation>
    </message>
    <message>
        <source>Stages, days</source>
        <translation>अवस्था, दिन</translation>
    </message>
    <message>
        <source>Height, roots</source>
        <translation>उचाइ, जरा</translation>
    </message>
    <message>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>गाईवस्तु</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>गाईवस्तु</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>कति वटा</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>एउटाले खाने</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 भन्दा कम</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>महिना-महिना</translation>
    </message>
    <message>
        <source>Means of all years reckoned: good years bring more than this, bad years less. Read the stick on the first of each month and write it down; tick the months in which the water lasted.</source>
        <translation>हिसाब गरिएका सबै वर्षको औसत: राम्रो वर्षमा योभन्दा बढी आउँछ, नराम्रोमा कम। हरेक महिनाको पहिलो दिन लट्ठी हेरेर लेख्नुहोस्; पानी पुगेका महिनामा चिनो लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>Needed each day</source>
        <translation>दिनको चाहिने</translation>
    </message>
    <message>
        <source>Read on the stick</source>
        <translation>लट्ठीमा देखिएको</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>पुग्यो</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>वर्षको</translation>
    </message>
    <message>
        <source>Comes in</source>
        <translation>आउने</translation>
    </message>
    <message>
        <source>Runoff of the roof</source>
        <translation>छानाबाट बगेको पानी</translation>
    </message>
    <message>
        <source>Runoff of the ground</source>
        <translation>जमिनबाट बगेको पानी</translation>
    </message>
    <message>
        <source>Rain on the tank</source>
        <translation>ट्याङ्कीमै परेको वर्षा</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>जम्मा</translation>
    </message>
    <message>
        <source>Goes out</source>
        <translation>जाने</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>वाष्पीकरण</translation>
    </message>
    <message>
        <source>Seepage</source>
        <translation>रसाउने</translation>
    </message>
    <message>
        <source>Runs over</source>
        <translation>पोखिने</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>झिकिने</translation>
    </message>
    <message>
        <source>Is needed for</source>
        <translation>केलाई चाहिने</translation>
    </message>
    <message>
        <source>People</source>
        <translation>मान्छे</translation>
    </message>
    <message>
        <source>Of this</source>
        <translation>यसमध्ये</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>अपुग</translation>
    </message>
    <message>
        <source>Means of %1. What comes in equals what goes out within %2.</source>
        <translation>%1को औसत। आउने र जाने पानी %2को फरकभित्र बराबर छ।</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 more than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>%1को औसत। औसत वर्षको अन्त्यमा ट्याङ्कीमा सुरुमा भन्दा %2 बढी हुन्छ; यो पनि गन्दा आउने र जाने पानी %3को फरकभित्र बराबर छ।</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 less than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>%1को औसत। औसत वर्षको अन्त्यमा ट्याङ्कीमा सुरुमा भन्दा %2 कम हुन्छ; यो पनि गन्दा आउने र जाने पानी %3को फरकभित्र बराबर छ।</translation>
    </message>
    <message>
        <source>almost any</source>
        <translation>लगभग जुनसुकै</translation>
    </message>
    <message>
        <source>none up to %1</source>
        <translation>%1सम्मको कुनै पनि होइन</translation>
    </message>
    <message>
        <source>none</source>
        <translation>छैन</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 वा बढी</translation>
    </message>
    <message>
        <source>Years in ten with water all year: wanted</source>
        <translation>१० मध्ये कति वर्ष वर्षभरि पानी: चाहेको</translation>
    </message>
    <message>
        <source>Years in ten with water all year: as planned</source>
        <translation>१० मध्ये कति वर्ष वर्षभरि पानी: योजनाअनुसार</translation>
    </message>
    <message>
        <source>This tank holds when full</source>
        <translation>यो ट्याङ्की भरिँदा अट्ने</translation>
    </message>
    <message>
        <source>Smallest tank for the years wanted, same depth</source>
        <translation>चाहेको वर्षलाई सबैभन्दा सानो ट्याङ्की, उही गहिराइ</translation>
    </message>
    <message>
        <source>Beds as entered</source>
        <translation>राखिएअनुसारका ड्याङ</translation>
    </message>
    <message>
        <source>Largest beds for the years wanted, this tank</source>
        <translation>चाहेको वर्षलाई सबैभन्दा ठूला ड्याङ, यही ट्याङ्कीमा</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>प्रश्न</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>उत्तर</translation>
    </message>
    <message>
        <source>Find the size of a tank at the foot of the first picture and the area of beds at its left: where they meet it says in how many years of ten the water lasts.</source>
        <translation>पहिलो चित्रको तलतिर ट्याङ्कीको साइज र बायाँतिर ड्याङको क्षेत्रफल खोज्नुहोस्: ती दुई भेटिने ठाउँले १० मध्ये कति वर्ष पानी पुग्छ देखाउँछ।</translation>
    </message>
    <message>
        <source>A finding says stop; overridden by %1, licence %2, on %3: %4.</source>
        <translation>ध्यान दिने कुराले रोक्नुहोस् भन्छ; %3मा %1ले (इजाजतपत्र %2) छुट दिएको: %4।</translation>
    </message>
    <message>
        <source>Comes in, in the month</source>
        <translation>महिनामा आउने</translation>
    </message>
    <message>
        <source>Days short of water</source>
        <translation>पानी नपुगेका दिन</translation>
    </message>
    <message>
        <source>%1, class %2</source>
        <translation>%1, श्रेणी %2</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>ट्याङ्की भरिँदा</translation>
    </message>
    <message>
        <source>Nearly empty</source>
        <translation>लगभग रित्तिँदा</translation>
    </message>
    <message>
        <source>Flow, end wide open</source>
        <translation>बहाव, छेउ पूरै खुला</translation>
    </message>
    <message>
        <source>By Hazen-Williams, to check</source>
        <translation>Hazen-Williams ले, जाँच्न</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>वेग</translation>
    </message>
    <message>
        <source>Head that drives the flow</source>
        <translation>पानी बगाउने हेड</translation>
    </message>
    <message>
        <source>Lost by friction</source>
        <translation>घर्षणमा जाने</translation>
    </message>
    <message>
        <source>Lost in bends and valves</source>
        <translation>मोड र भल्भमा जाने</translation>
    </message>
    <message>
        <source>Leaves as velocity</source>
        <translation>वेगमा जाने</translation>
    </message>
    <message>
        <source>Water over its end</source>
        <translation>छेउमाथिको पानी</translation>
    </message>
    <message>
        <source>Pressure, end shut</source>
        <translation>चाप, छेउ बन्द</translation>
    </message>
    <message>
        <source>Left of the pressure class</source>
        <translation>चाप श्रेणीमा बाँकी</translation>
    </message>
    <message>
        <source>bore measured</source>
        <translation>नापेको भित्री व्यास</translation>
    </message>
    <message>
        <source>at %1, %2 over the way before it</source>
        <translation>%1मा, अघिल्लो बाटोभन्दा %2 माथि</translation>
    </message>
    <message>
        <source>Pipe: %1; bore %2, length %3.</source>
        <translation>पाइप: %1; भित्री व्यास %2, लम्बाइ %3।</translation>
    </message>
    <message>
        <source>High points: %1.</source>
        <translation>अग्ला ठाउँ: %1।</translation>
    </message>
    <message>
        <source>Friction by Darcy-Weisbach and Colebrook-White: %1
Cross-check: %2</source>
        <translation>घर्षण Darcy-Weisbach र Colebrook-White ले: %1
अर्को तरिकाले जाँच: %2</translation>
    </message>
    <message>
        <source>As it flows</source>
        <translation>कसरी बग्छ</translation>
    </message>
    <message>
        <source>From the source to the tank</source>
        <translation>स्रोतबाट ट्याङ्कीसम्म</translation>
    </message>
    <message>
        <source>Top over the water</source>
        <translation>पानीभन्दा टुप्पो माथि</translation>
    </message>
    <message>
        <source>Most that it may be, at rest</source>
        <translation>नबगेको बेला बढीमा हुन सक्ने</translation>
    </message>
    <message>
        <source>Left of it with the valve open</source>
        <translation>भल्भ खोल्दा त्यसमा बाँकी</translation>
    </message>
    <message>
        <source>Pressure at the top, as head</source>
        <translation>टुप्पोमा चाप, हेडमा</translation>
    </message>
    <message>
        <source>Speed that clears air</source>
        <translation>हावा बगाउने वेग</translation>
    </message>
    <message>
        <source>Most flow the top allows</source>
        <translation>टुप्पोले दिने सबैभन्दा बढी बहाव</translation>
    </message>
    <message>
        <source>Water that fills it</source>
        <translation>भर्न लाग्ने पानी</translation>
    </message>
    <message>
        <source>The siphon</source>
        <translation>साइफन</translation>
    </message>
    <message>
        <source>Speed that clears air: %1</source>
        <translation>हावा बगाउने वेग: %1</translation>
    </message>
    <message>
        <source>Head left at them</source>
        <translation>त्यहाँ बाँकी हेड</translation>
    </message>
    <message>
        <source>Head wanted</source>
        <translation>चाहिने हेड</translation>
    </message>
    <message>
        <source>Outlet, %1; open at a time: %2</source>
        <translation>निकास, %1; एकै पटक खुला: %2</translation>
    </message>
    <message>
        <source>Drawing the tank down, end wide open</source>
        <translation>ट्याङ्की घटाउँदा, छेउ पूरै खुला</translation>
    </message>
    <message>
        <source>From the tank to the field</source>
        <translation>ट्याङ्कीबाट बारीसम्म</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>टाँसिने बल c</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>घर्षण φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>एकाइ तौल γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut</source>
        <translation>ठाडो कटानको उचाइ</translation>
    </message>
    <message>
        <source>This face, Culmann, just stands</source>
        <translation>यो सतह, Culmann, जेनतेन अडिने</translation>
    </message>
    <message>
        <source>This face, Culmann, factor %1</source>
        <translation>यो सतह, Culmann, गुणक %1</translation>
    </message>
    <message>
        <source>Stability number c / (γ H)</source>
        <translation>स्थिरता अङ्क c / (γ H)</translation>
    </message>
    <message>
        <source>This face by that number</source>
        <translation>यो सतह त्यो अङ्कले</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>त्यसले यो कटानको गुणक</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Vertical cut</source>
        <translation>ठाडो कटान</translation>
    </message>
    <message>
        <source>Culmann, plane slip through the toe, face β</source>
        <translation>Culmann, फेदबाट समतल पहिरो, सतह β</translation>
    </message>
    <message>
        <source>Stability number, circles through the toe</source>
        <translation>स्थिरता अङ्क, फेदबाट जाने वृत्त</translation>
    </message>
    <message>
        <source>A factor F is put on cohesion and friction alike: c / F and tan φ / F. No water in the face, no crack, nothing standing on its edge.</source>
        <translation>गुणक F टाँसिने बल र घर्षण दुवैमा उत्तिकै लगाइन्छ: c / F र tan φ / F। सतहमा पानी छैन, चिरा छैन, डिलमा केही राखिएको छैन।</translation>
    </message>
    <message>
        <source>Cut: the wall of the pit</source>
        <translation>कटान: खाडलको भित्ता</translation>
    </message>
    <message>
        <source>Face at %1 from the level, pit %2 deep, factor wanted %3.</source>
        <translation>समथरबाट सतहको कोण %1, खाडल %2 गहिरो, चाहिने गुणक %3।</translation>
    </message>
    <message>
        <source>The soil is not known, so no height is reckoned.</source>
        <translation>माटो थाहा छैन, त्यसैले उचाइको हिसाब गरिएको छैन।</translation>
    </message>
    <message>
        <source>Strength of the soil %1</source>
        <translation>माटोको बल %1</translation>
    </message>
    <message>
        <source>–: friction alone holds the face, or it lies outside the table of stability numbers. Judge by the low strengths.</source>
        <translation>–: घर्षणले मात्रै सतह थाम्छ, वा यो स्थिरता अङ्कको तालिकाभन्दा बाहिर पर्छ। कम बलका अङ्क हेरेर निर्णय गर्नुहोस्।</translation>
    </message>
    <message>
        <source>Tank empty</source>
        <translation>ट्याङ्की खाली</translation>
    </message>
    <message>
        <source>Tank full and leaking</source>
        <translation>ट्याङ्की भरि र चुहिँदो</translation>
    </message>
    <message>
        <source>lower without one</source>
        <translation>चिरा नहुँदा अझ कम</translation>
    </message>
    <message>
        <source>%1 deep, dry</source>
        <translation>%1 गहिरो, सुक्खा</translation>
    </message>
    <message>
        <source>%1 deep, %2 full of water</source>
        <translation>%1 गहिरो, %2 पानीले भरिएको</translation>
    </message>
    <message>
        <source>Lowest factor of safety; wanted</source>
        <translation>सबैभन्दा कम सुरक्षा गुणक; चाहिने</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Centre of the circle x, z</source>
        <translation>वृत्तको केन्द्र x, z</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>अर्धव्यास</translation>
    </message>
    <message>
        <source>Ends of the slip x, x</source>
        <translation>पहिरोका छेउ x, x</translation>
    </message>
    <message>
        <source>Crack</source>
        <translation>चिरा</translation>
    </message>
    <message>
        <source>Circles tried; without a factor</source>
        <translation>हेरिएका वृत्त; गुणक ननिस्केका</translation>
    </message>
    <message>
        <source>Slices; of them in pull</source>
        <translation>स्लाइस; तीमध्ये तानिएका</translation>
    </message>
    <message>
        <source>Slices in pull: the method asks the soil there to pull, which it cannot. Where there are many, look at the circle before trusting its factor.</source>
        <translation>तानिएका स्लाइस: यो तरिकाले त्यहाँको माटोलाई तन्काइ थाम्न लगाउँछ, जुन माटोले सक्दैन। यस्ता धेरै भए, गुणक पत्याउनुअघि वृत्त हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>A slip ends at the end of the section: a longer one may have a lower factor.</source>
        <translation>एउटा पहिरो सेक्सनको छेउमै टुङ्गिन्छ: अझ लामो पहिरोको गुणक कम हुन सक्छ।</translation>
    </message>
    <message>
        <source>Slip circle</source>
        <translation>पहिरो वृत्त</translation>
    </message>
    <message>
        <source>Not reckoned: the soil is not known.</source>
        <translation>हिसाब गरिएको छैन: माटो थाहा छैन।</translation>
    </message>
    <message>
        <source>Not reckoned: the ground is level and no terrace edge is entered, so there is nothing to slip.</source>
        <translation>हिसाब गरिएको छैन: जमिन समथर छ र कान्लाको डिल राखिएको छैन, त्यसैले पहिरो जाने केही छैन।</translation>
    </message>
    <message>
        <source>Downhill side: slip circles</source>
        <translation>ओरालोतिरको भाग: पहिरो वृत्त</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall, dropping at the terrace edge.</source>
        <translation>सेक्सन: ढालतिरको तयारी जमिन, कान्लाको डिलमा तल झर्ने।</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall.</source>
        <translation>सेक्सन: ढालतिरको तयारी जमिन।</translation>
    </message>
    <message>
        <source>Bishop&apos;s simplified method</source>
        <translation>Bishop को सरल तरिका</translation>
    </message>
    <message>
        <source>b width, W weight and α base slope of a slice, u water pressure on its base; P thrust of water in a crack, e its depth below the centre, R the radius. x runs downhill from the middle of the tank, z up from its finished floor.</source>
        <translation>b स्लाइसको चौडाइ, W तौल र α पिँधको ढाल, u पिँधमा पानीको चाप; P चिरामा पानीको धक्का, e केन्द्रभन्दा त्यसको गहिराइ, R अर्धव्यास। x ट्याङ्कीको बीचबाट ओरालोतिर, z तयारी भुइँबाट माथि।</translation>
    </message>
    <message>
        <source>The circles were not searched for when this page was made; there is no factor yet.</source>
        <translation>यो पृष्ठ बनाउँदा वृत्त खोजिएका थिएनन्; अझै गुणक छैन।</translation>
    </message>
    <message>
        <source>What is taken for granted</source>
        <translation>के-के मानिएको छ</translation>
    </message>
    <message>
        <source>Strengths come from tables by the name of the soil, not from tests %1.</source>
        <translation>बलका अङ्क माटोको नामअनुसार तालिकाबाट लिइएका हुन्, जाँचबाट होइन %1।</translation>
    </message>
    <message>
        <source>Low strengths are taken for the slips: cohesion %1, friction %2, unit weight %3.</source>
        <translation>पहिरोका लागि कम बल लिइएको छ: टाँसिने बल %1, घर्षण %2, एकाइ तौल %3।</translation>
    </message>
    <message>
        <source>Plane strain: the slip is as wide as the slope. No earthquake.</source>
        <translation>समतल विकृति: पहिरो पाखो जत्तिकै चौडा मानिएको छ। भूकम्प गनिएको छैन।</translation>
    </message>
    <message>
        <source>The pit counts as still full of ground, which weighs more than water and lining. Nothing else stands on the ground: no house, wall, heap or animals.</source>
        <translation>खाडल अझै माटोले भरिएको मानिन्छ, जुन पानी र अस्तरभन्दा गह्रौँ हुन्छ। जमिनमाथि अरू केही छैन: न घर, न पर्खाल, न थुप्रो, न गाईवस्तु।</translation>
    </message>
    <message>
        <source>The tank&apos;s hole has no strength: each state is searched with and without a crack as deep as the pit (no deeper than the ground falls away), and the lower factor counts. Behind a crack only slips that come out no higher than its foot are counted.</source>
        <translation>ट्याङ्कीको खाडलको कुनै बल मानिँदैन: हरेक अवस्था खाडलजत्तिकै गहिरो चिरा (जमिन झरेको ठाउँभन्दा गहिरो होइन) भएको र नभएको गरी खोजिन्छ, र कम आएको गुणक गनिन्छ। चिराको पछाडि, त्यसको फेदभन्दा माथि ननिस्किने पहिरो मात्र गनिन्छन्।</translation>
    </message>
    <message>
        <source>The terrace edge is taken to run out %1 for each 1 that it falls.</source>
        <translation>कान्लाको डिल हरेक १ तल झर्दा %1 बाहिर जाने मानिएको छ।</translation>
    </message>
    <message>
        <source>Slips shallower than %1, and those that begin more than %2 downhill from the middle of the tank, leave tank and walkway alone and are left out.</source>
        <translation>%1 भन्दा कम गहिरा पहिरो, र ट्याङ्कीको बीचबाट ओरालोतिर %2 भन्दा पर सुरु हुने पहिरोले ट्याङ्की र हिँड्ने पेटीलाई छुँदैनन्, त्यसैले छोडिएका छन्।</translation>
    </message>
    <message>
        <source>Checked by a licensed engineer</source>
        <translation>इजाजतप्राप्त इन्जिनियरले जाँचेको</translation>
    </message>
    <message>
        <source>Checked by:</source>
        <translation>जाँच्ने:</translation>
    </message>
    <message>
        <source>Licence:</source>
        <translation>इजाजतपत्र:</translation>
    </message>
    <message>
        <source>Date:</source>
        <translation>मिति:</translation>
    </message>
    <message>
        <source>Signature:</source>
        <translation>सही:</translation>
    </message>
    <message>
        <source>A calculation for a licensed engineer to check. It is not a promise that the ground stands.</source>
        <translation>यो इजाजतप्राप्त इन्जिनियरले जाँच्नुपर्ने हिसाब हो। जमिन अडिन्छ भन्ने यो वाचा होइन।</translation>
    </message>
    <message>
        <source>level with the platform</source>
        <translation>सम्याएको ठाउँकै सतहमा</translation>
    </message>
    <message>
        <source>%1 above the platform</source>
        <translation>सम्याएको ठाउँभन्दा %1 माथि</translation>
    </message>
    <message>
        <source>%1 below the platform</source>
        <translation>सम्याएको ठाउँभन्दा %1 तल</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>केही गर्नु पर्दैन</translation>
    </message>
    <message>
        <source>dig down %1</source>
        <translation>%1 खन्ने</translation>
    </message>
    <message>
        <source>fill up %1</source>
        <translation>%1 पुर्ने</translation>
    </message>
    <message>
        <source>%1: cut, %2 out</source>
        <translation>%1: कटान, %2 बाहिर</translation>
    </message>
    <message>
        <source>%1: fill, %2 out</source>
        <translation>%1: पुराइ, %2 बाहिर</translation>
    </message>
    <message>
        <source>Pegs of the platform</source>
        <translation>सम्याएको ठाउँका किला</translation>
    </message>
    <message>
        <source>Ground there</source>
        <translation>त्यहाँको जमिन</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>के गर्ने</translation>
    </message>
    <message>
        <source>Where the face ends</source>
        <translation>सतह टुङ्गिने ठाउँ</translation>
    </message>
    <message>
        <source>(chosen)</source>
        <translation>(छानिएको)</translation>
    </message>
    <message>
        <source>At which level the platform can lie</source>
        <translation>सम्याएको ठाउँ कुन उचाइमा राख्न मिल्छ</translation>
    </message>
    <message>
        <source>How the level is found</source>
        <translation>उचाइ कसरी निकालियो</translation>
    </message>
    <message>
        <source>The platform lies</source>
        <translation>सम्याएको ठाउँको उचाइ</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>कटान</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>पुराइ</translation>
    </message>
    <message>
        <source>Ground over the pit</source>
        <translation>खाडलमाथिको जमिन</translation>
    </message>
    <message>
        <source>Ground over the pit: natural ground over floor and walls of the pit where it is least. Less than nothing means that part of the tank stands on fill.</source>
        <translation>खाडलमाथिको जमिन: खाडलको पिँध र भित्तामाथि सक्कली जमिन सबैभन्दा कम भएको ठाउँको नाप। शून्यभन्दा कम भए ट्याङ्कीको केही भाग पुरेको माटोमा पर्छ।</translation>
    </message>
    <message>
        <source>Topsoil is kept apart: never under the fill, never in the plaster.</source>
        <translation>मलिलो माटो छुट्टै राख्नुहोस्: पुराइमुनि कहिल्यै नराख्नुहोस्, प्लास्टरमा कहिल्यै नहाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Cut steps into the ground under the fill, so that it cannot slide.</source>
        <translation>पुराइ चिप्लिन नपाओस् भनेर त्यसमुनिको जमिनमा खुड्किला काट्नुहोस्।</translation>
    </message>
    <message>
        <source>Fill in layers of about %1. Break clods, take out roots and straw; the ground should be damp enough to hold together when pressed in the fist.</source>
        <translation>करिब %1का तहमा पुर्नुहोस्। डल्ला फुटाउनुहोस्, जरा र पराल झिक्नुहोस्; मुठीमा थिच्दा डल्लो हुने जति ओसिलो माटो हुनुपर्छ।</translation>
    </message>
    <message>
        <source>Ram each layer until the rammer leaves hardly a mark, then bring the next. Begin at the foot and keep each layer level.</source>
        <translation>धुर्मुसको डाम लगभग बस्न छाडुन्जेल हरेक तह खाँद्नुहोस्, अनि अर्को तह हाल्नुहोस्। फेदबाट सुरु गर्नुहोस् र हरेक तह सम्म राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Never dump fill down the slope from above.</source>
        <translation>माथिबाट पाखोमा माटो खसालेर कहिल्यै नपुर्नुहोस्।</translation>
    </message>
    <message>
        <source>Steps, layers and ramming: %1.</source>
        <translation>खुड्किला, तह र खँदाइ: %1।</translation>
    </message>
    <message>
        <source>The toe of every heap stays %1 or more back from the pit edge (29 CFR 1926.651(j)(2)).</source>
        <translation>हरेक थुप्रोको फेद खाडलको डिलबाट %1 वा बढी पर रहन्छ (29 CFR 1926.651(j)(2))।</translation>
    </message>
    <message>
        <source>Earth: how to work it</source>
        <translation>माटो: कसरी काम गर्ने</translation>
    </message>
    <message>
        <source>Does the tank lose water through its lining? The sun takes water too. A bucket that floats in the tank shows how much; what the tank loses more has leaked.</source>
        <translation>ट्याङ्कीको पानी अस्तरबाट चुहिन्छ कि? घामले पनि पानी लैजान्छ। ट्याङ्कीमा तैरिने बाल्टीले कति उड्यो देखाउँछ; ट्याङ्कीबाट त्योभन्दा बढी घटेको पानी चुहिएको हो।</translation>
    </message>
    <message>
        <source>Fill the tank to the overflow. A new tank stands full for some days first, for dry plaster drinks. Choose days without rain.</source>
        <translation>ट्याङ्की ओभरफ्लोसम्म भर्नुहोस्। नयाँ ट्याङ्की पहिले केही दिन भरिएकै राख्नुहोस्, किनभने सुकेको प्लास्टरले पानी सोस्छ। पानी नपर्ने दिन छान्नुहोस्।</translation>
    </message>
    <message>
        <source>Shut inlet and outlet. No one draws water until the test is over.</source>
        <translation>पानी पस्ने मुख र निकास बन्द गर्नुहोस्। जाँच नसकिएसम्म कसैले पानी नझिक्ने।</translation>
    </message>
    <message>
        <source>Measure with a ruler, to the millimetre: in the tank from a mark on the rim down to the water, in the bucket from a mark on its edge down to the water.</source>
        <translation>रुलरले मिलिमिटरसम्म नाप्नुहोस्: ट्याङ्कीमा बिटको चिनोबाट तल पानीसम्म, बाल्टीमा त्यसको मुखको चिनोबाट तल पानीसम्म।</translation>
    </message>
    <message>
        <source>Measure both again at the same hour on the next day, and on two days more. Rain in between: begin again.</source>
        <translation>दुवै भोलिपल्ट त्यही समयमा फेरि नाप्नुहोस्, र थप दुई दिन पनि। बीचमा पानी परे: फेरि सुरुदेखि गर्नुहोस्।</translation>
    </message>
    <message>
        <source>Leak = fall in the tank less fall in the bucket, in millimetres, for one day.</source>
        <translation>चुहावट = ट्याङ्कीमा घटेको − बाल्टीमा घटेको, मिलिमिटरमा, एक दिनको।</translation>
    </message>
    <message>
        <source>In this tank, full, one millimetre is %1.</source>
        <translation>यो ट्याङ्की भरिएको बेला एक मिलिमिटर भनेको %1 हो।</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>चुहावट</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>%1सम्म</translation>
    </message>
    <message>
        <source>Tight. Nothing to do; test again each year.</source>
        <translation>चुहिँदैन। केही गर्नु पर्दैन; हरेक वर्ष फेरि जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>more, up to %1</source>
        <translation>बढी, %1सम्म</translation>
    </message>
    <message>
        <source>Watch: look for wet ground; test again in some weeks.</source>
        <translation>हेरिरहनुहोस्: भिजेको जमिन खोज्नुहोस्; केही हप्तापछि फेरि जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>Find the cracks and mend them; then test again.</source>
        <translation>चिरा खोजेर मर्मत गर्नुहोस्; अनि फेरि जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>%1 भन्दा बढी</translation>
    </message>
    <message>
        <source>Let no more water in, empty the tank and mend it.</source>
        <translation>थप पानी पस्न नदिनुहोस्, ट्याङ्की रित्याउनुहोस् र मर्मत गर्नुहोस्।</translation>
    </message>
    <message>
        <source>These limits: %1.</source>
        <translation>यी सीमा: %1।</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>समय</translation>
    </message>
    <message>
        <source>Tank, mm</source>
        <translation>ट्याङ्की, mm</translation>
    </message>
    <message>
        <source>Bucket, mm</source>
        <translation>बाल्टी, mm</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>सही</translation>
    </message>
    <message>
        <source>notch, %1 wide</source>
        <translation>खाँचा, %1 चौडा</translation>
    </message>
    <message>
        <source>pipe, %1 inside</source>
        <translation>पाइप, भित्र %1</translation>
    </message>
    <message>
        <source>Roof led in</source>
        <translation>पानी ल्याइएको छाना</translation>
    </message>
    <message>
        <source>Ground led in</source>
        <translation>पानी ल्याइएको जमिन</translation>
    </message>
    <message>
        <source>The tank&apos;s own opening</source>
        <translation>ट्याङ्कीकै मुख</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>मुसलधारे वर्षा</translation>
    </message>
    <message>
        <source>%1, planning value</source>
        <translation>%1, योजनाका लागि मानिएको</translation>
    </message>
    <message>
        <source>Rain that runs in</source>
        <translation>पस्ने वर्षा</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>स्रोतबाट</translation>
    </message>
    <message>
        <source>What runs in</source>
        <translation>पस्ने पानी</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>ओभरफ्लो</translation>
    </message>
    <message>
        <source>Water over its sill</source>
        <translation>सँघारमाथिको पानी</translation>
    </message>
    <message>
        <source>Freeboard left in the storm</source>
        <translation>मुसलधारे वर्षामा बाँकी फ्रिबोर्ड</translation>
    </message>
    <message>
        <source>Freeboard wanted</source>
        <translation>चाहिने फ्रिबोर्ड</translation>
    </message>
    <message>
        <source>Passes with water at the rim</source>
        <translation>पानी बिटसम्म हुँदा जाने</translation>
    </message>
    <message>
        <source>Overflow free</source>
        <translation>ओभरफ्लो खुला</translation>
    </message>
    <message>
        <source>over the low part of the rim</source>
        <translation>होचो बिटमाथि</translation>
    </message>
    <message>
        <source>over the rest of the rim</source>
        <translation>बाँकी बिटमाथि</translation>
    </message>
    <message>
        <source>Overflow blocked</source>
        <translation>ओभरफ्लो टालिँदा</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>गहिराइ</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>Bottom width and depth of the channel</source>
        <translation>कुलोको पिँधको चौडाइ र गहिराइ</translation>
    </message>
    <message>
        <source>Fall</source>
        <translation>ढाल</translation>
    </message>
    <message>
        <source>Water in it</source>
        <translation>त्यसमा पानी</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>वेग</translation>
    </message>
    <message>
        <source>Spill channel</source>
        <translation>ओभरफ्लोको कुलो</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>चौडाइ</translation>
    </message>
    <message>
        <source>Depth, all together</source>
        <translation>गहिराइ, जम्मा</translation>
    </message>
    <message>
        <source>Of it for water that settles</source>
        <translation>त्यसमध्ये थेग्रिने पानीलाई</translation>
    </message>
    <message>
        <source>Of it for mud</source>
        <translation>त्यसमध्ये हिलोलाई</translation>
    </message>
    <message>
        <source>The grain sinks</source>
        <translation>दाना डुब्ने वेग</translation>
    </message>
    <message>
        <source>%1 a second</source>
        <translation>सेकेन्डको %1</translation>
    </message>
    <message>
        <source>Water may run through at most at</source>
        <translation>पानी बढीमा यति वेगले बग्न हुने</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>थेग्रो कुण्ड</translation>
    </message>
    <message>
        <source>Smallest grain that must stay behind</source>
        <translation>रोकिनुपर्ने सबैभन्दा सानो दाना</translation>
    </message>
    <message>
        <source>%1, source and storm</source>
        <translation>%1, स्रोत र मुसलधारे वर्षा</translation>
    </message>
    <message>
        <source>Clean it out every</source>
        <translation>यति समयमा सफा गर्ने</translation>
    </message>
    <message>
        <source>For the grain named</source>
        <translation>भनिएको दानाका लागि</translation>
    </message>
    <message>
        <source>Area, speed and mud: %1</source>
        <translation>क्षेत्रफल, वेग र हिलो: %1</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>पुग्यो</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>पुगेन</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>चुहावट जाँच</translation>
    </message>
    <message>
        <source>Tank falls</source>
        <translation>ट्याङ्कीमा घटेको</translation>
    </message>
    <message>
        <source>Bucket falls: evaporation</source>
        <translation>बाल्टीमा घटेको: वाष्पीकरण</translation>
    </message>
    <message>
        <source>Error of the readings, either way</source>
        <translation>नापको गल्ती, दुवैतिर</translation>
    </message>
    <message>
        <source>Water lost</source>
        <translation>गएको पानी</translation>
    </message>
    <message>
        <source>Share of the water a day</source>
        <translation>दिनमा पानीको भाग</translation>
    </message>
    <message>
        <source>Published marks for concrete tanks</source>
        <translation>कङ्क्रिट ट्याङ्कीका प्रकाशित सीमा</translation>
    </message>
    <message>
        <source>Allows</source>
        <translation>मिल्ने</translation>
    </message>
    <message>
        <source>This tank</source>
        <translation>यो ट्याङ्की</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>जमिन र सम्याएको ठाउँ</translation>
    </message>
    <message>
        <source>Pipes and siphon</source>
        <translation>पाइप र साइफन</translation>
    </message>
    <message>
        <source>Overflow, silt trap and leak test</source>
        <translation>ओभरफ्लो, थेग्रो कुण्ड र चुहावट जाँच</translation>
    </message>
    <message>
        <source>Engineer&apos;s calculation: cut and downhill side</source>
        <translation>इन्जिनियरको हिसाब: कटान र ओरालोतिरको भाग</translation>
    </message>
    <message>
        <source>Thresholds of site and safety</source>
        <translation>ठाउँ र सुरक्षाका सीमा</translation>
    </message>
    <message>
        <source>From these numbers findings about site and safety are raised. A practitioner should question those that no published source stands behind.</source>
        <translation>ठाउँ र सुरक्षाका ध्यान दिने कुरा यी अङ्कबाट निस्कन्छन्। प्रकाशित आधार नभएका अङ्कमा जानकार प्राविधिकले प्रश्न उठाउनुपर्छ।</translation>
    </message>
    <message>
        <source>Fill counts as loose fill: cohesion %1, friction %2, unit weight %3.</source>
        <translation>पुराइलाई पुरेको खुकुलो माटो मानिन्छ: टाँसिने बल %1, घर्षण %2, एकाइ तौल %3।</translation>
    </message>
    <message>
        <source>With the tank empty the ground is dry down to the ground water entered. With the tank full and leaking, water stands in the ground as drawn: level with the tank&apos;s water to the pit edge, from there straight to where the ground lies as low as the pit floor.</source>
        <translation>ट्याङ्की खाली हुँदा जमिन राखिएको जमिनमुनिको पानीसम्म सुक्खा मानिन्छ। ट्याङ्की भरि र चुहिँदो हुँदा पानी नक्सामा देखाएजस्तै जमिनभित्र हुन्छ: खाडलको डिलसम्म ट्याङ्कीको पानीकै सतहमा, त्यहाँबाट जमिन खाडलको पिँध जति तल पुग्ने ठाउँसम्म सीधा।</translation>
    </message>
    <message>
        <source>Set a light bucket afloat, tied so that it stands clear of the walls. Fill it with water until only a hand&apos;s breadth of it stays dry, so that it floats upright and deep.</source>
        <translation>भित्तामा नछोइने गरी बाँधेर एउटा हलुका बाल्टी पानीमा तैराउनुहोस्। ठाडो र गहिरो तैरियोस् भनेर, एक हत्केलाको चौडाइ जति मात्र सुक्खा रहने गरी त्यसमा पानी भर्नुहोस्।</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains from</source>
        <translation>अहिलेको कुण्डले रोक्ने दाना</translation>
    </message>
    <message>
        <source>Mud is brought by</source>
        <translation>हिलो ल्याउने</translation>
    </message>
    <message>
        <source>the source, and one hour of the storm</source>
        <translation>स्रोत, र एक घण्टाको मुसलधारे वर्षा</translation>
    </message>
    <message>
        <source>A peg P is a corner of the platform. Heights are told from the finished platform, which the rim of the tank is level with. A peg Q stands straight out from the corner of its number, where the face of the cut or the fill meets the ground.</source>
        <translation>P किला सम्याएको ठाउँको कुना हो। उचाइ तयार भएको सम्याएको ठाउँबाट भनिन्छ, ट्याङ्कीको बिट त्यसकै सतहमा हुन्छ। Q किला उही अङ्कको कुनाबाट सीधा बाहिर, कटान वा पुराइको सतह जमिनमा भेटिने ठाउँमा हुन्छ।</translation>
    </message>
    <message>
        <source>Materials together</source>
        <translation>सामग्री, जम्मा</translation>
    </message>
    <message>
        <source>Wages together</source>
        <translation>ज्याला, जम्मा</translation>
    </message>
    <message>
        <source>Other things together</source>
        <translation>अन्य चिज, जम्मा</translation>
    </message>
    <message>
        <source>For what</source>
        <translation>केका लागि</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>कति</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>एउटाको मूल्य</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>रकम</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>योगदान</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>नगद</translation>
    </message>
    <message>
        <source>%1; split each piece into %2</source>
        <translation>%1; एउटालाई %2 टुक्रा पार्ने</translation>
    </message>
    <message>
        <source>Carrying it to the place</source>
        <translation>ठाउँसम्म ढुवानी</translation>
    </message>
    <message>
        <source>By</source>
        <translation>बोक्ने</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>तौल</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>भारी</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>एक्लैले बोक्ने दिन</translation>
    </message>
    <message>
        <source>Wages</source>
        <translation>ज्याला</translation>
    </message>
    <message>
        <source>Other things</source>
        <translation>अन्य चिज</translation>
    </message>
    <message>
        <source>Carrying</source>
        <translation>ढुवानी</translation>
    </message>
    <message>
        <source>Put aside for what is not foreseen, %1</source>
        <translation>भैपरी खर्चका लागि छुट्याएको, %1</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>जम्मा</translation>
    </message>
    <message>
        <source>Of it given in work and kind</source>
        <translation>त्यसमध्ये श्रम र सामानको योगदान</translation>
    </message>
    <message>
        <source>Of it in cash</source>
        <translation>त्यसमध्ये नगद</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>मन्जुरी</translation>
    </message>
    <message>
        <source>For</source>
        <translation>का तर्फबाट</translation>
    </message>
    <message>
        <source>Name and date</source>
        <translation>नाम र मिति</translation>
    </message>
    <message>
        <source>or thumb</source>
        <translation>वा औंठाछाप</translation>
    </message>
    <message>
        <source>the household or group</source>
        <translation>घरपरिवार वा समूह</translation>
    </message>
    <message>
        <source>masons and labourers</source>
        <translation>डकर्मी र ज्यामी</translation>
    </message>
    <message>
        <source>who pays a share</source>
        <translation>भाग तिर्ने</translation>
    </message>
    <message>
        <source>a witness</source>
        <translation>साक्षी</translation>
    </message>
    <message>
        <source>%1, after a quarter of the day</source>
        <translation>%1, दिनको चौथाइ बितेपछि</translation>
    </message>
    <message>
        <source>%1, for the last quarter of the day</source>
        <translation>%1, दिनको अन्तिम चौथाइमा</translation>
    </message>
    <message>
        <source>%1, at midday</source>
        <translation>%1, मध्यदिनमा</translation>
    </message>
    <message>
        <source>%1 for wetting</source>
        <translation>भिजाउन %1</translation>
    </message>
    <message>
        <source>%1, masons among them: %2</source>
        <translation>%1, तीमध्ये डकर्मी: %2</translation>
    </message>
    <message>
        <source>%1, rest days too</source>
        <translation>%1, बिदाको दिन पनि</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>ढिलो गर्न नमिल्ने</translation>
    </message>
    <message>
        <source>may slip %1</source>
        <translation>%1 ढिलो गर्न मिल्ने</translation>
    </message>
    <message>
        <source>Solid bar: work. Hatched bar: keep wet, rest days too. Open bar: the tank fills or is watched. Triangle alone: last day.</source>
        <translation>भरिएको पट्टी: काम। धर्का भएको पट्टी: भिजाइराख्ने, बिदाको दिन पनि। खाली पट्टी: ट्याङ्की भरिने वा हेर्ने बेला। त्रिभुज मात्र: अन्तिम दिन।</translation>
    </message>
    <message>
        <source>Arrow at the right: later than these bars reach.</source>
        <translation>दायाँको तीर: यी पट्टीले भेट्नेभन्दा पछि।</translation>
    </message>
    <message>
        <source>No room to slip: when this is late, the end is late.</source>
        <translation>ढिलो गर्न नमिल्ने: यो ढिलो भए सबै काम सकिने दिन ढिलो हुन्छ।</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>दिनको %1</translation>
    </message>
    <message>
        <source>%1, what the source gives</source>
        <translation>%1, स्रोतले दिने</translation>
    </message>
    <message>
        <source>%1, as entered</source>
        <translation>%1, राखिएअनुसार</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>पानी भर्न सुरु</translation>
    </message>
    <message>
        <source>It must start no later than</source>
        <translation>योभन्दा ढिलो नगर्ने</translation>
    </message>
    <message>
        <source>The tank is full on</source>
        <translation>ट्याङ्की भरिने दिन</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>एक वर्षभित्र भरिँदैन</translation>
    </message>
    <message>
        <source>Flows in on the first day</source>
        <translation>पहिलो दिन आउने पानी</translation>
    </message>
    <message>
        <source>The water may rise in a day by at most</source>
        <translation>एक दिनमा पानी बढीमा यति चढ्न हुने</translation>
    </message>
    <message>
        <source>Water for sacks after the last curing day</source>
        <translation>क्योरिङको अन्तिम दिनपछि जुट भिजाउने पानी</translation>
    </message>
    <message>
        <source>Water to bring by hand, to cover all walls in time</source>
        <translation>समयमै सबै भित्ता छोप्न हातले बोकेर ल्याउनुपर्ने पानी</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>पानी भर्ने</translation>
    </message>
    <message>
        <source>Walls that stay under wet sacks until the water covers them</source>
        <translation>पानीले नछोपेसम्म भिजेको जुटमुनि रहने भित्ता</translation>
    </message>
    <message>
        <source>Height above the finished floor</source>
        <translation>तयारी भुइँमाथिको उचाइ</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>भित्ता</translation>
    </message>
    <message>
        <source>Keep wet until</source>
        <translation>यो दिनसम्म भिजाइराख्ने</translation>
    </message>
    <message>
        <source>Wet for</source>
        <translation>भिजाउने अवधि</translation>
    </message>
    <message>
        <source>The water rises, first by days, then by weeks</source>
        <translation>पानी कसरी चढ्छ, पहिले दिनदिनै, अनि हप्ता-हप्ता</translation>
    </message>
    <message>
        <source>The water rises day by day</source>
        <translation>पानी दिनदिनै कसरी चढ्छ</translation>
    </message>
    <message>
        <source>Level: above the finished floor, in the evening of the day, or of the week&apos;s last day. Write beside it what the rod shows.</source>
        <translation>सतह: तयारी भुइँभन्दा माथि, त्यो दिनको वा हप्ताको अन्तिम दिनको बेलुका। लट्ठीले जे देखाउँछ छेउमा लेख्नुहोस्।</translation>
    </message>
    <message>
        <source>Day or week</source>
        <translation>दिन वा हप्ता</translation>
    </message>
    <message>
        <source>Runs in</source>
        <translation>पस्ने पानी</translation>
    </message>
    <message>
        <source>To wet sacks</source>
        <translation>जुट भिजाउन</translation>
    </message>
    <message>
        <source>Level measured</source>
        <translation>नापेको सतह</translation>
    </message>
    <message>
        <source>No one enters the tank while it fills. The fence stands, ladder and rope hang inside.</source>
        <translation>पानी भरिँदै गर्दा कोही पनि ट्याङ्कीभित्र नपस्ने। बार लगाइराख्ने, भर्‍याङ र डोरी भित्र झुन्ड्याइराख्ने।</translation>
    </message>
    <message>
        <source>Filling begun on:</source>
        <translation>पानी भर्न थालेको:</translation>
    </message>
    <message>
        <source>Full on:</source>
        <translation>भरिएको:</translation>
    </message>
    <message>
        <source>Hour %1</source>
        <translation>घण्टा %1</translation>
    </message>
    <message>
        <source>Place the coat in one go, within %1: %2 people needed, %3 planned; masons among them: %4 needed, %5 planned.</source>
        <translation>पत्र एकै दिनमा, %1भित्र लगाउनुहोस्: मान्छे चाहिने %2, योजनामा %3; तीमध्ये डकर्मी: चाहिने %4, योजनामा %5।</translation>
    </message>
    <message>
        <source>Price of the lining</source>
        <translation>अस्तरको मूल्य</translation>
    </message>
    <message>
        <source>Digging and platform</source>
        <translation>खन्ने र सम्याउने</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>सुरु लगानी</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>आयु</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>गुणक</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>वार्षिक मर्मत-सम्भार</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>वार्षिक लागत</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>अट्ने हरेक m³को वार्षिक लागत</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>अस्तर</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>वार्षिक लागतअनुसार अस्तर</translation>
    </message>
    <message>
        <source>Cost a year = capital × factor + upkeep; factor = i (1 + i)^n / ((1 + i)^n − 1), with i interest a year (%1 %2) and n life in years %3.</source>
        <translation>वार्षिक लागत = सुरु लगानी × गुणक + मर्मत-सम्भार; गुणक = i (1 + i)^n / ((1 + i)^n − 1), जहाँ i वार्षिक ब्याज (%1 %2) र n आयु वर्षमा %3।</translation>
    </message>
    <message>
        <source>Cost of a cubic metre</source>
        <translation>एक घनमिटरको लागत</translation>
    </message>
    <message>
        <source>Each m³ held = the whole bill ÷ water when full: %1 ÷ %2 = %3.</source>
        <translation>अट्ने हरेक m³ = पूरा खर्च हिसाब ÷ भरिँदाको पानी: %1 ÷ %2 = %3।</translation>
    </message>
    <message>
        <source>Dry months, with rain below half of the reference evapotranspiration %1: %2.</source>
        <translation>सुक्खा महिना, जसमा वर्षा सन्दर्भ वाष्पोत्सर्जनको आधाभन्दा कम हुन्छ %1: %2।</translation>
    </message>
    <message>
        <source>What a m³ delivered costs is not reckoned: whether the water lasts is not asked.</source>
        <translation>झिकिने एक m³ कति पर्छ हिसाब गरिएको छैन: पानी पुग्छ कि भनेर सोधिएको छैन।</translation>
    </message>
    <message>
        <source>Cash needed, first by days, then by weeks</source>
        <translation>चाहिने नगद, पहिले दिनदिनै, अनि हप्ता-हप्ता</translation>
    </message>
    <message>
        <source>Goods and carrying</source>
        <translation>सामान र ढुवानी</translation>
    </message>
    <message>
        <source>Together so far</source>
        <translation>अहिलेसम्म जम्मा</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>पुग्छ</translation>
    </message>
    <message>
        <source>TOO FEW</source>
        <translation>पुग्दैन</translation>
    </message>
    <message>
        <source>People on the coat</source>
        <translation>पत्रमा लाग्ने मान्छे</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>तीमध्ये डकर्मी</translation>
    </message>
    <message>
        <source>Batches an hour</source>
        <translation>घण्टाको घान</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>मसला मुछ्ने ठाउँ</translation>
    </message>
    <message>
        <source>In one go</source>
        <translation>एकै दिनमा</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>चाहिने</translation>
    </message>
    <message>
        <source>There</source>
        <translation>भएको</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>समयमै</translation>
    </message>
    <message>
        <source>TOO LATE</source>
        <translation>ढिलो हुन्छ</translation>
    </message>
    <message>
        <source>Putting on a batch</source>
        <translation>एक घान लगाउने</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>लाग्ने</translation>
    </message>
    <message>
        <source>may take</source>
        <translation>लाग्न हुने</translation>
    </message>
    <message>
        <source>with a whole bag</source>
        <translation>पूरा बोराले</translation>
    </message>
    <message>
        <source>with half a bag</source>
        <translation>आधा बोराले</translation>
    </message>
    <message>
        <source>Ready beside the pit before the first batch</source>
        <translation>पहिलो घानअघि खाडलछेउ तयार राख्ने</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>तयार</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>सिमेन्टका बोरा</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>मुछ्ने पानी</translation>
    </message>
    <message>
        <source>Sacks to cover the coat</source>
        <translation>पत्र छोप्ने जुट</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for each; by the end of an hour its row must be full.</source>
        <translation>पूरा बोराका घान: %1। हरेकमा एउटा कोठामा चिनो लगाउनुहोस्; घण्टा सकिँदा त्यसको पङ्क्ति भरिएको हुनुपर्छ।</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for every %2; by the end of an hour its row must be full.</source>
        <translation>पूरा बोराका घान: %1। हरेक %2मा एउटा कोठामा चिनो लगाउनुहोस्; घण्टा सकिँदा त्यसको पङ्क्ति भरिएको हुनुपर्छ।</translation>
    </message>
    <message>
        <source>Coat %1, within %2: %3 of work</source>
        <translation>पत्र %1, %2भित्र: %3को काम</translation>
    </message>
    <message>
        <source>A coat that is begun is finished the same day: plaster put beside plaster that has set does not hold water.</source>
        <translation>सुरु गरेको पत्र त्यही दिन सक्नैपर्छ: जमिसकेको प्लास्टरको छेउमा लगाएको प्लास्टरले पानी थाम्दैन।</translation>
    </message>
    <message>
        <source>Option %1 cannot be built: %2</source>
        <translation>विकल्प %1 बनाउन सकिँदैन: %2</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>के आउँछ</translation>
    </message>
    <message>
        <source>Lines that are the same in all options are left out.</source>
        <translation>सबै विकल्पमा उस्तै भएका लाइन छोडिएका छन्।</translation>
    </message>
    <message>
        <source>Each coat in one go</source>
        <translation>हरेक पत्र एकै दिनमा</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहिलो पानी भराइ</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>खर्च हिसाब र भाग</translation>
    </message>
    <message>
        <source>Works: tasks, people and weather</source>
        <translation>निर्माण: काम, मान्छे र मौसम</translation>
    </message>
    <message>
        <source>Money: linings and ranges</source>
        <translation>पैसा: अस्तर र दायरा</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>विकल्प सँगसँगै</translation>
    </message>
    <message>
        <source>As entered</source>
        <translation>राखिएअनुसार</translation>
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
        <translation>राखिएको अङ्क</translation>
    </message>
    <message>
        <source>What drives the spread</source>
        <translation>घटबढ केले ल्याउँछ</translation>
    </message>
    <message>
        <source>Low and high: how far an input may lie from what is entered. Then its share of the spread; +: more of the input makes more, −: more of it makes less.</source>
        <translation>कम र बढी: राखिएको अङ्कबाट कति टाढा हुन सक्छ। त्यसपछि घटबढमा त्यसको भाग; +: यो बढ्दा नतिजा बढ्छ, −: यो बढ्दा नतिजा घट्छ।</translation>
    </message>
    <message>
        <source>How sure the numbers are</source>
        <translation>अङ्कहरू कति पक्का छन्</translation>
    </message>
    <message>
        <source>The ranges were not drawn when this page was made.</source>
        <translation>यो पृष्ठ बनाउँदा दायराको गोला हालिएको थिएन।</translation>
    </message>
    <message>
        <source>%1 draws; each input triangular between low and high about what is entered. 1 draw in 10 is below P10, half are below P50, 9 in 10 below P90. The draws start with the number %2: the same number gives the same answer.</source>
        <translation>%1 गोला; हरेक अङ्क राखिएको अङ्कको वरिपरि कम र बढीबीच त्रिभुजाकार बाँडिन्छ। १० मध्ये १ गोला P10 भन्दा तल, आधा P50 भन्दा तल, १० मध्ये ९ P90 भन्दा तल पर्छ। गोला %2 अङ्कबाट सुरु हुन्छ: उही अङ्कले उही उत्तर दिन्छ।</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>यो दिनदेखिको हप्ता</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>ठीक</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>तुसारो</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>गर्मी</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries is not reckoned: humidity or wind is not known.</source>
        <translation>ताजा प्लास्टर कति चाँडो सुक्छ हिसाब गरिएको छैन: आर्द्रता वा हावा थाहा छैन।</translation>
    </message>
    <message>
        <source>km/h</source>
        <translation>km/h</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries</source>
        <translation>ताजा प्लास्टर कति चाँडो सुक्छ</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>पत्र</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>हावा</translation>
    </message>
    <message>
        <source>E water lost in kg for each m² and hour, Tc and Ta plaster and air in °C, r humidity from 0 to 1, V wind in km/h; the mean weather of the week, plaster as warm as the air.</source>
        <translation>E हरेक m² र घण्टामा जाने पानी kg मा, Tc र Ta प्लास्टर र हावाको तापक्रम °C मा, r आर्द्रता ० देखि १, V हावाको गति km/h मा; त्यो हप्ताको औसत मौसम, प्लास्टर हावा जत्तिकै तातो मानेर।</translation>
    </message>
    <message>
        <source>Weather window: how often coats stay undisturbed, week by week</source>
        <translation>मौसम मिल्ने हप्ता: पत्रमा कति पटक बाधा पर्दैन, हप्तैपिच्छे</translation>
    </message>
    <message>
        <source>Good: nothing disturbs, of all start days of the week and %1 of weather. Rain: %2 or more on the day of a coat or the day after. Frost: a night at or below 0 °C within 7 days of a coat. Heat: a day of a coat outside 5 to 35 °C. * week of the first coat as planned; + best week.</source>
        <translation>ठीक: केहीले बाधा दिँदैन, हप्ताका सबै सुरु दिन र मौसमका %1मध्ये। वर्षा: पत्र लगाएको दिन वा भोलिपल्ट %2 वा बढी। तुसारो: पत्र लगाएको ७ दिनभित्र ० °C वा कमको रात। गर्मी: पत्र लगाएको दिन ५ देखि ३५ °C भन्दा बाहिर। * योजनाअनुसार पहिलो पत्रको हप्ता; + सबैभन्दा राम्रो हप्ता।</translation>
    </message>
    <message>
        <source>wetted</source>
        <translation>भिजाइयो</translation>
    </message>
    <message>
        <source>all %1 times</source>
        <translation>सबै %1 पटक</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>पानी</translation>
    </message>
    <message>
        <source>Water covers it on</source>
        <translation>पानीले छोप्ने दिन</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>छोपियो</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>%1 देखि माथि</translation>
    </message>
    <message>
        <source>Wet the walls</source>
        <translation>भित्ता भिजाउने</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>हप्ता</translation>
    </message>
    <message>
        <source>Water a day, at most</source>
        <translation>दिनको पानी, बढीमा</translation>
    </message>
    <message>
        <source>Later weeks: a box for each day</source>
        <translation>पछिका हप्ता: हरेक दिनको एउटा कोठा</translation>
    </message>
    <message>
        <source>While the tank fills: walls that the water has not reached</source>
        <translation>ट्याङ्की भरिँदै गर्दा: पानी नपुगेका भित्ता</translation>
    </message>
    <message>
        <source>When the water covers the walls is not known, or takes more than a year. Sacks stay wet on every wall up to the overflow until water covers it.</source>
        <translation>पानीले भित्ता कहिले छोप्छ थाहा छैन, वा एक वर्षभन्दा बढी लाग्छ। पानीले नछोपेसम्म ओभरफ्लोसम्मका सबै भित्तामा जुट भिजाइराख्नुहोस्।</translation>
    </message>
    <message>
        <source>After the curing days</source>
        <translation>क्योरिङका दिनपछि</translation>
    </message>
    <message>
        <source>Water: for all wetting on that day.</source>
        <translation>पानी: त्यो दिनको सबै भिजाइका लागि।</translation>
    </message>
    <message>
        <source>%1; not before %2, as wished</source>
        <translation>%1; %2 भन्दा अघि होइन, चाहनाअनुसार</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation>छैन</translation>
    </message>
    <message>
        <source>All tasks</source>
        <translation>सबै काम</translation>
    </message>
    <message>
        <source>Heavy type and NONE: no room to slip. Curing, filling and watching count all days, other tasks the days that are worked.</source>
        <translation>मोटो अक्षर र “छैन”: ढिलो गर्न नमिल्ने। क्योरिङ, पानी भर्ने र हेर्ने काममा सबै दिन गनिन्छन्, अरू काममा काम हुने दिन मात्र।</translation>
    </message>
    <message>
        <source>Starts</source>
        <translation>सुरु</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>सकिने</translation>
    </message>
    <message>
        <source>starts after the end of: %1</source>
        <translation>यो सकिएपछि सुरु हुन्छ: %1</translation>
    </message>
    <message>
        <source>starts after the start of: %1</source>
        <translation>यो सुरु भएपछि सुरु हुन्छ: %1</translation>
    </message>
    <message>
        <source>ends after the end of: %1</source>
        <translation>यो सकिएपछि सकिन्छ: %1</translation>
    </message>
    <message>
        <source>ends after the start of: %1</source>
        <translation>यो सुरु भएपछि सकिन्छ: %1</translation>
    </message>
    <message>
        <source>What waits for what</source>
        <translation>कुन कामले कुनलाई पर्खन्छ</translation>
    </message>
    <message>
        <source>Its order</source>
        <translation>यसको क्रम</translation>
    </message>
    <message>
        <source>People by day</source>
        <translation>दिनदिनका मान्छे</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>ज्यामी</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>डकर्मी</translation>
    </message>
    <message>
        <source>Wetting</source>
        <translation>भिजाउने</translation>
    </message>
    <message>
        <source>Dates: critical path method, forward and backward pass %1. Room: days that a task may slip before the last day moves.</source>
        <translation>मिति: क्रिटिकल पाथ तरिका, अगाडि र पछाडिबाट हिसाब गरेर %1। ढिलो गर्न मिल्ने: अन्तिम दिन नसारी कुनै काम जति दिन ढिलो हुन सक्छ।</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>हरेक कामको जनदिन</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>लिइएको</translation>
    </message>
    <message>
        <source>Digging the pit by the published norm: %1; by what is told of earlier tanks: %2.</source>
        <translation>खाडल खन्न प्रकाशित दरले: %1; पहिलेका ट्याङ्कीबारे भनिएअनुसार: %2।</translation>
    </message>
    <message>
        <source>Rates in force</source>
        <translation>चलिरहेका दर</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>ठाउँमै नापिएको</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>रेकर्ड</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>सबैभन्दा कम</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>बीचको मान</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>सबैभन्दा बढी</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>राखिएको</translation>
    </message>
    <message>
        <source>Not in these sums, for the price, the weight or how much is needed is not known: %1.</source>
        <translation>मूल्य, तौल वा कति चाहिन्छ थाहा नभएकाले यी जम्मामा नपरेका: %1।</translation>
    </message>
    <message>
        <source>%1 to watch</source>
        <translation>%1 हेर्ने</translation>
    </message>
    <message>
        <source>Soil-cement without a price of its own: materials, their carriage and the work of stone bed, coats and curing, with %1 for what is not foreseen, as on digging and platform. Other prices are as entered.</source>
        <translation>आफ्नै मूल्य नभएको माटो-सिमेन्ट: सामग्री, तिनको ढुवानी र ढुङ्गाको सोलिङ, पत्र र क्योरिङको काम, भैपरी खर्च %1 सहित, खन्ने र सम्याउने कामजस्तै। अरू मूल्य राखिएअनुसार।</translation>
    </message>
    <message>
        <source>Not reckoned while prices are missing.</source>
        <translation>मूल्य छुटेसम्म हिसाब गरिँदैन।</translation>
    </message>
    <message>
        <source>Each m³ delivered = cost of the whole tank a year (the bill × the factor of soil-cement + its upkeep) ÷ water drawn in the dry months of a mean year: %1 ÷ %2 = %3.</source>
        <translation>झिकिने हरेक m³ = पूरा ट्याङ्कीको वार्षिक लागत (खर्च हिसाब × माटो-सिमेन्टको गुणक + मर्मत-सम्भार) ÷ औसत वर्षका सुक्खा महिनामा झिकिएको पानी: %1 ÷ %2 = %3।</translation>
    </message>
    <message>
        <source>≠ and heavy type: not as in A</source>
        <translation>≠ र मोटो अक्षर: A मा भन्दा फरक</translation>
    </message>
    <message>
        <source>all of the coat</source>
        <translation>पूरै पत्र</translation>
    </message>
    <message>
        <source>Until the next coat goes on</source>
        <translation>अर्को पत्र नलगाएसम्म</translation>
    </message>
    <message>
        <source>Room, days</source>
        <translation>ढिलो गर्न मिल्ने, दिन</translation>
    </message>
    <message>
        <source>starts %2 after the end of: %1</source>
        <translation>यो सकिएको %2 पछि सुरु हुन्छ: %1</translation>
    </message>
    <message>
        <source>starts %2 before the end of: %1</source>
        <translation>यो सकिनुभन्दा %2 अघि सुरु हुन्छ: %1</translation>
    </message>
    <message>
        <source>starts %2 after the start of: %1</source>
        <translation>यो सुरु भएको %2 पछि सुरु हुन्छ: %1</translation>
    </message>
    <message>
        <source>starts %2 before the start of: %1</source>
        <translation>यो सुरु हुनुभन्दा %2 अघि सुरु हुन्छ: %1</translation>
    </message>
    <message>
        <source>ends %2 after the end of: %1</source>
        <translation>यो सकिएको %2 पछि सकिन्छ: %1</translation>
    </message>
    <message>
        <source>ends %2 before the end of: %1</source>
        <translation>यो सकिनुभन्दा %2 अघि सकिन्छ: %1</translation>
    </message>
    <message>
        <source>ends %2 after the start of: %1</source>
        <translation>यो सुरु भएको %2 पछि सकिन्छ: %1</translation>
    </message>
    <message>
        <source>ends %2 before the start of: %1</source>
        <translation>यो सुरु हुनुभन्दा %2 अघि सकिन्छ: %1</translation>
    </message>
    <message>
        <source>%1 (rest days counted)</source>
        <translation>%1 (बिदाका दिन पनि गनेर)</translation>
    </message>
    <message>
        <source>%1. From: %2. %3</source>
        <translation>%1। यीबाट: %2। %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Every number of this plan: what it is, how it was reckoned, from which numbers, and where the figures come from. A number that is reckoned from others names them; each stands here in its own place.</source>
        <translation>यस योजनाका सबै अङ्क: के हो, हिसाब कसरी गरिएको हो, कुन अङ्कबाट, र अङ्कको आधार के हो। अरू अङ्कबाट हिसाब गरिएको अङ्कले ती अङ्कको नाम दिन्छ; ती हरेक यहीँ आफ्नै ठाउँमा छन्।</translation>
    </message>
    <message>
        <source>Cleaning, each year before the rains</source>
        <translation>सफाइ, हरेक वर्ष वर्षा लाग्नुअघि</translation>
    </message>
    <message>
        <source>Two people, never one alone in the tank, not even in an empty one. Ladder to the floor; get out when you feel dizzy.</source>
        <translation>दुई जना, ट्याङ्कीमा कहिल्यै एक्लै होइन, खाली ट्याङ्कीमा पनि होइन। भुइँसम्म भर्‍याङ राख्ने; रिँगटा लागे बाहिर निस्किहाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Choose the weeks when the tank is nearly empty and the rains are near. Draw the last water for the beds.</source>
        <translation>ट्याङ्की झन्डै खाली र वर्षा लाग्न लागेका हप्ता छान्नुहोस्। अन्तिम पानी ड्याङमा लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>Loosen the silt with a soft brush and a wooden scoop. No spade, no hoe, no wire brush: they cut the plaster.</source>
        <translation>नरम ब्रस र काठको डाडुले थेग्रो उप्काउनुहोस्। साबेल, कोदालो, तारको ब्रस नचलाउनुहोस्: तिनले प्लास्टर काट्छन्।</translation>
    </message>
    <message>
        <source>Lift the silt out in buckets, the bucket never over someone&apos;s head. Silt is good soil: spread it on the beds as manure.</source>
        <translation>थेग्रो बाल्टीमा माथि झिक्नुहोस्, बाल्टी कहिल्यै कसैको टाउकोमाथिबाट नलैजाने। थेग्रो राम्रो माटो हो: मलका रूपमा ड्याङमा छर्नुहोस्।</translation>
    </message>
    <message>
        <source>Look for cracks on walls and floor while it is clean. Mark them with charcoal and mend them now.</source>
        <translation>सफा भएकै बेला भित्ता र भुइँमा चिरा खोज्नुहोस्। गोलले चिनो लगाउनुहोस् र अहिल्यै टाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Do not let the plaster dry out: it shrinks and cracks. Keep it wet and fill the tank again within days.</source>
        <translation>प्लास्टर सुक्न नदिनुहोस्: खुम्चिएर चर्किन्छ। भिजाइराख्नुहोस् र केही दिनभित्रै ट्याङ्की फेरि भर्नुहोस्।</translation>
    </message>
    <message>
        <source>Mortar, as for the last coat: %1 soil : %2 sand : %3 cement, by loose volume, mixed stiff.</source>
        <translation>मसला, अन्तिम पत्रकै जस्तो: माटो %1 : बालुवा %2 : सिमेन्ट %3, खुकुलो नापले, गाढा मुछेको।</translation>
    </message>
    <message>
        <source>Mending cracks</source>
        <translation>चिरा टाल्ने</translation>
    </message>
    <message>
        <source>Hairline crack, thinner than a fingernail: brush it clean, wet it, and rub in cement stirred with water to a cream.</source>
        <translation>मसिनो चिरा, नङभन्दा पातलो: ब्रसले सफा गर्नुहोस्, भिजाउनुहोस्, र पानीमा लेदो पारेको सिमेन्ट दलेर पसाउनुहोस्।</translation>
    </message>
    <message>
        <source>Open crack: cut it out to a groove like a V, as deep as it is wide, until sound plaster shows. Brush out all dust and wet the groove well.</source>
        <translation>खुलेको चिरा: बलियो प्लास्टर नदेखिउन्जेल V जस्तो खाल्टो पारेर काट्नुहोस्, जति चौडा उति नै गहिरो। धुलो सबै ब्रसले झार्नुहोस् र खाल्टो राम्ररी भिजाउनुहोस्।</translation>
    </message>
    <message>
        <source>Rub cement cream into the wet groove, then press the mortar in hard, in two layers where it is deep, and float it level with the old face.</source>
        <translation>भिजेको खाल्टोमा सिमेन्टको लेदो दल्नुहोस्, अनि मसला कसेर थिच्नुहोस्, गहिरो ठाउँमा दुई तह गरेर, र पुरानो सतहसँग बराबर हुने गरी घोट्नुहोस्।</translation>
    </message>
    <message>
        <source>Wet sacks over the place for %1. Then fill, and make the leak test (sheet F6).</source>
        <translation>त्यो ठाउँ %1 भिजेको जुटले छोप्नुहोस्। अनि पानी भर्नुहोस्, र चुहावट जाँच गर्नुहोस् (पाना F6)।</translation>
    </message>
    <message>
        <source>A wall that bulges, leans or sinks, or a crack that opens again after mending: do not go in, let no more water in, and ask a licensed engineer. Mortar does not hold moving ground.</source>
        <translation>भित्ता फुलेको, ढल्केको वा भासिएको छ, वा टालेपछि पनि चिरा फेरि खुल्छ भने: भित्र नपस्नुहोस्, थप पानी पस्न नदिनुहोस्, र इजाजतप्राप्त इन्जिनियरलाई सोध्नुहोस्। सर्ने जमिनलाई मसलाले थाम्दैन।</translation>
    </message>
    <message>
        <source>Cleaned on</source>
        <translation>सफा गरेको मिति</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>कसले</translation>
    </message>
    <message>
        <source>Silt, buckets</source>
        <translation>थेग्रो, बाल्टी</translation>
    </message>
    <message>
        <source>Filled again on</source>
        <translation>फेरि भरेको मिति</translation>
    </message>
    <message>
        <source>How to clean and mend: %1.</source>
        <translation>सफा गर्ने र टाल्ने तरिका: %1।</translation>
    </message>
    <message>
        <source>Mended on</source>
        <translation>टालेको मिति</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>कहाँ</translation>
    </message>
    <message>
        <source>Wet sacks until</source>
        <translation>भिजेको जुट यो दिनसम्म</translation>
    </message>
    <message>
        <source>%1, TOO FEW: %2 needed</source>
        <translation>%1, धेरै कम: %2 चाहिन्छ</translation>
    </message>
    <message>
        <source>People planned on it</source>
        <translation>योजनामा राखिएका मान्छे</translation>
    </message>
    <message>
        <source>Put on within</source>
        <translation>यतिभित्र लगाउने</translation>
    </message>
    <message>
        <source>Sacks to cover it</source>
        <translation>ढाक्न चाहिने जुट</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>पूरा बोराका घान</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>भिजेको जुटले छोप्ने दिन</translation>
    </message>
    <message>
        <source>This coat</source>
        <translation>यो पत्र</translation>
    </message>
    <message>
        <source>Wet the earth walls and the stone bed until they are dark but no water stands on them. Dry earth drinks the plaster&apos;s water.</source>
        <translation>माटोको भित्ता र ढुङ्गाको सोलिङ कालो देखिने गरी भिजाउनुहोस्, तर पानी नजमोस्। सुक्खा माटोले प्लास्टरको पानी सोस्छ।</translation>
    </message>
    <message>
        <source>The coat below is roughened and free of dust. Wet it until it is dark but no water stands on it.</source>
        <translation>मुनिको पत्र खस्रो पारिएको र धुलो झारिएको हुनुपर्छ। कालो देखिने गरी भिजाउनुहोस्, तर पानी नजमोस्।</translation>
    </message>
    <message>
        <source>Rub it even with the wooden float, then scratch it crosswise so that the next coat holds.</source>
        <translation>काठको गुर्माले घोटेर सम्म पार्नुहोस्, अनि अर्को पत्र टाँसिने गरी छड्के-छड्के कोर्नुहोस्।</translation>
    </message>
    <message>
        <source>Rub it smooth and dense with the float while it is still fresh; no cracks, no pits.</source>
        <translation>ताजा हुँदै गुर्माले घोटेर चिल्लो र खँदिलो पार्नुहोस्; चिरा र प्वाल नरहून्।</translation>
    </message>
    <message>
        <source>Press walls and floor into one another where they meet: no joint.</source>
        <translation>भित्ता र भुइँ जोडिने ठाउँमा एकअर्कामा थिचेर मिलाउनुहोस्: जोर्नी नराख्ने।</translation>
    </message>
    <message>
        <source>Round off the corner of wall and floor with a radius of %1: no joint.</source>
        <translation>भित्ता र भुइँको कुनामा %1 अर्धव्यासको गोलाइ दिनुहोस्: जोर्नी नराख्ने।</translation>
    </message>
    <message>
        <source>Begin early and finish in one go. Walls first, from the foot upward, all round, pressed on hard, %1 thick by a marked nail; then the floor, backing out to the ladder.</source>
        <translation>बिहानै सुरु गरेर एकै दिनमा सक्नुहोस्। पहिले भित्ता, फेददेखि माथितिर, वरिपरि, कसेर थिचेर, चिनो लगाएको काँटीले नापेर %1 मोटो; अनि भुइँ, पछाडि सर्दै भर्‍याङसम्म।</translation>
    </message>
    <message>
        <source>Keep shade over the fresh coat. None is put on in rain, or when frost is to come.</source>
        <translation>ताजा पत्रमाथि छहारी राख्नुहोस्। पानी परेका बेला वा तुसारो पर्ने भए पत्र लगाउनु हुँदैन।</translation>
    </message>
    <message>
        <source>Wet sacks over all of it as soon as it takes no thumb print, within the hour in sun or wind. Keep them wet by the wetting calendar.</source>
        <translation>बुढी औंलाको छाप नबस्नेबित्तिकै सबैतिर भिजेको जुटले छोप्नुहोस्, घाम वा हावा भए एक घण्टाभित्रै। भिजाउने पात्रोअनुसार भिजाइराख्नुहोस्।</translation>
    </message>
    <message>
        <source>The plan does not say yet which pipes go through the lining.</source>
        <translation>अस्तर छेडेर कुन पाइप जान्छन्, योजनामा अझै लेखिएको छैन।</translation>
    </message>
    <message>
        <source>Through the lining go the pipe to the field and the overflow pipe.</source>
        <translation>बारीमा जाने पाइप र ओभरफ्लोको पाइप अस्तर छेडेर जान्छन्।</translation>
    </message>
    <message>
        <source>Through the lining goes the pipe to the field.</source>
        <translation>बारीमा जाने पाइप अस्तर छेडेर जान्छ।</translation>
    </message>
    <message>
        <source>Through the lining goes the overflow pipe.</source>
        <translation>ओभरफ्लोको पाइप अस्तर छेडेर जान्छ।</translation>
    </message>
    <message>
        <source>By this plan no pipe goes through the lining: pipes lie over the rim.</source>
        <translation>यस योजनामा कुनै पाइप अस्तर छेडेर जाँदैन: पाइप बिटमाथिबाट जान्छन्।</translation>
    </message>
    <message>
        <source>Pipes and collars, before coat 1</source>
        <translation>पाइप र घेरा, पत्र १ अघि</translation>
    </message>
    <message>
        <source>Every pipe through the wall is laid before coat 1. Roughen it where the plaster will hold it; smooth plastic lets water along.</source>
        <translation>भित्ता छेडेर जाने सबै पाइप पत्र १ अघि नै राखिन्छ। प्लास्टरले समात्ने ठाउँमा पाइप खस्रो पार्नुहोस्; चिल्लो प्लास्टिकको छेउबाट पानी चुहिन्छ।</translation>
    </message>
    <message>
        <source>Bed it in rammed earth over its whole length, so that it cannot sink and break away.</source>
        <translation>नभासियोस् र नभाँचियोस् भनेर पाइप पूरै लम्बाइमा खाँदेको माटोमा बसाउनुहोस्।</translation>
    </message>
    <message>
        <source>Set a collar of stiff plaster around it, a hand&apos;s breadth wide on every side, let into the earth wall. Coat 1 goes on while the collar is still damp.</source>
        <translation>पाइपको चारैतिर गाढा प्लास्टरको घेरा बसाउनुहोस्, हरेक पट्टि एक हत्केला चौडा, माटोको भित्तामा गाडेर। घेरा ओसिलो छँदै पत्र १ लगाउने।</translation>
    </message>
    <message>
        <source>Where it can be, take the pipe over the rim instead: a hole that is not made cannot leak.</source>
        <translation>मिल्ने ठाउँमा पाइप बरु बिटमाथिबाट लैजानुहोस्: नपारेको प्वाल चुहिँदैन।</translation>
    </message>
    <message>
        <source>Pipes through the wall and over the rim</source>
        <translation>भित्ता छेडेर र बिटमाथिबाट जाने पाइप</translation>
    </message>
    <message>
        <source>The design in short form, to scan or to type into the program:</source>
        <translation>डिजाइन छोटकरीमा, स्क्यान गर्न वा कार्यक्रममा टाइप गर्न:</translation>
    </message>
    <message>
        <source>From %1 deep on a ladder stands in the pit, close to those who dig, until the last one is out.</source>
        <translation>गहिराइ %1 पुगेदेखि खाडलमा भर्‍याङ राख्नुहोस्, खन्ने मान्छेको नजिकै, अन्तिम मान्छे ननिस्कुन्जेल।</translation>
    </message>
    <message>
        <source>Throw the spoil %1 or more back from the edge. No stones, tools, bags or animals nearer than that.</source>
        <translation>खनेको माटो डिलबाट %1 वा बढी पर फाल्नुहोस्। त्योभन्दा नजिक ढुङ्गा, औजार, बोरा वा गाईवस्तु नराख्ने।</translation>
    </message>
    <message>
        <source>Fence the pit, by night and on rest days too. Children stay away.</source>
        <translation>खाडलमा बार लगाउनुहोस्, राति र बिदाका दिन पनि। बच्चा टाढै राख्ने।</translation>
    </message>
    <message>
        <source>Dig inside the strings. Leave the pegs where they stand: all sizes are measured from them.</source>
        <translation>डोरीभित्र खन्नुहोस्। किला जहाँको तहीँ छोड्नुहोस्: सबै नाप तिनैबाट लिइन्छ।</translation>
    </message>
    <message>
        <source>Take the whole floor down evenly, no more than %1 at a time. Never dig under a wall.</source>
        <translation>पिँध सबैतिर बराबर खन्दै जानुहोस्, एक पटकमा %1 भन्दा बढी होइन। भित्तामुनि कहिल्यै नखन्नुहोस्।</translation>
    </message>
    <message>
        <source>After every such step hold the batter board against the walls and check sides and diagonals (sheet M5). Cut off what stands out; do not fill what was dug too far with loose earth.</source>
        <translation>यसरी हरेक पटक खनेपछि ढल्काइ फल्याक भित्तामा लगाउनुहोस् र छेउ र कुनाकुनी जाँच्नुहोस् (पाना M5)। बाहिर निस्केको ताछ्नुहोस्; बढी खनिएको ठाउँ खुकुलो माटोले नपुर्नुहोस्।</translation>
    </message>
    <message>
        <source>Watch walls and edge. Cracks along the edge, bulging, falling crumbs or water in the wall: everybody out at once, and ask before going on.</source>
        <translation>भित्ता र डिल हेरिरहनुहोस्। डिलमा चिरा, भित्ता फुलेको, माटो झरेको वा भित्तामा पानी देखिए: सबै जना तुरुन्तै बाहिर निस्कनुहोस्, र फेरि सुरु गर्नुअघि सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Stop in rain. Lead water away from the edge. Go in again only when the walls have been looked at all round.</source>
        <translation>पानी परे काम रोक्नुहोस्। पानी डिलबाट पर तर्काउनुहोस्। भित्ता वरिपरि सबै हेरेपछि मात्र फेरि भित्र पस्नुहोस्।</translation>
    </message>
    <message>
        <source>Dig the last hand&apos;s breadth by scraping, to the rod&apos;s mark for the pit floor; then ram the floor.</source>
        <translation>अन्तिम एक हत्केला जति ताछेर खन्नुहोस्, लट्ठीको खाडलको पिँधको चिनोसम्म; अनि पिँध खाँद्नुहोस्।</translation>
    </message>
    <message>
        <source>This pit gets deeper than %1. Walls of that height bury people: ask a licensed engineer how far they must lean or be propped, and follow the local code.</source>
        <translation>यो खाडल %1 भन्दा गहिरो हुन्छ। यति अग्ला भित्ताले मान्छे पुर्छन्: कति ढल्काउने वा कसरी टेको दिने, इजाजतप्राप्त इन्जिनियरलाई सोध्नुहोस्, र स्थानीय नियम-मापदण्ड मान्नुहोस्।</translation>
    </message>
    <message>
        <source>Loose spoil left over</source>
        <translation>बाँकी रहने खुकुलो माटो</translation>
    </message>
    <message>
        <source>Heap of it</source>
        <translation>त्यसको थुप्रो</translation>
    </message>
    <message>
        <source>%1 high, %2 across</source>
        <translation>%1 अग्लो, %2 चौडा</translation>
    </message>
    <message>
        <source>Pit at the ground</source>
        <translation>जमिनको सतहमा खाडल</translation>
    </message>
    <message>
        <source>Pit at its floor</source>
        <translation>पिँधमा खाडल</translation>
    </message>
    <message>
        <source>Pit depth, ground to pit floor</source>
        <translation>खाडलको गहिराइ, जमिनदेखि पिँधसम्म</translation>
    </message>
    <message>
        <source>To dig for the pit, as it lies</source>
        <translation>खाडलका लागि खन्ने, नखनेको माटो</translation>
    </message>
    <message>
        <source>What is dug, before any lining</source>
        <translation>अस्तर लगाउनुअघि खनिने खाडल</translation>
    </message>
    <message>
        <source>The pit when it is dug</source>
        <translation>खनिसकेको खाडल</translation>
    </message>
    <message>
        <source>The board for the lean of the dug wall</source>
        <translation>खनेको भित्ताको ढल्काइ जाँच्ने फल्याक</translation>
    </message>
    <message>
        <source>Sections: A-A on sheet M3, B-B on sheet M15.</source>
        <translation>सेक्सन: A-A पाना M3 मा, B-B पाना M15 मा।</translation>
    </message>
    <message>
        <source>B-B: sheet M15.</source>
        <translation>B-B: पाना M15।</translation>
    </message>
    <message>
        <source>Section B-B of the plan. A-A: sheet M3.</source>
        <translation>प्लानको सेक्सन B-B। A-A: पाना M3।</translation>
    </message>
    <message>
        <source>The rod, standing in the pit</source>
        <translation>खाडलमा ठड्याएको गहिराइ लट्ठी</translation>
    </message>
    <message>
        <source>Take soil from below the roots, dry and crush it, sieve out stones and straw.</source>
        <translation>जराभन्दा मुनिको माटो लिनुहोस्, सुकाएर धुलो पार्नुहोस्, चालेर ढुङ्गा र पराल झिक्नुहोस्।</translation>
    </message>
    <message>
        <source>Fill a clear jar with straight sides to a third with the soil. Add a pinch of salt or washing powder, and water until two fingers of air are left.</source>
        <translation>सोझो भित्ता भएको सफा सिसीमा एक तिहाइ माटो हाल्नुहोस्। एक चिम्टी नुन वा लुगा धुने पाउडर हाल्नुहोस्, र माथि दुई औंला खाली रहने गरी पानी हाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Shut it, shake it hard for %1 minutes, set it down level and do not move it again.</source>
        <translation>बिर्को लगाउनुहोस्, %1 मिनेट जोडले हल्लाउनुहोस्, समथर ठाउँमा राख्नुहोस् र फेरि नचलाउनुहोस्।</translation>
    </message>
    <message>
        <source>After %1 minute mark the top of the sand on the jar, after %2 hours the top of the silt. When the water is clear, after %3 to %4 hours, mark the top of the clay.</source>
        <translation>%1 मिनेटपछि सिसीमा बालुवाको माथिल्लो सतहमा, %2 घण्टापछि पाँगो माटोको माथिल्लो सतहमा चिनो लगाउनुहोस्। पानी सङ्लिएपछि, %3 देखि %4 घण्टामा, चिम्टाइलो माटोको माथिल्लो सतहमा चिनो लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>Fold the sheet along the ruler&apos;s edge, stand it at the jar with its zero at the jar&apos;s floor inside, and read how thick each layer is.</source>
        <translation>पाना रुलरको धारमा पट्याउनुहोस्, शून्य सिसीभित्रको पिँधमा पर्ने गरी सिसीमा टाँस्नुहोस्, र हरेक तह कति मोटो छ हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>सिसी</translation>
    </message>
    <message>
        <source>Soil from where, how deep</source>
        <translation>माटो कहाँको, कति गहिरोको</translation>
    </message>
    <message>
        <source>Sand, mm</source>
        <translation>बालुवा, mm</translation>
    </message>
    <message>
        <source>Silt, mm</source>
        <translation>पाँगो माटो, mm</translation>
    </message>
    <message>
        <source>Clay, mm</source>
        <translation>चिम्टाइलो माटो, mm</translation>
    </message>
    <message>
        <source>All, mm</source>
        <translation>जम्मा, mm</translation>
    </message>
    <message>
        <source>Clay, %</source>
        <translation>चिम्टाइलो माटो, %</translation>
    </message>
    <message>
        <source>How much clay is in the soil? In water sand sinks first, then silt, clay last.</source>
        <translation>माटोमा चिम्टाइलो माटो कति छ? पानीमा पहिले बालुवा थिग्रिन्छ, त्यसपछि पाँगो माटो, अन्त्यमा चिम्टाइलो माटो।</translation>
    </message>
    <message>
        <source>Clay in the soil, in percent = clay ÷ all × %1.</source>
        <translation>माटोमा चिम्टाइलो माटो, प्रतिशतमा = चिम्टाइलो माटो ÷ जम्मा × %1।</translation>
    </message>
    <message>
        <source>Read by:</source>
        <translation>नाप हेर्ने:</translation>
    </message>
    <message>
        <source>Type the thickness of each layer in on the tab %1.</source>
        <translation>हरेक तहको मोटाइ %1 ट्याबमा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>टिपोट</translation>
    </message>
    <message>
        <source>How the jar is done: %1. A laboratory measures it more exactly.</source>
        <translation>सिसी जाँच गर्ने तरिका: %1। प्रयोगशालाले अझ ठीक नाप्छ।</translation>
    </message>
    <message>
        <source>or</source>
        <translation>वा</translation>
    </message>
    <message>
        <source>For 1 bag of cement, and below it for half a bag (½): boxes of %1, or pans of %2, or buckets of %3, level with the rim.</source>
        <translation>सिमेन्ट १ बोराका लागि, र त्यसमुनि आधा बोराका लागि (½): %1का बाकस, वा %2का तसला, वा %3का बाल्टी, मुखसम्म सम्म पारेर।</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>जाँच खाडल</translation>
    </message>
    <message>
        <source>Soil by ball and ribbon</source>
        <translation>डल्लो र रिबनले माटो जाँच</translation>
    </message>
    <message>
        <source>Jar test</source>
        <translation>सिसी जाँच</translation>
    </message>
    <message>
        <source>Slope by water level</source>
        <translation>लेभल पाइपले ढाल नाप्ने</translation>
    </message>
    <message>
        <source>Section B-B</source>
        <translation>सेक्सन B-B</translation>
    </message>
    <message>
        <source>Build stages</source>
        <translation>बनाउने चरण</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>ढुङ्गाको सोलिङ</translation>
    </message>
    <message>
        <source>Coats and pipes</source>
        <translation>पत्र र पाइप</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>महिनाअनुसार प्रयोग</translation>
    </message>
    <message>
        <source>Cleaning and crack repair</source>
        <translation>सफाइ र चिरा मर्मत</translation>
    </message>
    <message>
        <source>Calculation sheet</source>
        <translation>हिसाबको पाना</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Take a handful of soil without stones. Drip water on and knead it until it is like putty: no dry crumbs, no water running.</source>
        <translation>ढुङ्गा नभएको एक मुठी माटो लिनुहोस्। पानी चुहाउँदै पुटिनजस्तो नहुन्जेल मुछ्नुहोस्: सुक्खा टुक्रा पनि नरहोस्, पानी पनि नबगोस्।</translation>
    </message>
    <message>
        <source>Squeeze it in the fist. Does a ball hold together?</source>
        <translation>मुठीमा थिच्नुहोस्। डल्लो फुट्दैन?</translation>
    </message>
    <message>
        <source>Push the ball with the thumb over the forefinger to a flat ribbon of even thickness, and let it hang until it breaks. Lay it on the strip below and read its length.</source>
        <translation>डल्लोलाई बुढी औंलाले चोर औंलामाथि धकेल्दै एकनास मोटो चेप्टो रिबन बनाउनुहोस्, र नटुटुन्जेल झुन्डिन दिनुहोस्। तलको पट्टीमा राखेर लम्बाइ हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Wet a pinch in the palm very much and rub it with a finger. Is it above all gritty, above all smooth, or neither? Then wash your hands.</source>
        <translation>एक चिम्टी माटो हत्केलामा धेरै भिजाउनुहोस् र औंलाले घोट्नुहोस्। धेरैजसो खस्रो छ, धेरैजसो मसिनो छ, कि दुवै होइन? अनि हात धुनुहोस्।</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>दोमटे बालुवा</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>डल्लो र रिबन</translation>
    </message>
    <message>
        <source>Gritty</source>
        <translation>खस्रो</translation>
    </message>
    <message>
        <source>Neither</source>
        <translation>दुवै होइन</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>मसिनो</translation>
    </message>
    <message>
        <source>no ball holds</source>
        <translation>डल्लो बन्दैन</translation>
    </message>
    <message>
        <source>ball, but no ribbon</source>
        <translation>डल्लो बन्छ, रिबन बन्दैन</translation>
    </message>
    <message>
        <source>ribbon shorter than %1</source>
        <translation>%1 भन्दा छोटो रिबन</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>बलौटे दोमट</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>दोमट माटो</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>पाँगो दोमट</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>बलौटे चिम्टाइलो दोमट</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>चिम्टाइलो दोमट</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>पाँगो चिम्टाइलो दोमट</translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation>%1 वा लामो</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>बलौटे चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>पाँगो चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>Soil from where</source>
        <translation>माटो कहाँको</translation>
    </message>
    <message>
        <source>Ball</source>
        <translation>डल्लो</translation>
    </message>
    <message>
        <source>Ribbon, mm</source>
        <translation>रिबन, mm</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>यो हो</translation>
    </message>
    <message>
        <source>What soil is it? Hands can tell, with a little water.</source>
        <translation>कस्तो माटो हो? अलिकति पानी भए हातैले चिन्न सकिन्छ।</translation>
    </message>
    <message>
        <source>Type the readings in on the tab %1.</source>
        <translation>नतिजा %1 ट्याबमा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Two people who look where they step. Never walk backward toward the edge of a terrace or a pit.</source>
        <translation>दुई जना, पाइला हेरेर टेक्ने। कान्ला वा खाडलको डिलतिर कहिल्यै पछाडि फर्केर नहिँड्नुहोस्।</translation>
    </message>
    <message>
        <source>Take a clear hose of %1 to %2 m and two sticks with marks every centimetre. Fill the hose until no bubble is left in it, and tie an end to each stick.</source>
        <translation>%1 देखि %2 m को भित्र देखिने पाइप र हरेक सेन्टिमिटरमा चिनो भएका दुई लट्ठी लिनुहोस्। फोका नरहने गरी पाइपमा पानी भर्नुहोस्, र पाइपको एक-एक छेउ हरेक लट्ठीमा बाँध्नुहोस्।</translation>
    </message>
    <message>
        <source>One stick stands uphill, one straight downhill, both upright on the ground. Both ends of the hose are open.</source>
        <translation>एउटा लट्ठी उकालोतिर, अर्को सिधै ओरालोतिर, दुवै जमिनमा ठाडो। पाइपका दुवै छेउ खुला राख्ने।</translation>
    </message>
    <message>
        <source>Wait until the water stands still: it is equally high at both ends. Read it on both sticks, from the ground up.</source>
        <translation>पानी नअडिउन्जेल पर्खनुहोस्: दुवै छेउमा पानी बराबर उचाइमा हुन्छ। दुवै लट्ठीमा जमिनदेखि माथि कति छ हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Drop = reading downhill less reading uphill; less than nothing where the ground rises. Run = how far the sticks are apart, with the tape held level. Write both down.</source>
        <translation>उचाइ फरक = ओरालोको नापबाट उकालोको नाप घटाएको; जमिन उकालो भए शून्यभन्दा कम। तेर्सो दूरी = टेप समथर समातेर लट्ठीहरूबीचको दूरी। दुवै लेख्नुहोस्।</translation>
    </message>
    <message>
        <source>The uphill stick goes where the downhill one stood, and so on over the whole place of the tank and some metres beyond.</source>
        <translation>उकालोको लट्ठी ओरालोको लट्ठी भएको ठाउँमा सार्नुहोस्, र यसै गरी ट्याङ्कीको पूरै ठाउँ र त्योभन्दा केही मिटर परसम्म नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>जम्मा</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>पटक</translation>
    </message>
    <message>
        <source>Uphill, m</source>
        <translation>उकालो, m</translation>
    </message>
    <message>
        <source>Downhill, m</source>
        <translation>ओरालो, m</translation>
    </message>
    <message>
        <source>Drop, m</source>
        <translation>उचाइ फरक, m</translation>
    </message>
    <message>
        <source>Run, m</source>
        <translation>तेर्सो दूरी, m</translation>
    </message>
    <message>
        <source>How steep is the ground? Water in a hose stands equally high at both ends.</source>
        <translation>जमिन कति भिरालो छ? पाइपको पानी दुवै छेउमा बराबर उचाइमा हुन्छ।</translation>
    </message>
    <message>
        <source>Fall in percent = sum of the drops ÷ sum of the runs × %1.</source>
        <translation>ढाल प्रतिशतमा = उचाइ फरकको जम्मा ÷ तेर्सो दूरीको जम्मा × %1।</translation>
    </message>
    <message>
        <source>Fall, %:</source>
        <translation>ढाल, %:</translation>
    </message>
    <message>
        <source>Downhill toward, by compass:</source>
        <translation>ओरालो कता, कम्पासले:</translation>
    </message>
    <message>
        <source>Type runs and drops in on the tab %1.</source>
        <translation>तेर्सो दूरी र उचाइ फरक %1 ट्याबमा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>How the hose is used: %1.</source>
        <translation>लेभल पाइप चलाउने तरिका: %1।</translation>
    </message>
    <message>
        <source>first on %1</source>
        <translation>पहिलो पटक %1</translation>
    </message>
    <message>
        <source>How the tank grows, with the first day on which it stands so.</source>
        <translation>ट्याङ्की कसरी बन्दै जान्छ, र हरेक अवस्थामा पुग्ने पहिलो दिन।</translation>
    </message>
    <message>
        <source>How the tank grows, cut upright at A-A.</source>
        <translation>ट्याङ्की कसरी बन्दै जान्छ, A-A मा ठाडो काटेको।</translation>
    </message>
    <message>
        <source>Wet cement burns, its dust harms the lungs. Wear all of these; wash splashes off at once with much clean water.</source>
        <translation>भिजेको सिमेन्टले पोल्छ, यसको धुलोले फोक्सो बिगार्छ। यी सबै लगाउनुहोस्; छिटा पर्नेबित्तिकै धेरै सफा पानीले धुनुहोस्।</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone: one works, one stays at the top, watches the walls and can fetch help.</source>
        <translation>कोही पनि एक्लै खाडलमा नपस्ने: एक जना काम गर्ने, एक जना माथि बसेर भित्ता हेर्ने र सहयोग बोलाउन सक्ने।</translation>
    </message>
    <message>
        <source>Thickness, rammed</source>
        <translation>मोटाइ, खाँदेको</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>ल्याउने ढुङ्गा, खुकुलो</translation>
    </message>
    <message>
        <source>Top of the bed below the string at ground level</source>
        <translation>जमिनको सतहको डोरीभन्दा सोलिङको माथिल्लो सतह कति तल</translation>
    </message>
    <message>
        <source>Stone bed under the floor</source>
        <translation>भुइँमुनि ढुङ्गाको सोलिङ</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone. Heavy stones: two people. Hand them or let them down; never throw stones into a pit where somebody stands.</source>
        <translation>कोही पनि एक्लै खाडलमा नपस्ने। गह्रौं ढुङ्गा दुई जनाले बोक्ने। हातमै दिने वा बिस्तारै झार्ने; मान्छे भएको खाडलमा ढुङ्गा कहिल्यै नफाल्ने।</translation>
    </message>
    <message>
        <source>Take hard, clean stones, about %1 high when they stand on edge. No soft or rotten ones.</source>
        <translation>साह्रो, सफा ढुङ्गा लिनुहोस्, ठाडो राख्दा करिब %1 अग्लो। नरम वा कुहिएको ढुङ्गा नलिने।</translation>
    </message>
    <message>
        <source>Set them on edge on the rammed floor, close together, from the far side toward the ladder.</source>
        <translation>खाँदेको पिँधमा ढुङ्गा ठाडो राखेर एकअर्कासँग टाँसेर मिलाउनुहोस्, परको छेउबाट भर्‍याङतिर।</translation>
    </message>
    <message>
        <source>Ram them until none moves under the foot. Fill all gaps with gravel and small stones, and ram again.</source>
        <translation>खुट्टाले टेक्दा कुनै पनि नहल्लिउन्जेल धुर्मुसले खाँद्नुहोस्। खाली ठाउँ ग्राभेल र साना ढुङ्गाले भर्नुहोस्, र फेरि खाँद्नुहोस्।</translation>
    </message>
    <message>
        <source>Check with string and rod in the middle and along all sides: the top lies %1 below the string everywhere.</source>
        <translation>बीचमा र सबै छेउमा डोरी र लट्ठीले जाँच्नुहोस्: माथिल्लो सतह सबैतिर डोरीभन्दा %1 तल हुनुपर्छ।</translation>
    </message>
    <message>
        <source>Wash dust off and keep the bed moist until the first coat goes on.</source>
        <translation>धुलो पखाल्नुहोस् र पहिलो पत्र नलगाउन्जेल सोलिङ ओसिलो राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Pit:</source>
        <translation>खाडल:</translation>
    </message>
    <message>
        <source>A narrow pit caves in on whoever stands in it. Nobody climbs into one deeper than the waist: look from above, lift soil out with the spade. Deeper than %1 only with an auger or a wide, leaning pit.</source>
        <translation>साँघुरो खाडलको भित्ता भित्र उभिएको मान्छेमाथि भत्किन्छ। कम्मरभन्दा गहिरो खाडलमा कोही नओर्लने: माथिबाट हेर्नुहोस्, माटो साबेलले झिक्नुहोस्। %1 भन्दा गहिरो खन्न अगर वा भित्ता ढल्केको चौडा खाडल मात्र।</translation>
    </message>
    <message>
        <source>Two people at each pit. Fence or cover it while it is open, and fill it when it has been logged: people and animals fall in.</source>
        <translation>हरेक खाडलमा दुई जना। खुला रहुन्जेल बार लगाउनुहोस् वा छोप्नुहोस्, र टिपिसकेपछि पुर्नुहोस्: मान्छे र गाईवस्तु खस्छन्।</translation>
    </message>
    <message>
        <source>Dig or bore two or three, at the tank&apos;s place and beside it. The tank&apos;s pit will be %1 deep (dashed line): go deeper.</source>
        <translation>दुई-तीन वटा खन्नुहोस् वा अगरले प्वाल पार्नुहोस्, ट्याङ्कीको ठाउँमा र छेउमा। ट्याङ्कीको खाडल %1 गहिरो हुन्छ (टुक्रे रेखा): त्योभन्दा गहिरो जानुहोस्।</translation>
    </message>
    <message>
        <source>Draw a line in the strip wherever the soil changes, and write one row of the log for each layer. Soil is one of: %1.</source>
        <translation>माटो फेरिने हरेक ठाउँमा पट्टीमा रेखा कोर्नुहोस्, र हरेक तहका लागि खातामा एक पङ्क्ति लेख्नुहोस्। माटो यीमध्ये एक हो: %1।</translation>
    </message>
    <message>
        <source>Write how deep water comes in. Look again the next day, and in the wet months.</source>
        <translation>पानी कति गहिरोबाट आउँछ लेख्नुहोस्। भोलिपल्ट र पानी पर्ने महिनामा फेरि हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Hard: a pick is needed. Firm: the spade goes in under the foot. Soft: the thumb goes in.</source>
        <translation>साह्रो: गैंती चाहिन्छ। खँदिलो: खुट्टाले थिच्दा साबेल पस्छ। नरम: बुढी औंला पस्छ।</translation>
    </message>
    <message>
        <source>Type the layers in on the tab %1.</source>
        <translation>तहहरू %1 ट्याबमा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Pit</source>
        <translation>खाडल</translation>
    </message>
    <message>
        <source>From, m</source>
        <translation>देखि, m</translation>
    </message>
    <message>
        <source>To, m</source>
        <translation>सम्म, m</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>माटो</translation>
    </message>
    <message>
        <source>Hard, firm or soft</source>
        <translation>साह्रो, खँदिलो वा नरम</translation>
    </message>
    <message>
        <source>Water at, m</source>
        <translation>पानी आएको, m</translation>
    </message>
    <message>
        <source>Logged by:</source>
        <translation>टिप्ने:</translation>
    </message>
    <message>
        <source>Wanted in the month</source>
        <translation>महिनामा चाहिने</translation>
    </message>
    <message>
        <source>There to use in the month</source>
        <translation>महिनामा चलाउन पाइने</translation>
    </message>
    <message>
        <source>There to use each day</source>
        <translation>हरेक दिन चलाउन पाइने</translation>
    </message>
    <message>
        <source>Stick, usual year</source>
        <translation>लट्ठी, साधारण वर्ष</translation>
    </message>
    <message>
        <source>Stick, bad year</source>
        <translation>लट्ठी, नराम्रो वर्ष</translation>
    </message>
    <message>
        <source>Used each day</source>
        <translation>हरेक दिन चलाएको</translation>
    </message>
    <message>
        <source>On the first of each month read the dip-stick and look at the row.</source>
        <translation>हरेक महिनाको पहिलो दिन पानी नाप्ने लट्ठी हेर्नुहोस् र पङ्क्ति हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>As much as in a usual year, or more: use what the row says for each day. Less than in a bad year: use less from this day on, and water the beds that matter most. Between: use with care.</source>
        <translation>साधारण वर्ष जति वा बढी: पङ्क्तिमा लेखिएको दिनको जति चलाउनुहोस्। नराम्रो वर्षभन्दा कम: आजैदेखि कम चलाउनुहोस्, र सबैभन्दा चाहिने ड्याङमा पानी लगाउनुहोस्। बीचमा: सम्हालेर चलाउनुहोस्।</translation>
    </message>
    <message>
        <source>A bucket of the mix cards holds %1. Count the buckets of one day and write down what was used.</source>
        <translation>मिसावट कार्डको एक बाल्टीमा %1 अट्छ। एक दिनका बाल्टी गन्नुहोस् र कति चलाइयो लेख्नुहोस्।</translation>
    </message>
    <message>
        <source>Wanted and there to use: means of all years reckoned. Usual year: half of the years had more in the tank on that day. Bad year: one year in ten had less.</source>
        <translation>चाहिने र चलाउन पाइने: हिसाब गरिएका सबै वर्षको औसत। साधारण वर्ष: आधा वर्षमा त्यस दिन ट्याङ्कीमा योभन्दा बढी थियो। नराम्रो वर्ष: १० मध्ये एक वर्षमा योभन्दा कम थियो।</translation>
    </message>
</context>
<context>
    <name>Summary</name>
    <message>
        <source>Farm water tank</source>
        <translation>बारीको पानी ट्याङ्की</translation>
    </message>
    <message>
        <source>to the rim</source>
        <translation>बिटसम्म</translation>
    </message>
    <message>
        <source>to the overflow level</source>
        <translation>ओभरफ्लोको सतहसम्म</translation>
    </message>
    <message>
        <source>usable above the dead depth</source>
        <translation>निकासमुनिको गहिराइमाथि काम लाग्ने</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>अट्ने</translation>
    </message>
    <message>
        <source>clear, at the finished floor</source>
        <translation>भित्री, तयारी भुइँमा</translation>
    </message>
    <message>
        <source>clear, at the rim</source>
        <translation>भित्री, बिटमा</translation>
    </message>
    <message>
        <source>clear depth, floor to rim</source>
        <translation>भित्री गहिराइ, भुइँदेखि बिटसम्म</translation>
    </message>
    <message>
        <source>pit, at the ground</source>
        <translation>खाडल, जमिनमा</translation>
    </message>
    <message>
        <source>pit, at its floor</source>
        <translation>खाडल, पिँधमा</translation>
    </message>
    <message>
        <source>pit depth below the ground</source>
        <translation>जमिनबाट खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>earth dug, as it lies</source>
        <translation>खन्ने माटो, नखनेको नापमा</translation>
    </message>
    <message>
        <source>spoil, loose</source>
        <translation>खनेको माटो, खुकुलो</translation>
    </message>
    <message>
        <source>Sizes (diameters)</source>
        <translation>नाप (व्यास)</translation>
    </message>
    <message>
        <source>Sizes (length x width)</source>
        <translation>नाप (लम्बाइ x चौडाइ)</translation>
    </message>
    <message>
        <source>Layers (thickness, volume, face)</source>
        <translation>तह (मोटाइ, आयतन, सतह)</translation>
    </message>
    <message>
        <source>Materials (net, order)</source>
        <translation>सामग्री (खुद, मगाउने)</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one (customary; exact shells; area times thickness)</source>
        <translation>चलनको हिसाब र हिसाबले निकालेको, सँगसँगै (चलनको; सही आयतन; क्षेत्रफल × मोटाइ)</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>उत्तर छैन</translation>
    </message>
    <message>
        <source>trust thickness and mix: cement</source>
        <translation>मोटाइ र मिसावट पत्याए: सिमेन्ट</translation>
    </message>
    <message>
        <source>trust cement and mix: thickness of the coats</source>
        <translation>सिमेन्ट र मिसावट पत्याए: पत्रको मोटाइ</translation>
    </message>
    <message>
        <source>trust cement and thickness: soil:sand:cement</source>
        <translation>सिमेन्ट र मोटाइ पत्याए: माटो:बालुवा:सिमेन्ट</translation>
    </message>
    <message>
        <source>Which to trust (exact shells; area times thickness)</source>
        <translation>कुन पत्याउने (सही आयतन; क्षेत्रफल × मोटाइ)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 देखि %2</translation>
    </message>
    <message>
        <source>Labour (at the rate used, range, who)</source>
        <translation>कामदार (लिइएको दरले, दायरा, को)</translation>
    </message>
    <message>
        <source>Order of work (first day, last day, crew)</source>
        <translation>कामको क्रम (पहिलो दिन, अन्तिम दिन, टोली)</translation>
    </message>
    <message>
        <source>What to know</source>
        <translation>जान्नुपर्ने कुरा</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>पानी पुग्छ कि</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>मिति</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>पत्र एकै दिनमा</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहिलो पानी भराइ</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>मूल्य छैन</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>खर्च हिसाब</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>पैसा</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>वार्षिक लागतअनुसार अस्तर</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>विकल्प सँगसँगै</translation>
    </message>
    <message>
        <source>How sure is it</source>
        <translation>कति पक्का छ</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>ढुवानी, जम्मा</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>भैपरी खर्च</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>जम्मा</translation>
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
        <translation>जानकारी</translation>
    </message>
    <message>
        <source>There is no translation for %1 yet; texts are in English.</source>
        <translation>%1 को अनुवाद अझै छैन; लेखाइ अङ्ग्रेजीमा छ।</translation>
    </message>
    <message>
        <source>%1: no problems found.</source>
        <translation>%1: कुनै समस्या भेटिएन।</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 पढ्न सकिएन: %2</translation>
    </message>
    <message>
        <source>This project has no sheet %1.</source>
        <translation>यो परियोजनामा पाना %1 छैन।</translation>
    </message>
</context>
<context>
    <name>ui::Actions</name>
    <message>
        <source>&amp;File</source>
        <translation>फाइल (&amp;F)</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>नयाँ (&amp;N)</translation>
    </message>
    <message>
        <source>Open the e&amp;xample</source>
        <translation>नमुना खोल्नुहोस् (&amp;X)</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>खोल्नुहोस् (&amp;O)…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>हालैका खोल्नुहोस् (&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>सेभ गर्नुहोस् (&amp;S)</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>नयाँ नाममा सेभ (&amp;A)…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>एक्सपोर्ट (&amp;E)…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>प्रिन्ट (&amp;P)…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>बन्द गर्नुहोस् (&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>सम्पादन (&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>उल्टाउनुहोस् (&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>फेरि गर्नुहोस् (&amp;R)</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>दृश्य (&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Pit</source>
        <translation>खाडल (&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Drawings</source>
        <translation>नक्सा (&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Sheets</source>
        <translation>पाना (&amp;S)</translation>
    </message>
    <message>
        <source>Look from &amp;above and aside</source>
        <translation>माथि र छेउबाट हेर्नुहोस् (&amp;A)</translation>
    </message>
    <message>
        <source>Look straight d&amp;own</source>
        <translation>माथिबाट सीधा तल हेर्नुहोस् (&amp;O)</translation>
    </message>
    <message>
        <source>Look at the &amp;cut</source>
        <translation>काट हेर्नुहोस् (&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>एकाइ (&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Metres</source>
        <translation>मिटर (&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Feet and inches</source>
        <translation>फिट र इन्च (&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>रङ (&amp;C)</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>डेस्कटपजस्तै (&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>उज्यालो (&amp;L)</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>अँध्यारो (&amp;A)</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>डेस्कटपजस्तै</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>मद्दत (&amp;H)</translation>
    </message>
    <message>
        <source>&amp;About Tankwright</source>
        <translation>Tankwright बारे (&amp;A)</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>औजार</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>पानी (&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation>जमिन (&amp;G)</translation>
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
        <translation>छोटकरीबाट खोल्नुहोस् (&amp;H)…</translation>
    </message>
    <message>
        <source>&amp;Copy the design in short form</source>
        <translation>डिजाइन छोटकरीमा कपी (&amp;C)</translation>
    </message>
    <message>
        <source>Group &amp;view, whole screen</source>
        <translation>समूह दृश्य, पूरा पर्दा (&amp;V)</translation>
    </message>
    <message>
        <source>No&amp;tes</source>
        <translation>टिपोट (&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>भाषा (&amp;L)</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>भाषाअनुसार</translation>
    </message>
    <message>
        <source>&amp;Numbers and dates</source>
        <translation>अङ्क र मिति (&amp;N)</translation>
    </message>
</context>
<context>
    <name>ui::BillPanel</name>
    <message>
        <source> then </source>
        <translation> अनि </translation>
    </message>
    <message>
        <source>Use this thickness</source>
        <translation>यो मोटाइ लिनुहोस्</translation>
    </message>
    <message>
        <source>Use this mix</source>
        <translation>यो मिसावट लिनुहोस्</translation>
    </message>
    <message>
        <source>Enter the bill people reckon with today (at the left) to see it beside this one.</source>
        <translation>यो हिसाबको छेउमा हेर्न, मान्छेले आजकल गर्ने हिसाब (बायाँतिर) राख्नुहोस्।</translation>
    </message>
    <message>
        <source>bill</source>
        <translation>चलनको</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>निकालेको</translation>
    </message>
    <message>
        <source>  area × thickness</source>
        <translation>  क्षेत्रफल × मोटाइ</translation>
    </message>
    <message>
        <source>Trust thickness and mix: cement %1 (area × thickness: %2).</source>
        <translation>मोटाइ र मिसावट पत्याए: सिमेन्ट %1 (क्षेत्रफल × मोटाइ: %2)।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: coats of %1 (area × thickness: %2).</source>
        <translation>चलनको हिसाबको सिमेन्ट र मिसावट पत्याए: पत्र %1 (क्षेत्रफल × मोटाइ: %2)।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: no thickness answers to them.</source>
        <translation>चलनको हिसाबको सिमेन्ट र मिसावट पत्याए: तीसँग मिल्ने मोटाइ छैन।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: mix %1, soil : sand : cement (area × thickness: %2).</source>
        <translation>चलनको हिसाबको सिमेन्ट र मोटाइ पत्याए: मिसावट %1, माटो : बालुवा : सिमेन्ट (क्षेत्रफल × मोटाइ: %2)।</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: no mix answers to them.</source>
        <translation>चलनको हिसाबको सिमेन्ट र मोटाइ पत्याए: तीसँग मिल्ने मिसावट छैन।</translation>
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
        <translation>खर्च हिसाब</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>विवरण</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>परिमाण</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>मूल्य</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>रकम</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>योगदान</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>तिर्ने</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>भारी</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>ढुवानी</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>ढुवानी, जम्मा</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>भैपरी खर्च</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>जम्मा</translation>
    </message>
</context>
<context>
    <name>ui::ChartView</name>
    <message>
        <source>Point at the chart, or walk through it with the arrow keys.</source>
        <translation>चार्टमा देखाउनुहोस्, वा तीर बटनले हिँड्दै हेर्नुहोस्।</translation>
    </message>
</context>
<context>
    <name>ui::ChoiceRow</name>
    <message>
        <source>not known</source>
        <translation>थाहा छैन</translation>
    </message>
</context>
<context>
    <name>ui::CoatsPanel</name>
    <message>
        <source>Add a coat</source>
        <translation>पत्र थप्नुहोस्</translation>
    </message>
    <message>
        <source>Adds a coat on the water side, like the last one</source>
        <translation>पानीपट्टि, अन्तिम पत्रजस्तै अर्को पत्र थप्छ</translation>
    </message>
    <message>
        <source>%1, against the earth</source>
        <translation>%1, माटोपट्टि</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>%1 हटाउनुहोस्</translation>
    </message>
    <message>
        <source>Take out a coat</source>
        <translation>पत्र हटाउनुहोस्</translation>
    </message>
</context>
<context>
    <name>ui::CutControls</name>
    <message>
        <source>&amp;Cut open</source>
        <translation>काटेर हेर्नुहोस् (&amp;C)</translation>
    </message>
    <message>
        <source>along</source>
        <translation>लम्बाइतिर</translation>
    </message>
    <message>
        <source>across</source>
        <translation>चौडाइतिर</translation>
    </message>
    <message>
        <source>Direction of the cut: along the length or across it</source>
        <translation>काटको दिशा: लम्बाइतिर वा चौडाइतिर</translation>
    </message>
    <message>
        <source>Direction of the cut</source>
        <translation>काटको दिशा</translation>
    </message>
    <message>
        <source>Place of the cut; the middle of the slider is the middle of the tank</source>
        <translation>काटको ठाउँ; स्लाइडरको बीच भनेको ट्याङ्कीको बीच हो</translation>
    </message>
    <message>
        <source>Place of the cut</source>
        <translation>काटको ठाउँ</translation>
    </message>
</context>
<context>
    <name>ui::DeliveryPanel</name>
    <message>
        <source>Plan pipes and overflow</source>
        <translation>पाइप र ओभरफ्लोको योजना बनाउनुहोस्</translation>
    </message>
    <message>
        <source>How does the water come, and where does too much of it go?</source>
        <translation>पानी कसरी आउँछ, र बढी भएको पानी कहाँ जान्छ?</translation>
    </message>
    <message>
        <source>Heads along the line</source>
        <translation>पाइपलाइनभरि हेड</translation>
    </message>
    <message>
        <source>Water level while the line runs wide open</source>
        <translation>पाइपलाइन पूरै खुला हुँदा पानीको सतह</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>स्रोतबाट</translation>
    </message>
    <message>
        <source>The way of the pipe, from its inlet at the source to its end at the tank</source>
        <translation>पाइप जाने बाटो, स्रोतमा पानी पस्ने मुखदेखि ट्याङ्कीको छेउसम्म</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>बारीसम्म</translation>
    </message>
    <message>
        <source>The way of the pipe, from the rim of the tank to the outlets</source>
        <translation>पाइप जाने बाटो, ट्याङ्कीको बिटदेखि निकाससम्म</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>ओभरफ्लो</translation>
    </message>
    <message>
        <source>Water at the rim in a storm</source>
        <translation>मुसलधारे वर्षामा बिटको पानी</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>थेग्रो कुण्ड</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>चुहावट जाँच</translation>
    </message>
</context>
<context>
    <name>ui::DrawingsPanel</name>
    <message>
        <source>Drawing of the tank</source>
        <translation>ट्याङ्कीको नक्सा</translation>
    </message>
    <message>
        <source>Plan and section</source>
        <translation>प्लान र सेक्सन</translation>
    </message>
    <message>
        <source>Setting-out</source>
        <translation>लेआउट</translation>
    </message>
    <message>
        <source>Foot of the wall</source>
        <translation>भित्ताको फेद</translation>
    </message>
    <message>
        <source>Sections A-A and B-B</source>
        <translation>सेक्सन A-A र B-B</translation>
    </message>
</context>
<context>
    <name>ui::EditorPanel</name>
    <message>
        <source>Plan people and dates</source>
        <translation>मान्छे र मितिको योजना बनाउनुहोस्</translation>
    </message>
    <message>
        <source>Place and soil</source>
        <translation>ठाउँ र माटो</translation>
    </message>
    <message>
        <source>Tank, finished inside</source>
        <translation>ट्याङ्की, तयारी भित्री नाप</translation>
    </message>
    <message>
        <source>Stone bed and coats</source>
        <translation>ढुङ्गाको सोलिङ र पत्र</translation>
    </message>
    <message>
        <source>Materials and measures</source>
        <translation>सामग्री र नाप</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>चलनको हिसाब</translation>
    </message>
    <message>
        <source>People and dates</source>
        <translation>मान्छे र मिति</translation>
    </message>
    <message>
        <source>Smallest tank recommended</source>
        <translation>सिफारिसको सबैभन्दा सानो ट्याङ्की</translation>
    </message>
    <message>
        <source>Roof, ground and losses</source>
        <translation>छाना, जमिन र खेर जाने पानी</translation>
    </message>
    <message>
        <source>Needs and target</source>
        <translation>चाहिने पानी र लक्ष्य</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>Override by a licensed engineer</source>
        <translation>इजाजतप्राप्त इन्जिनियरको छुट</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>जमिन र सम्याएको ठाउँ</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>स्रोतको पाइप</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>बारीको पाइप</translation>
    </message>
    <message>
        <source>Overflow and spill path</source>
        <translation>ओभरफ्लो र ओभरफ्लोको कुलो</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>थेग्रो कुण्ड</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>चुहावट जाँच</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहिलो पानी भराइ</translation>
    </message>
    <message>
        <source>Loads and money</source>
        <translation>भारी र पैसा</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>खोज्ने सीमा</translation>
    </message>
</context>
<context>
    <name>ui::Explained</name>
    <message>
        <source>From: %1</source>
        <translation>यीबाट: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>आधार: %1</translation>
    </message>
    <message>
        <source>How is this reckoned?</source>
        <translation>यसको हिसाब कसरी भयो?</translation>
    </message>
    <message>
        <source>How is this reckoned? %1</source>
        <translation>यसको हिसाब कसरी भयो? %1</translation>
    </message>
    <message>
        <source>Unfolded; press to fold</source>
        <translation>खोलिएको छ; बन्द गर्न थिच्नुहोस्</translation>
    </message>
    <message>
        <source>Folded; press to unfold</source>
        <translation>बन्द छ; खोल्न थिच्नुहोस्</translation>
    </message>
    <message>
        <source>There is no number to reckon yet.</source>
        <translation>हिसाब गर्न अझै कुनै अङ्क छैन।</translation>
    </message>
</context>
<context>
    <name>ui::Export</name>
    <message>
        <source>The ending of “%1” is not one of %2.</source>
        <translation>“%1” को अन्त्य %2 मध्ये कुनै होइन।</translation>
    </message>
    <message>
        <source>Keep the bare walls wet</source>
        <translation>खुला भित्ता भिजाइराख्ने</translation>
    </message>
</context>
<context>
    <name>ui::FieldRow</name>
    <message>
        <source>This would do now: press Enter to use it, Escape to leave it.</source>
        <translation>यो हुन्छ: लिन Enter थिच्नुहोस्, छोड्न Escape।</translation>
    </message>
</context>
<context>
    <name>ui::FiguresPanel</name>
    <message>
        <source>To look out for</source>
        <translation>ध्यान दिने कुरा</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>चलनको हिसाब</translation>
    </message>
</context>
<context>
    <name>ui::FindingsList</name>
    <message>
        <source>show</source>
        <translation>देखाउनुहोस्</translation>
    </message>
</context>
<context>
    <name>ui::FlagRow</name>
    <message>
        <source>not known</source>
        <translation>थाहा छैन</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>छ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>छैन</translation>
    </message>
</context>
<context>
    <name>ui::GroundPanel</name>
    <message>
        <source>The ground seen from above</source>
        <translation>माथिबाट देखिने जमिन</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>माथिबाट</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>उचाइका बिन्दु</translation>
    </message>
    <message>
        <source>Platform &amp;level</source>
        <translation>सम्याएको ठाउँको उचाइ (&amp;L)</translation>
    </message>
    <message>
        <source>Level of the platform over the ground at the middle of the tank</source>
        <translation>ट्याङ्कीको बीचको जमिनभन्दा सम्याएको ठाउँ कति माथि</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>सम्याएको ठाउँको उचाइ</translation>
    </message>
    <message>
        <source>Cut %1, fill %2</source>
        <translation>कटान %1, पुराइ %2</translation>
    </message>
    <message>
        <source>Not possible on this ground</source>
        <translation>यो जमिनमा मिल्दैन</translation>
    </message>
    <message>
        <source>no platform</source>
        <translation>सम्याएको ठाउँ छैन</translation>
    </message>
</context>
<context>
    <name>ui::MainWindow</name>
    <message>
        <source>Pit</source>
        <translation>खाडल</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>नक्सा</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>पाना</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>अझै सेभ गरिएको छैन</translation>
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
        <translation>Tankwright बारे</translation>
    </message>
    <message>
        <source>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;Plans small hand-dug farm water tanks lined with soil-cement plaster.&lt;/p&gt;&lt;p&gt;Digging, cement, lifting and open water can hurt and kill. Local codes and licensed practice come first; this program does not replace them.&lt;/p&gt;</source>
        <translation>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;माटो-सिमेन्टको प्लास्टरले अस्तर गरिएका, हातले खनिने साना बारीका पानी ट्याङ्कीको योजना बनाउँछ।&lt;/p&gt;&lt;p&gt;खन्ने काम, सिमेन्ट, भारी उचाल्ने काम र खुला पानीले चोट लाग्न र ज्यान जान सक्छ। स्थानीय नियम-मापदण्ड र इजाजतप्राप्त प्राविधिकको काम पहिला आउँछ; यो कार्यक्रम तिनको सट्टा होइन।&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>सेभ नगरेको काम</translation>
    </message>
    <message>
        <source>This project has changes that are not saved.</source>
        <translation>यो परियोजनामा सेभ नगरेका फेरबदल छन्।</translation>
    </message>
    <message>
        <source>%1 was not opened.</source>
        <translation>%1 खोलिएन।</translation>
    </message>
    <message>
        <source>%1 is open.</source>
        <translation>%1 खुला छ।</translation>
    </message>
    <message>
        <source>Not saved; your changes are still here.</source>
        <translation>सेभ भएन; तपाईंका फेरबदल यहीँ छन्।</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>%1 नाममा सेभ भयो।</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>र अरू %1</translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation>परियोजना खोल्नुहोस्</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright);;All files (*)</source>
        <translation>Tankwright परियोजना (*.tankwright);;सबै फाइल (*)</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>ट्याङ्की</translation>
    </message>
    <message>
        <source>Save the project</source>
        <translation>परियोजना सेभ गर्नुहोस्</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright)</source>
        <translation>Tankwright परियोजना (*.tankwright)</translation>
    </message>
    <message>
        <source>Sheets as PDF (*.pdf)</source>
        <translation>PDF मा पाना (*.pdf)</translation>
    </message>
    <message>
        <source>Tables as CSV (*.csv)</source>
        <translation>CSV मा तालिका (*.csv)</translation>
    </message>
    <message>
        <source>Solids as STL (*.stl)</source>
        <translation>STL मा ठोस आकार (*.stl)</translation>
    </message>
    <message>
        <source>Solids as glTF (*.glb)</source>
        <translation>glTF मा ठोस आकार (*.glb)</translation>
    </message>
    <message>
        <source>Plan and section (*.svg)</source>
        <translation>प्लान र सेक्सन (*.svg)</translation>
    </message>
    <message>
        <source>Picture of the pit (*.png)</source>
        <translation>खाडलको चित्र (*.png)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>एक्सपोर्ट</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>%1 लेखिँदै छ…</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>लेखियो: %1।</translation>
    </message>
    <message>
        <source>%1 was not written. %2</source>
        <translation>%1 लेखिएन। %2</translation>
    </message>
    <message>
        <source>a project without a name</source>
        <translation>नाम नभएको परियोजना</translation>
    </message>
    <message>
        <source>The program stopped before %1 was saved. What you had at %2 is kept.</source>
        <translation>%1 सेभ हुनुअघि कार्यक्रम रोकियो। %2मा भएको तपाईंको काम राखिएको छ।</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>त्यहीँबाट अघि बढ्नुहोस्</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>फाल्नुहोस्</translation>
    </message>
    <message>
        <source>The kept work cannot be used.</source>
        <translation>राखिएको काम चलाउन मिल्दैन।</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>पानी</translation>
    </message>
    <message>
        <source>Read a daily record</source>
        <translation>दैनिक रेकर्ड पढ्नुहोस्</translation>
    </message>
    <message>
        <source>Tables with date, rain_mm, t_min_c, t_max_c (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>date, rain_mm, t_min_c, t_max_c भएका तालिका (*.csv *.txt *.tsv);;सबै फाइल (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 पढ्न सकिएन: %2</translation>
    </message>
    <message>
        <source>%1 was not taken; nothing has changed.</source>
        <translation>%1 लिइएन; केही फेरिएको छैन।</translation>
    </message>
    <message>
        <source>%1: %2 taken.</source>
        <translation>%1: %2 लिइयो।</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>जमिन</translation>
    </message>
    <message>
        <source>Pipes</source>
        <translation>पाइप</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 पढिँदै छ</translation>
    </message>
    <message>
        <source>Read spot heights</source>
        <translation>उचाइका बिन्दु पढ्नुहोस्</translation>
    </message>
    <message>
        <source>Joining %1 spot heights to triangles</source>
        <translation>%1 उचाइका बिन्दु जोडेर त्रिभुज बनाइँदै छ</translation>
    </message>
    <message>
        <source>Tables with east, north, height in metres (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>पूर्व, उत्तर, उचाइ मिटरमा भएका तालिका (*.csv *.txt *.tsv);;सबै फाइल (*)</translation>
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
        <translation>जिल्ला फाइल पढ्नुहोस्</translation>
    </message>
    <message>
        <source>District files (*.district);;All files (*)</source>
        <translation>जिल्ला फाइल (*.district);;सबै फाइल (*)</translation>
    </message>
    <message>
        <source>Write a district file</source>
        <translation>जिल्ला फाइल लेख्नुहोस्</translation>
    </message>
    <message>
        <source>District files (*.district)</source>
        <translation>जिल्ला फाइल (*.district)</translation>
    </message>
    <message>
        <source>%1: prices, records and rates taken.</source>
        <translation>%1: मूल्य, रेकर्ड र दर लिइए।</translation>
    </message>
    <message>
        <source>%1 was not written.</source>
        <translation>%1 लेखिएन।</translation>
    </message>
    <message>
        <source>Dates for a calendar (*.ics)</source>
        <translation>पात्रोका लागि मिति (*.ics)</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>टिपोट</translation>
    </message>
    <message>
        <source>The short form was not taken.</source>
        <translation>छोटकरी लिइएन।</translation>
    </message>
    <message>
        <source>The design is there. What a short form does not hold is as in a new project.</source>
        <translation>डिजाइन आयो। छोटकरीमा नअटाएका कुरा नयाँ परियोजनामा जस्तै छन्।</translation>
    </message>
    <message>
        <source>Open from short form</source>
        <translation>छोटकरीबाट खोल्नुहोस्</translation>
    </message>
    <message>
        <source>Type, paste or scan the line from the cover sheet:</source>
        <translation>पहिलो पानामा भएको लाइन टाइप गर्नुहोस्, टाँस्नुहोस् वा स्क्यान गर्नुहोस्:</translation>
    </message>
    <message>
        <source>The short form can be pasted into a message.</source>
        <translation>छोटकरीलाई सन्देशमा टाँस्न सकिन्छ।</translation>
    </message>
</context>
<context>
    <name>ui::MessageBar</name>
    <message>
        <source>Close this message</source>
        <translation>यो सन्देश बन्द गर्नुहोस्</translation>
    </message>
</context>
<context>
    <name>ui::MoneyPanel</name>
    <message>
        <source>What does it cost, and who gives what?</source>
        <translation>कति खर्च लाग्छ, र कसले के दिन्छ?</translation>
    </message>
    <message>
        <source>Plan the money</source>
        <translation>पैसाको योजना बनाउनुहोस्</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>खर्च हिसाब</translation>
    </message>
    <message>
        <source>Prices. A quantity that is left empty comes from the plan.</source>
        <translation>मूल्य। खाली छोडिएको परिमाण योजनाबाट आउँछ।</translation>
    </message>
    <message>
        <source>Read a district file…</source>
        <translation>जिल्ला फाइल पढ्नुहोस्…</translation>
    </message>
    <message>
        <source>Write a district file…</source>
        <translation>जिल्ला फाइल लेख्नुहोस्…</translation>
    </message>
    <message>
        <source>Money by day</source>
        <translation>दिनदिनको पैसा</translation>
    </message>
    <message>
        <source>Money needed on each day</source>
        <translation>हरेक दिन चाहिने पैसा</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>अस्तर</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>वार्षिक लागतअनुसार अस्तर</translation>
    </message>
    <message>
        <source>How sure is it?</source>
        <translation>कति पक्का छ?</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>हिसाब हुँदै छ…</translation>
    </message>
    <message>
        <source>What the chart is about</source>
        <translation>चार्ट केको हो</translation>
    </message>
    <message>
        <source>Spread of one outcome and what drives it</source>
        <translation>एउटा नतिजाको घटबढ र त्यो केले ल्याउँछ</translation>
    </message>
    <message>
        <source>How far each may lie from the value in force</source>
        <translation>चलिरहेको मानबाट हरेक कति टाढा हुन सक्छ</translation>
    </message>
    <message>
        <source>Price of the lining alone, digging left out. For soil-cement an empty price is reckoned from the bill and the works.</source>
        <translation>खन्ने खर्च छोडेर, अस्तरको मात्र मूल्य। माटो-सिमेन्टको मूल्य खाली भए खर्च हिसाब र निर्माणबाट निकालिन्छ।</translation>
    </message>
</context>
<context>
    <name>ui::NotesPanel</name>
    <message>
        <source>In short</source>
        <translation>छोटकरीमा</translation>
    </message>
    <message>
        <source>Put these in place of what was entered</source>
        <translation>राखिएको सट्टा यी राख्नुहोस्</translation>
    </message>
    <message>
        <source>Put the notes in place</source>
        <translation>टिपोट लागू गर्नुहोस्</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>Ask in the tab Water whether the water lasts.</source>
        <translation>पानी पुग्छ कि पुग्दैन, “पानी” ट्याबमा हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>No flow measured yet.</source>
        <translation>बहाव अझै नापिएको छैन।</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>बाल्टी र घडी: भाँडो भरिन कति समय लाग्छ नाप्नुहोस्, तीन पटकभन्दा बढी</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>सिसी</translation>
    </message>
    <message>
        <source>Layers of soil settled in a jar, read with a ruler</source>
        <translation>सिसीमा थिग्रिएका माटोका तह, रुलरले नापेर</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>डल्लो र रिबन</translation>
    </message>
    <message>
        <source>Moist soil squeezed to a ball and pushed to a ribbon</source>
        <translation>ओसिलो माटो थिचेर डल्लो, धकेलेर रिबन बनाएको</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>जाँच खाडल</translation>
    </message>
    <message>
        <source>Layers of the test pits, from the ground down</source>
        <translation>जाँच खाडलका तह, जमिनदेखि तल</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>ढाल</translation>
    </message>
    <message>
        <source>Settings of the hose level, one after the other down the fall</source>
        <translation>लेभल पाइपले नापेका पटक, ढालतिर एकपछि अर्को</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>चुहावट</translation>
    </message>
    <message>
        <source>Plan pipes and overflow in the tab Pipes first.</source>
        <translation>पहिले “पाइप” ट्याबमा पाइप र ओभरफ्लो योजनामा राख्नुहोस्।</translation>
    </message>
</context>
<context>
    <name>ui::NumberRow</name>
    <message>
        <source>by soil</source>
        <translation>माटोअनुसार</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>थाहा छैन</translation>
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
        <translation>सँगसँगै</translation>
    </message>
    <message>
        <source>The options side by side at one scale</source>
        <translation>विकल्प सँगसँगै, एउटै स्केलमा</translation>
    </message>
    <message>
        <source>Find a size</source>
        <translation>साइज खोज्नुहोस्</translation>
    </message>
    <message>
        <source>Try all sizes</source>
        <translation>सबै साइज हेर्नुहोस्</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>रोक्नुहोस्</translation>
    </message>
    <message>
        <source>Share of the sizes tried</source>
        <translation>हेरिसकिएका साइजको भाग</translation>
    </message>
    <message>
        <source>Money against years without a dry day</source>
        <translation>पैसा र पानी नपुगेको दिन नभएका वर्ष</translation>
    </message>
    <message>
        <source>%1. Click, or press Enter, to take this size.</source>
        <translation>%1। यो साइज लिन क्लिक गर्नुहोस्, वा Enter थिच्नुहोस्।</translation>
    </message>
    <message>
        <source>Take the cheapest that meets the target</source>
        <translation>लक्ष्य पुग्ने सबैभन्दा सस्तो लिनुहोस्</translation>
    </message>
    <message>
        <source>Take the largest within the limits</source>
        <translation>सीमाभित्रको सबैभन्दा ठूलो लिनुहोस्</translation>
    </message>
    <message>
        <source>Sizes within the limits of footprint and depth: %1.</source>
        <translation>ओगट्ने क्षेत्र र गहिराइको सीमाभित्रका साइज: %1।</translation>
    </message>
    <message>
        <source>The limits stand at the left under “Limits of the search”: with ten bags as the limit, this answers what ten bags can build.</source>
        <translation>सीमा बायाँतिर “खोज्ने सीमा” मा छन्: सीमा दस बोरा राखे, दस बोराले के बन्छ भन्ने उत्तर यहीँ आउँछ।</translation>
    </message>
    <message>
        <source>The project has changed since: try again.</source>
        <translation>त्यसपछि परियोजना फेरिएको छ: फेरि हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Take a size</source>
        <translation>साइज लिनुहोस्</translation>
    </message>
    <message>
        <source>The limit on people is not used: people and dates are not part of this project.</source>
        <translation>मान्छेको सीमा चलाइएको छैन: मान्छे र मिति यो परियोजनामा छैनन्।</translation>
    </message>
    <message>
        <source>The limit on money is not used: prices are missing.</source>
        <translation>पैसाको सीमा चलाइएको छैन: मूल्य छुटेका छन्।</translation>
    </message>
</context>
<context>
    <name>ui::OptionsTable</name>
    <message>
        <source>Options side by side</source>
        <translation>विकल्प सँगसँगै</translation>
    </message>
    <message>
        <source>Add an option</source>
        <translation>विकल्प थप्नुहोस्</translation>
    </message>
    <message>
        <source>Take out the option</source>
        <translation>विकल्प हटाउनुहोस्</translation>
    </message>
    <message>
        <source>Build this one</source>
        <translation>यही बनाउनुहोस्</translation>
    </message>
    <message>
        <source>Field in which the options differ</source>
        <translation>विकल्पहरू फरक हुने कोठा</translation>
    </message>
    <message>
        <source>Differ also in…</source>
        <translation>यसमा पनि फरक…</translation>
    </message>
    <message>
        <source>Build another option</source>
        <translation>अर्को विकल्प बनाउनुहोस्</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>पहिलेजस्तै</translation>
    </message>
    <message>
        <source>Field in which options differ</source>
        <translation>विकल्प फरक हुने कोठा</translation>
    </message>
    <message>
        <source>A, as it stands</source>
        <translation>A, अहिले जस्तो छ</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>नाम</translation>
    </message>
    <message>
        <source>As A. Type a value to change it.</source>
        <translation>A जस्तै। फेर्न मान लेख्नुहोस्।</translation>
    </message>
    <message>
        <source>Name of an option</source>
        <translation>विकल्पको नाम</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>हिसाब हुँदै छ…</translation>
    </message>
</context>
<context>
    <name>ui::PitPanel</name>
    <message>
        <source>&amp;Dimensions</source>
        <translation>नाप (&amp;D)</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>खाडल तीन आयाममा</translation>
    </message>
    <message>
        <source>Oblique</source>
        <translation>छड्के</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>प्लान</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>सेक्सन</translation>
    </message>
    <message>
        <source>View: %1</source>
        <translation>दृश्य: %1</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>तह</translation>
    </message>
    <message>
        <source>Show and hide the ground, each layer, the water and the person</source>
        <translation>जमिन, हरेक तह, पानी र मान्छे देखाउनुहोस् वा लुकाउनुहोस्</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>पानी (&amp;W)</translation>
    </message>
    <message>
        <source>Water level above the finished floor</source>
        <translation>तयारी भुइँमाथि पानीको सतह</translation>
    </message>
    <message>
        <source>To the overflow</source>
        <translation>ओभरफ्लोसम्म</translation>
    </message>
    <message>
        <source>%1 deep: %2</source>
        <translation>%1 गहिरो: %2</translation>
    </message>
    <message>
        <source>What the water level follows</source>
        <translation>पानीको सतह केअनुसार हुन्छ</translation>
    </message>
    <message>
        <source>level set by hand</source>
        <translation>हातले मिलाएको सतह</translation>
    </message>
    <message>
        <source>day of a middle year</source>
        <translation>मझौला वर्षको दिन</translation>
    </message>
    <message>
        <source>day of a dry year</source>
        <translation>सुक्खा वर्षको दिन</translation>
    </message>
    <message>
        <source>In a dry year the tank holds less than in nine of ten years on each day; the tab Water has the weather</source>
        <translation>सुक्खा वर्षमा हरेक दिन ट्याङ्कीमा १० मध्ये ९ वर्षमा भन्दा कम पानी हुन्छ; मौसम “पानी” ट्याबमा छ</translation>
    </message>
    <message>
        <source>%1: %2 deep, %3</source>
        <translation>%1: %2 गहिरो, %3</translation>
    </message>
</context>
<context>
    <name>ui::PointTable</name>
    <message>
        <source>Clear outline</source>
        <translation>भित्री घेरा</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>बिन्दु थप्नुहोस्</translation>
    </message>
    <message>
        <source>Remove the point</source>
        <translation>बिन्दु हटाउनुहोस्</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>टाँस्नुहोस्</translation>
    </message>
</context>
<context>
    <name>ui::RowTable</name>
    <message>
        <source>Add a row</source>
        <translation>पङ्क्ति थप्नुहोस्</translation>
    </message>
    <message>
        <source>Take out the row</source>
        <translation>यो पङ्क्ति हटाउनुहोस्</translation>
    </message>
    <message>
        <source>Paste cells</source>
        <translation>कोठा टाँस्नुहोस्</translation>
    </message>
    <message>
        <source>Take out a row</source>
        <translation>पङ्क्ति हटाउनुहोस्</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>केही टाँसिएन।</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>हो</translation>
    </message>
    <message>
        <source>no</source>
        <translation>होइन</translation>
    </message>
</context>
<context>
    <name>ui::SheetsPanel</name>
    <message>
        <source>Page before</source>
        <translation>अघिल्लो पृष्ठ</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>अर्को पृष्ठ</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>पृष्ठ</translation>
    </message>
    <message>
        <source>Size of the page on the screen</source>
        <translation>पर्दामा पृष्ठको साइज</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>पूरा पृष्ठ</translation>
    </message>
    <message>
        <source>Export PDF…</source>
        <translation>PDF एक्सपोर्ट…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>प्रिन्ट…</translation>
    </message>
    <message>
        <source>Sheets to print</source>
        <translation>छाप्ने पाना</translation>
    </message>
    <message>
        <source>Tick what is to be printed</source>
        <translation>छाप्नुपर्ने पानामा चिनो लगाउनुहोस्</translation>
    </message>
    <message>
        <source>Language of the sheets</source>
        <translation>पानाको भाषा</translation>
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
        <translation>सबै</translation>
    </message>
    <message>
        <source>Farmers</source>
        <translation>किसान</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>डकर्मी</translation>
    </message>
</context>
<context>
    <name>ui::StageBar</name>
    <message>
        <source>To the stage before</source>
        <translation>अघिल्लो चरणमा</translation>
    </message>
    <message>
        <source>To the next stage</source>
        <translation>अर्को चरणमा</translation>
    </message>
    <message>
        <source>Day of the works</source>
        <translation>निर्माणको दिन</translation>
    </message>
    <message>
        <source>Shows the pit as it stands on that day; at the far end the tank is finished</source>
        <translation>त्यो दिन खाडल कस्तो हुन्छ देखाउँछ; अन्तिम छेउमा ट्याङ्की तयार हुन्छ</translation>
    </message>
    <message>
        <source>&amp;Building</source>
        <translation>बनाउने (&amp;B)</translation>
    </message>
    <message>
        <source>finished tank</source>
        <translation>तयारी ट्याङ्की</translation>
    </message>
</context>
<context>
    <name>ui::SurveyTable</name>
    <message>
        <source>East</source>
        <translation>पूर्व</translation>
    </message>
    <message>
        <source>North</source>
        <translation>उत्तर</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>उचाइ</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>र अरू %1</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>उचाइका बिन्दु</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>बिन्दु थप्नुहोस्</translation>
    </message>
    <message>
        <source>Remove points</source>
        <translation>बिन्दु हटाउनुहोस्</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>टाँस्नुहोस्</translation>
    </message>
    <message>
        <source>Read a table…</source>
        <translation>तालिका पढ्नुहोस्…</translation>
    </message>
    <message>
        <source>Reading the table</source>
        <translation>तालिका पढिँदै छ</translation>
    </message>
    <message>
        <source>Nothing has changed.</source>
        <translation>केही फेरिएको छैन।</translation>
    </message>
    <message>
        <source>Taken off every point: %1 east, %2 north.</source>
        <translation>हरेक बिन्दुबाट घटाइएको: पूर्व %1, उत्तर %2।</translation>
    </message>
    <message>
        <source>Paste spot heights</source>
        <translation>उचाइका बिन्दु टाँस्नुहोस्</translation>
    </message>
    <message>
        <source>Doubtful spot heights</source>
        <translation>शङ्का लाग्ने उचाइका बिन्दु</translation>
    </message>
    <message>
        <source>Puts the copied rows in place of all points: east, north, height, in metres</source>
        <translation>सबै बिन्दु हटाएर कपी गरिएका पङ्क्ति राख्छ: पूर्व, उत्तर, उचाइ, मिटरमा</translation>
    </message>
    <message>
        <source>The tank stood outside the survey and was moved to its middle: %1 east, %2 north.</source>
        <translation>ट्याङ्की नापीभन्दा बाहिर थियो, त्यसैले नापीको बीचमा सारियो: पूर्व %1, उत्तर %2।</translation>
    </message>
    <message>
        <source>The numbers were taken as metres.</source>
        <translation>अङ्कहरू मिटरमा मानिए।</translation>
    </message>
</context>
<context>
    <name>ui::TaskControls</name>
    <message>
        <source>As usual</source>
        <translation>सधैंजस्तै</translation>
    </message>
    <message>
        <source>The task starts on this day or later</source>
        <translation>काम यो दिन वा त्यसपछि सुरु हुन्छ</translation>
    </message>
    <message>
        <source>People on the task</source>
        <translation>काममा लाग्ने मान्छे</translation>
    </message>
    <message>
        <source>Forget what was wished for this task</source>
        <translation>यो कामको चाहना हटाउनुहोस्</translation>
    </message>
    <message>
        <source>not before</source>
        <translation>यसअघि होइन</translation>
    </message>
    <message>
        <source>people</source>
        <translation>मान्छे</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>यसअघि होइन</translation>
    </message>
    <message>
        <source>People on a task</source>
        <translation>एउटा काममा लाग्ने मान्छे</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 सार्नुहोस्</translation>
    </message>
    <message>
        <source>Task as usual</source>
        <translation>काम सधैंजस्तै</translation>
    </message>
    <message>
        <source>Choose a bar to move it or to give it more people.</source>
        <translation>सार्न वा मान्छे थप्न एउटा पट्टी छान्नुहोस्।</translation>
    </message>
</context>
<context>
    <name>ui::TextRow</name>
    <message>
        <source>year-month-day</source>
        <translation>वर्ष-महिना-दिन</translation>
    </message>
</context>
<context>
    <name>ui::Waiting</name>
    <message>
        <source>Give up</source>
        <translation>छोड्नुहोस्</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>रोकिँदै छ…</translation>
    </message>
</context>
<context>
    <name>ui::WaterChartsView</name>
    <message>
        <source>Level through the year</source>
        <translation>वर्षभरिको सतह</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>आउने र चाहिने पानी</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>ट्याङ्कीको साइज र ड्याङ</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>भण्डारण</translation>
    </message>
    <message>
        <source>Water in the tank through the year</source>
        <translation>वर्षभरि ट्याङ्कीको पानी</translation>
    </message>
    <message>
        <source>Supply and need by month</source>
        <translation>महिना-महिना आउने र चाहिने पानी</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank and area of the beds</source>
        <translation>१० मध्ये कति वर्ष वर्षभरि पानी, ट्याङ्कीको साइज र ड्याङको क्षेत्रफलअनुसार</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank</source>
        <translation>१० मध्ये कति वर्ष वर्षभरि पानी, ट्याङ्कीको साइजअनुसार</translation>
    </message>
</context>
<context>
    <name>ui::WaterPanel</name>
    <message>
        <source>Crop %1</source>
        <translation>बाली %1</translation>
    </message>
    <message>
        <source>Ask whether the water lasts</source>
        <translation>पानी पुग्छ कि सोध्नुहोस्</translation>
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
        <translation>ड्याङ र गाईवस्तु</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>What the tap or spring gives, month by month</source>
        <translation>धारा वा मूलले महिना-महिना दिने पानी</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>बाल्टी र घडी: भाँडो भरिन कति समय लाग्छ नाप्नुहोस्, तीन पटकभन्दा बढी</translation>
    </message>
    <message>
        <source>Use the medians as flows</source>
        <translation>बीचका मानलाई बहाव मान्नुहोस्</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>ड्याङ</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>गाईवस्तु</translation>
    </message>
    <message>
        <source>Crops of your own, beside the table of crops</source>
        <translation>बालीको तालिकाबाहेक तपाईंका आफ्नै बाली</translation>
    </message>
    <message>
        <source>Means of many years, month by month</source>
        <translation>धेरै वर्षको औसत, महिना-महिना</translation>
    </message>
    <message>
        <source>Read a daily record…</source>
        <translation>दैनिक रेकर्ड पढ्नुहोस्…</translation>
    </message>
    <message>
        <source>Take the record out</source>
        <translation>रेकर्ड हटाउनुहोस्</translation>
    </message>
    <message>
        <source>Enter the latitude and the weather, and the answer stands here.</source>
        <translation>अक्षांश र मौसम राख्नुहोस्, अनि उत्तर यहाँ आउँछ।</translation>
    </message>
    <message>
        <source>Will the water last the dry season?</source>
        <translation>सुक्खा यामभरि पानी पुग्छ कि?</translation>
    </message>
    <message>
        <source>Enter the weather, and the answer stands here.</source>
        <translation>मौसम राख्नुहोस्, अनि उत्तर यहाँ आउँछ।</translation>
    </message>
    <message>
        <source>Enter the latitude, and the answer stands here.</source>
        <translation>अक्षांश राख्नुहोस्, अनि उत्तर यहाँ आउँछ।</translation>
    </message>
</context>
<context>
    <name>ui::WorksPanel</name>
    <message>
        <source>Who does what, when, and can each coat be finished in a day?</source>
        <translation>कसले, के, कहिले गर्छ, र हरेक पत्र एकै दिनमा सकिन्छ कि?</translation>
    </message>
    <message>
        <source>Plan labour and dates</source>
        <translation>कामदार र मितिको योजना बनाउनुहोस्</translation>
    </message>
    <message>
        <source>Bars of all tasks over the days</source>
        <translation>दिनहरूमा सबै कामका पट्टी</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>मिति</translation>
    </message>
    <message>
        <source>People</source>
        <translation>मान्छे</translation>
    </message>
    <message>
        <source>People on each day</source>
        <translation>हरेक दिनका मान्छे</translation>
    </message>
    <message>
        <source>Days on which nobody works, besides the rest day of the week</source>
        <translation>हप्ताको बिदाको दिनबाहेक, कसैले काम नगर्ने दिन</translation>
    </message>
    <message>
        <source>Wishes for single tasks: dragging a bar makes one</source>
        <translation>एक-एक कामका चाहना: पट्टी तान्दा एउटा चाहना बन्छ</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>पत्र एकै दिनमा</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहिलो पानी भराइ</translation>
    </message>
    <message>
        <source>There is no coat to fill after.</source>
        <translation>पानी भर्नुअघि लगाउने पत्र नै छैन।</translation>
    </message>
    <message>
        <source>Water level and wet walls, day by day</source>
        <translation>पानीको सतह र भिजाउने भित्ता, दिनदिनै</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>मौसम</translation>
    </message>
    <message>
        <source>Enter the weather in the tab Water, and the weeks stand here.</source>
        <translation>“पानी” ट्याबमा मौसम राख्नुहोस्, अनि हप्ताहरू यहाँ आउँछन्।</translation>
    </message>
    <message>
        <source>Chance of undisturbed coats in each week of the year</source>
        <translation>वर्षको हरेक हप्तामा पत्रमा बाधा नपर्ने सम्भावना</translation>
    </message>
    <message>
        <source>Start so that the coats fall in the best week</source>
        <translation>पत्रहरू सबैभन्दा राम्रो हप्तामा पर्ने गरी सुरु गर्नुहोस्</translation>
    </message>
    <message>
        <source>Best start</source>
        <translation>सबैभन्दा राम्रो सुरु</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>ठाउँमै नापिएको</translation>
    </message>
    <message>
        <source>Trial batches: mix one, put it on, measure what it covers</source>
        <translation>जाँच घान: एउटा मुछ्नुहोस्, लगाउनुहोस्, कति ढाक्छ नाप्नुहोस्</translation>
    </message>
    <message>
        <source>Work done and the person-days it took</source>
        <translation>भएको काम र लागेको जनदिन</translation>
    </message>
    <message>
        <source>The district&apos;s own rates, person-days for each unit of work</source>
        <translation>जिल्लाका आफ्नै दर, एक एकाइ कामको जनदिन</translation>
    </message>
    <message>
        <source>Change between the records and what is entered</source>
        <translation>रेकर्ड र राखिएको मानबीच साट्नुहोस्</translation>
    </message>
    <message>
        <source>Records in force</source>
        <translation>रेकर्ड चलिरहेका</translation>
    </message>
</context>
<context>
    <name>ui::group::GroupView</name>
    <message>
        <source>Blank</source>
        <translation>खाली पर्दा</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>खाडल तीन आयाममा</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>अट्ने</translation>
    </message>
    <message>
        <source>Water all year</source>
        <translation>वर्षभरि पानी</translation>
    </message>
    <message>
        <source>Usable</source>
        <translation>काम लाग्ने</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सिमेन्ट</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>लागत</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>चलाउनुहोस्</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>1 Size</source>
        <translation>1 साइज</translation>
    </message>
    <message>
        <source>2 Options</source>
        <translation>2 विकल्प</translation>
    </message>
    <message>
        <source>3 Building</source>
        <translation>3 बनाउने</translation>
    </message>
    <message>
        <source>4 Water</source>
        <translation>4 पानी</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>निस्कनुहोस्</translation>
    </message>
    <message>
        <source>Group view – Tankwright</source>
        <translation>समूह दृश्य – Tankwright</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <comment>years</comment>
        <translation>१० मध्ये %1</translation>
    </message>
    <message>
        <source>%1, in a dry year: %2 in the tank</source>
        <translation>%1, सुक्खा वर्षमा: ट्याङ्कीमा %2</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>रोक्नुहोस्</translation>
    </message>
</context>
<context>
    <name>ui::group::OptionsStrip</name>
    <message>
        <source>There are no options yet: the tab Options adds them.</source>
        <translation>अहिलेसम्म विकल्प छैन: विकल्प ट्याबबाट थप्नुहोस्।</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>अट्ने</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सिमेन्ट</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>लागत</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>काम</translation>
    </message>
</context>
<context>
    <name>ui::words</name>
    <message>
        <source>level</source>
        <translation>समथर</translation>
    </message>
    <message>
        <source>even slope</source>
        <translation>एकनास ढाल</translation>
    </message>
    <message>
        <source>surveyed spot heights</source>
        <translation>नापीका उचाइका बिन्दु</translation>
    </message>
    <message>
        <source>stiff clay</source>
        <translation>कडा चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>firm loam</source>
        <translation>कडा दोमट माटो</translation>
    </message>
    <message>
        <source>sandy</source>
        <translation>बलौटे</translation>
    </message>
    <message>
        <source>loose fill</source>
        <translation>पुरेको खुकुलो माटो</translation>
    </message>
    <message>
        <source>soft and wet</source>
        <translation>गिलो र भिजेको</translation>
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
        <translation>गोलो</translation>
    </message>
    <message>
        <source>polygon</source>
        <translation>बहुभुज</translation>
    </message>
    <message>
        <source>finished floor</source>
        <translation>तयारी भुइँ</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>बिट</translation>
    </message>
    <message>
        <source>none</source>
        <translation>छैन</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>सोमबार</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>मङ्गलबार</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>बुधबार</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>बिहीबार</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>शुक्रबार</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>शनिबार</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>आइतबार</translation>
    </message>
    <message>
        <source>Name of the tank as it shall stand on every sheet.</source>
        <translation>हरेक पानामा छापिने ट्याङ्कीको नाम।</translation>
    </message>
    <message>
        <source>Village and field where the tank is dug.</source>
        <translation>ट्याङ्की खन्ने गाउँ र बारी।</translation>
    </message>
    <message>
        <source>Who made this plan and answers questions about it.</source>
        <translation>यो योजना कसले बनायो र यसबारे प्रश्नको उत्तर कसले दिन्छ।</translation>
    </message>
    <message>
        <source>Short name of the money used, for example Rs.</source>
        <translation>चल्ने पैसाको छोटो नाम, जस्तै Rs.</translation>
    </message>
    <message>
        <source>Degrees north of the equator; south is negative. Leave empty if not known.</source>
        <translation>भूमध्यरेखाबाट उत्तर कति डिग्री; दक्षिण ऋणात्मक (-)। थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>From a map or a phone, at the tank. Leave empty if not known.</source>
        <translation>ट्याङ्कीको ठाउँमा, नक्सा वा फोनबाट। थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>How the natural ground lies where the tank is dug, before any levelling.</source>
        <translation>ट्याङ्की खन्ने ठाउँमा सम्याउनुअघि सक्कली जमिन कस्तो छ।</translation>
    </message>
    <message>
        <source>Drop of the natural ground straight downhill over 100 of level distance.</source>
        <translation>सक्कली जमिन सीधा ओरालोतिर १०० समथर दूरीमा कति झर्छ।</translation>
    </message>
    <message>
        <source>Compass direction in which water would run off: north 0, east 90, south 180.</source>
        <translation>पानी बगेर जाने कम्पास दिशा: उत्तर ०, पूर्व ९०, दक्षिण १८०।</translation>
    </message>
    <message>
        <source>The weakest soil found in the trial pit down to the pit floor; choose “not known” rather than guess.</source>
        <translation>जाँच खाडलमा पिँधसम्म भेटिएको सबैभन्दा कमजोर माटो; अड्कल गर्नुभन्दा “थाहा छैन” छान्नुहोस्।</translation>
    </message>
    <message>
        <source>Clay in the soil used for plaster, from a jar test. Leave empty if not known.</source>
        <translation>प्लास्टरमा हाल्ने माटोमा चिम्टाइलो माटोको भाग, सिसी जाँचबाट। थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>From the ground down to ground water at its highest in the year. Leave empty if not known.</source>
        <translation>जमिनमुनिको पानी वर्षमा सबैभन्दा माथि आउँदा जमिनबाट कति तल हुन्छ। थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Level distance from the pit edge to the nearest terrace edge or bank downhill.</source>
        <translation>खाडलको डिलबाट ओरालोतिरको सबैभन्दा नजिकको कान्लाको डिल वा भीरसम्मको समथर दूरी।</translation>
    </message>
    <message>
        <source>Drop of that terrace edge or bank.</source>
        <translation>त्यो कान्लाको डिल वा भीर कति अग्लो छ।</translation>
    </message>
    <message>
        <source>Whether the pit floor, or part of it, lies on rock.</source>
        <translation>खाडलको पिँध वा त्यसको केही भाग चट्टानमा पर्छ कि पर्दैन।</translation>
    </message>
    <message>
        <source>Level distance to the nearest house, path or shed that escaping water would reach.</source>
        <translation>फुटेर निस्किएको पानी पुग्न सक्ने सबैभन्दा नजिकको घर, बाटो वा गोठसम्मको समथर दूरी।</translation>
    </message>
    <message>
        <source>Whether children who cannot yet swim or climb out live or play within 20 m.</source>
        <translation>पौडी खेल्न वा बाहिर उक्लिन नजान्ने बच्चा २० m भित्र बस्छन् वा खेल्छन् कि।</translation>
    </message>
    <message>
        <source>Clear length of the smallest tank that builders here recommend.</source>
        <translation>यहाँका बनाउनेहरूले सिफारिस गर्ने सबैभन्दा सानो ट्याङ्कीको भित्री लम्बाइ।</translation>
    </message>
    <message>
        <source>Clear width of the smallest tank that builders here recommend.</source>
        <translation>यहाँका बनाउनेहरूले सिफारिस गर्ने सबैभन्दा सानो ट्याङ्कीको भित्री चौडाइ।</translation>
    </message>
    <message>
        <source>Clear depth of the smallest tank that builders here recommend.</source>
        <translation>यहाँका बनाउनेहरूले सिफारिस गर्ने सबैभन्दा सानो ट्याङ्कीको भित्री गहिराइ।</translation>
    </message>
    <message>
        <source>Shape of the finished floor seen from above.</source>
        <translation>माथिबाट हेर्दा तयारी भुइँको आकार।</translation>
    </message>
    <message>
        <source>Whether the clear sizes below are those of the finished floor or of the opening at the rim.</source>
        <translation>तलका भित्री नाप तयारी भुइँका हुन् कि बिटको मुखका।</translation>
    </message>
    <message>
        <source>Finished inside length that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>पानीले छुने तयारी भित्री लम्बाइ, प्लास्टरदेखि प्लास्टरसम्म; खाडल योभन्दा ठूलो खनिन्छ।</translation>
    </message>
    <message>
        <source>Finished inside width that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>पानीले छुने तयारी भित्री चौडाइ, प्लास्टरदेखि प्लास्टरसम्म; खाडल योभन्दा ठूलो खनिन्छ।</translation>
    </message>
    <message>
        <source>Finished inside diameter that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>पानीले छुने तयारी भित्री व्यास, प्लास्टरदेखि प्लास्टरसम्म; खाडल योभन्दा ठूलो खनिन्छ।</translation>
    </message>
    <message>
        <source>Corners of the finished inside in plan, anticlockwise, with no corner bent inward.</source>
        <translation>प्लानमा तयारी भित्री भागका कुना, घडीको उल्टो दिशामा, कुनै कुना भित्रतिर नबाङ्गिएको।</translation>
    </message>
    <message>
        <source>Finished floor straight up to the rim; the pit is deeper by the coats and the stone bed.</source>
        <translation>तयारी भुइँदेखि सीधा माथि बिटसम्म; खाडल पत्र र ढुङ्गाको सोलिङ जति थप गहिरो हुन्छ।</translation>
    </message>
    <message>
        <source>How far the wall leans outward for each unit of height: 0 is upright, 0.10 is 1 in 10.</source>
        <translation>हरेक एक एकाइ उचाइमा भित्ता कति बाहिर ढल्किन्छ: ० भनेको ठाडो, ०.१० भनेको १० मा १।</translation>
    </message>
    <message>
        <source>Rounding of the corners of the clear floor in plan; 0 leaves them sharp.</source>
        <translation>प्लानमा भित्री भुइँका कुनाको गोलाइ; ० भए कुना चुच्चै रहन्छन्।</translation>
    </message>
    <message>
        <source>Height from the overflow level, where water runs out, up to the rim.</source>
        <translation>पानी बाहिर जाने ओभरफ्लोको सतहदेखि बिटसम्मको उचाइ।</translation>
    </message>
    <message>
        <source>Water left above the finished floor that the outlet cannot draw.</source>
        <translation>तयारी भुइँमाथि रहने, निकासबाट झिक्न नसकिने पानी।</translation>
    </message>
    <message>
        <source>Thickness of the compacted stone under the floor; there is none behind the walls.</source>
        <translation>भुइँमुनि खाँदेको ढुङ्गाको मोटाइ; भित्तापछाडि ढुङ्गा हुँदैन।</translation>
    </message>
    <message>
        <source>Volume of loose soil, sand and cement that makes one volume of plaster on the wall.</source>
        <translation>भित्तामा एक भाग प्लास्टर बन्न लाग्ने खुकुलो माटो, बालुवा र सिमेन्टको आयतन।</translation>
    </message>
    <message>
        <source>Extra plaster for what falls, sticks to tools or sets before it is placed.</source>
        <translation>खस्ने, औजारमा टाँसिने वा लगाउनुअघि जम्ने प्लास्टरका लागि थप।</translation>
    </message>
    <message>
        <source>Extra for hollows in the dug faces, on the stone bed and on coat 1 alone.</source>
        <translation>खनेका सतहका खाल्डाका लागि थप, ढुङ्गाको सोलिङ र पत्र १मा मात्र।</translation>
    </message>
    <message>
        <source>Weight printed on the cement bag sold nearby.</source>
        <translation>नजिकै बिक्ने सिमेन्टको बोरामा छापिएको तौल।</translation>
    </message>
    <message>
        <source>Weight of cement poured loose into a gauge box.</source>
        <translation>नाप्ने बाकसमा खुकुलो खन्याएको सिमेन्टको तौल।</translation>
    </message>
    <message>
        <source>Finished thickness of the coat, measured square to the face.</source>
        <translation>पत्रको तयारी मोटाइ, सतहसँग गुनियामा नापेको।</translation>
    </message>
    <message>
        <source>Parts of sieved soil in the mix, by loose volume.</source>
        <translation>मिसावटमा चालेको माटोको भाग, खुकुलो नापले।</translation>
    </message>
    <message>
        <source>Parts of sand in the mix, by loose volume.</source>
        <translation>मिसावटमा बालुवाको भाग, खुकुलो नापले।</translation>
    </message>
    <message>
        <source>Parts of cement in the mix, by loose volume.</source>
        <translation>मिसावटमा सिमेन्टको भाग, खुकुलो नापले।</translation>
    </message>
    <message>
        <source>Days for which the coat is kept under wet sacks, rest days too.</source>
        <translation>पत्रलाई भिजेको जुटले छोपिराख्ने दिन, बिदाका दिन पनि।</translation>
    </message>
    <message>
        <source>Rounded fillet between clear floor and wall; 0 leaves a sharp corner.</source>
        <translation>भित्री भुइँ र भित्ताबीचको गोलाइ; ० भए कुना चुच्चै रहन्छ।</translation>
    </message>
    <message>
        <source>Width of the plaster collar let into the ground around the top, outward of the coats; 0 for none.</source>
        <translation>माथि वरिपरि जमिनमा गाडिने प्लास्टरको घेराको चौडाइ, पत्रभन्दा बाहिरतिर; नभए ०।</translation>
    </message>
    <message>
        <source>Thickness of that collar; 0 for none.</source>
        <translation>त्यो घेराको मोटाइ; नभए ०।</translation>
    </message>
    <message>
        <source>Share of soil and sand that stays on the sieve and cannot be used.</source>
        <translation>चाल्नीमा अड्केर काम नलाग्ने माटो र बालुवाको भाग।</translation>
    </message>
    <message>
        <source>How much more room damp sand takes than dry sand.</source>
        <translation>ओसिलो बालुवाले सुक्खा बालुवाभन्दा कति बढी ठाउँ लिन्छ।</translation>
    </message>
    <message>
        <source>Volume of loose stone to buy for one volume of compacted bed.</source>
        <translation>एक भाग खाँदेको सोलिङलाई किन्नुपर्ने खुकुलो ढुङ्गाको आयतन।</translation>
    </message>
    <message>
        <source>Water to mix one volume of mortar.</source>
        <translation>एक भाग मसला मुछ्न लाग्ने पानी।</translation>
    </message>
    <message>
        <source>Water to keep one unit of plastered face wet for a day.</source>
        <translation>प्लास्टर गरेको एक एकाइ सतह एक दिन भिजाइराख्न लाग्ने पानी।</translation>
    </message>
    <message>
        <source>Face that one sack covers once laps are taken off.</source>
        <translation>खप्टिने भाग घटाएर एउटा जुटले ढाक्ने सतह।</translation>
    </message>
    <message>
        <source>Sacks beyond those that just cover the face.</source>
        <translation>सतह ठ्याक्कै ढाक्नेभन्दा बढी राखिने जुट।</translation>
    </message>
    <message>
        <source>Measure it: fill the box with water from a bottle of known size.</source>
        <translation>नाप्नुहोस्: नाप थाहा भएको बोतलले बाकसमा पानी भर्नुहोस्।</translation>
    </message>
    <message>
        <source>Measure it: fill the pan level with water from a bottle of known size.</source>
        <translation>नाप्नुहोस्: नाप थाहा भएको बोतलले तसलामा मुखसम्म पानी भर्नुहोस्।</translation>
    </message>
    <message>
        <source>Measure it: fill the bucket with water from a bottle of known size.</source>
        <translation>नाप्नुहोस्: नाप थाहा भएको बोतलले बाल्टीमा पानी भर्नुहोस्।</translation>
    </message>
    <message>
        <source>Soil for such a tank as people reckon it today; shown beside the computed soil, never mixed with it.</source>
        <translation>यस्तो ट्याङ्कीलाई मान्छेले आजकल हिसाब गर्ने माटो; हिसाबले निकालेको माटोको छेउमा देखाइन्छ, कहिल्यै मिसाइँदैन।</translation>
    </message>
    <message>
        <source>Sand for such a tank as people reckon it today; shown beside the computed sand, never mixed with it.</source>
        <translation>यस्तो ट्याङ्कीलाई मान्छेले आजकल हिसाब गर्ने बालुवा; हिसाबले निकालेको बालुवाको छेउमा देखाइन्छ, कहिल्यै मिसाइँदैन।</translation>
    </message>
    <message>
        <source>Stone for such a tank as people reckon it today; shown beside the computed stone, never mixed with it.</source>
        <translation>यस्तो ट्याङ्कीलाई मान्छेले आजकल हिसाब गर्ने ढुङ्गा; हिसाबले निकालेको ढुङ्गाको छेउमा देखाइन्छ, कहिल्यै मिसाइँदैन।</translation>
    </message>
    <message>
        <source>Cement for such a tank as people reckon it today; shown beside the computed cement, never mixed with it.</source>
        <translation>यस्तो ट्याङ्कीलाई मान्छेले आजकल हिसाब गर्ने सिमेन्ट; हिसाबले निकालेको सिमेन्टको छेउमा देखाइन्छ, कहिल्यै मिसाइँदैन।</translation>
    </message>
    <message>
        <source>Masons, mixers and carriers together on a coat; a coat is placed in one go, within the day.</source>
        <translation>एउटा पत्रमा लाग्ने डकर्मी, मुछ्ने र बोक्ने मान्छे जम्मा; पत्र एकै दिनमा लगाइसकिन्छ।</translation>
    </message>
    <message>
        <source>Nobody digs or plasters on this day; wetting goes on.</source>
        <translation>यो दिन कसैले खन्दैन वा प्लास्टर गर्दैन; भिजाउने काम चलिरहन्छ।</translation>
    </message>
    <message>
        <source>Latest start of the first filling, counted in days after the last coat.</source>
        <translation>पहिलो पानी भराइ ढिलोमा कहिले सुरु गर्ने, अन्तिम पत्रपछिका दिन गनेर।</translation>
    </message>
    <message>
        <source>One person&apos;s days to dig and throw out ground as it lies; leave empty to take it from the soil.</source>
        <translation>नखनेको जमिन खनेर बाहिर फाल्न एक जनालाई लाग्ने दिन; माटोबाट लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>One person&apos;s days to lay and compact the stone bed.</source>
        <translation>ढुङ्गाको सोलिङ बिछ्याएर खाँद्न एक जनालाई लाग्ने दिन।</translation>
    </message>
    <message>
        <source>One person&apos;s days to plaster one coat, helpers counted.</source>
        <translation>एक पत्र प्लास्टर गर्न एक जनालाई लाग्ने दिन, सहयोगी पनि गनेर।</translation>
    </message>
    <message>
        <source>One person&apos;s days to mix mortar by hand.</source>
        <translation>हातले मसला मुछ्न एक जनालाई लाग्ने दिन।</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>शीर्षक</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>ठाउँ</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>तयार गर्ने</translation>
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
        <translation>समुद्र सतहबाट उचाइ</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>जमिन</translation>
    </message>
    <message>
        <source>Fall of the ground</source>
        <translation>जमिनको ढाल</translation>
    </message>
    <message>
        <source>Downhill direction</source>
        <translation>ओरालोको दिशा</translation>
    </message>
    <message>
        <source>Soil of the pit</source>
        <translation>खाडलको माटो</translation>
    </message>
    <message>
        <source>Clay in the soil</source>
        <translation>माटोमा चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>Depth to ground water</source>
        <translation>जमिनमुनिको पानीको गहिराइ</translation>
    </message>
    <message>
        <source>Distance to the terrace edge</source>
        <translation>कान्लाको डिलसम्मको दूरी</translation>
    </message>
    <message>
        <source>Height of the terrace edge</source>
        <translation>कान्लाको डिलको उचाइ</translation>
    </message>
    <message>
        <source>Rock in the pit floor</source>
        <translation>खाडलको पिँधमा चट्टान</translation>
    </message>
    <message>
        <source>Distance to the nearest house downhill</source>
        <translation>ओरालोतिर सबैभन्दा नजिकको घरको दूरी</translation>
    </message>
    <message>
        <source>Small children live within 20 m</source>
        <translation>साना बच्चा २० m भित्र बस्छन्</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>आकार</translation>
    </message>
    <message>
        <source>Clear size measured at</source>
        <translation>भित्री नाप लिने ठाउँ</translation>
    </message>
    <message>
        <source>Clear length</source>
        <translation>भित्री लम्बाइ</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation>भित्री चौडाइ</translation>
    </message>
    <message>
        <source>Clear diameter</source>
        <translation>भित्री व्यास</translation>
    </message>
    <message>
        <source>Clear outline</source>
        <translation>भित्री घेरा</translation>
    </message>
    <message>
        <source>Clear depth, floor to rim</source>
        <translation>भित्री गहिराइ, भुइँदेखि बिटसम्म</translation>
    </message>
    <message>
        <source>Batter of the walls</source>
        <translation>भित्ताको ढल्काइ</translation>
    </message>
    <message>
        <source>Corner radius, clear floor</source>
        <translation>कुनाको गोलाइ, भित्री भुइँ</translation>
    </message>
    <message>
        <source>Freeboard</source>
        <translation>फ्रिबोर्ड</translation>
    </message>
    <message>
        <source>Dead depth</source>
        <translation>निकासमुनिको गहिराइ</translation>
    </message>
    <message>
        <source>Stone bed, compacted</source>
        <translation>ढुङ्गाको सोलिङ, खाँदेको</translation>
    </message>
    <message>
        <source>Loose ingredients per placed plaster</source>
        <translation>लगाएको प्लास्टरमा लाग्ने खुकुलो सामान</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>खेर जाने</translation>
    </message>
    <message>
        <source>Unevenness of dug faces</source>
        <translation>खनेको सतहको असमानता</translation>
    </message>
    <message>
        <source>Cement in a bag</source>
        <translation>एक बोराको सिमेन्ट</translation>
    </message>
    <message>
        <source>Loose weight of cement</source>
        <translation>सिमेन्टको खुकुलो तौल</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>मोटाइ</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>माटो</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>बालुवा</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>सिमेन्ट</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>भिजेको जुटले छोप्ने दिन</translation>
    </message>
    <message>
        <source>Cove radius, floor to wall</source>
        <translation>फेदको गोलाइको अर्धव्यास</translation>
    </message>
    <message>
        <source>Rim collar, width</source>
        <translation>बिटको घेरा, चौडाइ</translation>
    </message>
    <message>
        <source>Rim collar, thickness</source>
        <translation>बिटको घेरा, मोटाइ</translation>
    </message>
    <message>
        <source>Loss in sieving</source>
        <translation>चाल्दा खेर जाने</translation>
    </message>
    <message>
        <source>Bulking of damp sand</source>
        <translation>ओसिलो बालुवाको फुलाइ</translation>
    </message>
    <message>
        <source>Loose stone per compacted bed</source>
        <translation>खाँदेको सोलिङमा लाग्ने खुकुलो ढुङ्गा</translation>
    </message>
    <message>
        <source>Mixing water</source>
        <translation>मसला मुछ्ने पानी</translation>
    </message>
    <message>
        <source>Curing water</source>
        <translation>क्योरिङको पानी</translation>
    </message>
    <message>
        <source>Face covered by one sack</source>
        <translation>एउटा जुटले ढाक्ने सतह</translation>
    </message>
    <message>
        <source>Spare sacks</source>
        <translation>जगेडा जुट</translation>
    </message>
    <message>
        <source>Gauge box holds</source>
        <translation>नाप्ने बाकसमा अट्ने</translation>
    </message>
    <message>
        <source>Pan holds</source>
        <translation>तसलामा अट्ने</translation>
    </message>
    <message>
        <source>Bucket holds</source>
        <translation>बाल्टीमा अट्ने</translation>
    </message>
    <message>
        <source>Customary bill: soil</source>
        <translation>चलनको हिसाब: माटो</translation>
    </message>
    <message>
        <source>Customary bill: sand</source>
        <translation>चलनको हिसाब: बालुवा</translation>
    </message>
    <message>
        <source>Customary bill: stone</source>
        <translation>चलनको हिसाब: ढुङ्गा</translation>
    </message>
    <message>
        <source>Customary bill: cement</source>
        <translation>चलनको हिसाब: सिमेन्ट</translation>
    </message>
    <message>
        <source>Smallest recommended clear length</source>
        <translation>सिफारिसको सबैभन्दा सानो भित्री लम्बाइ</translation>
    </message>
    <message>
        <source>Smallest recommended clear width</source>
        <translation>सिफारिसको सबैभन्दा सानो भित्री चौडाइ</translation>
    </message>
    <message>
        <source>Smallest recommended clear depth</source>
        <translation>सिफारिसको सबैभन्दा सानो भित्री गहिराइ</translation>
    </message>
    <message>
        <source>Diggers</source>
        <translation>खन्ने मान्छे</translation>
    </message>
    <message>
        <source>People on a coat</source>
        <translation>पत्रमा लाग्ने मान्छे</translation>
    </message>
    <message>
        <source>Weekly rest day</source>
        <translation>हप्ताको बिदाको दिन</translation>
    </message>
    <message>
        <source>Start filling within</source>
        <translation>यतिभित्र पानी भर्न थाल्ने</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>खन्ने काम</translation>
    </message>
    <message>
        <source>Laying the stone bed</source>
        <translation>ढुङ्गाको सोलिङ बिछ्याउने</translation>
    </message>
    <message>
        <source>Plastering a coat</source>
        <translation>एक पत्र प्लास्टर गर्ने</translation>
    </message>
    <message>
        <source>Mixing mortar</source>
        <translation>मसला मुछ्ने</translation>
    </message>
    <message>
        <source>The tank is smaller than the smallest one that builders recommend: %1 long, %2 wide and %3 deep (clear), which is %4 to the rim.</source>
        <translation>ट्याङ्की बनाउनेहरूले सिफारिस गरेको सबैभन्दा सानो नापभन्दा पनि सानो छ। त्यो नाप: भित्री लम्बाइ %1, चौडाइ %2 र गहिराइ %3, बिटसम्म अट्ने %4।</translation>
    </message>
    <message>
        <source>%1 parts of sand to 1 part of soil would reach it.</source>
        <translation>१ भाग माटोमा %1 भाग बालुवा हाले पुग्छ।</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together; %3 to %4 is wanted, or the plaster crumbles.</source>
        <translation>%1: माटो र बालुवा जोड्दा त्यसमा चिम्टाइलो माटोको भाग %2 मात्र छ; %3 देखि %4 चाहिन्छ, नत्र प्लास्टर धुलो भएर झर्छ।</translation>
    </message>
    <message>
        <source>%1: clay is %2 of its soil and sand together; %3 to %4 is wanted, or the plaster shrinks and cracks.</source>
        <translation>%1: माटो र बालुवा जोड्दा त्यसमा चिम्टाइलो माटोको भाग %2 छ; %3 देखि %4 चाहिन्छ, नत्र प्लास्टर खुम्चिएर चर्किन्छ।</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together, and even the soil alone has less than the %3 wanted. Look for a soil with more clay.</source>
        <translation>%1: माटो र बालुवा जोड्दा त्यसमा चिम्टाइलो माटोको भाग %2 मात्र छ, र माटो मात्रै लिँदा पनि चाहिने %3 भन्दा कम हुन्छ। चिम्टाइलो माटो बढी भएको माटो खोज्नुहोस्।</translation>
    </message>
    <message>
        <source>The clay in the soil is not known, so the mix cannot be judged. Do a jar test and enter its result.</source>
        <translation>माटोमा चिम्टाइलो माटो कति छ थाहा छैन, त्यसैले मिसावट ठीक छ कि छैन भन्न सकिँदैन। सिसी जाँच गरेर नतिजा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>The soil of the pit is not known. Digging is reckoned as for firm loam, and the walls cannot be called safe.</source>
        <translation>खाडलको माटो कस्तो छ थाहा छैन। खन्ने हिसाब कडा दोमट माटो मानेर गरिएको छ, र भित्ता सुरक्षित छन् भन्न सकिँदैन।</translation>
    </message>
    <message>
        <source>%1 is kept wet for %2. Ordinary cement practice is at least %3; shorter curing is reported from tanks of this kind, and leaves the plaster weaker.</source>
        <translation>%1लाई %2 भिजाइराखिन्छ। सिमेन्टको साधारण चलनमा कम्तीमा %3 भिजाइन्छ; यस्ता ट्याङ्कीमा छोटो क्योरिङ गरेको पनि सुनिन्छ, तर त्यसले प्लास्टर कमजोर हुन्छ।</translation>
    </message>
    <message>
        <source>The last coat is kept wet for %1, but filling shall start within %2 of placing it. Keep the walls above the water under wet sacks after filling has begun.</source>
        <translation>अन्तिम पत्र %1 भिजाइराखिन्छ, तर त्यो लगाएको %2भित्र पानी भर्न थाल्नुपर्छ। पानी भर्न थालेपछि पानीभन्दा माथिको भित्ता भिजेको जुटले छोपिराख्नुहोस्।</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on a ladder must stand in it while anyone works there. Local codes and licensed practice come first.</source>
        <translation>खाडल %1 गहिरो छ। %2 देखि गहिरो खाडलमा कोही काम गरुन्जेल भर्‍याङ ठड्याइराख्नैपर्छ। स्थानीय नियम-मापदण्ड र इजाजतप्राप्त प्राविधिकको काम पहिला आउँछ।</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on its walls must be held against cave-in: slope or step them back, or shore them, and let a competent person look at them each day. Local codes and licensed practice come first.</source>
        <translation>खाडल %1 गहिरो छ। %2 देखि गहिरो खाडलको भित्ता भत्किन नदिन रोक्नैपर्छ: ढल्काएर वा खुड्किला पारेर काट्नुहोस्, वा टेको दिनुहोस्, र हरेक दिन जानकार मान्छेलाई भित्ता हेर्न लगाउनुहोस्। स्थानीय नियम-मापदण्ड र इजाजतप्राप्त प्राविधिकको काम पहिला आउँछ।</translation>
    </message>
    <message>
        <source>The pit is %1 deep, more than the %2 that this program allows to be dug by hand. Have an engineer design it, or make the tank shallower and wider.</source>
        <translation>खाडल %1 गहिरो छ, यो कार्यक्रमले हातले खन्न दिने %2 भन्दा बढी। इन्जिनियरलाई डिजाइन गर्न लगाउनुहोस्, वा ट्याङ्की कम गहिरो र फराकिलो बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>The mixes and thicknesses entered need %1 times the cement of the customary bill by exact shells, %2 times by area times thickness. Decide which to trust, thickness, mix or cement; the others follow from your choice.</source>
        <translation>राखिएका मिसावट र मोटाइलाई चलनको हिसाबको सिमेन्टको तुलनामा सही आयतनले %1 गुणा र क्षेत्रफल × मोटाइले %2 गुणा सिमेन्ट चाहिन्छ। मोटाइ, मिसावट वा सिमेन्ट, कुन पत्याउने हो छान्नुहोस्; बाँकी त्यसैअनुसार आउँछ।</translation>
    </message>
    <message>
        <source>The customary bill has %1 parts of soil to 1 part of sand; the mixes entered need %2. Both cannot be right.</source>
        <translation>चलनको हिसाबमा १ भाग बालुवामा %1 भाग माटो छ; राखिएका मिसावटलाई %2 भाग चाहिन्छ। दुवै ठीक हुन सक्दैन।</translation>
    </message>
    <message>
        <source>Digging takes %1 by published rate norms and %2 by local practice. Check which fits your diggers before you promise dates.</source>
        <translation>खन्न प्रकाशित दरले %1 र स्थानीय चलनले %2 लाग्छ। मिति पक्का गर्नुअघि तपाईंका खन्ने मान्छेसँग कुन मिल्छ, जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>The file&apos;s entry “%1” is not known to this version. It is kept and not used.</source>
        <translation>फाइलको विवरण “%1” यो संस्करणले चिन्दैन। यसलाई राखिन्छ, तर चलाइँदैन।</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>ढुङ्गाको सोलिङ</translation>
    </message>
    <message>
        <source>Cove</source>
        <translation>फेदको गोलाइ</translation>
    </message>
    <message>
        <source>Rim collar</source>
        <translation>बिटको घेरा</translation>
    </message>
    <message>
        <source>Dug pit</source>
        <translation>खनेको खाडल</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>पानी</translation>
    </message>
    <message>
        <source>Person for scale</source>
        <translation>नाप देखाउन मान्छे</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>सिमेन्टका बोरा</translation>
    </message>
    <message>
        <source>Soil, sieved</source>
        <translation>माटो, चालेको</translation>
    </message>
    <message>
        <source>Stone, loose</source>
        <translation>ढुङ्गा, खुकुलो</translation>
    </message>
    <message>
        <source>Water, all together</source>
        <translation>पानी, जम्मा</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>मुछ्ने पानी</translation>
    </message>
    <message>
        <source>Water for wetting</source>
        <translation>भिजाउने पानी</translation>
    </message>
    <message>
        <source>Sacks to keep wet</source>
        <translation>भिजाइराख्ने जुट</translation>
    </message>
    <message>
        <source>Dig the pit</source>
        <translation>खाडल खन्ने</translation>
    </message>
    <message>
        <source>Lay and compact the stone bed</source>
        <translation>ढुङ्गाको सोलिङ बिछ्याएर खाँद्ने</translation>
    </message>
    <message>
        <source>Keep the coats wet</source>
        <translation>पत्र भिजाइराख्ने</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>पानी भर्न थाल्ने अन्तिम दिन</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>ज्यामी</translation>
    </message>
    <message>
        <source>masons and helpers</source>
        <translation>डकर्मी र सहयोगी</translation>
    </message>
    <message>
        <source>clear length</source>
        <translation>भित्री लम्बाइ</translation>
    </message>
    <message>
        <source>clear width</source>
        <translation>भित्री चौडाइ</translation>
    </message>
    <message>
        <source>clear diameter</source>
        <translation>भित्री व्यास</translation>
    </message>
    <message>
        <source>clear depth</source>
        <translation>भित्री गहिराइ</translation>
    </message>
    <message>
        <source>pit length</source>
        <translation>खाडलको लम्बाइ</translation>
    </message>
    <message>
        <source>pit width</source>
        <translation>खाडलको चौडाइ</translation>
    </message>
    <message>
        <source>pit diameter</source>
        <translation>खाडलको व्यास</translation>
    </message>
    <message>
        <source>pit depth</source>
        <translation>खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>Pit floor</source>
        <translation>खाडलको पिँध</translation>
    </message>
    <message>
        <source>Top of stone bed</source>
        <translation>ढुङ्गाको सोलिङको माथि</translation>
    </message>
    <message>
        <source>Overflow level</source>
        <translation>ओभरफ्लोको सतह</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>बिट</translation>
    </message>
    <message>
        <source>pit corner at ground</source>
        <translation>जमिनमा खाडलको कुना</translation>
    </message>
    <message>
        <source>offset peg, clear of the pit</source>
        <translation>बाहिरी किला, खाडलभन्दा पर</translation>
    </message>
    <message>
        <source>pit corner at floor</source>
        <translation>पिँधमा खाडलको कुना</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>केन्द्र</translation>
    </message>
    <message>
        <source>centre of the rounded corner</source>
        <translation>गोलो कुनाको केन्द्र</translation>
    </message>
    <message>
        <source>mark for the right angle</source>
        <translation>गुनियाको चिनो</translation>
    </message>
    <message>
        <source>side</source>
        <translation>छेउ</translation>
    </message>
    <message>
        <source>diagonal</source>
        <translation>कुनाकुनी</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>अर्धव्यास</translation>
    </message>
    <message>
        <source>3-4-5 triangle</source>
        <translation>3-4-5 त्रिकोण</translation>
    </message>
    <message>
        <source>site</source>
        <translation>ठाउँ</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>ट्याङ्की</translation>
    </message>
    <message>
        <source>lining</source>
        <translation>अस्तर</translation>
    </message>
    <message>
        <source>water balance</source>
        <translation>पानीको हिसाब</translation>
    </message>
    <message>
        <source>labour and dates</source>
        <translation>कामदार र मिति</translation>
    </message>
    <message>
        <source>prices and cost</source>
        <translation>मूल्य र लागत</translation>
    </message>
    <message>
        <source>options side by side</source>
        <translation>विकल्प सँगसँगै</translation>
    </message>
    <message>
        <source>%1 bag</source>
        <translation>%1 बोरा</translation>
    </message>
    <message>
        <source>Coat %1</source>
        <translation>पत्र %1</translation>
    </message>
    <message>
        <source>Place coat %1</source>
        <translation>पत्र %1 लगाउने</translation>
    </message>
    <message>
        <source>Keep coat %1 wet</source>
        <translation>पत्र %1 भिजाइराख्ने</translation>
    </message>
    <message>
        <source>Top of coat %1</source>
        <translation>पत्र %1को माथि</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>पढ्न सकिएन</translation>
    </message>
    <message>
        <source>cannot be written; what was there before is untouched</source>
        <translation>लेख्न सकिएन; पहिले जे थियो, त्यो जस्ताको तस्तै छ</translation>
    </message>
    <message>
        <source>is too large, in bytes</source>
        <translation>धेरै ठूलो छ (बाइटमा)</translation>
    </message>
    <message>
        <source>is not JSON from this line and column on</source>
        <translation>यो लाइन र महलदेखि JSON होइन</translation>
    </message>
    <message>
        <source>has too many levels of brackets</source>
        <translation>कोष्ठका तह धेरै छन्</translation>
    </message>
    <message>
        <source>is not UTF-8 text from this line and column on</source>
        <translation>यो लाइन र महलदेखि UTF-8 अक्षर होइन</translation>
    </message>
    <message>
        <source>is not a Tankwright project</source>
        <translation>Tankwright को परियोजना होइन</translation>
    </message>
    <message>
        <source>is of a version that this program does not know</source>
        <translation>यस्तो संस्करणको छ जुन यो कार्यक्रमले चिन्दैन</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>छैन</translation>
    </message>
    <message>
        <source>is of the wrong kind</source>
        <translation>गलत किसिमको छ</translation>
    </message>
    <message>
        <source>is not a finite number</source>
        <translation>सीमित अङ्क होइन</translation>
    </message>
    <message>
        <source>is outside the allowed range</source>
        <translation>मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>छान्न मिल्ने मध्येको होइन</translation>
    </message>
    <message>
        <source>is too long, in bytes of UTF-8</source>
        <translation>धेरै लामो छ (UTF-8 को बाइटमा)</translation>
    </message>
    <message>
        <source>is not a calendar date written year-month-day</source>
        <translation>वर्ष-महिना-दिन गरी लेखिएको मिति होइन</translation>
    </message>
    <message>
        <source>is given twice</source>
        <translation>दुई पटक दिइएको छ</translation>
    </message>
    <message>
        <source>has too few entries</source>
        <translation>विवरण थोरै छन्</translation>
    </message>
    <message>
        <source>has too many entries</source>
        <translation>विवरण धेरै छन्</translation>
    </message>
    <message>
        <source>runs clockwise; list the corners anticlockwise</source>
        <translation>घडीको सुई घुम्ने दिशामा छ; कुनाहरू घडीको उल्टो दिशामा लेख्नुहोस्</translation>
    </message>
    <message>
        <source>touches or crosses itself</source>
        <translation>आफैंलाई छुन्छ वा काट्छ</translation>
    </message>
    <message>
        <source>is bent inward at this corner; every corner must point outward</source>
        <translation>यो कुनामा भित्रतिर बाङ्गिएको छ; हरेक कुना बाहिरतिर फर्केको हुनुपर्छ</translation>
    </message>
    <message>
        <source>puts the overflow level at or below the clear floor; it must be less than the clear depth</source>
        <translation>ओभरफ्लोको सतहलाई भित्री भुइँमा वा त्योभन्दा तल पुर्‍याउँछ; यो भित्री गहिराइभन्दा कम हुनुपर्छ</translation>
    </message>
    <message>
        <source>reaches the overflow level; it must be less than the clear depth without the freeboard</source>
        <translation>ओभरफ्लोको सतहसम्म पुग्छ; यो फ्रिबोर्ड घटाएको भित्री गहिराइभन्दा कम हुनुपर्छ</translation>
    </message>
    <message>
        <source>make a lining thicker than the clear inside of the tank</source>
        <translation>अस्तर ट्याङ्कीको भित्री खाली ठाउँभन्दा बाक्लो हुन्छ</translation>
    </message>
    <message>
        <source>leaves no clear floor: the size at the rim is too small for this depth and batter</source>
        <translation>भित्री भुइँ बाँकी रहँदैन: यो गहिराइ र ढल्काइका लागि बिटमा नाप सानो भयो</translation>
    </message>
    <message>
        <source>does not fit into the corners of the clear floor</source>
        <translation>भित्री भुइँका कुनामा अट्दैन</translation>
    </message>
    <message>
        <source>is too small: with this batter the corners would vanish at the floor</source>
        <translation>धेरै सानो छ: यो ढल्काइले भुइँमा पुग्दा कुना हराउँछन्</translation>
    </message>
    <message>
        <source>does not fit between the clear floor and the rim</source>
        <translation>भित्री भुइँ र बिटको बीचमा अट्दैन</translation>
    </message>
    <message>
        <source>has neither soil nor sand; give at least one of them some parts</source>
        <translation>माटो पनि छैन, बालुवा पनि छैन; कम्तीमा एउटाको भाग राख्नुहोस्</translation>
    </message>
    <message>
        <source>leaves no pit floor to stand on</source>
        <translation>उभिनका लागि खाडलको पिँध बाँकी रहँदैन</translation>
    </message>
    <message>
        <source>is not known to this version; it is kept and not used</source>
        <translation>यो संस्करणले चिन्दैन; राखिन्छ, तर चलाइँदैन</translation>
    </message>
    <message>
        <source>The project file</source>
        <translation>परियोजना फाइल</translation>
    </message>
    <message>
        <source>Format mark</source>
        <translation>फर्म्याटको चिनो</translation>
    </message>
    <message>
        <source>Version of the format</source>
        <translation>फर्म्याटको संस्करण</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>ठाउँ</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>उचाइका बिन्दु</translation>
    </message>
    <message>
        <source>Terrace edge</source>
        <translation>कान्लाको डिल</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>ट्याङ्की</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>अस्तर</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>पत्र</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>चलनको हिसाब</translation>
    </message>
    <message>
        <source>Recommended by builders</source>
        <translation>बनाउनेहरूको सिफारिस</translation>
    </message>
    <message>
        <source>Labour and dates</source>
        <translation>कामदार र मिति</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>एउटा अङ्क</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>पूर्ण अङ्क</translation>
    </message>
    <message>
        <source>text</source>
        <translation>अक्षरमा लेखिएको</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>सूची</translation>
    </message>
    <message>
        <source>a group in braces</source>
        <translation>धनुकोष्ठ { } भित्रको समूह</translation>
    </message>
    <message>
        <source>all corners pointing outward</source>
        <translation>सबै कुना बाहिरतिर फर्केका</translation>
    </message>
    <message>
        <source>corners listed anticlockwise</source>
        <translation>घडीको उल्टो दिशामा लेखिएका कुना</translation>
    </message>
    <message>
        <source>no corner given twice, no sides crossing</source>
        <translation>कुनै कुना दुई पटक नदिइएको, छेउ नकाटिएका</translation>
    </message>
    <message>
        <source>%1, entry %2</source>
        <translation>%1, विवरण %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 देखि %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 in the file, %2</source>
        <translation>फाइलमा %1, %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <translation>%1: %2।</translation>
    </message>
    <message>
        <source>%1 %2: found %3.</source>
        <translation>%1: %2; भेटियो %3।</translation>
    </message>
    <message>
        <source>%1 %2: allowed %3.</source>
        <translation>%1: %2; मिल्ने %3।</translation>
    </message>
    <message>
        <source>%1 %2: found %3; allowed %4.</source>
        <translation>%1: %2; भेटियो %3, मिल्ने %4।</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 वा बढी</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>%1सम्म</translation>
    </message>
    <message>
        <source>published</source>
        <translation>प्रकाशित</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>साधारण चलन, आधार छैन</translation>
    </message>
    <message>
        <source>from memory, to be verified</source>
        <translation>सम्झनाबाट, जाँच्न बाँकी</translation>
    </message>
    <message>
        <source>this program&apos;s proposal, to be changed where practice differs</source>
        <translation>यो कार्यक्रमको प्रस्ताव; चलन फरक भए बदल्नुहोस्</translation>
    </message>
    <message>
        <source>entered or fixed by the design</source>
        <translation>राखिएको वा डिजाइनले तोकेको</translation>
    </message>
    <message>
        <source>measured or chosen on site</source>
        <translation>ठाउँमै नापिएको वा छानिएको</translation>
    </message>
    <message>
        <source>plane and solid geometry; the prismoidal formula is exact for a straight batter</source>
        <translation>ज्यामितिको हिसाब; सोझो ढल्काइमा प्रिज्मोइडल सूत्र ठ्याक्कै मिल्छ</translation>
    </message>
    <message>
        <source>this program&apos;s proposal; change it to suit the district</source>
        <translation>यो कार्यक्रमको प्रस्ताव; जिल्लालाई सुहाउने गरी बदल्नुहोस्</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>जानकारी</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>सावधान</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>रोक्नुहोस्</translation>
    </message>
    <message>
        <source>Allowed: %1.</source>
        <translation>मिल्ने: %1।</translation>
    </message>
    <message>
        <source>Source of the default: %1.</source>
        <translation>सुरुको मानको आधार: %1।</translation>
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
        <translation>L/ft² प्रति दिन</translation>
    </message>
    <message>
        <source>person-days per 100 ft³</source>
        <translation>जनदिन प्रति 100 ft³</translation>
    </message>
    <message>
        <source>person-days per 100 ft²</source>
        <translation>जनदिन प्रति 100 ft²</translation>
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
        <translation>घण्टा</translation>
    </message>
    <message>
        <source>people</source>
        <translation>जना</translation>
    </message>
    <message>
        <source>person-days</source>
        <translation>जनदिन</translation>
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
        <translation>L/m² प्रति दिन</translation>
    </message>
    <message>
        <source>person-days per m³</source>
        <translation>जनदिन प्रति m³</translation>
    </message>
    <message>
        <source>person-days per m²</source>
        <translation>जनदिन प्रति m²</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 दिन</translation>
    </message>
    <message>
        <source>%1 hour</source>
        <translation>%1 घण्टा</translation>
    </message>
    <message>
        <source>%1 person</source>
        <translation>%1 जना</translation>
    </message>
    <message>
        <source>%1 person-day</source>
        <translation>%1 जनदिन</translation>
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
            <numerusform>%1 घण्टा</numerusform>
            <numerusform>%1 घण्टा</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 people</source>
        <translation>
            <numerusform>%1 जना</numerusform>
            <numerusform>%1 जना</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 person-days</source>
        <translation>
            <numerusform>%1 जनदिन</numerusform>
            <numerusform>%1 जनदिन</numerusform>
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
        <translation>%1 वा %2</translation>
    </message>
    <message>
        <source>Not in the project, so not in the plan: %1.</source>
        <translation>परियोजनामा छैन, त्यसैले योजनामा पनि छैन: %1।</translation>
    </message>
    <message>
        <source>%1 must be placed in one go, within the day. People entered for it: %2; needed: %3.</source>
        <translation>%1 एकै दिनमा लगाइसक्नैपर्छ। यसका लागि राखिएका मान्छे: %2; चाहिने: %3।</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1: %2; %3।</translation>
    </message>
    <message numerus="yes">
        <source>%1 bags</source>
        <translation>
            <numerusform>%1 बोरा</numerusform>
            <numerusform>%1 बोरा</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <translation>%1 (मस्यौदा)</translation>
    </message>
    <message>
        <source>end of the rounded corner&apos;s arc</source>
        <translation>गोलो कुनाको गोलाइ टुङ्गिने ठाउँ</translation>
    </message>
    <message>
        <source>watering can or bucket</source>
        <translation>हजारी वा बाल्टी</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>पाइप</translation>
    </message>
    <message>
        <source>furrows</source>
        <translation>कुलेसो</translation>
    </message>
    <message>
        <source>sprinkler</source>
        <translation>फोहोरा</translation>
    </message>
    <message>
        <source>drip lines</source>
        <translation>थोपा पाइप</translation>
    </message>
    <message>
        <source>cattle</source>
        <translation>गाई-गोरु</translation>
    </message>
    <message>
        <source>cow in milk</source>
        <translation>दुहुनो गाई</translation>
    </message>
    <message>
        <source>buffalo</source>
        <translation>भैंसी</translation>
    </message>
    <message>
        <source>horse or mule</source>
        <translation>घोडा वा खच्चर</translation>
    </message>
    <message>
        <source>donkey</source>
        <translation>गधा</translation>
    </message>
    <message>
        <source>goat or sheep</source>
        <translation>बाख्रा वा भेडा</translation>
    </message>
    <message>
        <source>pig</source>
        <translation>सुँगुर</translation>
    </message>
    <message>
        <source>hen or other poultry</source>
        <translation>कुखुरा वा अरू पन्छी</translation>
    </message>
    <message>
        <source>monthly means</source>
        <translation>मासिक औसत</translation>
    </message>
    <message>
        <source>daily record</source>
        <translation>दैनिक रेकर्ड</translation>
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
        <translation>त्यो वर्ष छोड्ने</translation>
    </message>
    <message>
        <source>fill in from the nearest year</source>
        <translation>सबैभन्दा नजिकको वर्षबाट भर्ने</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>स्रोत</translation>
    </message>
    <message>
        <source>Months of the source</source>
        <translation>स्रोतका महिना</translation>
    </message>
    <message>
        <source>Readings of the source</source>
        <translation>स्रोतका नाप</translation>
    </message>
    <message>
        <source>Roof</source>
        <translation>छाना</translation>
    </message>
    <message>
        <source>Ground led to the tank</source>
        <translation>ट्याङ्कीमा पानी आउने जमिन</translation>
    </message>
    <message>
        <source>Losses</source>
        <translation>खेर जाने पानी</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>ड्याङ</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>गाईवस्तु</translation>
    </message>
    <message>
        <source>Own crops</source>
        <translation>आफ्नै बाली</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>हावापानी</translation>
    </message>
    <message>
        <source>Months of the climate</source>
        <translation>हावापानीका महिना</translation>
    </message>
    <message>
        <source>Daily record</source>
        <translation>दैनिक रेकर्ड</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>नाप %1</translation>
    </message>
    <message>
        <source>Bed %1</source>
        <translation>ड्याङ %1</translation>
    </message>
    <message>
        <source>Animals %1</source>
        <translation>गाईवस्तु %1</translation>
    </message>
    <message>
        <source>Own crop %1</source>
        <translation>आफ्नै बाली %1</translation>
    </message>
    <message>
        <source>Source in %1</source>
        <translation>%1मा स्रोत</translation>
    </message>
    <message>
        <source>Climate of %1</source>
        <translation>%1को हावापानी</translation>
    </message>
    <message>
        <source>date</source>
        <translation>मिति</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>वर्षा</translation>
    </message>
    <message>
        <source>lowest temperature</source>
        <translation>न्यूनतम तापक्रम</translation>
    </message>
    <message>
        <source>highest temperature</source>
        <translation>अधिकतम तापक्रम</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>हावा</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>आर्द्रता</translation>
    </message>
    <message>
        <source>sunshine</source>
        <translation>घाम</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Line %1 of the table</source>
        <translation>तालिकाको लाइन %1</translation>
    </message>
    <message>
        <source>is neither in the table of crops nor one of your own; choose one, or enter it among your own crops</source>
        <translation>बालीको तालिकामा पनि छैन, तपाईंका आफ्नै बालीमा पनि छैन; एउटा छान्नुहोस्, वा आफ्नै बालीमा राख्नुहोस्</translation>
    </message>
    <message>
        <source>is a day that this month does not have; choose an earlier one</source>
        <translation>यो महिनामा यो दिन हुँदैन; पहिलेको दिन छान्नुहोस्</translation>
    </message>
    <message>
        <source>makes the whole season too long; shorten the stages</source>
        <translation>बालीको पूरा समय धेरै लामो हुन्छ; अवस्थाहरू छोट्याउनुहोस्</translation>
    </message>
    <message>
        <source>leaves a month with rain without a wet day; enter on how many days it rains</source>
        <translation>वर्षा भएको महिनामा पानी परेको दिन एउटै छैन; कति दिन पानी पर्छ, राख्नुहोस्</translation>
    </message>
    <message>
        <source>is more than the days of this month; enter fewer</source>
        <translation>यो महिनाका दिनभन्दा बढी छ; कम राख्नुहोस्</translation>
    </message>
    <message>
        <source>is too little for the wet days of this month: each has 0.1 mm at least</source>
        <translation>यो महिनाका पानी परेका दिनका लागि थोरै छ: हरेक दिन कम्तीमा ०.१ mm हुन्छ</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same month; check both</source>
        <translation>सोही महिनाको न्यूनतम तापक्रमभन्दा कम छ; दुवै जाँच्नुहोस्</translation>
    </message>
    <message>
        <source>is not later than the day before it; put the days in order</source>
        <translation>अघिल्लो दिनभन्दा पछिको छैन; दिनहरू क्रम मिलाएर राख्नुहोस्</translation>
    </message>
    <message>
        <source>does not name the columns; begin the table with a line such as date,rain_mm,t_min_c,t_max_c</source>
        <translation>महलका नाम छैनन्; तालिका date,rain_mm,t_min_c,t_max_c जस्तो लाइनबाट सुरु गर्नुहोस्</translation>
    </message>
    <message>
        <source>is not among the columns; add it to the table and to its first line</source>
        <translation>महलहरूमा छैन; तालिकामा र त्यसको पहिलो लाइनमा थप्नुहोस्</translation>
    </message>
    <message>
        <source>does not have as many cells as the first line; look for a mark too many or too few between them</source>
        <translation>पहिलो लाइनमा जति कोठा छैनन्; बीचमा छुट्याउने चिनो धेरै वा थोरै छन् कि, हेर्नुहोस्</translation>
    </message>
    <message>
        <source>stands in the table already; keep one line for each day</source>
        <translation>तालिकामा पहिल्यै छ; हरेक दिनको एउटै लाइन राख्नुहोस्</translation>
    </message>
    <message>
        <source>is earlier than the date above it; sort the lines by date</source>
        <translation>माथिको मितिभन्दा पहिलेको छ; लाइनहरू मितिअनुसार मिलाउनुहोस्</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same day; check both</source>
        <translation>सोही दिनको न्यूनतम तापक्रमभन्दा कम छ; दुवै जाँच्नुहोस्</translation>
    </message>
    <message>
        <source>comes after days that are left out, which count as gaps of the record</source>
        <translation>योभन्दा अघिका केही दिन छोडिएका छन्; ती रेकर्डका छुटेका दिन गनिन्छन्</translation>
    </message>
    <message>
        <source>names a column that is not used</source>
        <translation>नचलाइने महलको नाम हो</translation>
    </message>
    <message>
        <source>The weather table</source>
        <translation>मौसमको तालिका</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>mm per day</source>
        <translation>mm प्रति दिन</translation>
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
        <translation>L प्रति दिन</translation>
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
        <translation>वर्ष</translation>
    </message>
    <message>
        <source>%1 year</source>
        <translation>%1 वर्ष</translation>
    </message>
    <message numerus="yes">
        <source>%1 years</source>
        <translation>
            <numerusform>%1 वर्ष</numerusform>
            <numerusform>%1 वर्ष</numerusform>
        </translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1.</source>
        <translation>पानी अपुग हुँदा %1मा हुन्छ।</translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1; most often in %2.</source>
        <translation>पानी अपुग हुँदा %1मा हुन्छ; सबैभन्दा धेरै पटक %2मा।</translation>
    </message>
    <message>
        <source>Full at the start of %1 and with nothing more flowing in, the tank lasts a year or longer.</source>
        <translation>%1को सुरुमा भरिएको ट्याङ्कीको पानी, थप केही नआए पनि, एक वर्ष वा बढी पुग्छ।</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank does not fill within a year.</source>
        <translation>पानी नझिके पनि खाली ट्याङ्की एक वर्षभित्र भरिँदैन।</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills in %1.</source>
        <translation>पानी नझिके खाली ट्याङ्की %1मा भरिन्छ।</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills quickest from the start of %1 on: in %2.</source>
        <translation>पानी नझिके खाली ट्याङ्की %1को सुरुदेखि सबैभन्दा चाँडो भरिन्छ: %2मा।</translation>
    </message>
    <message>
        <source>Almost any tank gives as many good years as are wanted.</source>
        <translation>प्रायः जस्तोसुकै ट्याङ्कीले पनि चाहेजति राम्रा वर्ष दिन्छ।</translation>
    </message>
    <message>
        <source>A tank that holds about %1 already gives as many good years as are wanted.</source>
        <translation>करिब %1 अट्ने ट्याङ्कीले नै चाहेजति राम्रा वर्ष दिन्छ।</translation>
    </message>
    <message>
        <source>With this tank, beds of no size have as many good years as are wanted.</source>
        <translation>यो ट्याङ्कीबाट ड्याङ जति सानो भए पनि चाहेजति वर्ष पानी पुग्दैन।</translation>
    </message>
    <message>
        <source>With this tank, even beds of %1 have as many good years as are wanted.</source>
        <translation>यो ट्याङ्कीबाट %1का ड्याङमा पनि चाहेजति वर्ष पानी पुग्छ।</translation>
    </message>
    <message>
        <source>With this tank, beds of up to about %1 have as many good years as are wanted; entered: %2.</source>
        <translation>यो ट्याङ्कीबाट करिब %1सम्मका ड्याङमा चाहेजति वर्ष पानी पुग्छ; राखिएको: %2।</translation>
    </message>
    <message>
        <source>In a mean year about %1 run over unused.</source>
        <translation>औसत वर्षमा करिब %1 पानी काम नलागी पोखिन्छ।</translation>
    </message>
    <message>
        <source>The latitude of the site is not known, so whether the water lasts cannot be answered. Read it from a map or a phone.</source>
        <translation>ठाउँको अक्षांश थाहा छैन, त्यसैले पानी पुग्छ कि पुग्दैन भन्न सकिँदैन। नक्सा वा फोनबाट हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>The climate is not known, so whether the water lasts cannot be answered. Enter rain, wet days, lowest and highest temperature of all twelve months, or take in a daily record.</source>
        <translation>हावापानी थाहा छैन, त्यसैले पानी पुग्छ कि पुग्दैन भन्न सकिँदैन। बाह्रै महिनाको वर्षा, पानी परेका दिन, न्यूनतम र अधिकतम तापक्रम राख्नुहोस्, वा दैनिक रेकर्ड ल्याउनुहोस्।</translation>
    </message>
    <message>
        <source>The height above sea level is not known; evaporation is reckoned as at sea level. Read it from a map or a phone.</source>
        <translation>समुद्र सतहदेखिको उचाइ थाहा छैन; वाष्पीकरणको हिसाब समुद्र सतहमै भएजस्तो मानेर गरिएको छ। नक्सा वा फोनबाट हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Only rain on the tank itself brings water. Enter what the source gives in each month, or a roof or ground that is led to the tank.</source>
        <translation>ट्याङ्कीमाथि परेको वर्षाबाट मात्र पानी आउँछ। स्रोतले हरेक महिना कति दिन्छ राख्नुहोस्, वा ट्याङ्कीमा पानी ल्याउने छाना वा जमिन राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank. Enter beds, animals or people who use its water.</source>
        <translation>ट्याङ्कीबाट केही झिकिँदैन। यसको पानी चलाउने ड्याङ, गाईवस्तु वा मान्छे राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Water from an open tank is not safe to drink as it is. Use it for washing and the house, and treat what is drunk. People counted: %1.</source>
        <translation>खुला ट्याङ्कीको पानी त्यत्तिकै पिउनु सुरक्षित छैन। धुन र घरको काममा चलाउनुहोस्, पिउने पानी शुद्ध पारेर मात्र पिउनुहोस्। गनिएका मान्छे: %1।</translation>
    </message>
    <message>
        <source>The water lasts in %1 of 10 years; %2 of 10 are wanted.</source>
        <translation>१० मध्ये %1 वर्ष पानी पुग्छ; १० मध्ये %2 वर्ष चाहिएको छ।</translation>
    </message>
    <message>
        <source>A tank that holds about %1 would reach it.</source>
        <translation>करिब %1 अट्ने ट्याङ्की भए पुग्छ।</translation>
    </message>
    <message>
        <source>Beds of about %1 in all would reach it.</source>
        <translation>जम्मा करिब %1का ड्याङ भए पुग्छ।</translation>
    </message>
    <message>
        <source>The tank does not fill in any year: it holds %1, and the most that is ever in it is about %2. Lead in more water, or build it smaller.</source>
        <translation>ट्याङ्की कुनै पनि वर्ष भरिँदैन: यसमा %1 अट्छ, तर सबैभन्दा धेरै हुँदा करिब %2 मात्र हुन्छ। थप पानी ल्याउनुहोस्, वा सानो बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>How much the rain differs from year to year is not known. The years made from monthly means differ by %1, real ones mostly by more. Ask the weather station for the spread of yearly rain.</source>
        <translation>वर्षैपिच्छे वर्षा कति फरक हुन्छ थाहा छैन। मासिक औसतबाट बनाइएका वर्ष %1 घटबढ हुन्छन्, साँच्चैका वर्ष प्रायः अझ बढी। वार्षिक वर्षाको घटबढ मौसम केन्द्रमा सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>The record has whole years: %1. At least %2 are wanted to see how often the water runs short.</source>
        <translation>रेकर्डमा पूरा वर्ष: %1। पानी कति पटक अपुग हुन्छ हेर्न कम्तीमा %2 चाहिन्छ।</translation>
    </message>
    <message>
        <source>Years of the record left out for their gaps: %1, the first one beginning in %2. Add what is missing, or have gaps filled in from the nearest year.</source>
        <translation>छुटेका दिनले गर्दा छोडिएका रेकर्डका वर्ष: %1, पहिलो %2मा सुरु हुने। छुटेको थप्नुहोस्, वा सबैभन्दा नजिकको वर्षबाट भर्न लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>Missing values of the record filled in from the nearest year: %1.</source>
        <translation>सबैभन्दा नजिकको वर्षबाट भरिएका रेकर्डका छुटेका मान: %1।</translation>
    </message>
    <message>
        <source>Readings of the source in %1: %2. Take more than three, so that a wrong one shows.</source>
        <translation>%1मा स्रोतका नाप: %2। तीनभन्दा बढी नाप लिनुहोस्, अनि गलत नाप चिनिन्छ।</translation>
    </message>
    <message>
        <source>Reading %1 gives %2, far from the middle of its month, %3. Measure once more, and take the reading out if something went wrong.</source>
        <translation>नाप %1ले %2 देखाउँछ; यो त्यस महिनाको बीचको मान %3 सँग धेरै फरक छ। फेरि एक पटक नाप्नुहोस्, र केही गल्ती भएको रहेछ भने यो नाप हटाउनुहोस्।</translation>
    </message>
    <message>
        <source>Reading %1: the vessel was full after %2. Below 3 seconds a watch is too coarse; take a larger vessel.</source>
        <translation>नाप %1: भाँडो %2मा भरियो। ३ सेकेन्डभन्दा कम भए घडीले ठीक नाप्दैन; ठूलो भाँडो लिनुहोस्।</translation>
    </message>
    <message>
        <source>For %1 a flow of %2 is entered; the middle of the readings is %3. Enter the one you trust.</source>
        <translation>%1का लागि बहाव %2 राखिएको छ; नापहरूको बीचको मान %3 हो। तपाईंलाई पत्यार लागेको राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Rain alone waters the beds; nothing has to be drawn from the tank.</source>
        <translation>ड्याङलाई वर्षाको पानीले मात्रै पुग्छ; ट्याङ्कीबाट केही झिक्नु पर्दैन।</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank yet. Enter beds, animals or people who use its water.</source>
        <translation>अहिलेसम्म ट्याङ्कीबाट केही झिकिँदैन। यसको पानी चलाउने ड्याङ, गाईवस्तु वा मान्छे राख्नुहोस्।</translation>
    </message>
    <message>
        <source>the beds</source>
        <translation>ड्याङ</translation>
    </message>
    <message>
        <source>the animals</source>
        <translation>गाईवस्तु</translation>
    </message>
    <message>
        <source>the people</source>
        <translation>मान्छे</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) the beds stay watered.</source>
        <translation>हिसाब गरिएका सबै वर्ष (%1) ड्याङमा पानी पुग्छ।</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) there is water for %2.</source>
        <translation>हिसाब गरिएका सबै वर्ष (%1) %2लाई पानी पुग्छ।</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) do the beds stay watered all year.</source>
        <translation>हिसाब गरिएका कुनै पनि वर्ष (%1) ड्याङमा वर्षभरि पानी पुग्दैन।</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) is there water all year for %2.</source>
        <translation>हिसाब गरिएका कुनै पनि वर्ष (%1) %2लाई वर्षभरि पानी पुग्दैन।</translation>
    </message>
    <message>
        <source>In %1 of %2 years the beds stay watered all year.</source>
        <translation>%2 वर्षमध्ये %1 वर्ष ड्याङमा वर्षभरि पानी पुग्छ।</translation>
    </message>
    <message>
        <source>In %1 of %2 years there is water all year for %3.</source>
        <translation>%2 वर्षमध्ये %1 वर्ष %3लाई वर्षभरि पानी पुग्छ।</translation>
    </message>
    <message>
        <source>Water is missing on %1, about %2 in all.</source>
        <translation>%1 पानी अपुग हुन्छ, जम्मा करिब %2।</translation>
    </message>
    <message>
        <source>In the worst of %1 water is missing on %2, about %3 in all.</source>
        <translation>%1 मध्ये सबैभन्दा खराब वर्षमा %2 पानी अपुग हुन्छ, जम्मा करिब %3।</translation>
    </message>
    <message>
        <source>In a middling year it is missing on %1.</source>
        <translation>मझौला वर्षमा %1 अपुग हुन्छ।</translation>
    </message>
    <message>
        <source>What the tap or spring gives while it runs; time how long a vessel of known size takes to fill.</source>
        <translation>धारा वा मूलले बगेको बेला दिने पानी; कति अट्ने थाहा भएको भाँडो भरिन कति समय लाग्छ, घडीले नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>How long in a day the water runs into the tank; a spring led in day and night runs 24 hours.</source>
        <translation>दिनमा कति समय ट्याङ्कीमा पानी आउँछ; रातदिन ल्याइएको मूल २४ घण्टा बग्छ।</translation>
    </message>
    <message>
        <source>Month in which this reading was taken.</source>
        <translation>यो नाप लिएको महिना।</translation>
    </message>
    <message>
        <source>What the vessel holds up to the mark to which it was filled; take one that fills in 3 seconds or more.</source>
        <translation>जुन चिनोसम्म भरियो, त्यहाँसम्म भाँडोमा अट्ने पानी; ३ सेकेन्ड वा बढीमा भरिने भाँडो लिनुहोस्।</translation>
    </message>
    <message>
        <source>Time from putting the empty vessel under the flow until it is full, by watch.</source>
        <translation>खाली भाँडो बहावमुनि राखेदेखि भरुन्जेलको समय, घडीले।</translation>
    </message>
    <message>
        <source>Roof whose gutters lead to the tank, as seen from above: length times width of its level shadow.</source>
        <translation>डुँडको पानी ट्याङ्कीमा जाने छाना, माथिबाट हेर्दा: समथर छायाको लम्बाइ गुणा चौडाइ।</translation>
    </message>
    <message>
        <source>Part of the rain on the roof that reaches the tank: 0.80 is 80 litres of 100.</source>
        <translation>छानामा परेको वर्षामध्ये ट्याङ्कीमा पुग्ने भाग: ०.८० भनेको १०० लिटरमा ८० लिटर।</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that is let run off to wash the roof; 0 when nothing is turned away.</source>
        <translation>झरीको सुरुमा छाना पखाल्न बगाइदिने वर्षा; केही नबगाए ०।</translation>
    </message>
    <message>
        <source>Ground uphill whose runoff a ditch leads to the tank; pace its length and width along the level.</source>
        <translation>उकालोतिरको जमिन, जसको बगेको पानी कुलोले ट्याङ्कीमा ल्याउँछ; लम्बाइ र चौडाइ समथर नापमा पाइलाले नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Part of the rain on this ground that reaches the tank; bare and steep ground sheds more than grass.</source>
        <translation>यो जमिनमा परेको वर्षामध्ये ट्याङ्कीमा पुग्ने भाग; नाङ्गो र भिरालो जमिनबाट घाँसबाट भन्दा बढी बग्छ।</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that only wets the ground or is let run past with its mud.</source>
        <translation>झरीको सुरुमा जमिन भिजाउने मात्र, वा हिलोसहित अन्तै बगाइदिने वर्षा।</translation>
    </message>
    <message>
        <source>Evaporation of open water for each unit of reference evapotranspiration; 1.05 for shallow water.</source>
        <translation>सन्दर्भ वाष्पोत्सर्जनको हरेक एकाइमा खुला पानीको वाष्पीकरण; कम गहिरो पानीको १.०५।</translation>
    </message>
    <message>
        <source>Share of the evaporation that a roof, a shade cloth or a floating cover keeps back; 0 for open water.</source>
        <translation>छाना, छाया जाली वा तैरिने ढकनीले रोक्ने वाष्पीकरणको भाग; खुला पानीमा ०।</translation>
    </message>
    <message>
        <source>Depth of water lost through the wetted plaster in a day; measure on a covered tank how far the level falls over several days without inflow or drawing.</source>
        <translation>भिजेको प्लास्टरबाट दिनमा घट्ने पानीको गहिराइ; ढाकेको ट्याङ्कीमा पानी नहाली र नझिकी केही दिनमा सतह कति घट्छ, नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Crop of this bed, from the table or one of your own.</source>
        <translation>यो ड्याङको बाली, तालिकाबाट वा तपाईंको आफ्नै।</translation>
    </message>
    <message>
        <source>Planted area that is watered from the tank, paths left out.</source>
        <translation>ट्याङ्कीबाट पानी हालिने रोपेको क्षेत्रफल, बाटो छोडेर।</translation>
    </message>
    <message>
        <source>Month in which the crop is sown or planted out each year.</source>
        <translation>हरेक वर्ष बाली छर्ने वा रोप्ने महिना।</translation>
    </message>
    <message>
        <source>Day of that month; the first or the middle is near enough.</source>
        <translation>त्यो महिनाको गते वा दिन; पहिलो वा बीचको दिन भए पुग्छ।</translation>
    </message>
    <message>
        <source>How the water is given to the bed.</source>
        <translation>ड्याङमा पानी हाल्ने तरिका।</translation>
    </message>
    <message>
        <source>Share of the water drawn that stays where the roots can use it; leave empty to take it from the way of watering.</source>
        <translation>झिकिएको पानीमध्ये जराले खान पाउने ठाउँमा रहने भाग; सिँचाइको तरिकाबाट लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Animals that drink from the tank.</source>
        <translation>ट्याङ्कीको पानी खाने गाईवस्तु।</translation>
    </message>
    <message>
        <source>Number of these animals, on average.</source>
        <translation>यस्ता गाईवस्तुको सङ्ख्या, औसतमा।</translation>
    </message>
    <message>
        <source>Water one animal drinks in a day; count the buckets, or leave empty to take the usual for its kind.</source>
        <translation>एउटाले दिनमा खाने पानी; बाल्टी गन्नुहोस्, वा त्यस जातको साधारण मान लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>People whose water for washing and the house comes from the tank.</source>
        <translation>धुन र घरको काममा ट्याङ्कीको पानी चलाउने मान्छे।</translation>
    </message>
    <message>
        <source>Water one person takes from the tank in a day; count the vessels carried home.</source>
        <translation>एक जनाले दिनमा ट्याङ्कीबाट लैजाने पानी; घर लगेका भाँडो गन्नुहोस्।</translation>
    </message>
    <message>
        <source>Name by which the beds call this crop; each one only once.</source>
        <translation>ड्याङमा यो बालीलाई बोलाउने नाम; एउटा नाम एक पटक मात्र।</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration from planting until a tenth of the ground is covered.</source>
        <translation>रोपेदेखि जमिनको दश भागको एक भाग नढाकुन्जेल बालीले खाने पानी भाग सन्दर्भ वाष्पोत्सर्जन।</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration while the crop covers the ground fully.</source>
        <translation>बालीले जमिन पूरै ढाकेको बेला खाने पानी भाग सन्दर्भ वाष्पोत्सर्जन।</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration on the day of harvest or when the leaves die.</source>
        <translation>बाली काट्ने दिन वा पात मर्दा बालीले खाने पानी भाग सन्दर्भ वाष्पोत्सर्जन।</translation>
    </message>
    <message>
        <source>Height of the full-grown crop, or to the top of its stakes.</source>
        <translation>पूरा बढेको बालीको उचाइ, वा थाङ्ग्राको टुप्पोसम्म।</translation>
    </message>
    <message>
        <source>Days from planting until a tenth of the ground is covered.</source>
        <translation>रोपेदेखि जमिनको दश भागको एक भाग ढाकुन्जेलका दिन।</translation>
    </message>
    <message>
        <source>Days from then until the leaves cover the ground.</source>
        <translation>त्यसपछि पातले जमिन ढाकुन्जेलका दिन।</translation>
    </message>
    <message>
        <source>Days from full cover until the leaves begin to yellow or fruit ripens.</source>
        <translation>पूरै ढाकेदेखि पात पहेँलिन वा फल पाक्न थालुन्जेलका दिन।</translation>
    </message>
    <message>
        <source>Days from then until harvest or until watering stops.</source>
        <translation>त्यसपछि बाली काट्ने वा पानी हाल्न छोड्ने बेलासम्मका दिन।</translation>
    </message>
    <message>
        <source>Depth from which most roots draw; dig beside a grown plant and look.</source>
        <translation>धेरैजसो जराले पानी तान्ने गहिराइ; बढेको बोटको छेउमा खनेर हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Part of the water held by the soil that the crop may use up before it suffers: 0.40 is 40 litres of 100.</source>
        <translation>माटोले राखेको पानीमध्ये बालीलाई असर नपरुन्जेल खान सक्ने भाग: ०.४० भनेको १०० लिटरमा ४० लिटर।</translation>
    </message>
    <message>
        <source>Water the soil keeps for roots after it has drained, down to wilting: sand little, loam and clay much.</source>
        <translation>पानी निथ्रिएपछि ओइलाउने बेलासम्म माटोले जराका लागि राख्ने पानी: बालुवामा थोरै, दोमट र चिम्टाइलो माटोमा धेरै।</translation>
    </message>
    <message>
        <source>Whether twelve monthly means or a table of single days from a weather station is at hand.</source>
        <translation>बाह्र महिनाको औसत छ कि मौसम केन्द्रको दिनदिनको तालिका छ।</translation>
    </message>
    <message>
        <source>Rain of this month, mean of many years, from the nearest weather station.</source>
        <translation>यो महिनाको वर्षा, धेरै वर्षको औसत, सबैभन्दा नजिकको मौसम केन्द्रबाट।</translation>
    </message>
    <message>
        <source>Days of this month on which it rains 0.1 mm or more, mean of many years.</source>
        <translation>यो महिनामा ०.१ mm वा बढी पानी पर्ने दिन, धेरै वर्षको औसत।</translation>
    </message>
    <message>
        <source>Mean of the lowest temperatures of each day, in the shade.</source>
        <translation>हरेक दिनको न्यूनतम तापक्रमको औसत, छायामा।</translation>
    </message>
    <message>
        <source>Mean of the highest temperatures of each day, in the shade.</source>
        <translation>हरेक दिनको अधिकतम तापक्रमको औसत, छायामा।</translation>
    </message>
    <message>
        <source>Mean relative humidity of the air; leave empty when not known, then it is estimated from the temperature.</source>
        <translation>हावाको सापेक्षिक आर्द्रताको औसत; थाहा नभए खाली छोड्नुहोस्, तापक्रमबाट अनुमान गरिन्छ।</translation>
    </message>
    <message>
        <source>Mean wind 2 m above the ground; leave empty when not known, then a light wind is reckoned with.</source>
        <translation>जमिनभन्दा २ m माथिको हावाको औसत वेग; थाहा नभए खाली छोड्नुहोस्, हलुका हावा मानेर हिसाब गरिन्छ।</translation>
    </message>
    <message>
        <source>Mean hours of bright sunshine a day; leave empty when not known, then it is estimated from the temperatures.</source>
        <translation>दिनमा चर्को घाम लाग्ने घण्टाको औसत; थाहा नभए खाली छोड्नुहोस्, तापक्रमबाट अनुमान गरिन्छ।</translation>
    </message>
    <message>
        <source>Standard deviation of the yearly rain over its mean, from the weather station. Leave empty if not known.</source>
        <translation>वार्षिक वर्षाको स्तरीय भिन्नता भाग औसत, मौसम केन्द्रबाट। थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>How many years of daily weather are made from the monthly means; more years show rare droughts better and take longer.</source>
        <translation>मासिक औसतबाट दिनदिनको मौसमका कति वर्ष बनाउने; धेरै वर्ष बनाए कहिलेकाहीँको खडेरी राम्ररी देखिन्छ, तर समय बढी लाग्छ।</translation>
    </message>
    <message>
        <source>The same number gives the same years; another one shows how much the answer depends on chance.</source>
        <translation>उही अङ्कले उही वर्ष दिन्छ; अर्को अङ्कले उत्तर कति संयोगमा भर पर्छ देखाउँछ।</translation>
    </message>
    <message>
        <source>Penman-Monteith is the standard and estimates what was not measured; Hargreaves uses temperatures alone.</source>
        <translation>Penman-Monteith मान्य तरिका हो र ननापिएको कुरा अनुमान गर्छ; Hargreaves ले तापक्रम मात्र लिन्छ।</translation>
    </message>
    <message>
        <source>Turns the day&apos;s range of temperature into sunshine where none was measured: 0.16 inland, 0.19 at a coast.</source>
        <translation>घाम ननापिएको ठाउँमा दिनको तापक्रमको फरकलाई घाममा बदल्छ: भित्री भूभागमा ०.१६, समुद्र किनारमा ०.१९।</translation>
    </message>
    <message>
        <source>What to do with years in which days or values of the record are missing.</source>
        <translation>रेकर्डका दिन वा मान छुटेका वर्षलाई के गर्ने।</translation>
    </message>
    <message>
        <source>In how many of ten years there shall be water on every day; ask those who live from the beds.</source>
        <translation>दश वर्षमध्ये कति वर्ष हरेक दिन पानी हुनुपर्छ; ड्याङबाटै गुजारा गर्नेहरूलाई सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>Runs each day</source>
        <translation>दिनमा बग्ने समय</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>महिना</translation>
    </message>
    <message>
        <source>Vessel holds</source>
        <translation>भाँडोमा अट्ने</translation>
    </message>
    <message>
        <source>Time to fill</source>
        <translation>भरिने समय</translation>
    </message>
    <message>
        <source>Roof area</source>
        <translation>छानाको क्षेत्रफल</translation>
    </message>
    <message>
        <source>Share of rain off the roof</source>
        <translation>छानाबाट आउने वर्षाको भाग</translation>
    </message>
    <message>
        <source>First flush off the roof</source>
        <translation>छानाको पहिलो पानी</translation>
    </message>
    <message>
        <source>Ground area</source>
        <translation>जमिनको क्षेत्रफल</translation>
    </message>
    <message>
        <source>Share of rain off the ground</source>
        <translation>जमिनबाट आउने वर्षाको भाग</translation>
    </message>
    <message>
        <source>First flush off the ground</source>
        <translation>जमिनको पहिलो पानी</translation>
    </message>
    <message>
        <source>Evaporation factor of open water</source>
        <translation>खुला पानीको वाष्पीकरण गुणक</translation>
    </message>
    <message>
        <source>Evaporation stopped by a cover</source>
        <translation>ढकनीले रोक्ने वाष्पीकरण</translation>
    </message>
    <message>
        <source>Seepage through the plaster</source>
        <translation>प्लास्टरबाट रसाउने पानी</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>बाली</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>क्षेत्रफल</translation>
    </message>
    <message>
        <source>Planted, month</source>
        <translation>रोप्ने महिना</translation>
    </message>
    <message>
        <source>Planted, day</source>
        <translation>रोप्ने दिन</translation>
    </message>
    <message>
        <source>Watered by</source>
        <translation>सिँचाइको तरिका</translation>
    </message>
    <message>
        <source>Reaches the roots</source>
        <translation>जरामा पुग्ने</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>गाईवस्तु</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>कति वटा</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>एउटाले खाने</translation>
    </message>
    <message>
        <source>People who use the water</source>
        <translation>पानी चलाउने मान्छे</translation>
    </message>
    <message>
        <source>Water for each person</source>
        <translation>एक जनाको पानी</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>नाम</translation>
    </message>
    <message>
        <source>Kc, first stage</source>
        <translation>Kc, सुरुको अवस्था</translation>
    </message>
    <message>
        <source>Kc, mid season</source>
        <translation>Kc, मध्य अवस्था</translation>
    </message>
    <message>
        <source>Kc, last day</source>
        <translation>Kc, अन्तिम दिन</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>उचाइ</translation>
    </message>
    <message>
        <source>First stage</source>
        <translation>सुरुको अवस्था</translation>
    </message>
    <message>
        <source>Growing stage</source>
        <translation>बढ्ने अवस्था</translation>
    </message>
    <message>
        <source>Mid season</source>
        <translation>मध्य अवस्था</translation>
    </message>
    <message>
        <source>Late season</source>
        <translation>अन्तिम अवस्था</translation>
    </message>
    <message>
        <source>Root depth</source>
        <translation>जराको गहिराइ</translation>
    </message>
    <message>
        <source>Share used before stress</source>
        <translation>असर नपरुन्जेल खाने भाग</translation>
    </message>
    <message>
        <source>Water the soil of the beds holds</source>
        <translation>ड्याङको माटोमा अट्ने पानी</translation>
    </message>
    <message>
        <source>Weather known as</source>
        <translation>मौसमको जानकारी</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>वर्षा</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>पानी परेका दिन</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>आर्द्रता</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>हावा</translation>
    </message>
    <message>
        <source>Sunshine</source>
        <translation>घाम</translation>
    </message>
    <message>
        <source>Spread of yearly rain</source>
        <translation>वार्षिक वर्षाको घटबढ</translation>
    </message>
    <message>
        <source>Weather years to make</source>
        <translation>बनाउने मौसम वर्ष</translation>
    </message>
    <message>
        <source>Number that starts the draw</source>
        <translation>गोलाको सुरु अङ्क</translation>
    </message>
    <message>
        <source>Reference evapotranspiration by</source>
        <translation>सन्दर्भ वाष्पोत्सर्जनको तरिका</translation>
    </message>
    <message>
        <source>Radiation factor kRs</source>
        <translation>विकिरण गुणक kRs</translation>
    </message>
    <message>
        <source>Gaps in the record</source>
        <translation>रेकर्डका छुटेका दिन</translation>
    </message>
    <message>
        <source>Good years wanted in ten</source>
        <translation>१० वर्षमा चाहिने राम्रा वर्ष</translation>
    </message>
    <message>
        <source>Tomato</source>
        <translation>गोलभेँडा</translation>
    </message>
    <message>
        <source>Sweet pepper</source>
        <translation>भेडे खुर्सानी</translation>
    </message>
    <message>
        <source>Aubergine (eggplant)</source>
        <translation>भन्टा</translation>
    </message>
    <message>
        <source>Potato</source>
        <translation>आलु</translation>
    </message>
    <message>
        <source>Onion, for bulbs</source>
        <translation>प्याज (डल्लो)</translation>
    </message>
    <message>
        <source>Onion, green</source>
        <translation>हरियो प्याज</translation>
    </message>
    <message>
        <source>Garlic</source>
        <translation>लसुन</translation>
    </message>
    <message>
        <source>Cabbage</source>
        <translation>बन्दा</translation>
    </message>
    <message>
        <source>Cauliflower</source>
        <translation>काउली</translation>
    </message>
    <message>
        <source>Broccoli</source>
        <translation>ब्रोकाउली</translation>
    </message>
    <message>
        <source>Carrot</source>
        <translation>गाजर</translation>
    </message>
    <message>
        <source>Lettuce</source>
        <translation>जिरीको साग</translation>
    </message>
    <message>
        <source>Spinach</source>
        <translation>पालुङ्गो</translation>
    </message>
    <message>
        <source>Radish</source>
        <translation>मूला</translation>
    </message>
    <message>
        <source>Cucumber</source>
        <translation>काँक्रो</translation>
    </message>
    <message>
        <source>Beans, green</source>
        <translation>हरियो सिमी</translation>
    </message>
    <message>
        <source>Beans, dry</source>
        <translation>सुकेको सिमी (राजमा)</translation>
    </message>
    <message>
        <source>Peas</source>
        <translation>केराउ</translation>
    </message>
    <message>
        <source>Lentils</source>
        <translation>मुसुरो</translation>
    </message>
    <message>
        <source>Maize, for grain</source>
        <translation>मकै (दाना)</translation>
    </message>
    <message>
        <source>Maize, sweet</source>
        <translation>गुलियो मकै</translation>
    </message>
    <message>
        <source>Winter wheat</source>
        <translation>हिउँदे गहुँ</translation>
    </message>
    <message>
        <source>Barley</source>
        <translation>जौ</translation>
    </message>
    <message>
        <source>Millet</source>
        <translation>कोदो</translation>
    </message>
    <message>
        <source>Citrus trees</source>
        <translation>सुन्तलाजात</translation>
    </message>
    <message>
        <source>Fruit trees that shed their leaves</source>
        <translation>पात झर्ने फलफूल</translation>
    </message>
    <message>
        <source>metal sheet roof</source>
        <translation>जस्ताको छाना</translation>
    </message>
    <message>
        <source>tiled or slate roof</source>
        <translation>टायल वा ढुङ्गाको छाना</translation>
    </message>
    <message>
        <source>thatched roof</source>
        <translation>खरको छाना</translation>
    </message>
    <message>
        <source>bare ground</source>
        <translation>नाङ्गो जमिन</translation>
    </message>
    <message>
        <source>pasture</source>
        <translation>चरन</translation>
    </message>
    <message>
        <source>tilled ground</source>
        <translation>जोतेको जमिन</translation>
    </message>
    <message>
        <source>first flush off a roof</source>
        <translation>छानाको पहिलो पानी</translation>
    </message>
    <message>
        <source>first flush off ground</source>
        <translation>जमिनको पहिलो पानी</translation>
    </message>
    <message>
        <source>open water</source>
        <translation>खुला पानी</translation>
    </message>
    <message>
        <source>shade cloth, one layer</source>
        <translation>छाया जाली, एक तह</translation>
    </message>
    <message>
        <source>shade cloth, two layers</source>
        <translation>छाया जाली, दुई तह</translation>
    </message>
    <message>
        <source>seepage through the plaster</source>
        <translation>प्लास्टरबाट रसाउने पानी</translation>
    </message>
    <message>
        <source>one person</source>
        <translation>एक जना</translation>
    </message>
    <message>
        <source>%1: median %2 of %3, from %4 to %5.</source>
        <translation>%1: %3को बीचको मान %2, %4 देखि %5।</translation>
    </message>
    <message>
        <source>Apart from the others: row %1.</source>
        <translation>अरूभन्दा फरक: पङ्क्ति %1।</translation>
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
        <translation>दैनिक रेकर्ड भनेको date (वर्ष-महिना-दिन), rain_mm, t_min_c, t_max_c र नापिएको भए wind_m_s, humidity_percent, sun_hours महल भएको तालिका हो। छुटेका दिन देखाइन्छन्, चुपचाप कहिल्यै भरिँदैनन्।</translation>
    </message>
    <message>
        <source>The project holds a daily record from %1 to %2, %3.</source>
        <translation>परियोजनामा %1 देखि %2सम्मको दैनिक रेकर्ड छ, %3।</translation>
    </message>
    <message>
        <source>It is not used now: the weather comes from monthly means.</source>
        <translation>अहिले यो चलाइएको छैन: मौसम मासिक औसतबाट आउँछ।</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 र %2</translation>
    </message>
    <message>
        <source>Whether a fence on all four sides, a gate that shuts itself and a ladder or rope to climb out are part of the work.</source>
        <translation>चारैतिर बार, आफैं बन्द हुने गेट र बाहिर उक्लिने भर्‍याङ वा डोरी यो काममा पर्छन् कि पर्दैनन्।</translation>
    </message>
    <message>
        <source>Whether runoff from roof or ground passes a silt trap before it enters the tank.</source>
        <translation>छाना वा जमिनबाट बगेको पानी ट्याङ्कीमा पस्नुअघि थेग्रो कुण्ड भएर जान्छ कि जाँदैन।</translation>
    </message>
    <message>
        <source>Name of the licensed engineer who answers for building although a finding says stop. Counts only with licence, reason and date, and is printed on the sheets.</source>
        <translation>ध्यान दिने कुराले रोक्नुहोस् भने पनि बनाउने जिम्मा लिने इजाजतप्राप्त इन्जिनियरको नाम। इजाजतपत्र, कारण र मितिसहित मात्र मानिन्छ, र पानामा छापिन्छ।</translation>
    </message>
    <message>
        <source>Number or register of the engineer&apos;s licence.</source>
        <translation>इन्जिनियरको इजाजतपत्रको नम्बर वा दर्ता।</translation>
    </message>
    <message>
        <source>What the engineer found and asks for, so that it may be built.</source>
        <translation>इन्जिनियरले के पाए र बनाउन दिन के गर्नुपर्छ भने।</translation>
    </message>
    <message>
        <source>Day on which the engineer decided.</source>
        <translation>इन्जिनियरले निर्णय गरेको दिन।</translation>
    </message>
    <message>
        <source>Fence, gate and ladder planned</source>
        <translation>बार, गेट र भर्‍याङ योजनामा छन्</translation>
    </message>
    <message>
        <source>Silt trap planned</source>
        <translation>थेग्रो कुण्ड योजनामा छ</translation>
    </message>
    <message>
        <source>Override: engineer</source>
        <translation>छुट: इन्जिनियर</translation>
    </message>
    <message>
        <source>Override: licence</source>
        <translation>छुट: इजाजतपत्र</translation>
    </message>
    <message>
        <source>Override: reason</source>
        <translation>छुट: कारण</translation>
    </message>
    <message>
        <source>Override: date</source>
        <translation>छुट: मिति</translation>
    </message>
    <message>
        <source>holds fewer different points than a surface needs</source>
        <translation>जमिनको सतह बनाउन चाहिनेभन्दा कम फरक-फरक बिन्दु छन्</translation>
    </message>
    <message>
        <source>holds points that all lie on one line; survey some beside it</source>
        <translation>सबै बिन्दु एउटै रेखामा छन्; छेउतिर पनि केही नाप्नुहोस्</translation>
    </message>
    <message>
        <source>repeats an earlier point and is left out</source>
        <translation>पहिलेको बिन्दु दोहोरिएको छ, त्यसैले छोडिएको छ</translation>
    </message>
    <message>
        <source>stands far above or below the points around it; check its height</source>
        <translation>वरिपरिका बिन्दुभन्दा धेरै माथि वा तल छ; उचाइ जाँच्नुहोस्</translation>
    </message>
    <message>
        <source>lies far from all other points; check its place</source>
        <translation>अरू सबै बिन्दुबाट टाढा छ; ठाउँ जाँच्नुहोस्</translation>
    </message>
    <message>
        <source>The soil is loose fill. Fill settles unevenly and cracks the lining: no floor or wall may stand on it. Choose a place in natural ground, or let a licensed engineer decide.</source>
        <translation>माटो पुरेको खुकुलो माटो हो। पुरेको माटो असमान थिचिन्छ र अस्तर चर्काउँछ: त्यसमाथि भुइँ वा भित्ता राख्नै हुँदैन। सक्कली जमिनमा ठाउँ छान्नुहोस्, वा इजाजतप्राप्त इन्जिनियरलाई निर्णय गर्न दिनुहोस्।</translation>
    </message>
    <message>
        <source>The soil is soft and wet. It does not carry the lining and its cut does not stand. Choose a drier place, or let a licensed engineer decide.</source>
        <translation>माटो गिलो र भिजेको छ। यसले अस्तर थाम्दैन र काटेको भित्ता अडिँदैन। सुक्खा ठाउँ छान्नुहोस्, वा इजाजतप्राप्त इन्जिनियरलाई निर्णय गर्न दिनुहोस्।</translation>
    </message>
    <message>
        <source>Part of the floor is rock. The lining cracks where rock and earth meet: bed it evenly on stones all over, and break no rock without someone trained for it.</source>
        <translation>पिँधको केही भाग चट्टान छ। चट्टान र माटो जोडिएको ठाउँमा अस्तर चर्किन्छ: सबैतिर एकनास ढुङ्गाको सोलिङ बिछ्याउनुहोस्, र तालिम पाएको मान्छे नभई चट्टान नफोर्नुहोस्।</translation>
    </message>
    <message>
        <source>The soil holds %1 clay. From about %2 on, clay may swell when wet and crack the lining. Test it: dry a clod and see how far it shrinks.</source>
        <translation>माटोमा चिम्टाइलो माटोको भाग %1 छ। करिब %2 देखि चिम्टाइलो माटो भिज्दा फुलेर अस्तर चर्काउन सक्छ। जाँच्नुहोस्: एउटा डल्लो सुकाएर कति खुम्चिन्छ हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>The pit is %1 deep and its walls lean back %2 for each unit of height; the published table asks for %3 in this soil. Slope the open cut back further, step it, or shore it. Local codes and licensed practice come first.</source>
        <translation>खाडल %1 गहिरो छ र भित्ता हरेक एक एकाइ उचाइमा %2 ढल्किएका छन्; प्रकाशित तालिकाले यो माटोमा %3 माग्छ। खुला कटानलाई अझ ढल्काउनुहोस्, खुड्किला पार्नुहोस्, वा टेको दिनुहोस्। स्थानीय नियम-मापदण्ड र इजाजतप्राप्त प्राविधिकको काम पहिला आउँछ।</translation>
    </message>
    <message>
        <source>The pit is %1 deep. In the weakest soil of this kind a cut with this batter is reckoned to stand to %2 only, with a safety of %3. Dig less deep, lean the walls back, shore them, or let a licensed engineer test the soil.</source>
        <translation>खाडल %1 गहिरो छ। यस किसिमको सबैभन्दा कमजोर माटोमा यति ढल्काइको कटान, सुरक्षा गुणक %3 लिँदा, %2सम्म मात्र अडिने हिसाब आउँछ। कम गहिरो खन्नुहोस्, भित्ता ढल्काउनुहोस्, टेको दिनुहोस्, वा इजाजतप्राप्त इन्जिनियरलाई माटो जाँच्न लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on look for cracks, springs, leaning trees and old slips before you choose the place.</source>
        <translation>जमिनको ढाल %1 छ। %2 देखि बढी ढालमा ठाउँ छान्नुअघि चिरा, मूल, ढल्केका रुख र पुराना पहिरो खोज्नुहोस्।</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on no tank is built without a licensed engineer: a leak can bring the slope down.</source>
        <translation>जमिनको ढाल %1 छ। %2 देखि बढी ढालमा इजाजतप्राप्त इन्जिनियर बिना ट्याङ्की बनाउनै हुँदैन: चुहावटले पाखो नै खसाल्न सक्छ।</translation>
    </message>
    <message>
        <source>Distance and drop of the nearest edge downhill are not known, and not known is not safe. Measure both.</source>
        <translation>ओरालोतिरको सबैभन्दा नजिकको डिल कति टाढा र कति अग्लो छ थाहा छैन, र थाहा नहुनु सुरक्षित हुनु होइन। दुवै नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away. One rule (drop plus pit depth) asks for %2, another (a third of the drop, as for footings) for %3; they disagree here. Move the tank back if you can.</source>
        <translation>ओरालोतिरको डिल %1 टाढा छ। एउटा नियमले (डिलको उचाइ र खाडलको गहिराइ जोडेर) %2 माग्छ, अर्कोले (जगलाई जस्तै, डिलको उचाइको तिहाइ) %3; यहाँ दुई नियम मिल्दैनन्। मिल्छ भने ट्याङ्की पछाडि सार्नुहोस्।</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away, nearer than both rules allow: %2 (drop plus pit depth) and %3 (a third of the drop, as for footings). Move the tank back, or let a licensed engineer decide.</source>
        <translation>ओरालोतिरको डिल %1 टाढा छ, दुवै नियमले दिनेभन्दा नजिक: %2 (डिलको उचाइ र खाडलको गहिराइ जोडेर) र %3 (जगलाई जस्तै, डिलको उचाइको तिहाइ)। ट्याङ्की पछाडि सार्नुहोस्, वा इजाजतप्राप्त इन्जिनियरलाई निर्णय गर्न दिनुहोस्।</translation>
    </message>
    <message>
        <source>The depth of ground water is not known, and not known is not safe: it can lift an empty tank. Ask how high wells and springs stand in the rains.</source>
        <translation>जमिनमुनिको पानी कति गहिरोमा छ थाहा छैन, र थाहा नहुनु सुरक्षित हुनु होइन: यसले खाली ट्याङ्की उचाल्न सक्छ। वर्षायाममा कुवा र मूलको पानी कति माथि आउँछ, सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Never let the water sink below %1 above the floor then.</source>
        <translation>त्यति बेला पानीलाई भुइँभन्दा %1 माथिको सतहबाट तल कहिल्यै झर्न नदिनुहोस्।</translation>
    </message>
    <message>
        <source>Not even a full tank would hold it down.</source>
        <translation>भरिएको ट्याङ्कीले पनि त्यसलाई थाम्दैन।</translation>
    </message>
    <message>
        <source>Ground water stands %1 over the underside of the floor and lifts the empty tank: its weight is %2 of the lift, %3 is wanted.</source>
        <translation>जमिनमुनिको पानी भुइँको तल्लो सतहभन्दा %1 माथि हुन्छ र खाली ट्याङ्की उचाल्छ: ट्याङ्कीको तौल उचाल्ने बलको %2 छ, %3 चाहिन्छ।</translation>
    </message>
    <message>
        <source>Whether a house lies downhill is not known, and not known is not safe. Walk the way that escaping water would take.</source>
        <translation>ओरालोतिर घर छ कि छैन थाहा छैन, र थाहा नहुनु सुरक्षित हुनु होइन। फुटेर निस्किएको पानी जाने बाटो हिँडेर हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>A house lies %1 downhill, within %2. Lead the overflow, and the way of the water if the tank breaks, past it, or choose another place.</source>
        <translation>ओरालोतिर %1 टाढा, %2भित्रै, घर छ। ओभरफ्लो र ट्याङ्की फुटे पानी जाने बाटो घरबाट परतिर लैजानुहोस्, वा अर्को ठाउँ छान्नुहोस्।</translation>
    </message>
    <message>
        <source>Small children live near and no fence is planned. A child drowns in silence and cannot climb a smooth wall: plan a fence on all four sides with a gate that shuts itself, and a ladder or rope to climb out.</source>
        <translation>नजिकै साना बच्चा बस्छन् र बार योजनामा छैन। बच्चा आवाजै नगरी डुब्छ र चिप्लो भित्तामा चढ्न सक्दैन: चारैतिर बार, आफैं बन्द हुने गेट, र बाहिर उक्लिने भर्‍याङ वा डोरी योजनामा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Whether small children live within 20 m is not known, and not known is not safe. Plan the fence, or ask.</source>
        <translation>२० m भित्र साना बच्चा बस्छन् कि बस्दैनन् थाहा छैन, र थाहा नहुनु सुरक्षित हुनु होइन। बार योजनामा राख्नुहोस्, वा सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Runoff is led in and no silt trap is planned. Silt fills the tank and wears the lining: plan a trap and a way to let the first rain go.</source>
        <translation>बगेको पानी ट्याङ्कीमा ल्याइन्छ तर थेग्रो कुण्ड योजनामा छैन। थेग्रोले ट्याङ्की भर्छ र अस्तर खियाउँछ: थेग्रो कुण्ड र पहिलो वर्षाको पानी फाल्ने बाटो योजनामा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>In %1 the mean lowest temperature is %2. Do not plaster or cure in frost, and ask locally whether ice has broken linings.</source>
        <translation>%1मा न्यूनतम तापक्रमको औसत %2 छ। तुसारोमा प्लास्टर वा क्योरिङ नगर्नुहोस्, र बरफले अस्तर फुटाएको छ कि, गाउँमा सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Water is missing all year round; most often in %1.</source>
        <translation>वर्षभरि नै पानी अपुग हुन्छ; सबैभन्दा धेरै पटक %1मा।</translation>
    </message>
    <message>
        <source>Full at the start of %1, when it is used up fastest, and with nothing more flowing in, the tank lasts %2.</source>
        <translation>पानी सबैभन्दा छिटो सकिने समय, %1को सुरुमा भरिएको ट्याङ्कीको पानी, थप केही नआए, %2 पुग्छ।</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, gives as many good years as are wanted.</source>
        <translation>यो गहिराइ र ढल्काइको ट्याङ्की %1सम्म जति ठूलो भए पनि चाहेजति राम्रा वर्ष दिँदैन।</translation>
    </message>
    <message>
        <source>To give as many good years as are wanted, a tank of this depth has to hold about %1.</source>
        <translation>चाहेजति राम्रा वर्ष दिन यो गहिराइको ट्याङ्कीमा करिब %1 अट्नुपर्छ।</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, would reach it: lead in more water, or need less.</source>
        <translation>यो गहिराइ र ढल्काइको ट्याङ्की %1सम्म जति ठूलो भए पनि पुग्दैन: थप पानी ल्याउनुहोस्, वा चाहिने पानी घटाउनुहोस्।</translation>
    </message>
    <message>
        <source>The yearly rain of the weather years made differs by %1; a spread of %2 is entered. Check the spread and the wet days, or have more years made.</source>
        <translation>बनाइएका मौसम वर्षको वार्षिक वर्षा %1 घटबढ हुन्छ; राखिएको घटबढ %2 छ। घटबढ र पानी परेका दिन जाँच्नुहोस्, वा थप वर्ष बनाउन लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>Weather years made from the monthly means: %1. Have at least %2 made to see how often the water runs short.</source>
        <translation>मासिक औसतबाट बनाइएका मौसम वर्ष: %1। पानी कति पटक अपुग हुन्छ हेर्न कम्तीमा %2 बनाउन लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>Reference evapotranspiration of a mean year is %1 by Penman-Monteith and %2 by Hargreaves. Enter or check humidity, wind and sunshine, which only the first one uses.</source>
        <translation>औसत वर्षको सन्दर्भ वाष्पोत्सर्जन Penman-Monteith ले %1 र Hargreaves ले %2 आउँछ। आर्द्रता, हावा र घाम राख्नुहोस् वा जाँच्नुहोस्; यी पहिलो तरिकाले मात्र चलाउँछ।</translation>
    </message>
    <message>
        <source>Mean daily lowest</source>
        <translation>दैनिक न्यूनतमको औसत</translation>
    </message>
    <message>
        <source>Mean daily highest</source>
        <translation>दैनिक अधिकतमको औसत</translation>
    </message>
    <message>
        <source>The record holds no whole year without gaps, counted from its wettest month. Add days, or have gaps filled in.</source>
        <translation>सबैभन्दा धेरै पानी पर्ने महिनाबाट गन्दा, रेकर्डमा दिन नछुटेको पूरा वर्ष एउटै छैन। दिन थप्नुहोस्, वा छुटेका दिन भर्न लगाउनुहोस्।</translation>
    </message>
    <message>
        <source>Reckoned with: %1.</source>
        <translation>यसले हिसाब गरिएको: %1।</translation>
    </message>
    <message>
        <source>tank in natural ground</source>
        <translation>ट्याङ्की सक्कली जमिनमा</translation>
    </message>
    <message>
        <source>cut and fill balanced</source>
        <translation>कटान र पुराइ बराबर</translation>
    </message>
    <message>
        <source>open end of the pipe</source>
        <translation>पाइपको खुला मुख</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>धारा</translation>
    </message>
    <message>
        <source>low-head drip kit</source>
        <translation>कम हेडको थोपा सिँचाइ सेट</translation>
    </message>
    <message>
        <source>drip lines at full pressure</source>
        <translation>पूरा चापका थोपा पाइप</translation>
    </message>
    <message>
        <source>micro-sprinkler</source>
        <translation>सानो फोहोरा</translation>
    </message>
    <message>
        <source>notch in the rim</source>
        <translation>बिटमा खाँचा</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>पाइप</translation>
    </message>
    <message>
        <source>bare soil</source>
        <translation>नाङ्गो माटो</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>घाँस</translation>
    </message>
    <message>
        <source>stone pitching</source>
        <translation>ढुङ्गा छपाइ</translation>
    </message>
    <message>
        <source>plaster</source>
        <translation>प्लास्टर</translation>
    </message>
    <message>
        <source>the line from the source</source>
        <translation>स्रोतबाट आउने पाइपलाइन</translation>
    </message>
    <message>
        <source>the line to the field</source>
        <translation>बारीमा जाने पाइपलाइन</translation>
    </message>
    <message>
        <source>Water does not flow as it should through %1: %2.</source>
        <translation>%1मा पानी जसरी बग्नुपर्ने हो, त्यसरी बग्दैन: %2।</translation>
    </message>
    <message>
        <source>With the outlet shut, the water in %1 presses with %2; the pipe bears %3. Take a stronger class, or let the water fall into an open tank on the way, which breaks the pressure.</source>
        <translation>निकास बन्द हुँदा %1मा पानीको चाप %2 पुग्छ; पाइपले %3 थाम्छ। बलियो श्रेणीको पाइप लिनुहोस्, वा बाटोमा खुला ट्याङ्कीमा पानी खसाल्नुहोस्, त्यसले चाप तोड्छ।</translation>
    </message>
    <message>
        <source>In %1, at %2 along it, the pressure head would sink to %3; under %4 the column of water parts and the flow reckoned does not come about. Lay the pipe lower there, or throttle it at its end.</source>
        <translation>%1मा, सुरुदेखि %2 पर, चापको हेड %3सम्म घट्छ; %4 भन्दा कम भए पाइपभित्रको पानी चुँडिन्छ र हिसाब गरिएको बहाव आउँदैन। त्यहाँ पाइप तल बिछ्याउनुहोस्, वा पाइपको अन्तिम छेउमा भल्भ कसेर बहाव घटाउनुहोस्।</translation>
    </message>
    <message>
        <source>From %2 to %3 along %1 the pipe lies above the line of heads and sucks, down to %4 of pressure head: air gathers, and a leak draws in dirt. Lay it lower there, or throttle the line at its end.</source>
        <translation>%1मा सुरुदेखि %2 देखि %3सम्म पाइप हेडको रेखाभन्दा माथि पर्छ र सोस्छ, चापको हेड %4सम्म: हावा जम्छ, र चुहिने ठाउँबाट फोहोर तान्छ। त्यहाँ तल बिछ्याउनुहोस्, वा पाइपलाइनको अन्तिम छेउमा भल्भ कसेर बहाव घटाउनुहोस्।</translation>
    </message>
    <message>
        <source>Air behind the high points of %1, the first at %2 along it, can hold back %3 of head; there are only %4 to drive the water, so it may not start to flow. Lay the pipe with a steady fall, or put an air valve on each high point.</source>
        <translation>%1का अग्ला ठाउँपछाडि, पहिलो सुरुदेखि %2मा, जमेको हावाले %3 हेड रोक्न सक्छ; पानी धकेल्न %4 मात्र छ, त्यसैले बग्न सुरु नहुन सक्छ। पाइप एकनास ढालमा बिछ्याउनुहोस्, वा हरेक अग्लो ठाउँमा एयर भल्भ राख्नुहोस्।</translation>
    </message>
    <message>
        <source>No pipe of the table brings that much and bears the pressure: find more fall, or break the pressure on the way.</source>
        <translation>तालिकाको कुनै पाइपले त्यति पानी ल्याएर चाप पनि थाम्दैन: बढी ढाल खोज्नुहोस्, वा बाटोमा चाप तोड्नुहोस्।</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter would bring it.</source>
        <translation>बाहिरी व्यास %1को पाइपले त्यति ल्याउँछ।</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter, class %2, would bring it.</source>
        <translation>बाहिरी व्यास %1, श्रेणी %2को पाइपले त्यति ल्याउँछ।</translation>
    </message>
    <message>
        <source>Only %2 come through %1; %3 are wanted.</source>
        <translation>%1बाट %2 मात्र आउँछ; %3 चाहिएको छ।</translation>
    </message>
    <message>
        <source>The pipe to the field goes through the lining. A tank of plaster leaks first where a pipe passes it, and the leak soaks the ground below. A siphon over the rim needs no hole.</source>
        <translation>बारीमा जाने पाइप अस्तर छेडेर जान्छ। प्लास्टरको ट्याङ्की पाइप छिरेको ठाउँबाटै सबैभन्दा पहिले चुहिन्छ, र चुहावटले तलको जमिन भिजाउँछ। बिटमाथिबाट जाने साइफनलाई प्वाल चाहिँदैन।</translation>
    </message>
    <message>
        <source>The top of the siphon lies %1 above the water; at this height above the sea it can be %2 at most. Lay the top nearer to the rim, or let the water sink less deep.</source>
        <translation>साइफनको टुप्पो पानीभन्दा %1 माथि छ; समुद्र सतहदेखिको यो उचाइमा बढीमा %2 हुन सक्छ। टुप्पो बिटको नजिक राख्नुहोस्, वा पानी धेरै तल झर्न नदिनुहोस्।</translation>
    </message>
    <message>
        <source>The siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Lay the top lower.</source>
        <translation>साइफन टुट्छ: टुप्पो पानीभन्दा %1 माथि छ, र त्यहाँ पाइपको सोसाइ धेरै हुन्छ। टुप्पो तल राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Wide open, the siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Put a valve at its lower end and open it to %2 at most, or lay the top lower.</source>
        <translation>पूरै खोल्दा साइफन टुट्छ: टुप्पो पानीभन्दा %1 माथि छ, र त्यहाँ पाइपको सोसाइ धेरै हुन्छ। तल्लो छेउमा भल्भ राखेर बढीमा %2 जाने गरी खोल्नुहोस्, वा टुप्पो तल राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Water runs through the siphon at %1; under %2 it does not carry air down, which gathers at the top and stops it in time. Take a narrower pipe, or put a plug at the top to fill it anew.</source>
        <translation>साइफनमा पानी %1ले बग्छ; %2 भन्दा कममा यसले हावा तल लैजाँदैन, हावा टुप्पोमा जम्छ र केही समयपछि साइफन रोकिन्छ। साँघुरो पाइप लिनुहोस्, वा फेरि भर्न टुप्पोमा बिर्को राख्नुहोस्।</translation>
    </message>
    <message>
        <source>The outlet chosen (%1) wants a head of %2. Left are %3 with the tank full and %4 when it is nearly empty: %5. Lay the end of the line lower, take a wider pipe, or choose an outlet that needs less.</source>
        <translation>छानिएको निकास (%1) लाई %2 हेड चाहिन्छ। ट्याङ्की भरिँदा %3 र लगभग रित्तिँदा %4 बाँकी रहन्छ: %5। पाइपलाइनको छेउ तल राख्नुहोस्, ठूलो पाइप लिनुहोस्, वा कम हेडले पुग्ने निकास छान्नुहोस्।</translation>
    </message>
    <message>
        <source>How hard it rains here at worst is not known; the overflow is reckoned for %1. Ask the weather station for the heaviest rain of ten minutes or a quarter of an hour.</source>
        <translation>यहाँ सबैभन्दा ठूलो पानी कति दर्किन्छ थाहा छैन; ओभरफ्लोको हिसाब %1 मानेर गरिएको छ। दश मिनेट वा पन्ध्र मिनेटको सबैभन्दा ठूलो वर्षा मौसम केन्द्रमा सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>A notch %1 wide would leave it.</source>
        <translation>%1 चौडा खाँचा भए त्यति बाँकी रहन्छ।</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would leave it.</source>
        <translation>भित्री व्यास %1को ओभरफ्लो पाइप भए त्यति बाँकी रहन्छ।</translation>
    </message>
    <message>
        <source>Give more freeboard, or lead less water in during a storm.</source>
        <translation>फ्रिबोर्ड बढाउनुहोस्, वा मुसलधारे वर्षामा कम पानी पस्न दिनुहोस्।</translation>
    </message>
    <message>
        <source>If leaves block the overflow, water runs over the rim anywhere, up to %1 deep, and nobody knows where it goes. Lay a part of the rim lower, on the side where it does no harm.</source>
        <translation>पातले ओभरफ्लो टाले पानी बिटको जताबाट पनि पोखिन्छ, %1सम्म गहिरो भएर, र कता जान्छ कसैलाई थाहा हुँदैन। हानि नहुने पट्टि बिटको केही भाग होचो बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>In a storm the water in the spill path would stand %1 deep; the channel is %2 deep. Dig it deeper or wider.</source>
        <translation>मुसलधारे वर्षामा ओभरफ्लोको कुलोमा पानी %1 गहिरो हुन्छ; कुलो %2 गहिरो छ। अझ गहिरो वा चौडा खन्नुहोस्।</translation>
    </message>
    <message>
        <source>In a storm the water runs down the spill path at %1 and may dig itself in: %2 bears about %3. Make the path wider or flatter, or pave it with stones.</source>
        <translation>मुसलधारे वर्षामा ओभरफ्लोको कुलोमा पानी %1ले बग्छ र कुलो काट्न सक्छ: %2ले करिब %3 थाम्छ। कुलो चौडा वा कम ढालको बनाउनुहोस्, वा ढुङ्गा छाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Make it deeper, longer or wider, or lead less water through it.</source>
        <translation>अझ गहिरो, लामो वा चौडा बनाउनुहोस्, वा त्यसबाट कम पानी लैजानुहोस्।</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside would hold them.</source>
        <translation>भित्र %1 लामो र %2 चौडा कुण्डले ती रोक्छ।</translation>
    </message>
    <message>
        <source>The silt trap holds grains down to %1 back; it should hold those of %2 too.</source>
        <translation>थेग्रो कुण्डले %1सम्मका दाना रोक्छ; %2का पनि रोक्नुपर्छ।</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2. Look for cracks and for wet ground below it, and test again in some weeks.</source>
        <translation>ट्याङ्की %1 चुहिन्छ, करिब %2। चिरा र तलको भिजेको जमिन खोज्नुहोस्, र केही हप्तापछि फेरि जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2.</source>
        <translation>ट्याङ्की %1 चुहिन्छ, करिब %2।</translation>
    </message>
    <message>
        <source>That can soften the ground below it: let no more water in, empty it and mend it.</source>
        <translation>यसले तलको जमिन गिलो बनाउन सक्छ: थप पानी पस्न नदिनुहोस्, रित्याउनुहोस् र मर्मत गर्नुहोस्।</translation>
    </message>
    <message>
        <source>Let the water sink until it stops: the leak is at that height. Mend the cracks there.</source>
        <translation>पानी आफैं नरोकिएसम्म घट्न दिनुहोस्: चुहावट त्यही उचाइमा हुन्छ। त्यहाँका चिरा मर्मत गर्नुहोस्।</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained %1, more than the readings&apos; error of %2: water ran in, or a reading is wrong. Shut all inlets and test again in dry weather.</source>
        <translation>बाल्टीको तुलनामा ट्याङ्कीमा %1 बढ्यो, नापको गल्ती %2 भन्दा बढी: पानी पस्यो, वा कुनै नाप गलत छ। पानी पस्ने सबै मुख बन्द गरेर सुक्खा मौसममा फेरि जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>The leak test shows %1, no more than the readings&apos; error of %2, so it tells nothing. Let it run longer.</source>
        <translation>चुहावट जाँचले %1 देखाउँछ, नापको गल्ती %2 भन्दा बढी छैन, त्यसैले केही भन्न सकिँदैन। अझ लामो समय चल्न दिनुहोस्।</translation>
    </message>
    <message>
        <source>Of the water in the line, by thermometer; cold water flows a little slower, and over 20 °C plastic pipe bears less.</source>
        <translation>पाइपलाइनको पानीको, थर्मामिटरले; चिसो पानी अलि बिस्तारै बग्छ, र २० °C भन्दा माथि प्लास्टिक पाइपले कम थाम्छ।</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from its inlet at the source to this point; measure with a tape held level.</source>
        <translation>स्रोतमा पाइपको मुखदेखि यो बिन्दुसम्म पाइप जाने बाटोको समथर दूरी; फित्ता समथर समातेर नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Height of the pipe at this point over the rim of the tank, by water level tube; a point lower than the rim is negative.</source>
        <translation>यो बिन्दुमा ट्याङ्कीको बिटभन्दा पाइप कति माथि छ, लेभल पाइपले; बिटभन्दा तल भए ऋणात्मक (-) हुन्छ।</translation>
    </message>
    <message>
        <source>Depth of water over the middle of the pipe&apos;s inlet at the source when it is lowest.</source>
        <translation>पानी सबैभन्दा कम हुँदा स्रोतमा पाइपको मुखको बीचभन्दा माथिको पानीको गहिराइ।</translation>
    </message>
    <message>
        <source>What the line shall bring, at most what the source gives. Leave empty if anything will do.</source>
        <translation>पाइपलाइनले ल्याउनुपर्ने बहाव, बढीमा स्रोतले दिएजति। जति आए पनि हुने भए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe from the source.</source>
        <translation>पोलिथिनको ग्रेड, स्रोतको पाइपमा छापिएको हुन्छ।</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe from the source; it is printed along it.</source>
        <translation>स्रोतको पाइपलाई पसलमा भन्ने साइज; पाइपमा छापिएको हुन्छ।</translation>
    </message>
    <message>
        <source>Pressure that the pipe from the source is made for, printed on it as PN.</source>
        <translation>स्रोतको पाइप जति चापका लागि बनेको हो; पाइपमा PN भनेर छापिएको हुन्छ।</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe from the source, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>स्रोतको पाइपको भित्री व्यास, सफा काटेको ठाउँमा नापेको। पाइपको तालिकाबाट लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between source and tank; the pipe&apos;s own wide curves do not count.</source>
        <translation>स्रोत र ट्याङ्कीबीच फिटिङ जोडेका ठाडा घुम्ती (एल्बो); पाइप आफैं फराकिलो मोडिएको गनिँदैन।</translation>
    </message>
    <message>
        <source>Valves between source and tank, reckoned wide open.</source>
        <translation>स्रोत र ट्याङ्कीबीचका भल्भ, पूरै खुला मानेर।</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from where it leaves the tank to this point; measure with a tape held level.</source>
        <translation>पाइप ट्याङ्कीबाट निस्किने ठाउँदेखि यो बिन्दुसम्म पाइप जाने बाटोको समथर दूरी; फित्ता समथर समातेर नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Height of the field pipe at this point over the rim of the tank, by water level tube; most points lie lower and are negative.</source>
        <translation>यो बिन्दुमा बारीको पाइप ट्याङ्कीको बिटभन्दा कति माथि छ, लेभल पाइपले; प्रायः बिन्दु तल हुन्छन् र ऋणात्मक (-) हुन्छन्।</translation>
    </message>
    <message>
        <source>Whether the pipe climbs over the rim and works as a siphon; else it goes through the lining, where tanks leak first.</source>
        <translation>पाइप बिटमाथिबाट गएर साइफनजस्तो चल्छ कि चल्दैन; नत्र अस्तर छेडेर जान्छ, जहाँ ट्याङ्की सबैभन्दा पहिले चुहिन्छ।</translation>
    </message>
    <message>
        <source>Height of the middle of the pipe over the rim where it is highest; the lower, the better it runs.</source>
        <translation>पाइप सबैभन्दा अग्लो भएको ठाउँमा त्यसको बीच बिटभन्दा कति माथि छ; जति तल, उति राम्ररी चल्छ।</translation>
    </message>
    <message>
        <source>What stands at the end of the line; each kind needs its own head of water.</source>
        <translation>पाइपलाइनको छेउमा के छ; हरेक किसिमलाई आफ्नै हेड चाहिन्छ।</translation>
    </message>
    <message>
        <source>How many of them run at the same time.</source>
        <translation>एकै पटक कति वटा चल्छन्।</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe to the field.</source>
        <translation>पोलिथिनको ग्रेड, बारीको पाइपमा छापिएको हुन्छ।</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe to the field; it is printed along it.</source>
        <translation>बारीको पाइपलाई पसलमा भन्ने साइज; पाइपमा छापिएको हुन्छ।</translation>
    </message>
    <message>
        <source>Pressure that the pipe to the field is made for, printed on it as PN.</source>
        <translation>बारीको पाइप जति चापका लागि बनेको हो; पाइपमा PN भनेर छापिएको हुन्छ।</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe to the field, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>बारीको पाइपको भित्री व्यास, सफा काटेको ठाउँमा नापेको। पाइपको तालिकाबाट लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between tank and field, those at the rim counted; the pipe&apos;s own wide curves do not count.</source>
        <translation>ट्याङ्की र बारीबीच फिटिङ जोडेका ठाडा घुम्ती (एल्बो), बिटका पनि गनेर; पाइप आफैं फराकिलो मोडिएको गनिँदैन।</translation>
    </message>
    <message>
        <source>Valves between tank and field, reckoned wide open.</source>
        <translation>ट्याङ्की र बारीबीचका भल्भ, पूरै खुला मानेर।</translation>
    </message>
    <message>
        <source>Where spare water leaves: a notch in the rim, or a pipe below it.</source>
        <translation>बढी पानी कहाँबाट जान्छ: बिटको खाँचाबाट, वा बिटमुनिको पाइपबाट।</translation>
    </message>
    <message>
        <source>Clear width of the notch along the rim; its sill lies at the overflow level.</source>
        <translation>बिटको लम्बाइतिर खाँचाको भित्री चौडाइ; खाँचाको सँघार ओभरफ्लोको सतहमा हुन्छ।</translation>
    </message>
    <message>
        <source>Inside diameter of the overflow pipe; its inside bottom lies at the overflow level.</source>
        <translation>ओभरफ्लो पाइपको भित्री व्यास; पाइपको भित्री तल्लो भाग ओभरफ्लोको सतहमा हुन्छ।</translation>
    </message>
    <message>
        <source>From its inlet in the tank to where it ends over the spill path.</source>
        <translation>ट्याङ्कीमा पानी पस्ने मुखदेखि ओभरफ्लोको कुलोमाथि टुङ्गिने ठाउँसम्म।</translation>
    </message>
    <message>
        <source>How much lower the end of the overflow pipe lies than its inlet.</source>
        <translation>ओभरफ्लो पाइपको छेउ पानी पस्ने मुखभन्दा कति तल छ।</translation>
    </message>
    <message>
        <source>Heaviest rain that falls here in some minutes, counted for an hour; ask the weather station. Leave empty if not known.</source>
        <translation>यहाँ केही मिनेटमा पर्ने सबैभन्दा ठूलो वर्षा, घण्टाको हिसाबमा; मौसम केन्द्रमा सोध्नुहोस्। थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Length of rim laid a little lower, so that water leaves there and nowhere else when the overflow is blocked; 0 for none.</source>
        <translation>ओभरफ्लो टालिँदा पानी त्यहीँबाट मात्र जाओस् भनेर अलि होचो बनाइएको बिटको लम्बाइ; नभए ०।</translation>
    </message>
    <message>
        <source>How much lower this part of the rim is laid; check it with water in a clear tube.</source>
        <translation>बिटको यो भाग कति होचो छ; सफा पाइपमा पानी राखेर जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>Width of the bed of the channel that leads spare water away from the tank.</source>
        <translation>बढी पानी ट्याङ्कीबाट टाढा लैजाने कुलोको पिँधको चौडाइ।</translation>
    </message>
    <message>
        <source>Depth of this channel from its edge down to its bed.</source>
        <translation>यो कुलोको डिलदेखि पिँधसम्मको गहिराइ।</translation>
    </message>
    <message>
        <source>How far each side of the channel leans outward for each unit of height; 0 is upright.</source>
        <translation>कुलोका दुवै छेउ हरेक एक एकाइ उचाइमा बाहिरतिर कति ढल्किएका छन्; ० भनेको ठाडो।</translation>
    </message>
    <message>
        <source>Drop of the bed over 100 of length where it is steepest; measure it with a water level tube.</source>
        <translation>कुलोको सबैभन्दा भिरालो ठाउँमा १०० लम्बाइमा पिँध कति झर्छ; लेभल पाइपले नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>What the water of the spill path runs over.</source>
        <translation>ओभरफ्लोको कुलोको पानी केमाथि बग्छ।</translation>
    </message>
    <message>
        <source>The trap is made long enough for this grain to sink; 0.1 mm is fine sand that can just be felt between the fingers.</source>
        <translation>यो दाना थिग्रिने गरी कुण्ड लामो बनाइन्छ; ०.१ mm भनेको औंलाबीच मुस्किलले थाहा हुने मसिनो बालुवा हो।</translation>
    </message>
    <message>
        <source>Most water that passes the trap at a time. Leave empty to take what source line and storm bring.</source>
        <translation>कुण्डबाट एकै बेला जाने सबैभन्दा धेरै पानी। स्रोतको पाइपलाइन र मुसलधारे वर्षाले ल्याएजति लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Dry weight of what settles overnight from muddy water as it comes in; let a full bucket stand, dry the mud and weigh it.</source>
        <translation>पस्दै गरेको धमिलो पानीबाट रातभरि थिग्रिएको कुराको सुकेको तौल; एक बाल्टी भरेर राख्नुहोस्, हिलो सुकाएर जोख्नुहोस्।</translation>
    </message>
    <message>
        <source>Time in the wet season after which someone empties the trap.</source>
        <translation>वर्षायाममा कति समयमा कसैले कुण्ड सफा गर्छ।</translation>
    </message>
    <message>
        <source>Inside length, along the water, of a trap that stands or is planned by eye. Leave empty if there is none.</source>
        <translation>बनिसकेको वा अन्दाजले राखिएको कुण्डको भित्री लम्बाइ, पानी बग्ने दिशामा। नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Inside width, across the water, of that trap. Leave empty if there is none.</source>
        <translation>त्यो कुण्डको भित्री चौडाइ, पानीलाई काट्ने दिशामा। नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Water over the mud in that trap just before it is cleaned. Leave empty if there is none.</source>
        <translation>सफा गर्नुभन्दा ठीक अघि त्यो कुण्डमा हिलोमाथिको पानी। नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Water over the finished floor while the test runs. Leave empty if the tank is full.</source>
        <translation>जाँच चल्दा तयारी भुइँमाथिको पानी। ट्याङ्की भरिएको भए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>How far the water in the tank sank between the two readings, on a scale fixed to the wall; nothing may flow in or out.</source>
        <translation>दुई नापबीच ट्याङ्कीको पानी कति घट्यो, भित्तामा टाँसेको नाप्ने पट्टीमा; केही पस्नु वा निस्कनु हुँदैन।</translation>
    </message>
    <message>
        <source>From the first reading to the second; a day or longer, without rain.</source>
        <translation>पहिलो नापदेखि दोस्रोसम्म; एक दिन वा बढी, पानी नपरी।</translation>
    </message>
    <message>
        <source>How far one reading of the scale may be wrong; read it twice and see.</source>
        <translation>नाप्ने पट्टीको एक नाप कति गलत हुन सक्छ; दुई पटक पढेर हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>पानीको तापक्रम</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>पाइपलाइनको दूरी</translation>
    </message>
    <message>
        <source>Height over the rim</source>
        <translation>बिटभन्दा माथि</translation>
    </message>
    <message>
        <source>Water over the inlet</source>
        <translation>मुखमाथिको पानी</translation>
    </message>
    <message>
        <source>Flow wanted from the source</source>
        <translation>स्रोतबाट चाहिने बहाव</translation>
    </message>
    <message>
        <source>Source pipe: grade</source>
        <translation>स्रोतको पाइप: ग्रेड</translation>
    </message>
    <message>
        <source>Source pipe: outside diameter</source>
        <translation>स्रोतको पाइप: बाहिरी व्यास</translation>
    </message>
    <message>
        <source>Source pipe: pressure class</source>
        <translation>स्रोतको पाइप: चाप श्रेणी</translation>
    </message>
    <message>
        <source>Source pipe: bore, measured</source>
        <translation>स्रोतको पाइप: नापेको भित्री व्यास</translation>
    </message>
    <message>
        <source>Source pipe: elbows</source>
        <translation>स्रोतको पाइप: एल्बो</translation>
    </message>
    <message>
        <source>Source pipe: valves</source>
        <translation>स्रोतको पाइप: भल्भ</translation>
    </message>
    <message>
        <source>Siphon over the rim</source>
        <translation>बिटमाथिबाट साइफन</translation>
    </message>
    <message>
        <source>Top of the siphon over the rim</source>
        <translation>बिटभन्दा माथि साइफनको टुप्पो</translation>
    </message>
    <message>
        <source>Water let out through</source>
        <translation>पानी निस्किने</translation>
    </message>
    <message>
        <source>Open at a time</source>
        <translation>एकै पटक खुल्ने</translation>
    </message>
    <message>
        <source>Field pipe: grade</source>
        <translation>बारीको पाइप: ग्रेड</translation>
    </message>
    <message>
        <source>Field pipe: outside diameter</source>
        <translation>बारीको पाइप: बाहिरी व्यास</translation>
    </message>
    <message>
        <source>Field pipe: pressure class</source>
        <translation>बारीको पाइप: चाप श्रेणी</translation>
    </message>
    <message>
        <source>Field pipe: bore, measured</source>
        <translation>बारीको पाइप: नापेको भित्री व्यास</translation>
    </message>
    <message>
        <source>Field pipe: elbows</source>
        <translation>बारीको पाइप: एल्बो</translation>
    </message>
    <message>
        <source>Field pipe: valves</source>
        <translation>बारीको पाइप: भल्भ</translation>
    </message>
    <message>
        <source>Overflow through</source>
        <translation>ओभरफ्लो जाने</translation>
    </message>
    <message>
        <source>Width of the notch</source>
        <translation>खाँचाको चौडाइ</translation>
    </message>
    <message>
        <source>Overflow pipe: inside diameter</source>
        <translation>ओभरफ्लो पाइप: भित्री व्यास</translation>
    </message>
    <message>
        <source>Overflow pipe: length</source>
        <translation>ओभरफ्लो पाइप: लम्बाइ</translation>
    </message>
    <message>
        <source>Overflow pipe: fall</source>
        <translation>ओभरफ्लो पाइप: ढाल</translation>
    </message>
    <message>
        <source>Heaviest short rain</source>
        <translation>सबैभन्दा ठूलो छोटो वर्षा</translation>
    </message>
    <message>
        <source>Low part of the rim: length</source>
        <translation>होचो बिट: लम्बाइ</translation>
    </message>
    <message>
        <source>Low part of the rim: lower by</source>
        <translation>होचो बिट: कति होचो</translation>
    </message>
    <message>
        <source>Spill path: bottom width</source>
        <translation>ओभरफ्लोको कुलो: पिँधको चौडाइ</translation>
    </message>
    <message>
        <source>Spill path: depth</source>
        <translation>ओभरफ्लोको कुलो: गहिराइ</translation>
    </message>
    <message>
        <source>Spill path: side slope</source>
        <translation>ओभरफ्लोको कुलो: छेउको ढल्काइ</translation>
    </message>
    <message>
        <source>Spill path: fall</source>
        <translation>ओभरफ्लोको कुलो: ढाल</translation>
    </message>
    <message>
        <source>Spill path: bed</source>
        <translation>ओभरफ्लोको कुलो: पिँध</translation>
    </message>
    <message>
        <source>Smallest grain to keep back</source>
        <translation>रोक्ने सबैभन्दा सानो दाना</translation>
    </message>
    <message>
        <source>Flow through the silt trap</source>
        <translation>थेग्रो कुण्डको बहाव</translation>
    </message>
    <message>
        <source>Silt in the water</source>
        <translation>पानीमा थेग्रो</translation>
    </message>
    <message>
        <source>Silt trap cleaned every</source>
        <translation>थेग्रो कुण्ड सफा गर्ने समय</translation>
    </message>
    <message>
        <source>Silt trap as it is: length</source>
        <translation>अहिलेको थेग्रो कुण्ड: लम्बाइ</translation>
    </message>
    <message>
        <source>Silt trap as it is: width</source>
        <translation>अहिलेको थेग्रो कुण्ड: चौडाइ</translation>
    </message>
    <message>
        <source>Silt trap as it is: water depth</source>
        <translation>अहिलेको थेग्रो कुण्ड: पानीको गहिराइ</translation>
    </message>
    <message>
        <source>Water in the tank during the test</source>
        <translation>जाँच्दा ट्याङ्कीमा पानी</translation>
    </message>
    <message>
        <source>Drop in the tank</source>
        <translation>ट्याङ्कीमा घटेको</translation>
    </message>
    <message>
        <source>Drop in the bucket</source>
        <translation>बाल्टीमा घटेको</translation>
    </message>
    <message>
        <source>Time between the readings</source>
        <translation>दुई नापबीचको समय</translation>
    </message>
    <message>
        <source>Error of one reading</source>
        <translation>एक नापको गल्ती</translation>
    </message>
    <message>
        <source>north</source>
        <translation>उत्तर</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>उत्तर-पूर्व</translation>
    </message>
    <message>
        <source>east</source>
        <translation>पूर्व</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>दक्षिण-पूर्व</translation>
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
        <translation>जमिन समथर छ।</translation>
    </message>
    <message>
        <source>The ground falls %1 towards the %2.</source>
        <translation>जमिनको ढाल %2तिर %1 छ।</translation>
    </message>
    <message>
        <source>The platform lies %1; the rim is level with it.</source>
        <translation>सम्याएको ठाउँ %1 छ; बिट त्यही उचाइमा छ।</translation>
    </message>
    <message>
        <source>To make it, %1 are cut and %2 filled in, rammed in layers.</source>
        <translation>यो बनाउन %1 कटान हुन्छ र %2 तह-तह खाँदेर पुरिन्छ।</translation>
    </message>
    <message>
        <source>First strip %1 of topsoil and keep it apart: it belongs on the beds.</source>
        <translation>पहिले %1 मलिलो माटो झिकेर बेग्लै राख्नुहोस्: त्यो ड्याङमा हाल्ने माटो हो।</translation>
    </message>
    <message>
        <source>The whole tank just stands in natural ground: the platform may be no higher.</source>
        <translation>पूरा ट्याङ्की ठ्याक्क सक्कली जमिनमा अटेको छ: सम्याएको ठाउँ योभन्दा अग्लो हुनु हुँदैन।</translation>
    </message>
    <message>
        <source>The whole tank stands in natural ground; where it is least, %1 of it lie over the pit.</source>
        <translation>पूरा ट्याङ्की सक्कली जमिनमा छ; सबैभन्दा कम भएको ठाउँमा खाडलभन्दा %1 माथिसम्म सक्कली जमिन छ।</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: natural ground ends %1 short of the pit.</source>
        <translation>ट्याङ्कीको केही भाग पुराइमाथि पर्छ: सक्कली जमिन खाडलभन्दा %1 तलै सकिन्छ।</translation>
    </message>
    <message>
        <source>It would not with the platform %1, or lower.</source>
        <translation>सम्याएको ठाउँ %1, वा अझ तल भए त्यस्तो हुँदैन।</translation>
    </message>
    <message>
        <source>The fill takes all that is dug; no spoil is left over.</source>
        <translation>खनेको सबै माटो पुराइमा सकिन्छ; खनेको माटो उब्रिँदैन।</translation>
    </message>
    <message>
        <source>As it lies, %1 of ground are left over; how large the heap gets depends on the soil, which is not known.</source>
        <translation>नखनेको नापमा %1 माटो उब्रिन्छ; थुप्रो कति ठूलो हुन्छ माटोमा भर पर्छ, र माटो थाहा छैन।</translation>
    </message>
    <message>
        <source>Left over are %1 of loose ground: a heap %2 high and %3 across.</source>
        <translation>उब्रिने खुकुलो माटो %1: %2 अग्लो र %3 चौडा थुप्रो।</translation>
    </message>
    <message>
        <source>Heap it to the %1 of the tank, its toe %2 back from the pit edge; never nearer than %3.</source>
        <translation>ट्याङ्कीको %1तिर थुपार्नुहोस्, थुप्रोको फेद खाडलको डिलबाट %2 पर; %3 भन्दा नजिक कहिल्यै नथुपार्नुहोस्।</translation>
    </message>
    <message>
        <source>Later spread it thin on beds below, or raise the lips of terraces well away with it.</source>
        <translation>पछि तलका ड्याङमा पातलो गरी फिँजाउनुहोस्, वा धेरै परका गराको डिल उठाउन चलाउनुहोस्।</translation>
    </message>
    <message>
        <source>Never heap it uphill of the pit, where rain washes it in, nor on the downhill edge, which its weight can bring down.</source>
        <translation>खाडलको उकालोतिर कहिल्यै नथुपार्नुहोस्, वर्षाले खाडलमै बगाउँछ; ओरालोतिरको डिलमा पनि कहिल्यै नथुपार्नुहोस्, थुप्रोको भारले डिल खस्न सक्छ।</translation>
    </message>
    <message>
        <source>Never heap it beside the pit edge or on the edge of a terrace, which its weight can bring down.</source>
        <translation>खाडलको डिल छेउमा वा कान्लाको डिलमा कहिल्यै नथुपार्नुहोस्, थुप्रोको भारले डिल खस्न सक्छ।</translation>
    </message>
    <message>
        <source>Middle of the tank, east</source>
        <translation>ट्याङ्कीको बीच, पूर्व</translation>
    </message>
    <message>
        <source>Middle of the tank, north</source>
        <translation>ट्याङ्कीको बीच, उत्तर</translation>
    </message>
    <message>
        <source>Tank turned by</source>
        <translation>ट्याङ्की घुमाएको</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>सम्याएको ठाउँको उचाइ</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle</source>
        <translation>बीचको जमिनभन्दा सम्याएको ठाउँ माथि</translation>
    </message>
    <message>
        <source>Walkway round the rim</source>
        <translation>बिट वरिपरि हिँड्ने पेटी</translation>
    </message>
    <message>
        <source>Batter of the cut face</source>
        <translation>कटान सतहको ढल्काइ</translation>
    </message>
    <message>
        <source>Batter of the fill face</source>
        <translation>पुराइ सतहको ढल्काइ</translation>
    </message>
    <message>
        <source>Topsoil stripped</source>
        <translation>झिकेको मलिलो माटो</translation>
    </message>
    <message>
        <source>Compacted fill per ground dug</source>
        <translation>खनेको माटोमा खाँदेको पुराइ</translation>
    </message>
    <message>
        <source>Direction of the spoil heap</source>
        <translation>माटोको थुप्रोको दिशा</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies east of the zero of the spot heights; west of it is negative.</source>
        <translation>उचाइका बिन्दुको शून्यबाट ट्याङ्कीको बीच पूर्वतिर कति छ; पश्चिम भए ऋणात्मक (-)।</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies north of the zero of the spot heights; south of it is negative.</source>
        <translation>उचाइका बिन्दुको शून्यबाट ट्याङ्कीको बीच उत्तरतिर कति छ; दक्षिण भए ऋणात्मक (-)।</translation>
    </message>
    <message>
        <source>How high the level place round the tank lies: so low that the whole tank stands in natural ground, so that cut and fill balance, or as you give it.</source>
        <translation>ट्याङ्की वरिपरिको समथर ठाउँ कति उचाइमा हुन्छ: पूरा ट्याङ्की सक्कली जमिनमा पर्ने गरी होचो, कटान र पुराइ बराबर हुने गरी, वा तपाईंले दिएको।</translation>
    </message>
    <message>
        <source>Height of the platform, which the rim is level with, over the natural ground at the middle of the tank; below that ground it is negative.</source>
        <translation>सम्याएको ठाउँ (बिट त्यही उचाइमा हुन्छ) ट्याङ्कीको बीचको सक्कली जमिनभन्दा कति माथि छ; जमिनभन्दा तल भए ऋणात्मक (-)।</translation>
    </message>
    <message>
        <source>Level ground left all round outside the rim collar, to walk and carry on.</source>
        <translation>बिटको घेराबाहिर हिँड्न र बोक्न वरिपरि छोडिने समथर जमिन।</translation>
    </message>
    <message>
        <source>How far the face cut into the hill leans back for each unit of height; look at old cuts in the same soil that still stand.</source>
        <translation>पाखामा काटिएको सतह हरेक एक एकाइ उचाइमा पछाडितिर कति ढल्किएको छ; उस्तै माटोका अझै अडिएका पुराना कटान हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Depth of the dark soil with roots in the trial pit, which is taken off first and kept for beds.</source>
        <translation>जाँच खाडलमा जरा भएको कालो माटोको गहिराइ; यो पहिले झिकेर ड्याङका लागि राखिन्छ।</translation>
    </message>
    <message>
        <source>Volume that ground fills once it is placed in layers and rammed, for each unit dug: 0.90 when it packs closer than it lay.</source>
        <translation>खनेको हरेक एक एकाइ माटो तह-तह खाँद्दा ओगट्ने आयतन: पहिलेभन्दा खाँदिएर बस्ने भए ०.९०।</translation>
    </message>
    <message>
        <source>Compass direction from the tank to the heap: north 0, east 90, south 180. Leave empty to have it put across the fall.</source>
        <translation>ट्याङ्कीबाट थुप्रोतिरको कम्पास दिशा: उत्तर ०, पूर्व ९०, दक्षिण १८०। ढाललाई काट्ने दिशामा राख्न खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: a surface needs three at different places. Survey more, all round the tank.</source>
        <translation>उचाइका बिन्दुबाट जमिन बनाउन सकिएन: फरक ठाउँका तीन बिन्दु चाहिन्छन्। ट्याङ्की वरिपरि सबैतिर थप नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they all lie on one line. Survey some to the side of it.</source>
        <translation>उचाइका बिन्दुबाट जमिन बनाउन सकिएन: सबै एउटै रेखामा छन्। त्यसको छेउतिर पनि केही नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they could not be joined to triangles. Look for points that stand nearly at the same place, and take them out.</source>
        <translation>उचाइका बिन्दुबाट जमिन बनाउन सकिएन: त्रिकोणमा जोड्न सकिएन। लगभग एउटै ठाउँका बिन्दु खोजेर हटाउनुहोस्।</translation>
    </message>
    <message>
        <source>The platform does not lie wholly inside the survey. Move the tank, or survey more ground around it.</source>
        <translation>सम्याएको ठाउँ पूरै नापीभित्र पर्दैन। ट्याङ्की सार्नुहोस्, वा वरिपरिको थप जमिन नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>The ground is as steep as a face of cut or fill, which so never meets it. Choose flatter ground, or a steeper batter if the soil bears it.</source>
        <translation>जमिन कटान वा पुराइको सतहजत्तिकै भिरालो छ, त्यसैले ती कहिल्यै जोडिँदैनन्। कम भिरालो जमिन छान्नुहोस्, वा माटोले थाम्छ भने बढी ठाडो सतह राख्नुहोस्।</translation>
    </message>
    <message>
        <source>At no level do cut and fill balance here. Give the level of the platform, or have the tank stand in natural ground.</source>
        <translation>यहाँ कुनै पनि उचाइमा कटान र पुराइ बराबर हुँदैनन्। सम्याएको ठाउँको उचाइ दिनुहोस्, वा ट्याङ्की सक्कली जमिनमा राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Spot heights that look doubtful: %1, the first in row %2. Each stands far above, below or away from the others, or repeats one. Look at the place and mend or delete the row.</source>
        <translation>शङ्का लाग्ने उचाइका बिन्दु: %1, पहिलो पङ्क्ति %2मा। यी अरूभन्दा धेरै माथि, तल वा टाढा छन्, वा दोहोरिएका छन्। ठाउँमै गएर हेर्नुहोस् र पङ्क्ति सच्याउनुहोस् वा हटाउनुहोस्।</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: where it is worst, natural ground ends %1 short of floor or wall. Fill settles and cracks the lining. The platform lies %2; lay it %3, or lower.</source>
        <translation>ट्याङ्कीको केही भाग पुराइमाथि पर्छ: सबैभन्दा खराब ठाउँमा सक्कली जमिन भुइँ वा भित्ताभन्दा %1 तलै सकिन्छ। पुराइ थिचिएर बस्छ र अस्तर चर्काउँछ। सम्याएको ठाउँ %2 छ; यसलाई %3, वा अझ तल राख्नुहोस्।</translation>
    </message>
    <message>
        <source>as high as the natural ground at the middle of the tank</source>
        <translation>ट्याङ्कीको बीचको सक्कली जमिनकै उचाइमा</translation>
    </message>
    <message>
        <source>%1 over the natural ground at the middle of the tank</source>
        <translation>ट्याङ्कीको बीचको सक्कली जमिनभन्दा %1 माथि</translation>
    </message>
    <message>
        <source>%1 below the natural ground at the middle of the tank</source>
        <translation>ट्याङ्कीको बीचको सक्कली जमिनभन्दा %1 तल</translation>
    </message>
    <message>
        <source>roughness, plastic pipe</source>
        <translation>खस्रोपन, प्लास्टिक पाइप</translation>
    </message>
    <message>
        <source>roughness, steel pipe</source>
        <translation>खस्रोपन, स्टिल पाइप</translation>
    </message>
    <message>
        <source>roughness, galvanised pipe</source>
        <translation>खस्रोपन, जीआई पाइप</translation>
    </message>
    <message>
        <source>roughness, cast iron pipe</source>
        <translation>खस्रोपन, कास्ट आइरन पाइप</translation>
    </message>
    <message>
        <source>roughness, concrete pipe</source>
        <translation>खस्रोपन, कङ्क्रिट पाइप</translation>
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
        <translation>हेड घाटा, धारिलो मुख</translation>
    </message>
    <message>
        <source>loss, entrance that juts out</source>
        <translation>हेड घाटा, भित्र निस्केको मुख</translation>
    </message>
    <message>
        <source>loss, rounded entrance</source>
        <translation>हेड घाटा, गोलो पारेको मुख</translation>
    </message>
    <message>
        <source>loss, foot valve</source>
        <translation>हेड घाटा, फुट भल्भ</translation>
    </message>
    <message>
        <source>loss, 90° elbow</source>
        <translation>हेड घाटा, ९०° एल्बो</translation>
    </message>
    <message>
        <source>loss, wide 90° elbow</source>
        <translation>हेड घाटा, फराकिलो ९०° एल्बो</translation>
    </message>
    <message>
        <source>loss, 45° elbow</source>
        <translation>हेड घाटा, ४५° एल्बो</translation>
    </message>
    <message>
        <source>loss, tee, straight on</source>
        <translation>हेड घाटा, टी, सोझै</translation>
    </message>
    <message>
        <source>loss, tee, into the branch</source>
        <translation>हेड घाटा, टी, हाँगातिर</translation>
    </message>
    <message>
        <source>loss, gate valve, open</source>
        <translation>हेड घाटा, गेट भल्भ, खुला</translation>
    </message>
    <message>
        <source>loss, gate valve, half closed</source>
        <translation>हेड घाटा, गेट भल्भ, आधा बन्द</translation>
    </message>
    <message>
        <source>loss, globe valve, open</source>
        <translation>हेड घाटा, ग्लोब भल्भ, खुला</translation>
    </message>
    <message>
        <source>loss, ball valve, open</source>
        <translation>हेड घाटा, बल भल्भ, खुला</translation>
    </message>
    <message>
        <source>loss, check valve</source>
        <translation>हेड घाटा, चेक भल्भ</translation>
    </message>
    <message>
        <source>loss, water meter</source>
        <translation>हेड घाटा, पानी मिटर</translation>
    </message>
    <message>
        <source>loss, screen</source>
        <translation>हेड घाटा, जाली</translation>
    </message>
    <message>
        <source>head kept over vapour in a pipe</source>
        <translation>पाइपमा बाफको चापमाथि राखिने हेड</translation>
    </message>
    <message>
        <source>head kept over vapour at the top of a siphon</source>
        <translation>साइफनको टुप्पोमा बाफको चापमाथि राखिने हेड</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plastic pipe</source>
        <translation>Manning को n, प्लास्टिक पाइप</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plaster</source>
        <translation>Manning को n, प्लास्टर</translation>
    </message>
    <message>
        <source>Manning&apos;s n, bare earth</source>
        <translation>Manning को n, नाङ्गो माटो</translation>
    </message>
    <message>
        <source>Manning&apos;s n, short grass</source>
        <translation>Manning को n, छोटो घाँस</translation>
    </message>
    <message>
        <source>Manning&apos;s n, stone pitching</source>
        <translation>Manning को n, ढुङ्गा छपाइ</translation>
    </message>
    <message>
        <source>broad sill, flow in theory</source>
        <translation>चौडा सँघार, सिद्धान्तअनुसारको बहाव</translation>
    </message>
    <message>
        <source>broad sill, share of the flow in theory</source>
        <translation>चौडा सँघार, सिद्धान्तको बहावको भाग</translation>
    </message>
    <message>
        <source>opening with a sharp edge</source>
        <translation>धारिलो किनारको मुख</translation>
    </message>
    <message>
        <source>storm runoff, roof</source>
        <translation>मुसलधारे वर्षामा बग्ने, छाना</translation>
    </message>
    <message>
        <source>storm runoff, woodland</source>
        <translation>मुसलधारे वर्षामा बग्ने, जङ्गल</translation>
    </message>
    <message>
        <source>storm runoff, pasture</source>
        <translation>मुसलधारे वर्षामा बग्ने, चरन</translation>
    </message>
    <message>
        <source>storm runoff, tilled ground</source>
        <translation>मुसलधारे वर्षामा बग्ने, जोतेको जमिन</translation>
    </message>
    <message>
        <source>storm runoff, bare packed ground</source>
        <translation>मुसलधारे वर्षामा बग्ने, नाङ्गो खाँदिएको जमिन</translation>
    </message>
    <message>
        <source>storm runoff, the tank itself</source>
        <translation>मुसलधारे वर्षामा बग्ने, ट्याङ्की आफैं</translation>
    </message>
    <message>
        <source>silt trap, area over the least in theory</source>
        <translation>थेग्रो कुण्ड, सिद्धान्तको न्यूनतमभन्दा बढी क्षेत्रफल</translation>
    </message>
    <message>
        <source>silt trap, speed factor</source>
        <translation>थेग्रो कुण्ड, वेग गुणक</translation>
    </message>
    <message>
        <source>silt, weight of the sinking grain</source>
        <translation>थेग्रो, थिग्रिने दानाको तौल</translation>
    </message>
    <message>
        <source>silt, weight of settled grains</source>
        <translation>थेग्रो, थिग्रिएका दानाको तौल</translation>
    </message>
    <message>
        <source>silt, share of grain in the mud</source>
        <translation>थेग्रो, हिलोमा दानाको भाग</translation>
    </message>
    <message>
        <source>silt trap, length over width</source>
        <translation>थेग्रो कुण्ड, लम्बाइ भाग चौडाइ</translation>
    </message>
    <message>
        <source>leak up to which a tank is tight</source>
        <translation>ट्याङ्की नचुहिने मानिने चुहावटको सीमा</translation>
    </message>
    <message>
        <source>leak up to which a tank is watched</source>
        <translation>ट्याङ्की हेरिराख्ने चुहावटको सीमा</translation>
    </message>
    <message>
        <source>leak up to which a tank is mended in use</source>
        <translation>ट्याङ्की चलाउँदै मर्मत गर्ने चुहावटको सीमा</translation>
    </message>
    <message>
        <source>leak of concrete tanks, drop allowed</source>
        <translation>कङ्क्रिट ट्याङ्कीको चुहावट, घट्न दिने</translation>
    </message>
    <message>
        <source>leak of concrete tanks, within</source>
        <translation>कङ्क्रिट ट्याङ्कीको चुहावट, यति समयमा</translation>
    </message>
    <message>
        <source>leak of concrete tanks, share of the volume a day</source>
        <translation>कङ्क्रिट ट्याङ्कीको चुहावट, दिनमा आयतनको भाग</translation>
    </message>
    <message>
        <source>head wanted, %1</source>
        <translation>चाहिने हेड, %1</translation>
    </message>
    <message>
        <source>usual flow, %1</source>
        <translation>साधारण बहाव, %1</translation>
    </message>
    <message>
        <source>speed that scours, %1</source>
        <translation>कुलो काट्ने वेग, %1</translation>
    </message>
    <message>
        <source>its way needs two points at least</source>
        <translation>पाइप जाने बाटोमा कम्तीमा दुई बिन्दु चाहिन्छ</translation>
    </message>
    <message>
        <source>the points of its way do not follow one another</source>
        <translation>पाइप जाने बाटोका बिन्दु क्रमअनुसार छैनन्</translation>
    </message>
    <message>
        <source>a fitting lies outside its way</source>
        <translation>कुनै फिटिङ पाइप जाने बाटोबाहिर छ</translation>
    </message>
    <message>
        <source>its inlet does not lie under water; lay it lower</source>
        <translation>पानी पस्ने मुख पानीमुनि छैन; तल राख्नुहोस्</translation>
    </message>
    <message>
        <source>there is no fall from the water at its inlet to its outlet; lay the outlet lower</source>
        <translation>पानी पस्ने मुखको पानीदेखि निकाससम्म ढाल छैन; निकास तल राख्नुहोस्</translation>
    </message>
    <message>
        <source>no pipe of the table bears the pressure; break it on the way</source>
        <translation>तालिकाको कुनै पाइपले चाप थाम्दैन; बाटोमा चाप तोड्नुहोस्</translation>
    </message>
    <message>
        <source>no pipe of the table is wide enough; find more fall</source>
        <translation>तालिकाको कुनै पाइप पुग्ने गरी ठूलो छैन; बढी ढाल खोज्नुहोस्</translation>
    </message>
    <message>
        <source>its top lies below its outlet, so it is no siphon</source>
        <translation>टुप्पो निकासभन्दा तल छ, त्यसैले यो साइफन होइन</translation>
    </message>
    <message>
        <source>the outflow stops before the water is that low</source>
        <translation>पानी त्यति तल झर्नुअघि नै निस्कन रोकिन्छ</translation>
    </message>
    <message>
        <source>the outflow dies away, so that the end is never reached</source>
        <translation>निस्कने पानी मर्दै जान्छ, त्यसैले अन्त्यमा कहिल्यै पुगिँदैन</translation>
    </message>
    <message>
        <source>the overflow pipe has no fall</source>
        <translation>ओभरफ्लो पाइपको ढाल छैन</translation>
    </message>
    <message>
        <source>there is no rim to run over</source>
        <translation>पानी पोखिने बिट छैन</translation>
    </message>
    <message>
        <source>the grain is too large for the law by which it sinks</source>
        <translation>दाना थिग्रिने नियमका लागि धेरै ठूलो छ</translation>
    </message>
    <message>
        <source>water rose in the bucket: it rained; test again in dry weather</source>
        <translation>बाल्टीमा पानी बढ्यो: पानी परेछ; सुक्खा मौसममा फेरि जाँच्नुहोस्</translation>
    </message>
    <message>
        <source>a figure is not in the table</source>
        <translation>कुनै अङ्क तालिकामा छैन</translation>
    </message>
    <message>
        <source>the temperature of the water is out of range</source>
        <translation>पानीको तापक्रम मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the height above sea level is out of range</source>
        <translation>समुद्र सतहदेखिको उचाइ मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the water flows too slowly or too fast to be reckoned</source>
        <translation>पानी हिसाब गर्न नमिल्ने गरी बिस्तारै वा छिटो बग्छ</translation>
    </message>
    <message>
        <source>the roughness of the pipe is out of range</source>
        <translation>पाइपको खस्रोपन मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the inside diameter of the pipe is out of range</source>
        <translation>पाइपको भित्री व्यास मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>a length is out of range</source>
        <translation>कुनै लम्बाइ मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the flow is out of range</source>
        <translation>बहाव मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the head is out of range</source>
        <translation>हेड मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>a coefficient is out of range</source>
        <translation>कुनै गुणाङ्क मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the loss of a fitting is out of range</source>
        <translation>फिटिङको हेड घाटा मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>a slope is out of range</source>
        <translation>कुनै ढाल मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>a width is out of range</source>
        <translation>कुनै चौडाइ मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>a depth is out of range</source>
        <translation>कुनै गहिराइ मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>an area is out of range</source>
        <translation>कुनै क्षेत्रफल मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the size of the grain is out of range</source>
        <translation>दानाको साइज मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the weight of the grain is out of range</source>
        <translation>दानाको तौल मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the silt in the water is out of range</source>
        <translation>पानीको थेग्रो मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the time is out of range</source>
        <translation>समय मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>a level is out of range</source>
        <translation>कुनै सतहको उचाइ मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the pressure is out of range</source>
        <translation>चाप मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>a reading is out of range</source>
        <translation>कुनै नाप मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the reserve is out of range</source>
        <translation>जगेडा मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>the rain of the storm is out of range</source>
        <translation>मुसलधारे वर्षा मिल्ने दायराभन्दा बाहिर छ</translation>
    </message>
    <message>
        <source>it works</source>
        <translation>चल्छ</translation>
    </message>
    <message>
        <source>it works, but weakly</source>
        <translation>चल्छ, तर कमजोर</translation>
    </message>
    <message>
        <source>it works only while the tank is rather full</source>
        <translation>ट्याङ्की धेरैजसो भरिएको बेला मात्र चल्छ</translation>
    </message>
    <message>
        <source>it does not work</source>
        <translation>चल्दैन</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 मिनेट</translation>
    </message>
    <message>
        <source>Nothing flows: %1.</source>
        <translation>केही बग्दैन: %1।</translation>
    </message>
    <message>
        <source>The line brings %1 when the tank is nearly empty; when it is full, %2.</source>
        <translation>ट्याङ्की लगभग रित्तिँदा पाइपलाइनले %1 ल्याउँछ; भरिँदा, %2।</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full; when it is nearly empty, %2.</source>
        <translation>ट्याङ्की भरिँदा पाइपलाइनले %1 ल्याउँछ; लगभग रित्तिँदा, %2।</translation>
    </message>
    <message>
        <source>The line brings %1.</source>
        <translation>पाइपलाइनले %1 ल्याउँछ।</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full and %2 when it is nearly empty.</source>
        <translation>पाइपलाइनले ट्याङ्की भरिँदा %1 र लगभग रित्तिँदा %2 ल्याउँछ।</translation>
    </message>
    <message>
        <source>Wide open it will not bring that much: the pipe sucks so hard at its high parts that the column of water parts.</source>
        <translation>पूरै खोल्दा त्यति ल्याउँदैन: अग्ला ठाउँमा पाइपको सोसाइ यति धेरै हुन्छ कि पाइपभित्रको पानी चुँडिन्छ।</translation>
    </message>
    <message>
        <source>Wanted are %1.</source>
        <translation>चाहिएको %1 हो।</translation>
    </message>
    <message>
        <source>Wanted are %1, but %2.</source>
        <translation>चाहिएको %1 हो, तर %2।</translation>
    </message>
    <message>
        <source>The smallest pipe that brings the %1 wanted has %2 outside diameter, class %3.</source>
        <translation>चाहिएको %1 ल्याउने सबैभन्दा सानो पाइपको बाहिरी व्यास %2, श्रेणी %3।</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1.</source>
        <translation>छेउ बन्द हुँदा पाइपको सबैभन्दा तल्लो ठाउँले %1 थाम्नुपर्छ।</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1; it is good for %2.</source>
        <translation>छेउ बन्द हुँदा पाइपको सबैभन्दा तल्लो ठाउँले %1 थाम्नुपर्छ; यो %2सम्म थाम्छ।</translation>
    </message>
    <message>
        <source>High points on the way, where air gathers: %1, the first at %2.</source>
        <translation>बाटोमा हावा जम्ने अग्ला ठाउँ: %1, पहिलो %2मा।</translation>
    </message>
    <message>
        <source>The siphon cannot be started with the tank nearly empty: its top lies %1 over the water, and %2 is the most.</source>
        <translation>ट्याङ्की लगभग रित्तिएको बेला साइफन चलाउन सकिँदैन: टुप्पो पानीभन्दा %1 माथि छ, र बढीमा %2 हुन सक्छ।</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks; let no more than %1 through its valve.</source>
        <translation>पूरै खोल्दा साइफन टुट्छ; भल्भबाट %1 भन्दा बढी जान नदिनुहोस्।</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its end does not lie below the water.</source>
        <translation>ट्याङ्की लगभग रित्तिनुअघि नै साइफन रोकिन्छ: यसको छेउ पानीभन्दा तल छैन।</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its inlet falls dry.</source>
        <translation>ट्याङ्की लगभग रित्तिनुअघि नै साइफन रोकिन्छ: पानी पस्ने मुख सुक्छ।</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks.</source>
        <translation>पूरै खोल्दा साइफन टुट्छ।</translation>
    </message>
    <message>
        <source>The siphon cannot be reckoned: %1.</source>
        <translation>साइफनको हिसाब गर्न सकिएन: %1।</translation>
    </message>
    <message>
        <source>To start the siphon, fill it with %1 of water.</source>
        <translation>साइफन चलाउन %1 पानीले भर्नुहोस्।</translation>
    </message>
    <message>
        <source>What head is left at the outlet cannot be told: %1.</source>
        <translation>निकासमा कति हेड बाँकी रहन्छ भन्न सकिँदैन: %1।</translation>
    </message>
    <message>
        <source>Outlet, %1: a head of %2 is left with the tank full and %3 when it is nearly empty, %4 is wanted; %5.</source>
        <translation>निकास, %1: ट्याङ्की भरिँदा %2 र लगभग रित्तिँदा %3 हेड बाँकी रहन्छ, %4 चाहिन्छ; %5।</translation>
    </message>
    <message>
        <source>How long it takes to draw the tank down to %1 over the floor cannot be told: %2.</source>
        <translation>ट्याङ्कीको पानी भुइँमाथि %1सम्म झिक्न कति समय लाग्छ भन्न सकिँदैन: %2।</translation>
    </message>
    <message>
        <source>Wide open, it draws the full tank down to %1 over the floor in %2.</source>
        <translation>पूरै खोल्दा यसले भरिएको ट्याङ्कीको पानी %2मा भुइँमाथि %1सम्म झार्छ।</translation>
    </message>
    <message>
        <source>No way is entered for the line from the source. Give two points at least: the pipe&apos;s inlet and its end over the tank.</source>
        <translation>स्रोतबाट आउने पाइपलाइनको बाटो राखिएको छैन। कम्तीमा दुई बिन्दु दिनुहोस्: पाइपमा पानी पस्ने मुख र ट्याङ्कीमाथिको छेउ।</translation>
    </message>
    <message>
        <source>No way is entered for the line to the field. Give two points at least: where the pipe leaves the tank and where it ends.</source>
        <translation>बारीमा जाने पाइपलाइनको बाटो राखिएको छैन। कम्तीमा दुई बिन्दु दिनुहोस्: पाइप ट्याङ्कीबाट निस्किने ठाउँ र टुङ्गिने ठाउँ।</translation>
    </message>
    <message>
        <source>Ground cut down</source>
        <translation>काटिएको जमिन</translation>
    </message>
    <message>
        <source>Ground filled up</source>
        <translation>पुरिएको जमिन</translation>
    </message>
    <message>
        <source>Spoil heap</source>
        <translation>माटोको थुप्रो</translation>
    </message>
    <message>
        <source>Arrow down the fall</source>
        <translation>ढाल देखाउने तीर</translation>
    </message>
    <message>
        <source>Marked place</source>
        <translation>चिनो लगाएको ठाउँ</translation>
    </message>
    <message>
        <source>Pattern of the cut</source>
        <translation>कटानको बुट्टा</translation>
    </message>
    <message>
        <source>Pattern of the fill</source>
        <translation>पुराइको बुट्टा</translation>
    </message>
    <message>
        <source>platform corner</source>
        <translation>सम्याएको ठाउँको कुना</translation>
    </message>
    <message>
        <source>top of the cut, where it meets the ground</source>
        <translation>कटानको माथि, जमिनसँग जोडिने ठाउँ</translation>
    </message>
    <message>
        <source>toe of the fill, where it meets the ground</source>
        <translation>पुराइको फेद, जमिनसँग जोडिने ठाउँ</translation>
    </message>
    <message>
        <source>pipes, overflow and silt trap</source>
        <translation>पाइप, ओभरफ्लो र थेग्रो कुण्ड</translation>
    </message>
    <message>
        <source>Taken is a storm of %1, for the heaviest rain here is not known: %2 run in.</source>
        <translation>%1को मुसलधारे वर्षा मानिएको छ, किनभने यहाँको सबैभन्दा ठूलो वर्षा थाहा छैन: %2 पस्छ।</translation>
    </message>
    <message>
        <source>In a storm of %1, %2 run into the tank.</source>
        <translation>%1को मुसलधारे वर्षामा ट्याङ्कीमा %2 पस्छ।</translation>
    </message>
    <message>
        <source>Of these, %1 are rain and %2 come from the source.</source>
        <translation>त्यसमध्ये %1 वर्षाको र %2 स्रोतको हो।</translation>
    </message>
    <message>
        <source>How high the water then stands cannot be told: %1.</source>
        <translation>त्यति बेला पानी कति माथि हुन्छ भन्न सकिँदैन: %1।</translation>
    </message>
    <message>
        <source>The overflow passes %1 at most, so water runs over the rim.</source>
        <translation>ओभरफ्लोबाट बढीमा %1 जान्छ, त्यसैले पानी बिटमाथिबाट पोखिन्छ।</translation>
    </message>
    <message>
        <source>A notch %1 wide would be enough.</source>
        <translation>%1 चौडा खाँचा भए पुग्छ।</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would be enough.</source>
        <translation>भित्री व्यास %1को ओभरफ्लो पाइप भए पुग्छ।</translation>
    </message>
    <message>
        <source>Where the water goes if the overflow is blocked cannot be told: %1.</source>
        <translation>ओभरफ्लो टालिए पानी कता जान्छ भन्न सकिँदैन: %1।</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water runs over the rim anywhere, %1 deep.</source>
        <translation>ओभरफ्लो टालिए पानी बिटको जताबाट पनि पोखिन्छ, %1 गहिरो भएर।</translation>
    </message>
    <message>
        <source>If the overflow is blocked, all of the water leaves over the low part of the rim, %1 deep.</source>
        <translation>ओभरफ्लो टालिए सबै पानी होचो बिटबाट जान्छ, %1 गहिरो भएर।</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water leaves over the low part of the rim, %1 deep, and over the rest of it too: make the low part longer or lower.</source>
        <translation>ओभरफ्लो टालिए पानी होचो बिटबाट जान्छ, %1 गहिरो भएर, र बाँकी बिटबाट पनि पोखिन्छ: होचो बिट लामो वा अझ होचो बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>How the spill path carries the water cannot be told: %1.</source>
        <translation>ओभरफ्लोको कुलोले पानी कसरी लैजान्छ भन्न सकिँदैन: %1।</translation>
    </message>
    <message>
        <source>In the spill path, %1 deep, the water runs %2 deep at %3.</source>
        <translation>%1 गहिरो ओभरफ्लोको कुलोमा पानी %2 गहिरो भएर %3ले बग्छ।</translation>
    </message>
    <message>
        <source>Its bed bears that speed (%1).</source>
        <translation>कुलोको पिँधले यो वेग थाम्छ (%1)।</translation>
    </message>
    <message>
        <source>Its bed may not bear that speed (%1).</source>
        <translation>कुलोको पिँधले यो वेग नथाम्न सक्छ (%1)।</translation>
    </message>
    <message>
        <source>Its bed is washed out at that speed (%1).</source>
        <translation>यो वेगले कुलोको पिँध काटेर बगाउँछ (%1)।</translation>
    </message>
    <message>
        <source>A trap for grains of %1 and a flow of %2 cannot be reckoned: %3.</source>
        <translation>%1का दाना र %2 बहावका लागि कुण्डको हिसाब गर्न सकिएन: %3।</translation>
    </message>
    <message>
        <source>To hold back grains of %1 at a flow of %2, the trap is made %3 long, %4 wide and %5 deep inside.</source>
        <translation>%2 बहावमा %1का दाना रोक्न कुण्ड भित्र %3 लामो, %4 चौडा र %5 गहिरो बनाइन्छ।</translation>
    </message>
    <message>
        <source>Between two cleanings about %1 of mud settle in it, %2 deep.</source>
        <translation>एक पटक सफा गरेदेखि अर्को पटकसम्म करिब %1 हिलो थिग्रिन्छ, %2 गहिरो।</translation>
    </message>
    <message>
        <source>What the trap as it is holds back cannot be told: %1.</source>
        <translation>अहिलेको कुण्डले के रोक्छ भन्न सकिँदैन: %1।</translation>
    </message>
    <message>
        <source>The trap as it is has room for grains of %1 to sink, but water runs so fast through it that it carries them on: make it deeper or wider.</source>
        <translation>अहिलेको कुण्डमा %1का दाना थिग्रिने ठाउँ त छ, तर पानी यति छिटो बग्छ कि तिनलाई बगाएरै लैजान्छ: अझ गहिरो वा चौडा बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains of %1 and larger.</source>
        <translation>अहिलेको कुण्डले %1 र त्योभन्दा ठूला दाना रोक्छ।</translation>
    </message>
    <message>
        <source>The tank loses %1 through its lining, about %2.</source>
        <translation>ट्याङ्कीको अस्तरबाट %1 घट्छ, करिब %2।</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained water: some ran in, or a reading is wrong. Test again.</source>
        <translation>बाल्टीको तुलनामा ट्याङ्कीमा पानी बढ्यो: केही पस्यो, वा कुनै नाप गलत छ। फेरि जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>The difference is no more than the readings&apos; error of %1, so it tells nothing. Let the test run longer.</source>
        <translation>फरक नापको गल्ती %1 भन्दा बढी छैन, त्यसैले केही भन्न सकिँदैन। जाँच अझ लामो समय चल्न दिनुहोस्।</translation>
    </message>
    <message>
        <source>For a tank of plaster that is tight.</source>
        <translation>प्लास्टरको ट्याङ्कीका लागि यो नचुहिने नै हो।</translation>
    </message>
    <message>
        <source>Watch it: test again in some weeks.</source>
        <translation>हेरिराख्नुहोस्: केही हप्तापछि फेरि जाँच्नुहोस्।</translation>
    </message>
    <message>
        <source>Find the cracks and mend them.</source>
        <translation>चिरा खोजेर मर्मत गर्नुहोस्।</translation>
    </message>
    <message>
        <source>Let no more water in, empty it and mend it.</source>
        <translation>थप पानी पस्न नदिनुहोस्, रित्याउनुहोस् र मर्मत गर्नुहोस्।</translation>
    </message>
    <message>
        <source>It keeps to a mark for concrete tanks, %1: %2.</source>
        <translation>यो कङ्क्रिट ट्याङ्कीको मापदण्डभित्र छ, %1: %2।</translation>
    </message>
    <message>
        <source>It does not keep to a mark for concrete tanks, %1: %2.</source>
        <translation>यो कङ्क्रिट ट्याङ्कीको मापदण्डभित्र छैन, %1: %2।</translation>
    </message>
    <message>
        <source>What the tank loses more than the bucket goes through the lining.</source>
        <translation>बाल्टीमा भन्दा ट्याङ्कीमा बढी घटेको पानी अस्तरबाट जान्छ।</translation>
    </message>
    <message>
        <source>The leak test tells nothing: %1.</source>
        <translation>चुहावट जाँचबाट केही भन्न सकिँदैन: %1।</translation>
    </message>
    <message>
        <source>Place of the tank</source>
        <translation>ट्याङ्कीको स्थान</translation>
    </message>
    <message>
        <source>Platform</source>
        <translation>सम्याएको ठाउँ</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>पानी ल्याउने र लैजाने</translation>
    </message>
    <message>
        <source>Line from the source</source>
        <translation>स्रोतबाट आउने पाइपलाइन</translation>
    </message>
    <message>
        <source>Points of the source line</source>
        <translation>स्रोतको पाइपलाइनका बिन्दु</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>स्रोतको पाइप</translation>
    </message>
    <message>
        <source>Line to the field</source>
        <translation>बारीमा जाने पाइपलाइन</translation>
    </message>
    <message>
        <source>Points of the field line</source>
        <translation>बारीको पाइपलाइनका बिन्दु</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>बारीको पाइप</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>ओभरफ्लो</translation>
    </message>
    <message>
        <source>Spill path</source>
        <translation>ओभरफ्लोको कुलो</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>थेग्रो कुण्ड</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>चुहावट जाँच</translation>
    </message>
    <message>
        <source>Spot height, row %1</source>
        <translation>उचाइको बिन्दु, पङ्क्ति %1</translation>
    </message>
    <message>
        <source>Source line, point %1</source>
        <translation>स्रोतको पाइपलाइन, बिन्दु %1</translation>
    </message>
    <message>
        <source>Field line, point %1</source>
        <translation>बारीको पाइपलाइन, बिन्दु %1</translation>
    </message>
    <message>
        <source>is not further along the line than the point before it; list the points in the order in which the water meets them</source>
        <translation>अघिल्लो बिन्दुभन्दा पाइपलाइनमा परको छैन; पानी जुन क्रममा जान्छ, त्यही क्रममा बिन्दु लेख्नुहोस्</translation>
    </message>
    <message>
        <source>is not in the table of pipes of this grade; choose one that is, or enter the bore as measured</source>
        <translation>यो ग्रेडका पाइपको तालिकामा छैन; तालिकाको छान्नुहोस्, वा नापेको भित्री व्यास राख्नुहोस्</translation>
    </message>
    <message>
        <source>could not be joined to a surface, for the work was broken off; try again and let it finish</source>
        <translation>जमिनको सतहमा जोड्न सकिएन, किनभने काम बीचमै रोकियो; फेरि गर्नुहोस् र सकिन दिनुहोस्</translation>
    </message>
    <message>
        <source>pit depth from which a ladder stands in it</source>
        <translation>भर्‍याङ राख्नुपर्ने खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>pit depth from which walls are held against cave-in</source>
        <translation>भित्ता भत्किन नदिन रोक्नुपर्ने खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>deepest pit dug by hand</source>
        <translation>हातले खन्ने सबैभन्दा गहिरो खाडल</translation>
    </message>
    <message>
        <source>pit depth to which the table of batters goes</source>
        <translation>ढल्काइको तालिका पुग्ने खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>depth of an open cut in the firmest soil that stands a day</source>
        <translation>सबैभन्दा कडा माटोमा एक दिन अडिने खुला कटानको गहिराइ</translation>
    </message>
    <message>
        <source>furthest way to the ladder</source>
        <translation>भर्‍याङसम्मको सबैभन्दा टाढा बाटो</translation>
    </message>
    <message>
        <source>toe of the heap back from the pit edge</source>
        <translation>खाडलको डिलबाट थुप्रोको फेदको दूरी</translation>
    </message>
    <message>
        <source>height of the heap at most</source>
        <translation>थुप्रोको उचाइ, बढीमा</translation>
    </message>
    <message>
        <source>steepest side of loose ground</source>
        <translation>खुकुलो माटोको सबैभन्दा ठाडो छेउ</translation>
    </message>
    <message>
        <source>slope from which old slips are looked for</source>
        <translation>पुराना पहिरो खोज्नुपर्ने ढाल</translation>
    </message>
    <message>
        <source>slope from which an engineer decides</source>
        <translation>इन्जिनियरले निर्णय गर्नुपर्ने ढाल</translation>
    </message>
    <message>
        <source>factor of safety wanted of a slope</source>
        <translation>पाखोलाई चाहिने सुरक्षा गुणक</translation>
    </message>
    <message>
        <source>factor of safety wanted of a cut</source>
        <translation>कटानलाई चाहिने सुरक्षा गुणक</translation>
    </message>
    <message>
        <source>walkway round the rim</source>
        <translation>बिट वरिपरि हिँड्ने पेटी</translation>
    </message>
    <message>
        <source>batter of the cut face</source>
        <translation>कटान सतहको ढल्काइ</translation>
    </message>
    <message>
        <source>batter of the fill face</source>
        <translation>पुराइ सतहको ढल्काइ</translation>
    </message>
    <message>
        <source>topsoil stripped</source>
        <translation>झिकेको मलिलो माटो</translation>
    </message>
    <message>
        <source>compacted fill per ground dug</source>
        <translation>खनेको माटोमा खाँदेको पुराइ</translation>
    </message>
    <message>
        <source>natural ground wanted over floor and walls</source>
        <translation>भुइँ र भित्तामाथि चाहिने सक्कली जमिन</translation>
    </message>
    <message>
        <source>distance to the edge, share of its drop, as for footings</source>
        <translation>डिलसम्मको दूरी, डिलको उचाइको भाग, जगलाई जस्तै</translation>
    </message>
    <message>
        <source>distance to the edge at most, as for footings</source>
        <translation>डिलसम्मको दूरी, बढीमा, जगलाई जस्तै</translation>
    </message>
    <message>
        <source>house downhill within</source>
        <translation>ओरालोतिरको घर, यति दूरीभित्र</translation>
    </message>
    <message>
        <source>weight over uplift wanted</source>
        <translation>उचाल्ने बलको तुलनामा चाहिने तौल</translation>
    </message>
    <message>
        <source>ground water that feeds frost, within</source>
        <translation>तुसारोलाई पानी दिने जमिनमुनिको पानी, यति गहिराइभित्र</translation>
    </message>
    <message>
        <source>shrinkage of moderate swelling</source>
        <translation>मध्यम फुल्ने माटोको खुम्चाइ</translation>
    </message>
    <message>
        <source>shrinkage of high swelling</source>
        <translation>धेरै फुल्ने माटोको खुम्चाइ</translation>
    </message>
    <message>
        <source>shrinkage of very high swelling</source>
        <translation>असाध्यै फुल्ने माटोको खुम्चाइ</translation>
    </message>
    <message>
        <source>clay from which soil may swell</source>
        <translation>माटो फुल्न सक्ने चिम्टाइलो माटोको भाग</translation>
    </message>
    <message>
        <source>low</source>
        <translation>कम</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>साधारण</translation>
    </message>
    <message>
        <source>high</source>
        <translation>बढी</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>mm per hour</source>
        <translation>mm प्रति घण्टा</translation>
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
        <translation>हातले तोकेको उचाइ</translation>
    </message>
    <message>
        <source>A freeboard of %1 would leave it.</source>
        <translation>%1 फ्रिबोर्ड भए त्यति बाँकी रहन्छ।</translation>
    </message>
    <message>
        <source>As low as it is now, it has to be %1 long.</source>
        <translation>अहिले जति होचो छ, त्यसमा यो %1 लामो हुनुपर्छ।</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside, with %3 of water and mud, would hold them.</source>
        <translation>भित्र %1 लामो र %2 चौडा, पानी र हिलो %3 भएको कुण्डले ती रोक्छ।</translation>
    </message>
    <message>
        <source>The overflow</source>
        <translation>ओभरफ्लो</translation>
    </message>
    <message>
        <source>The blocked overflow</source>
        <translation>टालिएको ओभरफ्लो</translation>
    </message>
    <message>
        <source>The silt trap</source>
        <translation>थेग्रो कुण्ड</translation>
    </message>
    <message>
        <source>The leak test</source>
        <translation>चुहावट जाँच</translation>
    </message>
    <message>
        <source>%1 could not be reckoned, so nothing is known of it: %2.</source>
        <translation>%1: हिसाब गर्न सकिएन, त्यसैले यसबारे केही थाहा छैन: %2।</translation>
    </message>
    <message>
        <source>How far the water sank in a light bucket that floats deep in the tank, only a hand&apos;s breadth of it dry: this much evaporated.</source>
        <translation>ट्याङ्कीमा गहिरो गरी तैराइएको, एक चौडा हत्केला जति मात्र सुक्खा रहेको हलुका बाल्टीमा पानी कति घट्यो: त्यति वाष्पीकरण भयो।</translation>
    </message>
    <message>
        <source>To make it, %1 are cut; next to nothing is filled in.</source>
        <translation>यो बनाउन %1 कटान हुन्छ; पुर्न लगभग केही पर्दैन।</translation>
    </message>
    <message>
        <source>Anticlockwise seen from above; at 0 the length runs east. A tank whose length lies across the fall, on one level, needs the least digging.</source>
        <translation>माथिबाट हेर्दा घडीको उल्टो दिशामा; ० मा लम्बाइ पूर्वतिर हुन्छ। लम्बाइ ढाललाई काटेर एउटै सतहमा राखिएको ट्याङ्की सबैभन्दा कम खन्नुपर्छ।</translation>
    </message>
    <message>
        <source>How far the filled face runs out for each unit of height; 1.5 is usual for ground that is well rammed.</source>
        <translation>पुरिएको सतह हरेक एक एकाइ उचाइमा बाहिरतिर कति फैलिन्छ; राम्ररी खाँदेको माटोमा १.५ साधारण हो।</translation>
    </message>
    <message>
        <source>Cut or fill runs out of the survey before it meets the ground. Survey further out or move the tank; steeper cut faces help too, if the soil bears them.</source>
        <translation>कटान वा पुराइ जमिनसँग जोडिनुअघि नै नापीबाहिर जान्छ। अझ परसम्म नाप्नुहोस् वा ट्याङ्की सार्नुहोस्; माटोले थाम्छ भने बढी ठाडो कटानले पनि मद्दत गर्छ।</translation>
    </message>
    <message>
        <source>The ground below the tank may slip even with the tank empty, while it is dug.</source>
        <translation>ट्याङ्की खाली छँदा, खन्दाखन्दै पनि तलको जमिन खस्न (पहिरो जान) सक्छ।</translation>
    </message>
    <message>
        <source>The ground below the tank may slip when the tank leaks.</source>
        <translation>ट्याङ्की चुहिँदा तलको जमिन खस्न (पहिरो जान) सक्छ।</translation>
    </message>
    <message>
        <source>A licensed engineer must look at it before anyone digs (calculation sheet E1). A place further from the edge, or on flatter ground, would help.</source>
        <translation>कसैले खन्नुअघि इजाजतप्राप्त इन्जिनियरले हेर्नैपर्छ (हिसाबको पाना E1)। डिलबाट अझ पर, वा कम भिरालो जमिनको ठाउँ भए राम्रो हुन्छ।</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie downhill of the tank, where its weight loads the ground that carries it. Heap it across the fall, to the %1 of the tank.</source>
        <translation>खनेको माटोको थुप्रो ट्याङ्कीको ओरालोतिर पर्छ, जहाँ यसको भारले ट्याङ्की थाम्ने जमिनलाई थिच्छ। ढाललाई काट्ने दिशामा, ट्याङ्कीको %1तिर थुपार्नुहोस्।</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie uphill of the tank, where rain washes it in. Heap it across the fall, to the %1 of the tank.</source>
        <translation>खनेको माटोको थुप्रो ट्याङ्कीको उकालोतिर पर्छ, जहाँबाट वर्षाले बगाएर भित्र ल्याउँछ। ढाललाई काट्ने दिशामा, ट्याङ्कीको %1तिर थुपार्नुहोस्।</translation>
    </message>
    <message>
        <source>The cut face of the platform stands up to %1 high and leans back %2 for each unit of height; the published table asks for %3 in this soil. Lean it back, or widen the walkway where it stands close over the pit.</source>
        <translation>सम्याएको ठाउँको कटान सतह %1सम्म अग्लो छ र हरेक एक एकाइ उचाइमा %2 ढल्किएको छ; प्रकाशित तालिकाले यो माटोमा %3 माग्छ। यसलाई अझ ढल्काउनुहोस्, वा खाडलको छेउमै पर्ने ठाउँमा हिँड्ने पेटी चौडा बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>The fill face of the platform runs out %1 for each unit of height; loose ground comes to rest at %2. Make it %2 or flatter.</source>
        <translation>सम्याएको ठाउँको पुराइ सतह हरेक एक एकाइ उचाइमा %1 बाहिर फैलिन्छ; खुकुलो माटो %2मा अडिन्छ। %2 वा त्योभन्दा कम ठाडो बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>the siphon does not run with its end wide open</source>
        <translation>छेउ पूरै खोल्दा साइफन चल्दैन</translation>
    </message>
    <message>
        <source>It fills the empty tank in %1 when nothing is drawn.</source>
        <translation>केही नझिके यसले खाली ट्याङ्की %1मा भर्छ।</translation>
    </message>
    <message>
        <source>The siphon cannot be started, not even with the tank full: its top lies %1 over the water, and %2 is the most.</source>
        <translation>ट्याङ्की भरिएको बेला पनि साइफन चलाउन सकिँदैन: टुप्पो पानीभन्दा %1 माथि छ, र बढीमा %2 हुन सक्छ।</translation>
    </message>
    <message>
        <source>has another height than an earlier point at the same place</source>
        <translation>एउटै ठाउँको पहिलेको बिन्दुसँग उचाइ मिल्दैन</translation>
    </message>
    <message>
        <source>%1 %2, %4: found %3.</source>
        <translation>%1: %2, %4; भेटियो %3।</translation>
    </message>
    <message>
        <source>The table of spot heights</source>
        <translation>उचाइका बिन्दुको तालिका</translation>
    </message>
    <message>
        <source>spoil heap off the line of the fall, least</source>
        <translation>ढालको रेखाबाट माटोको थुप्रो, कम्तीमा</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1; the water then stands only %2 below the lowest part of the rim, and %3 is wanted.</source>
        <translation>मुसलधारे वर्षामा ओभरफ्लोबाट %1 जानुपर्छ; त्यति बेला पानी बिटको सबैभन्दा होचो ठाउँभन्दा %2 मात्र तल हुन्छ, %3 चाहिन्छ।</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1 and cannot: the water runs over the rim and washes out the ground behind the lining. It should stay %2 below the lowest part of it.</source>
        <translation>मुसलधारे वर्षामा ओभरफ्लोबाट %1 जानुपर्छ तर जान सक्दैन: पानी बिटमाथिबाट पोखिन्छ र अस्तरपछाडिको जमिन बगाउँछ। पानी बिटको सबैभन्दा होचो ठाउँभन्दा %2 तल रहनुपर्छ।</translation>
    </message>
    <message>
        <source>The overflow passes it: the water stays %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>ओभरफ्लोले त्यति लैजान्छ: पानी बिटको सबैभन्दा होचो ठाउँभन्दा %1 तल रहन्छ, चाहिने %2 हो।</translation>
    </message>
    <message>
        <source>The overflow just passes it: the water stays only %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>ओभरफ्लोले मुस्किलले त्यति लैजान्छ: पानी बिटको सबैभन्दा होचो ठाउँभन्दा %1 मात्र तल रहन्छ, चाहिने %2 हो।</translation>
    </message>
    <message>
        <source>No leak test is entered. Let a light bucket float deep in the tank, only a hand&apos;s breadth of it dry; read both, and read them again after a dry day.</source>
        <translation>चुहावट जाँच राखिएको छैन। हलुका बाल्टी ट्याङ्कीमा गहिरो गरी, एक चौडा हत्केला जति मात्र सुक्खा रहने गरी तैराउनुहोस्; दुवै नाप्नुहोस्, र पानी नपरेको एक दिनपछि फेरि नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>The fill takes all that is dug, and %1 more that would have to be brought.</source>
        <translation>पुराइमा खनेको सबै माटो लाग्छ, र थप %1 बाहिरबाट ल्याउनुपर्छ।</translation>
    </message>
    <message>
        <source>The fill takes more than all that is dug: %1 of ground would have to be brought. Lay the platform lower.</source>
        <translation>पुराइमा खनेको सबै माटोभन्दा बढी लाग्छ: %1 माटो बाहिरबाट ल्याउनुपर्छ। सम्याएको ठाउँ तल राख्नुहोस्।</translation>
    </message>
    <message>
        <source>By the levels of its ends alone the line would bring %1.</source>
        <translation>दुई छेउको उचाइ मात्र हेर्दा पाइपलाइनले %1 ल्याउँथ्यो।</translation>
    </message>
    <message>
        <source>The tank costs about %1.</source>
        <translation>ट्याङ्कीको लागत करिब %1 पर्छ।</translation>
    </message>
    <message>
        <source>The tank costs about %1: %2 in money, %3 given by the household in goods and work.</source>
        <translation>ट्याङ्कीको लागत करिब %1 पर्छ: %2 पैसामा, %3 घरपरिवारले सामान र काममा गरेको योगदान।</translation>
    </message>
    <message>
        <source>%1 for materials</source>
        <translation>सामानमा %1</translation>
    </message>
    <message>
        <source>%1 for work</source>
        <translation>काममा %1</translation>
    </message>
    <message>
        <source>%1 for carrying</source>
        <translation>ढुवानीमा %1</translation>
    </message>
    <message>
        <source>%1 for other things</source>
        <translation>अरू कुरामा %1</translation>
    </message>
    <message>
        <source>%1 kept for what nobody foresees</source>
        <translation>भैपरी खर्चमा %1</translation>
    </message>
    <message>
        <source>Of that, %1.</source>
        <translation>त्यसमध्ये %1।</translation>
    </message>
    <message>
        <source>For each m³ (%1) that the full tank stores, building costs %2.</source>
        <translation>भरिएको ट्याङ्कीमा अट्ने हरेक m³ (%1) मा बनाउने लागत %2 पर्छ।</translation>
    </message>
    <message>
        <source>all months</source>
        <translation>सबै महिना</translation>
    </message>
    <message>
        <source>What the water of the dry months costs cannot be told before the water balance is there.</source>
        <translation>पानीको हिसाब नभएसम्म सुक्खा महिनाको पानीको लागत भन्न सकिँदैन।</translation>
    </message>
    <message>
        <source>No month counts as dry, so the cost of water in the dry months cannot be told.</source>
        <translation>कुनै महिना सुक्खा गनिँदैन, त्यसैले सुक्खा महिनाको पानीको लागत भन्न सकिँदैन।</translation>
    </message>
    <message>
        <source>In the dry months (%1) of a mean year %2 are drawn from the tank; what they cost cannot be told.</source>
        <translation>औसत वर्षका सुक्खा महिना (%1) मा ट्याङ्कीबाट %2 झिकिन्छ; त्यसको लागत भन्न सकिँदैन।</translation>
    </message>
    <message>
        <source>For each m³ (%1) that it delivers in the dry months (%2), the tank costs %3 over its life, interest and upkeep counted; in a mean year it delivers %4 then.</source>
        <translation>सुक्खा महिना (%2) मा दिने हरेक m³ (%1) को ट्याङ्कीको आयुभरिको लागत, ब्याज र मर्मत-सम्भार जोडेर, %3 पर्छ; औसत वर्षमा त्यति बेला यसले %4 दिन्छ।</translation>
    </message>
    <message>
        <source>%1: %2 (%3 for a single one)</source>
        <translation>%1: %2 (एक्लैलाई %3)</translation>
    </message>
    <message>
        <source>Loads to carry: %1.</source>
        <translation>बोक्ने भारी: %1।</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1 (into %2)</source>
        <translation>%1 (%2 भागमा)</translation>
    </message>
    <message>
        <source>Too heavy for one load and split even: %1.</source>
        <translation>एक भारीका लागि गह्रौं, बराबर भाग लगाइएका: %1।</translation>
    </message>
    <message>
        <source>Money is needed first on %1; most on one day is %2, on %3.</source>
        <translation>पैसा सबैभन्दा पहिले %1मा चाहिन्छ; एकै दिनमा सबैभन्दा धेरै %2, %3मा।</translation>
    </message>
    <message>
        <source>No price is entered yet, so nothing is known of the money. Ask the shop and the people who work, and enter what one unit costs.</source>
        <translation>अहिलेसम्म कुनै मूल्य राखिएको छैन, त्यसैले पैसाबारे केही थाहा छैन। पसल र काम गर्ने मान्छेलाई सोधेर एक एकाइको मूल्य राख्नुहोस्।</translation>
    </message>
    <message>
        <source>digging</source>
        <translation>खन्ने काम</translation>
    </message>
    <message>
        <source>ramming fill</source>
        <translation>पुराइ खाँद्ने</translation>
    </message>
    <message>
        <source>laying the stone bed</source>
        <translation>ढुङ्गाको सोलिङ बिछ्याउने</translation>
    </message>
    <message>
        <source>spreading plaster</source>
        <translation>प्लास्टर लगाउने</translation>
    </message>
    <message>
        <source>mixing mortar</source>
        <translation>मसला मुछ्ने</translation>
    </message>
    <message>
        <source>not carried</source>
        <translation>बोक्नु नपर्ने</translation>
    </message>
    <message>
        <source>porter</source>
        <translation>भरिया</translation>
    </message>
    <message>
        <source>mule</source>
        <translation>खच्चर</translation>
    </message>
    <message>
        <source>trolley</source>
        <translation>ट्रली</translation>
    </message>
    <message>
        <source>soil-cement plaster</source>
        <translation>माटो-सिमेन्ट प्लास्टर</translation>
    </message>
    <message>
        <source>plastic sheet</source>
        <translation>प्लास्टिक</translation>
    </message>
    <message>
        <source>ferrocement</source>
        <translation>फेरोसिमेन्ट</translation>
    </message>
    <message>
        <source>stone masonry</source>
        <translation>ढुङ्गाको गारो</translation>
    </message>
    <message>
        <source>moulded plastic tank</source>
        <translation>तयारी प्लास्टिक ट्याङ्की</translation>
    </message>
    <message>
        <source>the whole job</source>
        <translation>पूरै काम</translation>
    </message>
    <message>
        <source>one m² of face</source>
        <translation>सतहको एक m²</translation>
    </message>
    <message>
        <source>one m³ held</source>
        <translation>अट्ने एक m³</translation>
    </message>
    <message>
        <source>thickness of the coats</source>
        <translation>पत्रको मोटाइ</translation>
    </message>
    <message>
        <source>unevenness of dug faces</source>
        <translation>खनेको सतहको असमानता</translation>
    </message>
    <message>
        <source>loose ingredients per placed plaster</source>
        <translation>लगाएको प्लास्टरमा लाग्ने खुकुलो सामान</translation>
    </message>
    <message>
        <source>loose weight of cement</source>
        <translation>सिमेन्टको खुकुलो तौल</translation>
    </message>
    <message>
        <source>time for digging</source>
        <translation>खन्ने समय</translation>
    </message>
    <message>
        <source>time for plastering</source>
        <translation>प्लास्टर गर्ने समय</translation>
    </message>
    <message>
        <source>prices of goods</source>
        <translation>सामानको मूल्य</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>ज्याला</translation>
    </message>
    <message>
        <source>flow of the source</source>
        <translation>स्रोतको बहाव</translation>
    </message>
    <message>
        <source>Filling starts on %1, later than %2, by which it should: plaster that falls dry cracks.</source>
        <translation>पानी भर्न %1मा थालिन्छ, %2सम्म थाल्नुपर्नेमा ढिलो: सुकेको प्लास्टर चर्किन्छ।</translation>
    </message>
    <message>
        <source>Filling starts on %1; it should start by %2 at the latest.</source>
        <translation>पानी भर्न %1मा थालिन्छ; ढिलोमा %2सम्म थाल्नुपर्छ।</translation>
    </message>
    <message>
        <source>with %1 a day let in, as entered</source>
        <translation>राखिएअनुसार दिनमा %1 हाल्दा</translation>
    </message>
    <message>
        <source>with %1 a day from the source at first</source>
        <translation>सुरुमा स्रोतबाट दिनमा %1 आउँदा</translation>
    </message>
    <message>
        <source>What flows in is not known, so nobody can say when the tank is full. Enter the water let in each day, or the flow of the source.</source>
        <translation>कति पानी पस्छ थाहा छैन, त्यसैले ट्याङ्की कहिले भरिन्छ कसैले भन्न सक्दैन। हरेक दिन हालिने पानी वा स्रोतको बहाव राख्नुहोस्।</translation>
    </message>
    <message>
        <source>The tank is full on %1, %2.</source>
        <translation>%2 ट्याङ्की %1मा भरिन्छ।</translation>
    </message>
    <message>
        <source>The tank does not fill within a year, %1: the water comes to %2 over the floor.</source>
        <translation>%1 ट्याङ्की एक वर्षभित्र भरिँदैन: पानी भुइँमाथि %2सम्म आउँछ।</translation>
    </message>
    <message>
        <source>On some days less is let in than could be, so that the water does not rise too fast for the young plaster.</source>
        <translation>नयाँ प्लास्टरमाथि पानी धेरै छिटो नबढोस् भनेर केही दिन हाल्न सकिनेभन्दा कम हालिन्छ।</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor: wet sacks until %3.</source>
        <translation>भुइँमाथि %1 देखि %2सम्मको भित्ता: %3सम्म भिजेको जुट।</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor, which the water does not cover: wet sacks until %3.</source>
        <translation>भुइँमाथि %1 देखि %2सम्मको, पानीले नढाक्ने भित्ता: %3सम्म भिजेको जुट।</translation>
    </message>
    <message>
        <source>Sacks on bare wall take about %1 of water after the last coat has cured.</source>
        <translation>अन्तिम पत्रको क्योरिङ सकिएपछि खुला भित्ताका जुटलाई करिब %1 पानी लाग्छ।</translation>
    </message>
    <message>
        <source>For the water to cover all walls by the time their curing ends, about %1 would have to be brought by hand.</source>
        <translation>क्योरिङ सकिने बेलासम्म पानीले सबै भित्ता ढाक्न करिब %1 पानी हातले बोकेर ल्याउनुपर्छ।</translation>
    </message>
    <message>
        <source>There is no coat yet after which the tank could be filled.</source>
        <translation>पानी भर्न मिल्ने गरी अहिलेसम्म कुनै पत्र छैन।</translation>
    </message>
    <message>
        <source>Over the years %1 costs least: %2 a year, interest and upkeep counted.</source>
        <translation>वर्षौंको हिसाबमा सबैभन्दा कम लागत %1को: वर्षमा %2, ब्याज र मर्मत-सम्भार जोडेर।</translation>
    </message>
    <message>
        <source>That is %1 a year for each m³ (%2) stored.</source>
        <translation>अट्ने हरेक m³ (%2) को वर्षमा %1 पर्छ।</translation>
    </message>
    <message>
        <source>%1: %2 a year; %3 to build with its digging, lasts about %4, upkeep %5 a year.</source>
        <translation>%1: वर्षमा %2; खन्नेसहित बनाउन %3, करिब %4 टिक्छ, मर्मत-सम्भार वर्षमा %5।</translation>
    </message>
    <message>
        <source>Life and upkeep are proposals to begin with: ask people who have such a lining, and change them.</source>
        <translation>आयु र मर्मत-सम्भार सुरुका लागि प्रस्ताव मात्र हुन्: यस्तो अस्तर भएका मान्छेलाई सोधेर बदल्नुहोस्।</translation>
    </message>
    <message>
        <source>The bill comes out too low, for a price is missing: %1.</source>
        <translation>खर्च हिसाब कम आएको छ, किनभने यसको मूल्य छैन: %1।</translation>
    </message>
    <message>
        <source>The bill comes out too low, for prices are missing: %1. The first of them: %2.</source>
        <translation>खर्च हिसाब कम आएको छ, किनभने मूल्य छैनन्: %1। तीमध्ये पहिलो: %2।</translation>
    </message>
    <message>
        <source>A bag of cement weighs %1, more than the %2 of one load (%3). Split each bag into dry, closed sacks of the same weight.</source>
        <translation>सिमेन्टको एक बोरा %1 छ, एक भारी %2 भन्दा बढी (%3)। हरेक बोरालाई बराबर तौलका सुक्खा, मुख बाँधेका थैलामा बाँड्नुहोस्।</translation>
    </message>
    <message>
        <source>Option %1 cannot be built as entered, so nothing is reckoned for it. The table of options says why.</source>
        <translation>विकल्प %1 राखिएअनुसार बनाउन मिल्दैन, त्यसैले यसको केही हिसाब गरिएको छैन। कारण विकल्पको तालिकामा छ।</translation>
    </message>
    <message>
        <source>What is bought or paid: an item of the plan, or one of your own such as a gate or a meal.</source>
        <translation>के किनिन्छ वा केको पैसा तिरिन्छ: योजनाको विवरण, वा तपाईंको आफ्नै, जस्तै गेट वा खाना।</translation>
    </message>
    <message>
        <source>What one unit costs where it is bought, without carrying; leave empty if not known.</source>
        <translation>किन्ने ठाउँमा एक एकाइको मूल्य, ढुवानीबाहेक; थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>How many units; leave empty to take it from the plan. An item of your own needs it.</source>
        <translation>कति एकाइ; योजनाबाट लिन खाली छोड्नुहोस्। तपाईंको आफ्नै विवरणमा राख्नैपर्छ।</translation>
    </message>
    <message>
        <source>Share that the household or the group gives itself, in goods or in work; no money is paid for it.</source>
        <translation>घरपरिवार वा समूहले सामान वा काममा आफैं दिने भाग; यसको पैसा तिरिँदैन।</translation>
    </message>
    <message>
        <source>Who carries it from the road to the tank.</source>
        <translation>बाटोदेखि ट्याङ्कीसम्म कसले बोक्छ।</translation>
    </message>
    <message>
        <source>Weigh one unit; leave empty to take it from the table of weights.</source>
        <translation>एक एकाइ जोख्नुहोस्; तौलको तालिकाबाट लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>What one person carries on this path and comes back for again, all day; ask the porters.</source>
        <translation>यो बाटोमा एक जनाले दिनभरि ओहोरदोहोर गर्दै बोक्न सक्ने भारी; भरियालाई सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>How often a porter walks from road to tank and back in a day.</source>
        <translation>भरिया दिनमा कति पटक बाटोदेखि ट्याङ्की पुगेर फर्कन्छ।</translation>
    </message>
    <message>
        <source>What a porter is paid for one load from road to tank; leave empty if not known.</source>
        <translation>बाटोदेखि ट्याङ्कीसम्म एक भारीको भरियालाई तिर्ने पैसा; थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>What one mule carries on this path; about a fifth of its own weight.</source>
        <translation>यो बाटोमा एउटा खच्चरले बोक्ने भारी; आफ्नो तौलको करिब पाँच भागको एक भाग।</translation>
    </message>
    <message>
        <source>How often a mule goes from road to tank and back in a day.</source>
        <translation>खच्चर दिनमा कति पटक बाटोदेखि ट्याङ्की पुगेर फर्कन्छ।</translation>
    </message>
    <message>
        <source>What is paid for one mule load from road to tank, its driver counted; leave empty if not known.</source>
        <translation>बाटोदेखि ट्याङ्कीसम्म खच्चरको एक भारीको पैसा, हाँक्ने मान्छेसहित; थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>What one trolley or small tractor takes over this road.</source>
        <translation>यो बाटोमा एउटा ट्रली वा सानो ट्र्याक्टरले लैजाने भारी।</translation>
    </message>
    <message>
        <source>How often a trolley drives to the tank and back in a day.</source>
        <translation>ट्रली दिनमा कति पटक ट्याङ्की पुगेर फर्कन्छ।</translation>
    </message>
    <message>
        <source>What is paid for one trolley load, its driver counted; leave empty if not known.</source>
        <translation>ट्रलीको एक खेपको पैसा, चालकसहित; थाहा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Share of the bill that is kept in reserve for breakage, rain and forgotten things.</source>
        <translation>फुट्ने, वर्षा र बिर्सिएका कुराका लागि जगेडा राखिने खर्च हिसाबको भाग।</translation>
    </message>
    <message>
        <source>What money costs or would earn in a year beyond the rise of prices; it makes linings that last long and short comparable.</source>
        <translation>मूल्य बढेभन्दा माथि वर्षमा पैसाको कति ब्याज लाग्छ वा आउँछ; यसले धेरै टिक्ने र थोरै टिक्ने अस्तर दाँज्न मिल्छ।</translation>
    </message>
    <message>
        <source>One way to line the tank, to set beside the others.</source>
        <translation>अरूसँग दाँज्न, ट्याङ्कीमा अस्तर लगाउने एउटा तरिका।</translation>
    </message>
    <message>
        <source>What the lining costs, put in place; leave empty if not known. For soil-cement plaster the bill of this plan is taken then.</source>
        <translation>लगाएसम्मको अस्तरको लागत; थाहा नभए खाली छोड्नुहोस्। माटो-सिमेन्ट प्लास्टरमा यही योजनाको खर्च हिसाब लिइन्छ।</translation>
    </message>
    <message>
        <source>Whether the price is for the whole job, for a face of one m², or for one m³ that the tank holds.</source>
        <translation>मूल्य पूरै कामको हो, सतहको एक m² को हो, वा ट्याङ्कीमा अट्ने एक m³ को हो।</translation>
    </message>
    <message>
        <source>Years until the lining has to be made anew; ask people who have one.</source>
        <translation>अस्तर फेरि नयाँ बनाउनुपर्ने बेलासम्मका वर्ष; यस्तो अस्तर भएकालाई सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>What mending and cleaning cost in a year, as a share of the price.</source>
        <translation>वर्षमा मर्मत र सफाइको खर्च, मूल्यको भागमा।</translation>
    </message>
    <message>
        <source>A figure of the plan that nobody knows exactly beforehand.</source>
        <translation>योजनाको यस्तो अङ्क जुन पहिल्यै कसैलाई ठ्याक्कै थाहा हुँदैन।</translation>
    </message>
    <message>
        <source>How far it may fall below the figure entered, at worst; 0 if it cannot.</source>
        <translation>सबैभन्दा खराब हुँदा राखिएको अङ्कभन्दा कति घट्न सक्छ; नघट्ने भए ०।</translation>
    </message>
    <message>
        <source>How far it may rise over the figure entered, at worst; 0 if it cannot.</source>
        <translation>सबैभन्दा खराब हुँदा राखिएको अङ्कभन्दा कति बढ्न सक्छ; नबढ्ने भए ०।</translation>
    </message>
    <message>
        <source>How many times the plan is reckoned with figures drawn by lot; more draws take longer and shake less.</source>
        <translation>गोलाबाट निस्किएका अङ्कले योजनाको हिसाब कति पटक गरिन्छ; धेरै गोलामा समय बढी लाग्छ, तर नतिजा कम हल्लिन्छ।</translation>
    </message>
    <message>
        <source>Start of the lot; the same seed gives the same draws again.</source>
        <translation>गोलाको सुरु; उही सुरु अङ्कले फेरि उही गोला दिन्छ।</translation>
    </message>
    <message>
        <source>Shortest length that is tried; of a round tank the smallest diameter. It is measured as the clear length of the tank is.</source>
        <translation>जाँचिने सबैभन्दा छोटो लम्बाइ; गोलो ट्याङ्कीमा सबैभन्दा सानो व्यास। यो ट्याङ्कीको भित्री लम्बाइजस्तै नापिन्छ।</translation>
    </message>
    <message>
        <source>Longest length that is tried; of a round tank the largest diameter. Measure what fits on the platform.</source>
        <translation>जाँचिने सबैभन्दा लामो लम्बाइ; गोलो ट्याङ्कीमा सबैभन्दा ठूलो व्यास। सम्याएको ठाउँमा कति अट्छ, नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Smallest clear width that is tried.</source>
        <translation>जाँचिने सबैभन्दा सानो भित्री चौडाइ।</translation>
    </message>
    <message>
        <source>Largest clear width that is tried; measure what fits on the platform.</source>
        <translation>जाँचिने सबैभन्दा ठूलो भित्री चौडाइ; सम्याएको ठाउँमा कति अट्छ, नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Smallest clear depth that is tried.</source>
        <translation>जाँचिने सबैभन्दा सानो भित्री गहिराइ।</translation>
    </message>
    <message>
        <source>Largest clear depth that is tried; pits deeper than hand digging allows are left out all the same.</source>
        <translation>जाँचिने सबैभन्दा ठूलो भित्री गहिराइ; हातले खन्न दिइनेभन्दा गहिरा खाडल जसरी पनि छोडिन्छन्।</translation>
    </message>
    <message>
        <source>Sizes are tried this far apart; half the step means up to eight times as many sizes.</source>
        <translation>साइज यति फरकमा जाँचिन्छन्; फरक आधा गर्दा आठ गुणासम्म धेरै साइज हुन्छन्।</translation>
    </message>
    <message>
        <source>What the bill may come to; leave empty if money sets no limit.</source>
        <translation>खर्च हिसाब कतिसम्म पुग्न सक्छ; पैसाको सीमा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Bags of cement that can be had; leave empty if cement sets no limit.</source>
        <translation>पाउन सकिने सिमेन्टका बोरा; सिमेन्टको सीमा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>People who can come for one coat on one day; leave empty if they set no limit.</source>
        <translation>एक दिन एउटा पत्रमा आउन सक्ने मान्छे; मान्छेको सीमा नभए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>विवरण</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>एउटाको मूल्य</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>परिमाण</translation>
    </message>
    <message>
        <source>Given by the household</source>
        <translation>घरको योगदान</translation>
    </message>
    <message>
        <source>Carried by</source>
        <translation>कसले बोक्ने</translation>
    </message>
    <message>
        <source>Weight of one</source>
        <translation>एउटाको तौल</translation>
    </message>
    <message>
        <source>Porter: load at most</source>
        <translation>भरिया: बढीमा भारी</translation>
    </message>
    <message>
        <source>Porter: trips a day</source>
        <translation>भरिया: दिनमा खेप</translation>
    </message>
    <message>
        <source>Porter: price of a trip</source>
        <translation>भरिया: एक खेपको मूल्य</translation>
    </message>
    <message>
        <source>Mule: load at most</source>
        <translation>खच्चर: बढीमा भारी</translation>
    </message>
    <message>
        <source>Mule: trips a day</source>
        <translation>खच्चर: दिनमा खेप</translation>
    </message>
    <message>
        <source>Mule: price of a trip</source>
        <translation>खच्चर: एक खेपको मूल्य</translation>
    </message>
    <message>
        <source>Trolley: load at most</source>
        <translation>ट्रली: बढीमा भारी</translation>
    </message>
    <message>
        <source>Trolley: trips a day</source>
        <translation>ट्रली: दिनमा खेप</translation>
    </message>
    <message>
        <source>Trolley: price of a trip</source>
        <translation>ट्रली: एक खेपको मूल्य</translation>
    </message>
    <message>
        <source>Kept for what nobody foresees</source>
        <translation>भैपरी खर्च</translation>
    </message>
    <message>
        <source>Interest a year</source>
        <translation>वार्षिक ब्याज</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>मूल्य</translation>
    </message>
    <message>
        <source>Price is for</source>
        <translation>मूल्य केको</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>टिक्ने समय</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>वार्षिक मर्मत-सम्भार</translation>
    </message>
    <message>
        <source>What is uncertain</source>
        <translation>पक्का नभएको कुरा</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>सबैभन्दा कम</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>सबैभन्दा बढी</translation>
    </message>
    <message>
        <source>Number of draws</source>
        <translation>गोलाको सङ्ख्या</translation>
    </message>
    <message>
        <source>Seed of the draws</source>
        <translation>गोलाको सुरु अङ्क</translation>
    </message>
    <message>
        <source>Length from</source>
        <translation>लम्बाइ, यतिदेखि</translation>
    </message>
    <message>
        <source>Length to</source>
        <translation>लम्बाइ, यतिसम्म</translation>
    </message>
    <message>
        <source>Width from</source>
        <translation>चौडाइ, यतिदेखि</translation>
    </message>
    <message>
        <source>Width to</source>
        <translation>चौडाइ, यतिसम्म</translation>
    </message>
    <message>
        <source>Depth from</source>
        <translation>गहिराइ, यतिदेखि</translation>
    </message>
    <message>
        <source>Depth to</source>
        <translation>गहिराइ, यतिसम्म</translation>
    </message>
    <message>
        <source>In steps of</source>
        <translation>यति-यति फरकमा</translation>
    </message>
    <message>
        <source>Money at most</source>
        <translation>पैसा, बढीमा</translation>
    </message>
    <message>
        <source>Bags of cement at most</source>
        <translation>सिमेन्टका बोरा, बढीमा</translation>
    </message>
    <message>
        <source>People on a coat at most</source>
        <translation>पत्रमा लाग्ने मान्छे, बढीमा</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>ढुङ्गा</translation>
    </message>
    <message>
        <source>Sacks</source>
        <translation>जुटको बोरा</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>ज्यामी</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>डकर्मी</translation>
    </message>
    <message>
        <source>Fence</source>
        <translation>बार</translation>
    </message>
    <message>
        <source>Porters</source>
        <translation>भरिया</translation>
    </message>
    <message>
        <source>Mules</source>
        <translation>खच्चर</translation>
    </message>
    <message>
        <source>Trolley</source>
        <translation>ट्रली</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>बोरा</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>वटा</translation>
    </message>
    <message>
        <source>person-day</source>
        <translation>जनदिन</translation>
    </message>
    <message>
        <source>job</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Person-days of work</source>
        <translation>कामको जनदिन</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>पैसा</translation>
    </message>
    <message>
        <source>Days to fill the tank</source>
        <translation>ट्याङ्की भरिन लाग्ने दिन</translation>
    </message>
    <message>
        <source>weight of loose soil</source>
        <translation>खुकुलो माटोको तौल</translation>
    </message>
    <message>
        <source>weight of loose sand</source>
        <translation>खुकुलो बालुवाको तौल</translation>
    </message>
    <message>
        <source>weight of loose stone</source>
        <translation>खुकुलो ढुङ्गाको तौल</translation>
    </message>
    <message>
        <source>weight of water</source>
        <translation>पानीको तौल</translation>
    </message>
    <message>
        <source>weight of an empty sack</source>
        <translation>खाली जुटको बोराको तौल</translation>
    </message>
    <message>
        <source>weight of pipe</source>
        <translation>पाइपको तौल</translation>
    </message>
    <message>
        <source>weight of fence</source>
        <translation>बारको तौल</translation>
    </message>
    <message>
        <source>Clear the ground</source>
        <translation>जमिन सफा गर्ने</translation>
    </message>
    <message>
        <source>Set out with pegs and string</source>
        <translation>किला र डोरीले लेआउट गर्ने</translation>
    </message>
    <message>
        <source>Strip the topsoil</source>
        <translation>मलिलो माटो झिक्ने</translation>
    </message>
    <message>
        <source>Cut the platform</source>
        <translation>सम्याउने ठाउँ काट्ने</translation>
    </message>
    <message>
        <source>Fill and ram the platform</source>
        <translation>सम्याउने ठाउँ पुरेर खाँद्ने</translation>
    </message>
    <message>
        <source>Dig the low part of the pit</source>
        <translation>खाडलको तल्लो भाग खन्ने</translation>
    </message>
    <message>
        <source>Carry the spoil to its heap</source>
        <translation>खनेको माटो थुप्रोमा लैजाने</translation>
    </message>
    <message>
        <source>Trim walls and floor</source>
        <translation>भित्ता र पिँध ताछेर मिलाउने</translation>
    </message>
    <message>
        <source>Lay pipes and their collars</source>
        <translation>पाइप र पाइपका घेरा लगाउने</translation>
    </message>
    <message>
        <source>Fill for the first time</source>
        <translation>पहिलो पटक पानी भर्ने</translation>
    </message>
    <message>
        <source>Watch the first filling</source>
        <translation>पहिलो पानी भराइ हेर्ने</translation>
    </message>
    <message>
        <source>Test for leaks</source>
        <translation>चुहावट जाँच्ने</translation>
    </message>
    <message>
        <source>Build the silt trap</source>
        <translation>थेग्रो कुण्ड बनाउने</translation>
    </message>
    <message>
        <source>Build overflow and spill path</source>
        <translation>ओभरफ्लो र त्यसको कुलो बनाउने</translation>
    </message>
    <message>
        <source>Build fence, gate and ladder</source>
        <translation>बार, गेट र भर्‍याङ बनाउने</translation>
    </message>
    <message>
        <source>Plant the beds</source>
        <translation>ड्याङमा रोप्ने</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>डकर्मी</translation>
    </message>
    <message>
        <source>people who wet</source>
        <translation>भिजाउने मान्छे</translation>
    </message>
    <message>
        <source>records of work and batches</source>
        <translation>काम र घानका रेकर्ड</translation>
    </message>
    <message>
        <source>ranges of uncertain figures</source>
        <translation>पक्का नभएका अङ्कका दायरा</translation>
    </message>
    <message>
        <source>limits of the search</source>
        <translation>खोज्ने सीमा</translation>
    </message>
    <message>
        <source>%1 can be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 एकै दिनमा लगाउन सकिन्छ: %2भित्र %3 चाहिन्छ (%4), र %5 छन् (%6)।</translation>
    </message>
    <message>
        <source>%1 cannot be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 एकै दिनमा लगाउन सकिँदैन: %2भित्र %3 चाहिन्छ (%4), र %5 छन् (%6)।</translation>
    </message>
    <message>
        <source>No smaller tank of this depth is found that these people could plaster in one go: ask for more people.</source>
        <translation>यी मान्छेले एकै दिनमा प्लास्टर गर्न सक्ने, यही गहिराइको सानो ट्याङ्की भेटिएन: थप मान्छे बोलाउनुहोस्।</translation>
    </message>
    <message>
        <source>%1: batches with a whole bag each: %2, which is %3 an hour; the mixing places bring %4 an hour.</source>
        <translation>%1: एक-एक पूरा बोराका घान: %2, घण्टामा %3; मसला मुछ्ने ठाउँले घण्टामा %4 दिन्छन्।</translation>
    </message>
    <message>
        <source>That is too slow; mixing places needed: %1.</source>
        <translation>त्यो धेरै ढिलो हुन्छ; चाहिने मसला मुछ्ने ठाउँ: %1।</translation>
    </message>
    <message>
        <source>%1: a batch is on the wall in %2; it may take %3 before it stiffens.</source>
        <translation>%1: एक घान %2मा भित्तामा लाग्छ; जम्नुअघि %3सम्म समय हुन्छ।</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3. Mix half a bag at a time, which is on the wall in %4.</source>
        <translation>%1: एक घान लगाउन %2 लाग्छ र %3 पछि जम्छ। एक पटकमा आधा बोरा मात्र मुछ्नुहोस्, त्यो %4मा भित्तामा लाग्छ।</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3; even half a bag takes %4. More people have to spread.</source>
        <translation>%1: एक घान लगाउन %2 लाग्छ र %3 पछि जम्छ; आधा बोरालाई पनि %4 लाग्छ। लगाउने मान्छे थप्नुपर्छ।</translation>
    </message>
    <message>
        <source>%1: have ready %2 of cement, %3 of water for mixing and %4 sacks to cover it.</source>
        <translation>%1: %2 सिमेन्ट, मुछ्न %3 पानी र ढाक्न %4 जुट तयार राख्नुहोस्।</translation>
    </message>
    <message>
        <source>one of them a mason</source>
        <translation>तीमध्ये एक डकर्मी</translation>
    </message>
    <message>
        <source>none of them a mason</source>
        <translation>तीमध्ये डकर्मी कोही छैन</translation>
    </message>
    <message numerus="yes">
        <source>%1 of them masons</source>
        <translation>
            <numerusform>तीमध्ये %1 डकर्मी</numerusform>
            <numerusform>तीमध्ये %1 डकर्मी</numerusform>
        </translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 across and holds about %2.</source>
        <translation>यी मान्छेले यही गहिराइको, %1 व्यासको र करिब %2 अट्ने ट्याङ्की प्लास्टर गर्न सक्छन्।</translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 long and %2 wide and holds about %3.</source>
        <translation>यी मान्छेले यही गहिराइको, %1 लामो र %2 चौडा, करिब %3 अट्ने ट्याङ्की प्लास्टर गर्न सक्छन्।</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>छ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>छैन</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>राखिएको छैन</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>Cannot be built</source>
        <translation>बनाउन मिल्दैन</translation>
    </message>
    <message>
        <source>Clear floor and depth</source>
        <translation>भित्री भुइँ र गहिराइ</translation>
    </message>
    <message>
        <source>Holds when full</source>
        <translation>भरिँदा अट्ने</translation>
    </message>
    <message>
        <source>Can be drawn</source>
        <translation>झिक्न मिल्ने</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>१० मध्ये कति वर्ष वर्षभरि पानी</translation>
    </message>
    <message>
        <source>Days without water in a mean year</source>
        <translation>औसत वर्षमा पानी नपुग्ने दिन</translation>
    </message>
    <message>
        <source>Drawn in the dry months of a mean year</source>
        <translation>औसत वर्षका सुक्खा महिनामा झिकिने</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>लागत</translation>
    </message>
    <message>
        <source>Of it in money</source>
        <translation>त्यसमा पैसा</translation>
    </message>
    <message>
        <source>Cost for each m³ stored</source>
        <translation>अट्ने हरेक m³ को लागत</translation>
    </message>
    <message>
        <source>Ground to dig for the pit</source>
        <translation>खाडल खन्ने माटो</translation>
    </message>
    <message>
        <source>People on a coat, at most</source>
        <translation>पत्रमा लाग्ने मान्छे, बढीमा</translation>
    </message>
    <message>
        <source>Works begin</source>
        <translation>निर्माण सुरु</translation>
    </message>
    <message>
        <source>Works end</source>
        <translation>निर्माण अन्त्य</translation>
    </message>
    <message>
        <source>Findings that say stop</source>
        <translation>रोक्नुहोस् भन्ने ध्यान दिने कुरा</translation>
    </message>
    <message>
        <source>Findings that ask for caution</source>
        <translation>सावधान भन्ने ध्यान दिने कुरा</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Closed days</source>
        <translation>काम बन्द दिन</translation>
    </message>
    <message>
        <source>Wishes for tasks</source>
        <translation>कामका चाहना</translation>
    </message>
    <message>
        <source>Own rates</source>
        <translation>आफ्नै दर</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>रेकर्ड</translation>
    </message>
    <message>
        <source>Trial batches</source>
        <translation>जाँच घान</translation>
    </message>
    <message>
        <source>Work measured</source>
        <translation>नापिएको काम</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>मूल्य</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>मूल्य सूची</translation>
    </message>
    <message>
        <source>Porter</source>
        <translation>भरिया</translation>
    </message>
    <message>
        <source>Mule</source>
        <translation>खच्चर</translation>
    </message>
    <message>
        <source>Linings compared</source>
        <translation>दाँजिएका अस्तर</translation>
    </message>
    <message>
        <source>Ranges</source>
        <translation>दायरा</translation>
    </message>
    <message>
        <source>Uncertain figures</source>
        <translation>पक्का नभएका अङ्क</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>खोज्ने सीमा</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>विकल्प</translation>
    </message>
    <message>
        <source>Closed days %1</source>
        <translation>काम बन्द दिन %1</translation>
    </message>
    <message>
        <source>Wish %1</source>
        <translation>चाहना %1</translation>
    </message>
    <message>
        <source>Own rate %1</source>
        <translation>आफ्नै दर %1</translation>
    </message>
    <message>
        <source>Trial batch %1</source>
        <translation>जाँच घान %1</translation>
    </message>
    <message>
        <source>Work measured %1</source>
        <translation>नापिएको काम %1</translation>
    </message>
    <message>
        <source>Price list, line %1</source>
        <translation>मूल्य सूची, लाइन %1</translation>
    </message>
    <message>
        <source>Lining %1</source>
        <translation>अस्तर %1</translation>
    </message>
    <message>
        <source>Uncertain figure %1</source>
        <translation>पक्का नभएको अङ्क %1</translation>
    </message>
    <message>
        <source>Option %1</source>
        <translation>विकल्प %1</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>फेरबदल</translation>
    </message>
    <message>
        <source>stands there already; give each line its own</source>
        <translation>पहिल्यै छ; हरेक लाइनलाई बेग्लै दिनुहोस्</translation>
    </message>
    <message>
        <source>leaves no day to work on; give fewer closed days, or another rest day</source>
        <translation>काम गर्ने दिन एउटै बाँकी रहँदैन; काम बन्द दिन घटाउनुहोस्, वा अर्को बिदाको दिन दिनुहोस्</translation>
    </message>
    <message>
        <source>does not lie in order: low must not be over typical, nor typical over high</source>
        <translation>क्रम मिलेन: कम साधारणभन्दा बढी र साधारण बढीभन्दा बढी हुनु हुँदैन</translation>
    </message>
    <message>
        <source>is no entry that an option can change; take the change out of the option</source>
        <translation>विकल्पले बदल्न मिल्ने विवरण होइन; यो फेरबदल विकल्पबाट हटाउनुहोस्</translation>
    </message>
    <message>
        <source>is not in the table of rates; choose one that is</source>
        <translation>दरको तालिकामा छैन; तालिकाको छान्नुहोस्</translation>
    </message>
    <message>
        <source>%1: %2, hardly more or less.</source>
        <translation>%1: %2, योभन्दा खासै घटीबढी हुँदैन।</translation>
    </message>
    <message>
        <source>%1: %2 in the middle; in one of ten cases more than %3, in one of ten less than %4.</source>
        <translation>%1: बीचमा %2; दश पटकमा एक पटक %3 भन्दा बढी, दश पटकमा एक पटक %4 भन्दा कम।</translation>
    </message>
    <message>
        <source>With the figures as entered it is %1.</source>
        <translation>राखिएका अङ्कले यो %1 हुन्छ।</translation>
    </message>
    <message>
        <source>What moves it most: %1.</source>
        <translation>यसलाई सबैभन्दा बढी हल्लाउने कुरा: %1।</translation>
    </message>
    <message>
        <source>Nothing has been drawn yet, so no range can be told.</source>
        <translation>अहिलेसम्म गोला हालिएको छैन, त्यसैले दायरा भन्न सकिँदैन।</translation>
    </message>
    <message>
        <source>From %1 draws between the lowest and highest values entered. A range is no promise: it is as good as these values.</source>
        <translation>राखिएका सबैभन्दा कम र सबैभन्दा बढी मानबीच %1 गोलाबाट। दायरा पक्का वचन होइन: यी मान जति ठीक छन्, यो पनि त्यति नै ठीक हुन्छ।</translation>
    </message>
    <message numerus="yes">
        <source>%1 records</source>
        <translation>
            <numerusform>%1 रेकर्ड</numerusform>
            <numerusform>%1 रेकर्ड</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: one record, %2; entered is %3.</source>
        <translation>%1: एउटा रेकर्ड, %2; राखिएको %3।</translation>
    </message>
    <message>
        <source>%1: %2, the middle one %3, from %4 to %5; entered is %6.</source>
        <translation>%1: %2, बीचको %3, %4 देखि %5; राखिएको %6।</translation>
    </message>
    <message>
        <source>The plan is reckoned with the middle values of the records, not with the figures entered.</source>
        <translation>योजनाको हिसाब राखिएका अङ्कले होइन, रेकर्डका बीचका मानले गरिएको छ।</translation>
    </message>
    <message>
        <source>The plan is reckoned with the figures entered; the records stand beside them.</source>
        <translation>योजनाको हिसाब राखिएका अङ्कले गरिएको छ; रेकर्ड छेउमा देखाइएका छन्।</translation>
    </message>
    <message>
        <source>No records yet. Mix one batch and measure the face that it covers, or write down how many people took how many days for a piece of work: the order of cement and the dates then follow your own sand, soil and people.</source>
        <translation>अहिलेसम्म रेकर्ड छैन। एक घान मुछेर त्यसले ढाकेको सतह नाप्नुहोस्, वा कुनै काममा कति मान्छेलाई कति दिन लाग्यो, लेख्नुहोस्: त्यसपछि सिमेन्टको माग र मिति तपाईंकै बालुवा, माटो र मान्छेअनुसार आउँछन्।</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <translation>व्यास %1, गहिराइ %2</translation>
    </message>
    <message>
        <source>%1 of %2 years</source>
        <translation>%2 वर्षमध्ये %1 वर्ष</translation>
    </message>
    <message>
        <source>The cheapest size with water all year in %1: %2.</source>
        <translation>%1 वर्षभरि पानी हुने सबैभन्दा सस्तो साइज: %2।</translation>
    </message>
    <message>
        <source>The size with least cement and with water all year in %1: %2.</source>
        <translation>सबैभन्दा कम सिमेन्टमा %1 वर्षभरि पानी हुने साइज: %2।</translation>
    </message>
    <message>
        <source>No size within the limits gives water all year in %1. Widen the limits, find more water, or water smaller beds.</source>
        <translation>सीमाभित्रको कुनै साइजले %1 वर्षभरि पानी दिँदैन। सीमा फराकिलो पार्नुहोस्, थप पानी खोज्नुहोस्, वा साना ड्याङमा पानी हाल्नुहोस्।</translation>
    </message>
    <message>
        <source>Whether the water lasts is not known, so sizes are told apart by what they hold.</source>
        <translation>पानी पुग्छ कि पुग्दैन थाहा छैन, त्यसैले साइजलाई कति अट्छ भनेर छुट्याइएको छ।</translation>
    </message>
    <message>
        <source>The size that holds most within the limits: %1.</source>
        <translation>सीमाभित्र सबैभन्दा धेरै अट्ने साइज: %1।</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all cheaper ones: %1. Of the others there is always one that gives as much for less money.</source>
        <translation>हेर्न लायक साइज, हरेक आफूभन्दा सस्ता सबैभन्दा राम्रो: %1। बाँकीको साटो सधैं कम पैसामा त्यति नै दिने अर्को साइज छ।</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all that take less cement: %1. Of the others there is always one that gives as much for less cement.</source>
        <translation>हेर्न लायक साइज, हरेक आफूभन्दा कम सिमेन्ट लाग्ने सबैभन्दा राम्रो: %1। बाँकीको साटो सधैं कम सिमेन्टमा त्यति नै दिने अर्को साइज छ।</translation>
    </message>
    <message>
        <source>the lining does not fit into them (%1)</source>
        <translation>अस्तर अट्दैन (%1)</translation>
    </message>
    <message>
        <source>the pit is too deep to dig by hand (%1)</source>
        <translation>खाडल हातले खन्न धेरै गहिरो हुन्छ (%1)</translation>
    </message>
    <message>
        <source>the cut is higher than this soil bears (%1)</source>
        <translation>कटान यो माटोले थाम्नेभन्दा अग्लो हुन्छ (%1)</translation>
    </message>
    <message>
        <source>no platform can be made for them (%1)</source>
        <translation>ठाउँ सम्याउन मिल्दैन (%1)</translation>
    </message>
    <message>
        <source>a coat takes more people than can come (%1)</source>
        <translation>एउटा पत्रमा आउन सक्नेभन्दा बढी मान्छे चाहिन्छ (%1)</translation>
    </message>
    <message>
        <source>they take more cement than can be had (%1)</source>
        <translation>पाउन सकिनेभन्दा बढी सिमेन्ट लाग्छ (%1)</translation>
    </message>
    <message>
        <source>they cost more than is there (%1)</source>
        <translation>भएको पैसाभन्दा बढी लाग्छ (%1)</translation>
    </message>
    <message>
        <source>Sizes tried: %1; within all limits: %2.</source>
        <translation>जाँचिएका साइज: %1; सबै सीमाभित्रका: %2।</translation>
    </message>
    <message>
        <source>Sizes are left out because %1.</source>
        <translation>केही साइज छोडिएका छन्, किनभने %1।</translation>
    </message>
    <message>
        <source>No size was tried: the limits leave none, or the search was broken off.</source>
        <translation>कुनै साइज जाँचिएन: सीमाभित्र कुनै साइज पर्दैन, वा खोजी बीचमै रोकियो।</translation>
    </message>
    <message>
        <source>No size keeps to all limits; widen them.</source>
        <translation>सबै सीमाभित्र पर्ने साइज छैन; सीमा फराकिलो पार्नुहोस्।</translation>
    </message>
    <message>
        <source>kg/ft² per hour</source>
        <translation>kg/ft² प्रति घण्टा</translation>
    </message>
    <message>
        <source>min</source>
        <translation>मिनेट</translation>
    </message>
    <message>
        <source>kg/m² per hour</source>
        <translation>kg/m² प्रति घण्टा</translation>
    </message>
    <message>
        <source>With the first coat in the week from %1, as planned, the coats stay undisturbed %2, by %3 of weather.</source>
        <translation>योजनाअनुसार पहिलो पत्र %1बाट सुरु हुने हप्तामा लगाउँदा, %3को मौसमअनुसार पत्रमा बाधा नपर्ने: %2।</translation>
    </message>
    <message>
        <source>%1 or more of rain on the day of a coat or the day after (%2)</source>
        <translation>पत्र लगाएको दिन वा भोलिपल्ट %1 वा बढी वर्षा (%2)</translation>
    </message>
    <message>
        <source>a night of frost in the week after a coat (%1)</source>
        <translation>पत्र लगाएपछिको हप्तामा तुसारोको रात (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold for plaster (%1)</source>
        <translation>प्लास्टरका लागि धेरै गर्मी वा जाडो दिन (%1)</translation>
    </message>
    <message>
        <source>What disturbs them: %1.</source>
        <translation>बाधा पार्ने कुरा: %1।</translation>
    </message>
    <message>
        <source>No other week of the year is better.</source>
        <translation>वर्षको अर्को कुनै हप्ता योभन्दा राम्रो छैन।</translation>
    </message>
    <message>
        <source>The best week for the first coat begins on %1: undisturbed %2. For that the works start on %3.</source>
        <translation>पहिलो पत्रका लागि सबैभन्दा राम्रो हप्ता %1बाट सुरु हुन्छ: बाधा नपर्ने %2। त्यसका लागि निर्माण %3मा थालिन्छ।</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water.</source>
        <translation>%1: त्यस दिनको औसत मौसममा ताजा प्लास्टरबाट %2 पानी उड्छ।</translation>
    </message>
    <message>
        <source>This is a chance, not a forecast: look at the sky and hear the forecast before you call people together.</source>
        <translation>यो सम्भावना मात्र हो, मौसमको भविष्यवाणी होइन: मान्छे जम्मा गर्नुअघि आकाश हेर्नुहोस् र मौसमको खबर सुन्नुहोस्।</translation>
    </message>
    <message>
        <source>The weather of the place is not known, so nobody can say how often rain or frost disturbs the coats. Enter the climate with the water, by monthly means or a daily record.</source>
        <translation>यो ठाउँको मौसम थाहा छैन, त्यसैले वर्षा वा तुसारोले पत्रमा कति पटक बाधा पार्छ कसैले भन्न सक्दैन। पानीसँगै हावापानी राख्नुहोस्, मासिक औसत वा दैनिक रेकर्डबाट।</translation>
    </message>
    <message>
        <source>There is nothing to do yet.</source>
        <translation>अहिलेसम्म गर्ने काम छैन।</translation>
    </message>
    <message>
        <source>The works begin on %1 and end on %2: %3 in all, days of rest and of wetting counted.</source>
        <translation>निर्माण %1मा सुरु भएर %2मा सकिन्छ: बिदा र भिजाउने दिन पनि गनेर जम्मा %3।</translation>
    </message>
    <message>
        <source>The beds are planted from %1 on.</source>
        <translation>ड्याङमा %1 देखि रोपिन्छ।</translation>
    </message>
    <message>
        <source>coat %1 on %2</source>
        <translation>पत्र %1 (%2)</translation>
    </message>
    <message>
        <source>Call people together for %1.</source>
        <translation>मान्छे जम्मा गर्नुहोस्: %1।</translation>
    </message>
    <message>
        <source>Water must be let in by %1.</source>
        <translation>%1सम्म पानी भर्न थालिसक्नुपर्छ।</translation>
    </message>
    <message>
        <source>A day lost on one of these moves the end, for they leave no room: %1.</source>
        <translation>यीमध्ये कुनै काममा एक दिन खेर गए निर्माणको अन्त्य सर्छ, किनभने यी ढिलो गर्न मिल्दैन: %1।</translation>
    </message>
    <message>
        <source>Most people are needed on %1: %2, %3.</source>
        <translation>सबैभन्दा धेरै मान्छे %1मा चाहिन्छ: %2, %3।</translation>
    </message>
    <message>
        <source>All tasks together take %1; %2 of it is masons&apos; work.</source>
        <translation>सबै काममा जम्मा %1 लाग्छ; त्यसमध्ये %2 डकर्मीको काम हो।</translation>
    </message>
    <message>
        <source>For digging two rules of thumb are at hand: a published norm makes it %1, reports from practice, without a source, %2. Ask people who have dug in this soil.</source>
        <translation>खन्ने कामका दुई अन्दाजी नियम छन्: प्रकाशित दरले %1, र आधार नभएको चलनको भनाइले %2। यो माटोमा खनेका मान्छेलाई सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Sacks have to be wetted on days of rest too: %1. Agree beforehand who comes.</source>
        <translation>बिदाको दिन पनि जुट भिजाउनुपर्छ: %1। को आउने, पहिल्यै मिलाउनुहोस्।</translation>
    </message>
    <message>
        <source>Wetting takes most water on %1: %2.</source>
        <translation>भिजाउन सबैभन्दा धेरै पानी %1मा लाग्छ: %2।</translation>
    </message>
    <message>
        <source>%1 needs more hands that lay plaster with skill. Masons entered: %2; needed to put it on in one go: %3.</source>
        <translation>%1मा सिपालु भएर प्लास्टर लगाउने मान्छे थप चाहिन्छ। राखिएका डकर्मी: %2; एकै दिनमा लगाउन चाहिने: %3।</translation>
    </message>
    <message>
        <source>%1 takes %2 batches an hour to be on in time; the mixing places that there are bring %3. Mixing places needed: %4.</source>
        <translation>%1 समयमै लगाउन घण्टामा %2 घान चाहिन्छ; भएका मसला मुछ्ने ठाउँले %3 दिन्छन्। चाहिने मसला मुछ्ने ठाउँ: %4।</translation>
    </message>
    <message>
        <source>%1: the people there take %2 to spread a batch with a whole bag of cement; after %3 it stiffens.</source>
        <translation>%1: भएका मान्छेलाई पूरा एक बोरा सिमेन्टको घान लगाउन %2 लाग्छ; %3 पछि मसला जम्छ।</translation>
    </message>
    <message>
        <source>Mix half a bag at a time: that is on the wall in %1.</source>
        <translation>एक पटकमा आधा बोरा मुछ्नुहोस्: त्यो %1मा भित्तामा लाग्छ।</translation>
    </message>
    <message>
        <source>Half a bag at a time takes %1 and stiffens too: put more people on the coat, or mix still less at a time.</source>
        <translation>एक पटकमा आधा बोरा मुछ्दा पनि %1 लाग्छ र जम्छ: पत्रमा थप मान्छे लगाउनुहोस्, वा अझ थोरै-थोरै मुछ्नुहोस्।</translation>
    </message>
    <message>
        <source>On %1 more people are needed than there are: %2 needed, %3 there. Tasks lie on top of each other; move one of them, or ask for more people.</source>
        <translation>%1मा भएभन्दा बढी मान्छे चाहिन्छ: चाहिने %2, भएका %3। कामहरू एकै बेला परेका छन्; एउटा सार्नुहोस्, वा थप मान्छे बोलाउनुहोस्।</translation>
    </message>
    <message>
        <source>A wish is entered for a task that this plan does not have: %1. It is kept and not used.</source>
        <translation>यो योजनामा नभएको कामको चाहना राखिएको छ: %1। यसलाई राखिन्छ, तर चलाइँदैन।</translation>
    </message>
    <message>
        <source>What flows into the new tank is not known, so nobody can say when the water covers the walls. Enter the water let in each day, or the flow of the source.</source>
        <translation>नयाँ ट्याङ्कीमा कति पानी पस्छ थाहा छैन, त्यसैले पानीले भित्ता कहिले ढाक्छ कसैले भन्न सक्दैन। हरेक दिन हालिने पानी वा स्रोतको बहाव राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Filling is planned to start on %1, but should start by %2: plaster that falls dry cracks. Start earlier, or keep all walls under wet sacks until then.</source>
        <translation>पानी भर्न %1मा थाल्ने योजना छ, तर %2सम्म थाल्नुपर्छ: सुकेको प्लास्टर चर्किन्छ। पहिल्यै थाल्नुहोस्, वा त्यो बेलासम्म सबै भित्ता भिजेको जुटले छोपिराख्नुहोस्।</translation>
    </message>
    <message>
        <source>The first filling does not reach the overflow level of %1 within a year: the water stands at %2 then. Find more water, or make the tank smaller.</source>
        <translation>पहिलो पानी भराइ एक वर्षभित्र %1को ओभरफ्लोको सतहमा पुग्दैन: त्यति बेला पानी %2मा हुन्छ। थप पानी खोज्नुहोस्, वा ट्याङ्की सानो बनाउनुहोस्।</translation>
    </message>
    <message>
        <source>The water rises slowly: after the last coat has cured, bare wall must stay under wet sacks for %1 more, until %2. That takes up to %3.</source>
        <translation>पानी बिस्तारै बढ्छ: अन्तिम पत्रको क्योरिङ सकिएपछि पनि खुला भित्ता अझै %1, %2सम्म, भिजेको जुटले छोपिराख्नैपर्छ। त्यसमा %3सम्म पानी लाग्छ।</translation>
    </message>
    <message>
        <source>Or bring about %1 of water by hand, so that it covers the walls in time.</source>
        <translation>वा पानीले समयमै भित्ता ढाकोस् भनेर करिब %1 पानी हातले बोकेर ल्याउनुहोस्।</translation>
    </message>
    <message>
        <source>heavy rain (%1)</source>
        <translation>ठूलो पानी (%1)</translation>
    </message>
    <message>
        <source>frost (%1)</source>
        <translation>तुसारो (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold (%1)</source>
        <translation>धेरै गर्मी वा जाडो दिन (%1)</translation>
    </message>
    <message>
        <source>By the weather of the years reckoned, coats put on as planned stay undisturbed %1.</source>
        <translation>हिसाब गरिएका वर्षको मौसमअनुसार, योजनाअनुसार लगाएका पत्रमा बाधा नपर्ने: %1।</translation>
    </message>
    <message>
        <source>With the works begun on %1 the first coat falls into the best week of the year, and they stay undisturbed %2.</source>
        <translation>निर्माण %1मा थाल्दा पहिलो पत्र वर्षको सबैभन्दा राम्रो हप्तामा पर्छ, र पत्रमा बाधा नपर्ने: %2।</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water; from %3 on it may crack while it is soft. Begin at dawn, keep sun and wind off it, and lay wet sacks on as soon as it bears them.</source>
        <translation>%1: त्यस दिनको औसत मौसममा ताजा प्लास्टरबाट %2 पानी उड्छ; %3 देखि माथि भए गिलो छँदै चर्किन सक्छ। झिसमिसेमै थाल्नुहोस्, घाम र हावा छेक्नुहोस्, र प्लास्टरले थाम्ने हुनेबित्तिकै भिजेको जुटले छोप्नुहोस्।</translation>
    </message>
    <message>
        <source>The plan is reckoned with few records. %1: %2 so far; from %3 on their middle value says more.</source>
        <translation>योजनाको हिसाब थोरै रेकर्डले गरिएको छ। %1: अहिलेसम्म %2; %3 देखि बीचको मान बढी भरपर्दो हुन्छ।</translation>
    </message>
    <message>
        <source>%1: the records say %2, and the plan is reckoned with the %3 entered. Find out why, or let the records stand in its place.</source>
        <translation>%1: रेकर्डले %2 भन्छन्, तर योजनाको हिसाब राखिएको %3ले गरिएको छ। किन हो पत्ता लगाउनुहोस्, वा त्यसको सट्टा रेकर्ड चलाउनुहोस्।</translation>
    </message>
    <message>
        <source>Day on which the first task may begin; nothing begins before it.</source>
        <translation>पहिलो काम सुरु हुन सक्ने दिन; त्यसअघि केही सुरु हुँदैन।</translation>
    </message>
    <message>
        <source>People who dig, carry spoil and lay the stone bed each working day.</source>
        <translation>काम गर्ने हरेक दिन खन्ने, खनेको माटो बोक्ने र ढुङ्गाको सोलिङ बिछ्याउने मान्छे।</translation>
    </message>
    <message>
        <source>How many of the people on a coat lay plaster with skill; the others mix, carry and hand up.</source>
        <translation>पत्रमा लाग्ने मान्छेमध्ये सिपालु भएर प्लास्टर लगाउने कति जना; बाँकीले मुछ्छन्, बोक्छन् र हातहातमा दिन्छन्।</translation>
    </message>
    <message>
        <source>First day on which nobody works: a feast, a market, a funeral, a day kept for sowing.</source>
        <translation>कसैले काम नगर्ने पहिलो दिन: चाडपर्व, हाट, मलामी, रोपाइँका लागि राखिएको दिन।</translation>
    </message>
    <message>
        <source>How many days nobody works, the first one counted; wetting goes on.</source>
        <translation>कति दिन कसैले काम गर्दैन, पहिलो दिन पनि गनेर; भिजाउने काम चलिरहन्छ।</translation>
    </message>
    <message>
        <source>What the days are kept for, in a word; it is printed in the calendar.</source>
        <translation>यी दिन केका लागि हुन्, एक शब्दमा; पात्रोमा छापिन्छ।</translation>
    </message>
    <message>
        <source>Hours of work behind one person-day, breaks not counted.</source>
        <translation>एक जनदिनमा हुने कामका घण्टा, सुस्ताउने समय नगनी।</translation>
    </message>
    <message>
        <source>Hours of daylight and cool weather in which a coat is begun and finished, without a stop over night.</source>
        <translation>उज्यालो र चिसो मौसमका घण्टा, जसमा रातमा नरोकी एउटा पत्र सुरु गरेर सकाइन्छ।</translation>
    </message>
    <message>
        <source>Boards or floors on which mortar is mixed at the same time, each with its own mixers.</source>
        <translation>एकै बेला मसला मुछिने फल्याक वा भुइँ, हरेकका आफ्नै मुछ्ने मान्छे।</translation>
    </message>
    <message>
        <source>Time it with a watch: from filling the gauge boxes until the batch at one place is ready to carry.</source>
        <translation>घडीले नाप्नुहोस्: नाप्ने बाकस भर्न थालेदेखि एउटा ठाउँको घान बोक्न तयार भएसम्म।</translation>
    </message>
    <message>
        <source>Time from wetting the cement until the mortar stiffens; what is older is thrown away, not wetted again. Try it on a hot day.</source>
        <translation>सिमेन्ट भिजाएदेखि मसला जम्ने बेलासम्मको समय; त्योभन्दा पुरानो मसला फालिन्छ, फेरि पानी हालिँदैन। गर्मीको दिन जाँचेर हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>People who pour water over the sacks on each day of curing, rest days too; they are not counted among the diggers.</source>
        <translation>क्योरिङको हरेक दिन, बिदाको दिन पनि, जुटमा पानी हाल्ने मान्छे; खन्ने मान्छेमा गनिँदैनन्।</translation>
    </message>
    <message>
        <source>How often the sacks are wetted on a day of curing; in dry wind more often.</source>
        <translation>क्योरिङको दिनमा जुट कति पटक भिजाइन्छ; सुक्खा हावा चल्दा बढी पटक।</translation>
    </message>
    <message>
        <source>Measure it: level distance from the middle of the pit to the middle of the heap.</source>
        <translation>नाप्नुहोस्: खाडलको बीचदेखि थुप्रोको बीचसम्मको समथर दूरी।</translation>
    </message>
    <message>
        <source>How many times as long the low part of a deep pit takes, where ground is thrown up twice; 1 is the same.</source>
        <translation>माटो दुई पटक फाल्नुपर्ने गहिरो खाडलको तल्लो भाग खन्न कति गुणा समय लाग्छ; १ भनेको उत्तिकै।</translation>
    </message>
    <message>
        <source>Water that runs or is carried into the new tank each day; leave empty to take what the source gives in that month.</source>
        <translation>नयाँ ट्याङ्कीमा हरेक दिन बगेर आउने वा बोकेर हालिने पानी; त्यो महिना स्रोतले दिएजति लिन खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>The inflow is held back to this rise, so that young plaster is loaded slowly.</source>
        <translation>नयाँ प्लास्टरमा बिस्तारै भार परोस् भनेर पस्ने पानी यति मात्र बढ्ने गरी रोकिन्छ।</translation>
    </message>
    <message>
        <source>The walls are told in bands of this height: until when the sacks of each must stay wet.</source>
        <translation>भित्ता यति उचाइका पट्टीमा देखाइन्छन्: हरेकको जुट कहिलेसम्म भिजेको राख्ने।</translation>
    </message>
    <message>
        <source>Rain of one day from which on a fresh coat is washed or pitted; a rain gauge shows it.</source>
        <translation>एक दिनको यति वर्षादेखि ताजा पत्र बग्छ वा खाल्टाखुल्टी पर्छ; वर्षा नाप्ने भाँडोले देखाउँछ।</translation>
    </message>
    <message>
        <source>The task for which a day or a number of people is wished.</source>
        <translation>कुन कामका लागि दिन वा मान्छेको चाहना राखिएको हो।</translation>
    </message>
    <message>
        <source>The task begins on this day or later; leave empty if it may begin as soon as it can.</source>
        <translation>काम यो दिन वा त्यसपछि सुरु हुन्छ; सकेसम्म चाँडो सुरु हुन मिल्ने भए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>People on this task; leave empty for as many as usual.</source>
        <translation>यो काममा लाग्ने मान्छे; सधैंजति नै भए खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>The work for which the district has a rate of its own.</source>
        <translation>जिल्लाको आफ्नै दर भएको काम।</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when all goes well.</source>
        <translation>सबै राम्ररी चल्दा यो कामको एक एकाइमा लाग्ने जनदिन।</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work on a usual day; the plan is reckoned with it.</source>
        <translation>साधारण दिनमा यो कामको एक एकाइमा लाग्ने जनदिन; योजनाको हिसाब यसैले हुन्छ।</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when it goes badly.</source>
        <translation>राम्ररी नचल्दा यो कामको एक एकाइमा लाग्ने जनदिन।</translation>
    </message>
    <message>
        <source>Whether the middle values of what was measured stand in place of the figures entered.</source>
        <translation>राखिएका अङ्कको सट्टा नापिएका कुराका बीचका मान चलाउने कि नचलाउने।</translation>
    </message>
    <message>
        <source>The coat whose mix the trial batch had, counted from the dug face.</source>
        <translation>जाँच घानमा जुन पत्रको मिसावट थियो, खनेको सतहबाट गन्दा।</translation>
    </message>
    <message>
        <source>Cement in the trial batch, in bags and parts of a bag.</source>
        <translation>जाँच घानको सिमेन्ट, बोरा र बोराको भागमा।</translation>
    </message>
    <message>
        <source>Face that the trial batch covered: measure length and height of the patch.</source>
        <translation>जाँच घानले ढाकेको सतह: टालोको लम्बाइ र उचाइ नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>Thickness of the patch, square to the face: push a nail in at several places and take the middle.</source>
        <translation>टालोको मोटाइ, सतहसँग गुनियामा: धेरै ठाउँमा काँटी घोचेर बीचको नाप लिनुहोस्।</translation>
    </message>
    <message>
        <source>What was done and measured, here or on an earlier tank of the district.</source>
        <translation>के गरियो र नापियो, यहाँ वा जिल्लाको पहिलेको ट्याङ्कीमा।</translation>
    </message>
    <message>
        <source>How much of it: ground dug as it lay, fill as rammed, stone bed and mortar as placed in m³; spreading in m².</source>
        <translation>कति काम: खनेको माटो नखनेको नापमा, पुराइ खाँदेको नापमा, ढुङ्गाको सोलिङ र मसला लगाएको नापमा m³ मा; प्लास्टर लगाउने m² मा।</translation>
    </message>
    <message>
        <source>People times days that it took, helpers counted; half a day of four people is 2.</source>
        <translation>मान्छे गुणा लागेका दिन, सहयोगी पनि गनेर; चार जनाको आधा दिन भनेको २।</translation>
    </message>
    <message>
        <source>First day of the works</source>
        <translation>निर्माणको पहिलो दिन</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>तीमध्ये डकर्मी</translation>
    </message>
    <message>
        <source>Closed from</source>
        <translation>बन्द सुरु</translation>
    </message>
    <message>
        <source>Closed for</source>
        <translation>कति दिन बन्द</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>किन</translation>
    </message>
    <message>
        <source>Hours of a person-day</source>
        <translation>एक जनदिनका घण्टा</translation>
    </message>
    <message>
        <source>Hours to put on a coat</source>
        <translation>एउटा पत्र लगाउने घण्टा</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>मसला मुछ्ने ठाउँ</translation>
    </message>
    <message>
        <source>Mixing one batch takes</source>
        <translation>एक घान मुछ्ने समय</translation>
    </message>
    <message>
        <source>A batch must be on the wall within</source>
        <translation>घान लगाइसक्ने समय</translation>
    </message>
    <message>
        <source>People who keep the sacks wet</source>
        <translation>जुट भिजाइराख्ने मान्छे</translation>
    </message>
    <message>
        <source>Wettings a day</source>
        <translation>दिनमा भिजाउने पटक</translation>
    </message>
    <message>
        <source>Way to the spoil heap</source>
        <translation>माटोको थुप्रोसम्मको बाटो</translation>
    </message>
    <message>
        <source>Digging low in the pit takes, times</source>
        <translation>खाडलको तल्लो भाग खन्ने, गुणा</translation>
    </message>
    <message>
        <source>Water let in for the first filling</source>
        <translation>पहिलो भराइमा हालिने पानी</translation>
    </message>
    <message>
        <source>Water may rise in a day by</source>
        <translation>दिनमा पानी बढ्न दिने</translation>
    </message>
    <message>
        <source>Height of a band of wall</source>
        <translation>भित्ताको पट्टीको उचाइ</translation>
    </message>
    <message>
        <source>Heavy rain, in a day</source>
        <translation>एक दिनको ठूलो पानी</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>काम</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>यसअघि होइन</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>मान्छेको चाहना</translation>
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
        <translation>साधारण</translation>
    </message>
    <message>
        <source>High</source>
        <translation>बढी</translation>
    </message>
    <message>
        <source>Reckon with the records</source>
        <translation>रेकर्डले हिसाब गर्ने</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>पत्र</translation>
    </message>
    <message>
        <source>Face covered</source>
        <translation>ढाकेको सतह</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>गरेको काम</translation>
    </message>
    <message>
        <source>It took</source>
        <translation>लागेको</translation>
    </message>
    <message>
        <source>digging, as reported from practice</source>
        <translation>खन्ने काम, चलनको भनाइअनुसार</translation>
    </message>
    <message>
        <source>digging, by the district&apos;s norm</source>
        <translation>खन्ने काम, जिल्लाको दरअनुसार</translation>
    </message>
    <message>
        <source>clearing the ground</source>
        <translation>जमिन सफा गर्ने</translation>
    </message>
    <message>
        <source>setting out</source>
        <translation>लेआउट गर्ने</translation>
    </message>
    <message>
        <source>stripping topsoil</source>
        <translation>मलिलो माटो झिक्ने</translation>
    </message>
    <message>
        <source>filling and ramming</source>
        <translation>पुर्ने र खाँद्ने</translation>
    </message>
    <message>
        <source>carrying spoil up to 10 m</source>
        <translation>खनेको माटो १० m सम्म लैजाने</translation>
    </message>
    <message>
        <source>carrying spoil up to 20 m</source>
        <translation>खनेको माटो २० m सम्म लैजाने</translation>
    </message>
    <message>
        <source>carrying spoil up to 50 m</source>
        <translation>खनेको माटो ५० m सम्म लैजाने</translation>
    </message>
    <message>
        <source>trimming walls and floor</source>
        <translation>भित्ता र पिँध ताछेर मिलाउने</translation>
    </message>
    <message>
        <source>laying pipe</source>
        <translation>पाइप बिछ्याउने</translation>
    </message>
    <message>
        <source>plastering one coat</source>
        <translation>एक पत्र प्लास्टर गर्ने</translation>
    </message>
    <message>
        <source>keeping sacks wet</source>
        <translation>जुट भिजाइराख्ने</translation>
    </message>
    <message>
        <source>watching the first filling</source>
        <translation>पहिलो पानी भराइ हेर्ने</translation>
    </message>
    <message>
        <source>testing for leaks</source>
        <translation>चुहावट जाँच्ने</translation>
    </message>
    <message>
        <source>building the fence</source>
        <translation>बार बनाउने</translation>
    </message>
    <message>
        <source>building the silt trap</source>
        <translation>थेग्रो कुण्ड बनाउने</translation>
    </message>
    <message>
        <source>building the overflow</source>
        <translation>ओभरफ्लो बनाउने</translation>
    </message>
    <message>
        <source>planting the beds</source>
        <translation>ड्याङमा रोप्ने</translation>
    </message>
    <message>
        <source>Ramming fill</source>
        <translation>पुराइ खाँद्ने</translation>
    </message>
    <message>
        <source>Spreading plaster</source>
        <translation>प्लास्टर लगाउने</translation>
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
        <translation>चौथाइ दिन</translation>
    </message>
    <message>
        <source>half a day</source>
        <translation>आधा दिन</translation>
    </message>
    <message>
        <source>three quarters of a day</source>
        <translation>तीन चौथाइ दिन</translation>
    </message>
    <message>
        <source>digging, %1</source>
        <translation>खन्ने काम, %1</translation>
    </message>
    <message>
        <source>every time</source>
        <translation>हरेक पटक</translation>
    </message>
    <message numerus="yes">
        <source>%1 times in %2</source>
        <translation>
            <numerusform>%2 पटकमा %1 पटक</numerusform>
            <numerusform>%2 पटकमा %1 पटक</numerusform>
        </translation>
    </message>
    <message>
        <source>once in %1 times</source>
        <translation>%1 पटकमा एक पटक</translation>
    </message>
    <message>
        <source>less than once in %1 times</source>
        <translation>%1 पटकमा एक पटकभन्दा कम</translation>
    </message>
    <message>
        <source>never</source>
        <translation>कहिल्यै होइन</translation>
    </message>
    <message>
        <source>Not counted, for what they cost or how much of them is needed is not known: %1. What is free stands in the price list with a price of 0.</source>
        <translation>गनिएको छैन, किनभने यिनको मूल्य वा कति चाहिन्छ थाहा छैन: %1। सित्तैमा पाइने कुरा मूल्य सूचीमा ० मूल्य राखेर लेखिन्छ।</translation>
    </message>
    <message>
        <source>Not compared, for their price or their digging is not known: %1.</source>
        <translation>दाँजिएको छैन, किनभने यिनको मूल्य वा खन्ने काम थाहा छैन: %1।</translation>
    </message>
    <message>
        <source>No lining can be compared yet: enter what one costs, how long it lasts and what its upkeep takes. All but the moulded tank need the works, too, and what a labourer costs, for their digging.</source>
        <translation>अहिलेसम्म कुनै अस्तर दाँज्न मिल्दैन: एउटाको लागत, कति टिक्छ र मर्मत-सम्भारमा कति लाग्छ, राख्नुहोस्। तयारी ट्याङ्कीबाहेक सबैलाई खन्नका लागि निर्माणको विवरण र ज्यामीको ज्याला पनि चाहिन्छ।</translation>
    </message>
    <message>
        <source>Only one lining can be reckoned; enter what the others cost to compare them.</source>
        <translation>एउटा अस्तरको मात्र हिसाब गर्न सकियो; दाँज्न अरूको लागत राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Compared is the lining with the digging that it needs. What every tank needs, whatever its lining, is left out of all of them: pipes, fence, silt trap, overflow, clearing, filling and other things of your own.</source>
        <translation>अस्तरलाई त्यसलाई चाहिने खन्ने कामसहित दाँजिएको छ। अस्तर जे भए पनि हरेक ट्याङ्कीलाई चाहिने कुरा कसैमा जोडिएका छैनन्: पाइप, बार, थेग्रो कुण्ड, ओभरफ्लो, सफा गर्ने, पानी भर्ने र तपाईंका अरू आफ्नै कुरा।</translation>
    </message>
    <message>
        <source>is not part of this project; its rates were left out</source>
        <translation>यो परियोजनाको होइन; यसका दर छोडिए</translation>
    </message>
    <message>
        <source>%1 waits %2 for the next coat after its curing. Keep it under wet sacks all that time: the next coat does not hold on dry plaster.</source>
        <translation>%1ले क्योरिङपछि अर्को पत्र %2 पर्खन्छ। त्यति बेलाभरि भिजेको जुटले छोपिराख्नुहोस्: सुक्खा प्लास्टरमा अर्को पत्र टाँसिँदैन।</translation>
    </message>
    <message>
        <source>Nobody is entered who keeps the sacks wet. Plaster that dries early cracks and leaks: agree who comes, rest days too.</source>
        <translation>जुट भिजाइराख्ने कोही राखिएको छैन। चाँडै सुकेको प्लास्टर चर्किन्छ र चुहिन्छ: को आउने, बिदाको दिन पनि, मिलाउनुहोस्।</translation>
    </message>
    <message>
        <source>%1: the middle of the records is %2, outside of what can be (%3 to %4). It is not used; look at the records again.</source>
        <translation>%1: रेकर्डको बीचको मान %2, हुन सक्ने (%3 देखि %4) भन्दा बाहिर छ। यो चलाइँदैन; रेकर्ड फेरि हेर्नुहोस्।</translation>
    </message>
    <message>
        <source>Only digging in the soil of this site counts. Left empty: it was such soil. Record the first 1.5 m of depth; what lies deeper is reckoned slower.</source>
        <translation>यही ठाउँको माटोमा खनेको मात्र गनिन्छ। खाली छोडे: यस्तै माटो थियो। पहिलो १.५ m गहिराइको रेकर्ड राख्नुहोस्; त्योभन्दा तलको काम ढिलो हिसाब गरिन्छ।</translation>
    </message>
    <message>
        <source>Soil dug</source>
        <translation>खनिएको माटोको किसिम</translation>
    </message>
    <message>
        <source>Draft translation, to be checked by a speaker.</source>
        <translation>अनुवादको मस्यौदा, भाषा बोल्नेले जाँच्न बाँकी।</translation>
    </message>
    <message>
        <source>Pegs and strings</source>
        <translation>किला र डोरी</translation>
    </message>
    <message>
        <source>Wet sacks</source>
        <translation>भिजेको जुट</translation>
    </message>
    <message>
        <source>ground as it lies</source>
        <translation>नखनेको जमिन</translation>
    </message>
    <message>
        <source>pegs and strings</source>
        <translation>किला र डोरी</translation>
    </message>
    <message>
        <source>making the platform</source>
        <translation>ठाउँ सम्याउने</translation>
    </message>
    <message>
        <source>pit dug and trimmed</source>
        <translation>खाडल खनेर ताछिएको</translation>
    </message>
    <message>
        <source>stone bed</source>
        <translation>ढुङ्गाको सोलिङ</translation>
    </message>
    <message>
        <source>first filling</source>
        <translation>पहिलो पानी भराइ</translation>
    </message>
    <message>
        <source>full tank</source>
        <translation>भरिएको ट्याङ्की</translation>
    </message>
    <message>
        <source>field notes</source>
        <translation>फिल्ड टिपोट</translation>
    </message>
    <message>
        <source>coat %1 put on</source>
        <translation>पत्र %1 लगाइएको</translation>
    </message>
    <message>
        <source>coat %1 under wet sacks</source>
        <translation>पत्र %1 भिजेको जुटमुनि</translation>
    </message>
    <message>
        <source>%1: %2 sand, %3 silt, %4 clay; texture: %5.</source>
        <translation>%1: बालुवा %2, पाँगो माटो %3, चिम्टाइलो माटो %4; बनावट: %5।</translation>
    </message>
    <message>
        <source>Jar %1</source>
        <translation>सिसी %1</translation>
    </message>
    <message>
        <source>The jar shows %1 clay.</source>
        <translation>सिसीले चिम्टाइलो माटो %1 देखाउँछ।</translation>
    </message>
    <message>
        <source>The jars show %1 clay in the middle of %2.</source>
        <translation>सिसीहरूले चिम्टाइलो माटो %1 देखाउँछन् (%2को बीचको मान)।</translation>
    </message>
    <message>
        <source>%1: %2 by ball and ribbon.</source>
        <translation>%1: डल्लो र रिबनले %2।</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>नमुना %1</translation>
    </message>
    <message>
        <source>For digging this program takes such soil as: %1.</source>
        <translation>खन्ने कामका लागि कार्यक्रमले यस्तो माटोलाई यसरी लिन्छ: %1।</translation>
    </message>
    <message>
        <source>There is clay or clay loam. The hand does not tell whether it is stiff: dig a test pit, press a thumb into its wall, and write down what the layer is.</source>
        <translation>चिम्टाइलो माटो वा चिम्टाइलो दोमट छ। यो कडा हो कि होइन हातले थाहा हुँदैन: जाँच खाडल खन्नुहोस्, त्यसको भित्तामा बुढी औंला थिच्नुहोस्, र तह के हो लेख्नुहोस्।</translation>
    </message>
    <message>
        <source>No layer down to the floor of the pit (%1) has its soil written down.</source>
        <translation>खाडलको पिँध (%1)सम्मको कुनै तहको माटो लेखिएको छैन।</translation>
    </message>
    <message>
        <source>The weakest soil down to the floor of the pit (%1) is: %2.</source>
        <translation>खाडलको पिँध (%1)सम्मको सबैभन्दा कमजोर माटो: %2।</translation>
    </message>
    <message>
        <source>No water came in down to %1. Look again after the rains, or ask how high the nearest well stands then.</source>
        <translation>%1सम्म पानी आएन। वर्षापछि फेरि हेर्नुहोस्, वा नजिकको कुवामा त्यतिबेला पानी कति माथि हुन्छ सोध्नुहोस्।</translation>
    </message>
    <message>
        <source>Water came in at %1 below the ground, and it may stand higher after the rains.</source>
        <translation>जमिनभन्दा %1 तल पानी आयो, र वर्षापछि अझ माथि आउन सक्छ।</translation>
    </message>
    <message>
        <source>The ground has no fall over %1.</source>
        <translation>%1 दूरीमा जमिनको ढाल छैन।</translation>
    </message>
    <message>
        <source>The ground rises %1 over %2: the line was walked uphill. Walk it straight down the fall, or turn the signs of the drops.</source>
        <translation>%2 दूरीमा जमिन %1 उक्लिन्छ: रेखा उकालोतिर नापिएको रहेछ। सिधै ओरालो नाप्नुहोस्, वा उचाइ फरकका चिह्न (+/-) उल्टाउनुहोस्।</translation>
    </message>
    <message>
        <source>The slope falls %1 over %2.</source>
        <translation>%2 दूरीमा जमिन %1 ओर्लिन्छ।</translation>
    </message>
    <message>
        <source>No jar read yet. Fill a straight jar a third with soil, the rest with water and a pinch of salt, shake it long, put it down, and measure the layers when they have settled.</source>
        <translation>सिसी अझै नापिएको छैन। सोझो सिसीमा एक तिहाइ माटो, बाँकी पानी र एक चिम्टी नुन हाल्नुहोस्, धेरै बेर हल्लाउनुहोस्, राख्नुहोस्, र थिग्रिएपछि तह नाप्नुहोस्।</translation>
    </message>
    <message>
        <source>These are shares of the height, not of the weight: clay settles loosely, so by weight there is less of it.</source>
        <translation>यी उचाइका भाग हुन्, तौलका होइनन्: चिम्टाइलो माटो खुकुलो थिग्रिन्छ, त्यसैले तौलमा योभन्दा कम हुन्छ।</translation>
    </message>
    <message>
        <source>No soil felt yet. Knead a moist handful, squeeze it to a ball, push it to a ribbon, and write down what happens.</source>
        <translation>माटो अझै छामिएको छैन। ओसिलो एक मुठी माटो मुछ्नुहोस्, थिचेर डल्लो बनाउनुहोस्, धकेलेर रिबन बनाउनुहोस्, र के हुन्छ लेख्नुहोस्।</translation>
    </message>
    <message>
        <source>No test pit yet. Dig one beside the tank as deep as its pit (%1), and write down each layer and where water comes in. A pit can cave in: step its sides back, and never work in it alone.</source>
        <translation>जाँच खाडल अझै छैन। ट्याङ्कीको छेउमा ट्याङ्कीको खाडल (%1) जत्तिकै गहिरो एउटा खन्नुहोस्, र हरेक तह र पानी आउने ठाउँ लेख्नुहोस्। खाडलको भित्ता भत्किन सक्छ: भित्ता सिँढी पारेर बाहिर फराकिलो पार्नुहोस्, र त्यसमा कहिल्यै एक्लै काम नगर्नुहोस्।</translation>
    </message>
    <message>
        <source>Layers without a soil: %1. Until they are known the pits do not count for the soil of the site.</source>
        <translation>माटो नलेखिएका तह: %1। थाहा नभएसम्म यी खाडल ठाउँको माटोका लागि गनिँदैनन्।</translation>
    </message>
    <message>
        <source>The deepest test pit ends at %1, above the floor of the tank&apos;s pit: what lies below is not known.</source>
        <translation>सबैभन्दा गहिरो जाँच खाडल %1 मा टुङ्गिन्छ, ट्याङ्कीको खाडलको पिँधभन्दा माथि: त्यसमुनि के छ थाहा छैन।</translation>
    </message>
    <message>
        <source>No slope taken yet. Hold a hose full of water along the fall, measure the level distance and both water marks, and go on from the lower staff.</source>
        <translation>ढाल अझै नापिएको छैन। पानी भरेको पाइप ढालतिर समात्नुहोस्, तेर्सो दूरी र दुवैतिर पानीको चिनो नाप्नुहोस्, र तल्लो लट्ठीबाट अगाडि बढ्नुहोस्।</translation>
    </message>
    <message>
        <source>Setting %1: %2.</source>
        <translation>पटक %1: %2।</translation>
    </message>
    <message>
        <source>The ground was surveyed; its spot heights stay in place of this fall.</source>
        <translation>जमिनको नापी भएको छ; यस ढालको सट्टा त्यसका उचाइका बिन्दु नै रहन्छन्।</translation>
    </message>
    <message>
        <source>A test pit shows a weaker soil (%1) above the floor of the pit than the one entered (%2). The weakest layer decides how steep a cut may stand: enter that one.</source>
        <translation>जाँच खाडलले ट्याङ्कीको खाडलको पिँधभन्दा माथि, राखिएको (%2) भन्दा कमजोर माटो (%1) देखाउँछ। कति ठाडो काट्न मिल्छ, सबैभन्दा कमजोर तहले तोक्छ: त्यही राख्नुहोस्।</translation>
    </message>
    <message>
        <source>Water came into a test pit %1 below the ground; entered is %2. Enter the highest level that was seen, for it is the one that lifts the floor.</source>
        <translation>जाँच खाडलमा जमिनभन्दा %1 तल पानी आयो; राखिएको %2 छ। देखिएको सबैभन्दा माथिको सतह राख्नुहोस्, किनकि भुइँ उचाल्ने त्यही हो।</translation>
    </message>
    <message>
        <source>Where the soil in the jar was taken, and how deep; take it from where the soil for the mix will be dug.</source>
        <translation>सिसीको माटो कहाँबाट र कति गहिरोबाट लिइएको; मिसावटको माटो खनिने ठाउँबाटै लिनुहोस्।</translation>
    </message>
    <message>
        <source>Height of the lowest layer, marked one minute after the jar was put down: grains that the eye can see.</source>
        <translation>सबैभन्दा तल्लो तहको उचाइ, सिसी राखेको एक मिनेटपछि चिनो लगाएको: आँखाले देखिने दाना।</translation>
    </message>
    <message>
        <source>Height of the layer over the sand alone, marked after two hours; not from the bottom of the jar.</source>
        <translation>बालुवामाथिको तह मात्रको उचाइ, दुई घण्टापछि चिनो लगाएको; सिसीको पिँधदेखि होइन।</translation>
    </message>
    <message>
        <source>Height of the top layer alone, when the water over it is clear; that may take a day or more.</source>
        <translation>माथिल्लो तह मात्रको उचाइ, त्यसमाथिको पानी सङ्लिएपछि; एक दिन वा बढी लाग्न सक्छ।</translation>
    </message>
    <message>
        <source>Where the soil in the hand was taken, and how deep.</source>
        <translation>हातको माटो कहाँबाट र कति गहिरोबाट लिइएको।</translation>
    </message>
    <message>
        <source>Moisten a handful, knead it like dough, squeeze it and open the hand. Left empty: not tried yet.</source>
        <translation>एक मुठी माटो भिजाउनुहोस्, पिठो मुछेजस्तै मुछ्नुहोस्, थिच्नुहोस् र हात खोल्नुहोस्। खाली छोडेको: अझै गरिएको छैन।</translation>
    </message>
    <message>
        <source>Push the ball out between thumb and finger to a flat ribbon and measure it when it breaks by its own weight; 0 when none forms.</source>
        <translation>डल्लोलाई बुढी औंला र अर्को औंलाबीच धकेलेर चेप्टो रिबन बनाउनुहोस् र आफ्नै तौलले टुट्दा नाप्नुहोस्; रिबन नबने ०।</translation>
    </message>
    <message>
        <source>Rub a pinch with much water in the palm: grit like sugar, smooth like flour, or neither.</source>
        <translation>एक चिम्टी माटो धेरै पानीसँग हत्केलामा घोट्नुहोस्: चिनीजस्तो खस्रो, पिठोजस्तो मसिनो, वा दुवै होइन।</translation>
    </message>
    <message>
        <source>Name of the test pit, the same in each of its layers. Nobody climbs into a pit deeper than the waist that is not stepped back or shored.</source>
        <translation>जाँच खाडलको नाम, त्यसका हरेक तहमा एउटै। कम्मरभन्दा गहिरो खाडलमा, भित्ता सिँढी पारिएको वा टेको दिइएको छैन भने, कोही पनि नओर्लने।</translation>
    </message>
    <message>
        <source>Depth of the top of the layer below the ground; 0 for the first.</source>
        <translation>जमिनभन्दा तहको माथिल्लो छेउको गहिराइ; पहिलो तहमा ०।</translation>
    </message>
    <message>
        <source>Depth of the bottom of the layer below the ground; of the last layer, of the test pit.</source>
        <translation>जमिनभन्दा तहको तल्लो छेउको गहिराइ; अन्तिम तहको भए जाँच खाडलको गहिराइ।</translation>
    </message>
    <message>
        <source>What the layer is. Clay is stiff when the thumb dents it but goes in only with great effort; leave the soil empty when nobody tried.</source>
        <translation>तह के हो। बुढी औंलाले दबिने तर धेरै बलले मात्र पस्ने चिम्टाइलो माटो कडा हो; कसैले जाँचेको छैन भने माटो खाली छोड्नुहोस्।</translation>
    </message>
    <message>
        <source>Whether water stood or seeped in there; look again on the next day. It stands highest after the rains.</source>
        <translation>त्यहाँ पानी जमेको वा रसाएको थियो कि थिएन; भोलिपल्ट फेरि हेर्नुहोस्। वर्षापछि पानी सबैभन्दा माथि हुन्छ।</translation>
    </message>
    <message>
        <source>Distance of one setting of the hose, held level, straight down the fall; 0: not measured yet.</source>
        <translation>लेभल पाइपको एक पटकको दूरी, तेर्सो नापेर, सिधै ओरालोतिर; ०: अझै नापिएको छैन।</translation>
    </message>
    <message>
        <source>Water mark on the lower staff less that on the upper one; less than 0 where the ground rises.</source>
        <translation>तल्लो लट्ठीको पानीको चिनोबाट माथिल्लो लट्ठीको चिनो घटाएको; जमिन उक्लिने ठाउँमा ० भन्दा कम।</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>लिइएको ठाउँ</translation>
    </message>
    <message>
        <source>Silt</source>
        <translation>पाँगो माटो</translation>
    </message>
    <message>
        <source>Clay</source>
        <translation>चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>The ball</source>
        <translation>डल्लो</translation>
    </message>
    <message>
        <source>The ribbon breaks at</source>
        <translation>रिबन टुट्ने लम्बाइ</translation>
    </message>
    <message>
        <source>Rubbed wet it is</source>
        <translation>भिजाएर घोट्दा</translation>
    </message>
    <message>
        <source>Test pit</source>
        <translation>जाँच खाडल</translation>
    </message>
    <message>
        <source>From</source>
        <translation>देखि</translation>
    </message>
    <message>
        <source>To</source>
        <translation>सम्म</translation>
    </message>
    <message>
        <source>Water came in</source>
        <translation>पानी आयो</translation>
    </message>
    <message>
        <source>Level distance</source>
        <translation>तेर्सो दूरी</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>उचाइ फरक</translation>
    </message>
    <message>
        <source>falls apart</source>
        <translation>फुट्छ</translation>
    </message>
    <message>
        <source>holds together</source>
        <translation>फुट्दैन</translation>
    </message>
    <message>
        <source>gritty</source>
        <translation>खस्रो</translation>
    </message>
    <message>
        <source>neither gritty nor smooth</source>
        <translation>खस्रो पनि मसिनो पनि होइन</translation>
    </message>
    <message>
        <source>smooth like flour</source>
        <translation>पिठोजस्तो मसिनो</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>बालुवा</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>दोमटे बालुवा</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>बलौटे दोमट</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>दोमट माटो</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>पाँगो दोमट</translation>
    </message>
    <message>
        <source>silt</source>
        <translation>पाँगो माटो</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>बलौटे चिम्टाइलो दोमट</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>चिम्टाइलो दोमट</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>पाँगो चिम्टाइलो दोमट</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>बलौटे चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>पाँगो चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>%1: %2 in place of %3.</source>
        <translation>%1: %3को सट्टा %2।</translation>
    </message>
    <message>
        <source>Nothing noted yet. Type in what stands on the paper forms, page by page; what follows from it is shown at once and changes nothing until you put it in place.</source>
        <translation>अझै केही टिपिएको छैन। कागजका फारममा भएको कुरा पानैपिच्छे राख्नुहोस्; त्यसबाट के निस्कन्छ तुरुन्तै देखिन्छ, र तपाईंले लागू नगरुन्जेल केही बदलिँदैन।</translation>
    </message>
    <message>
        <source>The notes change nothing of what is entered for the site.</source>
        <translation>टिपोटले ठाउँका लागि राखिएको केही पनि बदल्दैन।</translation>
    </message>
    <message>
        <source>Putting the notes in place would change:</source>
        <translation>टिपोट लागू गर्दा यी बदलिन्छन्:</translation>
    </message>
    <message>
        <source>Field notes</source>
        <translation>फिल्ड टिपोट</translation>
    </message>
    <message>
        <source>Jars of soil</source>
        <translation>माटोका सिसी</translation>
    </message>
    <message>
        <source>Balls and ribbons</source>
        <translation>डल्लो र रिबन</translation>
    </message>
    <message>
        <source>Layers of test pits</source>
        <translation>जाँच खाडलका तह</translation>
    </message>
    <message>
        <source>Settings of the hose level</source>
        <translation>लेभल पाइपले नापेका पटक</translation>
    </message>
    <message>
        <source>Ball and ribbon %1</source>
        <translation>डल्लो र रिबन %1</translation>
    </message>
    <message>
        <source>Layer %1</source>
        <translation>तह %1</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>पटक %1</translation>
    </message>
    <message>
        <source>is not deeper than the top of the layer; measure both down from the ground</source>
        <translation>तहको माथिल्लो छेउभन्दा गहिरो छैन; दुवै जमिनदेखि तल नाप्नुहोस्</translation>
    </message>
    <message>
        <source>does not begin with a mark that this program knows</source>
        <translation>यो कार्यक्रमले चिन्ने चिनोबाट सुरु हुँदैन</translation>
    </message>
    <message>
        <source>was not copied as it stands, for its last four signs do not fit the rest; compare it sign by sign</source>
        <translation>जस्ताको तस्तै सारिएको छैन, किनभने अन्तिम चार अक्षर बाँकीसँग मिल्दैनन्; एक-एक अक्षर दाँज्नुहोस्</translation>
    </message>
    <message>
        <source>holds a part that this program does not know; compare it sign by sign</source>
        <translation>यो कार्यक्रमले नचिन्ने भाग छ; एक-एक अक्षर दाँज्नुहोस्</translation>
    </message>
    <message>
        <source>The design on one line</source>
        <translation>डिजाइन एकै लाइनमा</translation>
    </message>
    <message>
        <source>%1 values, %2 to %3</source>
        <translation>%1 मान, %2 देखि %3</translation>
    </message>
    <message>
        <source>%1; all others 0</source>
        <translation>%1; अरू सबै ०</translation>
    </message>
    <message>
        <source>on the map</source>
        <translation>चित्रमा</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>राखिएअनुसार</translation>
    </message>
    <message>
        <source>%1: as it stands there</source>
        <translation>%1: त्यहाँ जस्तो छ</translation>
    </message>
    <message>
        <source>%1: as entered</source>
        <translation>%1: राखिएअनुसार</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>ट्याङ्की खाली</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>ट्याङ्की भरि र चुहिँदो</translation>
    </message>
    <message>
        <source>The tank</source>
        <translation>ट्याङ्की</translation>
    </message>
    <message>
        <source>Pit, platform and setting out</source>
        <translation>खाडल, सम्याएको ठाउँ र लेआउट</translation>
    </message>
    <message>
        <source>Coats, materials and batches</source>
        <translation>पत्र, सामग्री र घान</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>कामदार</translation>
    </message>
    <message>
        <source>Dates and people by day</source>
        <translation>मिति र दिनदिनका मान्छे</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>ठाउँमै नापिएको</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>पत्र एकै दिनमा</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>पहिलो पानी भराइ</translation>
    </message>
    <message>
        <source>Weather window</source>
        <translation>मौसम मिल्ने हप्ता</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>पानी पुग्छ कि</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>स्रोतबाट</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>बारीसम्म</translation>
    </message>
    <message>
        <source>Emptying</source>
        <translation>खाली गर्ने</translation>
    </message>
    <message>
        <source>Ground, platform and spoil</source>
        <translation>जमिन, सम्याएको ठाउँ र खनेको माटो</translation>
    </message>
    <message>
        <source>Stability</source>
        <translation>स्थिरता</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>खर्च हिसाब र भाग</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>अस्तर</translation>
    </message>
    <message>
        <source>Coats in order</source>
        <translation>पत्र क्रमैले</translation>
    </message>
    <message>
        <source>from the earth inward</source>
        <translation>माटोतिरबाट भित्रतिर</translation>
    </message>
    <message>
        <source>Work of each coat</source>
        <translation>हरेक पत्रको काम</translation>
    </message>
    <message>
        <source>face × spreading + plaster × mixing</source>
        <translation>सतह × लगाउने दर + प्लास्टर × मुछ्ने दर</translation>
    </message>
    <message>
        <source>In which a coat must be on</source>
        <translation>पत्र लगाइसक्नुपर्ने समय</translation>
    </message>
    <message>
        <source>People on each coat</source>
        <translation>हरेक पत्रमा लाग्ने मान्छे</translation>
    </message>
    <message>
        <source>as entered, or as wished for the coat</source>
        <translation>राखिएअनुसार, वा पत्रको चाहनाअनुसार</translation>
    </message>
    <message>
        <source>People needed</source>
        <translation>चाहिने मान्छे</translation>
    </message>
    <message>
        <source>work × hours of a person-day ÷ hours for the coat, rounded up</source>
        <translation>काम × जनदिनको घण्टा ÷ पत्रको घण्टा, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Masons on each coat</source>
        <translation>हरेक पत्रमा लाग्ने डकर्मी</translation>
    </message>
    <message>
        <source>as entered, no more than people on the coat</source>
        <translation>राखिएअनुसार, पत्रमा लाग्ने मान्छेभन्दा बढी होइन</translation>
    </message>
    <message>
        <source>Masons needed</source>
        <translation>चाहिने डकर्मी</translation>
    </message>
    <message>
        <source>people needed × 0.074 ÷ 0.260, rounded up</source>
        <translation>चाहिने मान्छे × 0.074 ÷ 0.260, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>पूरा बोराका घान</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield of a batch, rounded up</source>
        <translation>मुछ्ने प्लास्टर ÷ एक घानबाट निस्कने, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Batches an hour needed</source>
        <translation>घण्टामा चाहिने घान</translation>
    </message>
    <message>
        <source>batches ÷ hours for the coat</source>
        <translation>घान ÷ पत्रको घण्टा</translation>
    </message>
    <message>
        <source>Batches an hour possible</source>
        <translation>घण्टामा सकिने घान</translation>
    </message>
    <message>
        <source>mixing places × 60 ÷ minutes for a batch</source>
        <translation>मसला मुछ्ने ठाउँ × 60 ÷ एक घानको मिनेट</translation>
    </message>
    <message>
        <source>Mixing places needed</source>
        <translation>चाहिने मसला मुछ्ने ठाउँ</translation>
    </message>
    <message>
        <source>batches an hour × minutes for a batch ÷ 60, rounded up</source>
        <translation>घण्टाको घान × एक घानको मिनेट ÷ 60, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Minutes to put a batch on</source>
        <translation>एक घान लगाउन लाग्ने मिनेट</translation>
    </message>
    <message>
        <source>face that it covers × spreading × hours of a person-day × 60 ÷ people who spread: their share of the work</source>
        <translation>घानले ढाक्ने सतह × लगाउने दर × जनदिनको घण्टा × 60 ÷ लगाउने मान्छे: कामको तिनको भाग</translation>
    </message>
    <message>
        <source>Minutes for a batch with half a bag</source>
        <translation>आधा बोराको घानको मिनेट</translation>
    </message>
    <message>
        <source>as for a whole bag</source>
        <translation>पूरा बोराको जस्तै</translation>
    </message>
    <message>
        <source>In which a batch must be on the wall</source>
        <translation>घान भित्तामा लगाइसक्नुपर्ने समय</translation>
    </message>
    <message>
        <source>Bags of cement for each coat</source>
        <translation>हरेक पत्रको सिमेन्ट, बोरा</translation>
    </message>
    <message>
        <source>cement to mix ÷ weight of a bag, not rounded</source>
        <translation>मुछ्ने सिमेन्ट ÷ एक बोराको तौल, नमिलाइएको</translation>
    </message>
    <message>
        <source>Mixing water for each coat</source>
        <translation>हरेक पत्रको मुछ्ने पानी</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³</source>
        <translation>मुछ्ने प्लास्टर × हरेक m³को लिटर</translation>
    </message>
    <message>
        <source>Sacks to cover each coat</source>
        <translation>हरेक पत्र छोप्ने जुट</translation>
    </message>
    <message>
        <source>face ÷ what a sack covers × (1 + spare), rounded up</source>
        <translation>सतह ÷ एउटा जुटले ढाक्ने × (1 + जगेडा), माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Length and width times this, this crew could plaster</source>
        <translation>लम्बाइ र चौडाइ यति गुणा, यो टोलीले प्लास्टर गर्न सक्ने</translation>
    </message>
    <message>
        <source>found by halving: largest plan, same depth, batter and lining, whose coat the crew can put on</source>
        <translation>आधा-आधा गर्दै खोजिएको: उही गहिराइ, ढल्काइ र अस्तरमा टोलीले पत्र लगाउन सक्ने सबैभन्दा ठूलो प्लान</translation>
    </message>
    <message>
        <source>Clear length of that tank</source>
        <translation>त्यो ट्याङ्कीको भित्री लम्बाइ</translation>
    </message>
    <message>
        <source>length × factor</source>
        <translation>लम्बाइ × गुणक</translation>
    </message>
    <message>
        <source>Clear width of that tank</source>
        <translation>त्यो ट्याङ्कीको भित्री चौडाइ</translation>
    </message>
    <message>
        <source>width × factor</source>
        <translation>चौडाइ × गुणक</translation>
    </message>
    <message>
        <source>Held by that tank, filled to the overflow</source>
        <translation>त्यो ट्याङ्कीमा ओभरफ्लोसम्म भर्दा अट्ने</translation>
    </message>
    <message>
        <source>V(h) with its own floor</source>
        <translation>V(h), आफ्नै भुइँले</translation>
    </message>
    <message>
        <source>Inflow on the first day</source>
        <translation>पहिलो दिन आउने पानी</translation>
    </message>
    <message>
        <source>as entered, else flow × hours of the source in that month</source>
        <translation>राखिएअनुसार, नत्र बहाव × त्यो महिना स्रोत बग्ने घण्टा</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>पानी भर्न सुरु</translation>
    </message>
    <message>
        <source>as in the dates: last day of curing or of the days within which it must start, whichever comes first</source>
        <translation>मितिमा जस्तै: क्योरिङको अन्तिम दिन वा सुरु गरिसक्नुपर्ने अन्तिम दिन, जुन पहिले आउँछ</translation>
    </message>
    <message>
        <source>Latest start of filling</source>
        <translation>पानी भर्न सुरु गर्ने अन्तिम दिन</translation>
    </message>
    <message>
        <source>last coat + days within which filling must start</source>
        <translation>अन्तिम पत्र + पानी भर्न सुरु गरिसक्नुपर्ने दिन</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>ट्याङ्की भरिने दिन</translation>
    </message>
    <message>
        <source>first day on which it holds what it can up to the overflow</source>
        <translation>ओभरफ्लोसम्म अट्ने जति पानी पुग्ने पहिलो दिन</translation>
    </message>
    <message>
        <source>Water for sacks after curing</source>
        <translation>क्योरिङपछि जुटलाई पानी</translation>
    </message>
    <message>
        <source>sum over the days of wall still to be wet × litres a day for each m²</source>
        <translation>भिजाउन बाँकी भित्ता × हरेक m²को दिनको लिटर, सबै दिनको जम्मा</translation>
    </message>
    <message>
        <source>Water to bring by hand</source>
        <translation>हातले बोकेर ल्याउने पानी</translation>
    </message>
    <message>
        <source>held if the water covered the walls by the latest start + curing, as far as the limit on the rise lets it − held then</source>
        <translation>सुरु गर्ने अन्तिम दिन + क्योरिङसम्म पानीले भित्ता छोपे हुने पानी, पानी चढ्ने सीमाले दिएसम्म − त्यति बेला भएको पानी</translation>
    </message>
    <message>
        <source>Bands of the wall: lower edge</source>
        <translation>भित्ताका पट्टी: तल्लो छेउ</translation>
    </message>
    <message>
        <source>even steps up from the floor</source>
        <translation>भुइँबाट माथि बराबर खुड्किला</translation>
    </message>
    <message>
        <source>Bands of the wall: upper edge</source>
        <translation>भित्ताका पट्टी: माथिल्लो छेउ</translation>
    </message>
    <message>
        <source>even steps up to the overflow, then the rim</source>
        <translation>ओभरफ्लोसम्म बराबर खुड्किला, त्यसपछि बिट</translation>
    </message>
    <message>
        <source>Bands of the wall: area</source>
        <translation>भित्ताका पट्टी: क्षेत्रफल</translation>
    </message>
    <message>
        <source>wet face up to the upper edge − up to the lower; wet face = floor + √(1 + batter²) × h × mean edge</source>
        <translation>माथिल्लो छेउसम्म भिजेको सतह − तल्लो छेउसम्मको; भिजेको सतह = भुइँ + √(1 + ढल्काइ²) × h × औसत घेरा</translation>
    </message>
    <message>
        <source>Bands: sacks wet from</source>
        <translation>पट्टी: जुट भिजाउन सुरु</translation>
    </message>
    <message>
        <source>day after the last coat</source>
        <translation>अन्तिम पत्रको भोलिपल्ट</translation>
    </message>
    <message>
        <source>Bands: covered by water on</source>
        <translation>पट्टी: पानीले छोप्ने दिन</translation>
    </message>
    <message>
        <source>first day at whose end the level is at the upper edge</source>
        <translation>दिनको अन्त्यमा पानीको सतह माथिल्लो छेउमा पुग्ने पहिलो दिन</translation>
    </message>
    <message>
        <source>Bands: sacks wet until</source>
        <translation>पट्टी: जुट भिजाउने अन्तिम दिन</translation>
    </message>
    <message>
        <source>day before it is covered, not before the end of curing</source>
        <translation>पानीले छोप्ने अघिल्लो दिन, क्योरिङ सकिनुअघि होइन</translation>
    </message>
    <message>
        <source>Bands: days of wetting</source>
        <translation>पट्टी: भिजाउने दिन</translation>
    </message>
    <message>
        <source>from the first to the last, both counted</source>
        <translation>पहिलोदेखि अन्तिमसम्म, दुवै गनेर</translation>
    </message>
    <message>
        <source>Days of filling</source>
        <translation>पानी भर्ने दिन</translation>
    </message>
    <message>
        <source>from the start until full, 366 at most</source>
        <translation>सुरुदेखि भरिउन्जेल, बढीमा ३६६</translation>
    </message>
    <message>
        <source>Let in each day</source>
        <translation>हरेक दिन पस्न दिने पानी</translation>
    </message>
    <message>
        <source>inflow, held to what raises the level by no more than the limit</source>
        <translation>आउने पानी, सतह सीमाभन्दा बढी नचढ्ने गरी</translation>
    </message>
    <message>
        <source>Lost each day</source>
        <translation>हरेक दिन घट्ने पानी</translation>
    </message>
    <message>
        <source>ET0 of the month × open water × (1 − cover) × surface + seepage × wet face, no more than there is</source>
        <translation>महिनाको ET0 × खुला पानी × (1 − ढकनी) × पानीको माथिल्लो सतह + रसाउने × भिजेको सतह, भएको पानीभन्दा बढी होइन</translation>
    </message>
    <message>
        <source>Held at the end of each day</source>
        <translation>हरेक दिनको अन्त्यमा भएको पानी</translation>
    </message>
    <message>
        <source>held before + let in − lost</source>
        <translation>पहिले भएको + पस्न दिएको − घटेको</translation>
    </message>
    <message>
        <source>Level at the end of each day</source>
        <translation>हरेक दिनको अन्त्यमा पानीको सतह</translation>
    </message>
    <message>
        <source>h at which V(h) is what is held</source>
        <translation>V(h) भएको पानी बराबर हुने h</translation>
    </message>
    <message>
        <source>Wall above the water each day</source>
        <translation>हरेक दिन पानीमाथिको भित्ता</translation>
    </message>
    <message>
        <source>floor + wall − wet face up to the level</source>
        <translation>भुइँ + भित्ता − पानीको सतहसम्म भिजेको सतह</translation>
    </message>
    <message>
        <source>Water for sacks each day</source>
        <translation>हरेक दिन जुटलाई पानी</translation>
    </message>
    <message>
        <source>wall above the water still to be wet × litres a day for each m²</source>
        <translation>पानीमाथिको भिजाउन बाँकी भित्ता × हरेक m²को दिनको लिटर</translation>
    </message>
    <message>
        <source>Weather years looked at</source>
        <translation>हेरिएका मौसम वर्ष</translation>
    </message>
    <message>
        <source>all that there are</source>
        <translation>भएजति सबै</translation>
    </message>
    <message>
        <source>Rain in a day that spoils a fresh coat</source>
        <translation>ताजा पत्र बिगार्ने एक दिनको वर्षा</translation>
    </message>
    <message>
        <source>Week of the first coat, as planned</source>
        <translation>योजनाअनुसार पहिलो पत्रको हप्ता</translation>
    </message>
    <message>
        <source>week of its day; weeks count from 1 January</source>
        <translation>त्यो दिन परेको हप्ता; हप्ता जनवरी १ देखि गनिन्छ</translation>
    </message>
    <message>
        <source>Week with the best chance</source>
        <translation>सबैभन्दा राम्रो सम्भावनाको हप्ता</translation>
    </message>
    <message>
        <source>largest share of undisturbed starts; of equal ones the planned one, else the next after it</source>
        <translation>बाधा नपर्ने सुरुको सबैभन्दा ठूलो भाग; बराबर भए योजनाको हप्ता, नत्र त्यसपछिको</translation>
    </message>
    <message>
        <source>First coat in that week</source>
        <translation>त्यो हप्ताको पहिलो पत्र</translation>
    </message>
    <message>
        <source>works begun so that it falls there, with rest days and closed days</source>
        <translation>पत्र त्यही हप्तामा पर्ने गरी सुरु गरिएको निर्माण, बिदाको दिन र काम बन्द दिन गनेर</translation>
    </message>
    <message>
        <source>Start of the works for it</source>
        <translation>त्यसका लागि निर्माणको सुरु</translation>
    </message>
    <message>
        <source>planned start moved by as many days as the first coat, then until the coat falls in the week</source>
        <translation>योजनाको सुरु पहिलो पत्र जति दिन सर्छ त्यति दिन सारिएको, अनि पत्र त्यो हप्तामा नपरुन्जेल</translation>
    </message>
    <message>
        <source>Weeks of the year</source>
        <translation>वर्षका हप्ता</translation>
    </message>
    <message>
        <source>first day of each</source>
        <translation>हरेकको पहिलो दिन</translation>
    </message>
    <message>
        <source>Share undisturbed, by week</source>
        <translation>बाधा नपर्ने भाग, हप्तैपिच्छे</translation>
    </message>
    <message>
        <source>start days of the week in all years on which none of the three below happens ÷ all</source>
        <translation>सबै वर्षमा त्यो हप्ताका, तलका तीनमध्ये केही नहुने सुरुका दिन ÷ सबै</translation>
    </message>
    <message>
        <source>Share with heavy rain, by week</source>
        <translation>ठूलो पानी पर्ने भाग, हप्तैपिच्छे</translation>
    </message>
    <message>
        <source>heavy rain on a coat&apos;s day or the day after ÷ all</source>
        <translation>पत्र लगाउने दिन वा भोलिपल्ट ठूलो पानी ÷ सबै</translation>
    </message>
    <message>
        <source>Share with frost, by week</source>
        <translation>तुसारो पर्ने भाग, हप्तैपिच्छे</translation>
    </message>
    <message>
        <source>night at or below 0 °C before a coat or in the 7 days after ÷ all</source>
        <translation>पत्रको अघिल्लो रात वा त्यसपछिका 7 दिनमा 0 °C वा कम ÷ सबै</translation>
    </message>
    <message>
        <source>Share too cold or too hot, by week</source>
        <translation>धेरै जाडो वा गर्मीको भाग, हप्तैपिच्छे</translation>
    </message>
    <message>
        <source>mean below 5 °C or maximum above 35 °C on a coat&apos;s day ÷ all</source>
        <translation>पत्र लगाउने दिन औसत 5 °C भन्दा कम वा अधिकतम 35 °C भन्दा बढी ÷ सबै</translation>
    </message>
    <message>
        <source>Coats whose drying is reckoned</source>
        <translation>सुक्ने हिसाब गरिएका पत्र</translation>
    </message>
    <message>
        <source>those in whose month wind was measured</source>
        <translation>हावा नापिएको महिनामा पर्ने</translation>
    </message>
    <message>
        <source>Air in the warmest hours</source>
        <translation>सबैभन्दा न्यानो बेलाको हावाको तापक्रम</translation>
    </message>
    <message>
        <source>mean maximum of the days on which the coat falls</source>
        <translation>पत्र पर्ने दिनका अधिकतम तापक्रमको औसत</translation>
    </message>
    <message>
        <source>Humidity in the warmest hours</source>
        <translation>सबैभन्दा न्यानो बेलाको आर्द्रता</translation>
    </message>
    <message>
        <source>vapour pressure of the day ÷ saturation pressure at the maximum, eq. 11 and 19</source>
        <translation>दिनको बाफको चाप ÷ अधिकतम तापक्रमको संतृप्त चाप, सूत्र 11 र 19</translation>
    </message>
    <message>
        <source>Wind, km an hour</source>
        <translation>हावा, घण्टामा km</translation>
    </message>
    <message>
        <source>mean wind × 3.6</source>
        <translation>हावाको औसत × 3.6</translation>
    </message>
    <message>
        <source>Water lost by the fresh plaster</source>
        <translation>ताजा प्लास्टरले गुमाउने पानी</translation>
    </message>
    <message>
        <source>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T air and plaster in °C, r humidity from 0 to 1, V wind in km an hour</source>
        <translation>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T हावा र प्लास्टर °C मा, r आर्द्रता 0 देखि 1, V हावा घण्टामा km</translation>
    </message>
    <message>
        <source>Reckoned with exact shells, net</source>
        <translation>सही आयतनले हिसाब, खुद</translation>
    </message>
    <message>
        <source>sums of the net mixes; stone: the bed</source>
        <translation>खुद मिसावटको जम्मा; ढुङ्गा: सोलिङ</translation>
    </message>
    <message>
        <source>Reckoned by area × thickness, net</source>
        <translation>क्षेत्रफल × मोटाइले हिसाब, खुद</translation>
    </message>
    <message>
        <source>sums of the mixes by area × thickness; stone: floor × bed</source>
        <translation>क्षेत्रफल × मोटाइले मिसावटको जम्मा; ढुङ्गा: भुइँ × सोलिङ</translation>
    </message>
    <message>
        <source>Exact shells over the bill</source>
        <translation>सही आयतन ÷ चलनको हिसाब</translation>
    </message>
    <message>
        <source>reckoned ÷ customary</source>
        <translation>हिसाबले निकालेको ÷ चलनको</translation>
    </message>
    <message>
        <source>Area × thickness over the bill</source>
        <translation>क्षेत्रफल × मोटाइ ÷ चलनको हिसाब</translation>
    </message>
    <message>
        <source>Soil for each sand in the bill</source>
        <translation>चलनको हिसाबमा एक बालुवालाई माटो</translation>
    </message>
    <message>
        <source>soil ÷ sand</source>
        <translation>माटो ÷ बालुवा</translation>
    </message>
    <message>
        <source>Soil for each sand in the mixes</source>
        <translation>मिसावटमा एक बालुवालाई माटो</translation>
    </message>
    <message>
        <source>net soil ÷ net sand</source>
        <translation>खुद माटो ÷ खुद बालुवा</translation>
    </message>
    <message>
        <source>Cement that thickness and mix need</source>
        <translation>मोटाइ र मिसावटले माग्ने सिमेन्ट</translation>
    </message>
    <message>
        <source>sum of the net mixes, exact shells</source>
        <translation>खुद मिसावटको जम्मा, सही आयतनले</translation>
    </message>
    <message>
        <source>The same by area × thickness</source>
        <translation>उही, क्षेत्रफल × मोटाइले</translation>
    </message>
    <message>
        <source>sum of the mixes by area × thickness</source>
        <translation>क्षेत्रफल × मोटाइले मिसावटको जम्मा</translation>
    </message>
    <message>
        <source>All coats times this would use the bill&apos;s cement</source>
        <translation>सबै पत्र यति गुणा भए चलनको सिमेन्ट लाग्ने</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with all coats × factor = cement of the bill</source>
        <translation>आधा-आधा गर्दै खोजिएको: सबै पत्र × गुणक हुँदा सही आयतनको सिमेन्ट = चलनको हिसाबको सिमेन्ट</translation>
    </message>
    <message>
        <source>cement of the bill ÷ cement by area × thickness</source>
        <translation>चलनको हिसाबको सिमेन्ट ÷ क्षेत्रफल × मोटाइको सिमेन्ट</translation>
    </message>
    <message>
        <source>Coats as thick as that</source>
        <translation>त्यति मोटा पत्र</translation>
    </message>
    <message>
        <source>thickness × factor</source>
        <translation>मोटाइ × गुणक</translation>
    </message>
    <message>
        <source>Coats as thick as that, by area</source>
        <translation>त्यति मोटा पत्र, क्षेत्रफलले</translation>
    </message>
    <message>
        <source>Soil and sand times this would use the bill&apos;s cement</source>
        <translation>माटो र बालुवा यति गुणा भए चलनको सिमेन्ट लाग्ने</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with soil and sand parts × factor = cement of the bill</source>
        <translation>आधा-आधा गर्दै खोजिएको: माटो र बालुवाका भाग × गुणक हुँदा सही आयतनको सिमेन्ट = चलनको हिसाबको सिमेन्ट</translation>
    </message>
    <message>
        <source>found by halving, volumes by area × thickness</source>
        <translation>आधा-आधा गर्दै खोजिएको, आयतन क्षेत्रफल × मोटाइले</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>माटो</translation>
    </message>
    <message>
        <source>soil parts × factor</source>
        <translation>माटोका भाग × गुणक</translation>
    </message>
    <message>
        <source>sand parts × factor</source>
        <translation>बालुवाका भाग × गुणक</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>सिमेन्ट</translation>
    </message>
    <message>
        <source>cement parts, as entered</source>
        <translation>सिमेन्टका भाग, राखिएअनुसार</translation>
    </message>
    <message>
        <source>Mix that would use the bill&apos;s cement</source>
        <translation>चलनको सिमेन्ट लाग्ने मिसावट</translation>
    </message>
    <message>
        <source>Each task starts</source>
        <translation>हरेक कामको सुरु</translation>
    </message>
    <message>
        <source>latest of: start of the works, the day wished, what each arrow to it asks for; forward pass on days that are worked; last day to start filling: last coat + days within which filling must start</source>
        <translation>यीमध्ये सबैभन्दा पछिको: निर्माणको सुरु, चाहेको दिन, त्यसमा आउने हरेक तीरले मागेको; काम हुने दिनमा अगाडितिर गनेर; पानी भर्न थाल्ने अन्तिम दिन: अन्तिम पत्र + पानी भर्न सुरु गरिसक्नुपर्ने दिन</translation>
    </message>
    <message>
        <source>Each task ends</source>
        <translation>हरेक कामको अन्त्य</translation>
    </message>
    <message>
        <source>start + duration on its clock, last day on which anything is done</source>
        <translation>सुरु + आफ्नै घडीले लाग्ने समय, केही काम हुने अन्तिम दिन</translation>
    </message>
    <message>
        <source>Duration of each task</source>
        <translation>हरेक काममा लाग्ने समय</translation>
    </message>
    <message>
        <source>person-days ÷ people, up to the next quarter of a day, at least one; a coat one day; curing, filling and leak test their days</source>
        <translation>जनदिन ÷ मान्छे, दिनको अर्को चौथाइमा माथितिर मिलाइएको, कम्तीमा एक चौथाइ; पत्र एक दिन; क्योरिङ, पानी भर्ने र चुहावट जाँच आफ्नै दिन</translation>
    </message>
    <message>
        <source>Days with work on them</source>
        <translation>काम हुने दिन</translation>
    </message>
    <message>
        <source>days from start to end that are worked; all days for curing and filling</source>
        <translation>सुरुदेखि अन्त्यसम्म काम हुने दिन; क्योरिङ र पानी भर्नेका सबै दिन</translation>
    </message>
    <message>
        <source>People on each task</source>
        <translation>हरेक काममा लाग्ने मान्छे</translation>
    </message>
    <message>
        <source>labourers + masons</source>
        <translation>ज्यामी + डकर्मी</translation>
    </message>
    <message>
        <source>Labourers on each task</source>
        <translation>हरेक काममा लाग्ने ज्यामी</translation>
    </message>
    <message>
        <source>diggers, or people on a coat, or as wished; less the masons; spoil: as few as carry it while the pit is dug</source>
        <translation>खन्ने मान्छे, वा पत्रमा लाग्ने मान्छे, वा चाहनाअनुसार; डकर्मी घटाएर; खनेको माटो: खाडल खनुन्जेल बोक्न पुग्ने सबैभन्दा कम</translation>
    </message>
    <message>
        <source>Masons on each task</source>
        <translation>हरेक काममा लाग्ने डकर्मी</translation>
    </message>
    <message>
        <source>all there are for a coat, else people × skilled share, rounded up</source>
        <translation>पत्रमा भएजति सबै, नत्र मान्छे × सीपको भाग, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>People wetting on each task</source>
        <translation>हरेक काममा भिजाउने मान्छे</translation>
    </message>
    <message>
        <source>as entered, on curing, filling and leak test</source>
        <translation>राखिएअनुसार, क्योरिङ, पानी भर्ने र चुहावट जाँचमा</translation>
    </message>
    <message>
        <source>Share of the first day gone at the start</source>
        <translation>सुरुमा पहिलो दिनको बितिसकेको भाग</translation>
    </message>
    <message>
        <source>quarters of a day from the start of the day</source>
        <translation>दिनको सुरुदेखिका चौथाइ</translation>
    </message>
    <message>
        <source>Room of each task</source>
        <translation>हरेक काम ढिलो गर्न मिल्ने</translation>
    </message>
    <message>
        <source>late start − early start on its clock; backward pass from the last end; curing has none of its own</source>
        <translation>आफ्नै घडीले ढिलो सुरु − छिटो सुरु; अन्तिम अन्त्यबाट पछाडितिर गनेर; क्योरिङको आफ्नो हुँदैन</translation>
    </message>
    <message>
        <source>Room that moves no other task</source>
        <translation>अरू काम नसारी ढिलो गर्न मिल्ने</translation>
    </message>
    <message>
        <source>earliest that the next task asks for − early end</source>
        <translation>अर्को कामले माग्ने सबैभन्दा छिटो − छिटो अन्त्य</translation>
    </message>
    <message>
        <source>Earliest start wished</source>
        <translation>चाहेको सबैभन्दा छिटो सुरु</translation>
    </message>
    <message>
        <source>Days between two tasks</source>
        <translation>दुई कामबीचका दिन</translation>
    </message>
    <message>
        <source>0, one after the other; spoil a quarter of a day after the pit; filling: smaller of last curing and days within which it must start, less one</source>
        <translation>०, एकपछि अर्को; खनेको माटो खाडलको चौथाइ दिनपछि; पानी भर्ने: अन्तिम क्योरिङ र सुरु गरिसक्नुपर्ने दिनमध्ये सानो, एक घटाएर</translation>
    </message>
    <message>
        <source>Days of the works</source>
        <translation>निर्माणका दिन</translation>
    </message>
    <message>
        <source>each day from the first start to the last end</source>
        <translation>पहिलो सुरुदेखि अन्तिम अन्त्यसम्मको हरेक दिन</translation>
    </message>
    <message>
        <source>Labourers by day</source>
        <translation>दिनदिनका ज्यामी</translation>
    </message>
    <message>
        <source>most who are there at one quarter of the day</source>
        <translation>दिनको कुनै एक चौथाइमा हुने सबैभन्दा बढी</translation>
    </message>
    <message>
        <source>Masons by day</source>
        <translation>दिनदिनका डकर्मी</translation>
    </message>
    <message>
        <source>Wetters by day</source>
        <translation>दिनदिनका भिजाउने मान्छे</translation>
    </message>
    <message>
        <source>those who see to all sacks</source>
        <translation>सबै जुट हेर्ने मान्छे</translation>
    </message>
    <message>
        <source>Water for sacks by day</source>
        <translation>दिनदिन जुटलाई पानी</translation>
    </message>
    <message>
        <source>face of each coat that cures or waits for the next × litres a day for each m²; once filling has begun the bands of wall still to be wet</source>
        <translation>क्योरिङ भइरहेको वा अर्को पर्खिरहेको हरेक पत्रको सतह × हरेक m²को दिनको लिटर; पानी भर्न सुरु भएपछि भिजाउन बाँकी भित्ताका पट्टी</translation>
    </message>
    <message>
        <source>batches that count</source>
        <translation>गनिने घान</translation>
    </message>
    <message>
        <source>trial batches of a coat of this lining</source>
        <translation>यस अस्तरको कुनै पत्रका जाँच घान</translation>
    </message>
    <message>
        <source>middle of the batches</source>
        <translation>घानहरूको बीचको मान</translation>
    </message>
    <message>
        <source>loose soil, sand and cement ÷ (area × thickness); the middle one, or mean of the two middle ones</source>
        <translation>खुकुलो माटो, बालुवा र सिमेन्ट ÷ (क्षेत्रफल × मोटाइ); बीचको मान, वा बीचका दुईको औसत</translation>
    </message>
    <message>
        <source>smallest of the batches</source>
        <translation>घानमध्ये सबैभन्दा सानो</translation>
    </message>
    <message>
        <source>as the middle</source>
        <translation>बीचको जस्तै</translation>
    </message>
    <message>
        <source>largest of the batches</source>
        <translation>घानमध्ये सबैभन्दा ठूलो</translation>
    </message>
    <message>
        <source>what stands in the project without them</source>
        <translation>रेकर्ड नहुँदा परियोजनामा भएको</translation>
    </message>
    <message>
        <source>Dry to wet, from trial batches</source>
        <translation>सुक्खा-भिजेको गुणक, जाँच घानबाट</translation>
    </message>
    <message>
        <source>records that count</source>
        <translation>गनिने रेकर्ड</translation>
    </message>
    <message>
        <source>digging in this soil; other work all</source>
        <translation>खन्ने काम यही माटोको; अरू काम सबै</translation>
    </message>
    <message>
        <source>middle of the records</source>
        <translation>रेकर्डको बीचको</translation>
    </message>
    <message>
        <source>person-days ÷ quantity; the middle one, or mean of the two middle ones</source>
        <translation>जनदिन ÷ परिमाण; बीचको मान, वा बीचका दुईको औसत</translation>
    </message>
    <message>
        <source>smallest of the records</source>
        <translation>रेकर्डको सबैभन्दा सानो</translation>
    </message>
    <message>
        <source>largest of the records</source>
        <translation>रेकर्डको सबैभन्दा ठूलो</translation>
    </message>
    <message>
        <source>as entered, else from the table of rates or the district&apos;s own</source>
        <translation>राखिएअनुसार, नभए दरको तालिका वा जिल्लाको आफ्नै दरबाट</translation>
    </message>
    <message>
        <source>Ramming</source>
        <translation>खाँद्ने</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>लगाउने</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>मुछ्ने</translation>
    </message>
    <message>
        <source>Outlets open at a time</source>
        <translation>एकै पटक खुला निकास</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank full</source>
        <translation>निकासमा बाँकी हेड, ट्याङ्की भरि</translation>
    </message>
    <message>
        <source>overflow level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>ओभरफ्लोको सतह − पाइपलाइनको छेउ − निकासले साधारण बहाव लिँदाको हेड घाटा</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank nearly empty</source>
        <translation>निकासमा बाँकी हेड, ट्याङ्की लगभग खाली</translation>
    </message>
    <message>
        <source>dead level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>निकासमुनिको पानीको सतह − पाइपलाइनको छेउ − निकासले साधारण बहाव लिँदाको हेड घाटा</translation>
    </message>
    <message>
        <source>Head that the outlet usually needs</source>
        <translation>निकासलाई साधारणतः चाहिने हेड</translation>
    </message>
    <message>
        <source>by kind of outlet</source>
        <translation>निकासको किसिमअनुसार</translation>
    </message>
    <message>
        <source>Head over that, tank full</source>
        <translation>त्योभन्दा बढी हेड, ट्याङ्की भरि</translation>
    </message>
    <message>
        <source>head left − head needed</source>
        <translation>बाँकी हेड − चाहिने हेड</translation>
    </message>
    <message>
        <source>Head over that, tank nearly empty</source>
        <translation>त्योभन्दा बढी हेड, ट्याङ्की लगभग खाली</translation>
    </message>
    <message>
        <source>The line draws down to</source>
        <translation>पाइपलाइनले यहाँसम्म पानी झिक्छ</translation>
    </message>
    <message>
        <source>highest of dead level, end of the line + 2 cm, crest − (air pressure less vapour − reserve)</source>
        <translation>यीमध्ये सबैभन्दा माथि: निकासमुनिको पानीको सतह, पाइपलाइनको छेउ + २ cm, टुप्पो − (हावाको चाप, बाफ घटाएर − जगेडा)</translation>
    </message>
    <message>
        <source>Emptied in, end wide open</source>
        <translation>पूरै खोल्दा खाली हुने समय</translation>
    </message>
    <message>
        <source>integral of surface(z) ÷ outflow(z) over the level z, Gauss-Kronrod with 15 points</source>
        <translation>पानीको सतह z मा माथिल्लो सतह(z) ÷ निस्कने बहाव(z) को समाकलन, 15 बिन्दुको Gauss-Kronrod</translation>
    </message>
    <message>
        <source>Error of that time at most</source>
        <translation>त्यो समयको गल्ती, बढीमा</translation>
    </message>
    <message>
        <source>sum of the differences of the rules</source>
        <translation>सूत्रहरूको फरकको जम्मा</translation>
    </message>
    <message>
        <source>Levels while it empties</source>
        <translation>खाली हुँदै जाँदा पानीको सतह</translation>
    </message>
    <message>
        <source>even steps from the overflow down</source>
        <translation>ओभरफ्लोबाट तल बराबर खुड्किला</translation>
    </message>
    <message>
        <source>Time at each level</source>
        <translation>हरेक सतहमा पुग्ने समय</translation>
    </message>
    <message>
        <source>integral from the overflow level down to it</source>
        <translation>ओभरफ्लोको सतहदेखि त्यहाँसम्मको समाकलन</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>मुसलधारे वर्षा</translation>
    </message>
    <message>
        <source>as entered; 100 mm an hour when it is not known</source>
        <translation>राखिएअनुसार; थाहा नभए घण्टामा १०० mm</translation>
    </message>
    <message>
        <source>Water of the storm</source>
        <translation>मुसलधारे वर्षाको पानी</translation>
    </message>
    <message>
        <source>rain × sum of (runoff × area): roof at least 0.9, ground at least 0.5, opening of the tank 1</source>
        <translation>वर्षा × (बग्ने भाग × क्षेत्रफल) को जम्मा: छाना कम्तीमा 0.9, जमिन कम्तीमा 0.5, ट्याङ्कीको मुख 1</translation>
    </message>
    <message>
        <source>Water of the source</source>
        <translation>स्रोतको पानी</translation>
    </message>
    <message>
        <source>flow of its line to the full tank; without a line the largest of a month</source>
        <translation>ट्याङ्की भरि हुँदा स्रोतको पाइपलाइनको बहाव; पाइपलाइन नभए महिनाको सबैभन्दा ठूलो</translation>
    </message>
    <message>
        <source>Both together</source>
        <translation>दुवै जम्मा</translation>
    </message>
    <message>
        <source>storm + source</source>
        <translation>मुसलधारे वर्षा + स्रोत</translation>
    </message>
    <message>
        <source>Sill over the finished floor</source>
        <translation>तयारी भुइँभन्दा माथि सँघार</translation>
    </message>
    <message>
        <source>overflow level</source>
        <translation>ओभरफ्लोको सतह</translation>
    </message>
    <message>
        <source>Water over the sill in the storm</source>
        <translation>मुसलधारे वर्षामा सँघारमाथिको पानी</translation>
    </message>
    <message>
        <source>notch: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; pipe: largest head of inlet, orifice, even flow and full pipe</source>
        <translation>खाँचा: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; पाइप: पस्ने मुख, प्वाल, एकनास बहाव र भरि पाइपमध्ये सबैभन्दा ठूलो हेड</translation>
    </message>
    <message>
        <source>Water level in the storm</source>
        <translation>मुसलधारे वर्षामा पानीको सतह</translation>
    </message>
    <message>
        <source>sill + water over it</source>
        <translation>सँघार + त्यसमाथिको पानी</translation>
    </message>
    <message>
        <source>Freeboard left</source>
        <translation>बाँकी फ्रिबोर्ड</translation>
    </message>
    <message>
        <source>lowest part of the rim − water level</source>
        <translation>बिटको सबैभन्दा होचो भाग − पानीको सतह</translation>
    </message>
    <message>
        <source>Carries with water at the rim</source>
        <translation>पानी बिटमा पुग्दा बग्ने</translation>
    </message>
    <message>
        <source>same formula with the head up to the lowest part of the rim</source>
        <translation>उही सूत्र, बिटको सबैभन्दा होचो भागसम्मको हेडले</translation>
    </message>
    <message>
        <source>Freeboard that should be left</source>
        <translation>बाँकी हुनुपर्ने फ्रिबोर्ड</translation>
    </message>
    <message>
        <source>5 cm</source>
        <translation>५ cm</translation>
    </message>
    <message>
        <source>Notch that would leave it</source>
        <translation>त्यति बाँकी राख्ने खाँचा</translation>
    </message>
    <message>
        <source>flow ÷ flow over 1 m of sill at that head</source>
        <translation>बहाव ÷ त्यो हेडमा 1 m सँघारमाथिको बहाव</translation>
    </message>
    <message>
        <source>Pipe that would leave it, bore</source>
        <translation>त्यति बाँकी राख्ने पाइप, भित्री व्यास</translation>
    </message>
    <message>
        <source>smallest from 20 mm in steps of 5 mm whose head is small enough</source>
        <translation>हेड पुग्ने गरी सानो हुने सबैभन्दा सानो, २० mm देखि ५ mm का खुड्किलामा</translation>
    </message>
    <message>
        <source>Water level, overflow blocked</source>
        <translation>पानीको सतह, ओभरफ्लो टालिएको</translation>
    </message>
    <message>
        <source>all of the flow over the rim, lowest parts first, each by the formula of the notch</source>
        <translation>पूरै बहाव बिटमाथिबाट, पहिले सबैभन्दा होचो भाग, हरेकमा खाँचाको सूत्रले</translation>
    </message>
    <message>
        <source>Water over the lowest part then</source>
        <translation>त्यति बेला सबैभन्दा होचो भागमाथिको पानी</translation>
    </message>
    <message>
        <source>water level − lowest part</source>
        <translation>पानीको सतह − सबैभन्दा होचो भाग</translation>
    </message>
    <message>
        <source>Water over each part then</source>
        <translation>त्यति बेला हरेक भागमाथिको पानी</translation>
    </message>
    <message>
        <source>water level − level of the part, 0 where dry</source>
        <translation>पानीको सतह − त्यो भागको उचाइ, सुक्खा भए ०</translation>
    </message>
    <message>
        <source>Flow over each part then</source>
        <translation>त्यति बेला हरेक भागमाथिको बहाव</translation>
    </message>
    <message>
        <source>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</source>
        <translation>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</translation>
    </message>
    <message>
        <source>Spill channel, deep</source>
        <translation>ओभरफ्लोको कुलो, गहिराइ</translation>
    </message>
    <message>
        <source>Spill channel, Manning&apos;s n</source>
        <translation>ओभरफ्लोको कुलो, Manning को n</translation>
    </message>
    <message>
        <source>by what it is dug in or covered with</source>
        <translation>केमा खनिएको वा केले ढाकिएको छ, त्यसअनुसार</translation>
    </message>
    <message>
        <source>Water in the spill channel</source>
        <translation>ओभरफ्लोको कुलोमा पानी</translation>
    </message>
    <message>
        <source>depth of even flow: Q = A R^(2÷3) √S ÷ n</source>
        <translation>एकनास बहावको गहिराइ: Q = A R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Speed in the spill channel</source>
        <translation>ओभरफ्लोको कुलोमा वेग</translation>
    </message>
    <message>
        <source>R^(2÷3) √S ÷ n</source>
        <translation>R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Width of the water there</source>
        <translation>त्यहाँ पानीको चौडाइ</translation>
    </message>
    <message>
        <source>bottom width + 2 × side slope × depth</source>
        <translation>पिँधको चौडाइ + 2 × छेउको ढल्काइ × गहिराइ</translation>
    </message>
    <message>
        <source>Froude number there</source>
        <translation>त्यहाँको Froude अङ्क</translation>
    </message>
    <message>
        <source>V ÷ √(g A ÷ top width)</source>
        <translation>V ÷ √(g A ÷ माथिल्लो चौडाइ)</translation>
    </message>
    <message>
        <source>Speed that is safe</source>
        <translation>सुरक्षित वेग</translation>
    </message>
    <message>
        <source>by soil or cover, low figure</source>
        <translation>माटो वा ढाक्ने चिजअनुसार, कम अङ्क</translation>
    </message>
    <message>
        <source>Speed that scours</source>
        <translation>कुलो काट्ने वेग</translation>
    </message>
    <message>
        <source>by soil or cover, high figure</source>
        <translation>माटो वा ढाक्ने चिजअनुसार, बढी अङ्क</translation>
    </message>
    <message>
        <source>Flow through the trap</source>
        <translation>थेग्रो कुण्डबाट जाने बहाव</translation>
    </message>
    <message>
        <source>as entered, else source + storm led in from roof and ground</source>
        <translation>राखिएअनुसार, नत्र स्रोत + छाना र जमिनबाट ल्याइएको मुसलधारे वर्षा</translation>
    </message>
    <message>
        <source>Smallest grain that must stay</source>
        <translation>रोकिनुपर्ने सबैभन्दा सानो दाना</translation>
    </message>
    <message>
        <source>Speed at which that grain falls</source>
        <translation>त्यो दाना डुब्ने वेग</translation>
    </message>
    <message>
        <source>R g d² ÷ (18 ν + √(0.75 R g d³)), R = density over water − 1, 2650 kg/m³</source>
        <translation>R g d² ÷ (18 ν + √(0.75 R g d³)), R = पानीको तुलनामा घनत्व − 1, 2650 kg/m³</translation>
    </message>
    <message>
        <source>Least area</source>
        <translation>न्यूनतम क्षेत्रफल</translation>
    </message>
    <message>
        <source>flow ÷ settling speed</source>
        <translation>बहाव ÷ दाना डुब्ने वेग</translation>
    </message>
    <message>
        <source>Area with reserve</source>
        <translation>जगेडासहित क्षेत्रफल</translation>
    </message>
    <message>
        <source>2 × least area</source>
        <translation>2 × न्यूनतम क्षेत्रफल</translation>
    </message>
    <message>
        <source>Length of the trap</source>
        <translation>कुण्डको लम्बाइ</translation>
    </message>
    <message>
        <source>area ÷ width</source>
        <translation>क्षेत्रफल ÷ चौडाइ</translation>
    </message>
    <message>
        <source>Width of the trap</source>
        <translation>कुण्डको चौडाइ</translation>
    </message>
    <message>
        <source>√(area ÷ 6): six times as long as wide</source>
        <translation>√(क्षेत्रफल ÷ 6): चौडाइको छ गुणा लामो</translation>
    </message>
    <message>
        <source>Depth of the trap</source>
        <translation>कुण्डको गहिराइ</translation>
    </message>
    <message>
        <source>10 cm freeboard + settling depth + depth of mud</source>
        <translation>१० cm फ्रिबोर्ड + थेग्रिने गहिराइ + हिलोको गहिराइ</translation>
    </message>
    <message>
        <source>Greatest forward speed</source>
        <translation>अगाडि बग्ने सबैभन्दा बढी वेग</translation>
    </message>
    <message>
        <source>0.44 × √(grain in mm)</source>
        <translation>0.44 × √(दाना mm मा)</translation>
    </message>
    <message>
        <source>Flow over area, a day</source>
        <translation>क्षेत्रफलमा बहाव, दिनको</translation>
    </message>
    <message>
        <source>flow ÷ area × 86 400 s</source>
        <translation>बहाव ÷ क्षेत्रफल × 86 400 s</translation>
    </message>
    <message>
        <source>Settling depth</source>
        <translation>थेग्रिने गहिराइ</translation>
    </message>
    <message>
        <source>flow ÷ (width × greatest forward speed)</source>
        <translation>बहाव ÷ (चौडाइ × अगाडि बग्ने सबैभन्दा बढी वेग)</translation>
    </message>
    <message>
        <source>Mud between two cleanings</source>
        <translation>दुई सफाइबीचको हिलो</translation>
    </message>
    <message>
        <source>flow × silt in it × days; the storm counts for one hour</source>
        <translation>बहाव × त्यसमा भएको थेग्रो × दिन; मुसलधारे वर्षा एक घण्टा गनिन्छ</translation>
    </message>
    <message>
        <source>Room for it</source>
        <translation>त्यसलाई चाहिने ठाउँ</translation>
    </message>
    <message>
        <source>mud ÷ (2600 kg/m³ × 0.5)</source>
        <translation>हिलो ÷ (2600 kg/m³ × 0.5)</translation>
    </message>
    <message>
        <source>Depth of mud</source>
        <translation>हिलोको गहिराइ</translation>
    </message>
    <message>
        <source>room ÷ area</source>
        <translation>चाहिने ठाउँ ÷ क्षेत्रफल</translation>
    </message>
    <message>
        <source>Time in the trap</source>
        <translation>कुण्डमा बिताउने समय</translation>
    </message>
    <message>
        <source>area × settling depth ÷ flow</source>
        <translation>क्षेत्रफल × थेग्रिने गहिराइ ÷ बहाव</translation>
    </message>
    <message>
        <source>Smallest grain that the entered trap keeps</source>
        <translation>राखिएको कुण्डले रोक्ने सबैभन्दा सानो दाना</translation>
    </message>
    <message>
        <source>grain that falls at 2 × flow ÷ (length × width)</source>
        <translation>2 × बहाव ÷ (लम्बाइ × चौडाइ) वेगले डुब्ने दाना</translation>
    </message>
    <message>
        <source>Forward speed in it</source>
        <translation>त्यसमा अगाडि बग्ने वेग</translation>
    </message>
    <message>
        <source>flow ÷ (width × depth)</source>
        <translation>बहाव ÷ (चौडाइ × गहिराइ)</translation>
    </message>
    <message>
        <source>Greatest forward speed for that grain</source>
        <translation>त्यो दानाका लागि अगाडि बग्ने सबैभन्दा बढी वेग</translation>
    </message>
    <message>
        <source>Tank drops</source>
        <translation>ट्याङ्कीमा घट्ने</translation>
    </message>
    <message>
        <source>drop ÷ hours × 24</source>
        <translation>घटेको ÷ घण्टा × 24</translation>
    </message>
    <message>
        <source>Evaporates</source>
        <translation>वाष्पीकरण हुने</translation>
    </message>
    <message>
        <source>drop of the bucket ÷ hours × 24</source>
        <translation>बाल्टीमा घटेको ÷ घण्टा × 24</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>चुहिने</translation>
    </message>
    <message>
        <source>tank − bucket</source>
        <translation>ट्याङ्की − बाल्टी</translation>
    </message>
    <message>
        <source>Error of the leak</source>
        <translation>चुहावटको गल्ती</translation>
    </message>
    <message>
        <source>√2 × error of a reading ÷ hours × 24</source>
        <translation>√2 × एउटा नापको गल्ती ÷ घण्टा × 24</translation>
    </message>
    <message>
        <source>Leaks, litres</source>
        <translation>चुहिने, लिटर</translation>
    </message>
    <message>
        <source>leak × water surface at that level: 1 mm on 1 m² is 1 litre</source>
        <translation>चुहावट × त्यो सतहमा पानीको माथिल्लो सतह: 1 m² मा 1 mm भनेको 1 लिटर</translation>
    </message>
    <message>
        <source>Leaks, share of what is held</source>
        <translation>चुहिने, भएको पानीको भाग</translation>
    </message>
    <message>
        <source>leak ÷ volume at that level</source>
        <translation>चुहावट ÷ त्यो सतहमा आयतन</translation>
    </message>
    <message>
        <source>Level in the test</source>
        <translation>जाँचमा पानीको सतह</translation>
    </message>
    <message>
        <source>as entered; else overflow − half of the drop</source>
        <translation>राखिएअनुसार; नत्र ओभरफ्लो − घटेको आधा</translation>
    </message>
    <message>
        <source>Allowed by drop</source>
        <translation>घट्न दिने, उचाइले</translation>
    </message>
    <message>
        <source>10 mm in 7 days</source>
        <translation>७ दिनमा १० mm</translation>
    </message>
    <message>
        <source>Allowed by volume</source>
        <translation>घट्न दिने, आयतनले</translation>
    </message>
    <message>
        <source>0.1 % of the volume a day ÷ water surface</source>
        <translation>दिनको आयतनको 0.1 % ÷ पानीको माथिल्लो सतह</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>बहाव</translation>
    </message>
    <message>
        <source>found so that the head = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>हेड = (1 + K को जम्मा + f L ÷ D) V² ÷ 2g हुने गरी खोजिएको</translation>
    </message>
    <message>
        <source>flow by Hazen-Williams, to check</source>
        <translation>बहाव Hazen-Williams ले, जाँच्न</translation>
    </message>
    <message>
        <source>same heads and fittings, wall by 10.67 L Q^1.852 ÷ (C^1.852 D^4.87), C 140</source>
        <translation>उही हेड र फिटिङ, पाइपको भित्ता 10.67 L Q^1.852 ÷ (C^1.852 D^4.87) ले, C 140</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>वेग</translation>
    </message>
    <message>
        <source>flow ÷ (π D² ÷ 4)</source>
        <translation>बहाव ÷ (π D² ÷ 4)</translation>
    </message>
    <message>
        <source>Reynolds number</source>
        <translation>Reynolds अङ्क</translation>
    </message>
    <message>
        <source>V D ÷ kinematic viscosity of the water</source>
        <translation>V D ÷ पानीको गतिक श्यानता</translation>
    </message>
    <message>
        <source>friction factor</source>
        <translation>घर्षण गुणक</translation>
    </message>
    <message>
        <source>Re under 2 000: 64 ÷ Re; over 4 000: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; straight between</source>
        <translation>Re 2 000 भन्दा कम: 64 ÷ Re; 4 000 भन्दा बढी: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; बीचमा सोझो रेखा</translation>
    </message>
    <message>
        <source>head that drives the flow</source>
        <translation>पानी बगाउने हेड</translation>
    </message>
    <message>
        <source>water over the inlet − end of the line, or the water it dips into − head wanted there</source>
        <translation>पस्ने मुखमाथिको पानी − पाइपलाइनको छेउ वा त्यो डुब्ने पानी − त्यहाँ चाहिने हेड</translation>
    </message>
    <message>
        <source>length along the pipe</source>
        <translation>पाइपको लम्बाइ</translation>
    </message>
    <message>
        <source>sum over the pieces of √(level² + rise²)</source>
        <translation>टुक्राहरूको √(समथर² + उठाइ²) को जम्मा</translation>
    </message>
    <message>
        <source>head lost to the wall</source>
        <translation>पाइपको भित्ताले खाने हेड</translation>
    </message>
    <message>
        <source>f L ÷ D × V² ÷ 2g</source>
        <translation>f L ÷ D × V² ÷ 2g</translation>
    </message>
    <message>
        <source>head lost in fittings</source>
        <translation>फिटिङको हेड घाटा</translation>
    </message>
    <message>
        <source>sum of K × V² ÷ 2g</source>
        <translation>K को जम्मा × V² ÷ 2g</translation>
    </message>
    <message>
        <source>velocity head</source>
        <translation>वेग हेड</translation>
    </message>
    <message>
        <source>V² ÷ 2g</source>
        <translation>V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure head at the outlet</source>
        <translation>निकासमा चाप हेड</translation>
    </message>
    <message>
        <source>head wanted there, or the depth that it dips in</source>
        <translation>त्यहाँ चाहिने हेड, वा पानीमा डुब्ने गहिराइ</translation>
    </message>
    <message>
        <source>head at the lowest point, outlet shut</source>
        <translation>सबैभन्दा तल्लो ठाउँको हेड, निकास बन्द</translation>
    </message>
    <message>
        <source>water over the inlet − lowest point of the pipe</source>
        <translation>पस्ने मुखमाथिको पानी − पाइपको सबैभन्दा तल्लो ठाउँ</translation>
    </message>
    <message>
        <source>pressure at the lowest point, outlet shut</source>
        <translation>सबैभन्दा तल्लो ठाउँको चाप, निकास बन्द</translation>
    </message>
    <message>
        <source>density × g × head</source>
        <translation>घनत्व × g × हेड</translation>
    </message>
    <message>
        <source>pressure class left</source>
        <translation>चाप श्रेणीमा बाँकी</translation>
    </message>
    <message>
        <source>class that holds − pressure with the outlet shut</source>
        <translation>थाम्ने श्रेणी − निकास बन्द हुँदाको चाप</translation>
    </message>
    <message>
        <source>lowest pressure head allowed</source>
        <translation>मिल्ने सबैभन्दा कम चाप हेड</translation>
    </message>
    <message>
        <source>vapour pressure + reserve of 2 m − air pressure of the place, as water column</source>
        <translation>बाफको चाप + २ m जगेडा − त्यो ठाउँको हावाको चाप, पानीको उचाइमा</translation>
    </message>
    <message>
        <source>head that air can hold back at worst</source>
        <translation>सबैभन्दा नराम्रो हालतमा हावाले रोक्ने हेड</translation>
    </message>
    <message>
        <source>sum of the falls after all humps</source>
        <translation>सबै अग्ला ठाउँपछिका झराइको जम्मा</translation>
    </message>
    <message>
        <source>heads along the line: place</source>
        <translation>पाइपलाइनका हेड: ठाउँ</translation>
    </message>
    <message>
        <source>where the line bends and where fittings sit</source>
        <translation>पाइपलाइन मोडिने र फिटिङ भएका ठाउँ</translation>
    </message>
    <message>
        <source>heads along the line: pipe</source>
        <translation>पाइपलाइनका हेड: पाइप</translation>
    </message>
    <message>
        <source>straight between the points of the line</source>
        <translation>पाइपलाइनका बिन्दुबीच सोझो</translation>
    </message>
    <message>
        <source>heads along the line: length so far</source>
        <translation>पाइपलाइनका हेड: यहाँसम्मको लम्बाइ</translation>
    </message>
    <message>
        <source>along the pipe</source>
        <translation>पाइपैपाइप</translation>
    </message>
    <message>
        <source>heads along the line: energy</source>
        <translation>पाइपलाइनका हेड: ऊर्जा</translation>
    </message>
    <message>
        <source>water over the inlet − lost to the wall so far − fittings so far</source>
        <translation>पस्ने मुखमाथिको पानी − यहाँसम्म पाइपको भित्ताले खाएको − यहाँसम्मका फिटिङ</translation>
    </message>
    <message>
        <source>heads along the line: head line</source>
        <translation>पाइपलाइनका हेड: हेड रेखा</translation>
    </message>
    <message>
        <source>energy − velocity head</source>
        <translation>ऊर्जा − वेग हेड</translation>
    </message>
    <message>
        <source>heads along the line: pressure</source>
        <translation>पाइपलाइनका हेड: चाप</translation>
    </message>
    <message>
        <source>head line − pipe</source>
        <translation>हेड रेखा − पाइप</translation>
    </message>
    <message>
        <source>heads along the line: pressure with the outlet shut</source>
        <translation>पाइपलाइनका हेड: निकास बन्द हुँदाको चाप</translation>
    </message>
    <message>
        <source>water over the inlet − pipe</source>
        <translation>पस्ने मुखमाथिको पानी − पाइप</translation>
    </message>
    <message>
        <source>sucking stretch: from</source>
        <translation>सोसाइको खण्ड: देखि</translation>
    </message>
    <message>
        <source>where the pressure passes 0</source>
        <translation>चाप ० काट्ने ठाउँ</translation>
    </message>
    <message>
        <source>sucking stretch: to</source>
        <translation>सोसाइको खण्ड: सम्म</translation>
    </message>
    <message>
        <source>sucking stretch: lowest pressure</source>
        <translation>सोसाइको खण्ड: सबैभन्दा कम चाप</translation>
    </message>
    <message>
        <source>lowest of its points</source>
        <translation>त्यसका बिन्दुमध्ये सबैभन्दा कम</translation>
    </message>
    <message>
        <source>sucking stretch: where it is lowest</source>
        <translation>सोसाइको खण्ड: सबैभन्दा कम भएको ठाउँ</translation>
    </message>
    <message>
        <source>place of that point</source>
        <translation>त्यो बिन्दुको ठाउँ</translation>
    </message>
    <message>
        <source>stretch near boiling: from</source>
        <translation>उम्लनै लागेको खण्ड: देखि</translation>
    </message>
    <message>
        <source>where the pressure passes the lowest allowed</source>
        <translation>मिल्ने सबैभन्दा कम चाप काट्ने ठाउँ</translation>
    </message>
    <message>
        <source>stretch near boiling: to</source>
        <translation>उम्लनै लागेको खण्ड: सम्म</translation>
    </message>
    <message>
        <source>stretch near boiling: lowest pressure</source>
        <translation>उम्लनै लागेको खण्ड: सबैभन्दा कम चाप</translation>
    </message>
    <message>
        <source>stretch near boiling: where it is lowest</source>
        <translation>उम्लनै लागेको खण्ड: सबैभन्दा कम भएको ठाउँ</translation>
    </message>
    <message>
        <source>humps: place</source>
        <translation>अग्ला ठाउँ: कहाँ</translation>
    </message>
    <message>
        <source>high points between inlet and outlet</source>
        <translation>पस्ने मुख र निकासबीचका अग्ला ठाउँ</translation>
    </message>
    <message>
        <source>humps: over the finished floor</source>
        <translation>अग्ला ठाउँ: तयारी भुइँभन्दा माथि</translation>
    </message>
    <message>
        <source>level of the pipe there</source>
        <translation>त्यहाँ पाइपको उचाइ</translation>
    </message>
    <message>
        <source>humps: rise</source>
        <translation>अग्ला ठाउँ: उठाइ</translation>
    </message>
    <message>
        <source>over the lowest point since the inlet or the hump before</source>
        <translation>पस्ने मुख वा अघिल्लो अग्लो ठाउँयताको सबैभन्दा तल्लो बिन्दुभन्दा माथि</translation>
    </message>
    <message>
        <source>humps: fall</source>
        <translation>अग्ला ठाउँ: झराइ</translation>
    </message>
    <message>
        <source>to the lowest point before the next hump or the outlet</source>
        <translation>अर्को अग्लो ठाउँ वा निकासअघिको सबैभन्दा तल्लो बिन्दुसम्म</translation>
    </message>
    <message>
        <source>humps: over the straight line</source>
        <translation>अग्ला ठाउँ: सोझो रेखाभन्दा माथि</translation>
    </message>
    <message>
        <source>over the line from inlet to outlet</source>
        <translation>पस्ने मुखदेखि निकाससम्मको रेखाभन्दा माथि</translation>
    </message>
    <message>
        <source>humps: pressure</source>
        <translation>अग्ला ठाउँ: चाप</translation>
    </message>
    <message>
        <source>head line − pipe at the flow found</source>
        <translation>हेड रेखा − पाइप, निस्किएको बहावमा</translation>
    </message>
    <message>
        <source>Work, all tasks together</source>
        <translation>काम, सबै जम्मा</translation>
    </message>
    <message>
        <source>sum of the person-days</source>
        <translation>जनदिनको जम्मा</translation>
    </message>
    <message>
        <source>Skilled person-days among them</source>
        <translation>त्यसमध्ये सीपको जनदिन</translation>
    </message>
    <message>
        <source>sum of the masons&apos; share</source>
        <translation>डकर्मीको भागको जम्मा</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>हरेक कामको जनदिन</translation>
    </message>
    <message>
        <source>quantity × rate</source>
        <translation>परिमाण × दर</translation>
    </message>
    <message>
        <source>Person-days at the low rate</source>
        <translation>कम दरले जनदिन</translation>
    </message>
    <message>
        <source>quantity × low rate of the table, or of the district</source>
        <translation>परिमाण × तालिका वा जिल्लाको कम दर</translation>
    </message>
    <message>
        <source>Person-days at the high rate</source>
        <translation>बढी दरले जनदिन</translation>
    </message>
    <message>
        <source>quantity × high rate of the table, or of the district</source>
        <translation>परिमाण × तालिका वा जिल्लाको बढी दर</translation>
    </message>
    <message>
        <source>Skilled share of each task</source>
        <translation>हरेक कामको सीपको भाग</translation>
    </message>
    <message>
        <source>person-days × 0.074 ÷ 0.260 for coats, × 1 ÷ 4.5 for stone bed, trap and overflow</source>
        <translation>जनदिन × 0.074 ÷ 0.260 पत्रमा, × 1 ÷ 4.5 ढुङ्गाको सोलिङ, कुण्ड र ओभरफ्लोमा</translation>
    </message>
    <message>
        <source>Person-days for each unit of work</source>
        <translation>एक एकाइ कामको जनदिन</translation>
    </message>
    <message>
        <source>table of rates, the district&apos;s own rate or the rate entered; below 1.5 m × the factor for deep digging; a coat: spreading + mixing × plaster ÷ face; carrying: less what the digging rate includes; wetting: × rounds a day ÷ 3 × people</source>
        <translation>दरको तालिका, जिल्लाको आफ्नै दर वा राखिएको दर; 1.5 m मुनि × गहिरो खन्ने गुणक; पत्र: लगाउने + मुछ्ने × प्लास्टर ÷ सतह; बोक्ने: खन्ने दरमा परेको घटाएर; भिजाउने: × दिनको पटक ÷ 3 × मान्छे</translation>
    </message>
    <message>
        <source>Digging by the district norm</source>
        <translation>जिल्लाको दरअनुसार खन्ने</translation>
    </message>
    <message>
        <source>pit × 0.8 person-days for each m³</source>
        <translation>खाडल × हरेक m³को 0.8 जनदिन</translation>
    </message>
    <message>
        <source>Digging by what people report</source>
        <translation>चलनको भनाइअनुसार खन्ने</translation>
    </message>
    <message>
        <source>pit × 0.62 person-days for each m³</source>
        <translation>खाडल × हरेक m³को 0.62 जनदिन</translation>
    </message>
    <message>
        <source>ground to clear</source>
        <translation>सफा गर्ने जमिन</translation>
    </message>
    <message>
        <source>outline of the pit at the ground, walkway and 1 m more all round</source>
        <translation>जमिनमा खाडलको घेरा, हिँड्ने पेटी र वरिपरि थप १ m</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>सिङ्गो काम</translation>
    </message>
    <message>
        <source>topsoil to strip</source>
        <translation>झिक्ने मलिलो माटो</translation>
    </message>
    <message>
        <source>topsoil stripped first</source>
        <translation>पहिले झिकेको मलिलो माटो</translation>
    </message>
    <message>
        <source>platform to cut</source>
        <translation>ठाउँ सम्याउन काट्ने</translation>
    </message>
    <message>
        <source>cut for the platform</source>
        <translation>सम्याएको ठाउँको कटान</translation>
    </message>
    <message>
        <source>platform to ram</source>
        <translation>ठाउँ सम्याउन खाँद्ने</translation>
    </message>
    <message>
        <source>fill for the platform</source>
        <translation>सम्याएको ठाउँको पुराइ</translation>
    </message>
    <message>
        <source>digging to 1.5 m</source>
        <translation>१.५ m सम्म खन्ने</translation>
    </message>
    <message>
        <source>pit less what lies deeper than 1.5 m</source>
        <translation>खाडल, १.५ m भन्दा गहिरो भाग घटाएर</translation>
    </message>
    <message>
        <source>digging below 1.5 m</source>
        <translation>१.५ m मुनि खन्ने</translation>
    </message>
    <message>
        <source>pit below 1.5 m under the ground, same formula as for the pit</source>
        <translation>जमिनदेखि १.५ m मुनिको खाडल, खाडलकै सूत्रले</translation>
    </message>
    <message>
        <source>spoil to carry</source>
        <translation>बोक्ने खनेको माटो</translation>
    </message>
    <message>
        <source>spoil left over, as it lies</source>
        <translation>उब्रिने खनेको माटो, नखनेको नापले</translation>
    </message>
    <message>
        <source>pit faces to trim</source>
        <translation>ताछेर मिलाउने खाडलका सतह</translation>
    </message>
    <message>
        <source>pit floor + edge half way down × pit depth × √(1 + batter²)</source>
        <translation>खाडलको पिँध + आधा गहिराइको घेरा × खाडलको गहिराइ × √(1 + ढल्काइ²)</translation>
    </message>
    <message>
        <source>pipes to lay</source>
        <translation>बिछ्याउने पाइप</translation>
    </message>
    <message>
        <source>level length of both ways</source>
        <translation>दुवै बाटोको समथर लम्बाइ</translation>
    </message>
    <message>
        <source>volume of the bed, net</source>
        <translation>सोलिङको आयतन, खुद</translation>
    </message>
    <message>
        <source>wetting, days</source>
        <translation>भिजाउने, दिन</translation>
    </message>
    <message>
        <source>days under wet sacks of all coats, and days that sacks stay wet outside of them</source>
        <translation>सबै पत्र भिजेको जुटमुनि रहने दिन, र त्यसबाहिर पनि जुट भिजाउने दिन</translation>
    </message>
    <message>
        <source>silt trap</source>
        <translation>थेग्रो कुण्ड</translation>
    </message>
    <message>
        <source>overflow</source>
        <translation>ओभरफ्लो</translation>
    </message>
    <message>
        <source>fence</source>
        <translation>बार</translation>
    </message>
    <message>
        <source>all round, 1 m outside the clear opening</source>
        <translation>वरिपरि, भित्री मुखभन्दा १ m बाहिर</translation>
    </message>
    <message>
        <source>filling, days</source>
        <translation>पानी भर्ने, दिन</translation>
    </message>
    <message>
        <source>days of the first filling</source>
        <translation>पहिलो पानी भराइका दिन</translation>
    </message>
    <message>
        <source>leak test</source>
        <translation>चुहावट जाँच</translation>
    </message>
    <message>
        <source>beds to plant</source>
        <translation>रोप्ने ड्याङ</translation>
    </message>
    <message>
        <source>sum of the beds</source>
        <translation>ड्याङको जम्मा</translation>
    </message>
    <message>
        <source>faces of the coats</source>
        <translation>पत्रका सतह</translation>
    </message>
    <message>
        <source>face of the coat</source>
        <translation>पत्रको सतह</translation>
    </message>
    <message>
        <source>Quantity of work</source>
        <translation>कामको परिमाण</translation>
    </message>
    <message>
        <source>Thickness of each layer</source>
        <translation>हरेक तहको मोटाइ</translation>
    </message>
    <message>
        <source>square to the face, as entered; of the cove its radius</source>
        <translation>सतहमा गुनिया पारेर, राखिएअनुसार; फेदको गोलाइको अर्धव्यास</translation>
    </message>
    <message>
        <source>Volume of each layer, finished</source>
        <translation>हरेक तहको आयतन, तयारी</translation>
    </message>
    <message>
        <source>exact shell between its two faces, floor and wall together</source>
        <translation>दुई सतहबीचको सही आयतन, भुइँ र भित्ता सँगै</translation>
    </message>
    <message>
        <source>Face of each layer that is worked</source>
        <translation>हरेक तहको काम गरिने सतह</translation>
    </message>
    <message>
        <source>for a coat its inner face: floor + √(1 + batter²) × height × mean edge; for bed and rim the top</source>
        <translation>पत्रको भित्री सतह: भुइँ + √(1 + ढल्काइ²) × उचाइ × औसत घेरा; सोलिङ र बिटको माथिल्लो सतह</translation>
    </message>
    <message>
        <source>Thickness of each coat</source>
        <translation>हरेक पत्रको मोटाइ</translation>
    </message>
    <message>
        <source>square to the face, as entered</source>
        <translation>सतहमा गुनिया पारेर, राखिएअनुसार</translation>
    </message>
    <message>
        <source>Face of each coat</source>
        <translation>हरेक पत्रको सतह</translation>
    </message>
    <message>
        <source>finished inner face, floor and wall</source>
        <translation>तयारी भित्री सतह, भुइँ र भित्ता</translation>
    </message>
    <message>
        <source>Plaster of each coat, exact shell</source>
        <translation>हरेक पत्रको प्लास्टर, सही आयतन</translation>
    </message>
    <message>
        <source>volume of the layer; the last coat also holds cove and rim</source>
        <translation>तहको आयतन; अन्तिम पत्रमा फेदको गोलाइ र बिट पनि</translation>
    </message>
    <message>
        <source>Plaster by area × thickness</source>
        <translation>क्षेत्रफल × मोटाइले प्लास्टर</translation>
    </message>
    <message>
        <source>(clear floor + clear wall) × thickness: the rule on paper, to stand beside the exact shell</source>
        <translation>(भित्री भुइँ + भित्री भित्ता) × मोटाइ: कागजमा गर्ने हिसाब, सही आयतनसँग दाँज्न</translation>
    </message>
    <message>
        <source>Plaster to mix for each coat</source>
        <translation>हरेक पत्रमा मुछ्ने प्लास्टर</translation>
    </message>
    <message>
        <source>shell × (1 + waste); coat 1 also × (1 + unevenness)</source>
        <translation>सही आयतन × (1 + खेर जाने); पत्र 1मा × (1 + असमानता) पनि</translation>
    </message>
    <message>
        <source>Clay in soil and sand together</source>
        <translation>माटो र बालुवा दुवैमा चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>clay of the soil × soil parts ÷ (soil + sand parts)</source>
        <translation>माटोको चिम्टाइलो भाग × माटोका भाग ÷ (माटो + बालुवाका भाग)</translation>
    </message>
    <message>
        <source>Cement: net weight</source>
        <translation>सिमेन्ट: खुद तौल</translation>
    </message>
    <message>
        <source>sum over all coats of the net mix</source>
        <translation>खुद मिसावटको, सबै पत्रको जम्मा</translation>
    </message>
    <message>
        <source>Cement: to order</source>
        <translation>सिमेन्ट: मगाउने</translation>
    </message>
    <message>
        <source>whole bags × weight of a bag</source>
        <translation>पूरा बोरा × एक बोराको तौल</translation>
    </message>
    <message>
        <source>Cement bags, net</source>
        <translation>सिमेन्टका बोरा, खुद</translation>
    </message>
    <message>
        <source>net cement ÷ weight of a bag</source>
        <translation>खुद सिमेन्ट ÷ एक बोराको तौल</translation>
    </message>
    <message>
        <source>Cement bags to order</source>
        <translation>मगाउने सिमेन्टका बोरा</translation>
    </message>
    <message>
        <source>cement of the plaster to mix ÷ weight of a bag, rounded up to whole bags</source>
        <translation>मुछ्ने प्लास्टरको सिमेन्ट ÷ एक बोराको तौल, पूरा बोरामा माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Soil, net</source>
        <translation>माटो, खुद</translation>
    </message>
    <message>
        <source>Soil to dig and sieve</source>
        <translation>खनेर चाल्ने माटो</translation>
    </message>
    <message>
        <source>soil of the plaster to mix ÷ (1 − lost in sieving), rounded up to 0.1 m³</source>
        <translation>मुछ्ने प्लास्टरको माटो ÷ (1 − चाल्दा खेर जाने), 0.1 m³मा माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Sand, net</source>
        <translation>बालुवा, खुद</translation>
    </message>
    <message>
        <source>Sand to order, damp</source>
        <translation>मगाउने बालुवा, ओसिलो</translation>
    </message>
    <message>
        <source>sand of the plaster to mix ÷ (1 − lost in sieving) × (1 + bulking), rounded up to 0.1 m³</source>
        <translation>मुछ्ने प्लास्टरको बालुवा ÷ (1 − चाल्दा खेर जाने) × (1 + बालुवाको फुलाइ), 0.1 m³मा माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Stone of the bed, net</source>
        <translation>सोलिङको ढुङ्गा, खुद</translation>
    </message>
    <message>
        <source>volume of the stone bed</source>
        <translation>ढुङ्गाको सोलिङको आयतन</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>ल्याउने ढुङ्गा, खुकुलो</translation>
    </message>
    <message>
        <source>bed × (1 + unevenness) × (1 + waste) × loose stone for each m³ of bed, rounded up to 0.1 m³</source>
        <translation>सोलिङ × (1 + असमानता) × (1 + खेर जाने) × सोलिङको हरेक m³को खुकुलो ढुङ्गा, 0.1 m³मा माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Water, net</source>
        <translation>पानी, खुद</translation>
    </message>
    <message>
        <source>mixing water + curing water</source>
        <translation>मुछ्ने पानी + क्योरिङको पानी</translation>
    </message>
    <message>
        <source>Water to bring</source>
        <translation>ल्याउने पानी</translation>
    </message>
    <message>
        <source>mixing water + curing water, rounded up</source>
        <translation>मुछ्ने पानी + क्योरिङको पानी, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Mixing water, net</source>
        <translation>मुछ्ने पानी, खुद</translation>
    </message>
    <message>
        <source>plaster, exact shells × litres for each m³</source>
        <translation>प्लास्टर, सही आयतन × हरेक m³को लिटर</translation>
    </message>
    <message>
        <source>Mixing water to bring</source>
        <translation>ल्याउने मुछ्ने पानी</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³, rounded up</source>
        <translation>मुछ्ने प्लास्टर × हरेक m³को लिटर, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Curing water, net</source>
        <translation>क्योरिङको पानी, खुद</translation>
    </message>
    <message>
        <source>face of each coat × litres a day for each m² × its days under wet sacks</source>
        <translation>हरेक पत्रको सतह × हरेक m²को दिनको लिटर × भिजेको जुटमुनि रहने दिन</translation>
    </message>
    <message>
        <source>Curing water to bring</source>
        <translation>ल्याउने क्योरिङको पानी</translation>
    </message>
    <message>
        <source>as net, rounded up</source>
        <translation>खुदजस्तै, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>Wet sacks, net</source>
        <translation>भिजेको जुट, खुद</translation>
    </message>
    <message>
        <source>largest face of a coat ÷ what a sack covers; one set is used again for each coat</source>
        <translation>पत्रको सबैभन्दा ठूलो सतह ÷ एउटा जुटले ढाक्ने; एउटै जुट हरेक पत्रमा फेरि चलाइन्छ</translation>
    </message>
    <message>
        <source>Wet sacks to bring</source>
        <translation>ल्याउने भिजाउने जुट</translation>
    </message>
    <message>
        <source>net × (1 + spare), rounded up</source>
        <translation>खुद × (1 + जगेडा), माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>soil for each coat</source>
        <translation>हरेक पत्रको माटो</translation>
    </message>
    <message>
        <source>plaster × dry to wet × soil parts ÷ all parts</source>
        <translation>प्लास्टर × सुक्खा-भिजेको गुणक × माटोका भाग ÷ सबै भाग</translation>
    </message>
    <message>
        <source>sand for each coat</source>
        <translation>हरेक पत्रको बालुवा</translation>
    </message>
    <message>
        <source>plaster × dry to wet × sand parts ÷ all parts</source>
        <translation>प्लास्टर × सुक्खा-भिजेको गुणक × बालुवाका भाग ÷ सबै भाग</translation>
    </message>
    <message>
        <source>cement for each coat, loose</source>
        <translation>हरेक पत्रको सिमेन्ट, खुकुलो</translation>
    </message>
    <message>
        <source>plaster × dry to wet × cement parts ÷ all parts</source>
        <translation>प्लास्टर × सुक्खा-भिजेको गुणक × सिमेन्टका भाग ÷ सबै भाग</translation>
    </message>
    <message>
        <source>cement for each coat</source>
        <translation>हरेक पत्रको सिमेन्ट</translation>
    </message>
    <message>
        <source>loose cement × its loose weight</source>
        <translation>खुकुलो सिमेन्ट × त्यसको खुकुलो तौल</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>सही आयतन</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>क्षेत्रफल × मोटाइ</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>मुछ्ने</translation>
    </message>
    <message>
        <source>for coat number</source>
        <translation>कुन पत्रलाई</translation>
    </message>
    <message>
        <source>the coats in order, from the earth</source>
        <translation>माटोतिरबाट पत्र क्रमैले</translation>
    </message>
    <message>
        <source>bags of cement</source>
        <translation>सिमेन्टका बोरा</translation>
    </message>
    <message>
        <source>one bag, or half of one</source>
        <translation>एक बोरा, वा आधा बोरा</translation>
    </message>
    <message>
        <source>soil parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>माटोका भाग × सिमेन्ट ÷ त्यसको खुकुलो तौल ÷ सिमेन्टका भाग</translation>
    </message>
    <message>
        <source>sand parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>बालुवाका भाग × सिमेन्ट ÷ त्यसको खुकुलो तौल ÷ सिमेन्टका भाग</translation>
    </message>
    <message>
        <source>bags × weight of a bag</source>
        <translation>बोरा × एक बोराको तौल</translation>
    </message>
    <message>
        <source>plaster that it yields</source>
        <translation>त्यसबाट निस्कने प्लास्टर</translation>
    </message>
    <message>
        <source>soil, sand and cement, loose ÷ dry to wet</source>
        <translation>खुकुलो माटो, बालुवा र सिमेन्ट ÷ सुक्खा-भिजेको गुणक</translation>
    </message>
    <message>
        <source>face that it covers</source>
        <translation>त्यसले ढाक्ने सतह</translation>
    </message>
    <message>
        <source>yield ÷ thickness of the coat</source>
        <translation>निस्कने प्लास्टर ÷ पत्रको मोटाइ</translation>
    </message>
    <message>
        <source>batches for the coat</source>
        <translation>पत्रका घान</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield, rounded up</source>
        <translation>मुछ्ने प्लास्टर ÷ निस्कने प्लास्टर, माथितिर मिलाइएको</translation>
    </message>
    <message>
        <source>gauge boxes of soil</source>
        <translation>माटोका नाप्ने बाकस</translation>
    </message>
    <message>
        <source>soil ÷ what the box holds</source>
        <translation>माटो ÷ बाकसमा अट्ने</translation>
    </message>
    <message>
        <source>gauge boxes of sand</source>
        <translation>बालुवाका नाप्ने बाकस</translation>
    </message>
    <message>
        <source>sand ÷ what the box holds</source>
        <translation>बालुवा ÷ बाकसमा अट्ने</translation>
    </message>
    <message>
        <source>pans of soil</source>
        <translation>माटोका तसला</translation>
    </message>
    <message>
        <source>soil ÷ what the pan holds</source>
        <translation>माटो ÷ तसलामा अट्ने</translation>
    </message>
    <message>
        <source>pans of sand</source>
        <translation>बालुवाका तसला</translation>
    </message>
    <message>
        <source>sand ÷ what the pan holds</source>
        <translation>बालुवा ÷ तसलामा अट्ने</translation>
    </message>
    <message>
        <source>buckets of soil</source>
        <translation>माटोका बाल्टी</translation>
    </message>
    <message>
        <source>soil ÷ what the bucket holds</source>
        <translation>माटो ÷ बाल्टीमा अट्ने</translation>
    </message>
    <message>
        <source>buckets of sand</source>
        <translation>बालुवाका बाल्टी</translation>
    </message>
    <message>
        <source>sand ÷ what the bucket holds</source>
        <translation>बालुवा ÷ बाल्टीमा अट्ने</translation>
    </message>
    <message>
        <source>Batch with a whole bag</source>
        <translation>पूरा बोराको घान</translation>
    </message>
    <message>
        <source>Batch with half a bag</source>
        <translation>आधा बोराको घान</translation>
    </message>
    <message>
        <source>Numbers of the coats</source>
        <translation>पत्रका नम्बर</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>लागत, जम्मा</translation>
    </message>
    <message>
        <source>materials + labour + other + carriage + contingency</source>
        <translation>सामग्री + कामदार + अन्य + ढुवानी + भैपरी खर्च</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>सामग्री</translation>
    </message>
    <message>
        <source>sum of their amounts</source>
        <translation>तिनका रकमको जम्मा</translation>
    </message>
    <message>
        <source>sum of the amounts of labourers and masons</source>
        <translation>ज्यामी र डकर्मीका रकमको जम्मा</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>अन्य</translation>
    </message>
    <message>
        <source>sum of the amounts of own items</source>
        <translation>आफ्ना अन्य चिजका रकमको जम्मा</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>ढुवानी</translation>
    </message>
    <message>
        <source>sum of all trips</source>
        <translation>सबै खेपको जम्मा</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>भैपरी खर्च</translation>
    </message>
    <message>
        <source>share of all before it</source>
        <translation>त्यसअघिका सबैको भाग</translation>
    </message>
    <message>
        <source>Given by the household or group</source>
        <translation>घरपरिवार वा समूहको योगदान</translation>
    </message>
    <message>
        <source>sum of the shares given</source>
        <translation>योगदानका भागको जम्मा</translation>
    </message>
    <message>
        <source>Paid in money</source>
        <translation>पैसामा तिर्ने</translation>
    </message>
    <message>
        <source>total − given</source>
        <translation>जम्मा − योगदान</translation>
    </message>
    <message>
        <source>Cost for each m³ held</source>
        <translation>अट्ने हरेक m³को लागत</translation>
    </message>
    <message>
        <source>total ÷ held up to the overflow</source>
        <translation>जम्मा ÷ ओभरफ्लोसम्म अट्ने</translation>
    </message>
    <message>
        <source>sum of what is drawn in those months</source>
        <translation>ती महिनामा झिकिने पानीको जम्मा</translation>
    </message>
    <message>
        <source>Dry months</source>
        <translation>सुक्खा महिना</translation>
    </message>
    <message>
        <source>mean rain below half of ET0</source>
        <translation>औसत वर्षा ET0 को आधाभन्दा कम</translation>
    </message>
    <message>
        <source>Cost a year of the whole tank</source>
        <translation>पूरा ट्याङ्कीको वार्षिक लागत</translation>
    </message>
    <message>
        <source>total × capital recovery factor + upkeep of soil-cement</source>
        <translation>जम्मा × लगानी फिर्ता गुणक + माटो-सिमेन्टको मर्मत-सम्भार</translation>
    </message>
    <message>
        <source>Cost a year for each m³ drawn in dry months</source>
        <translation>सुक्खा महिनामा झिकिने हरेक m³को वार्षिक लागत</translation>
    </message>
    <message>
        <source>cost a year ÷ drawn in dry months</source>
        <translation>वार्षिक लागत ÷ सुक्खा महिनामा झिकिने</translation>
    </message>
    <message>
        <source>Quantity of each line</source>
        <translation>हरेक लाइनको परिमाण</translation>
    </message>
    <message>
        <source>as entered; else: what is to be ordered, person-days of labourers and masons, lengths of pipe and fence</source>
        <translation>राखिएअनुसार; नत्र: मगाउनुपर्ने परिमाण, ज्यामी र डकर्मीको जनदिन, पाइप र बारको लम्बाइ</translation>
    </message>
    <message>
        <source>Price of each line</source>
        <translation>हरेक लाइनको मूल्य</translation>
    </message>
    <message>
        <source>Amount of each line</source>
        <translation>हरेक लाइनको रकम</translation>
    </message>
    <message>
        <source>quantity × price</source>
        <translation>परिमाण × मूल्य</translation>
    </message>
    <message>
        <source>Given, of each line</source>
        <translation>हरेक लाइनको योगदान</translation>
    </message>
    <message>
        <source>amount × share given</source>
        <translation>रकम × योगदानको भाग</translation>
    </message>
    <message>
        <source>Paid, of each line</source>
        <translation>हरेक लाइनको तिर्ने</translation>
    </message>
    <message>
        <source>amount − given</source>
        <translation>रकम − योगदान</translation>
    </message>
    <message>
        <source>Weight to carry</source>
        <translation>बोक्ने तौल</translation>
    </message>
    <message>
        <source>quantity × weight of one, as entered or usual</source>
        <translation>परिमाण × एउटाको तौल, राखिएअनुसार वा साधारण</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>भारी</translation>
    </message>
    <message>
        <source>weight ÷ load, rounded up; bags and sacks carried whole</source>
        <translation>तौल ÷ भारी, माथितिर मिलाइएको; सिमेन्टका बोरा र जुट सिङ्गै बोकिन्छन्</translation>
    </message>
    <message>
        <source>Loads for one piece</source>
        <translation>एउटा टुक्राका भारी</translation>
    </message>
    <message>
        <source>weight of one ÷ load, rounded up: heavier pieces are split</source>
        <translation>एउटाको तौल ÷ भारी, माथितिर मिलाइएको: गह्रौं चिज टुक्राइन्छ</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>एक्लैले बोक्ने दिन</translation>
    </message>
    <message>
        <source>loads ÷ trips a day</source>
        <translation>भारी ÷ दिनको खेप</translation>
    </message>
    <message>
        <source>Cost of the trips</source>
        <translation>खेपको लागत</translation>
    </message>
    <message>
        <source>loads × price of a trip</source>
        <translation>भारी × एक खेपको मूल्य</translation>
    </message>
    <message>
        <source>Days on which money is needed</source>
        <translation>पैसा चाहिने दिन</translation>
    </message>
    <message>
        <source>goods: start of the first task that uses them; wages: days of each task</source>
        <translation>सामान: त्यो चाहिने पहिलो कामको सुरु; ज्याला: हरेक कामका दिन</translation>
    </message>
    <message>
        <source>Money for goods by day</source>
        <translation>दिनदिन सामानको पैसा</translation>
    </message>
    <message>
        <source>cash of goods and their carriage; own items on the first day</source>
        <translation>सामान र त्यसको ढुवानीको नगद; आफ्ना अन्य चिज पहिलो दिन</translation>
    </message>
    <message>
        <source>Money for wages by day</source>
        <translation>दिनदिन ज्यालाको पैसा</translation>
    </message>
    <message>
        <source>cash of each task&apos;s person-days, spread evenly over its days</source>
        <translation>हरेक कामको जनदिनको नगद, कामका दिनमा बराबर बाँडेर</translation>
    </message>
    <message>
        <source>Money so far</source>
        <translation>यहाँसम्मको पैसा</translation>
    </message>
    <message>
        <source>sum up to and with the day, without contingency</source>
        <translation>त्यो दिनसमेत त्यहाँसम्मको जम्मा, भैपरी खर्च नजोडी</translation>
    </message>
    <message>
        <source>Price of each lining alone</source>
        <translation>हरेक अस्तरको मात्र मूल्य</translation>
    </message>
    <message>
        <source>offer × 1, face or volume held; soil-cement without an offer: its materials, carriage and person-days × (1 + contingency)</source>
        <translation>बताइएको मूल्य × 1, सतह वा अट्ने आयतन; मूल्य नबताइएको माटो-सिमेन्ट: त्यसको सामग्री, ढुवानी र जनदिन × (1 + भैपरी खर्च)</translation>
    </message>
    <message>
        <source>Digging and platform for it</source>
        <translation>त्यसका लागि खन्ने र सम्याउने</translation>
    </message>
    <message>
        <source>person-days of topsoil, platform, pit, spoil and trimming × price of a labourer × (1 + contingency); none for a moulded tank</source>
        <translation>मलिलो माटो, सम्याउने, खाडल, खनेको माटो र ताछ्ने कामको जनदिन × ज्यामीको ज्याला × (1 + भैपरी खर्च); तयारी प्लास्टिक ट्याङ्कीलाई छैन</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>सुरु लगानी</translation>
    </message>
    <message>
        <source>price + digging and platform</source>
        <translation>मूल्य + खन्ने र सम्याउने</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>आयु</translation>
    </message>
    <message>
        <source>Capital recovery factor</source>
        <translation>लगानी फिर्ता गुणक</translation>
    </message>
    <message>
        <source>i (1 + i)^n ÷ ((1 + i)^n − 1); 1 ÷ n without interest</source>
        <translation>i (1 + i)^n ÷ ((1 + i)^n − 1); ब्याज नभए 1 ÷ n</translation>
    </message>
    <message>
        <source>share of the price</source>
        <translation>मूल्यको भाग</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>वार्षिक लागत</translation>
    </message>
    <message>
        <source>capital × factor + upkeep</source>
        <translation>सुरु लगानी × गुणक + मर्मत-सम्भार</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>अट्ने हरेक m³को वार्षिक लागत</translation>
    </message>
    <message>
        <source>cost a year ÷ held up to the overflow</source>
        <translation>वार्षिक लागत ÷ ओभरफ्लोसम्म अट्ने</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>गोला</translation>
    </message>
    <message>
        <source>With every input as it stands</source>
        <translation>राखिएका सबै अङ्क जस्ताको तस्तै</translation>
    </message>
    <message>
        <source>as in the plan</source>
        <translation>योजनामा जस्तै</translation>
    </message>
    <message>
        <source>One draw in ten below (P10)</source>
        <translation>दशमा एक गोला योभन्दा तल (P10)</translation>
    </message>
    <message>
        <source>each input triangular between low, 0 and high about its value; draws sorted, least that a tenth does not exceed</source>
        <translation>हरेक राखिएको अङ्क आफ्नो मानको वरिपरि कम, ० र बढीबीच त्रिकोण वितरणमा; गोला क्रम मिलाएर, दशांशले ननाघ्ने सबैभन्दा सानो</translation>
    </message>
    <message>
        <source>Middle of the draws (P50)</source>
        <translation>गोलाको बीचको (P50)</translation>
    </message>
    <message>
        <source>draws sorted, least that half does not exceed</source>
        <translation>गोला क्रम मिलाएर, आधाले ननाघ्ने सबैभन्दा सानो</translation>
    </message>
    <message>
        <source>Nine draws in ten below (P90)</source>
        <translation>दशमा नौ गोला योभन्दा तल (P90)</translation>
    </message>
    <message>
        <source>draws sorted, least that nine tenths do not exceed</source>
        <translation>गोला क्रम मिलाएर, दशमा नौले ननाघ्ने सबैभन्दा सानो</translation>
    </message>
    <message>
        <source>Mean of the draws</source>
        <translation>गोलाको औसत</translation>
    </message>
    <message>
        <source>sum ÷ draws</source>
        <translation>जम्मा ÷ गोला</translation>
    </message>
    <message>
        <source>Least of the draws</source>
        <translation>गोलामा सबैभन्दा कम</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>सबैभन्दा सानो</translation>
    </message>
    <message>
        <source>Most of the draws</source>
        <translation>गोलामा सबैभन्दा बढी</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>सबैभन्दा ठूलो</translation>
    </message>
    <message>
        <source>Share of the spread that each input drives</source>
        <translation>घटबढमा हरेक राखिएको अङ्कको भाग</translation>
    </message>
    <message>
        <source>squared correlation ÷ sum of the squares</source>
        <translation>सहसम्बन्धको वर्ग ÷ वर्गको जम्मा</translation>
    </message>
    <message>
        <source>Correlation with each input</source>
        <translation>हरेक राखिएको अङ्कसँगको सहसम्बन्ध</translation>
    </message>
    <message>
        <source>Pearson&apos;s, over all draws</source>
        <translation>Pearson को, सबै गोलाबाट</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>ओभरफ्लोसम्म भर्दा अट्ने</translation>
    </message>
    <message>
        <source>planned like this tank</source>
        <translation>यही ट्याङ्कीजस्तै योजना गरिएको</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>काम लाग्ने पानी</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>खन्ने खाडल</translation>
    </message>
    <message>
        <source>Clear length at the floor</source>
        <translation>भुइँमा भित्री लम्बाइ</translation>
    </message>
    <message>
        <source>as the option has it</source>
        <translation>विकल्पमा भएअनुसार</translation>
    </message>
    <message>
        <source>Clear width at the floor</source>
        <translation>भुइँमा भित्री चौडाइ</translation>
    </message>
    <message>
        <source>Clear depth</source>
        <translation>भित्री गहिराइ</translation>
    </message>
    <message>
        <source>Sand to order</source>
        <translation>मगाउने बालुवा</translation>
    </message>
    <message>
        <source>Stone to bring</source>
        <translation>ल्याउने ढुङ्गा</translation>
    </message>
    <message>
        <source>largest need of the coats</source>
        <translation>पत्रहरूको सबैभन्दा ठूलो खाँचो</translation>
    </message>
    <message>
        <source>earliest start of a task</source>
        <translation>कुनै कामको सबैभन्दा छिटो सुरु</translation>
    </message>
    <message>
        <source>latest end of a task, planting left out</source>
        <translation>कुनै कामको सबैभन्दा ढिलो अन्त्य, रोप्ने काम छोडेर</translation>
    </message>
    <message>
        <source>planned like this tank; none while prices are missing</source>
        <translation>यही ट्याङ्कीजस्तै योजना गरिएको; मूल्य छुटेसम्म हिसाब छैन</translation>
    </message>
    <message>
        <source>cost ÷ held up to the overflow</source>
        <translation>लागत ÷ ओभरफ्लोसम्म अट्ने</translation>
    </message>
    <message>
        <source>same weather years</source>
        <translation>उही मौसम वर्ष</translation>
    </message>
    <message>
        <source>Days short of water in a mean year</source>
        <translation>औसत वर्षमा पानी नपुगेका दिन</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>गनिएको</translation>
    </message>
    <message>
        <source>points of the line, level distance</source>
        <translation>पाइपलाइनका बिन्दु, समथर दूरी</translation>
    </message>
    <message>
        <source>distances of the way from its first point; field line over the rim: inlet, crest, then the way</source>
        <translation>बाटोको पहिलो बिन्दुदेखिका दूरी; बिटमाथिबाट जाने बारीको पाइपलाइन: पस्ने मुख, टुप्पो, अनि बाटो</translation>
    </message>
    <message>
        <source>points of the line, over the finished floor</source>
        <translation>पाइपलाइनका बिन्दु, तयारी भुइँभन्दा माथि</translation>
    </message>
    <message>
        <source>rim + height over the rim; inlet 2 cm under the dead level, crest over the rim</source>
        <translation>बिट + बिटभन्दा माथिको उचाइ; पस्ने मुख निकासमुनिको पानीको सतहभन्दा २ cm तल, टुप्पो बिटभन्दा माथि</translation>
    </message>
    <message>
        <source>losses of the fittings, K</source>
        <translation>फिटिङको हेड घाटा, K</translation>
    </message>
    <message>
        <source>number × K of one: screen 1 (own figure), sharp entrance 0.5, elbow 0.9, gate valve 0.15</source>
        <translation>सङ्ख्या × एउटाको K: जाली 1 (आफ्नै अङ्क), धारिलो मुख 0.5, एल्बो 0.9, गेट भल्भ 0.15</translation>
    </message>
    <message>
        <source>where the fittings sit</source>
        <translation>फिटिङ कहाँ छन्</translation>
    </message>
    <message>
        <source>at the inlet; elbows of the field line half at the crest, half at the end</source>
        <translation>पस्ने मुखमा; बारीको पाइपलाइनका एल्बो आधा टुप्पोमा, आधा छेउमा</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>भित्री व्यास</translation>
    </message>
    <message>
        <source>measured, else outside diameter − 2 × wall</source>
        <translation>नापिएको, नत्र बाहिरी व्यास − 2 × भित्ताको मोटाइ</translation>
    </message>
    <message>
        <source>pressure class that holds</source>
        <translation>थाम्ने चाप श्रेणी</translation>
    </message>
    <message>
        <source>class × share for warm water</source>
        <translation>श्रेणी × न्यानो पानीको भाग</translation>
    </message>
    <message>
        <source>share of the class that holds in warm water</source>
        <translation>न्यानो पानीमा श्रेणीले थाम्ने भाग</translation>
    </message>
    <message>
        <source>1 up to 20 °C, 0.87 at 30 °C, 0.74 at 40 °C, straight between</source>
        <translation>२० °C सम्म १, ३० °C मा ०.८७, ४० °C मा ०.७४, बीचमा सोझो रेखा</translation>
    </message>
    <message>
        <source>flow wanted</source>
        <translation>चाहिने बहाव</translation>
    </message>
    <message>
        <source>as entered; field line: outlets × usual flow of one</source>
        <translation>राखिएअनुसार; बारीको पाइपलाइन: निकास × एउटाको साधारण बहाव</translation>
    </message>
    <message>
        <source>water over the inlet, tank full</source>
        <translation>पस्ने मुखमाथिको पानी, ट्याङ्की भरि</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: overflow level</source>
        <translation>स्रोतको पाइपलाइन: पस्ने मुख + त्यसमाथिको पानी; बारीको पाइपलाइन: ओभरफ्लोको सतह</translation>
    </message>
    <message>
        <source>water over the inlet, tank nearly empty</source>
        <translation>पस्ने मुखमाथिको पानी, ट्याङ्की लगभग खाली</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: dead level</source>
        <translation>स्रोतको पाइपलाइन: पस्ने मुख + त्यसमाथिको पानी; बारीको पाइपलाइन: निकासमुनिको पानीको सतह</translation>
    </message>
    <message>
        <source>Field line</source>
        <translation>बारीको पाइपलाइन</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>बाहिरी व्यास</translation>
    </message>
    <message>
        <source>size of the table</source>
        <translation>तालिकाको साइज</translation>
    </message>
    <message>
        <source>least wall</source>
        <translation>भित्ताको न्यूनतम मोटाइ</translation>
    </message>
    <message>
        <source>bore with the least wall</source>
        <translation>न्यूनतम मोटाइमा भित्री व्यास</translation>
    </message>
    <message>
        <source>outside diameter − 2 × wall</source>
        <translation>बाहिरी व्यास − 2 × भित्ताको मोटाइ</translation>
    </message>
    <message>
        <source>outside diameter over wall</source>
        <translation>बाहिरी व्यास ÷ भित्ताको मोटाइ</translation>
    </message>
    <message>
        <source>pressure class</source>
        <translation>चाप श्रेणी</translation>
    </message>
    <message>
        <source>size of the table: 20 × strength ÷ (1.25 × (SDR − 1)), rounded to a class</source>
        <translation>तालिकाको साइज: 20 × बल ÷ (1.25 × (SDR − 1)), श्रेणीमा मिलाइएको</translation>
    </message>
    <message>
        <source>Field line, pipe</source>
        <translation>बारीको पाइपलाइन, पाइप</translation>
    </message>
    <message>
        <source>Field line, smallest pipe that would do</source>
        <translation>बारीको पाइपलाइन, काम चल्ने सबैभन्दा सानो पाइप</translation>
    </message>
    <message>
        <source>its flow</source>
        <translation>त्यसको बहाव</translation>
    </message>
    <message>
        <source>like the flow of the line, where that is less</source>
        <translation>पाइपलाइनको बहावजस्तै, त्यो कम भए</translation>
    </message>
    <message>
        <source>Field line, tank full</source>
        <translation>बारीको पाइपलाइन, ट्याङ्की भरि</translation>
    </message>
    <message>
        <source>Field line, tank nearly empty</source>
        <translation>बारीको पाइपलाइन, ट्याङ्की लगभग खाली</translation>
    </message>
    <message>
        <source>air pressure less vapour</source>
        <translation>हावाको चाप, बाफ घटाएर</translation>
    </message>
    <message>
        <source>air pressure at that height − vapour pressure, as water column</source>
        <translation>त्यो उचाइको हावाको चाप − बाफको चाप, पानीको उचाइमा</translation>
    </message>
    <message>
        <source>most lift</source>
        <translation>सबैभन्दा बढी उठाइ</translation>
    </message>
    <message>
        <source>air pressure less vapour − reserve of 2 m</source>
        <translation>हावाको चाप, बाफ घटाएर − २ m जगेडा</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>उठाइ</translation>
    </message>
    <message>
        <source>crest − water</source>
        <translation>टुप्पो − पानी</translation>
    </message>
    <message>
        <source>lift left</source>
        <translation>बाँकी उठाइ</translation>
    </message>
    <message>
        <source>most lift − lift − loss up to the crest</source>
        <translation>सबैभन्दा बढी उठाइ − उठाइ − टुप्पोसम्मको हेड घाटा</translation>
    </message>
    <message>
        <source>draws down to, at a trickle</source>
        <translation>सानो धारमा यहाँसम्म पानी झिक्छ</translation>
    </message>
    <message>
        <source>highest of inlet, outlet and crest − most lift</source>
        <translation>पस्ने मुख, निकास र (टुप्पो − सबैभन्दा बढी उठाइ) मध्ये सबैभन्दा माथि</translation>
    </message>
    <message>
        <source>water that fills the pipe</source>
        <translation>पाइप भर्ने पानी</translation>
    </message>
    <message>
        <source>π D² ÷ 4 × length</source>
        <translation>π D² ÷ 4 × लम्बाइ</translation>
    </message>
    <message>
        <source>flow, valve open</source>
        <translation>बहाव, भल्भ खुला</translation>
    </message>
    <message>
        <source>found so that water − outlet = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>पानी − निकास = (1 + K को जम्मा + f L ÷ D) V² ÷ 2g हुने गरी खोजिएको</translation>
    </message>
    <message>
        <source>loss up to the crest</source>
        <translation>टुप्पोसम्मको हेड घाटा</translation>
    </message>
    <message>
        <source>(1 + K up to the crest + f L ÷ D) V² ÷ 2g</source>
        <translation>(1 + टुप्पोसम्मको K + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure at the crest</source>
        <translation>टुप्पोमा चाप</translation>
    </message>
    <message>
        <source>− lift − loss up to the crest</source>
        <translation>− उठाइ − टुप्पोसम्मको हेड घाटा</translation>
    </message>
    <message>
        <source>speed that carries air down</source>
        <translation>हावा तल लैजाने वेग</translation>
    </message>
    <message>
        <source>√(g D) × (0.825 + 0.25 √(sine of the fall))</source>
        <translation>√(g D) × (0.825 + 0.25 √(ढालको साइन))</translation>
    </message>
    <message>
        <source>most flow that the crest allows</source>
        <translation>टुप्पोले दिने सबैभन्दा बढी बहाव</translation>
    </message>
    <message>
        <source>flow whose loss up to the crest uses up the lift</source>
        <translation>टुप्पोसम्मको हेड घाटाले उठाइ सकाउने बहाव</translation>
    </message>
    <message>
        <source>Siphon, tank full</source>
        <translation>साइफन, ट्याङ्की भरि</translation>
    </message>
    <message>
        <source>Siphon, tank nearly empty</source>
        <translation>साइफन, ट्याङ्की लगभग खाली</translation>
    </message>
    <message>
        <source>of the even slope as entered, or of the plane laid through the survey under the platform</source>
        <translation>राखिएको एकनास ढालको, वा सम्याएको ठाउँमुनिको नापीबाट मिलाइएको समतलको</translation>
    </message>
    <message>
        <source>Downhill, from north by east</source>
        <translation>ओरालोतिर, उत्तरबाट पूर्व हुँदै</translation>
    </message>
    <message>
        <source>as entered, or of that plane</source>
        <translation>राखिएअनुसार, वा त्यही समतलको</translation>
    </message>
    <message>
        <source>outline of the pit at the ground with rim collar and walkway all round</source>
        <translation>जमिनमा खाडलको घेरा, बिटको घेरा र वरिपरि हिँड्ने पेटीसहित</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle of the tank</source>
        <translation>ट्याङ्कीको बीचमा जमिनभन्दा माथि सम्याएको ठाउँ</translation>
    </message>
    <message>
        <source>as wished: whole pit in natural ground, cut and fill balanced, or as entered</source>
        <translation>चाहनाअनुसार: पूरा खाडल सक्कली जमिनमा, कटान र पुराइ बराबर, वा राखिएअनुसार</translation>
    </message>
    <message>
        <source>Ground to be brought for the fill</source>
        <translation>पुराइका लागि बाहिरबाट ल्याउने माटो</translation>
    </message>
    <message>
        <source>fill ÷ (rammed volume of 1 m³ dug) − pit − cut, where that is over 0</source>
        <translation>पुराइ ÷ (खनेको 1 m³को खाँदेको आयतन) − खाडल − कटान, 0 भन्दा बढी भए</translation>
    </message>
    <message>
        <source>Natural ground over the pit, least</source>
        <translation>खाडलमाथि सक्कली जमिन, सबैभन्दा कम</translation>
    </message>
    <message>
        <source>natural ground less topsoil − floor or wall of the pit, where that is least; below 0 it stands on fill</source>
        <translation>मलिलो माटो घटाएको सक्कली जमिन − खाडलको पिँध वा भित्ता, सबैभन्दा कम भएको ठाउँमा; ० भन्दा कम भए पुराइमाथि पर्छ</translation>
    </message>
    <message>
        <source>Each way to find the level: over the ground at the middle</source>
        <translation>उचाइ निकाल्ने हरेक तरिका: बीचमा जमिनभन्दा माथि</translation>
    </message>
    <message>
        <source>highest with the whole pit in natural ground; (cut × rammed volume of 1 m³) = fill; as entered</source>
        <translation>पूरा खाडल सक्कली जमिनमा पर्ने सबैभन्दा माथि; (कटान × 1 m³को खाँदेको आयतन) = पुराइ; राखिएअनुसार</translation>
    </message>
    <message>
        <source>Each way: cut</source>
        <translation>हरेक तरिका: कटान</translation>
    </message>
    <message>
        <source>like the cut for the platform</source>
        <translation>सम्याएको ठाउँको कटानजस्तै</translation>
    </message>
    <message>
        <source>Each way: fill</source>
        <translation>हरेक तरिका: पुराइ</translation>
    </message>
    <message>
        <source>like the fill for the platform</source>
        <translation>सम्याएको ठाउँको पुराइजस्तै</translation>
    </message>
    <message>
        <source>Each way: natural ground over the pit, least</source>
        <translation>हरेक तरिका: खाडलमाथि सक्कली जमिन, सबैभन्दा कम</translation>
    </message>
    <message>
        <source>like the cover of the pit</source>
        <translation>खाडलमाथिको सक्कली जमिनजस्तै</translation>
    </message>
    <message>
        <source>Platform pegs: east</source>
        <translation>सम्याएको ठाउँका किला: पूर्व</translation>
    </message>
    <message>
        <source>corner of the platform, or where cut and fill come out of the ground on the line out from it</source>
        <translation>सम्याएको ठाउँको कुना, वा त्यसबाट सीधा बाहिर कटान वा पुराइ जमिनमा भेटिने ठाउँ</translation>
    </message>
    <message>
        <source>Platform pegs: north</source>
        <translation>सम्याएको ठाउँका किला: उत्तर</translation>
    </message>
    <message>
        <source>Platform pegs: level</source>
        <translation>सम्याएको ठाउँका किला: उचाइ</translation>
    </message>
    <message>
        <source>of the platform; out from it of the ground</source>
        <translation>सम्याएको ठाउँको; त्यसबाट बाहिर जमिनको</translation>
    </message>
    <message>
        <source>Platform pegs: natural ground</source>
        <translation>सम्याएको ठाउँका किला: सक्कली जमिन</translation>
    </message>
    <message>
        <source>height of the survey&apos;s triangle, or of the slope, at the peg</source>
        <translation>किलामा नापीको त्रिकोण वा ढालको उचाइ</translation>
    </message>
    <message>
        <source>Platform pegs: dig, below 0 fill</source>
        <translation>सम्याएको ठाउँका किला: खन्ने, ० भन्दा कम भए पुर्ने</translation>
    </message>
    <message>
        <source>ground − finished surface</source>
        <translation>जमिन − तयारी सतह</translation>
    </message>
    <message>
        <source>Platform pegs: from the corner</source>
        <translation>सम्याएको ठाउँका किला: कुनाबाट</translation>
    </message>
    <message>
        <source>level distance</source>
        <translation>समथर दूरी</translation>
    </message>
    <message>
        <source>Platform pegs: over the platform</source>
        <translation>सम्याएको ठाउँका किला: सम्याएको ठाउँभन्दा माथि</translation>
    </message>
    <message>
        <source>peg − platform</source>
        <translation>किला − सम्याएको ठाउँ</translation>
    </message>
    <message>
        <source>Heap of spoil, loose</source>
        <translation>माटोको थुप्रो, खुकुलो</translation>
    </message>
    <message>
        <source>spoil as it lies × (1 + swell)</source>
        <translation>नखनेको नापको माटो × (1 + खन्दा फुल्ने)</translation>
    </message>
    <message>
        <source>Height of the heap</source>
        <translation>थुप्रोको उचाइ</translation>
    </message>
    <message>
        <source>cone with sides at 35°, cut off level at 1.5 m where it would be higher</source>
        <translation>३५° छेउ भएको सोली आकार; योभन्दा अग्लो हुने भए १.५ m मा समथर काटिएको</translation>
    </message>
    <message>
        <source>Radius of the heap&apos;s foot</source>
        <translation>थुप्रोको फेदको अर्धव्यास</translation>
    </message>
    <message>
        <source>cone: height ÷ tan 35°; cut off: from the volume</source>
        <translation>सोली: उचाइ ÷ tan 35°; काटिएको: आयतनबाट</translation>
    </message>
    <message>
        <source>Direction of the heap, from north by east</source>
        <translation>थुप्रोको दिशा, उत्तरबाट पूर्व हुँदै</translation>
    </message>
    <message>
        <source>as entered; else across the fall, east on level ground</source>
        <translation>राखिएअनुसार; नत्र ढालको तेर्सो, समथर जमिनमा पूर्व</translation>
    </message>
    <message>
        <source>Foot of the heap from the pit edge</source>
        <translation>खाडलको डिलबाट थुप्रोको फेद</translation>
    </message>
    <message>
        <source>at least 0.6 m, and clear of platform, cut and fill</source>
        <translation>कम्तीमा ०.६ m, र सम्याएको ठाउँ, कटान र पुराइभन्दा पर</translation>
    </message>
    <message>
        <source>Middle of the heap, east</source>
        <translation>थुप्रोको बीच, पूर्व</translation>
    </message>
    <message>
        <source>in its direction, as near as its foot may come</source>
        <translation>त्यसको दिशामा, फेद आउन मिल्नेसम्म नजिक</translation>
    </message>
    <message>
        <source>Middle of the heap, north</source>
        <translation>थुप्रोको बीच, उत्तर</translation>
    </message>
    <message>
        <source>Face of the pit wall, from the level</source>
        <translation>खाडलको भित्ताको सतह, समथरबाट</translation>
    </message>
    <message>
        <source>90° − arctan of the batter</source>
        <translation>९०° − ढल्काइको arctan</translation>
    </message>
    <message>
        <source>Pit depth</source>
        <translation>खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>clear depth + all coats + stone bed</source>
        <translation>भित्री गहिराइ + सबै पत्र + ढुङ्गाको सोलिङ</translation>
    </message>
    <message>
        <source>Factor wanted for the cut</source>
        <translation>कटानमा चाहिने गुणक</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>तोकिएको</translation>
    </message>
    <message>
        <source>Factor wanted for the downhill side</source>
        <translation>ओरालोतिरको भागमा चाहिने गुणक</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>टाँसिने बल c</translation>
    </message>
    <message>
        <source>table by kind of soil</source>
        <translation>माटोको किसिमअनुसार तालिका</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>घर्षण φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>एकाइ तौल γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut that just stands</source>
        <translation>मुस्किलले अडिने ठाडो कटानको उचाइ</translation>
    </message>
    <message>
        <source>4 c ÷ γ × tan(45° + φ ÷ 2)</source>
        <translation>4 c ÷ γ × tan(45° + φ ÷ 2)</translation>
    </message>
    <message>
        <source>Height at which this face just stands</source>
        <translation>यो सतह मुस्किलले अडिने उचाइ</translation>
    </message>
    <message>
        <source>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</source>
        <translation>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</translation>
    </message>
    <message>
        <source>Height of this face with the factor wanted</source>
        <translation>चाहिने गुणकमा यो सतहको उचाइ</translation>
    </message>
    <message>
        <source>the same with c ÷ F and tan φ ÷ F</source>
        <translation>उही, c ÷ F र tan φ ÷ F ले</translation>
    </message>
    <message>
        <source>Stability number N</source>
        <translation>स्थिरता अङ्क N</translation>
    </message>
    <message>
        <source>table by face and friction, straight between</source>
        <translation>सतह र घर्षणको तालिका, बीचमा सोझो रेखा</translation>
    </message>
    <message>
        <source>Height of this face by it</source>
        <translation>त्यसले यो सतहको उचाइ</translation>
    </message>
    <message>
        <source>c ÷ (γ N)</source>
        <translation>c ÷ (γ N)</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>त्यसले यो कटानको गुणक</translation>
    </message>
    <message>
        <source>F for which c ÷ F and tan φ ÷ F just hold the pit&apos;s depth</source>
        <translation>c ÷ F र tan φ ÷ F ले खाडलको गहिराइ मुस्किलले थाम्ने F</translation>
    </message>
    <message>
        <source>Lowest factor of the downhill side</source>
        <translation>ओरालोतिरको भागको सबैभन्दा कम गुणक</translation>
    </message>
    <message>
        <source>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; circle with the lowest of all tried, low strengths</source>
        <translation>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; हेरिएकामध्ये सबैभन्दा कमको वृत्त, कम बल</translation>
    </message>
    <message>
        <source>Its circle: middle, downhill from the tank</source>
        <translation>त्यसको वृत्त: बीच, ट्याङ्कीबाट ओरालोतिर</translation>
    </message>
    <message>
        <source>place that the search found</source>
        <translation>खोजेर भेटिएको ठाउँ</translation>
    </message>
    <message>
        <source>Its circle: middle, over the finished floor</source>
        <translation>त्यसको वृत्त: बीच, तयारी भुइँभन्दा माथि</translation>
    </message>
    <message>
        <source>Its circle: radius</source>
        <translation>त्यसको वृत्त: अर्धव्यास</translation>
    </message>
    <message>
        <source>size that the search found</source>
        <translation>खोजेर भेटिएको साइज</translation>
    </message>
    <message>
        <source>Slip from, downhill from the middle of the tank</source>
        <translation>पहिरो सुरु, ट्याङ्कीको बीचबाट ओरालोतिर</translation>
    </message>
    <message>
        <source>where the circle meets the ground above</source>
        <translation>वृत्तले माथि जमिन भेट्ने ठाउँ</translation>
    </message>
    <message>
        <source>Slip to, downhill from the middle of the tank</source>
        <translation>पहिरो अन्त्य, ट्याङ्कीको बीचबाट ओरालोतिर</translation>
    </message>
    <message>
        <source>where the circle meets the ground below</source>
        <translation>वृत्तले तल जमिन भेट्ने ठाउँ</translation>
    </message>
    <message>
        <source>Circles tried</source>
        <translation>हेरिएका वृत्त</translation>
    </message>
    <message>
        <source>a coarse grid of ends and depths, then ever smaller steps from the best</source>
        <translation>छेउ र गहिराइका फराकिला खुड्किला, अनि सबैभन्दा राम्रोबाट झन्झन् साना खुड्किला</translation>
    </message>
    <message>
        <source>Crack behind the slip</source>
        <translation>पहिरोपछाडिको चिरा</translation>
    </message>
    <message>
        <source>as deep as the pit, no deeper than the ground falls away; the lower of the factors with and without counts</source>
        <translation>खाडल जति गहिरो, तर जमिन ओर्लिएभन्दा गहिरो होइन; हुँदा र नहुँदाका गुणकमध्ये कम चाहिँ लिइन्छ</translation>
    </message>
    <message>
        <source>Months with readings</source>
        <translation>नाप भएका महिना</translation>
    </message>
    <message>
        <source>Readings of the month</source>
        <translation>महिनाका नाप</translation>
    </message>
    <message>
        <source>Flow, middle of the readings</source>
        <translation>बहाव, बीचको नाप</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60; the middle one, or mean of the two middle ones</source>
        <translation>भाँडो ÷ सेकेन्ड × 60; बीचको, वा बीचका दुईको औसत</translation>
    </message>
    <message>
        <source>Flow, smallest reading</source>
        <translation>बहाव, सबैभन्दा सानो नाप</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60</source>
        <translation>भाँडो ÷ सेकेन्ड × 60</translation>
    </message>
    <message>
        <source>Flow, largest reading</source>
        <translation>बहाव, सबैभन्दा ठूलो नाप</translation>
    </message>
    <message>
        <source>Spread of the readings</source>
        <translation>नापको घटबढ</translation>
    </message>
    <message>
        <source>(largest − smallest) ÷ middle, readings far off left out</source>
        <translation>(सबैभन्दा ठूलो − सबैभन्दा सानो) ÷ बीचको, धेरै टाढाका नाप छोडेर</translation>
    </message>
    <message>
        <source>Readings far off, by number</source>
        <translation>धेरै टाढाका नाप, नम्बरले</translation>
    </message>
    <message>
        <source>0.6745 × distance from the middle ÷ middle of those distances over 3.5; counted from 0</source>
        <translation>0.6745 × बीचकोदेखिको दूरी ÷ ती दूरीको बीचको, 3.5 भन्दा बढी; 0 देखि गनेर</translation>
    </message>
    <message>
        <source>Readings too quick, by number</source>
        <translation>धेरै छिटोका नाप, नम्बरले</translation>
    </message>
    <message>
        <source>vessel full in under 3 s; counted from 0</source>
        <translation>भाँडो ३ s भन्दा कममा भरिएको; ० देखि गनेर</translation>
    </message>
    <message>
        <source>Height of the place over the sea</source>
        <translation>समुद्र सतहदेखि ठाउँको उचाइ</translation>
    </message>
    <message>
        <source>as entered; 0 when it is not known</source>
        <translation>राखिएअनुसार; थाहा नभए ०</translation>
    </message>
    <message>
        <source>Rim over the finished floor</source>
        <translation>तयारी भुइँभन्दा माथि बिट</translation>
    </message>
    <message>
        <source>Overflow over the finished floor</source>
        <translation>तयारी भुइँभन्दा माथि ओभरफ्लो</translation>
    </message>
    <message>
        <source>depth − freeboard</source>
        <translation>गहिराइ − फ्रिबोर्ड</translation>
    </message>
    <message>
        <source>Source line fills the empty tank in</source>
        <translation>स्रोतको पाइपलाइनले खाली ट्याङ्की भर्ने समय</translation>
    </message>
    <message>
        <source>held up to the overflow ÷ flow with the tank full, nothing drawn</source>
        <translation>ओभरफ्लोसम्म अट्ने ÷ ट्याङ्की भरि हुँदाको बहाव, केही नझिकी</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank full</source>
        <translation>निकास डुब्ने पानी, ट्याङ्की भरि</translation>
    </message>
    <message>
        <source>overflow level where the end lies below it</source>
        <translation>छेउ ओभरफ्लोको सतहभन्दा तल भए ओभरफ्लोको सतह</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank nearly empty</source>
        <translation>निकास डुब्ने पानी, ट्याङ्की लगभग खाली</translation>
    </message>
    <message>
        <source>dead level where the end lies below it</source>
        <translation>छेउ निकासमुनिको पानीको सतहभन्दा तल भए त्यही सतह</translation>
    </message>
    <message>
        <source>Source line</source>
        <translation>स्रोतको पाइपलाइन</translation>
    </message>
    <message>
        <source>Source line, pipe</source>
        <translation>स्रोतको पाइपलाइन, पाइप</translation>
    </message>
    <message>
        <source>Source line, smallest pipe that would do</source>
        <translation>स्रोतको पाइपलाइन, काम चल्ने सबैभन्दा सानो पाइप</translation>
    </message>
    <message>
        <source>Source line, tank full</source>
        <translation>स्रोतको पाइपलाइन, ट्याङ्की भरि</translation>
    </message>
    <message>
        <source>Source line, tank nearly empty</source>
        <translation>स्रोतको पाइपलाइन, ट्याङ्की लगभग खाली</translation>
    </message>
    <message>
        <source>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3 less the cove, with h up to the overflow; A floor, P its edge, b batter, C corner coefficient</source>
        <translation>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3, फेदको गोलाइ घटाएर, h ओभरफ्लोसम्म; A भुइँ, P त्यसको घेरा, b ढल्काइ, C कुनाको गुणाङ्क</translation>
    </message>
    <message>
        <source>Holds, filled to the rim</source>
        <translation>बिटसम्म भर्दा अट्ने</translation>
    </message>
    <message>
        <source>V(h) as above, with h up to the rim</source>
        <translation>V(h) माथिकै जस्तो, h बिटसम्म</translation>
    </message>
    <message>
        <source>Cannot be drawn</source>
        <translation>झिक्न नसकिने</translation>
    </message>
    <message>
        <source>V(h) as above, with h the dead depth</source>
        <translation>V(h) माथिकै जस्तो, h निकासमुनिको गहिराइ</translation>
    </message>
    <message>
        <source>held up to the overflow − what cannot be drawn</source>
        <translation>ओभरफ्लोसम्म अट्ने − झिक्न नसकिने</translation>
    </message>
    <message>
        <source>Water surface when full</source>
        <translation>भरिँदा पानीको माथिल्लो सतह</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × height up to the overflow</source>
        <translation>A + P d + C d², d = ढल्काइ × ओभरफ्लोसम्मको उचाइ</translation>
    </message>
    <message>
        <source>Clear floor</source>
        <translation>भित्री भुइँ</translation>
    </message>
    <message>
        <source>area of the clear floor, cove left out</source>
        <translation>भित्री भुइँको क्षेत्रफल, फेदको गोलाइ छोडेर</translation>
    </message>
    <message>
        <source>Edge of the clear floor</source>
        <translation>भित्री भुइँको घेरा</translation>
    </message>
    <message>
        <source>length all round the clear floor</source>
        <translation>भित्री भुइँको वरिपरिको लम्बाइ</translation>
    </message>
    <message>
        <source>Corner coefficient</source>
        <translation>कुनाको गुणाङ्क</translation>
    </message>
    <message>
        <source>C in: an outline moved out by d has the area A + P d + C d²; sum of cot(half the inside angle) of sharp corners; π for round ones</source>
        <translation>यसमा C: घेरा d जति बाहिर सार्दा क्षेत्रफल A + P d + C d² हुन्छ; चुच्चा कुनाको cot(भित्री कोणको आधा) को जम्मा; गोलालाई π</translation>
    </message>
    <message>
        <source>Clear wall, along the slope</source>
        <translation>भित्री भित्ता, ढल्काइमा नापेर</translation>
    </message>
    <message>
        <source>√(1 + batter²) × depth × half of (edge of the floor + edge at the rim)</source>
        <translation>√(1 + ढल्काइ²) × गहिराइ × (भुइँको घेरा + मुखको घेरा) को आधा</translation>
    </message>
    <message>
        <source>Length round the clear top</source>
        <translation>भित्री मुखको वरिपरिको लम्बाइ</translation>
    </message>
    <message>
        <source>edge of the floor + 2 C × batter × depth</source>
        <translation>भुइँको घेरा + 2 C × ढल्काइ × गहिराइ</translation>
    </message>
    <message>
        <source>Clear opening at the rim</source>
        <translation>बिटमा भित्री मुख</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × depth</source>
        <translation>A + P d + C d², d = ढल्काइ × गहिराइ</translation>
    </message>
    <message>
        <source>as entered at the floor; entered at the rim: less 2 × batter × depth</source>
        <translation>भुइँमा राखिएअनुसार; बिटमा राखिएको भए: 2 × ढल्काइ × गहिराइ घटाएर</translation>
    </message>
    <message>
        <source>Clear length at the rim</source>
        <translation>बिटमा भित्री लम्बाइ</translation>
    </message>
    <message>
        <source>length at the floor + 2 × batter × depth</source>
        <translation>भुइँमा लम्बाइ + 2 × ढल्काइ × गहिराइ</translation>
    </message>
    <message>
        <source>Clear width at the rim</source>
        <translation>बिटमा भित्री चौडाइ</translation>
    </message>
    <message>
        <source>width at the floor + 2 × batter × depth</source>
        <translation>भुइँमा चौडाइ + 2 × ढल्काइ × गहिराइ</translation>
    </message>
    <message>
        <source>finished floor to rim, as entered</source>
        <translation>तयारी भुइँदेखि बिटसम्म, राखिएअनुसार</translation>
    </message>
    <message>
        <source>Overflow over the floor</source>
        <translation>भुइँभन्दा माथि ओभरफ्लो</translation>
    </message>
    <message>
        <source>Marks of the dip-stick</source>
        <translation>पानी नाप्ने लट्ठीका चिनो</translation>
    </message>
    <message>
        <source>every 5 cm from the finished floor, the overflow and the rim</source>
        <translation>तयारी भुइँदेखि हरेक ५ cm, ओभरफ्लो र बिट</translation>
    </message>
    <message>
        <source>Held at each mark</source>
        <translation>हरेक चिनोमा अट्ने</translation>
    </message>
    <message>
        <source>V(h) as above, with h the mark</source>
        <translation>V(h) माथिकै जस्तो, h चिनोसम्म</translation>
    </message>
    <message>
        <source>outline grown by all coats square to their faces, from the pit floor to the ground, same formula as for the tank; with the ledge of the rim collar</source>
        <translation>सबै पत्र आफ्नो सतहमा गुनिया पारेर बढाइएको घेरा, खाडलको पिँधदेखि जमिनसम्म, ट्याङ्कीकै सूत्रले; बिटको घेराको खुड्किलासमेत</translation>
    </message>
    <message>
        <source>Pit length at the ground</source>
        <translation>जमिनमा खाडलको लम्बाइ</translation>
    </message>
    <message>
        <source>clear length at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>बिटमा भित्री लम्बाइ + 2 × सबै पत्र × √(1 + ढल्काइ²)</translation>
    </message>
    <message>
        <source>Pit width at the ground</source>
        <translation>जमिनमा खाडलको चौडाइ</translation>
    </message>
    <message>
        <source>clear width at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>बिटमा भित्री चौडाइ + 2 × सबै पत्र × √(1 + ढल्काइ²)</translation>
    </message>
    <message>
        <source>Pit length at its floor</source>
        <translation>पिँधमा खाडलको लम्बाइ</translation>
    </message>
    <message>
        <source>length at the ground − 2 × batter × pit depth</source>
        <translation>जमिनमा लम्बाइ − 2 × ढल्काइ × खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>Pit width at its floor</source>
        <translation>पिँधमा खाडलको चौडाइ</translation>
    </message>
    <message>
        <source>width at the ground − 2 × batter × pit depth</source>
        <translation>जमिनमा चौडाइ − 2 × ढल्काइ × खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>Cut for the platform, as it lies</source>
        <translation>सम्याएको ठाउँको कटान, नखनेको नापले</translation>
    </message>
    <message>
        <source>ground above platform and cut faces, every triangle of the survey cut along their edges; even slope in closed form</source>
        <translation>सम्याएको ठाउँ र कटानका सतहभन्दा माथिको जमिन, नापीको हरेक त्रिकोण तिनको छेउमा काटेर; एकनास ढाल सिधै सूत्रले</translation>
    </message>
    <message>
        <source>Fill for the platform, as rammed</source>
        <translation>सम्याएको ठाउँको पुराइ, खाँदेको नापले</translation>
    </message>
    <message>
        <source>room between the ground and platform and fill faces, reckoned like the cut</source>
        <translation>जमिन र सम्याएको ठाउँ तथा पुराइका सतहबीचको खाली ठाउँ, कटानजस्तै हिसाब गरेर</translation>
    </message>
    <message>
        <source>Topsoil stripped first</source>
        <translation>पहिले झिकेको मलिलो माटो</translation>
    </message>
    <message>
        <source>all ground that is disturbed × depth of topsoil, on the cut face no deeper than the face</source>
        <translation>चलाइने सबै जमिन × मलिलो माटोको गहिराइ, कटानको सतहमा सतहभन्दा गहिरो होइन</translation>
    </message>
    <message>
        <source>Spoil left over, as it lies</source>
        <translation>उब्रिने खनेको माटो, नखनेको नापले</translation>
    </message>
    <message>
        <source>pit + cut − fill ÷ (rammed volume of 1 m³ dug); not below 0</source>
        <translation>खाडल + कटान − पुराइ ÷ (खनेको 1 m³को खाँदेको आयतन); 0 भन्दा कम होइन</translation>
    </message>
    <message>
        <source>Swell of the soil</source>
        <translation>खन्दा माटो फुल्ने</translation>
    </message>
    <message>
        <source>by kind of soil: clay and wet ground 40 %, loam and fill 25 %, sand 12 %, rock 65 %</source>
        <translation>माटोको किसिमअनुसार: चिम्टाइलो माटो र भिजेको जमिन ४० %, दोमट माटो र पुराइ २५ %, बालुवा १२ %, चट्टान ६५ %</translation>
    </message>
    <message>
        <source>Spoil, loose</source>
        <translation>खनेको माटो, खुकुलो</translation>
    </message>
    <message>
        <source>Pegs: along the first side</source>
        <translation>किला: पहिलो छेउसँगै</translation>
    </message>
    <message>
        <source>corners of the pit at the ground and at its floor, offset pegs 1 m clear of edge and rim collar, 3-4-5 marks; from the first corner, or from the centre</source>
        <translation>जमिनमा र पिँधमा खाडलका कुना, डिल र बिटको घेराबाट १ m पर बाहिरी किला, 3-4-5 का चिनो; पहिलो कुनाबाट, वा केन्द्रबाट</translation>
    </message>
    <message>
        <source>Pegs: square to the first side</source>
        <translation>किला: पहिलो छेउमा गुनिया पारेर</translation>
    </message>
    <message>
        <source>as along the first side</source>
        <translation>पहिलो छेउसँगैको जस्तै</translation>
    </message>
    <message>
        <source>Pegs: over the ground</source>
        <translation>किला: जमिनभन्दा माथि</translation>
    </message>
    <message>
        <source>0 at the ground, − pit depth at the pit floor</source>
        <translation>जमिनमा ०, खाडलको पिँधमा − खाडलको गहिराइ</translation>
    </message>
    <message>
        <source>Lengths to check with the tape</source>
        <translation>फित्ताले जाँच्ने लम्बाइ</translation>
    </message>
    <message>
        <source>level distance between two pegs: √(Δx² + Δy²)</source>
        <translation>दुई किलाबीचको समथर दूरी: √(Δx² + Δy²)</translation>
    </message>
    <message>
        <source>Marks of the depth rod, below the ground</source>
        <translation>गहिराइ लट्ठीका चिनो, जमिनभन्दा तल</translation>
    </message>
    <message>
        <source>pit depth less the layers up to the mark; the overflow: the freeboard</source>
        <translation>खाडलको गहिराइ, चिनोसम्मका तह घटाएर; ओभरफ्लो: फ्रिबोर्ड</translation>
    </message>
    <message>
        <source>Depths at which the pit wall is checked</source>
        <translation>खाडलको भित्ता जाँच्ने गहिराइ</translation>
    </message>
    <message>
        <source>every 0.5 m, and the pit floor</source>
        <translation>हरेक ०.५ m, र खाडलको पिँध</translation>
    </message>
    <message>
        <source>Pit wall in from its edge there</source>
        <translation>त्यहाँ खाडलको भित्ता डिलबाट भित्र</translation>
    </message>
    <message>
        <source>batter × depth below the ground</source>
        <translation>ढल्काइ × जमिनमुनिको गहिराइ</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>मौसम वर्ष</translation>
    </message>
    <message>
        <source>made from the monthly means (as many as entered), or the whole years of the daily record</source>
        <translation>मासिक औसतबाट बनाइएका (राखिए जति), वा दैनिक रेकर्डका पूरा वर्ष</translation>
    </message>
    <message>
        <source>Years with water all year</source>
        <translation>वर्षभरि पानी भएका वर्ष</translation>
    </message>
    <message>
        <source>years without a day on which less than 99.9 % of the need could be drawn</source>
        <translation>चाहिनेको ९९.९ % भन्दा कम झिक्न सकिएको दिन एउटै नभएका वर्ष</translation>
    </message>
    <message>
        <source>10 × years with water all year ÷ years</source>
        <translation>10 × वर्षभरि पानी भएका वर्ष ÷ वर्ष</translation>
    </message>
    <message>
        <source>Days on which the need was met</source>
        <translation>चाहिने पानी पुगेका दिन</translation>
    </message>
    <message>
        <source>100 × (1 − days short of water ÷ days with a need)</source>
        <translation>100 × (1 − पानी नपुगेका दिन ÷ पानी चाहिने दिन)</translation>
    </message>
    <message>
        <source>Share of the need that was met</source>
        <translation>चाहिने पानीको पुगेको भाग</translation>
    </message>
    <message>
        <source>100 × drawn ÷ needed</source>
        <translation>100 × झिकिएको ÷ चाहिएको</translation>
    </message>
    <message>
        <source>sum over the years ÷ years</source>
        <translation>वर्षहरूको जम्मा ÷ वर्ष</translation>
    </message>
    <message>
        <source>Days short of water in the worst year</source>
        <translation>सबैभन्दा खराब वर्षमा पानी नपुगेका दिन</translation>
    </message>
    <message>
        <source>largest of the years</source>
        <translation>वर्षमध्ये सबैभन्दा ठूलो</translation>
    </message>
    <message>
        <source>Lacking in a mean year</source>
        <translation>औसत वर्षमा अपुग</translation>
    </message>
    <message>
        <source>need that could not be drawn, mean of the years</source>
        <translation>झिक्न नसकिएको चाहिने पानी, वर्षहरूको औसत</translation>
    </message>
    <message>
        <source>Lacking in the worst year</source>
        <translation>सबैभन्दा खराब वर्षमा अपुग</translation>
    </message>
    <message>
        <source>Run over in a mean year</source>
        <translation>औसत वर्षमा पोखिने</translation>
    </message>
    <message>
        <source>mean of the years</source>
        <translation>वर्षहरूको औसत</translation>
    </message>
    <message>
        <source>Largest need of a day</source>
        <translation>एक दिनमा सबैभन्दा बढी चाहिने</translation>
    </message>
    <message>
        <source>beds + animals + people, largest day of each year, mean of the years</source>
        <translation>ड्याङ + गाईवस्तु + मान्छे, हरेक वर्षको सबैभन्दा ठूलो दिन, वर्षहरूको औसत</translation>
    </message>
    <message>
        <source>Beds together</source>
        <translation>ड्याङ जम्मा</translation>
    </message>
    <message>
        <source>Smallest tank that meets the target</source>
        <translation>लक्ष्य पुग्ने सबैभन्दा सानो ट्याङ्की</translation>
    </message>
    <message>
        <source>plan made larger or smaller at the same depth and batter, every size run through all years; least that meets the target</source>
        <translation>उही गहिराइ र ढल्काइमा प्लान ठूलो वा सानो पारेर, हरेक साइज सबै वर्षमा चलाएर; लक्ष्य पुग्ने सबैभन्दा सानो</translation>
    </message>
    <message>
        <source>Largest tank tried</source>
        <translation>हेरिएको सबैभन्दा ठूलो ट्याङ्की</translation>
    </message>
    <message>
        <source>200 m³, or reach of the curve where that is more</source>
        <translation>२०० m³, वा वक्रको पहुँच, त्यो बढी भए</translation>
    </message>
    <message>
        <source>Largest beds that meet the target</source>
        <translation>लक्ष्य पुग्ने सबैभन्दा ठूला ड्याङ</translation>
    </message>
    <message>
        <source>all beds grown alike, every area run through all years; largest up to which the target is met</source>
        <translation>सबै ड्याङ एउटै अनुपातमा बढाएर, हरेक क्षेत्रफल सबै वर्षमा चलाएर; लक्ष्य पुग्ने सबैभन्दा ठूलो</translation>
    </message>
    <message>
        <source>Largest beds tried</source>
        <translation>हेरिएका सबैभन्दा ठूला ड्याङ</translation>
    </message>
    <message>
        <source>10 × the beds</source>
        <translation>10 × ड्याङ</translation>
    </message>
    <message>
        <source>Error of the water balance</source>
        <translation>पानीको हिसाबको गल्ती</translation>
    </message>
    <message>
        <source>(start + supply + rain − evaporation − seepage − drawn − spill − end) ÷ (start + supply + rain)</source>
        <translation>(सुरु + आउने + वर्षा − वाष्पीकरण − रसाउने − झिकिएको − पोखिएको − अन्त्य) ÷ (सुरु + आउने + वर्षा)</translation>
    </message>
    <message>
        <source>Weather year begins with month</source>
        <translation>मौसम वर्ष सुरु हुने महिना</translation>
    </message>
    <message>
        <source>month with most rain, so that no dry season is cut in two</source>
        <translation>सबैभन्दा बढी वर्षा हुने महिना, सुक्खा याम दुई टुक्रा नहोस् भनेर</translation>
    </message>
    <message>
        <source>Rain in a mean year</source>
        <translation>औसत वर्षमा वर्षा</translation>
    </message>
    <message>
        <source>sum of all days ÷ years</source>
        <translation>सबै दिनको जम्मा ÷ वर्ष</translation>
    </message>
    <message>
        <source>Spread of the yearly rain</source>
        <translation>वार्षिक वर्षाको घटबढ</translation>
    </message>
    <message>
        <source>standard deviation ÷ mean of the weather years</source>
        <translation>मौसम वर्षहरूको स्तरीय भिन्नता ÷ औसत</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Penman-Monteith</source>
        <translation>औसत वर्षको ET0, Penman-Monteith</translation>
    </message>
    <message>
        <source>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) each day, eq. 6; what was not measured estimated by eq. 48 and 50, wind 2 m/s</source>
        <translation>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) हरेक दिन, सूत्र 6; ननापिएको सूत्र 48 र 50 ले अनुमान, हावा 2 m/s</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Hargreaves</source>
        <translation>औसत वर्षको ET0, Hargreaves</translation>
    </message>
    <message>
        <source>0.0023 (T + 17.8) √(Tmax − Tmin) Ra each day, eq. 52, Ra in mm</source>
        <translation>0.0023 (T + 17.8) √(Tmax − Tmin) Ra हरेक दिन, सूत्र 52, Ra mm मा</translation>
    </message>
    <message>
        <source>Years left out of the record</source>
        <translation>रेकर्डबाट छोडिएका वर्ष</translation>
    </message>
    <message>
        <source>years with gaps, when gaps are left out</source>
        <translation>दिन छुटेका वर्ष, छुटेका दिन नलिँदा</translation>
    </message>
    <message>
        <source>Values put in for gaps</source>
        <translation>छुटेको ठाउँमा भरिएका मान</translation>
    </message>
    <message>
        <source>taken from the nearest year</source>
        <translation>सबैभन्दा नजिकको वर्षबाट लिइएको</translation>
    </message>
    <message>
        <source>Days outside whole years</source>
        <translation>पूरा वर्षबाहिरका दिन</translation>
    </message>
    <message>
        <source>days of the record before the first and after the last whole year</source>
        <translation>रेकर्डमा पहिलो पूरा वर्षअघि र अन्तिम पूरा वर्षपछिका दिन</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>महिना</translation>
    </message>
    <message>
        <source>January first</source>
        <translation>पहिले जनवरी</translation>
    </message>
    <message>
        <source>A full tank lasts, from the first of the month, days</source>
        <translation>भरि ट्याङ्की यति दिन पुग्छ, महिनाको पहिलो दिनदेखि</translation>
    </message>
    <message>
        <source>nothing flows in, no rain on it; days to the first day short of water, middle of all years</source>
        <translation>केही आउँदैन, त्यसमा वर्षा पर्दैन; पानी नपुग्ने पहिलो दिनसम्मका दिन, सबै वर्षको बीचको</translation>
    </message>
    <message>
        <source>An empty tank fills, from the first of the month, days</source>
        <translation>खाली ट्याङ्की यति दिनमा भरिन्छ, महिनाको पहिलो दिनदेखि</translation>
    </message>
    <message>
        <source>nothing drawn; days until full, middle of all years</source>
        <translation>केही झिकिँदैन; भरिउन्जेलका दिन, सबै वर्षको बीचको</translation>
    </message>
    <message>
        <source>Area of each bed</source>
        <translation>हरेक ड्याङको क्षेत्रफल</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>रोप्ने</translation>
    </message>
    <message>
        <source>Season ends</source>
        <translation>बाली सकिने</translation>
    </message>
    <message>
        <source>planted + lengths of the four stages − 1 day</source>
        <translation>रोप्ने + चार अवस्थाको लम्बाइ − १ दिन</translation>
    </message>
    <message>
        <source>Days of the season</source>
        <translation>बालीका दिन</translation>
    </message>
    <message>
        <source>sum of the four stages of the crop</source>
        <translation>बालीका चार अवस्थाको जम्मा</translation>
    </message>
    <message>
        <source>Share that reaches the roots</source>
        <translation>जरामा पुग्ने भाग</translation>
    </message>
    <message>
        <source>as entered, else usual for the method</source>
        <translation>राखिएअनुसार, नत्र सिँचाइको तरिकाको साधारण मान</translation>
    </message>
    <message>
        <source>Use of the crop in a season</source>
        <translation>एक बालीमा बालीले खाने पानी</translation>
    </message>
    <message>
        <source>sum of Kc × ET0, Kc from stage to stage by eq. 66, adjusted to wind and humidity by eq. 62 and 65; mean of the years</source>
        <translation>Kc × ET0 को जम्मा, अवस्थापिच्छे Kc सूत्र 66 ले, हावा र आर्द्रताअनुसार सूत्र 62 र 65 ले मिलाइएको; वर्षहरूको औसत</translation>
    </message>
    <message>
        <source>What rain does not bring</source>
        <translation>वर्षाले नल्याउने पानी</translation>
    </message>
    <message>
        <source>root zone as a bucket: dried by the use, wetted by rain; brought back each day to what the crop bears: p × soil water × root depth (eq. 82 to 85)</source>
        <translation>जराको क्षेत्र बाल्टीजस्तै: बालीले सुकाउने, वर्षाले भिजाउने; हरेक दिन बालीले सहने सीमामा फर्काइने: p × माटोको पानी × जराको गहिराइ (सूत्र 82 देखि 85)</translation>
    </message>
    <message>
        <source>To be drawn for each bed in a year</source>
        <translation>वर्षमा हरेक ड्याङलाई झिक्ने पानी</translation>
    </message>
    <message>
        <source>net × area ÷ share that reaches the roots</source>
        <translation>खुद × क्षेत्रफल ÷ जरामा पुग्ने भाग</translation>
    </message>
    <message>
        <source>Largest need of a day for each bed</source>
        <translation>एक दिनमा हरेक ड्याङलाई सबैभन्दा बढी चाहिने</translation>
    </message>
    <message>
        <source>largest day of each year, mean of the years</source>
        <translation>हरेक वर्षको सबैभन्दा ठूलो दिन, वर्षहरूको औसत</translation>
    </message>
    <message>
        <source>Days short of water, year by year</source>
        <translation>पानी नपुगेका दिन, वर्षैपिच्छे</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn</source>
        <translation>चाहिनेको ९९.९ % भन्दा कम झिक्न सकिएका दिन</translation>
    </message>
    <message>
        <source>Lacking, year by year</source>
        <translation>अपुग, वर्षैपिच्छे</translation>
    </message>
    <message>
        <source>need − drawn</source>
        <translation>चाहिने − झिकिएको</translation>
    </message>
    <message>
        <source>Run over, year by year</source>
        <translation>पोखिने, वर्षैपिच्छे</translation>
    </message>
    <message>
        <source>what is above full at the end of a day</source>
        <translation>दिनको अन्त्यमा भरिभन्दा बढी हुने</translation>
    </message>
    <message>
        <source>Days of the year</source>
        <translation>वर्षका दिन</translation>
    </message>
    <message>
        <source>from the first day of the weather year, 29 February left out</source>
        <translation>मौसम वर्षको पहिलो दिनदेखि, फेब्रुअरी २९ छोडेर</translation>
    </message>
    <message>
        <source>Held by day: least of all years</source>
        <translation>दिनदिन भएको पानी: सबै वर्षको सबैभन्दा कम</translation>
    </message>
    <message>
        <source>daily balance of all years, sorted</source>
        <translation>सबै वर्षको दैनिक हिसाब, क्रम मिलाएर</translation>
    </message>
    <message>
        <source>Held by day: one year in ten below</source>
        <translation>दिनदिन भएको पानी: दशमा एक वर्ष योभन्दा कम</translation>
    </message>
    <message>
        <source>straight between neighbours of the sorted years</source>
        <translation>क्रम मिलाइएका वर्षका छिमेकीबीच सोझो रेखा</translation>
    </message>
    <message>
        <source>Held by day: middle of all years</source>
        <translation>दिनदिन भएको पानी: सबै वर्षको बीचको</translation>
    </message>
    <message>
        <source>Held by day: nine years in ten below</source>
        <translation>दिनदिन भएको पानी: दशमा नौ वर्ष योभन्दा कम</translation>
    </message>
    <message>
        <source>Held by day: most of all years</source>
        <translation>दिनदिन भएको पानी: सबै वर्षको सबैभन्दा बढी</translation>
    </message>
    <message>
        <source>Sizes tried</source>
        <translation>जाँचिएका साइज</translation>
    </message>
    <message>
        <source>even steps at the same depth and batter</source>
        <translation>उही गहिराइ र ढल्काइमा बराबर खुड्किला</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size</source>
        <translation>१० मध्ये कति वर्ष वर्षभरि पानी, साइजअनुसार</translation>
    </message>
    <message>
        <source>every size run through all years</source>
        <translation>हरेक साइज सबै वर्षमा चलाएर</translation>
    </message>
    <message>
        <source>Map: sizes</source>
        <translation>चित्र: साइज</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times this tank; see the map itself</source>
        <translation>बराबर खुड्किला, यो ट्याङ्कीको करिब २.५ गुणासम्म; चित्र नै हेर्नुहोस्</translation>
    </message>
    <message>
        <source>Map: beds</source>
        <translation>चित्र: ड्याङ</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times these beds; see the map itself</source>
        <translation>बराबर खुड्किला, यी ड्याङको करिब २.५ गुणासम्म; चित्र नै हेर्नुहोस्</translation>
    </message>
    <message>
        <source>Map: years in ten with water all year</source>
        <translation>चित्र: १० मध्ये कति वर्ष वर्षभरि पानी</translation>
    </message>
    <message>
        <source>each size with each area run through all years; see the map itself</source>
        <translation>हरेक साइज हरेक क्षेत्रफलसँग सबै वर्षमा चलाएर; चित्र नै हेर्नुहोस्</translation>
    </message>
    <message>
        <source>tap or spring</source>
        <translation>धारा वा मूल</translation>
    </message>
    <message>
        <source>flow × hours a day × 60</source>
        <translation>बहाव × दिनको घण्टा × 60</translation>
    </message>
    <message>
        <source>runoff of the roof</source>
        <translation>छानाबाट बगेको पानी</translation>
    </message>
    <message>
        <source>rain × area × share that runs off, less the first flush of a wet spell</source>
        <translation>वर्षा × क्षेत्रफल × बग्ने भाग, झरीको पहिलो पानी घटाएर</translation>
    </message>
    <message>
        <source>runoff of the ground</source>
        <translation>जमिनबाट बगेको पानी</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>ट्याङ्कीमै परेको वर्षा</translation>
    </message>
    <message>
        <source>rain × opening at the rim</source>
        <translation>वर्षा × बिटको मुख</translation>
    </message>
    <message>
        <source>evaporation</source>
        <translation>वाष्पीकरण</translation>
    </message>
    <message>
        <source>ET0 × open water × (1 − cover) × water surface of the day</source>
        <translation>ET0 × खुला पानी × (1 − ढकनी) × दिनको पानीको माथिल्लो सतह</translation>
    </message>
    <message>
        <source>seepage</source>
        <translation>रसाउने</translation>
    </message>
    <message>
        <source>seepage a day × wet face of the day</source>
        <translation>दिनको रसाउने × दिनको भिजेको सतह</translation>
    </message>
    <message>
        <source>run over</source>
        <translation>पोखिने</translation>
    </message>
    <message>
        <source>need of the beds</source>
        <translation>ड्याङलाई चाहिने</translation>
    </message>
    <message>
        <source>net need × area ÷ share that reaches the roots</source>
        <translation>खुद चाहिने पानी × क्षेत्रफल ÷ जरामा पुग्ने भाग</translation>
    </message>
    <message>
        <source>need of the animals</source>
        <translation>गाईवस्तुलाई चाहिने</translation>
    </message>
    <message>
        <source>head × litres a day, as entered or usual for the kind</source>
        <translation>सङ्ख्या × दिनको लिटर, राखिएअनुसार वा किसिमको साधारण</translation>
    </message>
    <message>
        <source>need of people</source>
        <translation>मान्छेलाई चाहिने</translation>
    </message>
    <message>
        <source>people × litres a day</source>
        <translation>मान्छे × दिनको लिटर</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>झिकिने</translation>
    </message>
    <message>
        <source>need, no more than what is held over the dead depth</source>
        <translation>चाहिने, निकासमुनिको गहिराइमाथि भएको पानीभन्दा बढी होइन</translation>
    </message>
    <message>
        <source>lacking</source>
        <translation>अपुग</translation>
    </message>
    <message>
        <source>days short of water</source>
        <translation>पानी नपुगेका दिन</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn, mean of the years</source>
        <translation>चाहिनेको ९९.९ % भन्दा कम झिक्न सकिएका दिन, वर्षहरूको औसत</translation>
    </message>
    <message>
        <source>Mean year</source>
        <translation>औसत वर्ष</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>महिनाअनुसार</translation>
    </message>
    <message>
        <source>plain sums and products of numbers of the plan</source>
        <translation>योजनाका अङ्कको साधारण जोड र गुणन</translation>
    </message>
    <message>
        <source>Jars that count, by their rows</source>
        <translation>गनिने जार, पङ्क्ति अनुसार</translation>
    </message>
    <message>
        <source>a jar without layers is left out</source>
        <translation>तह नभएको जार छोडिन्छ</translation>
    </message>
    <message>
        <source>Sand in each jar</source>
        <translation>हरेक जारमा बालुवा</translation>
    </message>
    <message>
        <source>layer of sand ÷ all layers: share of the settled volume</source>
        <translation>बालुवाको तह ÷ सबै तह: थिग्रिएको आयतनको भाग</translation>
    </message>
    <message>
        <source>Silt in each jar</source>
        <translation>हरेक जारमा पाँगो</translation>
    </message>
    <message>
        <source>layer of silt ÷ all layers</source>
        <translation>पाँगोको तह ÷ सबै तह</translation>
    </message>
    <message>
        <source>Clay in each jar</source>
        <translation>हरेक जारमा चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>layer of clay ÷ all layers; by weight it is less, for clay settles loosely</source>
        <translation>चिम्टाइलो माटोको तह ÷ सबै तह; तौलमा यो कम हुन्छ, किनकि चिम्टाइलो माटो खुकुलो थिग्रिन्छ</translation>
    </message>
    <message>
        <source>Clay in the soil, by the jars</source>
        <translation>जार अनुसार माटोमा चिम्टाइलो माटो</translation>
    </message>
    <message>
        <source>middle of the jars</source>
        <translation>जारहरूको बीचको मान</translation>
    </message>
    <message>
        <source>Balls that count, by their rows</source>
        <translation>गनिने डल्ला, पङ्क्ति अनुसार</translation>
    </message>
    <message>
        <source>a ball that was not tried is left out</source>
        <translation>नजाँचिएको डल्लो छोडिन्छ</translation>
    </message>
    <message>
        <source>Layers of the test pits</source>
        <translation>जाँच खाडलका तह</translation>
    </message>
    <message>
        <source>those that begin above the floor of the tank&apos;s pit</source>
        <translation>ट्याङ्कीको खाडलको पिँधभन्दा माथि सुरु हुने तह</translation>
    </message>
    <message>
        <source>Of them with unknown soil</source>
        <translation>तीमध्ये माटो थाहा नभएका</translation>
    </message>
    <message>
        <source>Deepest test pit</source>
        <translation>सबैभन्दा गहिरो जाँच खाडल</translation>
    </message>
    <message>
        <source>deepest end of a layer</source>
        <translation>तहको सबैभन्दा गहिरो छेउ</translation>
    </message>
    <message>
        <source>Water met in the test pits at</source>
        <translation>जाँच खाडलमा पानी भेटिएको गहिराइ</translation>
    </message>
    <message>
        <source>least depth of a layer in which water came</source>
        <translation>पानी आएको तहको सबैभन्दा कम गहिराइ</translation>
    </message>
    <message>
        <source>Settings of the water level that count, by their rows</source>
        <translation>लेभल पाइपका गनिने पटक, पङ्क्ति अनुसार</translation>
    </message>
    <message>
        <source>a setting without run is left out</source>
        <translation>तेर्सो दूरी नभएको पटक छोडिन्छ</translation>
    </message>
    <message>
        <source>Fall of each setting</source>
        <translation>हरेक पटकको भिरालोपन</translation>
    </message>
    <message>
        <source>drop ÷ run</source>
        <translation>उचाइ फरक ÷ तेर्सो दूरी</translation>
    </message>
    <message>
        <source>Run, all settings</source>
        <translation>तेर्सो दूरी, सबै पटक</translation>
    </message>
    <message>
        <source>sum</source>
        <translation>जोड</translation>
    </message>
    <message>
        <source>Drop, all settings</source>
        <translation>उचाइ फरक, सबै पटक</translation>
    </message>
    <message>
        <source>Fall of the ground, by the water level</source>
        <translation>जमिनको भिरालोपन, लेभल पाइपबाट</translation>
    </message>
    <message>
        <source>all drops ÷ all runs; below 0 where it was walked uphill</source>
        <translation>सबै उचाइ फरक ÷ सबै तेर्सो दूरी; उकालोतिर नापिएको ठाउँमा 0 भन्दा कम</translation>
    </message>
</context>
</TS>
